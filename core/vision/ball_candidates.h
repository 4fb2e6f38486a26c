// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <span>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/vision/ball_colour.h"
#include "core/vision/cloth_model.h"
#include "core/vision/outline_fit.h"

namespace ferrule {

/// Something in one picture that has a ball's outline.
struct BallCandidate {
  TablePoint position;
  Silhouette outline;       ///< at position
  OutlineFit fit;
  double standardUncertainty_m = 0.0;  ///< of each coordinate, from the fit alone
  ImageVector blur;         ///< streak taken into account, px
  bool alone = false;       ///< its blob holds nothing but this ball: no arm, no neighbour
  BallColours colours;
  NameLikelihood names{};
};

/// Finds balls in what differs from the cloth.
class CandidateFinder {
 public:
  CandidateFinder(const Rig& rig, const MeasuredTable& measured, SmallScale scale);

  /// away: ClothModel::difference of the small picture; what is already explained is 0 there.
  /// known: outlines of balls already placed in this picture; they bound the rays of the others.
  [[nodiscard]] std::vector<BallCandidate> find(const cv::Mat& picture, const cv::Mat& small, const cv::Mat& away,
                                                std::span<const Silhouette> known, const WhiteReference& white) const;

  /// Fits a ball near a place. Nothing when no ball shows there.
  [[nodiscard]] std::optional<BallCandidate> fitNear(const cv::Mat& picture, TablePoint start, Neighbours neighbours,
                                                     const OutlineFitOptions& options, const WhiteReference& white) const;

  /// Grey levels beyond which a small pixel is not cloth.
  static constexpr int kAway = 13;

 private:
  struct Seed {
    ImagePoint at;  ///< full picture
    ImageVector blur;
    bool alone = false;
  };
  [[nodiscard]] std::vector<Seed> seedsOf(const cv::Mat& small, const cv::Mat& away) const;
  void voteWithin(const cv::Mat& small, const cv::Mat& mask, const cv::Rect& area, double radius_px,
                  std::vector<Seed>& seeds) const;

  Rig rig_;
  Table table_;
  BallSet set_;
  SmallScale scale_;
};

}  // namespace ferrule
