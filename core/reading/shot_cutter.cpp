// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/shot_cutter.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ferrule {

namespace {

constexpr double kHistory_s = 1.2;
/// A shot holds this much before its strike.
constexpr double kLead_s = 0.8;
/// A shot holds this much after its end: what passes for rest may creep on for 0.2 s, and places are averaged over it.
constexpr double kTail_s = 0.35;
/// How long a ball that is not seen holds up the end of a shot: long when it may be rolling on under an arm, short when
/// it was lost near a pocket.
constexpr double kPatience_s = 1.5;
constexpr double kPatienceNearPocket_s = 0.6;
constexpr double kNearPocket_m = 0.16;
/// A ball found this far from its last place was moved. Rules of play, touched balls: a camera tells 3 mm at best.
constexpr double kMoved_m = 0.004;
/// Balls that appear in the first moments of a film lay there before.
constexpr double kFilmStart_s = 2.0;
/// A ball that moves when the film begins goes this far, m, on at least so many points: more than any noise.
constexpr double kBeginningWay_m = 0.015;
constexpr std::size_t kBeginningPoints = 6;
/// An object ball this near may be hit before the cue ball was measured on its way.
constexpr double kNearBall_m = 0.25;

std::size_t indexOf(BallName ball) {
  return static_cast<std::size_t>(ball.number());
}

}  // namespace

ShotCutter::ShotCutter(const MeasuredTable& measured) : radius_m_(measured.balls.radius_m()) {
  const auto all = pockets(measured.table);
  for (std::size_t i = 0; i < all.size(); ++i)
    holes_[i] = all[i].hole;
}

void ShotCutter::feed(const ImageReading& reading) {
  if (!started_) filmStart_s_ = reading.time_s;
  started_ = true;
  history_.push_back(reading);
  while (history_.front().time_s < reading.time_s - kHistory_s)
    history_.pop_front();
  interval_s_ = imageInterval_s(std::vector<ImageReading>(
      history_.end() - static_cast<std::ptrdiff_t>(std::min<std::size_t>(history_.size(), 8)), history_.end()));
  if (inShot_) current_.readings.push_back(reading);
  watch(reading);

  if (!beginningJudged_ && reading.time_s >= filmStart_s_ + kStillWindow_s) {
    beginningJudged_ = true;
    if (!inShot_ && movedWhenTheFilmBegan()) {
      open(filmStart_s_);
      current_.begunBefore = true;
    }
  }
  double strike_s = 0.0;
  if (cueBallWasStruck(strike_s)) {
    if (inShot_ && strike_s > current_.strike_s + 2.0 * kStillWindow_s) close(false);
    if (!inShot_) open(strike_s);
  }
  if (!inShot_) return;
  if (!everythingSettled()) {
    settledSince_s_.reset();
  } else if (!settledSince_s_) {
    settledSince_s_ = reading.time_s;
  }
  if (settledSince_s_ && reading.time_s >= std::max(*settledSince_s_, current_.strike_s + kStillWindow_s) + kTail_s) {
    close(true);
  } else if (reading.time_s > current_.strike_s + kLongestShot_s) {
    close(false);
  }
}

void ShotCutter::watch(const ImageReading& reading) {
  for (int number = 0; number < BallName::kCount; ++number) {
    const BallName ball(number);
    RestWatch& watch = watches_[indexOf(ball)];
    watch.add(reading.time_s, sampleOf(reading, ball));
    if (watch.still() && reading.time_s - watch.placedSince_s() >= kSettling_s) notePlacement(ball);
  }
}

void ShotCutter::notePlacement(BallName ball) {
  const RestWatch& watch = watches_[indexOf(ball)];
  // During a shot a ball comes to rest by itself, unless it was taken up before.
  if (inShot_ && !watch.wasPutDown()) return;
  std::optional<TablePoint>& told = toldPlaces_[indexOf(ball)];
  const TablePoint place = watch.place()->position;
  const bool known = told.has_value();
  const double uncertainty_m = watch.latest()->standardUncertainty_m;
  if (known && distance(*told, place) <= std::max(kMoved_m, 5.0 * uncertainty_m)) return;
  told = place;
  if (known || hadShot_ || watch.placedSince_s() > filmStart_s_ + kFilmStart_s) {
    placements_.push_back({ball, watch.placedSince_s(), place});
  }
}

