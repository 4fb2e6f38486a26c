// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// The film's picture after its lens was straightened, small: to be looked at, nothing is measured in it.
[[nodiscard]] QImage straightenedPicture(const Rig& rig, const QImage& picture, QSize size);
/// The table from above as the rig sees it, head to the left, on the plane of the balls' middles; small as well.
[[nodiscard]] QImage tablePicture(const Rig& rig, const MeasuredTable& measured, const QImage& picture, QSize size);

}  // namespace ferrule
