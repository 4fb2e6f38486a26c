// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ferrule {

namespace {

/// A point of the picture plane at distance 1, after distortion.
struct Bent {
  double x = 0.0;
  double y = 0.0;
};

/// Derivative of (bent.x, bent.y) by (ray.x, ray.y).
struct Jacobian {
  double xx = 1.0, xy = 0.0, yx = 0.0, yy = 1.0;
  [[nodiscard]] double determinant() const { return xx * yy - xy * yx; }
};

constexpr int kMostSteps = 40;
constexpr int kMostHalvings = 20;
constexpr double kConverged_px = 1e-10;
constexpr double kMostMiss_px = 0.01;
/// Samples between the axis and a point when a polynomial of high degree is looked at for roots.
constexpr int kFoldSamples = 16;
/// Rays further from the axis than this have no place in a picture of (x, y, 1).
constexpr double kWidestAngle_rad = 1.56;

/// Whether 1 + a s + b s^2 + c s^3 stays above zero from 0 to end. Exact: looks at the end and at the turning points.
bool staysPositive(double a, double b, double c, double end) {
  const auto value = [&](double s) { return 1.0 + s * (a + s * (b + s * c)); };
  if (!(value(end) > 0.0)) return false;
  const double quadratic = 3.0 * c;
  const double linear = 2.0 * b;
  const auto fine = [&](double s) { return !(s > 0.0 && s < end) || value(s) > 0.0; };
  if (quadratic == 0.0) return linear == 0.0 || fine(-a / linear);
  const double discriminant = linear * linear - 4.0 * quadratic * a;
  if (discriminant <= 0.0) return true;
  const double root = std::sqrt(discriminant);
  return fine((-linear - root) / (2.0 * quadratic)) && fine((-linear + root) / (2.0 * quadratic));
}

/// Brown's model with OpenCV's rational extension; k4 to k6 are zero for Brown5.
/// Source: Brown 1971; the rational form: OpenCV 4.6 manual, calib3d.
struct Brown {
  double k1, k2, p1, p2, k3, k4, k5, k6;

  explicit Brown(const Lens& lens)
      : k1(lens.coefficients[0]),
        k2(lens.coefficients[1]),
        p1(lens.coefficients[2]),
        p2(lens.coefficients[3]),
        k3(lens.coefficients[4]),
        k4(lens.model == LensModel::Brown8 ? lens.coefficients[5] : 0.0),
        k5(lens.model == LensModel::Brown8 ? lens.coefficients[6] : 0.0),
        k6(lens.model == LensModel::Brown8 ? lens.coefficients[7] : 0.0) {}

  [[nodiscard]] Bent bend(CameraRay ray, Jacobian* jacobian = nullptr) const {
    const double x = ray.x;
    const double y = ray.y;
    const double s = x * x + y * y;
    const double above = 1.0 + s * (k1 + s * (k2 + s * k3));
    const double below = 1.0 + s * (k4 + s * (k5 + s * k6));
    const double radial = above / below;
    if (jacobian) {
      const double aboveSlope = k1 + s * (2.0 * k2 + s * 3.0 * k3);
      const double belowSlope = k4 + s * (2.0 * k5 + s * 3.0 * k6);
      const double slope = (aboveSlope - radial * belowSlope) / below;  // d radial / d s
      jacobian->xx = radial + 2.0 * x * x * slope + 2.0 * p1 * y + 6.0 * p2 * x;
      jacobian->xy = 2.0 * x * y * slope + 2.0 * p1 * x + 2.0 * p2 * y;
      jacobian->yx = jacobian->xy;
      jacobian->yy = radial + 2.0 * y * y * slope + 6.0 * p1 * y + 2.0 * p2 * x;
    }
    return {x * radial + 2.0 * p1 * x * y + p2 * (s + 2.0 * x * x),
            y * radial + p1 * (s + 2.0 * y * y) + 2.0 * p2 * x * y};
  }

