// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/shot_facts.h"

#include <algorithm>

namespace ferrule {

namespace {

/// A ball that meets its cushion again this far from where it was frozen, along the cushion, had left it. Common
/// practice, no source: half a ball.
constexpr double kMovedAlong_m = 0.0286;

bool has(const std::vector<Departure>& departures, BallName ball) {
  return std::ranges::any_of(departures, [&](const Departure& departure) { return departure.ball == ball; });
}

/// The place where a ball was declared frozen to this cushion, if it was.
const FrozenBall* frozenTo(const ShotEvents& shot, const ShotEvent& event) {
  const auto found = std::ranges::find_if(shot.frozen, [&](const FrozenBall& frozen) {
    return frozen.ball == event.ball && event.cushion && frozen.cushion == *event.cushion;
  });
  return found == shot.frozen.end() ? nullptr : &*found;
}

bool stillAgainstItsRail(const ShotEvents& shot, std::size_t number) {
  const ShotEvent& event = shot.events[number];
  if (frozenTo(shot, event) == nullptr) return false;
  // Another cushion in between, or another ball than the one that pushed it, shows that it had left.
  int contacts = 0;
  for (std::size_t i = 0; i < number; ++i) {
    const ShotEvent& earlier = shot.events[i];
    if (earlier.kind == EventKind::Cushion && earlier.ball == event.ball && frozenTo(shot, earlier) == nullptr) {
      return false;
    }
    if (earlier.kind == EventKind::Ball && (earlier.ball == event.ball || earlier.other == event.ball)) ++contacts;
  }
  if (contacts > 1) return false;
  const BallAt* lay = ballIn(shot.before, event.ball);
  return lay == nullptr || distance(lay->position, event.position) < kMovedAlong_m;
}

void addDriven(ShotFacts& facts, BallName ball, int event) {
  if (ball.isCueBall()) return;
  if (std::ranges::find(facts.drivenToRail, ball) != facts.drivenToRail.end()) return;
  facts.drivenToRail.push_back(ball);
  facts.drivenEvents.push_back(event);
}

}  // namespace

std::vector<int> eventsOf(const std::vector<Departure>& departures) {
  std::vector<int> events;
  for (const Departure& departure : departures)
    events.push_back(departure.event);
  return events;
}

bool ShotFacts::fell(BallName ball) const {
  return has(pocketed, ball);
}

bool ShotFacts::left(BallName ball) const {
  return has(off, ball);
}

ShotFacts shotFacts(const ShotEvents& shot) {
  ShotFacts facts;
  facts.firstContact = shot.firstContact;
  bool touched = false;
  for (std::size_t i = 0; i < shot.events.size(); ++i) {
    const ShotEvent& event = shot.events[i];
    const int number = static_cast<int>(i);
    switch (event.kind) {
      case EventKind::Ball: {
        if (touched || !event.other || !(event.ball.isCueBall() || event.other->isCueBall())) break;
        touched = true;
        facts.contactEvents.push_back(number);
        if (!facts.firstContact) facts.firstContact = event.ball.isCueBall() ? *event.other : event.ball;
        break;
      }
      case EventKind::Cushion:
        if (!touched || stillAgainstItsRail(shot, i)) break;
        facts.railEvents.push_back(number);
        facts.cueBallToRail = facts.cueBallToRail || event.ball.isCueBall();
        addDriven(facts, event.ball, number);
        break;
      case EventKind::Pocket:
      case EventKind::OffTable: {
        const bool fell = event.kind == EventKind::Pocket;
        const Departure departure{event.ball, fell ? event.pocket : std::nullopt, number};
        if (event.ball.isCueBall()) {
          if (!facts.scratch) facts.scratch = departure;
        } else if (!facts.fell(event.ball) && !facts.left(event.ball)) {
          (fell ? facts.pocketed : facts.off).push_back(departure);
          addDriven(facts, event.ball, number);
          if (!fell) facts.railEvents.push_back(number);
        }
        break;
      }
    }
  }
  return facts;
}

}  // namespace ferrule
