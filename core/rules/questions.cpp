// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/questions.h"

#include <algorithm>
#include <cmath>

#include "core/rules/shot_facts.h"

namespace ferrule {

namespace {

/// Nearer than this the cue ball and the ball it meets may be struck in one blow: about a chalk's width. Common
/// practice, no source.
constexpr double kSmallGap_m = 0.025;
/// A gap to a cushion below this cannot be told from none at about 1.4 mm a pixel.
constexpr double kFrozenGap_m = 0.002;
/// The cue ball's place is known to this.
constexpr double kPlaceSlack_m = 0.002;
/// An object ball at the string is looked at by eye across the table. Common practice, no source.
constexpr double kTargetSlack_m = 0.005;

double lastTime_s(const ShotEvents& shot) {
  return shot.events.empty() ? 0.0 : shot.events.back().time_s;
}

ShotEvents withEvent(ShotEvents shot, EventKind kind, BallName ball) {
  ShotEvent event;
  event.time_s = lastTime_s(shot);
  event.kind = kind;
  event.ball = ball;
  if (kind == EventKind::Cushion) event.cushion = CushionName::Head;
  shot.events.push_back(event);
  return shot;
}

ShotEvents withoutDeparture(ShotEvents shot, BallName ball) {
  std::erase_if(shot.events, [&](const ShotEvent& event) {
    return event.ball == ball && (event.kind == EventKind::Pocket || event.kind == EventKind::OffTable);
  });
  return shot;
}

ShotEvents withFoul(ShotEvents shot, FoulKind kind, std::optional<BallName> ball) {
  shot.calledFouls.push_back({kind, ball});
  return shot;
}

ShotEvents withNamesSwapped(ShotEvents shot, BallName a, BallName b) {
  const auto swapped = [&](BallName ball) { return ball == a ? b : ball == b ? a : ball; };
  for (ShotEvent& event : shot.events) {
    event.ball = swapped(event.ball);
    if (event.other) event.other = swapped(*event.other);
  }
  if (shot.firstContact) shot.firstContact = swapped(*shot.firstContact);
  return shot;
}

/// The cue ball moved across the head string, or the ball that was met.
ShotEvents withPlace(ShotEvents shot, BallName ball, double x_m) {
  for (BallAt& at : shot.before) {
    if (at.ball == ball) at.position.x = x_m;
  }
  return shot;
}

bool isSettled(const ShotEvents& shot, DoubtKind kind) {
  return std::ranges::find(shot.settled, kind) != shot.settled.end();
}

/// The ball that rested on the cushion it met and met no other, if it is the only one that met any.
std::optional<ShotEvent> onlyRail(const ShotEvents& shot, const ShotFacts& facts) {
  if (!facts.pocketed.empty() || facts.railEvents.empty()) return std::nullopt;
  const ShotEvent& first = shot.events[static_cast<std::size_t>(facts.railEvents.front())];
  for (const int number : facts.railEvents) {
    const ShotEvent& event = shot.events[static_cast<std::size_t>(number)];
    if (event.kind != EventKind::Cushion || event.ball != first.ball || event.cushion != first.cushion) {
      return std::nullopt;
    }
  }
  return first;
}

/// How far the ball's edge was from the nose line of the cushion that it met there, taken at that contact.
bool mayHaveBeenFrozen(const ShotEvents& shot, const ShotEvent& contact) {
  const BallAt* lay = ballIn(shot.before, contact.ball);
  if (!lay || !contact.cushion) return false;
  const bool end = *contact.cushion == CushionName::Head || *contact.cushion == CushionName::Foot;
  const TableVector way = lay->position - contact.position;
  const double gap_m = end ? std::abs(way.x) : std::abs(way.y);
  return gap_m < kFrozenGap_m;
}

}  // namespace

std::vector<ShotEvents> versionsOf(const ShotEvents& shot, const Doubt& doubt) {
  std::vector<ShotEvents> versions{shot};
  const BallName ball = doubt.ball.value_or(kCueBall);
  switch (doubt.kind) {
    case DoubtKind::SplitHit:
      for (const auto& met : {doubt.ball, doubt.other}) {
        if (!met) continue;
        versions.push_back(shot);
        versions.back().firstContact = met;
      }
      break;
    case DoubtKind::NearRail:
      versions.push_back(withEvent(shot, EventKind::Cushion, ball));
      break;
    case DoubtKind::PocketUnsure: {
      auto without = withoutDeparture(shot, ball);
      versions.push_back(without == shot ? withEvent(shot, EventKind::Pocket, ball) : std::move(without));
      if (!versions.back().events.empty() && !versions.back().events.back().pocket &&
          versions.back().events.back().kind == EventKind::Pocket) {
        versions.back().events.back().pocket = PocketName::FootLeft;
      }
      break;
    }
    case DoubtKind::BallLost:
    case DoubtKind::JumpedBack:
      versions.push_back(withEvent(withoutDeparture(shot, ball), EventKind::OffTable, ball));
      break;
    case DoubtKind::MovedByHand:
      versions.push_back(withFoul(shot, FoulKind::TouchedBall, doubt.ball));
      break;
    case DoubtKind::SmallGap:
      versions.push_back(withFoul(shot, FoulKind::DoubleHit, std::nullopt));
      break;
    case DoubtKind::BallsMoving:
      versions.push_back(withFoul(shot, FoulKind::BallsMoving, std::nullopt));
      break;
    case DoubtKind::FrozenToRail: {
      const auto contact = std::ranges::find_if(
          shot.events, [&](const ShotEvent& event) { return event.kind == EventKind::Cushion && event.ball == ball; });
      if (contact == shot.events.end() || !contact->cushion) break;
      versions.push_back(shot);
      versions.back().frozen.push_back({ball, *contact->cushion});
      break;
    }
    case DoubtKind::NameUnsure:
      if (doubt.ball && doubt.other) versions.push_back(withNamesSwapped(shot, *doubt.ball, *doubt.other));
      break;
    case DoubtKind::Placement:
    case DoubtKind::TargetAtString: {
      const BallAt* lay = ballIn(shot.before, ball);
      if (!lay) break;
      const double slack = doubt.kind == DoubtKind::Placement ? kPlaceSlack_m : kTargetSlack_m;
      versions.push_back(withPlace(shot, ball, lay->position.x - 2.0 * slack));
      versions.push_back(withPlace(shot, ball, lay->position.x + 2.0 * slack));
      break;
    }
    default:
      break;
  }
  return versions;
}

std::vector<Doubt> doubtsOfPlaces(const GameState& state, const ShotEvents& shot) {
  std::vector<Doubt> doubts;
  if (shot.witness == Witness::Person || !shot.struck) return doubts;
  const ShotFacts facts = shotFacts(shot);
  const auto add = [&](DoubtKind kind, BallName ball) {
    if (!isSettled(shot, kind)) doubts.push_back({kind, ball, std::nullopt});
  };
  const BallAt* cue = ballIn(shot.before, kCueBall);
  const BallAt* met = facts.firstContact ? ballIn(shot.before, *facts.firstContact) : nullptr;
  if (cue && met && distance(cue->position, met->position) - 2.0 * state.lines.ballRadius_m < kSmallGap_m) {
    add(DoubtKind::SmallGap, *facts.firstContact);
  }
  if (const auto rail = onlyRail(shot, facts); rail && shot.frozen.empty() && mayHaveBeenFrozen(shot, *rail)) {
    add(DoubtKind::FrozenToRail, rail->ball);
  }
  if (state.cueBall == CueBallPlace::InHandBehindString) {
    const double string_m = state.lines.headString_m;
    if (cue && std::abs(cue->position.x - string_m) <= kPlaceSlack_m) add(DoubtKind::Placement, kCueBall);
    if (met && std::abs(met->position.x - string_m) <= kTargetSlack_m)
      add(DoubtKind::TargetAtString, *facts.firstContact);
  }
  return doubts;
}

RuleTopic topicOf(DoubtKind kind) {
  switch (kind) {
    case DoubtKind::SplitHit:
      return RuleTopic::SplitHit;
    case DoubtKind::NearRail:
    case DoubtKind::FrozenToRail:
      return RuleTopic::DrivenToRail;
    case DoubtKind::JumpedBack:
      return RuleTopic::ReturnedBall;
    case DoubtKind::BallLost:
      return RuleTopic::BallOffTable;
    case DoubtKind::MovedByHand:
      return RuleTopic::TouchedBall;
    case DoubtKind::SmallGap:
      return RuleTopic::DoubleHit;
    case DoubtKind::BallsMoving:
      return RuleTopic::BallsMoving;
    case DoubtKind::Placement:
      return RuleTopic::BadPlacement;
    case DoubtKind::TargetAtString:
      return RuleTopic::BadPlayFromBehind;
    case DoubtKind::CallUnknown:
      return RuleTopic::CallShot;
    case DoubtKind::GroupsUnknown:
      return RuleTopic::OpenTable;
    case DoubtKind::PastString:
      return RuleTopic::ThreePointBreak;
    case DoubtKind::PushOutUnknown:
      return RuleTopic::PushOut;
    case DoubtKind::Warned:
      return RuleTopic::ThreeFouls;
    case DoubtKind::PocketUnsure:
    case DoubtKind::NameUnsure:
    case DoubtKind::Unfinished:
    case DoubtKind::BallsDiffer:
    case DoubtKind::NotSpelledOut:
    case DoubtKind::FrameOver:
      break;
  }
  return RuleTopic::Continuing;
}

}  // namespace ferrule
