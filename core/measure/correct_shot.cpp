// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/correct_shot.h"

#include <algorithm>

#include "core/measure/frame_in_record.h"
#include "core/measure/one_saying.h"
#include "core/measure/shot_parts.h"
#include "core/table/reading_text.h"

namespace ferrule {

namespace {

/// A change to a shot's reading, with what people said of it put in again.
void changeReading(FrameShot& shot, ShotReading reading, const Position& next, std::vector<ShotChange>& changes) {
  reading = withSayings(std::move(reading), shot.sayings, next);
  if (reading == shot.shot.reading) return;
  shot.shot.reading = std::move(reading);
  changes.push_back({shot.shot.id, ShotField::Reading, readingText(shot.shot.reading)});
}

/// Knowledge with the call that a person made of a shot.
ReadingKnowledge knowledgeOf(const WholeFrame& frame, const FrameShot& shot) {
  ReadingKnowledge knowledge = frame.knowledge;
  if (shot.sayings.target) knowledge.call = shot.sayings.target->target;
  return knowledge;
}

Position beforeNext(const std::vector<FrameShot>& shots, std::size_t at) {
  return at + 1 < shots.size() ? shots[at + 1].shot.reading.before : Position();
}

/// Says things in one frame of a record, one by one.
class FrameSayer {
 public:
  FrameSayer(Record& record, const WholeFrame& frame, const std::string& who, UtcMilliseconds when)
      : record_(record), frame_(frame), who_(who), when_(when) {}

  Result<SayReport> say(std::size_t at, const ShotSaying& saying) {
    if (!frame_.frame.film && !frame_.frame.complete) return refused(NotSaid::StillPutIn);
    if (const auto* split = std::get_if<SplitSaid>(&saying)) return sayInOne([&] { return this->split(at, *split); });
    if (std::holds_alternative<JoinSaid>(saying)) return sayInOne([&] { return join(at); });
    return sayOfOne(at, saying);
  }

 private:
  static SayReport refused(NotSaid why) { return {std::nullopt, why, {}}; }

  /// What is done in several calls of the record is done wholly or not at all.
  template <class Work>
  Result<SayReport> sayInOne(Work&& work) {
    SayReport report;
    const auto done = record_.together([&]() -> Result<void> {
      const Result<SayReport> said = work();
      if (!said) return tl::make_unexpected(said.error());
      report = *said;
      return {};
    });
    if (!done) return tl::make_unexpected(done.error());
    return report;
  }

  Result<SayReport> sayOfOne(std::size_t at, const ShotSaying& saying) {
    std::vector<FrameShot> shots = frame_.shots;
    const StoredShot& stored = frame_.shots[at].shot;
    const Position next = beforeNext(shots, at);
    const double since_s = at == 0 ? -1.0 : shots[at - 1].shot.reading.rest_s;
    SaidOfOne said = ferrule::sayOfOne(shots[at], frame_, since_s, next, saying);
    if (said.why) return refused(*said.why);
    std::vector<ShotChange> changes = std::move(said.changes);
    if (shots[at].shot.reading != stored.reading) {
      changes.push_back({stored.id, ShotField::Reading, readingText(shots[at].shot.reading)});
    }
    ruleFrom(frame_, shots, at, {}, changes);
    // What was said stands first; what an answer makes of the reading follows from it.
    if (std::holds_alternative<RulingSaid>(saying)) {
      std::ranges::stable_partition(changes, [&](const ShotChange& change) {
        return change.shot == stored.id && change.field == ShotField::Ruling;
      });
    }
    // A ruling that was only confirmed changes nothing and is a correction all the same.
    if (changes.empty()) changes.push_back({stored.id, ShotField::Ruling, stored.ruling->content});
    return write(changes, {});
  }

  Result<SayReport> split(std::size_t at, const SplitSaid& said) {
    if (!frame_.frame.film) return refused(NotSaid::NotFilmed);
    std::vector<FrameShot> shots = frame_.shots;
    FrameShot& first = shots[at];
    const auto parts =
        splitReading(first.shot.reading, first.shot.tracks, said.from_s, frame_.table, knowledgeOf(frame_, first));
    if (!parts) return refused(NotSaid::OutsideTracks);
    const ShotId id = first.shot.id;
    const auto made = record_.splitShot(id, said.from_s, parts->second, parts->secondTracks);
    if (!made) return tl::make_unexpected(made.error());
    auto second = record_.shot(*made);
    if (!second) return tl::make_unexpected(second.error());
    std::vector<ShotChange> changes{{id, ShotField::Split, toText(ShotBoundary{said.from_s, made->value})}};
    first.shot.tracks = parts->firstTracks;
    changeReading(first, parts->first, second->reading.before, changes);
    shots.insert(shots.begin() + static_cast<std::ptrdiff_t>(at) + 1, FrameShot{std::move(*second), {}});
    ruleFrom(frame_, shots, at, *made, changes);
    return write(changes, *made);
  }

  Result<SayReport> join(std::size_t at) {
    if (!frame_.frame.film) return refused(NotSaid::NotFilmed);
    if (at + 1 >= frame_.shots.size()) return refused(NotSaid::NoNextShot);
    std::vector<FrameShot> shots = frame_.shots;
    FrameShot& first = shots[at];
    const ShotReading second = shots[at + 1].shot.reading;
    const ShotId id = first.shot.id;
    const auto boundary = record_.joinNextShot(id);
    if (!boundary) return tl::make_unexpected(boundary.error());
    if (!*boundary) return refused(NotSaid::NoNextShot);
    const auto joined = record_.shot(id);
    if (!joined) return tl::make_unexpected(joined.error());
    shots.erase(shots.begin() + static_cast<std::ptrdiff_t>(at) + 1);
    std::vector<ShotChange> changes{{id, ShotField::Joined, toText(**boundary)}};
    first.shot.tracks = joined->tracks;
    changeReading(first,
                  joinedReading(first.shot.reading, second, joined->tracks, frame_.table, knowledgeOf(frame_, first)),
                  beforeNext(shots, at), changes);
    ruleFrom(frame_, shots, at, {}, changes);
    return write(changes, {});
  }

  Result<SayReport> write(const std::vector<ShotChange>& changes, ShotId made) {
    const auto correction = record_.correctShots(changes, who_, when_);
    if (!correction) return tl::make_unexpected(correction.error());
    return SayReport{*correction, std::nullopt, made};
  }

  Record& record_;
  const WholeFrame& frame_;
  const std::string& who_;
  UtcMilliseconds when_;
};

}  // namespace

Result<SayReport> sayOfShot(Record& record, ShotId id, const ShotSaying& saying, const std::string& who,
                            UtcMilliseconds when) {
  const auto stored = record.shot(id);
  if (!stored) return tl::make_unexpected(stored.error());
  const auto frame = wholeFrame(record, *stored);
  if (!frame) return tl::make_unexpected(frame.error());
  const auto at = std::ranges::find(frame->shots, id, [](const FrameShot& shot) { return shot.shot.id; });
  if (at == frame->shots.end()) return failure(ErrorCode::NotFound, "shot", record.path());
  return FrameSayer(record, *frame, who, when).say(static_cast<std::size_t>(at - frame->shots.begin()), saying);
}

}  // namespace ferrule
