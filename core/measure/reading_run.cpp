// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/reading_run.h"

#include <algorithm>

#include "core/cue/cue_text.h"
#include "core/measure/record_entries.h"
#include "core/measure/said_of_shot.h"
#include "core/table/reading_text.h"
#include "core/table/shot_explanation.h"

namespace ferrule {

std::optional<PlayerId> playerOf(const MeasureSinks& sinks, const std::optional<FilmRuling>& ruling) {
  if (sinks.player || !ruling || !ruling->shooter || sinks.seats.size() != 2) return sinks.player;
  return sinks.seats[indexOf(*ruling->shooter)];
}

ReadingRun::ReadingRun(ReadingSource& source, const MeasuredTable& measured, const MeasureSinks& sinks,
                       const MeasureObserver& observer)
    : source_(source), sinks_(sinks), observer_(observer), reader_(measured, source.camera()) {
  if (sinks.table != nullptr) reader_.setTable(*sinks.table);
  if (observer.picture) source.keepPictures();
}

Result<void> ReadingRun::take(const std::vector<ImageReading>& readings) {
  reader_.setCamera(source_.camera());
  for (const ImageReading& reading : readings) {
    if (sinks_.file != nullptr) sinks_.file->add(reading);
    reader_.feed(reading);
    if (observer_.image) observer_.image(reading);
    if (!observer_.picture) continue;
    if (const auto kept = source_.picture(reading.image)) observer_.picture(reading, *kept);
  }
  if (auto done = drain(); !done) return done;
  return hear();
}

Result<void> ReadingRun::finish() {
  reader_.finish();
  auto done = drain();
  if (done) done = hear();
  report_.images = source_.progress().images;
  report_.duration_s = source_.progress().time_s;
  return done;
}

Result<void> ReadingRun::drain() {
  for (const Placement& placement : reader_.takePlacements()) {
    ++report_.placements;
    if (sinks_.record != nullptr) {
      if (auto done = sinks_.record->addPlacement(sinks_.frame, placement); !done) return done;
    }
    if (sinks_.file != nullptr) sinks_.file->add(placement);
    if (observer_.placement) observer_.placement(placement);
  }
  for (const ReadShot& shot : reader_.takeShots()) {
    if (auto done = keep(shot); !done) return done;
  }
  return {};
}

Result<void> ReadingRun::keep(const ReadShot& shot) {
  ++report_.shots;
  std::optional<FilmRuling> ruling;
  std::optional<RulingEntry> entry;
  if (sinks_.referee != nullptr) {
    ruling = sinks_.referee->judge(shot);
    entry = entryOf(ruling->ruled);
  }
  const std::optional<CueReading> cue = source_.cueOf(shot);
  std::optional<ShotId> id;
  if (sinks_.record != nullptr) {
    const auto added =
        sinks_.record->appendShot(sinks_.frame, shot.reading, shot.tracks, playerOf(sinks_, ruling), entry);
    if (!added) return tl::make_unexpected(added.error());
    id = *added;
    if (entry) kept_.push_back({*id, entry->content, playerOf(sinks_, ruling), {}, shot.reading, shot.reading});
    if (cue) {
      // Beside the rest of what the record keeps to explain a shot.
      const std::string explained = explanationWithCue(explanationText(shot.reading).value_or(""), *cue);
      if (auto done = sinks_.record->keepExplanation(*id, explained); !done) return done;
    }
  }
  if (sinks_.file != nullptr) {
    sinks_.file->add(shot.reading, entry ? entry->content : std::string(), cue ? cueText(*cue) : std::string());
  }
  if (observer_.shot) observer_.shot(shot);
  if (observer_.cue && cue) observer_.cue(shot, *cue);
  if (observer_.ruling && ruling) observer_.ruling(shot, *ruling);
  if (observer_.recorded && id) observer_.recorded(shot, *id);
  return {};
}

Result<void> ReadingRun::hear() {
  if (!observer_.said || sinks_.record == nullptr || sinks_.referee == nullptr) return {};
  for (const SaidOfRecorded& heard : observer_.said()) {
    if (auto done = heed(heard); !done) return done;
  }
  return {};
}

Result<void> ReadingRun::heed(const SaidOfRecorded& heard) {
  const auto at = std::ranges::find(kept_, heard.shot, &Kept::id);
  if (at == kept_.end()) return {};
  at->said = heard.said;
  ShotSayings sayings;
  sayings.ruling = heard.said;
  const auto place = static_cast<std::size_t>(at - kept_.begin());
  std::vector<FilmRuling> rulings = sinks_.referee->say(place, refereeSayings(sayings, {}, std::nullopt));

  const auto players = sinks_.record->players();
  if (!players) return tl::make_unexpected(players.error());
  const auto nameOf = [&](const std::optional<PlayerId>& player) -> std::optional<std::string> {
    const auto known = player ? std::ranges::find(*players, *player, &Player::id) : players->end();
    return known == players->end() ? std::nullopt : std::optional(known->name);
  };
  std::vector<ShotChange> changes;
  const Position next = place + 1 < kept_.size() ? kept_[place + 1].read.before : Position();
  ShotReading answered = withSayings(at->read, sayings, next);
  const bool changed = answered != at->answered;
  if (changed) {
    changes.push_back({at->id, ShotField::Reading, readingText(answered)});
    at->answered = std::move(answered);
  }
  std::vector<RuledAgain> told;
  for (std::size_t i = 0; i < kept_.size(); ++i) {
    Kept& kept = kept_[i];
    rulings[i].ruled.said = kept.said;
    std::string content = entryOf(rulings[i].ruled).content;
    const auto player = playerOf(sinks_, rulings[i]);
    if (content != kept.content) changes.push_back({kept.id, ShotField::Ruling, content});
    if (player != kept.player) changes.push_back({kept.id, ShotField::Player, nameOf(player)});
    kept.content = std::move(content);
    kept.player = player;
    told.push_back({kept.id, std::move(rulings[i])});
    if (changed && i == place) told.back().reading = kept.answered;
  }
  if (!changes.empty()) {
    // What the person said stands first, the rest follows from it.
    const auto first = std::ranges::find_if(changes, [&](const ShotChange& change) {
      return change.shot == heard.shot && change.field == ShotField::Ruling;
    });
    if (first != changes.end()) std::rotate(changes.begin(), first, first + 1);
    if (auto done = sinks_.record->correctShots(changes, heard.who, heard.when); !done) {
      return tl::make_unexpected(done.error());
    }
  }
  if (observer_.ruledAgain) observer_.ruledAgain(told);
  return {};
}

}  // namespace ferrule
