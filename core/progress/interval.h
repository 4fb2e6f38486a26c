// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {

/// From least to most, ends included.
struct Interval {
  double least = 0.0;
  double most = 0.0;

  [[nodiscard]] bool holds(double value) const { return least <= value && value <= most; }
  bool operator==(const Interval&) const = default;
};

/// Of every interval of this folder.
inline constexpr double kConfidence = 0.95;

/// z with Phi(z) = share; share in (0, 1).
[[nodiscard]] double normalQuantile(double share);
/// Of Student's distribution; freedom > 0.
[[nodiscard]] double studentQuantile(double share, double freedom);

/// Of a share of independent trials. made in [0, tried], tried > 0; both may be fractions (an effective number).
///   (p + z2/2n +- z sqrt(p(1-p)/n + z2/4n2)) / (1 + z2/n)
/// Source: Wilson 1927, J. Am. Stat. Assoc. 22, 209.
[[nodiscard]] Interval wilsonInterval(double made, double tried, double confidence = kConfidence);

/// Of the Beta distribution with parameters a and b, equal tails.
[[nodiscard]] Interval betaInterval(double a, double b, double confidence = kConfidence);

/// Of a normal sample's mean; n >= 2.
[[nodiscard]] Interval meanInterval(double mean, double spread, int n, double confidence = kConfidence);
/// Of a normal sample's standard deviation (chi square with n - 1 degrees of freedom); n >= 2.
[[nodiscard]] Interval spreadInterval(double spread, int n, double confidence = kConfidence);

/// How many trials on each of two sides tell one share from the other, two-sided at 5 %, with the given power:
///   (z_a sqrt(2 p q) + z_b sqrt(p1 q1 + p2 q2))2 / (p1 - p2)2,  p the mean of p1 and p2
/// Source: Fleiss, Statistical methods for rates and proportions, 1981.
[[nodiscard]] double trialsToTell(double share, double otherShare, double power = 0.8);

/// The fewest makes of so many trials whose Wilson interval lies wholly above a share; trials + 1 where none does.
[[nodiscard]] int fewestConvincing(int trials, double aboveShare);

}  // namespace ferrule
