// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/evidence_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <unsupported/Eigen/NonLinearOptimization>
#include <unsupported/Eigen/NumericalDiff>

#include "core/camera/silhouette.h"

namespace ferrule {

namespace {

/// What a gross error counts for, in standard deviations.
constexpr double kGross = 300.0;
/// A nose from its straight line: cushions are glued by hand to rails that were planed. Common practice, no source.
constexpr double kNoseScatter_m = 0.0003;
constexpr double kNoseOffset_m = 0.0010;
constexpr double kNoseTurn_m = 0.0007;
/// The back edge: the cushion's width varies by 1.6 mm (world equipment specification, rails), and the cloth's fold
/// lies as it was pulled.
constexpr double kBackScatter_m = 0.0005;
constexpr double kBackOffset_m = 0.0030;
constexpr double kBackTurn_m = 0.0015;
/// Sights are drilled by a jig in each of the six rails, which are bolted on. Common practice, no source.
constexpr double kSightOwn_m = 0.0006;
constexpr double kSightRail_m = 0.0008;
/// From the nose: 3.175 mm, half-width, rectangular (world equipment specification, sights), and each a little.
constexpr double kSightBehind_m = 0.0018;
constexpr double kSightBehindOwn_m = 0.0008;
/// The middle of an opening, as light and liner show it, square to the pocket's axis and along it. Common practice, no
/// source.
constexpr double kPocketAcross_m = 0.0025;
constexpr double kPocketAlong_m = 0.0200;
/// Outlines are read too large or too small by one share everywhere, and each by a share of its own.
constexpr double kBallShareCommon = 0.03;
constexpr double kBallShareOwn = 0.007;

Eigen::MatrixXd inverseRoot(const Eigen::MatrixXd& covariance) {
  const Eigen::LLT<Eigen::MatrixXd> root(covariance);
  return root.matrixL().solve(Eigen::MatrixXd::Identity(covariance.rows(), covariance.cols()));
}

const Cushion& cushionNamed(const std::array<Cushion, 6>& all, CushionName name) {
  return *std::ranges::find(all, name, &Cushion::name);
}

/// +1 where a quarter turn counter-clockwise from what is sure of a sight leads away from the table, else -1.
double outward(const MarkSighting& seen, const Table& table) {
  const MarkPlace at = markPlace(table, seen.mark);
  return dot(at.place - TablePoint{0.0, 0.0}, perpendicular(at.sure)) > 0.0 ? 1.0 : -1.0;
}

struct Functor {
  using Scalar = double;
  using InputType = Eigen::VectorXd;
  using ValueType = Eigen::VectorXd;
  using JacobianType = Eigen::MatrixXd;
  enum { InputsAtCompileTime = Eigen::Dynamic, ValuesAtCompileTime = Eigen::Dynamic };

  const std::function<Eigen::VectorXd(const Eigen::VectorXd&)>* residuals = nullptr;
  Eigen::Index count = 0;

