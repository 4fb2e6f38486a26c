// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/said_of_shot.h"

#include <algorithm>

#include "core/reading/outcome.h"
#include "core/rules/ruling_text.h"

namespace ferrule {

namespace {

bool fell(const ShotReading& reading, BallName ball) {
  return std::ranges::find(reading.pocketed, ball, &PocketedBall::ball) != reading.pocketed.end();
}

void put(Position& balls, const BallAt& at) {
  const auto place = std::ranges::lower_bound(balls, at.ball, {}, &BallAt::ball);
  if (place != balls.end() && place->ball == at.ball) {
    *place = at;
  } else {
    balls.insert(place, at);
  }
}

void removeDepartures(ShotReading& reading, BallName ball) {
  std::erase_if(reading.pocketed, [&](const PocketedBall& gone) { return gone.ball == ball; });
  std::erase_if(reading.events, [&](const ShotEvent& event) {
    return event.ball == ball && (event.kind == EventKind::Pocket || event.kind == EventKind::OffTable);
  });
}

/// A ball that left, at the shot's end: what a person says has no time of its own.
void depart(ShotReading& reading, EventKind kind, BallName ball, const std::optional<PocketName>& pocket) {
  removeDepartures(reading, ball);
  ShotEvent event;
  event.time_s = reading.rest_s;
  event.kind = kind;
  event.ball = ball;
  event.pocket = pocket;
  if (const BallAt* at = ballIn(reading.after, ball)) event.position = at->position;
  event.verdict = Verdict::Certain;
  reading.events.push_back(event);
  std::erase_if(reading.after, [&](const BallAt& at) { return at.ball == ball; });
}

void letFall(ShotReading& reading, const PocketedBall& ball) {
  if (std::ranges::find(reading.pocketed, ball) != reading.pocketed.end()) return;
  depart(reading, EventKind::Pocket, ball.ball, ball.pocket);
  reading.pocketed.push_back(ball);
}

void letStay(ShotReading& reading, BallName ball, const Position& next) {
  removeDepartures(reading, ball);
  if (ballIn(reading.after, ball) != nullptr) return;
  if (const BallAt* found = ballIn(next, ball)) put(reading.after, *found);
}

void putOutcome(ShotReading& reading, Outcome outcome, const Position& next) {
  reading.outcome = outcome;
  reading.outcomeVerdict = Verdict::Certain;
  const std::optional<Target>& target = reading.target;
  const bool tried = outcome == Outcome::Pot || outcome == Outcome::Miss;
  if (tried && target && !reading.firstContact) reading.firstContact = target->ball;
  if (outcome == Outcome::Pot && target) letFall(reading, {target->ball, target->pocket});
  if (outcome == Outcome::Miss && target) letStay(reading, target->ball, next);
  if (outcome == Outcome::Scratch) {
    reading.scratch = true;
    std::erase_if(reading.after, [](const BallAt& at) { return at.ball.isCueBall(); });
  } else if (reading.scratch && outcome != Outcome::Break && outcome != Outcome::Foul) {
    reading.scratch = false;
    letStay(reading, kCueBall, next);
  }
  // A made pot missed on no side.
  if (outcome == Outcome::Pot && reading.target) reading.target->missSide.reset();
}

void putAnswer(ShotReading& reading, const Testimony& answer, const Position& next) {
  if (answer.kind == TestimonyKind::FirstContact) {
    reading.firstContact = answer.ball;
  } else if (!answer.holds) {
    letStay(reading, answer.ball, next);
  } else if (answer.kind == TestimonyKind::Fell) {
    letFall(reading, {answer.ball, answer.pocket});
  } else {
    depart(reading, EventKind::OffTable, answer.ball, std::nullopt);
  }
  if (answer.kind != TestimonyKind::FirstContact && answer.ball.isCueBall()) reading.scratch = answer.holds;
}

/// What was answered leaves no doubt; a break stays one.
void judgeByAnswers(ShotReading& reading) {
  const Judged judged = judgeFacts(reading, reading.outcome == Outcome::Break);
  reading.outcome = judged.outcome;
  reading.outcomeVerdict = judged.verdict;
  if (judged.outcome == Outcome::Pot && reading.target && fell(reading, reading.target->ball)) {
    reading.target->missSide.reset();
  }
}

Testimony foulSaid(FoulKind kind, bool holds) {
  Testimony said;
  said.kind = TestimonyKind::Foul;
  said.foul = kind;
  said.ball = kCueBall;
  said.holds = holds;
  return said;
}

}  // namespace

ShotSayings sayingsOf(const StoredShot& shot) {
  ShotSayings sayings;
  for (const ValueCorrection& correction : shot.corrections) {
    if (correction.cause) continue;
    const auto field = shotFieldFromText(correction.field);
    if (!field) continue;
    switch (*field) {
      case ShotField::Outcome:
        sayings.outcome = shot.reading.outcome;
        break;
      case ShotField::TargetBall:
      case ShotField::TargetPocket:
        sayings.target = TargetSaid{};
        if (const auto& target = shot.reading.target) sayings.target->target = {target->ball, target->pocket};
        break;
      case ShotField::FirstContact:
        sayings.firstContact = shot.reading.firstContact;
        break;
      case ShotField::Player:
        sayings.player = PlayerSaid{};
        if (!shot.playerName.empty()) sayings.player->name = shot.playerName;
        break;
      case ShotField::BallBefore:
      case ShotField::BallAfter: {
        const ShotEnd end = *field == ShotField::BallBefore ? ShotEnd::Before : ShotEnd::After;
        const auto at = correction.corrected ? ballPlaceFromText(*correction.corrected) : std::nullopt;
        if (!at) break;
        std::erase_if(sayings.places,
                      [&](const PlaceSaid& said) { return said.end == end && said.at.ball == at->ball; });
        sayings.places.push_back({end, *at});
        break;
      }
      case ShotField::Scratch:
      case ShotField::Ruling:
      case ShotField::Reading:
      case ShotField::BallNames:
      case ShotField::Times:
      case ShotField::Split:
      case ShotField::Joined:
      case ShotField::Placement:
      case ShotField::Suggestion:
        break;
    }
  }
  if (const auto ruled = shot.ruling ? rulingFromText(shot.ruling->content) : std::nullopt) {
    sayings.ruling = ruled->said;
  }
  return sayings;
}

std::optional<ShotSaying> sayingOf(const StoredShot& shot, const ValueCorrection& correction) {
  const auto field = shotFieldFromText(correction.field);
  if (!field) return std::nullopt;
  const ShotSayings sayings = sayingsOf(shot);
  const std::string text = correction.corrected.value_or(std::string());
  const auto placement = [](const std::optional<std::string>& words) {
    return words ? toldPlacementFromText(*words) : std::optional<Placement>();
  };
  switch (*field) {
    case ShotField::Outcome: {
      const auto outcome = outcomeFromText(text);
      if (!outcome) return std::nullopt;
      const std::vector<FoulKind>& fouls = sayings.ruling.fouls;
      return OutcomeSaid{*outcome, *outcome == Outcome::Foul && !fouls.empty() ? std::optional(fouls.front())
                                                                               : std::optional<FoulKind>()};
    }
    case ShotField::TargetBall:
    case ShotField::TargetPocket:
      return sayings.target.value_or(TargetSaid{});
    case ShotField::FirstContact:
      if (const auto ball = ballFromText(text)) return FirstContactSaid{*ball};
      return std::nullopt;
    case ShotField::Player:
      return PlayerSaid{correction.corrected};
    case ShotField::Ruling:
      return RulingSaid{sayings.ruling};
    case ShotField::BallNames:
      if (const auto names = swappedNamesFromText(text)) return NamesSaid{*names};
      return std::nullopt;
    case ShotField::BallBefore:
    case ShotField::BallAfter:
      if (const auto at = ballPlaceFromText(text)) {
        return PlaceSaid{*field == ShotField::BallBefore ? ShotEnd::Before : ShotEnd::After, *at};
      }
      return std::nullopt;
    case ShotField::Times:
      if (const auto times = shotTimesFromText(text)) return TimesSaid{*times};
      return std::nullopt;
    case ShotField::Split:
      if (const auto boundary = shotBoundaryFromText(text)) return SplitSaid{boundary->time_s};
      return std::nullopt;
    case ShotField::Joined:
      return JoinSaid{};
    case ShotField::Placement:
      return PlacementSaid{placement(correction.measured), placement(correction.corrected)};
    case ShotField::Scratch:
    case ShotField::Reading:
    case ShotField::Suggestion:
      break;
  }
  return std::nullopt;
}

bool tellsWhatHappened(const Testimony& answer) {
  return answer.kind == TestimonyKind::Fell || answer.kind == TestimonyKind::LeftTable ||
         answer.kind == TestimonyKind::FirstContact;
}

ShotReading withSayings(ShotReading reading, const ShotSayings& sayings, const Position& next) {
  bool answered = false;
  for (const Testimony& answer : sayings.ruling.answers) {
    if (!tellsWhatHappened(answer)) continue;
    putAnswer(reading, answer, next);
    answered = true;
  }
  if (answered) judgeByAnswers(reading);
  if (sayings.firstContact) reading.firstContact = sayings.firstContact;
  if (sayings.outcome) putOutcome(reading, *sayings.outcome, next);
  for (const PlaceSaid& said : sayings.places) {
    const bool away = said.end == ShotEnd::After && fell(reading, said.at.ball);
    if (!away) put(said.end == ShotEnd::Before ? reading.before : reading.after, said.at);
  }
  return reading;
}

SaidOfShot refereeSayings(const ShotSayings& sayings, const ShotReading& reading, std::optional<Seat> seat) {
  SaidOfShot said;
  const auto say = [&](TestimonyKind kind) -> Testimony& {
    said.testimonies.push_back({});
    said.testimonies.back().kind = kind;
    return said.testimonies.back();
  };
  if (seat) {
    say(TestimonyKind::Shooter).seat = *seat;
    // It was the referee who was wrong about the turn.
    said.testimonies.push_back(foulSaid(FoulKind::OutOfTurn, false));
  }
  if (sayings.firstContact) say(TestimonyKind::FirstContact).ball = *sayings.firstContact;
  if (sayings.target && reading.target) {
    say(TestimonyKind::Called).call = {reading.target->ball, reading.target->pocket, false};
  }
  if (sayings.outcome) {
    if (*sayings.outcome == Outcome::Safety) say(TestimonyKind::Called).call = {std::nullopt, std::nullopt, true};
    if (*sayings.outcome == Outcome::Scratch) said.testimonies.push_back(foulSaid(FoulKind::Scratch, true));
    say(TestimonyKind::Settled).doubt = DoubtKind::Unfinished;
  }
  for (const FoulKind kind : sayings.ruling.fouls)
    said.testimonies.push_back(foulSaid(kind, true));
  for (const FoulKind kind : sayings.ruling.noFouls)
    said.testimonies.push_back(foulSaid(kind, false));
  said.testimonies.insert(said.testimonies.end(), sayings.ruling.answers.begin(), sayings.ruling.answers.end());
  said.overrule = sayings.ruling.overrule;
  said.chosen = sayings.ruling.chosen;
  return said;
}

}  // namespace ferrule