  /// Whether the radius in the picture grows all the way from the axis to this ray.
  [[nodiscard]] bool beforeFold(CameraRay ray) const {
    const double end = ray.x * ray.x + ray.y * ray.y;
    if (k4 == 0.0 && k5 == 0.0 && k6 == 0.0) return staysPositive(3.0 * k1, 5.0 * k2, 7.0 * k3, end);
    if (!staysPositive(k4, k5, k6, end)) return false;
    for (int i = 1; i <= kFoldSamples; ++i) {
      const double s = end * i / kFoldSamples;
      const double above = 1.0 + s * (k1 + s * (k2 + s * k3));
      const double below = 1.0 + s * (k4 + s * (k5 + s * k6));
      const double aboveSlope = k1 + s * (2.0 * k2 + s * 3.0 * k3);
      const double belowSlope = k4 + s * (2.0 * k5 + s * 3.0 * k6);
      if (!((above + 2.0 * s * aboveSlope) * below - 2.0 * s * above * belowSlope > 0.0)) return false;
    }
    return true;
  }

  /// Newton's method from the bent point; a step is halved until it stays before the fold and comes nearer.
  [[nodiscard]] std::optional<CameraRay> straighten(Bent target, double tolerance) const {
    CameraRay ray{target.x, target.y};
    for (int i = 0; i < kMostHalvings && !beforeFold(ray); ++i)
      ray = {0.5 * ray.x, 0.5 * ray.y};
    Jacobian jacobian;
    Bent bent = bend(ray, &jacobian);
    double miss = std::hypot(target.x - bent.x, target.y - bent.y);
    for (int step = 0; step < kMostSteps && miss > tolerance; ++step) {
      const double determinant = jacobian.determinant();
      if (!(determinant > 0.0)) return std::nullopt;
      const double ex = target.x - bent.x;
      const double ey = target.y - bent.y;
      double dx = (jacobian.yy * ex - jacobian.xy * ey) / determinant;
      double dy = (jacobian.xx * ey - jacobian.yx * ex) / determinant;
      bool nearer = false;
      for (int i = 0; i < kMostHalvings && !nearer; ++i) {
        const CameraRay next{ray.x + dx, ray.y + dy};
        if (beforeFold(next)) {
          Jacobian nextJacobian;
          const Bent nextBent = bend(next, &nextJacobian);
          const double nextMiss = std::hypot(target.x - nextBent.x, target.y - nextBent.y);
          if (nextMiss < miss) {
            ray = next;
            bent = nextBent;
            jacobian = nextJacobian;
            miss = nextMiss;
            nearer = true;
          }
        }
        dx *= 0.5;
        dy *= 0.5;
      }
      if (!nearer) break;
    }
    return ray;
  }
};

/// Source: Kannala and Brandt 2006; OpenCV 4.6 manual, calib3d fisheye.
struct Fisheye {
  double k1, k2, k3, k4;

  explicit Fisheye(const Lens& lens)
      : k1(lens.coefficients[0]), k2(lens.coefficients[1]), k3(lens.coefficients[2]), k4(lens.coefficients[3]) {}

