// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_tracker.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/base/contract.h"
#include "core/geometry/assignment.h"
#include "core/vision/ball_candidates.h"
#include "core/vision/ball_limits.h"
#include "core/vision/ball_parting.h"
#include "core/vision/ball_track.h"
#include "core/vision/cloth_model.h"
#include "core/vision/disc_cover.h"
#include "core/vision/exposure_time.h"
#include "core/vision/reading_queue.h"
#include "core/vision/search_gate.h"
#include "core/vision/track_identity.h"
#include "core/vision/track_matching.h"

namespace ferrule {

namespace {

constexpr double kLag_s = 0.6;      ///< readings come out this much later, so that names can settle
constexpr double kOpening_s = 1.0;  ///< balls found in this time lay there from the start
constexpr double kGone_s = 0.10;    ///< unseen this long at a pocket: it fell
constexpr double kHidden_s = 0.5;
constexpr double kForget_s = 3.0;
constexpr double kSetDown_s = 0.4;  ///< a ball never seen before has lain still this long
constexpr double kMissCost = 30.0;
}  // namespace

class BallTracker::Impl {
 public:
  Impl(const Rig& rig, const MeasuredTable& measured)
      : rig_(rig),
        measured_(measured),
        scale_(smallScaleFor(rig, measured.balls.radius_m())),
        cloth_(rig, measured.table, scale_),
        finder_(rig, measured, scale_, cloth_),
        limits_(measured.table, measured.balls.radius_m()) {}

  void feed(const cv::Mat& picture, long number, double time_s) {
    FERRULE_REQUIRE(picture.type() == CV_8UC3);
    FERRULE_REQUIRE(picture.cols == rig_.lens.size.width && picture.rows == rig_.lens.size.height);
    picture_ = picture;
    interval_s_ = images_ > 0 ? time_s - time_s_ : 0.0;
    time_s_ = time_s;
    if (images_ == 0) start_s_ = time_s;
    smallIsFresh_ = false;
    awayIsFresh_ = false;
    if (images_ == 0) cloth_.start(small());

    queue_.begin(number, time_s);
    for (BallTrack& track : tracks_) {
      if (track.state == TrackState::Resting) watchResting(track);
    }
    followForeseen();
    search();
    if (images_ % 8 == 0) cloth_.learn(small(), occupied());
    ++images_;
    release(kLag_s);
  }

  void finish() { release(-1.0); }

  std::vector<ImageReading> take() { return std::exchange(ready_, {}); }

  [[nodiscard]] double exposure_s() const { return exposure_.settled_s(); }

 private:
  /// The shrunk picture and its difference from the cloth, made when first asked for: while every ball rests
  /// undisturbed most images need neither.
  const cv::Mat& small() {
    if (!smallIsFresh_) {
      cv::resize(picture_, small_, smallSize(), 0, 0, cv::INTER_AREA);
      smallIsFresh_ = true;
    }
    return small_;
  }

  const cv::Mat& away() {
    if (!awayIsFresh_) {
      away_ = cloth_.difference(small());
      awayIsFresh_ = true;
    }
    return away_;
  }

  [[nodiscard]] cv::Size smallSize() const {
    return {rig_.lens.size.width / scale_.factor, rig_.lens.size.height / scale_.factor};
  }

  [[nodiscard]] double radius_m() const { return measured_.balls.radius_m(); }

  void record(const BallTrack& track, bool seen) {
    queue_.add(track.id, track.position, track.uncertainty_m(time_s_, seen), seen);
  }

  [[nodiscard]] static bool isResting(const BallTrack& track) { return track.state == TrackState::Resting; }

  /// Whether its place in this image is known already.
  [[nodiscard]] bool isPlaced(const BallTrack& track) const {
    return isResting(track) || (track.state == TrackState::Moving && track.lastSeen_s == time_s_);
  }

  /// Outlines of the other balls around a place that count.
  template <class Counts>
  [[nodiscard]] std::vector<Silhouette> neighboursOf(const BallTrack& track, TablePoint at,
                                                     const Counts& counts) const {
    std::vector<Silhouette> neighbours;
    for (const BallTrack& other : tracks_) {
      if (other.id == track.id || !counts(other)) continue;
      if (distance(other.position, at) < 3.2 * radius_m()) neighbours.push_back(other.outline);
    }
    return neighbours;
  }

  [[nodiscard]] double coverOf(const BallTrack& track) {
    return coveredShare(away(), cloth_.surface(), scale_, track.outline, CandidateFinder::kFaint);
  }

  void comeToRest(BallTrack& track, TablePoint place) {
    track.state = TrackState::Resting;
    track.velocity_mps = {};
    track.position = place;
    track.rest.clear();
    for (int i = 0; i < 4; ++i)
      track.rest.add(place);
    track.displaced = 0;
    track.cover = coverOf(track);
    track.keepPatch(picture_);
  }

