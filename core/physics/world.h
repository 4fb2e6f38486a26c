// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <span>
#include <vector>

#include "core/physics/ball_collision.h"
#include "core/physics/event_time.h"
#include "core/physics/simulator.h"

namespace ferrule {

/// The balls of one run, with the next event of each; the simulator's working memory.
///
/// Every prediction is made from exact motions and stays valid until a ball of it changes its motion, so that an event
/// costs the predictions of one or two balls. At one instant the contact that closes fastest comes first, and equal
/// ones together: a rack that is struck on its axis stays symmetrical.
class World {
 public:
  static constexpr std::size_t kMost = BallName::kCount;

  World(const Bed& bed, const PhysicsParameters& parameters, const SimulationOptions& options);

  /// balls: checked, parted, at most kMost.
  void place(std::span<const BallState> balls);
  void play();
  [[nodiscard]] Simulation take();

 private:
  struct Body {
    BallName ball;
    Motion motion;
    BoundaryEvent boundary;
    std::size_t well = 0;         ///< Falling: the pocket
    ShotEvent entry;              ///< Falling: the pocket event, if the ball does not come out again
    std::vector<ShotEvent> held;  ///< Falling: contacts that count only if it does
    BallFate fate = BallFate::OnTable;
    std::optional<PocketName> pocket;
    double lastCushion_s = -1.0;
    CushionName lastCushion = CushionName::Head;
    std::vector<Motion> path;
  };

  void set(std::size_t index, const Motion& motion);
  void refresh(std::size_t index);
  void refreshRow(std::size_t index);

  void endMotion(std::size_t index);
  void meetBoundary(std::size_t index);
  void meetCushionOf(std::size_t index);
  void leaveHole(std::size_t index);
  void meetBalls(double time_s);
  void resolve(std::span<const TouchingPair> pairs, double time_s);

  /// On the cloth, in the air or over a hole: the motion that goes on from here.
  void carryOn(std::size_t index, BallState state, double time_s);
  void land(std::size_t index);
  void enterHole(std::size_t index, std::size_t well, const BallState& state, double time_s);
  void fall(std::size_t index, const BallState& state, double time_s);
  void capture(std::size_t index, double time_s);
  void loseOffTable(std::size_t index, double time_s);
  void remove(std::size_t index, double time_s);

  const Bed& bed_;
  const PhysicsParameters& p_;
  const SimulationOptions& options_;
  std::size_t count_ = 0;
  std::array<Body, kMost> bodies_;
  std::array<double, kMost> own_s_{};                      ///< next end of motion or boundary
  std::array<std::array<double, kMost>, kMost> pair_s_{};  ///< [i][j], i < j
  std::array<double, kMost> row_s_{};                      ///< least of pair_s_[i]
  std::array<std::array<double, kMost>, kMost> met_s_{};   ///< last contact, [i][j], i < j
  Simulation result_;
};

}  // namespace ferrule
