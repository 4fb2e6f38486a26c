// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/simulator.h"

#include <algorithm>
#include <numeric>

#include "core/geometry/units.h"
#include "core/physics/world.h"

namespace ferrule {

namespace {

constexpr int kPartingRounds = 1000;
constexpr double kParted_m = 1e-10;
constexpr double kMostSpeed_mps = 50.0;
constexpr double kMostSpin_radps = 5000.0;
constexpr double kMostHeight_m = 5.0;

Result<void> checkBall(const BallState& ball) {
  struct Rule {
    const char* name;
    double value;
    double most;
  };
  const Rule rules[] = {{"x_mm", millimetresFromMetres(ball.position.x), 1e5},
                        {"y_mm", millimetresFromMetres(ball.position.y), 1e5},
                        {"z_mm", millimetresFromMetres(ball.position.z), millimetresFromMetres(kMostHeight_m)},
                        {"velocity", length(ball.velocity), kMostSpeed_mps},
                        {"spin", length(ball.spin), kMostSpin_radps}};
  for (const Rule& rule : rules) {
    if (!(std::abs(rule.value) <= rule.most)) {
      return failure(ErrorCode::FieldInvalid, "position", std::string(rule.name) + " of ball " + toText(ball.ball),
                     {rule.value, -rule.most, rule.most});
    }
  }
  return {};
}

/// Pushes a ball off the cushions by no more than the slack. False when it stands farther outside.
bool pushOntoBed(BallState& ball, const Bed& bed, double slack_m) {
  if (!standsOnBed(bed, planOf(ball.position), slack_m)) return false;
  const double x = bed.halfLength_m - bed.reach_m;
  const double y = bed.halfWidth_m - bed.reach_m;
  // Farther out it stands in a pocket's mouth, and no nose is there.
  if (std::abs(ball.position.x) <= x + slack_m && std::abs(ball.position.y) <= y + slack_m) {
    ball.position.x = std::clamp(ball.position.x, -x, x);
    ball.position.y = std::clamp(ball.position.y, -y, y);
  }
  return true;
}

Result<void> partBalls(std::vector<BallState>& balls, const Bed& bed, double most_m) {
  for (const BallState& ball : balls) {
    if (ball.position.z < bed.radius_m - most_m)
      return failure(ErrorCode::BallOutsideTable, "position", toText(ball.ball));
  }
  const double apart_m = 2.0 * bed.radius_m;
  double worst_m = 0.0;
  for (std::size_t i = 0; i < balls.size(); ++i) {
    for (std::size_t j = i + 1; j < balls.size(); ++j) {
      const double overlap_m = apart_m - length(balls[j].position - balls[i].position);
      worst_m = std::max(worst_m, overlap_m);
      if (overlap_m > most_m) {
        return failure(ErrorCode::BallsOverlap, "position", toText(balls[i].ball) + " and " + toText(balls[j].ball),
                       {millimetresFromMetres(overlap_m), millimetresFromMetres(most_m)});
      }
    }
  }
  for (int round = 0; round < kPartingRounds; ++round) {
    worst_m = 0.0;
    for (BallState& ball : balls) {
      ball.position.z = std::max(ball.position.z, bed.radius_m);
      if (!pushOntoBed(ball, bed, most_m)) return failure(ErrorCode::BallOutsideTable, "position", toText(ball.ball));
    }
    for (std::size_t i = 0; i < balls.size(); ++i) {
      for (std::size_t j = i + 1; j < balls.size(); ++j) {
        const Vector3 between = balls[j].position - balls[i].position;
        const double overlap_m = apart_m - length(between);
        worst_m = std::max(worst_m, overlap_m);
        if (overlap_m <= kParted_m) continue;
        const Vector3 shift = (0.5 * overlap_m / length(between)) * between;
        balls[i].position = balls[i].position - shift;
        balls[j].position = balls[j].position + shift;
      }
    }
    if (worst_m <= kParted_m) break;
  }
  return {};
}

}  // namespace

Result<Simulator> Simulator::create(const Table& table, const PhysicsParameters& parameters) {
  if (const auto sound = check(parameters); !sound) return tl::make_unexpected(sound.error());
  return Simulator(bedOf(table, parameters.ballRadius_m), parameters);
}

Result<Simulation> Simulator::run(std::span<const BallState> given, const SimulationOptions& options) const {
  // Worked through in the order of the names, whatever the order given.
  std::vector<std::size_t> order(given.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return given[i].ball; });
  std::vector<BallState> balls;
  balls.reserve(given.size());
  for (const std::size_t i : order) {
    if (const auto sound = checkBall(given[i]); !sound) return tl::make_unexpected(sound.error());
    if (!balls.empty() && balls.back().ball == given[i].ball) {
      return failure(ErrorCode::FieldInvalid, "position", "ball " + toText(given[i].ball) + " twice");
    }
    balls.push_back(given[i]);
  }
  if (const auto parted = partBalls(balls, bed_, options.mostOverlap_m); !parted) {
    return tl::make_unexpected(parted.error());
  }
  World world(bed_, parameters_, options);
  world.place(balls);
  world.play();
  Simulation result = world.take();
  const bool reordered = !std::ranges::is_sorted(order);
  if (reordered) {
    Simulation sorted = result;
    for (std::size_t k = 0; k < order.size(); ++k) {
      result.after[order[k]] = sorted.after[k];
      if (options.keepPaths) result.paths[order[k]] = std::move(sorted.paths[k]);
    }
  }
  return result;
}

Result<Simulation> Simulator::shoot(const Position& before, const Strike& strike,
                                    const SimulationOptions& options) const {
  std::vector<BallState> balls;
  balls.reserve(before.size());
  bool struck = false;
  for (const BallAt& place : before) {
    balls.push_back(ballAtRest(place.ball, place.position, parameters_));
    if (!place.ball.isCueBall()) continue;
    auto state = struckBall(balls.back().position, strike, parameters_);
    if (!state) return tl::make_unexpected(state.error());
    balls.back() = *state;
    struck = true;
  }
  if (!struck) return failure(ErrorCode::NotFound, "cue ball", "position");
  return run(balls, options);
}

}  // namespace ferrule
