// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>

namespace ferrule {

/// c[0] + c[1] t + ... + c[4] t^4; leading coefficients may be 0 or as small as they like.
///
/// The root finder, and why. Event times need the first place in a bounded stretch where a distance turns from positive
/// to negative, and nothing else. So the polynomial is written in the Bernstein basis of that stretch: the curve has at
/// most as many roots there as its coefficients change sign (Lane and Riesenfeld, "Bounds on a polynomial", BIT 21,
/// 1981). No change: no root, after a dozen multiplications. One change: one root, closed in by Newton steps that may
/// not leave the bracket. More: if the slope has one change the curve has one valley, and the sign at its bottom
/// decides; else the stretch is halved (de Casteljau). Against the companion matrix and Ferrari's formula this has no
/// complex pair that stands for a graze, no ghost outside the stretch, no trouble with a vanishing leading coefficient,
/// and the simple cases are the cheap ones.
struct Quartic {
  std::array<double, 5> c{};

  [[nodiscard]] double at(double t) const { return c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * c[4]))); }
  [[nodiscard]] double slopeAt(double t) const { return c[1] + t * (2.0 * c[2] + t * (3.0 * c[3] + t * 4.0 * c[4])); }
  bool operator==(const Quartic&) const = default;
};

/// The smallest t in [0, end] where the polynomial passes from positive to negative. A touch without a change of sign
/// that rounding can show is no passage. Nothing when end is not positive or a coefficient is not finite.
[[nodiscard]] std::optional<double> firstDescent(const Quartic& polynomial, double end);

/// The root of distance + speed t + acceleration t^2 / 2 where it passes from positive to negative, at any t, also
/// negative; written so that nothing cancels (2 d / (v + sqrt(v^2 - 2 a d)) for the usual case).
[[nodiscard]] std::optional<double> descentOfParabola(double distance, double speed, double acceleration);

}  // namespace ferrule
