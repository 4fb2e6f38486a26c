// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/set_ups.h"

#include <cmath>

#include "core/base/contract.h"

namespace ferrule {

namespace {

/// A drill comes back to its set-up within a few shots; looking further only costs time.
constexpr std::size_t kOpenSetUps = 12;

struct SetUp {
  std::size_t number = 0;
  TablePoint cueBall;
  std::optional<TablePoint> objectBall;
  std::optional<PocketName> pocket;
};

bool isSame(const SetUp& setUp, const PlayedShot& shot) {
  if (setUp.pocket != shot.pocket || setUp.objectBall.has_value() != shot.objectBall.has_value()) return false;
  if (distance(setUp.cueBall, *shot.cueBall) > kSetUpTolerance_m) return false;
  return !shot.objectBall || distance(*setUp.objectBall, *shot.objectBall) <= kSetUpTolerance_m;
}

std::optional<double> valueIn(const PlayedShot& shot, RepeatedValue value) {
  switch (value) {
    case RepeatedValue::Speed:
      return shot.speed_mps;
    case RepeatedValue::Side:
      return shot.side;
    case RepeatedValue::Height:
      return shot.height;
    case RepeatedValue::RestAlong:
      return shot.rest ? std::optional(shot.rest->x) : std::nullopt;
    case RepeatedValue::RestAcross:
      return shot.rest ? std::optional(shot.rest->y) : std::nullopt;
  }
  return std::nullopt;
}

struct Mean {
  int count = 0;
  double sum = 0.0;
};

}  // namespace

std::vector<std::optional<std::size_t>> setUpsOf(const PlayerHistory& history) {
  std::vector<std::optional<std::size_t>> numbers(history.shots.size());
  std::vector<SetUp> open;  // of the current session, in order
  std::size_t next = 0;
  for (std::size_t i = 0; i < history.shots.size(); ++i) {
    const PlayedShot& shot = history.shots[i];
    if (i > 0 && history.shots[i - 1].session != shot.session) open.clear();
    if (!shot.cueBall || shot.outcome == Outcome::Break) continue;
    const std::size_t first = open.size() > kOpenSetUps ? open.size() - kOpenSetUps : 0;
    for (std::size_t k = open.size(); k > first && !numbers[i]; --k) {
      if (isSame(open[k - 1], shot)) numbers[i] = open[k - 1].number;
    }
    if (numbers[i]) continue;
    numbers[i] = next;
    open.push_back({next++, *shot.cueBall, shot.objectBall, shot.pocket});
  }
  return numbers;
}

std::vector<std::optional<double>> awayFromOwnMean(const PlayerHistory& history,
                                                   const std::vector<std::optional<std::size_t>>& setUps,
                                                   RepeatedValue value) {
  FERRULE_REQUIRE(setUps.size() == history.shots.size());
  std::vector<Mean> means;
  for (std::size_t i = 0; i < setUps.size(); ++i) {
    const auto seen = valueIn(history.shots[i], value);
    if (!setUps[i] || !seen) continue;
    if (*setUps[i] >= means.size()) means.resize(*setUps[i] + 1);
    ++means[*setUps[i]].count;
    means[*setUps[i]].sum += *seen;
  }
  std::vector<std::optional<double>> all(setUps.size());
  for (std::size_t i = 0; i < setUps.size(); ++i) {
    const PlayedShot& shot = history.shots[i];
    const auto seen = valueIn(shot, value);
    if (!setUps[i] || !seen || means[*setUps[i]].count < kFewestRepeats) continue;
    const double count = means[*setUps[i]].count;
    const double mean = means[*setUps[i]].sum / count;
    double away = *seen - mean;
    if (value == RepeatedValue::Speed) away /= mean;
    all[i] = away * std::sqrt(count / (count - 1.0));
  }
  return all;
}

std::vector<Observation> repeated(const PlayerHistory& history, const std::vector<std::optional<std::size_t>>& setUps,
                                  RepeatedValue value) {
  std::vector<Observation> all;
  const auto away = awayFromOwnMean(history, setUps, value);
  for (std::size_t i = 0; i < away.size(); ++i) {
    if (away[i]) all.push_back({history.shots[i].session, *away[i], history.shots[i].minutes});
  }
  return all;
}

}  // namespace ferrule
