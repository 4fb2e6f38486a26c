// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableWidget>
#include <optional>

#include "app/setup/lines_view.h"
#include "app/words/numbers.h"
#include "core/camera/rig_from_lines.h"

namespace ferrule {

/// Every nose and every mark by name, how it is known and how far it lies from where the rig of all of them has it; the
/// row that is chosen is what the picture holds under its loupe.
class LinesList : public QTableWidget {
  Q_OBJECT
 public:
  explicit LinesList(QWidget* parent = nullptr);

  /// One row a nose, then one a mark. lines, marks: what the fit was made of; fit: nothing while it is worked out.
  void show(const LinesView& view, const std::vector<LineTrace>& lines, const std::vector<MarkSighting>& marks,
            const LinesFit* fit, const std::vector<LineTrace>& placed, const Numbers& numbers);
  /// Without saying so.
  void choose(std::size_t thing);

 signals:
  void thingChosen(std::size_t thing);

 private:
  void put(int row, int column, const QString& words, bool number = false);
};

}  // namespace ferrule
