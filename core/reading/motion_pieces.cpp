// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/motion_pieces.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>

namespace ferrule {

namespace {

/// What is known before looking: a ball's speed (m/s) and its acceleration on the cloth (m/s^2; sliding friction gives
/// 1.5 to 3, rolling 0.1).
constexpr double kSpeedSpread_mps = 4.0;
constexpr double kAccelerationSpread_mps2 = 2.0;
/// Price of one more piece in units of chi-square: six further numbers over a few hundred points.
constexpr double kPiecePrice = 28.0;
/// Price of a point that no piece explains, a wrong measurement.
constexpr double kStrayPrice = 20.0;
/// Errors of neighbouring images are alike (lens, lamp highlights), which a fit that believes them independent would
/// take for bends.
constexpr double kAlikeErrors_m = 0.0003;
/// A piece is rest when it is this short, or slower than this allows for.
constexpr double kRestTravel_m = 0.0025;
constexpr double kRestSpeed_mps = 0.012;

/// Sums from which the best second-degree polynomial and its chi-square follow.
class Sums {
 public:
  void add(double t, TableVector p, double weight) {
    double power = weight;
    for (double& sum : t_) {
      sum += power;
      power *= t;
    }
    double factor = weight;
    for (int i = 0; i < 3; ++i) {
      x_[i] += factor * p.x;
      y_[i] += factor * p.y;
      factor *= t;
    }
    squares_ += weight * (p.x * p.x + p.y * p.y);
  }

  [[nodiscard]] Eigen::Matrix3d normal() const {
    // Unknowns: p, v, a/2.
    Eigen::Matrix3d m;
    m << t_[0], t_[1], t_[2], t_[1], t_[2], t_[3], t_[2], t_[3], t_[4];
    m(1, 1) += 1.0 / (kSpeedSpread_mps * kSpeedSpread_mps);
    m(2, 2) += 4.0 / (kAccelerationSpread_mps2 * kAccelerationSpread_mps2);
    return m;
  }

  [[nodiscard]] double chiSquare() const {
    const Eigen::Matrix3d m = normal();
    const Eigen::LLT<Eigen::Matrix3d> solver(m);
    const Eigen::Vector3d bx(x_[0], x_[1], x_[2]);
    const Eigen::Vector3d by(y_[0], y_[1], y_[2]);
    return std::max(0.0, squares_ - bx.dot(solver.solve(bx)) - by.dot(solver.solve(by)));
  }

  [[nodiscard]] Eigen::Vector3d right(bool alongX) const {
    const double* b = alongX ? x_ : y_;
    return {b[0], b[1], b[2]};
  }

 private:
  double t_[5]{};
  double x_[3]{};
  double y_[3]{};
  double squares_ = 0.0;
};

double weightOf(const PathPoint& point) {
  const double u = std::hypot(point.standardUncertainty_m, kAlikeErrors_m);
  return 1.0 / (u * u);
}

/// A piece as far as it has been followed. A point that would raise the chi-square by more than the price of a stray is
/// left out for that price.
class Candidate {
 public:
  Candidate(std::size_t first, double before) : first_(first), before_(before) {}

  void add(const MeasuredPath& path, std::size_t i) {
    Sums with = sums_;
    with.add(path[i].time_s - path[first_].time_s, path[i].position - path[first_].position, weightOf(path[i]));
    const double chiSquare = with.chiSquare();
    if (points_ >= kFewestForStray && chiSquare - chiSquare_ > kStrayPrice) {
      strays_.push_back(i);
      return;
    }
    sums_ = with;
    chiSquare_ = chiSquare;
    ++points_;
  }

  [[nodiscard]] std::size_t first() const { return first_; }
  /// Without the price of the piece.
  [[nodiscard]] double cost() const { return before_ + chiSquare_ + kStrayPrice * static_cast<double>(strays_.size()); }
  /// A single point may be a stray as well as a piece.
  [[nodiscard]] double price() const { return points_ == 1 && strays_.empty() ? kStrayPrice : kPiecePrice; }
  [[nodiscard]] const std::vector<std::size_t>& strays() const { return strays_; }

 private:
  static constexpr std::size_t kFewestForStray = 3;

