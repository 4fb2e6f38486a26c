// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCameraDevice>
#include <QList>
#include <QString>

#include "core/camera/lens.h"

namespace ferrule {

/// The ways in which a camera can send its images, those of this size first, then the larger and the faster ones; of
/// one size and rate only the one that costs least to read. size: of the rig's lens; nothing when none is chosen.
[[nodiscard]] QList<QCameraFormat> formatsOf(const QCameraDevice& camera, const std::optional<ImageSize>& size);
/// "1280 × 720, 60 images a second".
[[nodiscard]] QString formatWords(const QCameraFormat& format);

}  // namespace ferrule
