// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/table_priors.h"

#include <algorithm>
#include <array>

namespace ferrule {

namespace {

constexpr double kLeastShare = 0.2;

struct Known {
  const char* name;
  double DeliveryPriors::*spread;
  bool logarithm;  ///< the spread is that of the natural logarithm
};

constexpr std::array kKnown{
    Known{"sliding_friction", &DeliveryPriors::slidingFrictionSpread, true},
    Known{"rolling_friction", &DeliveryPriors::rollingFrictionSpread, true},
    Known{"spin_decay_rad_s2", &DeliveryPriors::spinDecaySpread, true},
    Known{"ball_restitution", &DeliveryPriors::ballRestitutionSpread, false},
    Known{"ball_friction_factor", &DeliveryPriors::ballFrictionSpread, true},
    Known{"cushion_restitution", &DeliveryPriors::cushionRestitutionSpread, false},
    Known{"cushion_friction", &DeliveryPriors::cushionFrictionSpread, false},
};

}  // namespace

DeliveryPriors tablePriors(const PhysicsParameters& literature, const std::optional<Fingerprint>& fingerprint) {
  DeliveryPriors priors;
  priors.middle = literature;
  if (!fingerprint) return priors;
  priors.middle = applied(*fingerprint, literature);
  for (const Known& known : kKnown) {
    const auto fitted = std::ranges::find(fingerprint->coefficients, known.name, &FittedCoefficient::name);
    if (fitted == fingerprint->coefficients.end() || !fitted->determined || !(fitted->value > 0.0)) continue;
    double& spread = priors.*known.spread;
    const double told = fitted->standardUncertainty / (known.logarithm ? fitted->value : 1.0);
    spread = std::clamp(told, kLeastShare * spread, spread);
  }
  return priors;
}

}  // namespace ferrule
