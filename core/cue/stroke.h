// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/cue/address_fit.h"

namespace ferrule {

/// Standard deviation of the aim over images, less what the pictures' own noise makes of a still cue. weights: images
/// with 0 are left out.
[[nodiscard]] double aimSpread(const AddressFit& fit, std::span<const double> weights);

/// The same over the last second before a strike; nothing with fewer than five images.
/// Source of its uncertainty: JCGM 100:2008, E.4.3.
[[nodiscard]] std::optional<Measured> steadiness(const AddressFit& fit, double strike_s);

/// How fast the tip came to the ball, m/s: a parabola through its last places along the cue's line. Nothing with fewer
/// than three images of the forward stroke.
[[nodiscard]] std::optional<Measured> tipSpeed(const AddressFit& fit, const CueModel& model, double strike_s);

}  // namespace ferrule
