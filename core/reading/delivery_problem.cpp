// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/delivery_problem.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kStep = 1e-4;  ///< in spreads: large against rounding, small against the way's bends
constexpr double kBeyond = 1e3;
constexpr double kHuber = 3.0;  ///< sigmas up to which a sample counts fully
/// The simulation may overlap placed balls by what places are uncertain by.
constexpr double kMostOverlap_m = 0.004;
/// A tip that does not hold is left to the prior, so that the fit meets a slope and no wall.
constexpr double kLooseTipFriction = 1.2;

void mix(std::uint64_t& hash, std::uint64_t value) {
  hash = (hash ^ value) * 0x100000001b3ULL;
}

std::uint64_t courseOf(const std::vector<ShotEvent>& events) {
  std::uint64_t hash = 0xcbf29ce484222325ULL;
  for (const ShotEvent& event : events) {
    mix(hash, static_cast<std::uint64_t>(event.kind));
    mix(hash, static_cast<std::uint64_t>(event.ball.number()));
    mix(hash, static_cast<std::uint64_t>(event.other ? event.other->number() + 1 : 0));
    mix(hash, static_cast<std::uint64_t>(event.cushion ? static_cast<int>(*event.cushion) + 1 : 0));
  }
  return hash;
}

}  // namespace

TablePoint seenFrom(const std::optional<TablePoint3>& camera, TablePoint3 centre, double radius_m) {
  const double height_m = centre.z - radius_m;
  if (!camera || height_m <= 0.0 || camera->z <= centre.z) return planOf(centre);
  return planOf(centre) + (height_m / (camera->z - centre.z)) * (planOf(centre) - planOf(*camera));
}

DeliveryProblem::DeliveryProblem(const Table& table, const DeliveryWindow& window, const PathFit& start,
                                 const DeliveryPriors& priors)
    : table_(table), window_(window), priors_(priors), horizon_s_(window.end_s) {
  const auto balls = static_cast<Eigen::Index>(window.balls.size());
  middle_.setZero(kDeliveryUnknowns + 2 * (balls - 1));
  spread_ = middle_;
  const auto set = [&](Eigen::Index unknown, double middle, double spread) {
    middle_[unknown] = middle;
    spread_[unknown] = spread;
  };
  const PhysicsParameters& p = priors.middle;
  const RestingPlace& cue = window.balls.front().place;
  set(kStrikeTime, start.strike_s, priors.strikeSpread_s);
  set(kCueX, cue.position.x, cue.standardUncertainty_m);
  set(kCueY, cue.position.y, cue.standardUncertainty_m);
  set(kAim, start.aim_rad.value, priors.aimSpread_rad);
  set(kLogSpeed, std::log(start.speed_mps.value), priors.speedSpread);
  set(kSide, 0.0, priors.sideSpread);
  set(kHeight, 0.0, priors.heightSpread);
  set(kLogElevation, std::log(priors.elevation_rad), priors.elevationSpread);
  set(kLogSliding, std::log(p.slidingFriction), priors.slidingFrictionSpread);
  set(kLogRolling, std::log(p.rollingFriction), priors.rollingFrictionSpread);
  set(kSlate, p.slateRestitution, priors.slateRestitutionSpread);
  set(kLogSpinDecay, std::log(p.spinDecay_radps2), priors.spinDecaySpread);
  set(kBallRestitution, p.ballRestitution, priors.ballRestitutionSpread);
  set(kLogBallFriction, 0.0, priors.ballFrictionSpread);
  set(kCushionRestitution, p.cushionRestitution, priors.cushionRestitutionSpread);
  set(kCushionFriction, p.cushionFriction, priors.cushionFrictionSpread);
  for (Eigen::Index i = 1; i < balls; ++i) {
    const RestingPlace& place = window.balls[static_cast<std::size_t>(i)].place;
    set(kDeliveryUnknowns + 2 * (i - 1), place.position.x, place.standardUncertainty_m);
    set(kDeliveryUnknowns + 2 * (i - 1) + 1, place.position.y, place.standardUncertainty_m);
  }
  weights_.setOnes(static_cast<Eigen::Index>(window.samples.size()));
}

bool DeliveryProblem::matters(Eigen::Index unknown) const {
  switch (unknown) {
    case kLogSpinDecay:
      return window_.contact || window_.cushion;
    case kBallRestitution:
    case kLogBallFriction:
      return window_.contact;
    case kCushionRestitution:
    case kCushionFriction:
      return window_.cushion;
    default:
      return true;
  }
}