  /// Parameters are handed over with 1 added, so that a relative step is an absolute one.
  int operator()(const Eigen::VectorXd& shifted, Eigen::VectorXd& result) const {
    result = (*residuals)(shifted.array() - 1.0);
    return 0;
  }
  [[nodiscard]] int values() const { return static_cast<int>(count); }
};

constexpr double kStep = 1e-6;

}  // namespace

Rig Setting::rig() const {
  Rig rig;
  rig.lens = lens;
  rig.pose = pose;
  return rig;
}

std::vector<std::optional<PlaceOnLine>> placesOnLine(const LineTrace& trace, const Rig& rig, const Table& table) {
  const auto all = cushions(table);
  const Cushion& cushion = cushionNamed(all, trace.cushion);
  const double behind_m = trace.kind == LineTrace::Kind::Back ? table.cushionWidth_m : 0.0;
  const TablePoint start = cushion.nose.start - behind_m * cushion.inward;
  const TableVector along = unit(cushion.nose.end - cushion.nose.start);
  std::vector<std::optional<PlaceOnLine>> places;
  for (const ImagePoint& seen : trace.places) {
    const auto place = tableFromImage(rig, seen, table.noseHeight_m);
    places.push_back(place ? std::optional(PlaceOnLine{dot(*place - start, along), dot(*place - start, cushion.inward)})
                           : std::nullopt);
  }
  return places;
}

std::optional<TableVector> missOfMark(const MarkSighting& seen, const Rig& rig, const Table& table, double height_m) {
  const MarkPlace really = markPlace(table, seen.mark);
  const auto place = tableFromImage(rig, seen.place, height_m);
  if (!place) return std::nullopt;
  const TableVector miss = *place - really.place;
  return TableVector{dot(miss, really.sure), dot(miss, perpendicular(really.sure))};
}

EvidenceFit::EvidenceFit(const CheckEvidence& evidence, const MeasuredTable& measured) : evidence_(&evidence) {
  for (const AveragedTag& tag : evidence.tags) {
    const bool known = std::ranges::find(measured.tags, tag.tag.id, &RailTag::id) != measured.tags.end();
    if (known) size_ += 8;
  }
  const auto all = cushions(measured.table);
  double coarsest_m = 0.0;
  for (const LineTrace& trace : evidence.lines) {
    const auto n = static_cast<Eigen::Index>(trace.places.size());
    if (n < 3) continue;
    const Cushion& cushion = cushionNamed(all, trace.cushion);
    const double length_px = distance(trace.places.front(), trace.places.back());
    const double perPixel_m = distance(cushion.nose.start, cushion.nose.end) / length_px;
    coarsest_m = std::max(coarsest_m, perPixel_m);
    const bool nose = trace.kind == LineTrace::Kind::Nose;
    const double own_m = std::hypot(nose ? kNoseScatter_m : kBackScatter_m, trace.u_px * perPixel_m);
    const double offset_m = nose ? kNoseOffset_m : kBackOffset_m;
    const double turn_m = nose ? kNoseTurn_m : kBackTurn_m;
    const Eigen::VectorXd t = Eigen::VectorXd::LinSpaced(n, -1.0, 1.0);
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Identity(n, n) * own_m * own_m;
    covariance.array() += offset_m * offset_m;
    covariance += turn_m * turn_m * (t * t.transpose());
    lines_.push_back({&trace, inverseRoot(covariance)});
    size_ += n;
  }
  if (!evidence.marks.empty()) weighMarks(measured, coarsest_m);
  const auto balls = static_cast<Eigen::Index>(evidence.balls.size());
  if (balls > 0) {
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Constant(balls, balls, kBallShareCommon * kBallShareCommon);
    for (Eigen::Index i = 0; i < balls; ++i) {
      const BallSighting& ball = evidence.balls[static_cast<std::size_t>(i)];
      covariance(i, i) += std::pow(kBallShareOwn, 2) + std::pow(ball.u_px / ball.radius_px, 2);
    }
    ballWhitening_ = inverseRoot(covariance);
    size_ += balls;
  }
}

void EvidenceFit::weighMarks(const MeasuredTable& measured, double perPixel_m) {
  const auto& marks = evidence_->marks;
  const auto n = static_cast<Eigen::Index>(marks.size());
  // Two sights of one rail are told by their sign along the table or across it, and by the half of a long rail.
  const auto rail = [&](const MarkSighting& seen) {
    const TablePoint p = markPlace(measured.table, seen.mark).place;
    if (std::abs(p.x) > 0.5 * measured.table.length_m) return p.x > 0.0 ? 0 : 1;
    return 2 + (p.y > 0.0 ? 2 : 0) + (p.x > 0.0 ? 1 : 0);
  };
  Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(2 * n, 2 * n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const MarkSighting& a = marks[static_cast<std::size_t>(i)];
    const bool sight = a.mark.kind == MarkKind::Sight;
    const double seen_m = a.u_px * perPixel_m;
    covariance(i, i) = std::pow(sight ? kSightOwn_m : kPocketAcross_m, 2) + seen_m * seen_m;
    covariance(n + i, n + i) = std::pow(sight ? kSightBehindOwn_m : kPocketAlong_m, 2) + seen_m * seen_m;
    if (!sight) continue;
    for (Eigen::Index j = 0; j < n; ++j) {
      const MarkSighting& b = marks[static_cast<std::size_t>(j)];
      if (b.mark.kind != MarkKind::Sight) continue;
      if (rail(a) == rail(b)) covariance(i, j) += kSightRail_m * kSightRail_m;
      // Outward is a quarter turn counter-clockwise of what is sure on some rails and clockwise on others.
      covariance(n + i, n + j) += outward(a, measured.table) * outward(b, measured.table) * std::pow(kSightBehind_m, 2);
    }
  }
  markWhitening_ = inverseRoot(covariance);
  size_ += 2 * n;
}

Eigen::VectorXd EvidenceFit::residuals(const Setting& setting) const {
  Eigen::VectorXd all = Eigen::VectorXd::Constant(size_, kGross);
  const Rig rig = setting.rig();
  Eigen::Index row = 0;
  for (const AveragedTag& seen : evidence_->tags) {
    const auto tag = std::ranges::find(setting.measured.tags, seen.tag.id, &RailTag::id);
    if (tag == setting.measured.tags.end()) continue;
    const double u_px = cornerUncertainty_px(seen, tag->corners);
    for (std::size_t corner = 0; corner < 4; ++corner, row += 2) {
      const auto pixel = imageFromTable(rig, tag->corners[corner]);
      if (!pixel) continue;
      const ImageVector miss = seen.tag.corners[corner] - *pixel;
      all[row] = std::clamp(miss.x / u_px, -kGross, kGross);
      all[row + 1] = std::clamp(miss.y / u_px, -kGross, kGross);
    }
  }
  for (const Line& line : lines_) {
    const auto places = placesOnLine(*line.trace, rig, setting.measured.table);
    const auto n = static_cast<Eigen::Index>(places.size());
    Eigen::VectorXd inward(n);
    bool reached = true;
    for (Eigen::Index i = 0; i < n; ++i) {
      const auto& place = places[static_cast<std::size_t>(i)];
      reached = reached && place.has_value();
      if (place) inward[i] = place->inward_m;
    }
    if (reached) {
      if (line.trace->kind == LineTrace::Kind::Nose) inward.array() -= setting.noseBias_m;
      all.segment(row, n) = (line.whitening * inward).cwiseMax(-kGross).cwiseMin(kGross);
    }
    row += n;
  }
  if (const auto marks = static_cast<Eigen::Index>(evidence_->marks.size()); marks > 0) {
    Eigen::VectorXd miss(2 * marks);
    bool reached = true;
    for (Eigen::Index i = 0; i < marks && reached; ++i) {
      const MarkSighting& seen = evidence_->marks[static_cast<std::size_t>(i)];
      const auto off = missOfMark(seen, rig, setting.measured.table, setting.markHeight_m(seen.mark.kind));
      reached = off.has_value();
      if (off) miss[i] = off->x;
      if (off) miss[marks + i] = off->y;
    }
    if (reached) all.segment(row, 2 * marks) = (markWhitening_ * miss).cwiseMax(-kGross).cwiseMin(kGross);
    row += 2 * marks;
  }
  const auto balls = static_cast<Eigen::Index>(evidence_->balls.size());
  if (balls > 0) {
    Eigen::VectorXd share = Eigen::VectorXd::Constant(balls, 1.0);  // what is not reached
    const double radius_m = setting.measured.balls.radius_m();
    for (Eigen::Index i = 0; i < balls; ++i) {
      const BallSighting& ball = evidence_->balls[static_cast<std::size_t>(i)];
      const auto place = tableFromImage(rig, ball.centre, radius_m);
      const auto outline = place ? silhouetteOf(rig, *place, radius_m) : std::nullopt;
      if (outline) share[i] = std::log(ball.radius_px / outline->radius_px());
    }
    all.segment(row, balls) = ballWhitening_ * share;
  }
  return all;
}

LeastSquares leastSquares(const std::function<Eigen::VectorXd(const Eigen::VectorXd&)>& residuals,
                          const Eigen::VectorXd& start) {
  LeastSquares result;
  result.parameters = start;
  const Functor functor{&residuals, residuals(start).size()};
  Eigen::NumericalDiff<Functor, Eigen::Central> differentiated(functor, kStep * kStep);
  Eigen::LevenbergMarquardt<Eigen::NumericalDiff<Functor, Eigen::Central>> solver(differentiated);
  solver.parameters.maxfev = 400;
  solver.parameters.ftol = 1e-7;
  solver.parameters.xtol = 1e-10;
  Eigen::VectorXd shifted = start.array() + 1.0;
  if (start.size() > 0) solver.minimize(shifted);
  result.parameters = shifted.array() - 1.0;
  result.sumOfSquares = residuals(result.parameters).squaredNorm();
  if (start.size() > 0) {
    Eigen::MatrixXd jacobian(functor.count, start.size());
    differentiated.df(shifted, jacobian);
    const Eigen::MatrixXd normal = jacobian.transpose() * jacobian;
    const Eigen::VectorXd scale = normal.diagonal().cwiseMax(1e-300).cwiseSqrt().cwiseInverse();
    const Eigen::FullPivLU<Eigen::MatrixXd> inverse(scale.asDiagonal() * normal * scale.asDiagonal());
    if (inverse.isInvertible()) {
      result.covariance = scale.asDiagonal() * inverse.inverse() * scale.asDiagonal();
    }
  }
  return result;
}

}  // namespace ferrule
