// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

/// The frames of the project, drawn once.
///
///   Image (px): origin at the CENTRE of the top-left pixel (OpenCV's convention: integer = pixel centre).
///
///        (0,0)-----> x
///          |   ...
///          v y
///
///   Table (m): origin at the centre of the playing surface, which runs from cushion nose to cushion nose;
///   z = 0 on the cloth, a resting ball's centre at z = R.
///
///      head-left ------------ side-left ------------ foot-left
///          |                      ^ y                    |
///        head                     o--> x               foot        z up, out of the page
///          |                                             |
///      head-right ----------- side-right ---------- foot-right
///
///   Angles are counter-clockwise from +x, in radians.
///
/// The y flip between screen (y down) and table (y left) happens in one place of the painter; a camera's pose takes
/// care of it between image and table.
namespace ferrule {

struct ImageFrame {};
struct TableFrame {};

/// A displacement in one frame, in that frame's unit (px or m).
template <class Frame>
struct Vector2 {
  double x = 0.0;
  double y = 0.0;

  bool operator==(const Vector2&) const = default;
};

/// A place in one frame. Points of different frames do not mix; point + point does not compile.
template <class Frame>
struct Point2 {
  double x = 0.0;
  double y = 0.0;

  bool operator==(const Point2&) const = default;
};

using ImagePoint = Point2<ImageFrame>;    ///< px
using ImageVector = Vector2<ImageFrame>;  ///< px
using TablePoint = Point2<TableFrame>;    ///< m
using TableVector = Vector2<TableFrame>;  ///< m, or m/s where the name says so

/// A place in the table frame with its height above the cloth, m.
struct TablePoint3 {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;

  bool operator==(const TablePoint3&) const = default;
};

template <class F>
constexpr Vector2<F> operator-(Point2<F> a, Point2<F> b) {
  return {a.x - b.x, a.y - b.y};
}
template <class F>
constexpr Point2<F> operator+(Point2<F> p, Vector2<F> v) {
  return {p.x + v.x, p.y + v.y};
}
template <class F>
constexpr Point2<F> operator-(Point2<F> p, Vector2<F> v) {
  return {p.x - v.x, p.y - v.y};
}
template <class F>
constexpr Vector2<F> operator+(Vector2<F> a, Vector2<F> b) {
  return {a.x + b.x, a.y + b.y};
}
template <class F>
constexpr Vector2<F> operator-(Vector2<F> a, Vector2<F> b) {
  return {a.x - b.x, a.y - b.y};
}
template <class F>
constexpr Vector2<F> operator-(Vector2<F> a) {
  return {-a.x, -a.y};
}
template <class F>
constexpr Vector2<F> operator*(double s, Vector2<F> v) {
  return {s * v.x, s * v.y};
}
template <class F>
constexpr Vector2<F> operator*(Vector2<F> v, double s) {
  return {s * v.x, s * v.y};
}
template <class F>
constexpr Vector2<F> operator/(Vector2<F> v, double s) {
  return {v.x / s, v.y / s};
}

template <class F>
constexpr double dot(Vector2<F> a, Vector2<F> b) {
  return a.x * b.x + a.y * b.y;
}
/// z of the cross product: positive when b is counter-clockwise of a.
template <class F>
constexpr double cross(Vector2<F> a, Vector2<F> b) {
  return a.x * b.y - a.y * b.x;
}
template <class F>
double length(Vector2<F> v) {
  return std::hypot(v.x, v.y);
}
template <class F>
double distance(Point2<F> a, Point2<F> b) {
  return length(a - b);
}
/// Counter-clockwise from +x, in (-pi, pi].
template <class F>
double direction(Vector2<F> v) {
  return std::atan2(v.y + 0.0, v.x);  // + 0.0 turns -0 into 0, which atan2 would answer with -pi
}
/// Unit vector; the zero vector stays zero.
template <class F>
Vector2<F> unit(Vector2<F> v) {
  const double n = length(v);
  return n > 0.0 ? v / n : v;
}
/// Turned a quarter counter-clockwise.
template <class F>
constexpr Vector2<F> perpendicular(Vector2<F> v) {
  return {-v.y, v.x};
}

}  // namespace ferrule