PlayedStrike DeliveryProblem::at(const Eigen::VectorXd& z) const {
  const Eigen::VectorXd q = middle_ + spread_.cwiseProduct(z);
  PlayedStrike played;
  PhysicsParameters& p = played.parameters;
  p = priors_.middle;
  p.slidingFriction = std::exp(q[kLogSliding]);
  p.rollingFriction = std::exp(q[kLogRolling]);
  p.spinDecay_radps2 = std::exp(q[kLogSpinDecay]);
  p.slateRestitution = std::clamp(q[kSlate], 0.05, 0.95);
  p.ballRestitution = std::clamp(q[kBallRestitution], 0.5, 1.0);
  const double friction = std::exp(q[kLogBallFriction]);
  p.ballFriction.floor *= friction;
  p.ballFriction.extra *= friction;
  p.cushionRestitution = std::clamp(q[kCushionRestitution], 0.3, 1.0);
  p.cushionFriction = std::clamp(q[kCushionFriction], 0.0, 1.0);
  p.tipFriction = kLooseTipFriction;
  played.strike_s = q[kStrikeTime];
  played.departure_rad = q[kAim];
  Strike strike;
  strike.speed_mps = std::exp(q[kLogSpeed]);
  strike.side = q[kSide];
  strike.height = q[kHeight];
  strike.elevation_rad = std::exp(q[kLogElevation]);
  played.strike = strikeDeparting(q[kAim], strike, p);
  for (std::size_t i = 0; i < window_.balls.size(); ++i) {
    const Eigen::Index column =
        i == 0 ? Eigen::Index{kCueX} : kDeliveryUnknowns + 2 * (static_cast<Eigen::Index>(i) - 1);
    played.balls.push_back({window_.balls[i].ball, {q[column], q[column + 1]}});
  }
  return played;
}

DeliveryProblem::Played DeliveryProblem::play(const Eigen::VectorXd& z) const {
  Played result;
  result.residuals.setConstant(residuals(), kBeyond);
  const PlayedStrike played = at(z);
  const auto simulator = Simulator::create(table_, played.parameters);
  if (!simulator) return result;
  SimulationOptions options;
  options.mostTime_s = std::max(0.1, horizon_s_ - played.strike_s + 0.01);
  options.mostOverlap_m = kMostOverlap_m;
  const auto simulation = simulator->shoot(played.balls, played.strike, options);
  if (!simulation) return result;
  result.course = courseOf(simulation->events);
  for (std::size_t k = 0; k < window_.samples.size(); ++k) {
    const WindowSample& sample = window_.samples[k];
    if (sample.point.time_s > horizon_s_) {
      result.residuals.segment(2 * static_cast<Eigen::Index>(k), 2).setZero();
      continue;
    }
    const double time_s = std::max(0.0, sample.point.time_s - played.strike_s);
    const TablePoint there =
        seenFrom(window_.camera, simulation->paths[sample.ball].motionAt(time_s).positionAt(time_s),
                 played.parameters.ballRadius_m);
    const auto i = static_cast<Eigen::Index>(k);
    const double scale = std::sqrt(weights_[i]) / sample.point.standardUncertainty_m;
    result.residuals[2 * i] = scale * (there.x - sample.point.position.x);
    result.residuals[2 * i + 1] = scale * (there.y - sample.point.position.y);
  }
  result.residuals.segment(2 * sampleCount(), unknowns()) = z;
  const double offset = std::hypot(played.strike.side, played.strike.height);
  result.residuals[residuals() - 1] = std::max(0.0, offset - priors_.miscueLimit) / priors_.miscueSpread;
  return result;
}

Eigen::MatrixXd DeliveryProblem::slopes(const Eigen::VectorXd& z, const Played& base,
                                        const std::vector<Eigen::Index>& free) const {
  Eigen::MatrixXd all = Eigen::MatrixXd::Zero(residuals(), static_cast<Eigen::Index>(free.size()));
  for (std::size_t c = 0; c < free.size(); ++c) {
    for (const double step : {kStep, -kStep}) {
      Eigen::VectorXd moved = z;
      moved[free[c]] += step;
      const Played there = play(moved);
      if (there.course != base.course) continue;
      all.col(static_cast<Eigen::Index>(c)) = (there.residuals - base.residuals) / step;
      break;
    }
    // What is known beforehand has its slope in any case.
    all(2 * sampleCount() + free[c], static_cast<Eigen::Index>(c)) = 1.0;
  }
  return all;
}

void DeliveryProblem::setHorizon(double time_s) {
  horizon_s_ = time_s;
}

Eigen::Index DeliveryProblem::samplesInHorizon() const {
  return std::ranges::count_if(window_.samples,
                               [&](const WindowSample& sample) { return sample.point.time_s <= horizon_s_; });
}

double DeliveryProblem::weightSum() const {
  double sum = 0.0;
  for (std::size_t k = 0; k < window_.samples.size(); ++k) {
    if (window_.samples[k].point.time_s <= horizon_s_) sum += weights_[static_cast<Eigen::Index>(k)];
  }
  return sum;
}

void DeliveryProblem::reweight(const Eigen::VectorXd& z) {
  weights_.setOnes();
  const Played played = play(z);
  for (Eigen::Index k = 0; k < sampleCount(); ++k) {
    const double size = played.residuals.segment(2 * k, 2).norm();
    if (size > kHuber) weights_[k] = kHuber / size;
  }
}

}  // namespace ferrule