  [[nodiscard]] double bentAngle(double angle) const {
    const double s = angle * angle;
    return angle * (1.0 + s * (k1 + s * (k2 + s * (k3 + s * k4))));
  }
  [[nodiscard]] double slope(double angle) const {
    const double s = angle * angle;
    return 1.0 + s * (3.0 * k1 + s * (5.0 * k2 + s * (7.0 * k3 + s * 9.0 * k4)));
  }
  [[nodiscard]] bool beforeFold(double angle) const {
    for (int i = 1; i <= kFoldSamples; ++i) {
      if (!(slope(angle * i / kFoldSamples) > 0.0)) return false;
    }
    return true;
  }
  [[nodiscard]] std::optional<Bent> bend(CameraRay ray) const {
    const double radius = std::hypot(ray.x, ray.y);
    const double angle = std::atan(radius);
    if (!beforeFold(angle)) return std::nullopt;
    const double scale = radius > 1e-12 ? bentAngle(angle) / radius : 1.0;
    return Bent{ray.x * scale, ray.y * scale};
  }
  [[nodiscard]] std::optional<CameraRay> straighten(Bent target, double tolerance) const {
    const double bentRadius = std::hypot(target.x, target.y);
    if (bentRadius < 1e-12) return CameraRay{target.x, target.y};
    // Bisection keeps Newton's method on the rising branch.
    double low = 0.0;
    double high = kWidestAngle_rad;
    double angle = std::min(bentRadius, 0.5 * kWidestAngle_rad);
    for (int step = 0; step < 2 * kMostSteps; ++step) {
      const bool folded = !beforeFold(angle);
      const double miss = bentAngle(angle) - bentRadius;
      if (!folded && std::abs(miss) <= tolerance) break;
      (folded || miss > 0.0 ? high : low) = angle;
      const double newton = folded ? high : angle - miss / slope(angle);
      angle = newton > low && newton < high ? newton : 0.5 * (low + high);
    }
    const double scale = std::tan(angle) / bentRadius;
    return CameraRay{target.x * scale, target.y * scale};
  }
};

std::optional<Bent> bend(const Lens& lens, CameraRay ray) {
  switch (lens.model) {
    case LensModel::None:
      return Bent{ray.x, ray.y};
    case LensModel::Brown5:
    case LensModel::Brown8: {
      const Brown brown(lens);
      if (!brown.beforeFold(ray)) return std::nullopt;
      return brown.bend(ray);
    }
    case LensModel::Fisheye:
      return Fisheye(lens).bend(ray);
  }
  return std::nullopt;
}

constexpr std::array<std::pair<LensModel, std::string_view>, 4> kModelWords{{{LensModel::None, "none"},
                                                                             {LensModel::Brown5, "brown5"},
                                                                             {LensModel::Brown8, "brown8"},
                                                                             {LensModel::Fisheye, "fisheye"}}};

}  // namespace

std::optional<ImagePoint> imageFromRay(const Lens& lens, CameraRay ray) {
  const auto bent = bend(lens, ray);
  if (!bent) return std::nullopt;
  const ImagePoint point{lens.centre.x + lens.focalX_px * bent->x, lens.centre.y + lens.focalY_px * bent->y};
  if (!std::isfinite(point.x) || !std::isfinite(point.y)) return std::nullopt;
  return point;
}

std::optional<CameraRay> rayFromImage(const Lens& lens, ImagePoint point) {
  const Bent target{(point.x - lens.centre.x) / lens.focalX_px, (point.y - lens.centre.y) / lens.focalY_px};
  const double tolerance = kConverged_px / std::max(lens.focalX_px, lens.focalY_px);
  std::optional<CameraRay> ray;
  switch (lens.model) {
    case LensModel::None:
      ray = CameraRay{target.x, target.y};
      break;
    case LensModel::Brown5:
    case LensModel::Brown8:
      ray = Brown(lens).straighten(target, tolerance);
      break;
    case LensModel::Fisheye:
      ray = Fisheye(lens).straighten(target, tolerance);
      break;
  }
  if (!ray) return std::nullopt;
  const auto again = imageFromRay(lens, *ray);
  if (!again || !(distance(*again, point) <= kMostMiss_px)) return std::nullopt;
  return ray;
}

std::string_view toText(LensModel model) {
  for (const auto& [known, word] : kModelWords) {
    if (known == model) return word;
  }
  return "none";
}

std::optional<LensModel> lensModelFromText(std::string_view text) {
  for (const auto& [model, word] : kModelWords) {
    if (word == text) return model;
  }
  return std::nullopt;
}

std::span<const std::string_view> coefficientNames(LensModel model) {
  static constexpr std::array<std::string_view, 8> brown{"k1", "k2", "p1", "p2", "k3", "k4", "k5", "k6"};
  static constexpr std::array<std::string_view, 4> fisheye{"k1", "k2", "k3", "k4"};
  switch (model) {
    case LensModel::None:
      return {};
    case LensModel::Brown5:
      return std::span(brown).first(5);
    case LensModel::Brown8:
      return brown;
    case LensModel::Fisheye:
      return fisheye;
  }
  return {};
}

}  // namespace ferrule
