// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/interval.h"

#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "core/base/contract.h"

namespace ferrule {

double normalQuantile(double share) {
  FERRULE_REQUIRE(share > 0.0 && share < 1.0);
  return boost::math::quantile(boost::math::normal(), share);
}

double studentQuantile(double share, double freedom) {
  FERRULE_REQUIRE(share > 0.0 && share < 1.0 && freedom > 0.0);
  return boost::math::quantile(boost::math::students_t(freedom), share);
}

Interval wilsonInterval(double made, double tried, double confidence) {
  FERRULE_REQUIRE(tried > 0.0 && made >= 0.0 && made <= tried);
  const double z = confidence == kConfidence ? 1.959963984540054 : normalQuantile(0.5 + confidence / 2.0);
  const double share = made / tried;
  const double extra = z * z / tried;
  const double middle = (share + extra / 2.0) / (1.0 + extra);
  const double half = z * std::sqrt(share * (1.0 - share) / tried + extra / (4.0 * tried)) / (1.0 + extra);
  return {std::max(0.0, middle - half), std::min(1.0, middle + half)};
}

Interval betaInterval(double a, double b, double confidence) {
  FERRULE_REQUIRE(a > 0.0 && b > 0.0);
  const boost::math::beta_distribution<> beta(a, b);
  return {boost::math::quantile(beta, 0.5 - confidence / 2.0), boost::math::quantile(beta, 0.5 + confidence / 2.0)};
}

Interval meanInterval(double mean, double spread, int n, double confidence) {
  FERRULE_REQUIRE(n >= 2);
  const double half = studentQuantile(0.5 + confidence / 2.0, n - 1.0) * spread / std::sqrt(static_cast<double>(n));
  return {mean - half, mean + half};
}

Interval spreadInterval(double spread, int n, double confidence) {
  FERRULE_REQUIRE(n >= 2);
  const double freedom = n - 1.0;
  const boost::math::chi_squared distribution(freedom);
  return {spread * std::sqrt(freedom / boost::math::quantile(distribution, 0.5 + confidence / 2.0)),
          spread * std::sqrt(freedom / boost::math::quantile(distribution, 0.5 - confidence / 2.0))};
}

double trialsToTell(double share, double otherShare, double power) {
  FERRULE_REQUIRE(share != otherShare);
  const double mean = (share + otherShare) / 2.0;
  const double apart = normalQuantile(0.5 + kConfidence / 2.0) * std::sqrt(2.0 * mean * (1.0 - mean));
  const double found = normalQuantile(power) * std::sqrt(share * (1.0 - share) + otherShare * (1.0 - otherShare));
  return std::pow((apart + found) / (share - otherShare), 2.0);
}

int fewestConvincing(int trials, double aboveShare) {
  for (int made = 0; made <= trials; ++made) {
    if (wilsonInterval(made, trials).least > aboveShare) return made;
  }
  return trials + 1;
}

}  // namespace ferrule
