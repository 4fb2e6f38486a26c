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
  Silhouette outline;  ///< at position
  OutlineFit fit;
  double standardUncertainty_m = 0.0;  ///< of each coordinate, from the fit alone
  ImageVector blur;                    ///< streak taken into account, px
  bool fromStreak = false;             ///< placed by the middle of a streak; its outline was not seen
  bool alone = false;                  ///< its blob holds nothing but this ball: no arm, no neighbour
  [[nodiscard]] double quality() const { return fit.support * fit.agreement; }
  /// How much speaks for a ball, 0 to 1: its edge, and that a blob of its very size lies alone.
  [[nodiscard]] double belief() const { return alone ? 0.5 + 0.5 * fit.support : fit.support; }
  BallColours colours;
  NameLikelihood names{};
};

/// Finds balls in what differs from the cloth.
class CandidateFinder {
 public:
  /// cloth outlives the finder.
  CandidateFinder(const Rig& rig, const MeasuredTable& measured, SmallScale scale, const ClothModel& cloth);

  /// away: ClothModel::difference of the small picture; what is already explained is 0 there.
  /// region: the part of the small picture to look at.
  /// known: outlines of balls already placed in this picture; they bound the rays of the others.
  /// clusters: also looks for balls that touch each other or something else, which costs more.
  [[nodiscard]] std::vector<BallCandidate> find(const cv::Mat& picture, const cv::Mat& small, const cv::Mat& away,
                                                const cv::Rect& region, std::span<const Silhouette> known,
                                                const WhiteReference& white, bool clusters) const;

  /// Fits a ball near a place. Nothing when no ball shows there.
  [[nodiscard]] std::optional<BallCandidate> fitNear(const cv::Mat& picture, TablePoint start, Neighbours neighbours,
                                                     OutlineFitOptions options, const WhiteReference& white) const;

  /// Takes what a candidate's disc shows for its colours and names, anew where white is known better by now.
  void lookAtColours(const cv::Mat& picture, const WhiteReference& white, BallCandidate& candidate) const;

 private:
  struct Seed {
    ImagePoint at;  ///< full picture
    ImageVector blur;
    bool alone = false;
    bool faint = false;  ///< of nearly the cloth's colour
  };
  enum class Look {
    Clear,     ///< blobs that differ plainly from the cloth
    Faint,     ///< rings of nearly the cloth's colour
    Leftover,  ///< what remains between balls already found
  };
  [[nodiscard]] std::vector<Seed> seedsWithin(const cv::Mat& small, const cv::Mat& away, const cv::Mat& mask,
                                              const cv::Rect& region, Look look, bool clusters) const;
  /// A ball that crosses more than its own radius during the exposure has no outline left to fit; the middle of its
  /// lone streak is its place at mid-exposure. Nothing for shorter streaks.
  [[nodiscard]] std::optional<BallCandidate> streakAt(const cv::Mat& picture, TablePoint middle, ImageVector blur,
                                                      const WhiteReference& white) const;
  void fitSeeds(const cv::Mat& picture, const std::vector<Seed>& seeds, Neighbours known, const WhiteReference& white,
                std::vector<BallCandidate>& kept) const;
  void voteWithin(const cv::Mat& small, const cv::Mat& mask, const cv::Rect& region, const cv::Rect& area,
                  double radius_px, std::vector<Seed>& seeds) const;

  Rig rig_;
  Table table_;
  BallSet set_;
  SmallScale scale_;
  const ClothModel& cloth_;
};

}  // namespace ferrule
