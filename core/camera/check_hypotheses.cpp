// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/check_hypotheses.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/camera/following_pose.h"
#include "core/camera/pose_fit.h"

namespace ferrule {

namespace {

/// What is known of each unknown before the film is seen. Common practice, no source.
constexpr double kNoseBias_m = 0.001;   ///< the nose's edge against the nose, by the light
constexpr double kTagHeight_m = 0.050;  ///< a rail's height forgotten
constexpr double kTagPlace_m = 0.200;   ///< a tag put elsewhere
constexpr double kTagTurn_rad = 0.1;    ///< and a little askew; whole quarters are tried by themselves
constexpr double kTableSize_m = 0.300;  ///< the next size of table
constexpr double kZoom = 0.5;           ///< of the logarithm of the focal length
constexpr double kCentre = 0.02;        ///< principal point from the middle, of the picture's width
constexpr double kBend = 0.5;           ///< k1 and k2
constexpr double kHighBend = 0.2;       ///< k3
constexpr std::size_t kTagsNeeded = 3;

/// The pose that the tags give, those without left out.
std::optional<CameraFromTable> poseFromTags(const Lens& lens, const MeasuredTable& measured,
                                            const CheckEvidence& evidence, int without = -1) {
  std::vector<Sighting> sightings;
  for (const AveragedTag& seen : evidence.tags) {
    if (seen.tag.id == without) continue;
    const auto tag = std::ranges::find(measured.tags, seen.tag.id, &RailTag::id);
    if (tag == measured.tags.end()) continue;
    for (std::size_t i = 0; i < 4; ++i)
      sightings.push_back({tag->corners[i], seen.tag.corners[i], 1.0});
  }
  if (sightings.size() < 4 * (kTagsNeeded - 1)) return std::nullopt;
  const auto fit = fitPose(lens, sightings);
  return fit ? std::optional(fit->pose) : std::nullopt;
}

RailTag& tagOf(MeasuredTable& measured, int id) {
  return *std::ranges::find(measured.tags, id, &RailTag::id);
}

TablePoint centreOf(const RailTag& tag) {
  TablePoint centre;
  for (const TablePoint3& corner : tag.corners)
    centre = centre + TableVector{corner.x / 4.0, corner.y / 4.0};
  return centre;
}

/// Settings from every pose that may be a start.
std::vector<Setting> startsOf(const std::vector<Lens>& lenses, const Rig& rig, const MeasuredTable& measured,
                              const CheckEvidence& evidence, int without = -1) {
  std::vector<Setting> starts;
  for (const Lens& lens : lenses) {
    starts.push_back({lens, rig.pose, measured, 0.0});
    if (const auto pose = poseFromTags(lens, measured, evidence, without)) {
      starts.push_back({lens, *pose, measured, 0.0});
    }
  }
  return starts;
}

void setFocalAndCentre(Lens& lens, double zoom, double right, double down) {
  lens.focalX_px *= std::exp(zoom);
  lens.focalY_px *= std::exp(zoom);
  lens.centre = {lens.centre.x + right * lens.size.width, lens.centre.y + down * lens.size.width};
}

Lens straightLens(const Rig& rig) {
  Lens lens = rig.lens;
  lens.model = LensModel::None;
  lens.coefficients = {};
  return lens;
}

/// Lenses that bend a little, more and much, to start from.
std::vector<Lens> bentLenses(const Rig& rig) {
  std::vector<Lens> lenses;
  for (const double k1 : {0.0, -0.12, -0.3}) {
    Lens lens = straightLens(rig);
    lens.model = LensModel::Brown5;
    lens.centre = {0.5 * (lens.size.width - 1), 0.5 * (lens.size.height - 1)};
    lens.coefficients[0] = k1;
    // A barrel lens keeps its edges while k2 stops the fold; k1^2 is about what real ones have.
    lens.coefficients[1] = k1 * k1;
    lenses.push_back(lens);
  }
  return lenses;
}

/// The rig was right and the file is wrong, or the rig was made with the file and is wrong with it: both are tried.
void addWithBothPoses(std::vector<Hypothesis>& all, const Hypothesis& free, const Rig& rig,
                      const MeasuredTable& measured) {
  Hypothesis fixed = free;
  fixed.poseFree = false;
  fixed.starts = {{rig.lens, rig.pose, measured, 0.0}};
  all.push_back(free);
  all.push_back(std::move(fixed));
}

/// Nothing is wrong: camera and lens are the rig's, to within what the rig itself says it knows of them. A rig from the
/// cushions alone may be off by millimetres and still be what it claims.
Hypothesis fitsAsItIs(const Rig& rig, const MeasuredTable& measured) {
  // The unknowns count in standard deviations; as thousandths their steps suit the fit.
  constexpr double kThousandth = 1e-3;
  const auto poseAxes = principalAxes(rig.poseCovariance);
  const auto lensAxes = principalAxes(rig.lensUncertainty.matrix());
  // The pose's covariance is that of a known lens: with another lens the rig would have been given another pose.
  const FollowingPose following(rig, measured);
  std::vector<Eigen::Matrix<double, 6, 1>> poseSteps;
  for (const Eigen::VectorXd& axis : lensAxes)
    poseSteps.push_back(following.step(changedLens(rig.lens, axis), measured));
  Hypothesis hypothesis;
  hypothesis.poseFree = false;
  hypothesis.priors.assign(poseAxes.size() + lensAxes.size(), kThousandth);
  hypothesis.unknownsAreKnown = true;
  hypothesis.apply = [poseAxes, lensAxes, poseSteps](Setting& setting, const Eigen::VectorXd& by) {
    Eigen::Index next = 0;
    Eigen::Matrix<double, 6, 1> step = Eigen::Matrix<double, 6, 1>::Zero();
    for (const Eigen::VectorXd& axis : poseAxes)
      step += (by[next++] / kThousandth) * axis;
    if (!lensAxes.empty()) {
      Eigen::VectorXd change = Eigen::VectorXd::Zero(lensAxes.front().size());
      for (std::size_t i = 0; i < lensAxes.size(); ++i) {
        const double deviations = by[next++] / kThousandth;
        change += deviations * lensAxes[i];
        step += deviations * poseSteps[i];
      }
      setting.lens = changedLens(setting.lens, change);
    }
    setting.pose = movedPose(setting.pose, step);
  };
  hypothesis.starts = {{rig.lens, rig.pose, measured, 0.0}};
  return hypothesis;
}

void raiseTags(MeasuredTable& measured, double higher_m) {
  for (RailTag& tag : measured.tags) {
    for (TablePoint3& corner : tag.corners)
      corner.z += higher_m;
  }
}

void addTableFaults(std::vector<Hypothesis>& all, const Rig& rig, const MeasuredTable& measured,
                    const CheckEvidence& evidence) {
  const auto starts = startsOf({rig.lens}, rig, measured, evidence);
  if (!evidence.tags.empty()) {
    addWithBothPoses(all,
                     {RigFault::TagHeight,
                      {},
                      true,
                      {kTagHeight_m},
                      [](Setting& setting, const Eigen::VectorXd& by) { raiseTags(setting.measured, by[0]); },
                      starts},
                     rig, measured);
    // A rig that was made with wrong heights has its camera too low or too high by as much.
    all.push_back({RigFault::TagHeight,
                   {},
                   false,
                   {kTagHeight_m},
                   [](Setting& setting, const Eigen::VectorXd& by) {
                     raiseTags(setting.measured, by[0]);
                     setting.pose.translation_m -= setting.pose.rotation.col(2) * by[0];
                   },
                   {{rig.lens, rig.pose, measured, 0.0}}});
  }
  addWithBothPoses(all,
                   {RigFault::TableSize,
                    {},
                    true,
                    {kTableSize_m, kTableSize_m},
                    [](Setting& setting, const Eigen::VectorXd& larger_m) {
                      setting.measured.table.length_m += larger_m[0];
                      setting.measured.table.width_m += larger_m[1];
                    },
                    starts},
                   rig, measured);
  for (const AveragedTag& seen : evidence.tags) {
    const int id = seen.tag.id;
    if (std::ranges::find(measured.tags, id, &RailTag::id) == measured.tags.end()) continue;
    addWithBothPoses(all,
                     {RigFault::TagMisplaced,
                      {id},
                      true,
                      {kTagPlace_m, kTagPlace_m, kTagTurn_rad},
                      [id](Setting& setting, const Eigen::VectorXd& by) {
                        RailTag& tag = tagOf(setting.measured, id);
                        const TablePoint centre = centreOf(tag);
                        const double c = std::cos(by[2]);
                        const double s = std::sin(by[2]);
                        for (TablePoint3& corner : tag.corners) {
                          const double x = corner.x - centre.x;
                          const double y = corner.y - centre.y;
                          corner.x = centre.x + c * x - s * y + by[0];
                          corner.y = centre.y + s * x + c * y + by[1];
                        }
                      },
                      startsOf({rig.lens}, rig, measured, evidence, id)},
                     rig, measured);
  }
}

void addExchangedTags(std::vector<Hypothesis>& all, const Rig& rig, const MeasuredTable& measured,
                      const CheckEvidence& evidence) {
  const auto nothing = [](Setting&, const Eigen::VectorXd&) {};
  for (std::size_t i = 0; i < measured.tags.size(); ++i) {
    for (std::size_t j = i + 1; j < measured.tags.size(); ++j) {
      MeasuredTable trial = measured;
      std::swap(trial.tags[i].corners, trial.tags[j].corners);
      all.push_back({RigFault::TagsSwapped,
                     {measured.tags[i].id, measured.tags[j].id},
                     true,
                     {},
                     nothing,
                     startsOf({rig.lens}, rig, trial, evidence)});
    }
    for (int quarters = 1; quarters < 4; ++quarters) {
      MeasuredTable trial = measured;
      std::rotate(trial.tags[i].corners.begin(), trial.tags[i].corners.begin() + quarters, trial.tags[i].corners.end());
      all.push_back({RigFault::TagTurned,
                     {measured.tags[i].id, quarters},
                     true,
                     {},
                     nothing,
                     startsOf({rig.lens}, rig, trial, evidence)});
    }
  }
}

void addLensFaults(std::vector<Hypothesis>& all, const Rig& rig, const MeasuredTable& measured,
                   const CheckEvidence& evidence) {
  const bool bent = bends(rig.lens);
  if (bent) {
    const ImagePoint middle{0.5 * (rig.lens.size.width - 1), 0.5 * (rig.lens.size.height - 1)};
    // A crop keeps its middle; a picture that was resized keeps its corner.
    for (const ImagePoint kept : {middle, ImagePoint{-0.5, -0.5}}) {
      all.push_back({RigFault::WrongImageSize,
                     {},
                     true,
                     {kZoom},
                     [kept](Setting& setting, const Eigen::VectorXd& larger) {
                       const double scale = std::exp(larger[0]);
                       Lens& lens = setting.lens;
                       lens.focalX_px *= scale;
                       lens.focalY_px *= scale;
                       lens.centre = kept + scale * (lens.centre - kept);
                     },
                     startsOf({rig.lens}, rig, measured, evidence)});
    }
    all.push_back(
        {RigFault::CorrectedTwice,
         {},
         true,
         {kZoom, kCentre, kCentre},
         [](Setting& setting, const Eigen::VectorXd& by) { setFocalAndCentre(setting.lens, by[0], by[1], by[2]); },
         startsOf({straightLens(rig)}, rig, measured, evidence)});
  }
  all.push_back({bent ? RigFault::WrongLens : RigFault::NotCorrected,
                 {},
                 true,
                 {kZoom, kCentre, kCentre, kBend, kBend, kHighBend},
                 changeLens,
                 startsOf(bentLenses(rig), rig, measured, evidence)});
}

}  // namespace

void changeLens(Setting& setting, const Eigen::VectorXd& by) {
  setFocalAndCentre(setting.lens, by[0], by[1], by[2]);
  setting.lens.coefficients[0] += by[3];
  setting.lens.coefficients[1] += by[4];
  setting.lens.coefficients[4] += by[5];
}

std::vector<Eigen::VectorXd> principalAxes(const Eigen::MatrixXd& covariance) {
  std::vector<Eigen::VectorXd> axes;
  if (covariance.size() == 0) return axes;
  // Pixels and coefficients differ by many orders of size: scaled, none is lost in the digits.
  const Eigen::VectorXd u = covariance.diagonal().cwiseMax(0.0).cwiseSqrt();
  const Eigen::VectorXd scale = (u.array() > 0.0).select(u.array().inverse(), 0.0);
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(scale.asDiagonal() * covariance * scale.asDiagonal());
  for (Eigen::Index i = 0; i < covariance.rows(); ++i) {
    const double variance = solver.eigenvalues()[i];
    if (!(variance > 0.0)) continue;
    axes.push_back(u.cwiseProduct(solver.eigenvectors().col(i)) * std::sqrt(variance));
  }
  return axes;
}

bool bends(const Lens& lens) {
  constexpr double kVisible_px = 0.1;
  Lens straight = lens;
  straight.model = LensModel::None;
  for (const double x : {0.0, lens.size.width - 1.0}) {
    for (const double y : {0.0, lens.size.height - 1.0}) {
      const auto ray = rayFromImage(straight, {x, y});
      const auto pixel = ray ? imageFromRay(lens, *ray) : std::nullopt;
      if (!pixel || distance(*pixel, {x, y}) > kVisible_px) return true;
    }
  }
  return false;
}

std::vector<Hypothesis> hypothesesFor(const Rig& rig, const MeasuredTable& measured, const CheckEvidence& evidence,
                                      bool tagsGross) {
  const auto nothing = [](Setting&, const Eigen::VectorXd&) {};
  std::vector<Hypothesis> all;
  all.push_back(fitsAsItIs(rig, measured));
  all.push_back({RigFault::CameraMoved, {}, true, {}, nothing, startsOf({rig.lens}, rig, measured, evidence)});
  addTableFaults(all, rig, measured, evidence);
  addLensFaults(all, rig, measured, evidence);
  if (tagsGross) addExchangedTags(all, rig, measured, evidence);
  return all;
}

FittedHypothesis fitted(const Hypothesis& hypothesis, const EvidenceFit& evidence) {
  const Eigen::Index poses = hypothesis.poseFree ? 6 : 0;
  const auto further = static_cast<Eigen::Index>(hypothesis.priors.size());
  FittedHypothesis best;
  best.sumOfSquares = std::numeric_limits<double>::infinity();
  best.parameters = static_cast<int>(poses + (hypothesis.unknownsAreKnown ? 0 : further));
  for (const Setting& start : hypothesis.starts) {
    const auto settingOf = [&](const Eigen::VectorXd& x) {
      Setting setting = start;
      setting.noseBias_m = x[0];
      if (poses > 0) setting.pose = movedPose(start.pose, x.segment<6>(1));
      hypothesis.apply(setting, x.tail(further));
      return setting;
    };
    const auto residuals = [&](const Eigen::VectorXd& x) {
      Eigen::VectorXd all(evidence.size() + 1 + further);
      all.head(evidence.size()) = evidence.residuals(settingOf(x));
      all[evidence.size()] = x[0] / kNoseBias_m;
      for (Eigen::Index i = 0; i < further; ++i)
        all[evidence.size() + 1 + i] = x[1 + poses + i] / hypothesis.priors[static_cast<std::size_t>(i)];
      return all;
    };
    const LeastSquares solved = leastSquares(residuals, Eigen::VectorXd::Zero(1 + poses + further));
    if (!(solved.sumOfSquares < best.sumOfSquares)) continue;
    best.sumOfSquares = solved.sumOfSquares;
    best.setting = settingOf(solved.parameters);
    best.further = solved.parameters.tail(further);
    best.covariance = solved.covariance;
  }
  return best;
}

}  // namespace ferrule
