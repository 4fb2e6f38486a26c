// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/path_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

enum Unknown { kStrike, kX, kY, kSpeed, kAim, kForward, kAcross, kLogSliding, kLogRolling, kLogHop, kUnknowns };
/// Residuals that are not of points.
constexpr int kPriors = 8;
using Unknowns = Eigen::Matrix<double, kUnknowns, 1>;
using Square = Eigen::Matrix<double, kUnknowns, kUnknowns>;

/// The relative speed spread that the robust weight turns away from (Tukey's biweight, 95 % efficiency).
constexpr double kTukey = 4.685;
constexpr int kMostSteps = 60;

/// How much friction a ball has met by a time, per unit of sliding friction: the loss of speed (m/s), and the way that
/// it has cost (m).
struct Dose {
  double speed_mps = 0.0;
  double way_m = 0.0;
};

/// The hops of a ball struck with a raised cue.
///
/// In the air there is no friction; each landing takes at once what its blow on the slate allows (mu times the change
/// of the vertical speed). In the long run only the friction of the first rise is missing.
class Hops {
 public:
  Hops(double rise_mps, const PathFitPriors& priors) : gravity_mps2_(priors.gravity_mps2) {
    double time_s = 0.0;
    for (Landing& landing : landings_) {
      time_s += 2.0 * rise_mps / gravity_mps2_;
      landing = {time_s, (1.0 + priors.slateRestitution) * rise_mps};
      rise_mps *= priors.slateRestitution;
    }
  }

  [[nodiscard]] Dose at(double time_s) const {
    Dose dose;
    for (const Landing& landing : landings_) {
      if (time_s <= landing.time_s) return dose;
      dose.speed_mps += landing.speed_mps;
      dose.way_m += landing.speed_mps * (time_s - landing.time_s);
    }
    const double sliding_s = time_s - landings_.back().time_s;
    dose.speed_mps += gravity_mps2_ * sliding_s;
    dose.way_m += 0.5 * gravity_mps2_ * sliding_s * sliding_s;
    return dose;
  }

  /// When the loss of speed reaches a value. Landings that would exceed it end there.
  [[nodiscard]] double timeOf(double speed_mps) const {
    double sum = 0.0;
    for (const Landing& landing : landings_) {
      sum += landing.speed_mps;
      if (sum >= speed_mps) return landing.time_s;
    }
    return landings_.back().time_s + (speed_mps - sum) / gravity_mps2_;
  }

 private:
  struct Landing {
    double time_s = 0.0;
    double speed_mps = 0.0;
  };
  std::array<Landing, 3> landings_{};
  double gravity_mps2_;
};

/// Where the ball is at a time, by the laws of sliding and rolling.
TablePoint positionAt(const Unknowns& q, double time_s, const PathFitPriors& priors) {
  const TablePoint start{q[kX], q[kY]};
  const double t = time_s - q[kStrike];
  if (t <= 0.0) return start;
  const TableVector along{std::cos(q[kAim]), std::sin(q[kAim])};
  const TableVector across = perpendicular(along);
  const TableVector v0 = q[kSpeed] * along;
  // w = R (spin x k): the speed of the cloth's point on the ball that spin alone would give.
  const TableVector w = q[kSpeed] * (q[kForward] * along + q[kAcross] * across);
  const TableVector slip = v0 - w;
  const double friction = std::exp(q[kLogSliding]);
  const Hops hops(std::exp(q[kLogHop]) * q[kSpeed], priors);
  // Friction takes 2/7 of the slip from the velocity until the ball rolls (T = 2 |u0| / (7 mu g) without hops).
  const double slide_s = hops.timeOf(2.0 / 7.0 * length(slip) / friction);
  const double s = std::min(t, slide_s);
  const TablePoint p = start + s * v0 - (friction * hops.at(s).way_m) * unit(slip);
  if (t <= slide_s) return p;
  const TableVector rolling = (5.0 / 7.0) * v0 + (2.0 / 7.0) * w;
  const double rolling_mps2 = std::exp(q[kLogRolling]) * priors.gravity_mps2;
  const double r = std::min(t - slide_s, length(rolling) / rolling_mps2);
  return p + r * rolling - (0.5 * rolling_mps2 * r * r) * unit(rolling);
}

