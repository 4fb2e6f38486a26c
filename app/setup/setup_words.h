// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/words/numbers.h"
#include "core/camera/correction_chain.h"
#include "core/camera/error_map.h"
#include "core/camera/lens_calibration.h"
#include "core/camera/shot_worth.h"
#include "core/vision/board_stills.h"

namespace ferrule {

/// "used", "no board found", "blurred: not used", ...
[[nodiscard]] QString fateWords(const BoardStill& still);
/// What long work is at, from core's key.
[[nodiscard]] QString workWords(const QString& step);
/// The lens that came out, in one or two sentences.
[[nodiscard]] QString lensWords(const LensCalibration& made, const Numbers& numbers);
/// "Lens", "Image size", ...
[[nodiscard]] QString correctionWords(CorrectionKind kind);
[[nodiscard]] QString componentWords(ErrorComponent component);
/// What to do to make this component smaller, in one sentence.
[[nodiscard]] QString cureWords(ErrorComponent component);
/// What a place that is so well known is worth in a shot.
[[nodiscard]] QString worthWords(const ShotWorth& worth, const Numbers& numbers);

}  // namespace ferrule
