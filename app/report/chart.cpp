// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart.h"

#include <cmath>

namespace ferrule {

const QString& titleOf(const Chart& chart) {
  return std::visit([](const auto& one) -> const QString& { return one.title; }, chart);
}

double roundStep(double span, int count) {
  if (!(span > 0.0) || count < 1) return 1.0;
  const double rough = span / count;
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double step : {1.0, 2.0, 5.0, 10.0}) {
    if (step * power >= rough * (1.0 - 1e-9)) return step * power;
  }
  return 10.0 * power;
}

}  // namespace ferrule
