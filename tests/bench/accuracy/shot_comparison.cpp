// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/shot_comparison.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/geometry/units.h"

namespace ferrule::bench {

namespace {

constexpr double kSameStrike_s = 0.5;
constexpr double kCoverage = 1.96;  ///< standard uncertainties either side of a 95 % interval

void append(std::vector<double>& to, const std::vector<double>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

/// Adds error and coverage of one measured value. scale: what an error of 1 is in the value's own unit.
void compareValue(const std::optional<Measured>& measured, double error, double scale, std::vector<double>& errors,
                  Tally& covered) {
  if (!measured) return;
  errors.push_back(error / scale);
  covered.add(std::abs(error) <= kCoverage * measured->standardUncertainty);
}

void compareDelivery(const TrueShot& truth, const Delivery& delivery, ShotScore& score) {
  const auto errorOf = [](const std::optional<Measured>& measured, double value) {
    return measured ? measured->value - value : 0.0;
  };
  compareValue(delivery.aim_rad, wrapAngle(errorOf(delivery.aim_rad, truth.aim_rad)), 1.0, score.aimErrors_rad,
               score.aimCovered);
  compareValue(delivery.speed_mps, errorOf(delivery.speed_mps, truth.speed_mps), truth.speed_mps, score.speedErrors,
               score.speedCovered);
  compareValue(delivery.side, errorOf(delivery.side, truth.side), 1.0, score.sideErrors, score.sideCovered);
  compareValue(delivery.height, errorOf(delivery.height, truth.height), 1.0, score.heightErrors, score.heightCovered);
  compareValue(delivery.elevation_rad, errorOf(delivery.elevation_rad, truth.elevation_rad), 1.0,
               score.elevationErrors_rad, score.elevationCovered);
  score.strikeShown.add(delivery.aim_rad && delivery.speed_mps);
  score.sideShown.add(delivery.side.has_value());
  score.heightShown.add(delivery.height.has_value());
  score.elevationShown.add(delivery.elevation_rad.has_value());
}

bool samePocketed(std::vector<PocketedBall> a, std::vector<PocketedBall> b) {
  const auto byName = [](const PocketedBall& left, const PocketedBall& right) { return left.ball < right.ball; };
  std::sort(a.begin(), a.end(), byName);
  std::sort(b.begin(), b.end(), byName);
  return a == b;
}

/// The balls in play at the first image after everything rests.
Position truePositionAfter(const Truth& truth, const TrueShot& shot) {
  const auto image = std::find_if(truth.images.begin(), truth.images.end(),
                                  [&](const TrueImage& candidate) { return candidate.time_s >= shot.rest_s; });
  Position after;
  if (image == truth.images.end()) return after;
  for (const TrueBall& ball : image->balls) {
    if (ball.inPlay && !ball.inHand) after.push_back({ball.ball, {ball.position.x, ball.position.y}});
  }
  return after;
}

const BallAt* findBall(const Position& position, BallName name) {
  const auto found = std::find_if(position.begin(), position.end(), [&](const BallAt& at) { return at.ball == name; });
  return found == position.end() ? nullptr : &*found;
}

void compareRest(const Position& truth, const Position& reading, ShotScore& score) {
  for (const BallAt& at : truth) {
    const BallAt* read = findBall(reading, at.ball);
    score.restBalls.add(read != nullptr);
    if (read != nullptr) score.restErrors_m.push_back(distance(read->position, at.position));
  }
  for (const BallAt& at : reading) {
    if (findBall(truth, at.ball) == nullptr) score.restBalls.add(false);
  }
}

/// Whether the same events were read, and told in another order only where their times, with their uncertainties, leave
/// the order open.
bool orderIsOpen(const std::vector<ShotEvent>& truth, const std::vector<ShotEvent>& reading) {
  if (truth.size() != reading.size()) return false;
  std::vector<const ShotEvent*> inTrueOrder;
  for (const ShotEvent& event : truth) {
    const auto read = std::ranges::find_if(reading, [&](const ShotEvent& other) {
      return eventWords(other) == eventWords(event) && std::ranges::find(inTrueOrder, &other) == inTrueOrder.end();
    });
    if (read == reading.end()) return false;
    inTrueOrder.push_back(&*read);
  }
  for (std::size_t i = 0; i < inTrueOrder.size(); ++i) {
    for (std::size_t j = i + 1; j < inTrueOrder.size(); ++j) {
      const double late_s = inTrueOrder[i]->time_s - inTrueOrder[j]->time_s;
      if (late_s > kCoverage * std::hypot(inTrueOrder[i]->timeUncertainty_s, inTrueOrder[j]->timeUncertainty_s)) {
        return false;
      }
    }
  }
  return true;
}

void compareEvents(const std::vector<ShotEvent>& truth, const std::vector<ShotEvent>& reading, ShotScore& score) {
  constexpr std::size_t kFirst = 3;
  const auto words = [](const std::vector<ShotEvent>& events, std::size_t most) {
    std::vector<std::string> all;
    for (std::size_t i = 0; i < std::min(most, events.size()); ++i)
      all.push_back(eventWords(events[i]));
    return all;
  };
  const bool same = words(truth, truth.size()) == words(reading, reading.size());
  score.events.add(same);
  score.eventsOrOpen.add(same || orderIsOpen(truth, reading));
  if (!same) {
    std::string both = "  true:";
    for (const ShotEvent& event : truth)
      both.append(" [").append(std::to_string(event.time_s)).append(" ").append(eventWords(event)).append("]");
    both.append("\n  read:");
    for (const ShotEvent& event : reading)
      both.append(" [").append(std::to_string(event.time_s)).append(" ").append(eventWords(event)).append("]");
    score.otherEvents.push_back(std::move(both));
  }
  score.firstEvents.add(words(truth, kFirst) == words(reading, kFirst));
}

void compareOutcome(const TrueShot& truth, const ShotReading& reading, ShotScore& score) {
  const auto isSafetyOrMiss = [](Outcome outcome) { return outcome == Outcome::Safety || outcome == Outcome::Miss; };
  const bool right = reading.outcome == truth.outcome;
  score.outcome.add(right);
  score.outcomeAside.add(!right && isSafetyOrMiss(truth.outcome) && isSafetyOrMiss(reading.outcome) &&
                         reading.outcomeVerdict != Verdict::Certain);
}

}  // namespace

void ShotScore::add(const ShotScore& other) {
  found.add(other.found);
  invented += other.invented;
  firstContact.add(other.firstContact);
  pocketed.add(other.pocketed);
  outcome.add(other.outcome);
  outcomeAside.add(other.outcomeAside);
  events.add(other.events);
  eventsOrOpen.add(other.eventsOrOpen);
  firstEvents.add(other.firstEvents);
  append(strikeErrors_s, other.strikeErrors_s);
  append(restErrors_m, other.restErrors_m);
  restBalls.add(other.restBalls);
  append(aimErrors_rad, other.aimErrors_rad);
  append(speedErrors, other.speedErrors);
  append(sideErrors, other.sideErrors);
  append(heightErrors, other.heightErrors);
  aimCovered.add(other.aimCovered);
  speedCovered.add(other.speedCovered);
  sideCovered.add(other.sideCovered);
  heightCovered.add(other.heightCovered);
  append(elevationErrors_rad, other.elevationErrors_rad);
  elevationCovered.add(other.elevationCovered);
  strikeShown.add(other.strikeShown);
  sideShown.add(other.sideShown);
  heightShown.add(other.heightShown);
  elevationShown.add(other.elevationShown);
}

std::string eventWords(const ShotEvent& event) {
  if (event.kind == EventKind::Ball) {
    const BallName other = event.other.value_or(event.ball);
    return toText(std::min(event.ball, other)).append("-").append(toText(std::max(event.ball, other)));
  }
  std::string words = toText(event.ball);
  words.append(" ").append(toText(event.kind));
  if (event.cushion) words.append(" ").append(toText(*event.cushion));
  if (event.pocket) words.append(" ").append(toText(*event.pocket));
  return words;
}

ShotScore compareShots(const Truth& truth, const std::vector<ShotReading>& shots) {
  ShotScore score;
  std::vector<bool> taken(shots.size(), false);
  for (const TrueShot& shot : truth.shots) {
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < shots.size(); ++i) {
      const double apart_s = std::abs(shots[i].strike_s - shot.strike_s);
      if (taken[i] || apart_s > kSameStrike_s) continue;
      if (!nearest || apart_s < std::abs(shots[*nearest].strike_s - shot.strike_s)) nearest = i;
    }
    score.found.add(nearest.has_value());
    if (!nearest) continue;
    taken[*nearest] = true;
    const ShotReading& reading = shots[*nearest];
    score.strikeErrors_s.push_back(reading.strike_s - shot.strike_s);
    score.firstContact.add(reading.firstContact == shot.firstContact);
    score.pocketed.add(samePocketed(reading.pocketed, shot.pocketed));
    compareEvents(shot.events, reading.events, score);
    compareOutcome(shot, reading, score);
    compareRest(truePositionAfter(truth, shot), reading.after, score);
    compareDelivery(shot, reading.delivery, score);
  }
  score.invented = static_cast<long>(std::count(taken.begin(), taken.end(), false));
  return score;
}

}  // namespace ferrule::bench