class Problem {
 public:
  Problem(const RestingPlace& place, std::span<const PathPoint> points, const PathFitPriors& priors)
      : place_(place), points_(points), priors_(priors), weights_(points.size(), 1.0) {}

  /// Residuals over their standard uncertainties: two for each point, then the priors.
  [[nodiscard]] Eigen::VectorXd residuals(const Unknowns& q) const {
    const auto n = static_cast<Eigen::Index>(points_.size());
    Eigen::VectorXd r(2 * n + kPriors);
    for (Eigen::Index i = 0; i < n; ++i) {
      const PathPoint& point = points_[static_cast<std::size_t>(i)];
      const TableVector off = point.position - positionAt(q, point.time_s, priors_);
      r[2 * i] = off.x / point.standardUncertainty_m;
      r[2 * i + 1] = off.y / point.standardUncertainty_m;
    }
    Eigen::Index k = 2 * n;
    r[k++] = (q[kX] - place_.position.x) / place_.standardUncertainty_m;
    r[k++] = (q[kY] - place_.position.y) / place_.standardUncertainty_m;
    r[k++] = (q[kForward] - priors_.forwardSpin) / priors_.forwardSpinSpread;
    // A Cauchy prior as a square: its negative logarithm is half of this residual's square.
    const double across = q[kAcross] / priors_.sideSpinScale;
    r[k++] = std::copysign(std::sqrt(2.0 * std::log1p(across * across)), across);
    r[k++] = (q[kLogSliding] - std::log(priors_.slidingFriction)) / priors_.slidingFrictionSpread;
    r[k++] = (q[kLogRolling] - std::log(priors_.rollingFriction)) / priors_.rollingFrictionSpread;
    r[k++] = (q[kLogHop] - std::log(priors_.hop)) / priors_.hopSpread;
    // Beyond the miscue limit no tip can turn the ball.
    r[k++] = std::max(0.0, std::abs(q[kForward]) - 1.3) / 0.05;
    return r;
  }

  [[nodiscard]] Eigen::VectorXd weighted(Eigen::VectorXd r) const {
    for (std::size_t i = 0; i < weights_.size(); ++i) {
      const auto k = static_cast<Eigen::Index>(2 * i);
      r[k] *= std::sqrt(weights_[i]);
      r[k + 1] *= std::sqrt(weights_[i]);
    }
    return r;
  }

  void reweight(const Unknowns& q) {
    const Eigen::VectorXd r = residuals(q);
    std::vector<double> sizes(weights_.size());
    for (std::size_t i = 0; i < weights_.size(); ++i) {
      const auto k = static_cast<Eigen::Index>(2 * i);
      sizes[i] = std::hypot(r[k], r[k + 1]);
    }
    std::vector<double> sorted = sizes;
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::ranges::nth_element(sorted, middle);
    // The median length of a two-dimensional normal vector is 1.177 standard deviations.
    const double scale = std::max(1.0, *middle / 1.177);
    for (std::size_t i = 0; i < weights_.size(); ++i) {
      const double z = sizes[i] / (scale * kTukey);
      weights_[i] = z < 1.0 ? (1.0 - z * z) * (1.0 - z * z) : 0.0;
    }
  }

  [[nodiscard]] Eigen::Matrix<double, Eigen::Dynamic, kUnknowns> jacobian(const Unknowns& q) const {
    static const Unknowns kSteps =
        (Unknowns() << 1e-6, 1e-7, 1e-7, 1e-5, 1e-6, 1e-4, 1e-4, 1e-4, 1e-4, 1e-3).finished();
    const auto rows = static_cast<Eigen::Index>(2 * points_.size() + kPriors);
    Eigen::Matrix<double, Eigen::Dynamic, kUnknowns> j(rows, static_cast<Eigen::Index>(kUnknowns));
    for (Eigen::Index c = 0; c < kUnknowns; ++c) {
      Unknowns up = q;
      Unknowns down = q;
      up[c] += kSteps[c];
      down[c] -= kSteps[c];
      j.col(c) = (weighted(residuals(up)) - weighted(residuals(down))) / (2.0 * kSteps[c]);
    }
    return j;
  }

