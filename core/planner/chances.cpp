// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/chances.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ferrule {

namespace {

/// A pot likelier than this is an open shot.
constexpr double kOpen = 0.5;

Leave leaveOf(const std::vector<Sample>& samples) {
  double n = 0.0;
  double x = 0.0;
  double y = 0.0;
  for (const Sample& sample : samples) {
    if (!sample.cueBall) continue;
    n += 1.0;
    x += sample.cueBall->x;
    y += sample.cueBall->y;
  }
  Leave leave;
  if (n < 1.0) return leave;
  leave.mean = {x / n, y / n};
  double xx = 0.0;
  double xy = 0.0;
  double yy = 0.0;
  for (const Sample& sample : samples) {
    if (!sample.cueBall) continue;
    const TableVector off = *sample.cueBall - leave.mean;
    xx += off.x * off.x / n;
    xy += off.x * off.y / n;
    yy += off.y * off.y / n;
  }
  const double middle = 0.5 * (xx + yy);
  const double half = std::hypot(0.5 * (xx - yy), xy);
  leave.along_m = std::sqrt(middle + half);
  leave.across_m = std::sqrt(std::max(0.0, middle - half));
  leave.direction_rad = 0.5 * std::atan2(2.0 * xy, xx - yy);
  return leave;
}

}  // namespace

std::vector<Deviates> commonDeviates(std::uint64_t seed, std::size_t count) {
  Random random(seed);
  std::vector<Deviates> deviates(count);
  for (Deviates& d : deviates)
    d = drawDeviates(random);
  return deviates;
}

Scatter scatterOfShot(const Simulator& simulator, const ReadyShot& shot, const Scatter& player) {
  const TablePoint cueBall = ballIn(shot.situation.balls, kCueBall)->position;
  const Strike& strike = shot.plan.strike;
  const Stance stance = stanceOf(simulator.bed(), shot.situation.balls, cueBall, strike.aim_rad);
  return scatterFor(player, stance, strike.elevation_rad, shot.way_m);
}

Sample playSample(const Simulator& simulator, const FrameValue& value, const ReadyShot& shot, const Scatter& scatter,
                  const Deviates& deviates) {
  SimulationOptions options;
  options.keepPaths = false;
  const Strike strike = delivered(shot.plan.strike, scatter, deviates, simulator.parameters());
  const Situation& before = shot.situation;
  Sample sample;
  const auto played = simulator.shoot(before.balls, strike, options);
  if (!played || played->end != SimulationEnd::AtRest) {
    Situation next = passedOn(before, before.balls, CueBallFreedom::Anywhere);
    sample.foul = true;
    sample.value = FrameValue::toOther(next, value.glance(next, 1).value);
    return sample;
  }
  const Judgement judged = judge(before, callOf(shot.plan), *played);
  sample.potted = judged.potted && !judged.foul;
  sample.foul = judged.foul;
  sample.scratch = judged.scratch;
  sample.keeps = judged.ending == ShotEnding::KeepsTurn || judged.ending == ShotEnding::Win;
  if (!judged.scratch) {
    const auto cueBall = std::ranges::find(played->after, kCueBall, &FinalBall::ball);
    sample.cueBall = cueBall->position;
  }
  switch (judged.ending) {
    case ShotEnding::Win:
      sample.value = 1.0;
      sample.nextChance = 1.0;
      break;
    case ShotEnding::Loss:
      sample.value = 0.0;
      break;
    case ShotEnding::KeepsTurn: {
      const Glance glance = value.glance(judged.next, 0);
      sample.value = judged.points + glance.value;
      if (glance.best) sample.next = glance.best->ball;
      sample.nextChance = glance.bestChance;
      break;
    }
    case ShotEnding::PassesTurn:
    case ShotEnding::Foul: {
      const Glance glance = value.glance(judged.next, 1);
      sample.value = judged.points + FrameValue::toOther(judged.next, glance.value);
      sample.opponentOpen = glance.bestChance > kOpen;
      break;
    }
  }
  return sample;
}

Chances chancesFrom(const std::vector<Sample>& samples, double correction) {
  Chances chances;
  const auto n = static_cast<double>(samples.size());
  chances.samples = static_cast<long>(samples.size());
  if (samples.empty()) return chances;
  double sum = 0.0;
  double squares = 0.0;
  double open = 0.0;
  std::array<int, BallName::kCount> nextBalls{};
  for (const Sample& sample : samples) {
    sum += sample.value;
    squares += sample.value * sample.value;
    chances.pot += sample.potted / n;
    chances.foul += sample.foul / n;
    chances.scratch += sample.scratch / n;
    chances.keeps += sample.keeps / n;
    chances.opponentOpen += sample.opponentOpen / n;
    if (!sample.keeps) continue;
    if (sample.nextChance > kOpen) open += 1.0;
    if (!sample.next.isCueBall()) ++nextBalls.at(static_cast<std::size_t>(sample.next.number()));
  }
  chances.value = sum / n + correction;
  chances.valueError = std::sqrt(std::max(0.0, squares / n - sum * sum / n / n) / n);
  // Laplace's rule keeps the error of a chance seen as 0 or 1 above nothing.
  const double shrunk = (chances.pot * n + 1.0) / (n + 2.0);
  chances.potError = std::sqrt(shrunk * (1.0 - shrunk) / n);
  chances.leave = leaveOf(samples);
  if (chances.keeps > 0.0) chances.nextOpen = open / (chances.keeps * n);
  const auto most = std::ranges::max_element(nextBalls);
  if (*most > 0) chances.nextBall = BallName(static_cast<int>(most - nextBalls.begin()));
  return chances;
}

}  // namespace ferrule
