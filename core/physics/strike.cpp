// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/strike.h"

#include <cmath>
#include <numbers>

#include "core/geometry/units.h"
#include "core/physics/motion.h"
#include "core/physics/slate.h"

namespace ferrule {

namespace {

constexpr double kMostSpeed_mps = 20.0;
constexpr double kMostElevation_deg = 85.0;
constexpr double kMostAim_deg = 36000.0;

/// Sideways over along, in the cue's own plane; + to the left.
double squirtSlope(const Strike& s, const PhysicsParameters& p) {
  if (p.squirtMassRatio <= 0.0) return 0.0;
  const double squared = s.side * s.side + s.height * s.height;
  const double depth = std::sqrt(std::max(0.0, 1.0 - squared));
  return 2.5 * s.side * depth / (1.0 + p.squirtMassRatio + 2.5 * depth * depth);
}

/// Angle of departure from the cue's line, seen from above.
double planSquirt(const Strike& s, const PhysicsParameters& p) {
  return std::atan2(squirtSlope(s, p), std::cos(s.elevation_rad));
}

Result<void> check(const Strike& s, const PhysicsParameters& p) {
  struct Rule {
    const char* name;
    double value;
    double least;
    double most;
  };
  const Rule rules[] = {{"aim_deg", degreesFromRadians(s.aim_rad), -kMostAim_deg, kMostAim_deg},
                        {"speed_m_s", s.speed_mps, 0.0, kMostSpeed_mps},
                        {"side", s.side, -1.0, 1.0},
                        {"height", s.height, -1.0, 1.0},
                        {"elevation_deg", degreesFromRadians(s.elevation_rad), 0.0, kMostElevation_deg}};
  for (const Rule& rule : rules) {
    if (!(rule.value >= rule.least && rule.value <= rule.most)) {
      return failure(ErrorCode::FieldInvalid, "strike", rule.name, {rule.value, rule.least, rule.most});
    }
  }
  const double offset = std::hypot(s.side, s.height);
  if (offset > miscueLimit(p)) return failure(ErrorCode::StrikePastMiscue, "strike", {}, {offset, miscueLimit(p)});
  return {};
}

}  // namespace

double miscueLimit(const PhysicsParameters& p) {
  return p.tipFriction / std::sqrt(1.0 + p.tipFriction * p.tipFriction);
}

double squirtOf(const Strike& strike, const PhysicsParameters& p) {
  return std::atan(squirtSlope(strike, p));
}

Result<BallState> struckBall(TablePoint3 cueBall, const Strike& strike, const PhysicsParameters& p) {
  if (const auto sound = check(strike, p); !sound) return tl::make_unexpected(sound.error());
  const double c = std::cos(strike.elevation_rad);
  const double s = std::sin(strike.elevation_rad);
  const Vector3 forward{std::cos(strike.aim_rad), std::sin(strike.aim_rad), 0.0};
  const Vector3 right{forward.y, -forward.x, 0.0};
  const Vector3 along = c * forward + Vector3{0.0, 0.0, -s};
  const Vector3 up = s * forward + Vector3{0.0, 0.0, c};
  const double slope = squirtSlope(strike, p);
  // The film sees the speed over the cloth: along the cue it is larger.
  const double alongSpeed_mps = strike.speed_mps / std::hypot(c, slope);
  const Vector3 push = alongSpeed_mps * (along - slope * right);  // impulse over mass
  const double depth = std::sqrt(std::max(0.0, 1.0 - strike.side * strike.side - strike.height * strike.height));
  const Vector3 tip = strike.side * right + strike.height * up - depth * along;

  BallState state;
  state.position = cueBall;
  state.spin = (2.5 / p.ballRadius_m) * cross(tip, push);
  state.velocity = {push.x, push.y, 0.0};
  const double up_mps = -p.slateRestitution * push.z;
  if (up_mps >= kLeastHop_mps) state.velocity.z = up_mps;
  return state;
}

Strike strikeDeparting(double departure_rad, Strike strike, const PhysicsParameters& p) {
  strike.aim_rad = wrapAngle(departure_rad - planSquirt(strike, p));
  return strike;
}

std::optional<Strike> strikeThrough(TablePoint cueBall, TablePoint target, Strike strike, const PhysicsParameters& p) {
  const TableVector wanted = target - cueBall;
  const double reach_m = length(wanted);
  if (!(reach_m > 0.0) || !std::isfinite(reach_m)) return std::nullopt;
  const TablePoint3 start{cueBall.x, cueBall.y, p.ballRadius_m};
  /// Direction from the start in which the ball first is as far off as the target.
  const auto headingAtReach = [&](const Strike& s) -> std::optional<double> {
    const auto struck = struckBall(start, s, p);
    if (!struck) return std::nullopt;
    Motion m = freeMotion(*struck, 0.0, p);
    while (m.moves()) {
      const auto away = [&](double t) { return distance(planOf(m.positionAt(t)), cueBall); };
      if (away(m.end_s) >= reach_m) {
        double low = m.start_s;
        double high = m.end_s;
        for (int i = 0; i < 60; ++i) {
          const double middle = 0.5 * (low + high);
          (away(middle) < reach_m ? low : high) = middle;
        }
        return direction(planOf(m.positionAt(high)) - cueBall);
      }
      m = motionAfter(m, p);
    }
    return std::nullopt;
  };
  strike = strikeDeparting(direction(wanted), strike, p);
  // The way turns with the aim without changing its form, so one correction suffices; the second removes rounding.
  for (int i = 0; i < 2; ++i) {
    const auto heading = headingAtReach(strike);
    if (!heading) return std::nullopt;
    strike.aim_rad = wrapAngle(strike.aim_rad + wrapAngle(direction(wanted) - *heading));
  }
  return strike;
}

double ballSpeedFromCueSpeed(double cueSpeed_mps, double offset, const PhysicsParameters& p) {
  return cueSpeed_mps * (1.0 + p.tipRestitution) / (1.0 + 2.5 * offset * offset + p.ballMass_kg / p.cueMass_kg);
}

double cueSpeedFromBallSpeed(double ballSpeed_mps, double offset, const PhysicsParameters& p) {
  return ballSpeed_mps * (1.0 + 2.5 * offset * offset + p.ballMass_kg / p.cueMass_kg) / (1.0 + p.tipRestitution);
}

std::optional<double> tipRestitutionKeeping(double energyShare, double offset, const PhysicsParameters& p) {
  const double kappa = 1.0 + 2.5 * offset * offset;
  const double squared = energyShare - (1.0 - energyShare) * kappa * p.cueMass_kg / p.ballMass_kg;
  if (!(squared >= 0.0 && squared <= 1.0)) return std::nullopt;
  return std::sqrt(squared);
}

}  // namespace ferrule
