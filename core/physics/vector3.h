// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

#include "core/geometry/frames.h"

namespace ferrule {

/// A displacement, velocity (m/s), acceleration (m/s^2) or spin (rad/s, right-hand rule) in the table frame.
struct Vector3 {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;

  bool operator==(const Vector3&) const = default;
};

constexpr Vector3 operator+(Vector3 a, Vector3 b) {
  return {a.x + b.x, a.y + b.y, a.z + b.z};
}
constexpr Vector3 operator-(Vector3 a, Vector3 b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}
constexpr Vector3 operator-(Vector3 a) {
  return {-a.x, -a.y, -a.z};
}
constexpr Vector3 operator*(double s, Vector3 v) {
  return {s * v.x, s * v.y, s * v.z};
}
constexpr Vector3 operator*(Vector3 v, double s) {
  return {s * v.x, s * v.y, s * v.z};
}
constexpr Vector3 operator/(Vector3 v, double s) {
  return {v.x / s, v.y / s, v.z / s};
}
constexpr TablePoint3 operator+(TablePoint3 p, Vector3 v) {
  return {p.x + v.x, p.y + v.y, p.z + v.z};
}
constexpr TablePoint3 operator-(TablePoint3 p, Vector3 v) {
  return {p.x - v.x, p.y - v.y, p.z - v.z};
}
constexpr Vector3 operator-(TablePoint3 a, TablePoint3 b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}

constexpr double dot(Vector3 a, Vector3 b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}
constexpr Vector3 cross(Vector3 a, Vector3 b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(Vector3 v) {
  return std::sqrt(dot(v, v));
}
/// Unit vector; the zero vector stays zero.
inline Vector3 unit(Vector3 v) {
  const double n = length(v);
  return n > 0.0 ? v / n : v;
}
inline bool isFinite(Vector3 v) {
  return std::isfinite(v.x) && std::isfinite(v.y) && std::isfinite(v.z);
}

/// As seen from above.
constexpr TablePoint planOf(TablePoint3 p) {
  return {p.x, p.y};
}
constexpr TableVector planOf(Vector3 v) {
  return {v.x, v.y};
}
/// A horizontal vector.
constexpr Vector3 horizontal(TableVector v) {
  return {v.x, v.y, 0.0};
}

}  // namespace ferrule