bool ShotCutter::cueBallWasStruck(double& strike_s) const {
  const RestWatch& cue = watches_[indexOf(kCueBall)];
  if (!cue.place() || cue.still() || cue.wasTaken() || cue.departure().empty()) return false;
  const OnsetJudgement judged =
      judgeOnset(*cue.place(), cue.lastAtPlace_s(), withoutStrays(cue.departure()), interval_s_);
  strike_s = judged.start_s;
  if (wasHitByAnother(judged.start_s)) return false;
  if (judged.onset == Onset::Struck) return true;
  // Struck from close by, the cue ball may have given its speed away before it was measured on its way.
  for (int number = 1; number < BallName::kCount; ++number) {
    const RestWatch& other = watches_[static_cast<std::size_t>(number)];
    if (!other.place() || other.still() || other.departure().empty()) continue;
    if (distance(other.place()->position, cue.place()->position) > kNearBall_m) continue;
    const OnsetJudgement theirs =
        judgeOnset(*other.place(), other.lastAtPlace_s(), withoutStrays(other.departure()), interval_s_);
    if (theirs.onset == Onset::Struck && std::abs(theirs.start_s - judged.start_s) < 4.0 * interval_s_) {
      strike_s = std::min(strike_s, theirs.start_s);
      return true;
    }
  }
  return false;
}

bool ShotCutter::movedWhenTheFilmBegan() const {
  return std::ranges::any_of(watches_, [&](const RestWatch& watch) {
    if (watch.place() || watch.wasTaken()) return false;
    const std::vector<PathPoint>& way = watch.departure();
    if (way.size() < kBeginningPoints || way.front().time_s > filmStart_s_ + 0.5 * kStillWindow_s) return false;
    const double noise_m = 5.0 * std::hypot(way.front().standardUncertainty_m, way.back().standardUncertainty_m);
    return distance(way.front().position, way.back().position) > std::max(kBeginningWay_m, noise_m);
  });
}

bool ShotCutter::wasHitByAnother(double time_s) const {
  const TablePoint place = watches_[indexOf(kCueBall)].place()->position;
  for (int number = 1; number < BallName::kCount; ++number) {
    const RestWatch& other = watches_[static_cast<std::size_t>(number)];
    if (other.still() || !other.latest()) continue;
    const MeasuredPath path = pathOf(BallName(number), std::vector<ImageReading>(history_.begin(), history_.end()));
    // Where it was just before: moving already, and near enough to have come to the cue ball in two images.
    std::size_t after = 0;
    while (after < path.size() && path[after].time_s < time_s)
      ++after;
    if (after < 2) continue;
    const PathPoint& late = path[after - 1];
    const PathPoint& early = path[after - 2];
    if (time_s - late.time_s > 4.0 * interval_s_) continue;
    const double step_m = distance(late.position, early.position);
    const double noise_m = 4.0 * std::hypot(late.standardUncertainty_m, early.standardUncertainty_m);
    if (step_m <= noise_m) continue;
    if (distance(late.position, place) < 2.0 * radius_m_ + 0.01 + 2.0 * step_m) return true;
  }
  return false;
}

bool ShotCutter::everythingSettled() const {
  return std::ranges::all_of(watches_, [&](const RestWatch& watch) {
    if (!watch.latest()) return true;
    const bool nearPocket = std::ranges::any_of(
        holes_, [&](TablePoint hole) { return distance(hole, watch.latest()->position) < kNearPocket_m; });
    return watch.settled(nearPocket ? kPatienceNearPocket_s : kPatience_s);
  });
}

void ShotCutter::open(double strike_s) {
  // Struck as soon as it lay still.
  const auto& cuePlace = watches_[indexOf(kCueBall)].place();
  const auto& told = toldPlaces_[indexOf(kCueBall)];
  if (cuePlace && (!told || distance(*told, cuePlace->position) > kMoved_m)) notePlacement(kCueBall);
  inShot_ = true;
  hadShot_ = true;
  current_ = {};
  current_.strike_s = strike_s;
  settledSince_s_.reset();
  for (const ImageReading& reading : history_) {
    if (reading.time_s >= strike_s - kLead_s) current_.readings.push_back(reading);
  }
  for (int number = 0; number < BallName::kCount; ++number) {
    const RestWatch& watch = watches_[static_cast<std::size_t>(number)];
    if (!watch.place() || watch.wasTaken()) continue;
    // A ball that fell into a pocket keeps its last place; it is not on the table any more.
    if (!watch.still() && (!watch.latest() || watch.latest()->time_s < strike_s - kPatience_s)) continue;
    current_.before.emplace_back(BallName(number), *watch.place());
  }
}

void ShotCutter::close(bool atRest) {
  current_.atRest = atRest;
  shots_.push_back(std::move(current_));
  current_ = {};
  inShot_ = false;
  for (std::size_t i = 0; i < watches_.size(); ++i) {
    if (watches_[i].still()) toldPlaces_[i] = watches_[i].place()->position;
  }
}

void ShotCutter::finish() {
  if (!inShot_) return;
  current_.filmEnded = true;
  close(everythingSettled());
}

std::vector<CutShot> ShotCutter::takeShots() {
  return std::exchange(shots_, {});
}

std::vector<Placement> ShotCutter::takePlacements() {
  return std::exchange(placements_, {});
}

}  // namespace ferrule
