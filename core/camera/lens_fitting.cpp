// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_fitting.h"

#include <cmath>
#include <utility>

#include "core/base/contract.h"
#include "core/camera/image_size_mismatch.h"

namespace ferrule {

namespace {

constexpr double kRounding_px = 1.0;

/// One quarter clockwise: a pixel (x, y) of a picture of height h goes to (h - 1 - y, x).
Lens quarterTurned(const Lens& lens) {
  Lens turned = lens;
  turned.size = {lens.size.height, lens.size.width};
  turned.focalX_px = lens.focalY_px;
  turned.focalY_px = lens.focalX_px;
  turned.centre = {lens.size.height - 1.0 - lens.centre.y, lens.centre.x};
  if (lens.model == LensModel::Brown5 || lens.model == LensModel::Brown8) {
    // With x' = -y and y' = x, the tangential terms keep their form for p1' = p2, p2' = -p1.
    turned.coefficients[2] = lens.coefficients[3];
    turned.coefficients[3] = -lens.coefficients[2];
  }
  return turned;
}

}  // namespace

Result<Lens> scaledLens(const Lens& lens, ImageSize size, const std::string& film, const std::string& lensName) {
  const double scaleX = static_cast<double>(size.width) / lens.size.width;
  const double scaleY = static_cast<double>(size.height) / lens.size.height;
  const double oddX_px = std::abs(scaleY * lens.size.width - size.width);
  const double oddY_px = std::abs(scaleX * lens.size.height - size.height);
  if (!(size.width > 0 && size.height > 0) || std::min(oddX_px, oddY_px) > kRounding_px) {
    return tl::make_unexpected(imageSizeMismatch(film, size, lensName, lens.size));
  }
  Lens scaled = lens;
  scaled.size = size;
  scaled.focalX_px *= scaleX;
  scaled.focalY_px *= scaleY;
  scaled.centre = {(lens.centre.x + 0.5) * scaleX - 0.5, (lens.centre.y + 0.5) * scaleY - 0.5};
  scaled.rms_px *= std::sqrt(scaleX * scaleY);
  return scaled;
}

Lens turnedLens(const Lens& lens, int clockwise_deg) {
  FERRULE_REQUIRE(clockwise_deg % 90 == 0 && clockwise_deg >= 0 && clockwise_deg < 360);
  Lens turned = lens;
  for (int quarter = 0; quarter < clockwise_deg / 90; ++quarter)
    turned = quarterTurned(turned);
  return turned;
}

}  // namespace ferrule
