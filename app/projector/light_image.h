// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

#include "core/camera/projector_file.h"
#include "core/vision/projection_picture.h"

namespace ferrule {

/// The picture to be sent: lines as core bends them, words in the letters of any language. Words stand upright in the
/// projector's picture and whole within it. May be called on any thread.
[[nodiscard]] QImage lightImage(const Projector& projector, const LightDrawing& drawing);

}  // namespace ferrule
