// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/one_saying.h"

#include <algorithm>
#include <iterator>

#include "core/measure/reread_shot.h"

namespace ferrule {

namespace {

std::optional<std::string> words(const std::optional<BallName>& ball) {
  return ball ? std::optional(toText(*ball)) : std::nullopt;
}

/// What one saying makes of a shot: the sayings, the reading and the tracks, and the correction's first values.
class Saying {
 public:
  /// since_s: rest of the shot before, from which on placements belong to this one. next: the balls before the next.
  Saying(FrameShot& shot, const WholeFrame& frame, double since_s, const Position& next)
      : shot_(shot.shot), sayings_(shot.sayings), frame_(frame), since_s_(since_s), next_(next) {}

  /// What stands first in the correction; nothing yet where it is the ruling.
  [[nodiscard]] const std::vector<ShotChange>& changes() const { return changes_; }

  std::optional<NotSaid> operator()(const OutcomeSaid& said) {
    ShotReading& reading = shot_.reading;
    if (said.outcome == Outcome::Pot && !reading.target) return NotSaid::NoTarget;
    change(ShotField::Outcome, std::string(toText(said.outcome)));
    sayings_.outcome = said.outcome;
    sayings_.ruling.noFouls.clear();
    sayings_.ruling.fouls.clear();
    if (said.foul) sayings_.ruling.fouls.push_back(*said.foul);
    reading = withSayings(std::move(reading), sayings_, next_);
    noteMissSide();
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const TargetSaid& said) {
    const auto ball = said.target ? std::optional(said.target->ball) : std::nullopt;
    const auto pocket =
        said.target ? std::optional(std::string(toText(said.target->pocket))) : std::optional<std::string>();
    // What changes is what was said.
    const bool sameBall = shot_.reading.target && ball == shot_.reading.target->ball;
    if (sameBall) change(ShotField::TargetPocket, pocket);
    change(ShotField::TargetBall, words(ball));
    if (!sameBall) change(ShotField::TargetPocket, pocket);
    sayings_.target = said;
    const ShotReading again = rereadTarget(shot_.reading, shot_.tracks, frame_.table, said.target,
                                           sayings_.outcome.has_value(), frame_.knowledge);
    shot_.reading = withSayings(again, sayings_, next_);
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const FirstContactSaid& said) {
    change(ShotField::FirstContact, toText(said.ball));
    sayings_.firstContact = said.ball;
    shot_.reading = withSayings(std::move(shot_.reading), sayings_, next_);
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const PlayerSaid& said) {
    change(ShotField::Player, said.name);
    sayings_.player = said;
    shot_.playerName = said.name.value_or(std::string());
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const RulingSaid& said) {
    if (!shot_.ruling) return NotSaid::NoReferee;
    const auto before = whatHappened(sayings_.ruling);
    sayings_.ruling = said.said;
    if (whatHappened(sayings_.ruling) != before) readAgain({});
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const NamesSaid& said) {
    const auto followed = [&](BallName ball) {
      return std::ranges::find(shot_.tracks, ball, &Track::ball) != shot_.tracks.end();
    };
    if (!followed(said.names.one) && !followed(said.names.other)) return NotSaid::NoTrack;
    takeFor(said.names);
    readAgain({});
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const PlaceSaid& said) {
    const bool before = said.end == ShotEnd::Before;
    const BallAt* stood = ballIn(before ? shot_.reading.before : shot_.reading.after, said.at.ball);
    changes_.push_back({shot_.id, before ? ShotField::BallBefore : ShotField::BallAfter, ballPlaceText(said.at),
                        stood != nullptr ? std::optional(ballPlaceText(*stood)) : std::nullopt});
    std::erase_if(sayings_.places,
                  [&](const PlaceSaid& other) { return other.end == said.end && other.at.ball == said.at.ball; });
    sayings_.places.push_back(said);
    shot_.reading = withSayings(std::move(shot_.reading), sayings_, next_);
    // The strike is found from where the balls lay; a ball that was put down was put there.
    if (!before) return std::nullopt;
    if (const auto put = lastPlacementOf(said.at.ball)) {
      changePlacement(put, Placement{put->ball, put->time_s, said.at.position});
    }
    readAgain({});
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const PlacementSaid& said) {
    if (!frame_.frame.film) return NotSaid::NotFilmed;
    const auto known = [&](const Placement& placement) {
      return std::ranges::find(frame_.placements, placement) != frame_.placements.end();
    };
    if ((said.was && !known(*said.was)) || (!said.was && !said.now)) return NotSaid::NoPlacement;
    const bool wasLast = said.was && lastPlacementOf(said.was->ball) == said.was;
    changePlacement(said.was, said.now);
    if (said.was && !wasLast) return std::nullopt;
    // Where the ball lay before the shot follows from who put it down where. That nobody did says nothing of its place.
    if (!said.now || !belongs(*said.now)) return std::nullopt;
    Position& before = shot_.reading.before;
    // Who was followed under the wrong name since was put down under it.
    if (said.was && said.was->ball != said.now->ball) takeFor({said.was->ball, said.now->ball, std::nullopt});
    std::erase_if(before, [&](const BallAt& at) { return at.ball == said.now->ball; });
    const auto place = std::ranges::lower_bound(before, said.now->ball, {}, &BallAt::ball);
    before.insert(place, BallAt{said.now->ball, said.now->position});
    readAgain({});
    return std::nullopt;
  }

