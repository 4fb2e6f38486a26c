// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/cue_watch.h"

#include <algorithm>

#include "core/cue/read_cue.h"
#include "core/cue/read_shaft.h"

namespace ferrule {

namespace {

constexpr double kMostKept_s = 600.0;
constexpr double kBetweenShafts_s = 0.1;
/// A ball that moved by less lies still; readings come some images late.
constexpr double kStill_m = 0.0015;
constexpr double kStill_s = 0.3;

template <class Seen>
void forget(std::vector<Seen>& seen, double before_s) {
  const auto first = std::ranges::lower_bound(seen, before_s, {}, &Seen::time_s);
  seen.erase(seen.begin(), first);
}

}  // namespace

CueWatch::CueWatch(const Rig& rig, const MeasuredTable& measured, const std::optional<CueKit>& kit)
    : table_(measured.table), radius_m_(measured.balls.radius_m()), kit_(kit), rigs_{{0.0, rig}} {
  if (kit) finder_ = CueTagFinder::of(rig, kit->cue);
}

void CueWatch::look(const cv::Mat& picture, long image, double time_s) {
  if (!finder_) {
    lookForShaft(picture, time_s);
  } else if (auto sighting = finder_->look(picture, image, time_s, cueBall_)) {
    sightings_.push_back(std::move(*sighting));
  }
  // Once in a while, so that a night without a shot fills no memory.
  if (image % 1000 == 0) forgetBefore(time_s - kMostKept_s);
}

void CueWatch::lookForShaft(const cv::Mat& picture, double time_s) {
  if (!cueBall_ || time_s < next_s_ || seen_s_ - rests_s_ < kStill_s) return;
  next_s_ = time_s + kBetweenShafts_s;
  auto line = shaftLine(rigs_.back().second, table_, picture, *cueBall_, radius_m_);
  if (!line) return;
  line->time_s = time_s;
  shafts_.push_back(*line);
}

void CueWatch::note(const ImageReading& reading) {
  const auto ball = std::ranges::find(reading.balls, kCueBall, &BallSample::ball);
  if (ball == reading.balls.end() || ball->inHand) {
    cueBall_.reset();
    return;
  }
  if (!cueBall_ || distance(ball->position, restsAt_) > kStill_m) {
    restsAt_ = ball->position;
    rests_s_ = reading.time_s;
  }
  seen_s_ = reading.time_s;
  cueBall_ = ball->position;
}

void CueWatch::setRig(const Rig& rig, double since_s) {
  if (finder_) finder_->setRig(rig);
  rigs_.emplace_back(since_s, rig);
}

void CueWatch::forgetBefore(double time_s) {
  forget(sightings_, time_s);
  forget(shafts_, time_s);
}

std::optional<CueReading> CueWatch::readingOf(const ReadShot& shot) {
  const ShotReading& reading = shot.reading;
  const BallAt* cueBall = ballIn(reading.before, kCueBall);
  std::optional<CueReading> read;
  if (cueBall != nullptr) {
    StruckBall ball;
    ball.strike_s = reading.strike_s;
    ball.place = cueBall->position;
    ball.radius_m = radius_m_;
    ball.aim_rad = reading.delivery.aim_rad;
    if (finder_) {
      const auto after = std::ranges::find_if(rigs_, [&](const auto& rig) { return rig.first > reading.strike_s; });
      const Rig& rig = after == rigs_.begin() ? after->second : std::prev(after)->second;
      read = readCue(rig, kit_->cue, sightings_, kit_->log ? &*kit_->log : nullptr, ball);
    } else {
      read = readShaft(shafts_, ball);
    }
  }
  forgetBefore(reading.strike_s);
  return read;
}

}  // namespace ferrule
