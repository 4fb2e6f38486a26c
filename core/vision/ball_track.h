// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <deque>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/vision/ball_candidates.h"

namespace ferrule {

enum class TrackState {
  Tentative,  ///< seen, not yet believed
  Resting,
  Moving,
  Hidden,  ///< was moving, lost from sight somewhere on the table
  Gone,    ///< off the table
};

/// The mean of a resting ball's fits.
class RestAverage {
 public:
  void clear() { *this = {}; }
  void add(TablePoint point);
  [[nodiscard]] int count() const { return count_; }
  [[nodiscard]] TablePoint mean() const { return mean_; }

 private:
  TablePoint mean_;
  int count_ = 0;
};

/// One ball as the tracker knows it.
struct BallTrack {
  struct Fix {
    double time_s = 0.0;
    TablePoint position;
  };

  int id = 0;
  TrackState state = TrackState::Tentative;
  TablePoint position;
  TableVector velocity_mps;
  double standardUncertainty_m = 0.0;
  Silhouette outline;
  double firstSeen_s = 0.0;
  double lastSeen_s = 0.0;
  int missed = 0;  ///< images in a row without a sight of it
  int hits = 0;
  double beliefSum = 0.0;
  double quality = 0.0;  ///< of its outline when nothing is in the way
  int aloneHits = 0;
  std::deque<Fix> fixes;  ///< the newest, while moving
  TablePoint stillPlace;
  double stillSince_s = 0.0;  ///< since when it has kept within a few millimetres of stillPlace
  // resting
  RestAverage rest;
  bool pocketed = false;  ///< gone through a pocket
  bool replaced = false;  ///< gone, and another track goes on with its name
  int displaced = 0;      ///< images in a row in which the fit lay elsewhere
  double cover = 0.0;     ///< share of its disc that differs from the cloth
  cv::Rect patchArea;
  cv::Mat patch;                                       ///< what its surroundings look like while it rests undisturbed
  Eigen::Array3f patchLight = Eigen::Array3f::Ones();  ///< in which it was taken: ClothModel::gain
  // name
  NameLikelihood names{};  ///< sum over the looks
  int looks = 0;
  TablePoint lastLook;
  std::optional<BallName> told;  ///< the name it was last given in a reading

  /// Fell, and has not come back as far as anyone knows.
  [[nodiscard]] bool isDown() const { return state == TrackState::Gone && pocketed && !replaced; }
  [[nodiscard]] bool onTable() const { return state != TrackState::Gone && state != TrackState::Tentative; }
  [[nodiscard]] double meanBelief() const { return hits > 0 ? beliefSum / hits : 0.0; }
  /// Where it would be at a time if nothing were in its way.
  [[nodiscard]] TablePoint predicted(double time_s) const;
  /// Standard uncertainty of each coordinate of position, m; it grows while a moving ball is not seen.
  [[nodiscard]] double uncertainty_m(double time_s, bool seen) const;
  /// Takes a sight of it.
  void see(const BallCandidate& candidate, double time_s);
  /// How far the picture at its place is from what it showed when it came to rest, mean grey levels, the change of
  /// light since taken out; nothing when nothing was remembered. light: the picture's.
  [[nodiscard]] std::optional<double> patchDifference(const cv::Mat& picture, const Eigen::Array3f& light) const;
  /// Remembers what its place looks like now.
  void keepPatch(const cv::Mat& picture, const Eigen::Array3f& light);
  /// Whether its newest fixes stand still; then their mean.
  [[nodiscard]] std::optional<TablePoint> stoodStill() const;
};

}  // namespace ferrule