  void startMoving(BallTrack& track) {
    track.state = TrackState::Moving;
    track.patch.release();
    track.displaced = 0;
    track.fixes.clear();
    track.fixes.push_back({track.lastSeen_s, track.position});
  }

  void watchResting(BallTrack& track) {
    constexpr double kMoved_m = 0.0008;
    constexpr double kMovedAtOnce_m = 0.0025;
    constexpr int kEnoughFits = 25;
    constexpr double kOtherBall = 12.0;  // colour cost
    if (track.rest.count() >= kEnoughFits && track.undisturbed(picture_)) {
      track.lastSeen_s = time_s_;
      track.missed = 0;
      record(track, true);
      return;
    }
    OutlineFitOptions options;
    options.reach_px = 4.0;
    auto fit =
        finder_.fitNear(picture_, track.position, neighboursOf(track, track.position, isResting), options, white_);
    const bool clear = fit && fit->quality() >= 0.3 * track.quality;
    const double moved_m = clear ? distance(fit->position, track.rest.mean()) : 0.0;
    if (clear && moved_m < kMoved_m + 3.0 * fit->standardUncertainty_m) {
      if (track.rest.count() < kEnoughFits && fit->quality() > 0.6 * track.quality) {
        track.rest.add(fit->position);
        track.position = track.rest.mean();
        track.cover = std::max(track.cover, coverOf(track));
      }
      track.see(*fit, time_s_);
      track.position = track.rest.mean();
      track.velocity_mps = {};
      track.displaced = 0;
      track.keepPatch(picture_);
      record(track, true);
      return;
    }
    if (clear && fit->quality() >= 0.55 * track.quality && colourCost(track, *fit) < kOtherBall) {
      ++track.displaced;
      if (track.displaced >= 2 || moved_m > kMovedAtOnce_m) {
        startMoving(track);
        track.see(*fit, time_s_);
        record(track, true);
        return;
      }
      record(track, true);
      return;
    }
    // Something is in the way, or the ball has left at speed.
    if (coverOf(track) < 0.4 * track.cover) {
      startMoving(track);
      return;
    }
    ++track.missed;
    const bool partly = fit && fit->quality() >= 0.1 * track.quality && distance(fit->position, track.position) < 0.003;
    record(track, partly);
  }

  [[nodiscard]] bool opening() const { return time_s_ - start_s_ < kOpening_s; }

  [[nodiscard]] static bool searchedFor(const BallTrack& track) {
    if (track.state == TrackState::Resting) return track.missed > 0;  // covered: it may lie there still, or have left
    return track.state == TrackState::Moving || track.state == TrackState::Tentative ||
           track.state == TrackState::Hidden;
  }

  [[nodiscard]] cv::Rect gateOf(const BallTrack& track) const {
    const double reach_m = reachSinceSeen_m(track, tracks_, time_s_, radius_m());
    const auto outline = silhouetteOf(rig_, limits_.onSurface(track.position), radius_m());
    return outline ? gateAround(*outline, reach_m / radius_m(), scale_, smallSize()) : cv::Rect();
  }

  void search() {
    // Images between looks for balls that nobody expects.
    const int lookInterval = opening() ? 4 : 10;
    const bool lookRound = images_ % lookInterval == 0;
    std::vector<cv::Rect> regions;
    bool clusters = opening();
    for (const BallTrack& track : tracks_) {
      if (!searchedFor(track) || track.lastSeen_s == time_s_ || track.state == TrackState::Hidden) continue;
      // A ball that stays covered is looked for in the rounds only.
      if (track.state == TrackState::Resting && time_s_ - track.lastSeen_s > kHidden_s) continue;
      addGate(regions, gateOf(track));
      clusters = clusters || track.state == TrackState::Moving;
    }
    if (lookRound) regions = {cv::Rect(0, 0, smallSize().width, smallSize().height)};
    if (regions.empty()) {
      match({}, {});
      return;
    }
    std::vector<Silhouette> known;
    cv::Mat unexplained = away().clone();
    for (const BallTrack& track : tracks_) {
      if (isPlaced(track)) {
        known.push_back(track.outline);
        fillDisc(unexplained, scale_, track.outline, 1.15, 0);
      }
    }
    std::vector<BallCandidate> candidates;
    for (const cv::Rect& region : regions) {
      std::ranges::move(finder_.find(picture_, small(), unexplained, region, known, white_, clusters),
                        std::back_inserter(candidates));
    }
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < tracks_.size(); ++i) {
      const BallTrack& track = tracks_[i];
      if (track.lastSeen_s == time_s_) continue;
      if (!searchedFor(track)) continue;
      open.push_back(i);
      // A racked ball that is not yet believed loses its blob as soon as its neighbours are placed.
      if (track.state == TrackState::Moving || (track.state == TrackState::Tentative && opening()))
        addPredicted(track, known, candidates);
    }
    std::erase_if(candidates, [&](const BallCandidate& candidate) {
      return std::ranges::any_of(tracks_, [&](const BallTrack& track) {
        return isPlaced(track) && distance(track.position, candidate.position) < 1.5 * radius_m();
      });
    });
    match(open, candidates);
  }

