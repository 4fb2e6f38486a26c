// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/delivered_strike.h"

#include <algorithm>

namespace ferrule {

std::optional<Strike> deliveredStrike(const Delivery& delivery, const PhysicsParameters& parameters) {
  if (!delivery.aim_rad || !delivery.speed_mps) return std::nullopt;
  Strike strike;
  strike.speed_mps = delivery.speed_mps->value;
  if (delivery.side) strike.side = delivery.side->value;
  if (delivery.height) strike.height = delivery.height->value;
  if (delivery.elevation_rad) strike.elevation_rad = std::max(0.0, delivery.elevation_rad->value);
  return strikeDeparting(delivery.aim_rad->value, strike, parameters);
}

}  // namespace ferrule
