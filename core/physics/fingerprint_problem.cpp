// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/fingerprint_problem.h"

#include <algorithm>
#include <cmath>

namespace ferrule::fingerprint {

namespace {

/// Steps of the differences: large against rounding, small against the way's bends. Of the shared unknowns as a share
/// of their spread.
constexpr double kSharedStep = 1e-3;
constexpr double kOwnStep = 1e-4;
/// What is known beforehand of aim (rad), speed (share), tip point (radii) and instant (s) next to the film, and of a
/// resting ball's place.
constexpr double kStrikeSpreads[kStrike] = {0.05, 0.2, 0.25, 0.25, 0.01};
constexpr double kPlaceSpread_m = 3e-4;
/// Where the steps to both sides change a residual by amounts that differ by more than this share of the larger one,
/// and by more than so many sigmas, another event was met.
constexpr double kJumpShare = 0.3;
constexpr double kJump = 1e-3;
/// No film shows a ball better than this.
constexpr double kLeastSigma_m = 2e-4;
/// What every contact adds to the doubt about where a ball is afterwards, as a factor.
constexpr double kContactLoss = 1.3;
/// By how much a simulated contact may be earlier or later than the recorded one and still be the same.
constexpr double kSameContact_s = 0.1;
constexpr std::size_t kMostSamples = 60;  ///< of one ball of one shot
constexpr std::size_t kLeastSamples = 8;  ///< of one shot
/// A ball that moves less was not part of the shot.
constexpr double kMoved_m = 0.01;
constexpr double kFirstSpan_s = 0.2;
constexpr double kLeastSpeed_mps = 0.02;
constexpr double kRest_s = 0.1;
constexpr double kMostTime_s = 60.0;

/// Direction and speed over the cue ball's first samples.
std::optional<TableVector> firstVelocity(const Track& track, double strike_s) {
  double s0 = 0.0;
  double s1 = 0.0;
  double s2 = 0.0;
  TableVector moved0;
  TableVector moved1;
  std::optional<TablePoint> base;
  for (const TrackSample& sample : track.samples) {
    const double t = sample.time_s - strike_s;
    if (t < 0.0 || t > kFirstSpan_s || !sample.seen) continue;
    if (!base) base = sample.position;
    const TableVector moved = sample.position - *base;
    s0 += 1.0;
    s1 += t;
    s2 += t * t;
    moved0 = moved0 + moved;
    moved1 = moved1 + t * moved;
  }
  const double determinant = s0 * s2 - s1 * s1;
  if (s0 < 3.0 || !(determinant > 0.0)) return std::nullopt;
  return (s0 * moved1 - s1 * moved0) / determinant;
}

std::optional<Strike> recordedStrike(const FingerprintShot& shot, const PhysicsParameters& p) {
  const auto cue = std::ranges::find(shot.tracks, kCueBall, &Track::ball);
  if (cue == shot.tracks.end()) return std::nullopt;
  const auto velocity = firstVelocity(*cue, shot.strike_s);
  const Delivery& d = shot.delivery;
  if (!velocity && !(d.aim_rad && d.speed_mps)) return std::nullopt;
  const auto valueOf = [](const std::optional<Measured>& value) { return value ? value->value : 0.0; };
  Strike s;
  s.side = valueOf(d.side);
  s.height = valueOf(d.height);
  s.elevation_rad = valueOf(d.elevation_rad);
  s.speed_mps = d.speed_mps ? d.speed_mps->value : length(*velocity);
  s = strikeDeparting(d.aim_rad ? d.aim_rad->value : direction(*velocity), s, p);
  if (!(s.speed_mps > kLeastSpeed_mps)) return std::nullopt;
  return s;
}

/// The seen samples of one ball during the shot, evenly thinned. None of a ball that nothing touched: it says nothing.
void addSamples(const FingerprintShot& shot, std::size_t ball, std::vector<Sample>& all) {
  const auto track = std::ranges::find(shot.tracks, shot.before[ball].ball, &Track::ball);
  if (track == shot.tracks.end()) return;
  std::vector<Sample> samples;
  bool moved = false;
  for (const TrackSample& sample : track->samples) {
    if (!sample.seen || sample.time_s < shot.strike_s || sample.time_s > shot.rest_s + kRest_s) continue;
    moved = moved || distance(sample.position, shot.before[ball].position) > kMoved_m;
    samples.push_back(
        {ball, sample.time_s - shot.strike_s, sample.position, std::max(kLeastSigma_m, sample.standardUncertainty_m)});
  }
  if (!moved) return;
  const std::size_t stride = 1 + samples.size() / kMostSamples;
  for (std::size_t k = 0; k < samples.size(); k += stride)
    all.push_back(samples[k]);
}

Strike strikeAt(Strike s, const Eigen::VectorXd& own) {
  s.aim_rad += own(0);
  s.speed_mps *= std::exp(own(1));
  s.side += own(2);
  s.height += own(3);
  return s;
}

Contact contactOf(const ShotEvent& event, BallName ball, double time_s) {
  if (event.kind == EventKind::Ball) {
    const BallName other = event.ball == ball ? *event.other : event.ball;
    return {time_s, event.kind, other.number()};
  }
  return {time_s, event.kind, event.cushion ? static_cast<int>(*event.cushion) : 0};
}

bool concerns(const ShotEvent& event, BallName ball) {
  return event.ball == ball || event.other == ball;
}

std::vector<std::vector<Contact>> contactsOf(const Position& balls, const std::vector<ShotEvent>& events,
                                             double start_s) {
  std::vector<std::vector<Contact>> all(balls.size());
  for (const ShotEvent& event : events) {
    for (std::size_t i = 0; i < balls.size(); ++i) {
      if (concerns(event, balls[i].ball)) all[i].push_back(contactOf(event, balls[i].ball, event.time_s - start_s));
    }
  }
  return all;
}

/// Writes into each sample on how many contacts it hangs: a hit hands the deeper of the two depths on to both.
void setDepths(Shot& shot, const std::vector<ShotEvent>& events, double start_s) {
  for (Sample& sample : shot.samples) {
    std::array<int, BallName::kCount> depth{};
    const BallName ball = shot.before[sample.ball].ball;
    for (const ShotEvent& event : events) {
      if (event.time_s - start_s > sample.time_s) break;
      int& first = depth[static_cast<std::size_t>(event.ball.number())];
      ++first;
      if (event.other) {
        int& second = depth[static_cast<std::size_t>(event.other->number())];
        first = second = std::max(first, second + 1);
      }
      if (concerns(event, ball)) ++sample.contacts;
    }
    sample.depth = depth[static_cast<std::size_t>(ball.number())];
    sample.sigma_m *= std::pow(kContactLoss, sample.depth);
  }
}

bool samePlayedUntil(const std::vector<Contact>& recorded, const std::vector<Contact>& played, const Sample& sample) {
  if (played.size() < sample.contacts) return false;
  for (std::size_t i = 0; i < sample.contacts; ++i) {
    const bool same = recorded[i].kind == played[i].kind && recorded[i].partner == played[i].partner &&
                      std::abs(recorded[i].time_s - played[i].time_s) < kSameContact_s;
    if (!same) return false;
  }
  return played.size() == sample.contacts || played[sample.contacts].time_s > sample.time_s - kSameContact_s;
}

Position placesAt(const Shot& shot, const Eigen::VectorXd& own) {
  Position places = shot.before;
  for (std::size_t i = 0; i < shot.parts.size(); ++i) {
    const Eigen::Index column = kStrike + 2 * static_cast<Eigen::Index>(i);
    TablePoint& place = places[shot.parts[i]].position;
    place = place + TableVector{own(column), own(column + 1)};
  }
  return places;
}

}  // namespace

std::array<Shared, kShared> sharedOf(const PhysicsParameters& p) {
  return {Shared{"sliding_friction", p.slidingFriction, 0.04, 0.02, 1.0,
                 [](PhysicsParameters& q, double v) { q.slidingFriction = v; }},
          Shared{"rolling_friction", p.rollingFriction, 0.003, 0.001, 0.1,
                 [](PhysicsParameters& q, double v) { q.rollingFriction = v; }},
          Shared{"spin_decay_rad_s2", p.spinDecay_radps2, 3.0, 0.5, 100.0,
                 [](PhysicsParameters& q, double v) { q.spinDecay_radps2 = v; }},
          Shared{"cushion_restitution", p.cushionRestitution, 0.07, 0.3, 1.0,
                 [](PhysicsParameters& q, double v) { q.cushionRestitution = v; }},
          Shared{"cushion_friction", p.cushionFriction, 0.06, 0.0, 1.0,
                 [](PhysicsParameters& q, double v) { q.cushionFriction = v; }},
          Shared{"ball_restitution", p.ballRestitution, 0.02, 0.5, 1.0,
                 [](PhysicsParameters& q, double v) { q.ballRestitution = v; }},
          Shared{"ball_friction_factor", 1.0, 0.4, 0.0, 5.0, [](PhysicsParameters& q, double v) {
                   q.ballFriction.floor *= v;
                   q.ballFriction.extra *= v;
                 }}};
}

PhysicsParameters parametersAt(const SharedVector& values, PhysicsParameters literature) {
  const auto shared = sharedOf(literature);
  for (std::size_t i = 0; i < shared.size(); ++i)
    shared[i].set(literature, values(static_cast<Eigen::Index>(i)));
  return literature;
}

std::optional<Shot> prepare(const FingerprintShot& shot, const PhysicsParameters& p) {
  if (ballIn(shot.before, kCueBall) == nullptr) return std::nullopt;
  const auto strike = recordedStrike(shot, p);
  if (!strike) return std::nullopt;
  Shot result;
  result.before = shot.before;
  result.recorded = *strike;
  for (std::size_t ball = 0; ball < shot.before.size(); ++ball) {
    const std::size_t count = result.samples.size();
    addSamples(shot, ball, result.samples);
    if (result.samples.size() > count) result.parts.push_back(ball);
  }
  if (result.samples.size() < kLeastSamples) return std::nullopt;
  result.contacts = contactsOf(result.before, shot.events, shot.strike_s);
  setDepths(result, shot.events, shot.strike_s);
  result.spreads.setConstant(kStrike + 2 * static_cast<Eigen::Index>(result.parts.size()), kPlaceSpread_m);
  for (Eigen::Index i = 0; i < kStrike; ++i)
    result.spreads(i) = kStrikeSpreads[i];
  return result;
}

std::optional<Outcome> play(const Table& table, const PhysicsParameters& p, const Shot& shot,
                            const Eigen::VectorXd& own) {
  const auto simulator = Simulator::create(table, p);
  if (!simulator) return std::nullopt;
  SimulationOptions options;
  options.mostTime_s = kMostTime_s;
  const auto played = simulator->shoot(placesAt(shot, own), strikeAt(shot.recorded, own), options);
  if (!played) return std::nullopt;
  const auto contacts = contactsOf(shot.before, played->events, -own(4));
  Outcome outcome;
  outcome.residuals.resize(2 * static_cast<Eigen::Index>(shot.samples.size()));
  for (std::size_t k = 0; k < shot.samples.size(); ++k) {
    const Sample& sample = shot.samples[k];
    const double time_s = std::max(0.0, sample.time_s - own(4));
    const TablePoint place = planOf(played->paths[sample.ball].stateAt(time_s).position);
    const auto i = 2 * static_cast<Eigen::Index>(k);
    outcome.residuals(i) = (place.x - sample.place.x) / sample.sigma_m;
    outcome.residuals(i + 1) = (place.y - sample.place.y) / sample.sigma_m;
    outcome.samePlayed.push_back(samePlayedUntil(shot.contacts[sample.ball], contacts[sample.ball], sample));
  }
  return outcome;
}

Eigen::MatrixXd slopes(const Table& table, const PhysicsParameters& literature, const Shot& shot,
                       const SharedVector& values, const Eigen::VectorXd& own, const Eigen::VectorXd& base,
                       bool withShared) {
  const auto shared = sharedOf(literature);
  const PhysicsParameters here = parametersAt(values, literature);
  Eigen::MatrixXd jacobian = Eigen::MatrixXd::Zero(base.size(), kShared + own.size());
  for (Eigen::Index column = withShared ? 0 : kShared; column < jacobian.cols(); ++column) {
    const bool ofTable = column < kShared;
    const double h = ofTable ? kSharedStep * shared[static_cast<std::size_t>(column)].spread
                             : kOwnStep * shot.spreads(column - kShared);
    const auto at = [&](double step) {
      SharedVector movedValues = values;
      Eigen::VectorXd movedOwn = own;
      (ofTable ? movedValues(column) : movedOwn(column - kShared)) += step;
      return play(table, ofTable ? parametersAt(movedValues, literature) : here, shot, movedOwn);
    };
    const auto up = at(h);
    const auto down = at(-h);
    Eigen::VectorXd slope = Eigen::VectorXd::Zero(base.size());
    for (Eigen::Index i = 0; i < slope.size(); ++i) {
      // At the end of what can be played one side has to do.
      const double ahead = up ? up->residuals(i) - base(i) : down ? base(i) - down->residuals(i) : 0.0;
      const double behind = down ? base(i) - down->residuals(i) : ahead;
      const double larger = std::max(std::abs(ahead), std::abs(behind));
      if (std::abs(ahead - behind) <= kJump + kJumpShare * larger) slope(i) = (ahead + behind) / (2.0 * h);
    }
    jacobian.col(column) = slope;
  }
  return jacobian;
}

}  // namespace ferrule::fingerprint
