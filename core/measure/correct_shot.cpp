// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/correct_shot.h"

#include <algorithm>

#include "core/measure/record_entries.h"
#include "core/measure/reread_shot.h"
#include "core/measure/rule_frame.h"
#include "core/measure/table_fingerprint.h"
#include "core/table/reading_text.h"

namespace ferrule {

namespace {

/// A frame with all that its shots are read and ruled by.
struct WholeFrame {
  FrameSummary frame;
  std::vector<FrameShot> shots;
  MeasuredTable table;
  std::vector<std::string> players;  ///< of the session, in playing order
  ReadingKnowledge knowledge;
};

Result<FrameSummary> frameOf(Record& record, const StoredShot& shot) {
  const auto frames = record.frames(shot.session);
  if (!frames) return tl::make_unexpected(frames.error());
  const auto found = std::ranges::find(*frames, shot.frame, &FrameSummary::id);
  if (found == frames->end()) return failure(ErrorCode::NotFound, "frame", record.path());
  return *found;
}

Result<WholeFrame> wholeFrame(Record& record, const StoredShot& shot) {
  WholeFrame whole;
  const auto frame = frameOf(record, shot);
  if (!frame) return tl::make_unexpected(frame.error());
  whole.frame = *frame;
  const auto shots = record.shots(shot.frame);
  if (!shots) return tl::make_unexpected(shots.error());
  for (const ShotSummary& summary : *shots) {
    auto stored = record.shot(summary.id);
    if (!stored) return tl::make_unexpected(stored.error());
    ShotSayings sayings = sayingsOf(*stored);
    whole.shots.push_back({std::move(*stored), std::move(sayings)});
  }
  auto table = record.tableOf(shot.session);
  if (!table) return tl::make_unexpected(table.error());
  whole.table = std::move(*table);
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto session = std::ranges::find(*sessions, shot.session, &SessionSummary::id);
  if (session != sessions->end()) whole.players = session->players;
  const auto rig = record.rigOf(shot.frame);
  if (!rig) return tl::make_unexpected(rig.error());
  if (*rig) whole.knowledge.camera = cameraPosition(**rig);
  auto known = fingerprintFor(record, shot.session);
  if (!known) return tl::make_unexpected(known.error());
  if (*known) whole.knowledge.table = std::move((*known)->fingerprint);
  return whole;
}

std::optional<std::string> words(const std::optional<BallName>& ball) {
  return ball ? std::optional(toText(*ball)) : std::nullopt;
}

/// What one saying makes of a shot: the sayings, the reading and the tracks, and the correction's first values.
class Saying {
 public:
  Saying(FrameShot& shot, const WholeFrame& frame, const Position& next)
      : shot_(shot.shot), sayings_(shot.sayings), frame_(frame), next_(next) {}

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
    sayings_.ruling = said.said;
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const NamesSaid& said) {
    const auto followed = [&](BallName ball) {
      return std::ranges::find(shot_.tracks, ball, &Track::ball) != shot_.tracks.end();
    };
    const SwappedNames& names = said.names;
    if (!followed(names.one) && !followed(names.other)) return NotSaid::NoTrack;
    change(ShotField::BallNames, toText(names));
    swapNames(shot_.tracks, names);
    if (!names.from_s) {
      for (Position* balls : {&shot_.reading.before, &shot_.reading.after})
        swapPlaces(*balls, names);
    }
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
    // The strike is found from where the balls lay.
    if (before) readAgain({});
    return std::nullopt;
  }

  std::optional<NotSaid> operator()(const TimesSaid& said) {
    if (!holds(said.times)) return NotSaid::OutsideTracks;
    changes_.push_back({shot_.id, ShotField::Times, toText(said.times),
                        toText(ShotTimes{shot_.reading.strike_s, shot_.reading.rest_s})});
    readAgain(said.times);
    shot_.reading.rest_s = said.times.rest_s;
    return std::nullopt;
  }

 private:
  void change(ShotField field, const std::optional<std::string>& value) {
    changes_.push_back({shot_.id, field, value});
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
  const Position& next_;
  std::vector<ShotChange> changes_;
};

/// What the referee now says from a shot on, and who played then.
void ruleFrom(const WholeFrame& before, const std::vector<FrameShot>& shots, std::size_t from,
              std::vector<ShotChange>& changes) {
  const auto game = gameFromText(before.frame.game);
  const bool ruled = std::ranges::any_of(shots, [](const FrameShot& shot) { return shot.shot.ruling.has_value(); });
  if (!game || !ruled) return;
  const bool filmed = before.frame.film.has_value();
  const auto anew = ruleFrame(shots, *game, before.table, before.players, filmed);
  for (std::size_t i = from; i < shots.size(); ++i) {
    const StoredShot& shot = shots[i].shot;
    if (!shot.ruling) continue;
    const std::string content = entryOf(anew[i].ruled).content;
    if (content != shot.ruling->content) changes.push_back({shot.id, ShotField::Ruling, content});
    if (shots[i].sayings.player || before.players.size() != 2) continue;
    std::optional<std::string> name;
    if (anew[i].shooter) name = before.players[indexOf(*anew[i].shooter)];
    if (name.value_or(std::string()) != shot.playerName) changes.push_back({shot.id, ShotField::Player, name});
  }
}

}  // namespace

Result<SayReport> sayOfShot(Record& record, ShotId id, const ShotSaying& saying, const std::string& who,
                            UtcMilliseconds when) {
  const auto stored = record.shot(id);
  if (!stored) return tl::make_unexpected(stored.error());
  const auto frame = wholeFrame(record, *stored);
  if (!frame) return tl::make_unexpected(frame.error());
  if (!frame->frame.film && !frame->frame.complete) return SayReport{std::nullopt, NotSaid::StillPutIn};

  std::vector<FrameShot> shots = frame->shots;
  const auto at = std::ranges::find(shots, id, [](const FrameShot& shot) { return shot.shot.id; });
  if (at == shots.end()) return failure(ErrorCode::NotFound, "shot", record.path());
  const Position next = at + 1 == shots.end() ? Position() : (at + 1)->shot.reading.before;
  Saying said(*at, *frame, next);
  if (const auto why = std::visit(said, saying)) return SayReport{std::nullopt, why};

  std::vector<ShotChange> changes = said.changes();
  if (at->shot.reading != stored->reading) {
    changes.push_back({id, ShotField::Reading, readingText(at->shot.reading)});
  }
  ruleFrom(*frame, shots, static_cast<std::size_t>(at - shots.begin()), changes);
  // A ruling that was only confirmed changes nothing and is a correction all the same.
  if (changes.empty()) changes.push_back({id, ShotField::Ruling, stored->ruling->content});
  const auto correction = record.correctShots(changes, who, when);
  if (!correction) return tl::make_unexpected(correction.error());
  return SayReport{*correction, std::nullopt};
}

Result<std::optional<NotSaid>> takeBackCorrection(Record& record, FrameId frame, CorrectionId correction) {
  const auto shots = record.shots(frame);
  if (!shots) return tl::make_unexpected(shots.error());
  for (const ShotSummary& summary : *shots) {
    if (!summary.corrected) continue;
    const auto shot = record.shot(summary.id);
    if (!shot) return tl::make_unexpected(shot.error());
    const bool later = std::ranges::any_of(
        shot->corrections, [&](const ValueCorrection& other) { return !other.cause && other.id > correction; });
    if (later) return std::optional(NotSaid::LaterStands);
  }
  if (auto done = record.withdrawCorrection(correction); !done) return tl::make_unexpected(done.error());
  return std::optional<NotSaid>();
}

}  // namespace ferrule
