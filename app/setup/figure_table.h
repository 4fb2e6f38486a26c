// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QTableWidget;

namespace ferrule {

/// A list of figures that is only read: no numbers at the rows, no grid, and the tab key goes past its cells. How wide
/// the columns are is left to the caller.
[[nodiscard]] QTableWidget* figureTable(const char* name, const QStringList& heads);

inline constexpr int kFigureRow_px = 28;

/// number: to the right, so that digits stand below each other.
void setFigure(QTableWidget* table, int row, int column, const QString& words, bool number = false);

}  // namespace ferrule
