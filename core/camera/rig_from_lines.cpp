// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_from_lines.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <string_view>
#include <utility>

#include "core/camera/check_hypotheses.h"
#include "core/camera/lens_calibration.h"
#include "core/camera/pose_fit.h"

namespace ferrule {

namespace {

/// Both long sides and both short ones, so that no direction is left open.
constexpr std::size_t kNosesNeeded = 4;
/// What cameras over tables have, before the film is seen: focal length in picture widths and the standard deviation of
/// its logarithm (60 to 100 degrees of view); the rest as of any camera. Common practice, no source.
constexpr double kFocal = 0.75;
constexpr double kFocalSpread = 0.30;
constexpr double kCentreSpread = 0.02;  ///< of the picture's width
constexpr double kBendSpread = 0.30;
constexpr double kHighBendSpread = 0.03;
constexpr double kTangentialSpread = 0.0005;  ///< p1 and p2
/// The logarithm of focal y over focal x: pixels are square to a few parts in a thousand. A lens that holds them square
/// does not know of 0.2 %, which is 1.2 mm at a long cushion.
constexpr double kAspectSpread = 0.002;
/// Standard deviations beyond which the lines are not those of this table.
constexpr double kMostMisfit = 3.0;
/// A fit's first pose takes the places of a trace as evenly spread along its cushion, so far from its ends.
constexpr double kEndLeftOut_m = 0.06;

/// What the chain says of such a pose; rig files are told from others by it.
constexpr const char* kPurpose = "where the camera is, from the cushions";
constexpr const char* kPurposeWithSights = "where the camera is, from the cushions and sights";

constexpr Eigen::Index kPoseAt = 1;  // among the parameters: after the noses' common bias
constexpr Eigen::Index kLensAt = 7;
constexpr Eigen::Index kLensUnknowns = 9;

std::optional<CameraFromTable> roughPose(const Lens& lens, const Table& table, const std::vector<LineTrace>& lines) {
  std::vector<Sighting> sightings;
  const auto all = cushions(table);
  for (const LineTrace& trace : lines) {
    const auto cushion = std::ranges::find(all, trace.cushion, &Cushion::name);
    const TableVector whole = cushion->nose.end - cushion->nose.start;
    const TableVector along = unit(whole);
    const double length_m = length(whole) - 2.0 * kEndLeftOut_m;
    const double behind_m = trace.kind == LineTrace::Kind::Back ? table.cushionWidth_m : 0.0;
    for (std::size_t i = 0; i < trace.places.size(); ++i) {
      const double share = (static_cast<double>(i) + 0.5) / static_cast<double>(trace.places.size());
      const TablePoint p =
          cushion->nose.start + (kEndLeftOut_m + share * length_m) * along - behind_m * cushion->inward;
      sightings.push_back({{p.x, p.y, table.noseHeight_m}, trace.places[i], 1.0});
    }
  }
  const auto fit = fitPose(lens, sightings);
  return fit ? std::optional(fit->pose) : std::nullopt;
}

/// Lenses that bend a little, more and much.
std::vector<Lens> lensesToStartFrom(ImageSize size) {
  std::vector<Lens> lenses;
  for (const double k1 : {0.0, -0.12, -0.3}) {
    Lens lens;
    lens.size = size;
    lens.model = LensModel::Brown5;
    lens.focalX_px = lens.focalY_px = kFocal * std::max(size.width, size.height);
    lens.centre = {0.5 * (size.width - 1), 0.5 * (size.height - 1)};
    lens.coefficients[0] = k1;
    lens.coefficients[1] = k1 * k1;
    lenses.push_back(lens);
  }
  return lenses;
}

bool seesEverySide(const std::vector<LineTrace>& lines) {
  const auto seen = [&](CushionName cushion) {
    return std::ranges::any_of(
        lines, [&](const LineTrace& trace) { return trace.kind == LineTrace::Kind::Nose && trace.cushion == cushion; });
  };
  return seen(CushionName::Head) && seen(CushionName::Foot) &&
         (seen(CushionName::LeftHead) || seen(CushionName::LeftFoot)) &&
         (seen(CushionName::RightHead) || seen(CushionName::RightFoot));
}

/// Those of changeLens, then the logarithm of the aspect, p1, p2.
void changeWholeLens(Setting& setting, const Eigen::VectorXd& by) {
  changeLens(setting, by);
  setting.lens.focalY_px *= std::exp(by[6]);
  setting.lens.coefficients[2] += by[7];
  setting.lens.coefficients[3] += by[8];
}

/// (focal x, focal y, centre x, centre y, k1, k2, p1, p2, k3) by the fit's own unknowns.
Eigen::MatrixXd lensFromUnknowns(const Lens& lens) {
  Eigen::MatrixXd by = Eigen::MatrixXd::Zero(9, kLensUnknowns);
  by(0, 0) = lens.focalX_px;
  by(1, 0) = by(1, 6) = lens.focalY_px;
  by(2, 1) = by(3, 2) = lens.size.width;
  by(4, 3) = by(5, 4) = by(8, 5) = 1.0;
  by(6, 7) = by(7, 8) = 1.0;
  return by;
}

/// All unknowns beside the pose: the lens's, where it is wanted, then how much higher sights and pockets are seen.
Hypothesis hypothesisOf(bool lensWanted, bool marks) {
  Hypothesis hypothesis;
  if (lensWanted) {
    hypothesis.priors = {kFocalSpread,    kCentreSpread, kCentreSpread,     kBendSpread,      kBendSpread,
                         kHighBendSpread, kAspectSpread, kTangentialSpread, kTangentialSpread};
  }
  if (marks) {
    hypothesis.priors.push_back(kSightsHigherSpread_m);
    hypothesis.priors.push_back(kPocketsHigherSpread_m);
  }
  hypothesis.apply = [lensWanted, marks](Setting& setting, const Eigen::VectorXd& by) {
    if (lensWanted) changeWholeLens(setting, by.head(kLensUnknowns));
    if (!marks) return;
    setting.sightsHigher_m = by[by.size() - 2];
    setting.pocketsHigher_m = by[by.size() - 1];
  };
  return hypothesis;
}

/// How far what was seen lies from where the fit has it.
void addMisses(LinesFit& fit, const Setting& setting, const CheckEvidence& seen) {
  const Rig rig = setting.rig();
  const Table& table = setting.measured.table;
  for (const LineTrace& line : seen.lines) {
    double sum = 0.0;
    int n = 0;
    for (const auto& place : placesOnLine(line, rig, table)) {
      if (!place) continue;
      const double bias_m = line.kind == LineTrace::Kind::Nose ? setting.noseBias_m : 0.0;
      sum += std::pow(place->inward_m - bias_m, 2);
      ++n;
    }
    fit.lineOff_m.push_back(std::sqrt(sum / std::max(n, 1)));
  }
  for (const MarkSighting& mark : seen.marks) {
    const auto off = missOfMark(mark, rig, table, setting.markHeight_m(mark.mark.kind));
    fit.markOff_m.push_back(off ? std::optional(off->x) : std::nullopt);
  }
}

}  // namespace

bool lensIsWanted(const RigEvidence& evidence) {
  return evidence.lens.model == LensModel::None && evidence.lens.focalX_px == 0.0;
}

namespace {

bool posedFor(const Rig& rig, std::initializer_list<std::string_view> purposes) {
  return std::ranges::any_of(rig.chain.corrections(), [&](const Correction& correction) {
    return correction.kind == CorrectionKind::Pose && std::ranges::find(purposes, correction.purpose) != purposes.end();
  });
}

}  // namespace

bool isFromCushions(const Rig& rig) {
  return posedFor(rig, {kPurpose, kPurposeWithSights});
}

bool isFromSights(const Rig& rig) {
  return posedFor(rig, {kPurposeWithSights});
}

Result<Rig> rigFromLines(const RigEvidence& evidence, const MeasuredTable& measured,
                         const std::vector<LineTrace>& lines, const std::vector<MarkSighting>& marks) {
  auto fit = fitRigFromLines(evidence, measured, lines, marks);
  if (!fit) return tl::make_unexpected(fit.error());
  return std::move(fit->rig);
}

Result<LinesFit> fitRigFromLines(const RigEvidence& evidence, const MeasuredTable& measured,
                                 const std::vector<LineTrace>& lines, const std::vector<MarkSighting>& marks) {
  const auto noses = std::ranges::count(lines, LineTrace::Kind::Nose, &LineTrace::kind);
  if (!seesEverySide(lines)) {
    return failure(ErrorCode::TagsTooFew, evidence.film, "cushions",
                   {static_cast<double>(noses), static_cast<double>(kNosesNeeded)});
  }
  const bool wanted = lensIsWanted(evidence);
  Rig rig;
  if (!wanted) {
    auto given = rigWithoutPose(evidence);
    if (!given) return tl::make_unexpected(given.error());
    rig = std::move(*given);
  }

  Hypothesis hypothesis = hypothesisOf(wanted, !marks.empty());
  for (const Lens& lens : wanted ? lensesToStartFrom(evidence.filmSize) : std::vector{rig.lens}) {
    if (const auto pose = roughPose(lens, measured.table, lines)) {
      hypothesis.starts.push_back({lens, *pose, measured, 0.0});
    }
  }
  if (hypothesis.starts.empty()) return failure(ErrorCode::LensNotUsable, evidence.film, "cushions");
  CheckEvidence seen;
  seen.filmSize = evidence.filmSize;
  seen.lines = lines;
  seen.marks = marks;
  const EvidenceFit fit(seen, measured);
  const FittedHypothesis best = fitted(hypothesis, fit);
  const double freedom = std::max(1.0, static_cast<double>(fit.size()) - best.parameters);
  const double misfit = std::sqrt(best.sumOfSquares / freedom);
  const Lens& lens = best.setting.lens;
  if (best.covariance.size() == 0 || !(misfit < kMostMisfit) || (wanted && !coversItsPicture(lens))) {
    return failure(ErrorCode::LensNotUsable, evidence.film, "cushions");
  }

  const double widening = std::max(1.0, misfit * misfit);
  const Eigen::MatrixXd covariance = widening * best.covariance;
  rig.pose = best.setting.pose;
  rig.poseCovariance = covariance.block<6, 6>(kPoseAt, kPoseAt);
  if (wanted) {
    rig.lens = lens;
    rig.lens.camera = evidence.film;
    rig.lens.date = evidence.date;
    rig.lens.board = "the table's cushions";
    const Eigen::MatrixXd own = covariance.block<kLensUnknowns, kLensUnknowns>(kLensAt, kLensAt);
    const Eigen::MatrixXd together = covariance.block<6, kLensUnknowns>(kPoseAt, kLensAt);
    // What the pose would still be unsure of if the lens were known; the rest goes with the lens.
    const Eigen::Matrix<double, 6, 6> shared = together * own.ldlt().solve(together.transpose());
    rig.poseCovariance -= shared;
    const Eigen::MatrixXd by = lensFromUnknowns(lens);
    rig.lensUncertainty = LensUncertainty::of(by * own * by.transpose());
    const auto added =
        rig.chain.add({CorrectionKind::Lens, evidence.film,
                       "straightens what the lens bends, by the straightness of the cushions", evidence.date});
    if (!added) return tl::make_unexpected(added.error());
  }
  const bool sighted = std::ranges::any_of(marks, [](const MarkSighting& m) { return m.mark.kind == MarkKind::Sight; });
  const auto added =
      rig.chain.add({CorrectionKind::Pose, evidence.film, sighted ? kPurposeWithSights : kPurpose, evidence.date});
  if (!added) return tl::make_unexpected(added.error());
  rig.verdict = kFits;
  LinesFit result{std::move(rig), misfit, {}, {}};
  addMisses(result, best.setting, seen);
  return result;
}

}  // namespace ferrule
