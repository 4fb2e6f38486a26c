// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill_history.h"

#include <algorithm>
#include <cmath>

#include "core/base/contract.h"

namespace ferrule {

namespace {

SessionSum sumOf(const MetShare& share, std::size_t session) {
  // Of ones and zeros the sum and the sum of squares are the same.
  return {session, static_cast<double>(share.known), static_cast<double>(share.met), static_cast<double>(share.met)};
}

std::optional<HistoryChange> changeOf(const std::vector<RunShare>& runs) {
  if (runs.size() < 2) return std::nullopt;
  const MetShare& last = runs.back().share;
  MetShare before;
  for (std::size_t i = 0; i + 1 < runs.size(); ++i) {
    before.met += runs[i].share.met;
    before.known += runs[i].share.known;
  }
  if (!last.isEnough() || !before.isEnough()) return std::nullopt;
  HistoryChange change;
  change.difference = *last.share() - *before.share();
  change.interval = differenceInterval(last, before);
  change.isReal = !change.interval.holds(0.0);
  if (change.difference != 0.0) {
    change.trialsToTell = static_cast<int>(std::ceil(trialsToTell(*last.share(), *before.share())));
  }
  return change;
}

}  // namespace

DrillHistory historyOf(std::span<const RunShare> runs) {
  DrillHistory history{{}, shortOf(ShortageKind::Shots, 0, kFewestForShare), {}, {}};
  std::ranges::copy_if(runs, std::back_inserter(history.runs), [](const RunShare& run) { return run.share.known > 0; });
  std::ranges::stable_sort(history.runs, {}, &RunShare::started_ms);
  std::vector<SessionSum> sums;
  for (std::size_t i = 0; i < history.runs.size(); ++i) {
    const MetShare& share = history.runs[i].share;
    sums.push_back(sumOf(share, i));
    const bool better =
        share.isEnough() && (!history.best || *share.share() >= *history.runs[*history.best].share.share());
    if (better) history.best = i;
  }
  history.together = shareOf(sums);
  history.change = changeOf(history.runs);
  return history;
}

Interval differenceInterval(const MetShare& one, const MetShare& other) {
  FERRULE_REQUIRE(one.known > 0 && other.known > 0);
  const double p1 = *one.share();
  const double p2 = *other.share();
  const Interval first = *one.interval();
  const Interval second = *other.interval();
  return {p1 - p2 - std::hypot(p1 - first.least, second.most - p2),
          p1 - p2 + std::hypot(first.most - p1, p2 - second.least)};
}

}  // namespace ferrule
