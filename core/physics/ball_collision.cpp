// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/ball_collision.h"

#include <Eigen/Dense>
#include <algorithm>
#include <vector>

namespace ferrule {

namespace {

double restitutionAt(double approach_mps, const PhysicsParameters& p) {
  return approach_mps < kLeastBounce_mps ? 0.0 : p.ballRestitution;
}

/// Friction of a contact whose normal impulse per mass is normal_mps; share scales it down for clusters.
void rub(BallState& first, BallState& second, Vector3 n, double normal_mps, double share, const PhysicsParameters& p) {
  const double radius_m = p.ballRadius_m;
  const Vector3 between = first.velocity - second.velocity;
  const Vector3 slip = between - dot(between, n) * n + radius_m * cross(first.spin + second.spin, n);
  const double slip_mps = length(slip);
  if (!(slip_mps > 0.0)) return;
  const double push_mps = share * std::min(p.ballFriction.at(slip_mps) * normal_mps, slip_mps / 7.0);
  const Vector3 push = (-push_mps / slip_mps) * slip;  // on the first ball, per mass
  first.velocity = first.velocity + push;
  second.velocity = second.velocity - push;
  // R n × J / I on both: lever and impulse both turn round.
  const Vector3 turn = (2.5 / radius_m) * cross(n, push);
  first.spin = first.spin + turn;
  second.spin = second.spin + turn;
}

}  // namespace

double approachSpeed(const BallState& first, const BallState& second) {
  const Vector3 n = unit(second.position - first.position);
  return dot(first.velocity - second.velocity, n);
}

void collideBalls(BallState& first, BallState& second, const PhysicsParameters& p) {
  const Vector3 n = unit(second.position - first.position);
  const double approach_mps = dot(first.velocity - second.velocity, n);
  if (!(approach_mps > 0.0)) return;
  const double normal_mps = 0.5 * (1.0 + restitutionAt(approach_mps, p)) * approach_mps;
  // Slip has no part along n, so the order of the two impulses is free.
  first.velocity = first.velocity - normal_mps * n;
  second.velocity = second.velocity + normal_mps * n;
  rub(first, second, n, normal_mps, 1.0, p);
}

void collideCluster(std::span<BallState> balls, std::span<const TouchingPair> pairs, const PhysicsParameters& p) {
  const auto count = static_cast<Eigen::Index>(pairs.size());
  std::vector<Vector3> normals;
  Eigen::VectorXd wanted(count);
  for (Eigen::Index k = 0; k < count; ++k) {
    const TouchingPair& pair = pairs[static_cast<std::size_t>(k)];
    const BallState& a = balls[pair.first];
    const BallState& b = balls[pair.second];
    normals.push_back(unit(b.position - a.position));
    const double approach_mps = dot(a.velocity - b.velocity, normals.back());
    wanted(k) = (1.0 + restitutionAt(approach_mps, p)) * approach_mps;
  }
  // How much an impulse of one pair slows the meeting of another: both push a shared ball along their own normals.
  Eigen::MatrixXd coupling(count, count);
  for (Eigen::Index k = 0; k < count; ++k) {
    for (Eigen::Index l = 0; l < count; ++l) {
      const TouchingPair& one = pairs[static_cast<std::size_t>(k)];
      const TouchingPair& other = pairs[static_cast<std::size_t>(l)];
      const double along = dot(normals[static_cast<std::size_t>(k)], normals[static_cast<std::size_t>(l)]);
      const int shared = (one.first == other.first) + (one.second == other.second) - (one.first == other.second) -
                         (one.second == other.first);
      coupling(k, l) = shared * along;
    }
  }
  const Eigen::VectorXd impulses = coupling.completeOrthogonalDecomposition().solve(wanted);
  std::vector<Vector3> pushes(balls.size());
  bool pushesOnly = true;
  for (Eigen::Index k = 0; k < count; ++k)
    pushesOnly = pushesOnly && impulses(k) >= 0.0;
  if (!pushesOnly) {
    // A contact would have to pull; taken one after the other none does.
    for (const TouchingPair& pair : pairs)
      collideBalls(balls[pair.first], balls[pair.second], p);
    return;
  }
  for (Eigen::Index k = 0; k < count; ++k) {
    const auto i = static_cast<std::size_t>(k);
    pushes[pairs[i].first] = pushes[pairs[i].first] - impulses(k) * normals[i];
    pushes[pairs[i].second] = pushes[pairs[i].second] + impulses(k) * normals[i];
  }
  for (std::size_t i = 0; i < balls.size(); ++i)
    balls[i].velocity = balls[i].velocity + pushes[i];
  const std::vector<BallState> parted(balls.begin(), balls.end());
  const double share = 1.0 / static_cast<double>(pairs.size());
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    BallState a = parted[pairs[i].first];
    BallState b = parted[pairs[i].second];
    const BallState a0 = a;
    const BallState b0 = b;
    rub(a, b, normals[i], impulses(static_cast<Eigen::Index>(i)), share, p);
    BallState& first = balls[pairs[i].first];
    BallState& second = balls[pairs[i].second];
    first.velocity = first.velocity + (a.velocity - a0.velocity);
    first.spin = first.spin + (a.spin - a0.spin);
    second.velocity = second.velocity + (b.velocity - b0.velocity);
    second.spin = second.spin + (b.spin - b0.spin);
  }
}

}  // namespace ferrule
