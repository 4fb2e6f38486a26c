// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/types.hpp>
#include <span>
#include <vector>

#include "core/vision/ball_track.h"

namespace ferrule {

/// How far a ball can be from where it was last seen, m, with room for its outline: at its own speed or at that of a
/// ball near enough to have hit it; at any speed when it was lost or has just been struck.
[[nodiscard]] double reachSinceSeen_m(const BallTrack& track, std::span<const BallTrack> tracks, double time_s,
                                      double radius_m);
/// The square of small pixels within so many radii of an outline's centre, cut to the picture.
[[nodiscard]] cv::Rect gateAround(const Silhouette& outline, double radii, SmallScale scale, cv::Size picture);
/// Adds a gate; gates that overlap become one.
void addGate(std::vector<cv::Rect>& gates, cv::Rect gate);

}  // namespace ferrule