  /// Looks for a moving ball where its way leads it by now.
  [[nodiscard]] std::optional<BallCandidate> fitForeseen(const BallTrack& track, Neighbours known,
                                                         double reach_px) const {
    const TablePoint expected = track.predicted(time_s_);
    OutlineFitOptions options;
    options.reach_px = reach_px;
    if (const auto outline = silhouetteOf(rig_, expected, radius_m())) {
      const Eigen::Vector2d streak = outline->tableFromImage.inverse() *
                                     Eigen::Vector2d(track.velocity_mps.x, track.velocity_mps.y) * exposure_.time_s();
      options.blur = {streak.x(), streak.y()};
    }
    return finder_.fitNear(picture_, expected, known, options, white_);
  }

  /// Follows the balls that are where their way leads them, which costs one fit each; the others are searched for.
  void followForeseen() {
    constexpr std::size_t kEnoughFixes = 4;
    constexpr double kAsClear = 0.6;   // of how well it usually shows
    constexpr double kSameBall = 8.0;  // colour cost
    for (BallTrack& track : tracks_) {
      if (track.state != TrackState::Moving || track.missed > 0 || track.fixes.size() < kEnoughFixes) continue;
      const TablePoint expected = track.predicted(time_s_);
      if (limits_.atPocket(expected)) continue;
      const auto neighbours = neighboursOf(track, expected, [&](const BallTrack& other) { return isPlaced(other); });
      const auto candidate = fitForeseen(track, neighbours, 3.0);
      if (!candidate || candidate->quality() < kAsClear * track.quality) continue;
      const double way_m = length(track.velocity_mps) * (time_s_ - track.lastSeen_s);
      if (distance(candidate->position, expected) > 0.0015 + 0.04 * way_m) continue;
      if (colourCost(track, *candidate) > kSameBall) continue;
      follow(track, *candidate);
    }
  }

  /// A ball among others may have no blob of its own; look where it should be.
  void addPredicted(const BallTrack& track, Neighbours known, std::vector<BallCandidate>& candidates) const {
    const TablePoint expected = track.predicted(time_s_);
    // A candidate there as good as the ball usually shows is the ball; a poor one may be its number or its shadow.
    constexpr double kAsGood = 0.7;
    const auto there = std::ranges::find_if(candidates, [&](const BallCandidate& candidate) {
      return distance(candidate.position, expected) < radius_m();
    });
    if (there != candidates.end() && there->quality() > kAsGood * track.quality) return;
    auto candidate = fitForeseen(track, known, 6.0);
    if (!candidate || candidate->quality() < 0.3 * track.quality) return;
    if (there == candidates.end()) {
      candidates.push_back(*candidate);
    } else if (candidate->quality() > there->quality()) {
      candidate->alone = there->alone;
      *there = *candidate;
    }
  }

