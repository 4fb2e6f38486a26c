// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/reread_shot.h"

#include <algorithm>
#include <map>

#include "core/measure/hand_session.h"
#include "core/reading/measured_path.h"

namespace ferrule {

namespace {

bool has(const ShotReading& reading, ShotFlag flag) {
  return std::ranges::find(reading.flags, flag) != reading.flags.end();
}

/// Where the film began with balls in motion, nobody looked for a strike.
bool begunBefore(const ShotReading& reading) {
  return has(reading, ShotFlag::CutOffAtStart) && !reading.delivery.aim_rad && !reading.firstContact;
}

/// A pot that was meant, as far as places tell: the cut that it needed.
Target targetFromPlaces(const ShotReading& reading, const MeasuredTable& measured, const PocketedBall& meant) {
  Target target;
  target.ball = meant.ball;
  target.pocket = meant.pocket;
  target.cut_rad = neededCut_rad(reading.before, measured, meant.ball, meant.pocket);
  target.called = true;
  return target;
}

bool isPlainOutcome(Outcome outcome) {
  return outcome == Outcome::Pot || outcome == Outcome::Miss || outcome == Outcome::Safety;
}

/// What a pot, miss or safety is now that another pot was meant. Nobody said it, so it is proposed.
void judgeAnew(ShotReading& reading) {
  if (!isPlainOutcome(reading.outcome)) return;
  Outcome outcome = reading.outcome == Outcome::Miss ? Outcome::Safety : reading.outcome;
  if (const auto& target = reading.target) {
    const PocketedBall made{target->ball, target->pocket};
    const bool fell = std::ranges::find(reading.pocketed, made) != reading.pocketed.end();
    outcome = fell ? Outcome::Pot : Outcome::Miss;
  }
  if (outcome == reading.outcome) return;
  reading.outcome = outcome;
  reading.outcomeVerdict = std::max(reading.outcomeVerdict, Verdict::Proposed);
}

}  // namespace

CutShot cutFromTracks(const ShotReading& reading, std::span<const Track> tracks,
                      const std::optional<ShotTimes>& times) {
  CutShot cut;
  std::map<double, ImageReading> images;
  for (const Track& track : tracks) {
    for (const TrackSample& sample : track.samples) {
      ImageReading& image = images[sample.time_s];
      image.time_s = sample.time_s;
      image.balls.push_back({track.ball, sample.position, sample.standardUncertainty_m, sample.seen, false});
    }
  }
  // An image of number 0 would be the film's first one.
  long number = has(reading, ShotFlag::CutOffAtStart) ? 0 : 1;
  for (auto& [time_s, image] : images) {
    image.image = number++;
    cut.readings.push_back(std::move(image));
  }
  cut.strike_s = times ? times->strike_s : reading.strike_s;
  if (times) {
    std::erase_if(cut.readings, [&](const ImageReading& image) { return image.time_s > times->rest_s; });
  }
  for (const BallAt& at : reading.before)
    cut.before.push_back({at.ball, {at.position, kBestUncertainty_m / 2.0}});
  cut.filmEnded = has(reading, ShotFlag::CutOffAtEnd);
  cut.atRest = !cut.filmEnded && !has(reading, ShotFlag::NextStrikeCame);
  cut.begunBefore = begunBefore(reading);
  return cut;
}

ShotReading rereadShot(const ShotReading& reading, std::span<const Track> tracks, const MeasuredTable& measured,
                       const ReadingKnowledge& knowledge, const std::optional<ShotTimes>& times) {
  std::optional<ShotReading> again;
  if (!tracks.empty()) again = readShot(cutFromTracks(reading, tracks, times), measured, reading.number, knowledge);
  if (!again) {
    again = reading;
    if (times) again->strike_s = times->strike_s, again->rest_s = times->rest_s;
    if (knowledge.call) again->target = targetFromPlaces(reading, measured, *knowledge.call);
    return *again;
  }
  // Hands are not in the tracks.
  if (has(reading, ShotFlag::PickedUp) && !has(*again, ShotFlag::PickedUp)) {
    again->flags.push_back(ShotFlag::PickedUp);
    std::ranges::sort(again->flags);
  }
  // Balls that nobody followed stay where they were.
  for (const BallAt& at : reading.after) {
    const bool followed = std::ranges::find(tracks, at.ball, &Track::ball) != tracks.end();
    if (!followed && ballIn(again->after, at.ball) == nullptr) again->after.push_back(at);
  }
  std::ranges::sort(again->after, {}, &BallAt::ball);
  return *again;
}

ShotReading rereadTarget(const ShotReading& reading, std::span<const Track> tracks, const MeasuredTable& measured,
                         const std::optional<PocketedBall>& target, bool outcomeSaid,
                         const ReadingKnowledge& knowledge) {
  ShotReading called = reading;
  called.target.reset();
  called.missAccount.reset();
  if (target) {
    called.target = targetFromPlaces(reading, measured, *target);
    if (!tracks.empty()) {
      ReadingKnowledge with = knowledge;
      with.call = target;
      ShotReading again = rereadShot(reading, tracks, measured, with);
      if (again.target) called.target = again.target;
      called.missAccount = again.missAccount;
    }
  }
  if (!outcomeSaid) judgeAnew(called);
  if (called.target && called.outcome == Outcome::Pot) called.target->missSide.reset();
  return called;
}

}  // namespace ferrule
