// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/geometry/frames.h"

namespace ferrule {

/// Width and height of an image, px.
struct ImageSize {
  int width = 0;
  int height = 0;

  bool operator==(const ImageSize&) const = default;
};

/// How straight light becomes a bent picture. Coefficients in OpenCV's order.
enum class LensModel {
  None,     ///< pinhole
  Brown5,   ///< k1, k2, p1, p2, k3. Source: Brown 1971
  Brown8,   ///< k1, k2, p1, p2, k3, k4, k5, k6 (rational)
  Fisheye,  ///< k1..k4 of theta. Source: Kannala and Brandt 2006
};

/// A direction from the camera: the point (x, y, 1) of the camera frame (x right, y down, z forward).
struct CameraRay {
  double x = 0.0;
  double y = 0.0;

  bool operator==(const CameraRay&) const = default;
};

/// One camera's lens at one image size. Only meaningful for images of that size.
struct Lens {
  std::string camera;  ///< the owner's name for it
  ImageSize size;
  LensModel model = LensModel::None;
  double focalX_px = 0.0;
  double focalY_px = 0.0;
  ImagePoint centre;  ///< principal point
  std::array<double, 8> coefficients{};
  std::string date;   ///< ISO 8601, of the calibration
  std::string board;  ///< as given to calibrate
  double rms_px = 0.0;

  bool operator==(const Lens&) const = default;
};

/// Where a ray lands in the picture. Nothing where the model folds over.
[[nodiscard]] std::optional<ImagePoint> imageFromRay(const Lens& lens, CameraRay ray);
/// The ray of a picture point. Iterates to convergence and projects back; nothing where that misses by more than
/// 0.01 px (beyond the fold of the model).
[[nodiscard]] std::optional<CameraRay> rayFromImage(const Lens& lens, ImagePoint point);

/// "none", "brown5", "brown8", "fisheye": the words used in files.
[[nodiscard]] std::string_view toText(LensModel model);
/// Nothing for anything else.
[[nodiscard]] std::optional<LensModel> lensModelFromText(std::string_view text);
/// The names of the coefficients that a model uses, in the order of Lens::coefficients.
[[nodiscard]] std::span<const std::string_view> coefficientNames(LensModel model);

}  // namespace ferrule
