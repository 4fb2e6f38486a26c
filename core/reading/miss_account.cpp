// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/miss_account.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"
#include "core/physics/ball_collision.h"

namespace ferrule {

namespace {

constexpr double kBeyondPocket_m = 0.5;
constexpr double kLeastSpeedShare = 0.4;
constexpr double kMostSpeedShare = 2.5;
constexpr std::size_t kParts = 6;  ///< aim, squirt, swerve, collision throw, spin throw, speed
using Parts = std::array<double, kParts>;

/// The line from the cue ball's centre to the target's when the one, going straight, meets the other.
std::optional<double> lineOfStraightWay(TablePoint cue, double direction_rad, TablePoint target, double radius_m) {
  const TableVector course{std::cos(direction_rad), std::sin(direction_rad)};
  const TableVector to = target - cue;
  const double across_m = dot(to, perpendicular(course));
  if (std::abs(across_m) >= 2.0 * radius_m || dot(to, course) <= 0.0) return std::nullopt;
  return direction_rad + std::asin(across_m / (2.0 * radius_m));
}

/// The lines on which the target leaves when effects are added one by one, on the real curved way.
struct CurvedLines {
  double smooth_rad = 0.0;  ///< no friction between the balls
  double unspun_rad = 0.0;  ///< friction, the cue ball's side spin taken off
  double real_rad = 0.0;    ///< as it is
  double speed_mps = 0.0;   ///< of the target
};

std::optional<CurvedLines> curvedLines(const Table& table, const PlayedStrike& played, BallName target) {
  const auto simulator = Simulator::create(table, played.parameters);
  if (!simulator) return std::nullopt;
  const BallAt* cue = ballIn(played.balls, kCueBall);
  const BallAt* other = ballIn(played.balls, target);
  if (cue == nullptr || other == nullptr) return std::nullopt;
  SimulationOptions options;
  options.mostTime_s = 10.0;
  options.mostOverlap_m = 0.004;
  const auto simulation = simulator->shoot({*cue, *other}, played.strike, options);
  if (!simulation || simulation->events.empty() || simulation->events.front().kind != EventKind::Ball) {
    return std::nullopt;
  }
  const double time_s = simulation->events.front().time_s;
  const auto& motions = simulation->paths.front().motions;
  const auto after = std::ranges::lower_bound(motions, time_s, {}, &Motion::start_s);
  if (after == motions.begin()) return std::nullopt;
  const BallState came = stateAt(*(after - 1), kCueBall, time_s);
  const BallState lay = ballAtRest(target, other->position, played.parameters);
  const auto leaves = [&](bool friction, bool side) {
    PhysicsParameters p = played.parameters;
    if (!friction) p.ballFriction = constantBallFriction(0.0);
    BallState first = came;
    BallState second = lay;
    if (!side) first.spin.z = 0.0;
    collideBalls(first, second, p);
    return planOf(second.velocity);
  };
  CurvedLines lines;
  lines.smooth_rad = direction(leaves(false, false));
  lines.unspun_rad = direction(leaves(true, false));
  lines.real_rad = direction(leaves(true, true));
  lines.speed_mps = length(leaves(true, true));
  return lines;
}

/// The speed after the hit that carries a ball so far: sliding, then rolling.
/// Source: closed forms of sliding to rolling, 12 v^2 / (49 mu g) and (5 v / 7)^2 / (2 mu_r g).
double speedForWay(double way_m, const PhysicsParameters& p) {
  const double perSquare =
      12.0 / (49.0 * p.slidingFriction * p.gravity_mps2) + 25.0 / (98.0 * p.rollingFriction * p.gravity_mps2);
  return std::sqrt(way_m / perSquare);
}

std::optional<Parts> partsOf(const Table& table, const PlayedStrike& played, const MissEvidence& evidence) {
  const double radius_m = played.parameters.ballRadius_m;
  const BallAt* cue = ballIn(played.balls, kCueBall);
  const BallAt* target = ballIn(played.balls, evidence.target);
  if (cue == nullptr || target == nullptr) return std::nullopt;
  const auto plain = lineOfStraightWay(cue->position, played.strike.aim_rad, target->position, radius_m);
  const auto squirted = lineOfStraightWay(cue->position, played.departure_rad, target->position, radius_m);
  const auto here = curvedLines(table, played, evidence.target);
  if (!plain || !squirted || !here) return std::nullopt;
  PlayedStrike paced = played;
  const double way_m = distance(target->position, evidence.aimedAt) + kBeyondPocket_m;
  paced.strike.speed_mps *=
      std::clamp(speedForWay(way_m, played.parameters) / here->speed_mps, kLeastSpeedShare, kMostSpeedShare);
  // Where the shot cannot be played at that pace, speed is no part of it.
  const CurvedLines right = curvedLines(table, paced, evidence.target).value_or(*here);
  const double needed_rad = direction(evidence.aimedAt - target->position);
  return Parts{wrapAngle(*plain - needed_rad),
               wrapAngle(*squirted - *plain),
               wrapAngle(right.smooth_rad - *squirted),
               wrapAngle(right.unspun_rad - right.smooth_rad),
               wrapAngle(right.real_rad - right.unspun_rad),
               wrapAngle(here->real_rad - right.real_rad)};
}

double uncertaintyOf(const std::optional<Measured>& measured, double open) {
  return measured ? measured->standardUncertainty : open;
}

}  // namespace

std::optional<MissAccount> missAccount(const Table& table, const MissEvidence& evidence) {
  const auto parts = partsOf(table, evidence.strike, evidence);
  if (!parts) return std::nullopt;

  Parts squares{};
  double sumSquare = 0.0;
  const auto vary = [&](double by, auto&& change) {
    PlayedStrike moved = evidence.strike;
    change(moved, by);
    const auto there = partsOf(table, moved, evidence);
    if (!there) return;
    double all = 0.0;
    for (std::size_t i = 0; i < kParts; ++i) {
      const double d = (*there)[i] - (*parts)[i];
      squares[i] += d * d;
      all += d;
    }
    sumSquare += all * all;
  };
  const Delivery& delivery = evidence.delivery;
  const DeliveryPriors& priors = evidence.priors;
  // Aim, with cue and departure turned together.
  vary(uncertaintyOf(delivery.aim_rad, priors.aimSpread_rad), [](PlayedStrike& s, double by) {
    s.strike.aim_rad += by;
    s.departure_rad += by;
  });
  vary(uncertaintyOf(delivery.speed_mps, priors.speedSpread * evidence.strike.strike.speed_mps),
       [](PlayedStrike& s, double by) { s.strike.speed_mps += by; });
  // Another side spin leaves the departure, which is seen, and turns the cue's line.
  vary(uncertaintyOf(delivery.side, priors.sideSpread), [](PlayedStrike& s, double by) {
    s.strike.side = std::clamp(s.strike.side + (s.strike.side > 0.0 ? -by : by), -0.5, 0.5);
    s.strike = strikeDeparting(s.departure_rad, s.strike, s.parameters);
  });
  vary(uncertaintyOf(delivery.elevation_rad, 0.5 * evidence.strike.strike.elevation_rad),
       [](PlayedStrike& s, double by) {
         s.strike.elevation_rad += by;
         s.strike = strikeDeparting(s.departure_rad, s.strike, s.parameters);
       });
  vary(priors.ballFrictionSpread, [](PlayedStrike& s, double by) {
    s.parameters.ballFriction.floor *= std::exp(by);
    s.parameters.ballFriction.extra *= std::exp(by);
  });

  const auto part = [&](std::size_t i) { return Measured{(*parts)[i], std::sqrt(squares[i])}; };
  MissAccount account;
  account.total_rad = evidence.lineError_rad;
  account.aim_rad = part(0);
  account.squirt_rad = part(1);
  account.swerve_rad = part(2);
  account.collisionThrow_rad = part(3);
  account.spinThrow_rad = part(4);
  account.speed_rad = part(5);
  double explained_rad = 0.0;
  for (const double value : *parts)
    explained_rad += value;
  account.remainder_rad = {evidence.lineError_rad.value - explained_rad,
                           std::hypot(std::sqrt(sumSquare), evidence.lineError_rad.standardUncertainty)};
  return account;
}

}  // namespace ferrule