  void match(const std::vector<std::size_t>& open, const std::vector<BallCandidate>& candidates) {
    Eigen::MatrixXd costs(static_cast<Eigen::Index>(open.size()),
                          static_cast<Eigen::Index>(candidates.size() + open.size()));
    costs.setConstant(kMissCost);
    for (std::size_t i = 0; i < open.size(); ++i) {
      for (std::size_t j = 0; j < candidates.size(); ++j) {
        costs(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
            matchCost(tracks_[open[i]], candidates[j], time_s_, fastest_mps_);
      }
    }
    const std::vector<int> columns = assignCheapest(costs);
    std::vector<bool> used(candidates.size(), false);
    for (std::size_t i = 0; i < open.size(); ++i) {
      BallTrack& track = tracks_[open[i]];
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
    std::erase_if(tracks_,
                  [](const BallTrack& track) { return track.state == TrackState::Tentative && track.missed > 2; });
    fastest_mps_ *= 0.9;
    for (const BallTrack& track : tracks_) {
      if (track.state == TrackState::Moving) fastest_mps_ = std::max(fastest_mps_, length(track.velocity_mps));
    }
  }

  void follow(BallTrack& track, const BallCandidate& candidate) {
    exposure_.learn(track, candidate, time_s_, interval_s_);
    if (track.state == TrackState::Resting) {
      // Something covered its place when it was struck; the guesses since its last sight are taken back.
      forgetGuesses(track);
      startMoving(track);
    }
    track.see(candidate, time_s_);
    if (track.state == TrackState::Hidden) track.state = TrackState::Moving;
    if (track.state == TrackState::Tentative) {
      record(track, true);
      if (passesForBall(track, tracks_, time_s_, opening())) {
        BallTrack* same = sameBallAs(track, tracks_);
        // A ball that no one has seen before comes onto the table in a hand, and what moves with a hand may be the
        // hand.
        if (!same && !opening() && time_s_ - track.stillSince_s < kSetDown_s) return;
        if (same) {
          leave(*same);
          same->replaced = true;
        }
        if (const auto place = track.stoodStill()) {
          comeToRest(track, *place);
        } else {
          track.state = TrackState::Moving;
        }
      }
      return;
    }
    if (const auto place = track.stoodStill()) comeToRest(track, *place);
    record(track, true);
    white_.learn(candidate.colours, candidate.fit.support);
  }

  void beginTrack(const BallCandidate& candidate) {
    // Among arms and cues many things look round; a ball that comes late lies alone or shows nearly all its rim.
    if (!opening() && !candidate.alone && candidate.fit.support < 0.8) return;
    if (candidate.belief() < 0.4 || *std::ranges::max_element(candidate.names) < -12.0) return;
    for (const BallTrack& track : tracks_) {
      if (track.state != TrackState::Gone && track.state != TrackState::Hidden &&
          distance(track.position, candidate.position) < 1.5 * radius_m()) {
        return;
      }
    }
    BallTrack track;
    track.id = nextId_++;
    track.see(candidate, time_s_);
    tracks_.push_back(track);
    record(track, true);
    white_.learn(candidate.colours, candidate.fit.support);
  }

  void miss(BallTrack& track) {
    if (track.state == TrackState::Resting) return;  // counted and recorded where it was watched
    ++track.missed;
    if (track.state == TrackState::Tentative) return;
    const double unseen_s = time_s_ - track.lastSeen_s;
    const TablePoint expected = track.predicted(time_s_);
    if (track.state == TrackState::Moving && (limits_.atPocket(expected) || limits_.atPocket(track.position))) {
      if (unseen_s > kGone_s && track.missed >= 3) {
        track.pocketed = true;
        leave(track);
      }
      return;
    }
    if (track.state == TrackState::Moving && unseen_s > kHidden_s) {
      track.position = limits_.onSurface(expected);
      track.velocity_mps = {};
      track.state = TrackState::Hidden;
    }
    if (track.state == TrackState::Hidden && unseen_s > kForget_s) {
      leave(track);
      return;
    }
    BallTrack guess = track;
    guess.position = limits_.onSurface(expected);
    record(guess, false);
  }

  /// Off the table: what was guessed since its last sight is taken back.
  void leave(BallTrack& track) {
    track.state = TrackState::Gone;
    forgetGuesses(track);
  }

  void forgetGuesses(const BallTrack& track) { queue_.forgetAfter(track.id, track.lastSeen_s); }

  [[nodiscard]] cv::Mat occupied() {
    cv::Mat occupied;
    cv::dilate(away() > 2 * CandidateFinder::kAway, occupied, cv::getStructuringElement(cv::MORPH_RECT, {5, 5}));
    for (const BallTrack& track : tracks_) {
      if (track.state == TrackState::Gone) continue;
      fillDisc(occupied, scale_, track.outline, 1.5, 255);
    }
    return occupied;
  }

  void release(double lag_s) {
    const std::size_t before = ready_.size();
    queue_.release(tracks_, time_s_, lag_s, ready_);
    for (std::size_t i = before; i < ready_.size(); ++i)
      partBalls(ready_[i].balls, radius_m());
    std::erase_if(tracks_, [&](const BallTrack& track) {
      const bool over = track.replaced || !track.pocketed;
      return track.state == TrackState::Gone && over && time_s_ - track.lastSeen_s > 2.0 * kLag_s + kForget_s;
    });
  }

  Rig rig_;
  MeasuredTable measured_;
  SmallScale scale_;
  ClothModel cloth_;
  CandidateFinder finder_;
  BallLimits limits_;
  WhiteReference white_;
  cv::Mat picture_;
  cv::Mat small_;
  bool smallIsFresh_ = false;
  cv::Mat away_;
  bool awayIsFresh_ = false;
  long images_ = 0;
  double start_s_ = 0.0;
  double time_s_ = 0.0;
  double interval_s_ = 0.0;
  ExposureTime exposure_;
  double fastest_mps_ = 0.0;
  std::vector<BallTrack> tracks_;
  int nextId_ = 1;
  ReadingQueue queue_;
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

double BallTracker::exposure_s() const {
  return impl_->exposure_s();
}

}  // namespace ferrule
