// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/polynomial.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ferrule {

namespace {

/// Bernstein coefficients over one stretch.
using Bernstein = std::array<double, 5>;

/// A stretch of [0, 1], as shares of the whole.
struct Stretch {
  double from = 0.0;
  double to = 1.0;
};

/// Halving deeper than this cannot tell two roots apart any more.
constexpr int kMostHalvings = 52;
/// Each Newton step doubles the digits; a bracket halves at worst.
constexpr int kMostSteps = 100;

/// The same polynomial over t = end * share.
Quartic scaled(const Quartic& polynomial, double end) {
  Quartic result;
  double power = 1.0;
  for (std::size_t k = 0; k < 5; ++k) {
    result.c[k] = polynomial.c[k] * power;
    power *= end;
  }
  return result;
}

Bernstein bernsteinOf(const Quartic& q) {
  const auto& c = q.c;
  return {c[0], c[0] + c[1] / 4.0, c[0] + c[1] / 2.0 + c[2] / 6.0, c[0] + 0.75 * c[1] + c[2] / 2.0 + c[3] / 4.0,
          c[0] + c[1] + c[2] + c[3] + c[4]};
}

template <std::size_t N>
int signChanges(const std::array<double, N>& b) {
  int changes = 0;
  int last = 0;
  for (const double value : b) {
    const int sign = (value > 0.0) - (value < 0.0);
    if (sign == 0) continue;
    if (last != 0 && sign != last) ++changes;
    last = sign;
  }
  return changes;
}

std::array<double, 4> slopeOf(const Bernstein& b) {
  return {b[1] - b[0], b[2] - b[1], b[3] - b[2], b[4] - b[3]};
}

/// The root of f in [low, high], where f changes sign; Newton's steps, halving when one would leave the bracket. The
/// sign at low is given, and the other one holds at high: close to an end rounding may show f otherwise.
template <class Function, class Slope>
double closeIn(double low, double high, bool lowIsPositive, Function f, Slope slope) {
  double t = 0.5 * (low + high);
  for (int step = 0; step < kMostSteps; ++step) {
    const double value = f(t);
    if (value == 0.0) return t;
    ((value > 0.0) == lowIsPositive ? low : high) = t;
    double next = t - value / slope(t);
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    const double moved = std::abs(next - t);
    t = next;
    if (moved <= 4.0 * std::numeric_limits<double>::epsilon() * std::abs(t)) break;
  }
  return t;
}

double descentIn(const Quartic& q, Stretch stretch) {
  return closeIn(
      stretch.from, stretch.to, true, [&](double t) { return q.at(t); }, [&](double t) { return q.slopeAt(t); });
}

/// Where the slope passes from negative to positive; it changes sign once in the stretch.
double bottomIn(const Quartic& q, Stretch stretch) {
  const auto bend = [&](double t) { return 2.0 * q.c[2] + t * (6.0 * q.c[3] + t * 12.0 * q.c[4]); };
  return closeIn(
      stretch.from, stretch.to, false, [&](double t) { return q.slopeAt(t); }, bend);
}

struct Halves {
  Bernstein left{};
  Bernstein right{};
};

Halves halve(const Bernstein& b) {
  Halves halves;
  Bernstein row = b;
  for (std::size_t k = 0; k < 5; ++k) {
    halves.left[k] = row[0];
    halves.right[4 - k] = row[4 - k];
    for (std::size_t i = 0; i + k + 1 < 5; ++i)
      row[i] = 0.5 * (row[i] + row[i + 1]);
  }
  return halves;
}

std::optional<double> search(const Quartic& q, const Bernstein& b, Stretch stretch, int depth) {
  const int changes = signChanges(b);
  if (changes == 0) return std::nullopt;
  // A zero at an end hides the sign there; closing in needs two signs.
  if (changes == 1 && b[0] != 0.0 && b[4] != 0.0) {
    if (b[0] < 0.0) return std::nullopt;
    return descentIn(q, stretch);
  }
  if (changes == 2 && b[0] > 0.0 && b[4] > 0.0 && signChanges(slopeOf(b)) == 1) {
    const double bottom = bottomIn(q, stretch);
    if (q.at(bottom) < 0.0) return descentIn(q, {stretch.from, bottom});
    return std::nullopt;
  }
  if (depth >= kMostHalvings) return std::nullopt;
  const Halves halves = halve(b);
  const double middle = 0.5 * (stretch.from + stretch.to);
  if (const auto left = search(q, halves.left, {stretch.from, middle}, depth + 1)) return left;
  // A descent that ends exactly on the middle belongs to neither half alone.
  if (halves.right[0] == 0.0 && halves.left[3] > 0.0 && halves.right[1] < 0.0) return middle;
  return search(q, halves.right, {middle, stretch.to}, depth + 1);
}

}  // namespace

std::optional<double> firstDescent(const Quartic& polynomial, double end) {
  if (!(end > 0.0) || !std::isfinite(end)) return std::nullopt;
  const Quartic q = scaled(polynomial, end);
  const Bernstein b = bernsteinOf(q);
  double sum = 0.0;
  bool allPositive = true;
  for (const double value : b) {
    allPositive = allPositive && value > 0.0;
    sum += value;
  }
  if (allPositive || !std::isfinite(sum)) return std::nullopt;  // the usual case: the balls do not meet
  const auto share = search(q, b, {}, 0);
  if (!share) return std::nullopt;
  return *share * end;
}

std::optional<double> descentOfParabola(double distance, double speed, double acceleration) {
  const double discriminant = speed * speed - 2.0 * acceleration * distance;
  if (!(discriminant >= 0.0)) return std::nullopt;
  const double root = std::sqrt(discriminant);
  if (speed < 0.0) return 2.0 * distance / (root - speed);
  if (acceleration < 0.0) return -(root + speed) / acceleration;
  return std::nullopt;
}

}  // namespace ferrule
