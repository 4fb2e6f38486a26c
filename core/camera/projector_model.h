// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>

/// The projector's bending, for numbers and for derivatives. For this folder's .cpp files only.
namespace ferrule {

/// Radial and tangential parts as a lens has them. Source: Brown, Close-Range Camera Calibration, 1971.
template <class T>
Eigen::Matrix<T, 2, 1> bend(const T* k, const Eigen::Matrix<T, 2, 1>& p) {
  const T x = p.x();
  const T y = p.y();
  const T r2 = x * x + y * y;
  const T radial = T(1.0) + k[0] * r2 + k[1] * r2 * r2;
  return {x * radial + T(2.0) * k[2] * x * y + k[3] * (r2 + T(2.0) * x * x),
          y * radial + k[2] * (r2 + T(2.0) * y * y) + T(2.0) * k[3] * x * y};
}

}  // namespace ferrule