  std::size_t first_;
  double before_;  ///< least cost of everything before
  Sums sums_;
  double chiSquare_ = 0.0;
  std::size_t points_ = 0;
  std::vector<std::size_t> strays_;
};

MotionPiece fitted(const MeasuredPath& path, std::size_t first, std::size_t last) {
  Candidate followed(first, 0.0);
  for (std::size_t i = first; i <= last; ++i)
    followed.add(path, i);
  std::vector<PathPoint> points;
  for (std::size_t i = first; i <= last; ++i) {
    if (std::ranges::find(followed.strays(), i) == followed.strays().end()) points.push_back(path[i]);
  }
  MotionPiece piece;
  piece.strays = followed.strays();
  piece.first = first;
  piece.last = last;
  piece.start_s = points.front().time_s;
  piece.end_s = points.back().time_s;
  piece.origin_s = 0.5 * (piece.start_s + piece.end_s);
  const TablePoint reference = path[first].position;
  Sums sums;
  for (const PathPoint& point : points) {
    sums.add(point.time_s - piece.origin_s, point.position - reference, weightOf(point));
  }
  const Eigen::Matrix3d inverse = sums.normal().inverse();
  const Eigen::Vector3d x = inverse * sums.right(true);
  const Eigen::Vector3d y = inverse * sums.right(false);
  piece.position = reference + TableVector{x[0], y[0]};
  piece.velocity = {x[1], y[1]};
  piece.acceleration = {2.0 * x[2], 2.0 * y[2]};
  const Eigen::Vector3d scale(1.0, 1.0, 2.0);
  piece.covariance = scale.asDiagonal() * inverse * scale.asDiagonal();

  const double duration_s = piece.end_s - piece.start_s;
  const double travel_m = distance(piece.at(piece.start_s), piece.at(piece.end_s));
  const double speed_mps = length(piece.velocity);
  piece.resting = piece.count() >= 3 && travel_m < kRestTravel_m &&
                  speed_mps < kRestSpeed_mps + 3.0 * std::sqrt(piece.covariance(1, 1)) && duration_s > 0.0;
  if (piece.resting) {
    const RestingPlace place = restingPlace(points);
    piece.position = place.position;
    piece.velocity = {};
    piece.acceleration = {};
    piece.covariance.setZero();
    piece.covariance(0, 0) = place.standardUncertainty_m * place.standardUncertainty_m;
  }
  return piece;
}

}  // namespace

TablePoint MotionPiece::at(double time_s) const {
  const double t = time_s - origin_s;
  return position + t * velocity + (0.5 * t * t) * acceleration;
}

TableVector MotionPiece::velocityAt(double time_s) const {
  return velocity + (time_s - origin_s) * acceleration;
}

double MotionPiece::positionUncertainty_m(double time_s) const {
  const double t = time_s - origin_s;
  const Eigen::Vector3d row(1.0, t, 0.5 * t * t);
  return std::sqrt(std::max(0.0, row.dot(covariance * row)));
}

double MotionPiece::velocityUncertainty_mps(double time_s) const {
  const Eigen::Vector3d row(0.0, 1.0, time_s - origin_s);
  return std::sqrt(std::max(0.0, row.dot(covariance * row)));
}

std::vector<MotionPiece> motionPieces(const MeasuredPath& path) {
  const std::size_t n = path.size();
  if (n == 0) return {};
  std::vector<double> best(n + 1, std::numeric_limits<double>::infinity());
  std::vector<std::size_t> cut(n + 1, 0);
  best[0] = 0.0;
  std::vector<Candidate> candidates;
  for (std::size_t end = 1; end <= n; ++end) {
    candidates.emplace_back(end - 1, best[end - 1]);
    for (Candidate& candidate : candidates) {
      candidate.add(path, end - 1);
      if (candidate.cost() + candidate.price() < best[end]) {
        best[end] = candidate.cost() + candidate.price();
        cut[end] = candidate.first();
      }
    }
    // A start that is dearer than the best already, without the price of a piece, never wins again.
    std::erase_if(candidates, [&](const Candidate& candidate) { return candidate.cost() > best[end]; });
  }
  std::vector<MotionPiece> pieces;
  for (std::size_t end = n; end > 0; end = cut[end])
    pieces.push_back(fitted(path, cut[end], end - 1));
  std::ranges::reverse(pieces);
  return pieces;
}

}  // namespace ferrule
