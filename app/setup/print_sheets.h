// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPageSize>
#include <QString>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/board.h"

namespace ferrule {

/// A board on one sheet, true to scale, with a line of 100 mm across and one down to check the printer. The sheet lies
/// or stands as the board fits. Errors: those of checkBoard; BoardMalformed (detail "paper"): it does not fit;
/// FileNotWritable.
[[nodiscard]] Result<void> writeBoardSheet(const Board& board, QPageSize::PageSizeId paper, const std::string& path);

/// Tags, each with its white rim and its number, on as many sheets as they need, with the same lines on each.
/// Errors: those of printedTag; BoardMalformed (detail "paper"); FileNotWritable.
[[nodiscard]] Result<void> writeTagSheets(const std::string& dictionary, const std::vector<int>& ids, double side_m,
                                          QPageSize::PageSizeId paper, const std::string& path);

}  // namespace ferrule
