// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/testimony.h"

#include <algorithm>

#include "core/base/word_list.h"
#include "core/rules/shot_facts.h"

namespace ferrule {

namespace {

constexpr WordList<15> kKindWords{"first-contact", "called",     "push-out",     "foul",           "rail-after",
                                  "fell",          "left-table", "frozen",       "driven-to-rail", "past-string",
                                  "shooter",       "settled",    "rail-contact", "shooter-group",  "told-of-fouls"};

ShotEvent eventOf(EventKind kind, BallName ball, double time_s) {
  ShotEvent event;
  event.kind = kind;
  event.ball = ball;
  event.time_s = time_s;
  return event;
}

double lastTime_s(const ShotEvents& shot) {
  return shot.events.empty() ? 0.0 : shot.events.back().time_s;
}

void removeDepartures(ShotEvents& shot, BallName ball, EventKind kind) {
  std::erase_if(shot.events, [&](const ShotEvent& event) { return event.ball == ball && event.kind == kind; });
}

void settle(ShotEvents& shot, std::initializer_list<DoubtKind> kinds, std::optional<BallName> ball = {}) {
  for (const DoubtKind kind : kinds) {
    std::erase_if(shot.doubts, [&](const Doubt& doubt) {
      return doubt.kind == kind && (!ball || !doubt.ball || doubt.ball == ball || doubt.other == ball);
    });
    if (ball) continue;
    if (std::ranges::find(shot.settled, kind) == shot.settled.end()) shot.settled.push_back(kind);
  }
}

void setFoul(ShotEvents& shot, const Testimony& said) {
  std::erase_if(shot.calledFouls, [&](const CalledFoul& foul) { return foul.kind == said.foul; });
  std::erase(shot.deniedFouls, said.foul);
  if (said.holds) {
    const bool aboutBall = said.foul == FoulKind::TouchedBall || said.foul == FoulKind::BallOffTable;
    shot.calledFouls.push_back({said.foul, aboutBall ? std::optional(said.ball) : std::nullopt});
  } else {
    shot.deniedFouls.push_back(said.foul);
  }
  switch (said.foul) {
    case FoulKind::DoubleHit:
      return settle(shot, {DoubtKind::SmallGap});
    case FoulKind::TouchedBall:
      return settle(shot, {DoubtKind::MovedByHand});
    case FoulKind::BallsMoving:
      return settle(shot, {DoubtKind::BallsMoving});
    case FoulKind::BadPlacement:
      return settle(shot, {DoubtKind::Placement});
    case FoulKind::BadPlayFromBehind:
      return settle(shot, {DoubtKind::TargetAtString});
    default:
      return;
  }
}

/// Keeps or makes exactly one rail contact after the first contact as a person saw it.
void setRailAfter(ShotEvents& shot, bool holds) {
  settle(shot, {DoubtKind::NearRail, DoubtKind::FrozenToRail});
  const ShotFacts facts = shotFacts(shot);
  if (holds && facts.railEvents.empty()) {
    ShotEvent event = eventOf(EventKind::Cushion, kCueBall, lastTime_s(shot));
    event.cushion = CushionName::Head;
    shot.events.push_back(event);
  }
  if (holds) return;
  std::vector<int> gone = facts.railEvents;
  std::ranges::reverse(gone);
  for (const int number : gone) {
    if (shot.events[static_cast<std::size_t>(number)].kind == EventKind::Cushion)
      shot.events.erase(shot.events.begin() + number);
  }
}

/// One ball at a rail, or not, whatever others did.
void setRailContact(ShotEvents& shot, const Testimony& said) {
  settle(shot, {DoubtKind::NearRail}, said.ball);
  std::erase_if(shot.events,
                [&](const ShotEvent& event) { return event.kind == EventKind::Cushion && event.ball == said.ball; });
  if (!said.holds) return;
  ShotEvent event = eventOf(EventKind::Cushion, said.ball, lastTime_s(shot));
  event.cushion = said.cushion;
  shot.events.push_back(event);
}

/// As many distinct object balls at a rail as a person counted.
void setDriven(ShotEvents& shot, int number) {
  settle(shot, {DoubtKind::NearRail});
  for (int ball = BallName::kCount - 1; ball >= 1; --ball) {
    const auto driven = shotFacts(shot).drivenToRail;
    if (static_cast<int>(driven.size()) <= number) break;
    const BallName last = driven.back();
    std::erase_if(shot.events, [&](const ShotEvent& e) { return e.kind == EventKind::Cushion && e.ball == last; });
  }
  for (int ball = 1; ball < BallName::kCount; ++ball) {
    const auto driven = shotFacts(shot).drivenToRail;
    if (static_cast<int>(driven.size()) >= number) break;
    if (std::ranges::find(driven, BallName(ball)) != driven.end()) continue;
    ShotEvent event = eventOf(EventKind::Cushion, BallName(ball), lastTime_s(shot));
    event.cushion = CushionName::Foot;
    shot.events.push_back(event);
  }
}

void setFell(ShotEvents& shot, const Testimony& said) {
  settle(shot, {DoubtKind::PocketUnsure, DoubtKind::BallLost}, said.ball);
  removeDepartures(shot, said.ball, EventKind::Pocket);
  if (!said.holds) return;
  removeDepartures(shot, said.ball, EventKind::OffTable);
  ShotEvent event = eventOf(EventKind::Pocket, said.ball, lastTime_s(shot));
  event.pocket = said.pocket;
  shot.events.push_back(event);
}

void setLeftTable(ShotEvents& shot, const Testimony& said) {
  settle(shot, {DoubtKind::JumpedBack, DoubtKind::BallLost}, said.ball);
  removeDepartures(shot, said.ball, EventKind::OffTable);
  if (!said.holds) return;
  removeDepartures(shot, said.ball, EventKind::Pocket);
  shot.events.push_back(eventOf(EventKind::OffTable, said.ball, lastTime_s(shot)));
}

void setPastString(ShotEvents& shot, int number) {
  settle(shot, {DoubtKind::PastString});
  std::vector<BallName> balls;
  const ShotFacts facts = shotFacts(shot);
  for (int ball = 1; ball < BallName::kCount && static_cast<int>(balls.size()) < number; ++ball) {
    if (!facts.fell(BallName(ball))) balls.emplace_back(ball);
  }
  shot.pastHeadString = balls;
}

void put(ShotEvents& shot, const Testimony& said) {
  switch (said.kind) {
    case TestimonyKind::FirstContact:
      shot.firstContact = said.ball;
      return settle(shot, {DoubtKind::SplitHit});
    case TestimonyKind::Called:
      shot.call = said.call;
      return settle(shot, {DoubtKind::CallUnknown});
    case TestimonyKind::PushOut:
      shot.pushOut = said.holds;
      return settle(shot, {DoubtKind::PushOutUnknown});
    case TestimonyKind::Foul:
      return setFoul(shot, said);
    case TestimonyKind::RailAfter:
      return setRailAfter(shot, said.holds);
    case TestimonyKind::Fell:
      return setFell(shot, said);
    case TestimonyKind::LeftTable:
      return setLeftTable(shot, said);
    case TestimonyKind::Frozen:
      std::erase_if(shot.frozen, [&](const FrozenBall& frozen) { return frozen.ball == said.ball; });
      if (said.holds) shot.frozen.push_back({said.ball, said.cushion});
      return settle(shot, {DoubtKind::FrozenToRail});
    case TestimonyKind::DrivenToRail:
      return setDriven(shot, said.number);
    case TestimonyKind::PastString:
      return setPastString(shot, said.number);
    case TestimonyKind::Shooter:
      shot.shooter = said.seat;
      return;
    case TestimonyKind::Settled:
      return settle(shot, {said.doubt});
    case TestimonyKind::RailContact:
      return setRailContact(shot, said);
    case TestimonyKind::ShooterGroup:
      shot.shooterGroup = said.group;
      return settle(shot, {DoubtKind::GroupsUnknown});
    case TestimonyKind::ToldOfFouls:
      shot.toldOfFouls = said.holds;
      return settle(shot, {DoubtKind::Warned});
  }
}

}  // namespace

std::string_view toText(TestimonyKind kind) {
  return wordOf(kKindWords, kind);
}
std::optional<TestimonyKind> testimonyKindFromText(std::string_view text) {
  return valueOf<TestimonyKind>(kKindWords, text);
}

ShotEvents witnessed(ShotEvents shot, const std::vector<Testimony>& testimonies) {
  for (const Testimony& said : testimonies)
    put(shot, said);
  return shot;
}

Ruling overruled(Ruling ruling, const Overrule& overrule) {
  const auto byPerson = [](const Evidence& was) { return Evidence{was.rule, was.events, Verdict::Certain}; };
  if (overrule.foul) {
    ruling.fouls.clear();
    if (*overrule.foul) ruling.fouls.push_back({overrule.foulKind, std::nullopt, {}});
    ruling.foulsInARow.at(indexOf(ruling.shooter)) =
        *overrule.foul ? ruling.foulsInARow.at(indexOf(ruling.shooter)) : 0;
  }
  if (overrule.next || overrule.cueBall) ruling.options.clear();
  if (overrule.next) ruling.next.value = *overrule.next;
  if (overrule.cueBall) ruling.cueBall.value = *overrule.cueBall;
  if (overrule.shooterGroup) ruling.shooterGroup = {*overrule.shooterGroup, {}};
  if (overrule.points) ruling.points.value = *overrule.points;
  if (overrule.onTable) {
    ruling.onTable = *overrule.onTable;
    std::ranges::sort(ruling.onTable);
  }
  if (overrule.winner) {
    ruling.result.reset();
    if (*overrule.winner) ruling.result = {{**overrule.winner, WinReason::Person}, {}};
    ruling.phase = *overrule.winner ? Phase::Over : Phase::Play;
  }
  ruling.next.evidence = byPerson(ruling.next.evidence);
  ruling.cueBall.evidence = byPerson(ruling.cueBall.evidence);
  ruling.questions.clear();
  ruling.sureness = Verdict::Certain;
  ruling.overruledBy = overrule.who;
  ruling.reason = overrule.reason;
  return ruling;
}

}  // namespace ferrule
