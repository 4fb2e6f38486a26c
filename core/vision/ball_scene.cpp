// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_scene.h"

#include <opencv2/imgproc.hpp>

#include "core/base/contract.h"
#include "core/vision/disc_cover.h"

namespace ferrule {

namespace {

constexpr double kOpening_s = 1.0;

}  // namespace

BallScene::BallScene(const Rig& theRig, const MeasuredTable& theTable)
    : rig(theRig),
      measured(theTable),
      scale(smallScaleFor(theRig, theTable.balls.radius_m())),
      cloth(theRig, theTable.table, scale),
      finder(theRig, theTable, scale, cloth),
      limits(theTable.table, theTable.balls.radius_m()) {}

void BallScene::take(const cv::Mat& picture, long number, double time_s) {
  FERRULE_REQUIRE(picture.type() == CV_8UC3);
  FERRULE_REQUIRE(picture.cols == rig.lens.size.width && picture.rows == rig.lens.size.height);
  ++images_;
  picture_ = smoother_.quiet(picture);
  interval_s_ = images_ > 0 ? time_s - time_s_ : 0.0;
  time_s_ = time_s;
  smallIsFresh_ = false;
  awayIsFresh_ = false;
  if (images_ == 0) {
    start_s_ = time_s;
    cloth.start(small());
  } else {
    cloth.meet(picture_);
  }
  queue.begin(number, time_s);
}

void BallScene::learnCloth() {
  cloth.learn(small(), occupied());
}

const cv::Mat& BallScene::small() {
  if (!smallIsFresh_) {
    cv::resize(picture_, small_, smallSize(), 0, 0, cv::INTER_AREA);
    smallIsFresh_ = true;
  }
  return small_;
}

const cv::Mat& BallScene::away() {
  if (!awayIsFresh_) {
    away_ = cloth.difference(small());
    awayIsFresh_ = true;
  }
  return away_;
}

cv::Size BallScene::smallSize() const {
  return {rig.lens.size.width / scale.factor, rig.lens.size.height / scale.factor};
}

bool BallScene::opening() const {
  return time_s_ - start_s_ < kOpening_s;
}

void BallScene::record(const BallTrack& track, bool seen) {
  queue.add(track.id, track.position, track.uncertainty_m(time_s_, seen), seen);
}

void BallScene::leave(BallTrack& track) {
  track.state = TrackState::Gone;
  forgetGuesses(track);
}

void BallScene::comeToRest(BallTrack& track, TablePoint place) {
  track.state = TrackState::Resting;
  track.velocity_mps = {};
  track.position = place;
  track.rest.clear();
  for (int i = 0; i < 4; ++i)
    track.rest.add(place);
  track.displaced = 0;
  track.cover = coverOf(track);
  track.keepPatch(picture_, cloth.gain());
}

void BallScene::startMoving(BallTrack& track) {
  track.state = TrackState::Moving;
  track.patch.release();
  track.displaced = 0;
  track.fixes.clear();
  track.fixes.push_back({track.lastSeen_s, track.position});
}

bool BallScene::isPlaced(const BallTrack& track) const {
  return track.state == TrackState::Resting || (track.state == TrackState::Moving && track.lastSeen_s == time_s_);
}

double BallScene::coverOf(const BallTrack& track) {
  return coveredShare(away(), cloth.surface(), scale, track.outline, cloth.faintly());
}

std::optional<BallCandidate> BallScene::fitForeseen(const BallTrack& track, Neighbours known, double reach_px) const {
  const TablePoint expected = track.predicted(time_s_);
  OutlineFitOptions options;
  options.reach_px = reach_px;
  if (const auto outline = silhouetteOf(rig, expected, radius_m())) {
    const Eigen::Vector2d streak = outline->tableFromImage.inverse() *
                                   Eigen::Vector2d(track.velocity_mps.x, track.velocity_mps.y) * exposure.time_s();
    options.blur = {streak.x(), streak.y()};
  }
  return finder.fitNear(picture_, expected, known, options, white);
}

cv::Mat BallScene::occupied() {
  cv::Mat occupied;
  cv::dilate(away() > 2 * cloth.clearly(), occupied, cv::getStructuringElement(cv::MORPH_RECT, {5, 5}));
  for (const BallTrack& track : tracks) {
    if (track.state == TrackState::Gone) continue;
    fillDisc(occupied, scale, track.outline, 1.5, 255);
  }
  return occupied;
}

}  // namespace ferrule
