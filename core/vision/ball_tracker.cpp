// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_tracker.h"

#include <algorithm>

#include "core/geometry/assignment.h"
#include "core/vision/ball_parting.h"
#include "core/vision/ball_scene.h"
#include "core/vision/ball_search.h"
#include "core/vision/resting_watch.h"
#include "core/vision/track_identity.h"
#include "core/vision/track_matching.h"

namespace ferrule {

namespace {

constexpr double kLag_s = 0.6;    ///< readings come out this much later, so that names can settle
constexpr double kGone_s = 0.10;  ///< unseen this long at a pocket: it fell
constexpr double kHidden_s = 0.5;
constexpr double kForget_s = 3.0;
constexpr double kSetDown_s = 0.4;  ///< a ball never seen before has lain still this long
constexpr double kMissCost = 30.0;

}  // namespace

class BallTracker::Impl {
 public:
  Impl(const Rig& rig, const MeasuredTable& measured) : scene_(rig, measured) {}

  void feed(const cv::Mat& picture, long number, double time_s) {
    scene_.take(picture, number, time_s);
    for (BallTrack& track : scene_.tracks) {
      if (track.state == TrackState::Resting) watchResting(scene_, track);
    }
    followForeseen();
    match(searchForBalls(scene_));
    if (scene_.images() % 8 == 0) scene_.learnCloth();
    release(kLag_s);
  }

  void finish() { release(-1.0); }

  std::vector<ImageReading> take() { return std::exchange(ready_, {}); }

  [[nodiscard]] std::optional<ImageReading> newest() const {
    auto reading = scene_.queue.newest(scene_.tracks);
    if (reading) partBalls(reading->balls, scene_.radius_m());
    return reading;
  }

  [[nodiscard]] double exposure_s() const { return scene_.exposure.settled_s(); }

 private:
  /// Follows the balls that are where their way leads them, which costs one fit each; the others are searched for.
  void followForeseen() {
    constexpr std::size_t kEnoughFixes = 4;
    constexpr double kAsClear = 0.6;   // of how well it usually shows
    constexpr double kSameBall = 8.0;  // colour cost
    for (BallTrack& track : scene_.tracks) {
      if (track.state != TrackState::Moving || track.missed > 0 || track.fixes.size() < kEnoughFixes) continue;
      const TablePoint expected = track.predicted(scene_.time_s());
      if (scene_.limits.atPocket(expected)) continue;
      const auto neighbours =
          scene_.neighboursOf(track, expected, [&](const BallTrack& other) { return scene_.isPlaced(other); });
      const auto candidate = scene_.fitForeseen(track, neighbours, 3.0);
      if (!candidate || candidate->quality() < kAsClear * track.quality) continue;
      const double way_m = length(track.velocity_mps) * (scene_.time_s() - track.lastSeen_s);
      if (distance(candidate->position, expected) > 0.0015 + 0.04 * way_m) continue;
      if (colourCost(track, *candidate) > kSameBall) continue;
      follow(track, *candidate);
    }
  }

  /// What the track can do by now. A cue may send the cue ball anywhere; other balls get their speed from balls, and
  /// from none faster than those that are seen as long as the cue ball is one of these.
  [[nodiscard]] MatchLimits limitsFor(const BallTrack& track) const {
    const auto mayBeCueBall = [](const BallTrack& one) {
      return one.told ? one.told->isCueBall() : one.names[0] == *std::ranges::max_element(one.names);
    };
    const bool cueBallIsKnown = std::ranges::any_of(scene_.tracks, [&](const BallTrack& other) {
      if (!other.onTable() || !mayBeCueBall(other)) return false;
      return other.state == TrackState::Resting ? other.missed == 0 : other.missed == 0 && other.fixes.size() > 2;
    });
    MatchLimits limits;
    if (cueBallIsKnown && !mayBeCueBall(track)) limits.fastest_mps = std::max(fastest_mps_, 1.0);
    const double settled_s = scene_.exposure.settled_s();
    limits.exposure_s = settled_s > 0.0 ? settled_s : scene_.interval_s();
    return limits;
  }