  /// Both change which shots there are: said elsewhere.
  std::optional<NotSaid> operator()(const SplitSaid&) { return NotSaid::OutsideTracks; }
  std::optional<NotSaid> operator()(const JoinSaid&) { return NotSaid::NoNextShot; }

  std::optional<NotSaid> operator()(const TimesSaid& said) {
    if (!holds(said.times)) return NotSaid::OutsideTracks;
    changes_.push_back({shot_.id, ShotField::Times, toText(said.times),
                        toText(ShotTimes{shot_.reading.strike_s, shot_.reading.rest_s})});
    readAgain(said.times);
    shot_.reading.rest_s = said.times.rest_s;
    return std::nullopt;
  }

 private:
  static std::vector<Testimony> whatHappened(const SaidOfRuling& said) {
    std::vector<Testimony> told;
    std::ranges::copy_if(said.answers, std::back_inserter(told), tellsWhatHappened);
    return told;
  }

  void change(ShotField field, const std::optional<std::string>& value) {
    changes_.push_back({shot_.id, field, value});
  }

  /// Gives each of two balls what was followed and lay under the other's name.
  void takeFor(const SwappedNames& names) {
    change(ShotField::BallNames, toText(names));
    swapNames(shot_.tracks, names);
    if (names.from_s) return;
    for (Position* balls : {&shot_.reading.before, &shot_.reading.after})
      swapPlaces(*balls, names);
  }

  [[nodiscard]] bool belongs(const Placement& placement) const {
    return placement.time_s >= since_s_ && placement.time_s <= shot_.reading.strike_s;
  }

  /// The one that tells where the ball lay before the shot.
  [[nodiscard]] std::optional<Placement> lastPlacementOf(BallName ball) const {
    std::optional<Placement> last;
    for (const Placement& placement : frame_.placements) {
      if (placement.ball == ball && belongs(placement)) last = placement;
    }
    return last;
  }

  void changePlacement(const std::optional<Placement>& was, const std::optional<Placement>& now) {
    const auto text = [](const std::optional<Placement>& placement) {
      return placement ? std::optional(toldPlacementText(*placement)) : std::nullopt;
    };
    changes_.push_back({shot_.id, ShotField::Placement, text(now), text(was)});
  }

  void readAgain(const std::optional<ShotTimes>& times) {
    ReadingKnowledge knowledge = frame_.knowledge;
    if (sayings_.target) knowledge.call = sayings_.target->target;
    ShotReading again = rereadShot(shot_.reading, shot_.tracks, frame_.table, knowledge, times);
    if (sayings_.target && !sayings_.target->target) again.target.reset(), again.missAccount.reset();
    shot_.reading = withSayings(std::move(again), sayings_, next_);
  }

  /// A pot that was none missed on a side, which nobody asked for before.
  void noteMissSide() {
    std::optional<Target>& target = shot_.reading.target;
    if (shot_.reading.outcome != Outcome::Miss || !target || target->missSide) return;
    const ShotReading again = rereadTarget(shot_.reading, shot_.tracks, frame_.table,
                                           PocketedBall{target->ball, target->pocket}, true, frame_.knowledge);
    target->missSide = again.target->missSide;
  }

  static void swapPlaces(Position& balls, const SwappedNames& names) {
    for (BallAt& at : balls) {
      if (at.ball == names.one) {
        at.ball = names.other;
      } else if (at.ball == names.other) {
        at.ball = names.one;
      }
    }
    std::ranges::sort(balls, {}, &BallAt::ball);
  }

  [[nodiscard]] bool holds(const ShotTimes& times) const {
    bool strike = false;
    bool rest = false;
    for (const Track& track : shot_.tracks) {
      if (track.samples.empty()) continue;
      strike = strike || track.samples.front().time_s <= times.strike_s;
      rest = rest || track.samples.back().time_s >= times.rest_s;
    }
    return strike && rest;
  }

  StoredShot& shot_;
  ShotSayings& sayings_;
  const WholeFrame& frame_;
  double since_s_;
  const Position& next_;
  std::vector<ShotChange> changes_;
};

}  // namespace

SaidOfOne sayOfOne(FrameShot& shot, const WholeFrame& frame, double since_s, const Position& next,
                   const ShotSaying& saying) {
  Saying said(shot, frame, since_s, next);
  const auto why = std::visit(said, saying);
  return {why, said.changes()};
}

}  // namespace ferrule