  /// Levenberg and Marquardt with the weights held; holdHop: the hop stays as it is.
  Unknowns minimise(Unknowns q, bool holdHop, double& cost) const {
    Eigen::VectorXd r = weighted(residuals(q));
    cost = r.squaredNorm();
    double damping = 1e-3;
    for (int step = 0; step < kMostSteps; ++step) {
      auto j = jacobian(q);
      if (holdHop) j.col(kLogHop).setZero();
      Square normal = j.transpose() * j;
      if (holdHop) normal(kLogHop, kLogHop) = 1.0;
      const Unknowns gradient = j.transpose() * r;
      bool better = false;
      for (int attempt = 0; attempt < 10 && !better; ++attempt) {
        Square damped = normal;
        damped.diagonal() *= 1.0 + damping;
        const Unknowns next = q - damped.ldlt().solve(gradient);
        const Eigen::VectorXd nextResiduals = weighted(residuals(next));
        const double nextCost = nextResiduals.squaredNorm();
        if (std::isfinite(nextCost) && nextCost < cost && next[kSpeed] > 0.0) {
          better = true;
          const double gain = cost - nextCost;
          q = next;
          r = nextResiduals;
          cost = nextCost;
          damping = std::max(1e-9, damping / 5.0);
          if (gain < 1e-7 * (1.0 + cost)) return q;
        } else {
          damping *= 4.0;
        }
      }
      if (!better) break;
    }
    return q;
  }

  [[nodiscard]] double weightSum() const {
    double sum = 0.0;
    for (const double weight : weights_)
      sum += weight;
    return sum;
  }
  [[nodiscard]] double pointChiSquare(const Unknowns& q) const {
    return weighted(residuals(q)).head(static_cast<Eigen::Index>(2 * points_.size())).squaredNorm();
  }

 private:
  RestingPlace place_;
  std::span<const PathPoint> points_;
  PathFitPriors priors_;
  std::vector<double> weights_;
};

}  // namespace

