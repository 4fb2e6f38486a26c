// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/vision/ball_candidates.h"
#include "core/vision/ball_limits.h"
#include "core/vision/ball_track.h"
#include "core/vision/cloth_model.h"
#include "core/vision/exposure_time.h"
#include "core/vision/patch_calm.h"
#include "core/vision/picture_noise.h"
#include "core/vision/reading_queue.h"

namespace ferrule {

/// What is known of the table while one image is looked at: the image itself, the cloth, and every ball so far. The
/// steps of following (watching, searching, matching) read and change it.
class BallScene {
 public:
  BallScene(const Rig& rig, const MeasuredTable& measured);
  BallScene(const BallScene&) = delete;
  BallScene& operator=(const BallScene&) = delete;

  /// Takes the next image. picture: 8-bit BGR of the rig's size.
  void take(const cv::Mat& picture, long number, double time_s);
  /// Lets the cloth follow slow changes of light where nothing lies.
  void learnCloth();

  /// Smoothed where the film is noisy.
  [[nodiscard]] const cv::Mat& picture() const { return picture_; }
  /// The shrunk picture and its difference from the cloth, made when first asked for: while every ball rests
  /// undisturbed most images need neither.
  [[nodiscard]] const cv::Mat& small();
  [[nodiscard]] const cv::Mat& away();
  [[nodiscard]] cv::Size smallSize() const;
  [[nodiscard]] double radius_m() const { return measured.balls.radius_m(); }
  [[nodiscard]] long images() const { return images_; }  ///< before this one
  [[nodiscard]] double time_s() const { return time_s_; }
  [[nodiscard]] double interval_s() const { return interval_s_; }  ///< since the image before; 0 for the first
  /// The film's first second: balls found in it lay there from the start.
  [[nodiscard]] bool opening() const;

  /// Adds the track's place to this image's reading.
  void record(const BallTrack& track, bool seen);
  /// Takes back what was guessed of a track since its last sight.
  void forgetGuesses(const BallTrack& track) { queue.forgetAfter(track.id, track.lastSeen_s); }
  /// Off the table.
  void leave(BallTrack& track);
  void comeToRest(BallTrack& track, TablePoint place);
  void startMoving(BallTrack& track);

  /// Whether its place in this image is known already.
  [[nodiscard]] bool isPlaced(const BallTrack& track) const;
  /// Outlines of the other balls around a place that count.
  template <class Counts>
  [[nodiscard]] std::vector<Silhouette> neighboursOf(const BallTrack& track, TablePoint at,
                                                     const Counts& counts) const {
    constexpr double kNear = 3.2;  // radii
    std::vector<Silhouette> neighbours;
    for (const BallTrack& other : tracks) {
      if (other.id == track.id || !counts(other)) continue;
      if (distance(other.position, at) < kNear * radius_m()) neighbours.push_back(other.outline);
    }
    return neighbours;
  }
  /// Share of the track's disc that is no cloth.
  [[nodiscard]] double coverOf(const BallTrack& track);
  /// Looks for a moving ball where its way leads it by now.
  [[nodiscard]] std::optional<BallCandidate> fitForeseen(const BallTrack& track, Neighbours known,
                                                         double reach_px) const;

  const Rig rig;
  const MeasuredTable measured;
  const SmallScale scale;
  ClothModel cloth;
  const CandidateFinder finder;
  const BallLimits limits;
  WhiteReference white;
  PatchCalm calm;
  ExposureTime exposure;
  std::vector<BallTrack> tracks;
  ReadingQueue queue;

 private:
  [[nodiscard]] cv::Mat occupied();

  NoiseSmoother smoother_;
  cv::Mat picture_;
  cv::Mat small_;
  bool smallIsFresh_ = false;
  cv::Mat away_;
  bool awayIsFresh_ = false;
  long images_ = -1;
  double start_s_ = 0.0;
  double time_s_ = 0.0;
  double interval_s_ = 0.0;
};

}  // namespace ferrule
