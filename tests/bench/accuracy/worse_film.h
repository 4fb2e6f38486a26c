// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/error.h"
#include "core/camera/lens.h"
#include "tests/bench/accuracy/truth.h"

namespace ferrule::bench {

/// What a cheaper camera, a darker room or a worse recording does to a film. The balls' places stay what they were.
enum class Worsening {
  Noise,       ///< sensor noise of 7 grey levels in each channel
  Dim,         ///< 45 % of the light, with noise of 4 grey levels
  Flicker,     ///< lamps that flicker by 6 % and fade to 75 % over the film
  Uneven,      ///< 60 % of the light at the corners of the picture, 110 % in its middle
  Warm,        ///< another white point and another gamma
  Soft,        ///< out of focus: Gaussian, 1.3 px
  Sharpened,   ///< edges overdrawn as telephones do
  Compressed,  ///< blocks and ringing of a strong compression
  HalfRate,    ///< every second image
  HalfSize,    ///< half as wide and high
  UpsideDown,  ///< the camera hangs the other way round
  Jitter,      ///< trembles by up to half a pixel, as on a shaky arm
  Telephone,   ///< sharpened, compressed, flickering by 3 %, noise of 3 grey levels
};

/// Every worsening, in the order above.
[[nodiscard]] std::vector<Worsening> allWorsenings();
/// Its word on the command line, such as "half-rate".
[[nodiscard]] std::string_view wordOf(Worsening worsening);
[[nodiscard]] std::optional<Worsening> worseningFromWord(std::string_view word);

/// Writes the film anew, made worse, without losing more than that. The noise is seeded: the same film every time.
/// Errors: as FilmSource::open; FileNotWritable.
[[nodiscard]] Result<void> worsenFilm(const std::string& film, Worsening worsening, const std::string& to);

/// The lens of the camera that makes the worse film, at the size of the camera's own pictures: a camera whose picture
/// is upside down has its lens upside down too.
[[nodiscard]] Lens worsenLens(Lens lens, Worsening worsening);

/// The answers to the film made worse: images that were left out are left out, and the rig is that of its camera.
[[nodiscard]] Truth worsenTruth(Truth truth, Worsening worsening);

}  // namespace ferrule::bench
