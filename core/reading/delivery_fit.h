// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reading/delivery_problem.h"

namespace ferrule {

/// A strike that was found by simulating it.
struct DeliveryFit {
  bool usable = false;  ///< false: no strike goes the way of the film; only delivery's reasons are set
  double strike_s = 0.0;
  double strikeUncertainty_s = 0.0;
  Delivery delivery;
  PlayedStrike best;       ///< the likeliest strike with the cloth, balls and places that it was played with
  double chiSquare = 0.0;  ///< of the samples, per degree of freedom
  int samples = 0;         ///< that took part
};

/// A part of a strike is measured when the film leaves less than this share of what was open beforehand.
inline constexpr double kShownShare = 0.35;

/// Finds aim, speed, tip point and elevation by simulating the strike and comparing with every ball's measured places:
/// weighted least squares with robust weights, cloth, cushions, balls and places as unknown as the priors say.
///
/// The way of a ball tells side spin and elevation mostly by their product, so elevations are gone through one by one;
/// each is weighed by its likelihood (Laplace's approximation over the other unknowns), and the uncertainties cover
/// them all. What the film narrows too little stays absent, with a reason: a straight roll claims no side spin.
///
/// start: from fitStruckPath, usable. Deterministic.
/// Source: nested Laplace approximation as in Rue, Martino and Chopin, J. R. Stat. Soc. B 71, 319 (2009) (from memory).
[[nodiscard]] DeliveryFit fitDelivery(const Table& table, const DeliveryWindow& window, const PathFit& start,
                                      const DeliveryPriors& priors);

}  // namespace ferrule
