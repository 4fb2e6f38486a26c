// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/physics/random_shots.h"

#include <algorithm>
#include <numbers>
#include <set>

namespace ferrule::testing {

namespace {

constexpr double kMostOverlap_m = 1e-6;

std::string at(const char* what, double time_s, double amount) {
  return std::string(what) + " at " + std::to_string(time_s) + " s by " + std::to_string(amount * 1e6) + " millionths";
}

/// What a lossless look at the paths can show.
std::string lawBrokenIn(const Simulator& table, const Simulation& s) {
  const PhysicsParameters& p = table.parameters();
  if (s.end != SimulationEnd::AtRest) return "the shot does not end";
  std::set<double> times;
  for (const BallPath& path : s.paths) {
    for (const Motion& m : path.motions) {
      times.insert(m.start_s);
      if (m.end_s < s.duration_s) times.insert(0.5 * (m.start_s + m.end_s));
    }
  }
  double last_J = kNever;
  double first_J = 0.0;
  double last_s = 0.0;
  for (const double time_s : times) {
    double total_J = 0.0;
    std::vector<BallState> there;
    std::vector<MotionKind> kinds;
    for (const BallPath& path : s.paths) {
      const Motion& m = path.motionAt(time_s);
      if (m.kind == MotionKind::Gone) {
        // It takes along what it had.
        const Motion& before = path.motions[path.motions.size() - 2];
        total_J += energy_J(stateAt(before, path.ball, m.start_s), p);
        continue;
      }
      there.push_back(path.stateAt(time_s));
      kinds.push_back(m.kind);
      total_J += energy_J(there.back(), p);
    }
    if (last_J == kNever) first_J = total_J;
    if (total_J > last_J + 1e-9 * first_J) return at("energy rises", time_s, total_J - last_J);
    last_J = total_J;
    last_s = time_s;
    for (std::size_t i = 0; i < there.size(); ++i) {
      for (std::size_t j = i + 1; j < there.size(); ++j) {
        const double overlap_m = 2.0 * p.ballRadius_m - length(there[i].position - there[j].position);
        if (overlap_m > kMostOverlap_m) return at("balls overlap", time_s, overlap_m);
      }
      if (kinds[i] == MotionKind::Airborne || kinds[i] == MotionKind::Falling) continue;
      if (!standsOnBed(table.bed(), planOf(there[i].position), kMostOverlap_m)) {
        return at("a ball is beyond a cushion", last_s, 0.0) + " " + toText(there[i].ball) + " " +
               std::to_string(there[i].position.x) + " " + std::to_string(there[i].position.y);
      }
    }
  }
  double before_s = 0.0;
  for (const ShotEvent& event : s.events) {
    if (event.time_s < before_s) return "events out of order";
    before_s = event.time_s;
  }
  return {};
}

/// Mirrored at an axis of the table, or at both, which turns it by 180 degrees. Spin is an axial vector.
struct Mirror {
  const char* name;
  double x;
  double y;
};

constexpr Mirror kMirrors[] = {
    {"across the length", 1.0, -1.0}, {"across the width", -1.0, 1.0}, {"turned", -1.0, -1.0}};

std::vector<BallState> mirrored(std::vector<BallState> balls, const Mirror& m) {
  for (BallState& ball : balls) {
    ball.position.x *= m.x;
    ball.position.y *= m.y;
    ball.velocity.x *= m.x;
    ball.velocity.y *= m.y;
    ball.spin.x *= m.y;
    ball.spin.y *= m.x;
    ball.spin.z *= m.x * m.y;
  }
  return balls;
}

}  // namespace

std::vector<BallState> randomShot(const Simulator& table, Random& random) {
  const PhysicsParameters& p = table.parameters();
  const Bed& bed = table.bed();
  const auto between = [&](double low, double high) { return low + (high - low) * random.uniform(); };
  const int count = 1 + static_cast<int>(16.0 * random.uniform());
  std::vector<BallState> balls;
  const double x = bed.halfLength_m - bed.reach_m;
  const double y = bed.halfWidth_m - bed.reach_m;
  while (static_cast<int>(balls.size()) < count) {
    TablePoint place{between(-x, x), between(-y, y)};
    const double kind = random.uniform();
    if (kind < 0.15) place.y = random.uniform() < 0.5 ? y : -y;
    if (kind > 0.7 && !balls.empty()) {
      const double angle = between(0.0, 2.0 * std::numbers::pi);
      place = planOf(balls.back().position) + 2.0 * p.ballRadius_m * TableVector{std::cos(angle), std::sin(angle)};
    }
    if (!standsOnBed(bed, place, 0.0)) continue;
    const bool free = std::ranges::all_of(balls, [&](const BallState& other) {
      return distance(place, planOf(other.position)) >= 2.0 * p.ballRadius_m - 1e-12;
    });
    if (free) balls.push_back(ballAtRest(BallName(static_cast<int>(balls.size())), place, p));
  }
  Strike strike;
  strike.aim_rad = between(-std::numbers::pi, std::numbers::pi);
  strike.speed_mps = 12.0 * random.uniform() * random.uniform();
  const double offset = miscueLimit(p) * std::sqrt(random.uniform()) * 0.999;
  const double around = between(0.0, 2.0 * std::numbers::pi);
  strike.side = offset * std::cos(around);
  strike.height = offset * std::sin(around);
  const double tilt = random.uniform();
  strike.elevation_rad = std::numbers::pi / 3.0 * tilt * tilt * tilt;
  const auto struck = struckBall(balls.front().position, strike, p);
  if (struck) balls.front() = *struck;
  return balls;
}

std::string lawBrokenBy(const Simulator& table, const std::vector<BallState>& balls) {
  const auto s = table.run(balls);
  if (!s) return "refused: " + s.error().subject + " " + s.error().detail;
  if (std::string broken = lawBrokenIn(table, *s); !broken.empty()) return broken;
  const auto again = table.run(balls);
  if (hashOf(*again) != hashOf(*s) || again->paths != s->paths) return "a second run differs";
  for (const Mirror& m : kMirrors) {
    const auto mirror = table.run(mirrored(balls, m));
    if (!mirror) return std::string("the shot mirrored ") + m.name + " is refused";
    for (std::size_t i = 0; i < s->after.size(); ++i) {
      const FinalBall& one = s->after[i];
      const FinalBall& other = mirror->after[i];
      if (one.fate != other.fate || one.position.x != m.x * other.position.x ||
          one.position.y != m.y * other.position.y) {
        return std::string("the shot mirrored ") + m.name + " differs at ball " + toText(one.ball) + " by " +
               std::to_string(
                   std::hypot(one.position.x - m.x * other.position.x, one.position.y - m.y * other.position.y)) +
               " m";
      }
    }
  }
  return {};
}

}  // namespace ferrule::testing