PathFit fitStruckPath(const RestingPlace& place, std::span<const PathPoint> points, double approximateStrike_s,
                      const PathFitPriors& priors) {
  PathFit fit;
  fit.strike_s = approximateStrike_s;
  fit.start = place.position;
  fit.points = points.size();
  if (points.empty()) return fit;

  // A first guess from the early part of the path.
  const PathPoint& firstPoint = points.front();
  const double firstTravel_m = distance(points.back().position, place.position);
  if (firstTravel_m < 1e-3) return fit;
  std::size_t guess = 0;
  while (guess + 1 < points.size() && points[guess].time_s - firstPoint.time_s < 0.1)
    ++guess;
  const TableVector chord = points[guess].position - place.position;
  double speed_mps = length(chord) / std::max(1e-3, points[guess].time_s - approximateStrike_s);
  if (guess > 0) {
    speed_mps = distance(points[guess].position, firstPoint.position) / (points[guess].time_s - firstPoint.time_s);
  }
  if (!(speed_mps > 0.0)) return fit;
  Unknowns start = Unknowns::Zero();
  start[kX] = place.position.x;
  start[kY] = place.position.y;
  start[kSpeed] = speed_mps;
  start[kAim] = direction(chord);
  start[kStrike] = firstPoint.time_s - distance(firstPoint.position, place.position) / speed_mps;
  start[kLogSliding] = std::log(priors.slidingFriction);
  start[kLogRolling] = std::log(priors.rollingFriction);
  start[kLogHop] = std::log(priors.hop);

  Problem problem(place, points, priors);
  struct Basin {
    Unknowns at;
    double cost = 0.0;
  };
  // The cost has several basins: sliding still or rolling already, and each landing of a hop bends the path in a way
  // that another hop may mimic. So it is started from several spins without a hop, then from the best with several
  // hops, each first with the hop held.
  constexpr std::array kForwardStarts{-0.6, 0.2, 0.9};
  constexpr std::array kHopStarts{0.004, 0.02, 0.045, 0.08, 0.12, 0.17, 0.24};
  std::vector<Basin> basins;
  for (int round = 0; round < 3; ++round) {
    std::vector<Basin> flat;
    for (const double forward : kForwardStarts) {
      Unknowns q = start;
      q[kForward] = forward;
      q[kLogHop] = std::log(kHopStarts.front());
      flat.emplace_back();
      flat.back().at = problem.minimise(q, true, flat.back().cost);
    }
    const Unknowns level = std::ranges::min_element(flat, {}, &Basin::cost)->at;
    basins.clear();
    for (const double hop : kHopStarts) {
      Unknowns q = level;
      q[kLogHop] = std::log(hop);
      Basin basin;
      q = problem.minimise(q, true, basin.cost);
      basin.at = problem.minimise(q, false, basin.cost);
      basins.push_back(basin);
    }
    std::ranges::stable_sort(basins, {}, &Basin::cost);
    problem.reweight(basins.front().at);
  }
  const Unknowns best = basins.front().at;

  // Each basin counts by its likelihood; basins that are the same place count once.
  using Few = Eigen::Matrix<double, 5, 5>;
  struct Counted {
    Unknowns at;
    double weight = 0.0;
    Few covariance;
  };
  std::vector<Counted> counted;
  for (const Basin& basin : basins) {
    if (basin.cost > basins.front().cost + 14.0) continue;
    const bool again = std::ranges::any_of(counted, [&](const Counted& other) {
      return std::abs(other.at[kForward] - basin.at[kForward]) < 0.03 &&
             std::abs(other.at[kLogHop] - basin.at[kLogHop]) < 0.1;
    });
    if (again) continue;
    const auto j = problem.jacobian(basin.at);
    const Square normal = j.transpose() * j;
    const Square covariance = normal.inverse();
    if (!covariance.allFinite() || covariance.diagonal().minCoeff() < 0.0) continue;
    counted.push_back(
        {basin.at, std::exp(-0.5 * (basin.cost - basins.front().cost)), covariance.topLeftCorner<5, 5>()});
  }
  if (counted.empty()) return fit;
  // A basin that ends on a bend of the cost (a landing, the start of rolling) has no true second derivative there; its
  // covariance is taken from the basin that is sure of itself.
  const Counted surest =
      *std::ranges::min_element(counted, {}, [](const Counted& one) { return one.covariance(kSpeed, kSpeed); });
  Eigen::Matrix<double, 5, 1> mean = Eigen::Matrix<double, 5, 1>::Zero();
  Few second = Few::Zero();
  double total = 0.0;
  for (const Counted& one : counted) {
    const bool onBend = one.covariance(kSpeed, kSpeed) > 16.0 * surest.covariance(kSpeed, kSpeed);
    Eigen::Matrix<double, 5, 1> offset = (one.at - best).head<5>();
    offset[kAim] = wrapAngle(offset[kAim]);
    total += one.weight;
    mean += one.weight * offset;
    second += one.weight * ((onBend ? surest.covariance : one.covariance) + offset * offset.transpose());
  }
  if (!(total > 0.0)) return fit;
  mean /= total;
  const Few covariance = second / total - mean * mean.transpose();

  const double freedom = std::max(1.0, 2.0 * problem.weightSum() - 5.0);
  fit.chiSquare = problem.pointChiSquare(best) / freedom;
  // Residuals larger than stated mean that the stated uncertainties were too small, or the model too simple.
  const double widen = std::sqrt(std::max(1.0, fit.chiSquare));
  fit.strike_s = best[kStrike] + mean[kStrike];
  fit.strikeUncertainty_s = widen * std::sqrt(std::max(0.0, covariance(kStrike, kStrike)));
  fit.start = {best[kX] + mean[kX], best[kY] + mean[kY]};
  fit.speed_mps = {best[kSpeed] + mean[kSpeed], widen * std::sqrt(std::max(0.0, covariance(kSpeed, kSpeed)))};
  fit.aim_rad = {wrapAngle(best[kAim] + mean[kAim]), widen * std::sqrt(std::max(0.0, covariance(kAim, kAim)))};
  fit.usable = problem.weightSum() > 0.5 * static_cast<double>(points.size()) &&
               fit.speed_mps.standardUncertainty < 0.5 * fit.speed_mps.value;
  return fit;
}

}  // namespace ferrule
