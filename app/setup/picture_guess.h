// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>

#include "core/geometry/frames.h"
#include "core/table/table.h"
#include "core/vision/line_survey.h"

namespace ferrule {

/// Where the picture would have a place of the table if the table filled it, the head at that side: a start for what a
/// person then drags.
[[nodiscard]] ImagePoint guessInPicture(TablePoint place, const Table& table, PictureSide head, QSize size);

}  // namespace ferrule
