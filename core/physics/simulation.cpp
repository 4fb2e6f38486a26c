// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/simulation.h"

#include <algorithm>
#include <bit>

#include "core/base/contract.h"

namespace ferrule {

namespace {

class Hash {
 public:
  void add(std::uint64_t bits) {
    for (int i = 0; i < 8; ++i) {
      value_ ^= (bits >> (8 * i)) & 0xff;
      value_ *= 0x100000001b3ULL;
    }
  }
  void add(double number) { add(std::bit_cast<std::uint64_t>(number)); }
  void add(TablePoint p) {
    add(p.x);
    add(p.y);
  }
  [[nodiscard]] std::uint64_t value() const { return value_; }

 private:
  std::uint64_t value_ = 0xcbf29ce484222325ULL;
};

}  // namespace

const Motion& BallPath::motionAt(double time_s) const {
  FERRULE_REQUIRE(!motions.empty());
  const auto later = std::ranges::upper_bound(motions, time_s, {}, &Motion::start_s);
  return later == motions.begin() ? motions.front() : *(later - 1);
}

BallState BallPath::stateAt(double time_s) const {
  const Motion& motion = motionAt(time_s);
  return ferrule::stateAt(motion, ball, std::clamp(time_s, motion.start_s, motion.end_s));
}

std::uint64_t hashOf(const Simulation& simulation) {
  Hash hash;
  hash.add(simulation.duration_s);
  for (const FinalBall& ball : simulation.after) {
    hash.add(static_cast<std::uint64_t>(ball.ball.number()));
    hash.add(static_cast<std::uint64_t>(ball.fate));
    hash.add(ball.position);
    hash.add(static_cast<std::uint64_t>(ball.pocket ? static_cast<int>(*ball.pocket) + 1 : 0));
  }
  for (const ShotEvent& event : simulation.events) {
    hash.add(event.time_s);
    hash.add(static_cast<std::uint64_t>(event.kind));
    hash.add(static_cast<std::uint64_t>(event.ball.number()));
    hash.add(event.position);
  }
  return hash.value();
}

std::vector<PocketedBall> pocketedIn(const Simulation& simulation) {
  std::vector<PocketedBall> balls;
  for (const ShotEvent& event : simulation.events) {
    if (event.kind == EventKind::Pocket) balls.push_back({event.ball, *event.pocket});
  }
  return balls;
}

std::optional<BallName> firstContactIn(const Simulation& simulation) {
  for (const ShotEvent& event : simulation.events) {
    if (event.kind != EventKind::Ball) continue;
    if (event.ball.isCueBall()) return event.other;
    if (event.other && event.other->isCueBall()) return event.ball;
  }
  return std::nullopt;
}

}  // namespace ferrule
