// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/report/chart.h"
#include "core/base/error.h"

namespace ferrule {

/// Writes a chart as a picture for paper (light, 490 points wide) or as its numbers: the path ends in .svg, .png (at
/// 300 dots an inch) or .csv; anything else is written as .svg. Errors: FileNotWritable.
[[nodiscard]] Result<void> writeChart(const Chart& chart, const QString& path);

}  // namespace ferrule
