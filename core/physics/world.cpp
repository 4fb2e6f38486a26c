// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/world.h"

#include <algorithm>

#include "core/physics/cushion_impact.h"
#include "core/physics/slate.h"

namespace ferrule {

namespace {

/// Events closer than this happen at once: a fast ball moves 1e-10 m in it.
constexpr double kSameInstant_s = 1e-11;
/// A contact is told once, however often the two bounce within this time.
constexpr double kSameContact_s = 1e-3;
/// Speeds of meeting within this share are equal.
constexpr double kSameSpeed = 1e-9;
/// A ball lower than this share of its radius below the cloth does not come up again: common practice, no source.
constexpr double kCaptureShare = 0.1;
constexpr double kOnCloth_m = 1e-9;
/// Where a ball may come down beside the cloth before it counts as on the rail.
constexpr double kLandingSlack_m = 1e-3;

}  // namespace

World::World(const Bed& bed, const PhysicsParameters& parameters, const SimulationOptions& options)
    : bed_(bed), p_(parameters), options_(options) {}

void World::place(std::span<const BallState> balls) {
  count_ = balls.size();
  for (std::size_t i = 0; i < count_; ++i) {
    bodies_[i].ball = balls[i].ball;
    if (options_.keepPaths) bodies_[i].path.reserve(8);
    met_s_[i].fill(-1.0);
    carryOn(i, balls[i], 0.0);
  }
  for (auto& row : pair_s_)
    row.fill(kNever);
  row_s_.fill(kNever);
  result_.events.reserve(32);
  for (std::size_t i = 0; i < count_; ++i)
    refresh(i);
}

void World::play() {
  while (true) {
    double next_s = kNever;
    std::size_t owner = 0;
    for (std::size_t i = 0; i < count_; ++i) {
      if (own_s_[i] < next_s) {
        next_s = own_s_[i];
        owner = i;
      }
    }
    double pair_s = kNever;
    for (std::size_t i = 0; i + 1 < count_; ++i)
      pair_s = std::min(pair_s, row_s_[i]);
    const double time_s = std::min(next_s, pair_s);
    if (time_s == kNever) return;
    if (time_s > options_.mostTime_s) {
      result_.end = SimulationEnd::TimeLimit;
      result_.duration_s = options_.mostTime_s;
      return;
    }
    if (++result_.steps > options_.mostSteps) {
      result_.end = SimulationEnd::EventLimit;
      return;
    }
    result_.duration_s = time_s;
    if (pair_s < next_s) {
      meetBalls(pair_s);
    } else if (bodies_[owner].motion.end_s <= bodies_[owner].boundary.time_s) {
      endMotion(owner);
    } else {
      meetBoundary(owner);
    }
  }
}

Simulation World::take() {
  const double end_s = result_.duration_s;
  for (std::size_t i = 0; i < count_; ++i) {
    Body& body = bodies_[i];
    FinalBall ball{body.ball, body.fate, planOf(body.motion.positionAt(end_s)), body.pocket};
    result_.after.push_back(ball);
    if (options_.keepPaths) result_.paths.push_back({body.ball, std::move(body.path)});
  }
  std::ranges::stable_sort(result_.events, {}, &ShotEvent::time_s);
  return std::move(result_);
}

void World::set(std::size_t index, const Motion& motion) {
  Body& body = bodies_[index];
  body.motion = motion;
  if (!options_.keepPaths) return;
  if (!body.path.empty() && body.path.back().start_s == motion.start_s) {
    body.path.back() = motion;
    return;
  }
  if (!body.path.empty()) body.path.back().end_s = motion.start_s;
  body.path.push_back(motion);
}

void World::refresh(std::size_t index) {
  Body& body = bodies_[index];
  const double now_s = body.motion.start_s;
  body.boundary = nextBoundary(body.motion, now_s, bed_, body.well);
  own_s_[index] = std::min(body.motion.end_s, body.boundary.time_s);
  for (std::size_t i = 0; i < index; ++i) {
    const double before_s = pair_s_[i][index];
    const double after_s = bodies_[i].motion.kind == MotionKind::Gone || body.motion.kind == MotionKind::Gone
                               ? kNever
                               : ballContactTime(bodies_[i].motion, body.motion, now_s, p_.ballRadius_m);
    pair_s_[i][index] = after_s;
    if (after_s < row_s_[i]) {
      row_s_[i] = after_s;
    } else if (before_s == row_s_[i]) {
      refreshRow(i);
    }
  }
  for (std::size_t j = index + 1; j < count_; ++j) {
    pair_s_[index][j] = bodies_[j].motion.kind == MotionKind::Gone || body.motion.kind == MotionKind::Gone
                            ? kNever
                            : ballContactTime(body.motion, bodies_[j].motion, now_s, p_.ballRadius_m);
  }
  refreshRow(index);
}

void World::refreshRow(std::size_t index) {
  double least_s = kNever;
  for (std::size_t j = index + 1; j < count_; ++j)
    least_s = std::min(least_s, pair_s_[index][j]);
  row_s_[index] = least_s;
}

void World::endMotion(std::size_t index) {
  Body& body = bodies_[index];
  if (body.motion.kind == MotionKind::Falling) return capture(index, body.motion.end_s);
  if (body.motion.kind == MotionKind::Airborne) return land(index);
  set(index, motionAfter(body.motion, p_));
  refresh(index);
}

void World::land(std::size_t index) {
  Body& body = bodies_[index];
  const double time_s = body.motion.end_s;
  BallState state = stateAt(body.motion, body.ball, time_s);
  const TablePoint place = planOf(state.position);
  for (std::size_t i = 0; i < bed_.wells.size(); ++i) {
    const PocketWell& well = bed_.wells[i];
    if (distance(place, well.hole) > well.holeRadius_m &&
        !(overPocket(well, place) && dot(place - well.hole, well.inward) > 0.0)) {
      continue;
    }
    state.position.z = p_.ballRadius_m;
    enterHole(index, i, state, time_s);
    return;
  }
  if (!standsOnBed(bed_, place, kLandingSlack_m)) return loseOffTable(index, time_s);
  set(index, motionAfter(body.motion, p_));
  refresh(index);
}

void World::carryOn(std::size_t index, BallState state, double time_s) {
  if (bodies_[index].motion.kind == MotionKind::Falling) return fall(index, state, time_s);
  if (state.position.z <= p_.ballRadius_m + kOnCloth_m) {
    state.position.z = p_.ballRadius_m;
    meetSlate(state, p_);
  }
  set(index, freeMotion(state, time_s, p_));
}

void World::meetBoundary(std::size_t index) {
  Body& body = bodies_[index];
  const BoundaryEvent& event = body.boundary;
  switch (event.kind) {
    case BoundaryKind::Cushion:
      return meetCushionOf(index);
    case BoundaryKind::HoleEdge:
      return enterHole(index, event.well, stateAt(body.motion, body.ball, event.time_s), event.time_s);
    case BoundaryKind::HoleExit:
      return leaveHole(index);
    case BoundaryKind::RailTop:
      return loseOffTable(index, event.time_s);
    case BoundaryKind::None:
      return;
  }
}

void World::meetCushionOf(std::size_t index) {
  Body& body = bodies_[index];
  BoundaryEvent event = body.boundary;
  const double time_s = event.time_s;
  BallState state = stateAt(body.motion, body.ball, time_s);
  // Past the slate's edge a ball meets upright walls.
  if (body.motion.kind == MotionKind::Falling) event.toward = unit(horizontal(planOf(event.toward)));
  const double approach_mps = dot(state.velocity, event.toward);
  const bool told = body.lastCushion == event.cushion && time_s - body.lastCushion_s < kSameContact_s;
  if (approach_mps >= kLeastBounce_mps && !told) {
    ShotEvent happened{time_s, EventKind::Cushion, body.ball, {}, event.cushion, {}, planOf(state.position)};
    (body.motion.kind == MotionKind::Falling ? body.held : result_.events).push_back(happened);
  }
  body.lastCushion = event.cushion;
  body.lastCushion_s = time_s;
  meetCushion(state, {event.toward, body.motion.onCloth()}, p_);
  // Nor does it climb them by its spin.
  if (body.motion.kind == MotionKind::Falling) state.velocity.z = std::min(state.velocity.z, 0.0);
  // What it has sunk in is taken back: over the cloth, or in flight straight away from the nose.
  const bool flying = body.motion.kind == MotionKind::Airborne;
  state.position = state.position - event.sunk_m * (flying ? event.toward : unit(horizontal(planOf(event.toward))));
  carryOn(index, state, time_s);
  refresh(index);
}

void World::enterHole(std::size_t index, std::size_t well, const BallState& state, double time_s) {
  Body& body = bodies_[index];
  body.well = well;
  body.held.clear();
  body.entry = {time_s, EventKind::Pocket, body.ball, {}, {}, bed_.wells[well].name, planOf(state.position)};
  fall(index, state, time_s);
  refresh(index);
}

void World::fall(std::size_t index, const BallState& state, double time_s) {
  Motion m;
  m.kind = MotionKind::Falling;
  m.start_s = time_s;
  m.position = state.position;
  m.velocity = state.velocity;
  m.spin = state.spin;
  m.acceleration = {0.0, 0.0, -p_.gravity_mps2};
  const double left_m = state.position.z - (1.0 - kCaptureShare) * p_.ballRadius_m;
  const double vz = state.velocity.z;
  m.end_s = time_s + (vz + std::sqrt(std::max(0.0, vz * vz + 2.0 * p_.gravity_mps2 * left_m))) / p_.gravity_mps2;
  set(index, m);
}

void World::leaveHole(std::size_t index) {
  Body& body = bodies_[index];
  const PocketWell& well = bed_.wells[body.well];
  const double time_s = body.boundary.time_s;
  BallState state = stateAt(body.motion, body.ball, time_s);
  const TableVector out = unit(planOf(state.position) - well.hole);
  if (dot(out, well.inward) > 0.0) {
    // The back of the pocket.
    const double speed_mps = dot(planOf(state.velocity), out);
    state.velocity = state.velocity - horizontal(((1.0 + p_.linerRestitution) * speed_mps) * out);
    fall(index, state, time_s);
    refresh(index);
    return;
  }
  // Back over the slate's edge: the part of the speed that meets the edge is lost, and the height must be won back.
  const double sunk_m = std::max(0.0, p_.ballRadius_m - state.position.z);
  const TableVector velocity = planOf(state.velocity);
  const double squared = dot(velocity, velocity);
  const double kept = 1.0 - sunk_m / p_.ballRadius_m;
  const double left = std::min(squared * kept * kept, squared - 2.0 * p_.gravity_mps2 * sunk_m);
  if (left <= 0.0) return capture(index, time_s);
  state.velocity = horizontal(std::sqrt(left / squared) * velocity);
  state.position.z = p_.ballRadius_m;
  result_.events.insert(result_.events.end(), body.held.begin(), body.held.end());
  body.held.clear();
  set(index, freeMotion(state, time_s, p_));
  refresh(index);
}

void World::capture(std::size_t index, double time_s) {
  Body& body = bodies_[index];
  body.fate = BallFate::Pocketed;
  body.pocket = bed_.wells[body.well].name;
  result_.events.push_back(body.entry);
  remove(index, time_s);
}

void World::loseOffTable(std::size_t index, double time_s) {
  Body& body = bodies_[index];
  body.fate = BallFate::OffTable;
  result_.events.push_back(
      {time_s, EventKind::OffTable, body.ball, {}, {}, {}, planOf(body.motion.positionAt(time_s))});
  remove(index, time_s);
}

void World::remove(std::size_t index, double time_s) {
  Motion gone;
  gone.kind = MotionKind::Gone;
  gone.start_s = time_s;
  gone.position = bodies_[index].motion.positionAt(time_s);
  set(index, gone);
  refresh(index);
}

void World::meetBalls(double time_s) {
  std::array<TouchingPair, kMost*(kMost - 1) / 2> due;
  std::array<double, kMost*(kMost - 1) / 2> speeds{};
  std::size_t count = 0;
  double fastest = -kNever;
  for (std::size_t i = 0; i + 1 < count_; ++i) {
    if (row_s_[i] > time_s + kSameInstant_s) continue;
    for (std::size_t j = i + 1; j < count_; ++j) {
      if (pair_s_[i][j] > time_s + kSameInstant_s) continue;
      due[count] = {i, j};
      speeds[count] = approachSpeed(stateAt(bodies_[i].motion, {}, time_s), stateAt(bodies_[j].motion, {}, time_s));
      fastest = std::max(fastest, speeds[count]);
      ++count;
    }
  }
  // The fastest one, with those that close exactly as fast.
  std::size_t kept = 0;
  for (std::size_t k = 0; k < count; ++k) {
    if (speeds[k] >= fastest - kSameSpeed * std::abs(fastest)) due[kept++] = due[k];
  }
  resolve({due.data(), kept}, time_s);
}

void World::resolve(std::span<const TouchingPair> pairs, double time_s) {
  std::array<BallState, kMost> states;
  std::array<bool, kMost> involved{};
  bool shared = false;
  for (const TouchingPair& pair : pairs) {
    for (const std::size_t index : {pair.first, pair.second}) {
      shared = shared || involved[index];
      involved[index] = true;
      states[index] = stateAt(bodies_[index].motion, bodies_[index].ball, time_s);
    }
  }
  for (const TouchingPair& pair : pairs) {
    BallState& a = states[pair.first];
    BallState& b = states[pair.second];
    double& met_s = met_s_[pair.first][pair.second];
    if (met_s < 0.0 || time_s - met_s > kSameContact_s) {
      const bool firstIsFaster = dot(a.velocity, a.velocity) >= dot(b.velocity, b.velocity);
      const BallState& one = firstIsFaster ? a : b;
      const BallState& other = firstIsFaster ? b : a;
      result_.events.push_back({time_s, EventKind::Ball, one.ball, other.ball, {}, {}, planOf(one.position)});
    }
    met_s = time_s;
    // What rounding and resting contact let the two sink in is taken back here.
    const Vector3 between = b.position - a.position;
    const double overlap_m = 2.0 * p_.ballRadius_m - length(between);
    if (overlap_m > 0.0) {
      const Vector3 apart = (0.5 * overlap_m / length(between)) * horizontal(planOf(between));
      a.position = a.position - apart;
      b.position = b.position + apart;
    }
  }
  if (shared) {
    collideCluster(states, pairs, p_);
  } else {
    for (const TouchingPair& pair : pairs)
      collideBalls(states[pair.first], states[pair.second], p_);
  }
  for (std::size_t i = 0; i < count_; ++i) {
    if (involved[i]) carryOn(i, states[i], time_s);
  }
  for (std::size_t i = 0; i < count_; ++i) {
    if (involved[i]) refresh(i);
  }
}

}  // namespace ferrule
