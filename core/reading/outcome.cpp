// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/outcome.h"

#include <algorithm>
#include <vector>

namespace ferrule {

namespace {

constexpr std::size_t kFewestRacked = 9;
/// Balls of a rack touch, or nearly so.
constexpr double kRackGap_m = 0.006;
/// The line itself is not part of the area behind it; a ball is placed by eye.
constexpr double kHeadStringSlack_m = 0.01;

std::size_t largestCluster(const std::vector<TablePoint>& balls, double reach_m) {
  std::vector<bool> seen(balls.size(), false);
  std::size_t largest = 0;
  for (std::size_t start = 0; start < balls.size(); ++start) {
    if (seen[start]) continue;
    std::vector<std::size_t> open{start};
    seen[start] = true;
    std::size_t count = 0;
    while (!open.empty()) {
      const std::size_t here = open.back();
      open.pop_back();
      ++count;
      for (std::size_t other = 0; other < balls.size(); ++other) {
        if (seen[other] || distance(balls[here], balls[other]) > reach_m) continue;
        seen[other] = true;
        open.push_back(other);
      }
    }
    largest = std::max(largest, count);
  }
  return largest;
}

}  // namespace

bool isBreak(const Position& before, const Table& table, double radius_m) {
  std::vector<TablePoint> objectBalls;
  bool behind = false;
  for (const BallAt& at : before) {
    if (at.ball.isCueBall()) {
      behind = at.position.x < headString_m(table) + kHeadStringSlack_m;
    } else {
      objectBalls.push_back(at.position);
    }
  }
  return behind && largestCluster(objectBalls, 2.0 * radius_m + kRackGap_m) >= kFewestRacked;
}

Judged judgeFacts(const ShotReading& reading, bool breaks, bool sawStart) {
  if (breaks) return {Outcome::Break, Verdict::Certain};
  if (reading.scratch) return {Outcome::Scratch, Verdict::Certain};
  if (!reading.firstContact && sawStart) return {Outcome::Foul, Verdict::Proposed};
  const bool potted =
      std::ranges::any_of(reading.pocketed, [](const PocketedBall& pocketed) { return !pocketed.ball.isCueBall(); });
  if (potted) return {Outcome::Pot, Verdict::Certain};
  return {reading.target ? Outcome::Miss : Outcome::Safety, Verdict::Proposed};
}

Judged judgeOutcome(const ShotReading& reading, const Table& table, double radius_m, const Doubts& doubts) {
  const bool breaks = reading.firstContact && isBreak(reading.before, table, radius_m);
  Judged judged = judgeFacts(reading, breaks, !doubts.begunBefore);
  if (doubts.unsurePocket) judged.verdict = std::max(judged.verdict, Verdict::Proposed);
  if (doubts.splitHit || doubts.lostBall || doubts.unfinished || doubts.begunBefore) judged.verdict = Verdict::Ask;
  return judged;
}

}  // namespace ferrule
