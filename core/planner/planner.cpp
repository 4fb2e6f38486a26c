// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/planner.h"

#include <tbb/parallel_for.h>

#include "core/planner/search.h"

namespace ferrule {

struct Planner::Impl {
  explicit Impl(Simulator table) : simulator(std::move(table)), windows(simulator) {}

  Simulator simulator;
  PocketWindows windows;
};

Planner::Planner(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Planner::~Planner() = default;
Planner::Planner(Planner&&) noexcept = default;
Planner& Planner::operator=(Planner&&) noexcept = default;

Result<Planner> Planner::create(const Table& table, const PhysicsParameters& parameters) {
  auto simulator = Simulator::create(table, parameters);
  if (!simulator) return tl::make_unexpected(simulator.error());
  return Planner(std::make_unique<Impl>(std::move(*simulator)));
}

const Simulator& Planner::simulator() const {
  return impl_->simulator;
}

const PocketWindows& Planner::windows() const {
  return impl_->windows;
}

namespace {

/// Whether the balls can lie so: as the simulator sees it when nothing moves.
Result<void> checkBalls(const Simulator& simulator, const Position& balls) {
  std::vector<BallState> states;
  for (const BallAt& ball : balls)
    states.push_back(ballAtRest(ball.ball, ball.position, simulator.parameters()));
  const auto rested = simulator.run(states);
  if (!rested) return tl::make_unexpected(rested.error());
  return {};
}

}  // namespace

Result<Suggestion> Planner::suggest(const Situation& situation, const std::array<Scatter, 2>& players,
                                    const SearchBudget& budget,
                                    const std::function<void(const Suggestion&)>& onBetter) const {
  Situation s = situation;
  if (s.cueBall != CueBallFreedom::AsItLies)
    std::erase_if(s.balls, [](const BallAt& ball) { return ball.ball.isCueBall(); });
  if (const auto sound = checkBalls(impl_->simulator, s.balls); !sound) return tl::make_unexpected(sound.error());
  if (s.cueBall == CueBallFreedom::AsItLies && ballIn(s.balls, kCueBall) == nullptr)
    return failure(ErrorCode::NotFound, "cue ball", "position");
  if (legalFirst(s).empty()) return failure(ErrorCode::NotFound, "legal shot", "no-ball");
  const PlanningTable table{impl_->simulator, impl_->windows};
  Search search(table, s, players, budget, onBetter);
  Suggestion suggestion = search.run();
  if (suggestion.plans.empty()) return failure(ErrorCode::NotFound, "legal shot", "no-way");
  return suggestion;
}

Result<Chances> Planner::chances(const Situation& situation, const Plan& plan, const std::array<Scatter, 2>& players,
                                 std::size_t samples, std::uint64_t seed) const {
  ReadyShot shot{plan, situation, 0.0};
  if (plan.cueBall) shot.situation = withCueBallAt(situation, *plan.cueBall);
  const BallAt* cueBall = ballIn(shot.situation.balls, kCueBall);
  if (cueBall == nullptr) return failure(ErrorCode::NotFound, "cue ball", "position");
  if (const auto played = impl_->simulator.shoot(shot.situation.balls, plan.strike); !played)
    return tl::make_unexpected(played.error());
  if (const BallAt* first = ballIn(shot.situation.balls, plan.first); first != nullptr && !plan.first.isCueBall())
    shot.way_m = std::max(0.0, distance(first->position, cueBall->position) - 2.0 * impl_->simulator.bed().radius_m);
  const FrameValue value(impl_->simulator, impl_->windows, players);
  const Scatter scatter = scatterOfShot(impl_->simulator, shot, players[0]);
  const auto deviates = commonDeviates(seed, samples);
  std::vector<Sample> plays(samples);
  tbb::parallel_for(std::size_t{0}, samples,
                    [&](std::size_t k) { plays[k] = playSample(impl_->simulator, value, shot, scatter, deviates[k]); });
  return chancesFrom(plays);
}

}  // namespace ferrule
