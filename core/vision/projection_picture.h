// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <string>
#include <vector>

#include "core/camera/projector_file.h"

namespace ferrule {

/// Lines of light on the cloth, in the table frame.
struct LightLine {
  std::vector<TablePoint> places;
  bool closed = false;
  bool dashed = false;
};

/// A word beside a place.
struct LightLabel {
  TablePoint place;
  std::string text;
};

struct LightDrawing {
  std::vector<LightLine> lines;
  std::vector<LightLabel> labels;
};

/// A ring that a ball of this radius just covers.
[[nodiscard]] LightLine ringAround(TablePoint place, double radius_m);

/// The picture to be sent: the drawing as it must be bent to lie true on the cloth; black elsewhere. Nothing blinks.
/// 8-bit BGR of the projector's size.
[[nodiscard]] cv::Mat projectionPicture(const Projector& projector, const LightDrawing& drawing);

/// A grid of tags over most of the picture for calibrating the projector, black on white, and where its corners are.
/// The ids are none of those that lie on tables. Needs at least 320 by 200 pixels (a contract).
[[nodiscard]] ProjectorGrid projectorGridFor(ImageSize size);
[[nodiscard]] cv::Mat gridPicture(const ProjectorGrid& grid);

}  // namespace ferrule