  void match(const SearchResult& found) {
    const auto& [open, candidates] = found;
    Eigen::MatrixXd costs(static_cast<Eigen::Index>(open.size()),
                          static_cast<Eigen::Index>(candidates.size() + open.size()));
    costs.setConstant(kMissCost);
    for (std::size_t i = 0; i < open.size(); ++i) {
      for (std::size_t j = 0; j < candidates.size(); ++j) {
        costs(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
            matchCost(scene_.tracks[open[i]], candidates[j], scene_.time_s(), limitsFor(scene_.tracks[open[i]]));
      }
    }
    const std::vector<int> columns = assignCheapest(costs);
    std::vector<bool> used(candidates.size(), false);
    for (std::size_t i = 0; i < open.size(); ++i) {
      BallTrack& track = scene_.tracks[open[i]];
      const auto column = static_cast<std::size_t>(columns[i]);
      if (column < candidates.size() && costs(static_cast<Eigen::Index>(i), columns[i]) < kMissCost) {
        used[column] = true;
        follow(track, candidates[column]);
      } else {
        miss(track);
      }
    }
    for (std::size_t j = 0; j < candidates.size(); ++j) {
      if (!used[j]) beginTrack(candidates[j]);
    }
    std::erase_if(scene_.tracks,
                  [](const BallTrack& track) { return track.state == TrackState::Tentative && track.missed > 2; });
    // A ball that is lost from sight may roll on as fast as any was when it was seen last.
    const bool allInSight = std::ranges::none_of(scene_.tracks, [](const BallTrack& track) {
      return track.state == TrackState::Hidden || (track.state == TrackState::Moving && track.missed > 0);
    });
    if (allInSight) fastest_mps_ *= 0.9;
    for (const BallTrack& track : scene_.tracks) {
      if (track.state == TrackState::Moving && track.missed == 0)
        fastest_mps_ = std::max(fastest_mps_, length(track.velocity_mps));
    }
  }

  void follow(BallTrack& track, const BallCandidate& candidate) {
    scene_.exposure.learn(track, candidate, scene_.time_s(), scene_.interval_s());
    if (track.state == TrackState::Resting) {
      // Something covered its place when it was struck; the guesses since its last sight are taken back.
      scene_.forgetGuesses(track);
      scene_.startMoving(track);
    }
    track.see(candidate, scene_.time_s());
    if (track.state == TrackState::Hidden) track.state = TrackState::Moving;
    if (track.state == TrackState::Tentative) {
      scene_.record(track, true);
      if (passesForBall(track, scene_.tracks, scene_.time_s(), scene_.opening())) {
        BallTrack* same = sameBallAs(track, scene_.tracks);
        // A ball that no one has seen before comes onto the table in a hand, and what moves with a hand may be the
        // hand.
        if (!same && !scene_.opening() && scene_.time_s() - track.stillSince_s < kSetDown_s) return;
        if (same) {
          scene_.leave(*same);
          same->replaced = true;
        }
        if (const auto place = track.stoodStill()) {
          scene_.comeToRest(track, *place);
        } else {
          track.state = TrackState::Moving;
        }
      }
      return;
    }
    if (const auto place = track.stoodStill()) scene_.comeToRest(track, *place);
    scene_.record(track, true);
    scene_.white.learn(candidate.colours, candidate.fit.support);
  }

  void beginTrack(const BallCandidate& candidate) {
    // Among arms and cues many things look round; a ball that comes late lies alone or shows nearly all its rim.
    if (!scene_.opening() && !candidate.alone && candidate.fit.support < 0.8) return;
    if (candidate.belief() < 0.4 || *std::ranges::max_element(candidate.names) < -12.0) return;
    for (const BallTrack& track : scene_.tracks) {
      if (track.state != TrackState::Gone && track.state != TrackState::Hidden &&
          distance(track.position, candidate.position) < 1.5 * scene_.radius_m()) {
        return;
      }
    }
    BallTrack track;
    track.id = nextId_++;
    track.see(candidate, scene_.time_s());
    scene_.tracks.push_back(track);
    scene_.record(track, true);
    scene_.white.learn(candidate.colours, candidate.fit.support);
  }

  void miss(BallTrack& track) {
    if (track.state == TrackState::Resting) return;  // counted and recorded where it was watched
    ++track.missed;
    if (track.state == TrackState::Tentative) return;
    const double unseen_s = scene_.time_s() - track.lastSeen_s;
    const TablePoint expected = track.predicted(scene_.time_s());
    if (track.state == TrackState::Moving &&
        (scene_.limits.atPocket(expected) || scene_.limits.atPocket(track.position))) {
      if (unseen_s > kGone_s && track.missed >= 3) {
        track.pocketed = true;
        scene_.leave(track);
      }
      return;
    }
    if (track.state == TrackState::Moving && unseen_s > kHidden_s) {
      track.position = scene_.limits.onSurface(expected);
      track.velocity_mps = {};
      track.state = TrackState::Hidden;
    }
    if (track.state == TrackState::Hidden && unseen_s > kForget_s) {
      scene_.leave(track);
      return;
    }
    BallTrack guess = track;
    guess.position = scene_.limits.onSurface(expected);
    scene_.record(guess, false);
  }

  void release(double lag_s) {
    const std::size_t before = ready_.size();
    scene_.queue.release(scene_.tracks, scene_.time_s(), lag_s, ready_);
    for (std::size_t i = before; i < ready_.size(); ++i)
      partBalls(ready_[i].balls, scene_.radius_m());
    std::erase_if(scene_.tracks, [&](const BallTrack& track) {
      const bool over = track.replaced || !track.pocketed;
      return track.state == TrackState::Gone && over && scene_.time_s() - track.lastSeen_s > 2.0 * kLag_s + kForget_s;
    });
  }

  BallScene scene_;
  double fastest_mps_ = 0.0;
  int nextId_ = 1;
  std::vector<ImageReading> ready_;
};

BallTracker::BallTracker(const Rig& rig, const MeasuredTable& measured)
    : impl_(std::make_unique<Impl>(rig, measured)) {}
BallTracker::~BallTracker() = default;
BallTracker::BallTracker(BallTracker&&) noexcept = default;
BallTracker& BallTracker::operator=(BallTracker&&) noexcept = default;

void BallTracker::feed(const cv::Mat& image, long number, double time_s) {
  impl_->feed(image, number, time_s);
}

void BallTracker::finish() {
  impl_->finish();
}

std::vector<ImageReading> BallTracker::take() {
  return impl_->take();
}

std::optional<ImageReading> BallTracker::newest() const {
  return impl_->newest();
}

double BallTracker::exposure_s() const {
  return impl_->exposure_s();
}

}  // namespace ferrule
