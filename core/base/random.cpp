// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/random.h"

#include <cmath>
#include <numbers>

namespace ferrule {

double Random::uniform() {
  return static_cast<double>(engine_() >> 11) * 0x1.0p-53;
}

double Random::normal() {
  if (hasSpare_) {
    hasSpare_ = false;
    return spare_;
  }
  const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
  const double angle = 2.0 * std::numbers::pi * uniform();
  spare_ = radius * std::sin(angle);
  hasSpare_ = true;
  return radius * std::cos(angle);
}

}  // namespace ferrule
