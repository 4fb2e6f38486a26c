// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/delivery_floor.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "core/reading/delivery_problem.h"

namespace ferrule::bench {

namespace {

constexpr std::size_t kFewest = 4;   ///< places of the cue ball under way
constexpr double kPlace_m = 0.0002;  ///< how well a second of rest places a ball

/// A ball's way as far as the strike decides it, s from the strike.
struct Span {
  double from_s = 0.0;
  double until_s = std::numeric_limits<double>::infinity();
  int cushions = 0;
};

std::map<BallName, Span> spansOf(const Simulation& simulation) {
  std::map<BallName, Span> spans{{kCueBall, {}}};
  bool met = false;
  const auto cut = [&](BallName ball, double time_s) {
    const auto span = spans.find(ball);
    if (span != spans.end()) span->second.until_s = std::min(span->second.until_s, time_s);
  };
  for (const ShotEvent& event : simulation.events) {
    if (event.kind == EventKind::Ball && event.ball == kCueBall && !met && event.other) {
      met = true;
      spans[*event.other].from_s = event.time_s;
      continue;
    }
    if (event.kind == EventKind::Cushion) {
      const auto span = spans.find(event.ball);
      if (span != spans.end() && ++span->second.cushions >= 2) cut(event.ball, event.time_s);
      continue;
    }
    cut(event.ball, event.time_s);
    if (event.other) cut(*event.other, event.time_s);
  }
  return spans;
}

DeliveryWindow windowOf(const SimulatedShot& shot) {
  DeliveryWindow window;
  window.camera = shot.camera;
  const auto spans = spansOf(shot.simulation);
  for (const BallAt& at : shot.before) {
    if (spans.contains(at.ball)) window.balls.push_back({at.ball, {at.position, kPlace_m}});
  }
  window.contact = window.balls.size() > 1;
  for (const auto& [ball, span] : spans)
    window.cushion |= span.cushions > 0;
  for (const ImageReading& reading : shot.readings) {
    const double time_s = reading.time_s - shot.strike_s;
    for (const BallSample& sample : reading.balls) {
      const auto span = spans.find(sample.ball);
      if (!sample.seen || span == spans.end()) continue;
      if (time_s < span->second.from_s || time_s > span->second.until_s) continue;
      std::size_t index = 0;
      while (window.balls[index].ball != sample.ball)
        ++index;
      window.samples.push_back({index, {reading.time_s, sample.position, sample.standardUncertainty_m}});
      window.end_s = std::max(window.end_s, reading.time_s);
    }
  }
  return window;
}

/// The truth in the problem's unknowns. The start is the truth already.
Eigen::VectorXd truthIn(const DeliveryProblem& problem, const SimulatedShot& shot, const DeliveryPriors& priors) {
  const PhysicsParameters& p = shot.parameters;
  Eigen::VectorXd z = Eigen::VectorXd::Zero(problem.unknowns());
  const auto set = [&](Eigen::Index unknown, double value) {
    z[unknown] = (value - problem.middle(unknown)) / problem.spread(unknown);
  };
  set(kSide, shot.strike.side);
  set(kHeight, shot.strike.height);
  set(kLogElevation, std::log(shot.strike.elevation_rad));
  set(kLogSliding, std::log(p.slidingFriction));
  set(kLogRolling, std::log(p.rollingFriction));
  set(kSlate, p.slateRestitution);
  set(kLogSpinDecay, std::log(p.spinDecay_radps2));
  set(kBallRestitution, p.ballRestitution);
  set(kLogBallFriction, std::log(p.ballFriction.floor / priors.middle.ballFriction.floor));
  set(kCushionRestitution, p.cushionRestitution);
  set(kCushionFriction, p.cushionFriction);
  return z;
}

}  // namespace

std::optional<DeliveryFloor> deliveryFloor(const SimulatedShot& shot) {
  const DeliveryWindow window = windowOf(shot);
  if (window.balls.empty() || !(window.balls.front().ball == kCueBall)) return std::nullopt;
  std::size_t ofCue = 0;
  for (const WindowSample& sample : window.samples)
    ofCue += sample.ball == 0 ? 1 : 0;
  if (ofCue < kFewest) return std::nullopt;
  PathFit start;
  start.strike_s = shot.strike_s;
  start.aim_rad = {shot.departure_rad, 0.0};
  start.speed_mps = {shot.strike.speed_mps, 0.0};
  DeliveryPriors priors;
  priors.middle = parametersFor(shot.measured.balls);
  const DeliveryProblem problem(shot.measured.table, window, start, priors);
  const Eigen::VectorXd truth = truthIn(problem, shot, priors);
  std::vector<Eigen::Index> free;
  for (Eigen::Index i = 0; i < problem.unknowns(); ++i) {
    if (problem.matters(i)) free.push_back(i);
  }
  const Eigen::MatrixXd slopes = problem.slopes(truth, problem.play(truth), free);
  const auto count = static_cast<Eigen::Index>(free.size());
  const Eigen::MatrixXd covariance =
      (slopes.transpose() * slopes).ldlt().solve(Eigen::MatrixXd::Identity(count, count));
  const auto sd = [&](Eigen::Index unknown) {
    const auto column = std::ranges::find(free, unknown) - free.begin();
    return problem.spread(unknown) * std::sqrt(covariance(column, column));
  };
  return DeliveryFloor{sd(kAim), sd(kLogSpeed), sd(kSide), sd(kHeight)};
}

}  // namespace ferrule::bench
