// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/lines_list.h"

#include <QHeaderView>
#include <QSignalBlocker>
#include <algorithm>
#include <cmath>

#include "app/setup/figure_table.h"
#include "app/setup/mark_words.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kRowsShown = 7;
constexpr int kLeastWidth_px = 280;

}  // namespace

LinesList::LinesList(QWidget* parent) : QTableWidget(0, 3, parent) {
  setObjectName(QStringLiteral("linesList"));
  setAccessibleName(tr("Noses, sights and pockets, and how far each is off"));
  setHorizontalHeaderLabels({tr("Nose, sight or pocket"), tr("Known from"), tr("Off by")});
  verticalHeader()->hide();
  verticalHeader()->setDefaultSectionSize(kFigureRow_px);
  horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setTabKeyNavigation(false);
  setShowGrid(false);
  setWordWrap(false);
  setMinimumHeight(horizontalHeader()->sizeHint().height() + kRowsShown * kFigureRow_px + 4);
  setMinimumWidth(kLeastWidth_px);
  connect(this, &QTableWidget::currentCellChanged, this, [this](int row) {
    if (row >= 0) emit thingChosen(static_cast<std::size_t>(row));
  });
}

void LinesList::put(int row, int column, const QString& words, bool number) {
  QTableWidgetItem* there = item(row, column);
  if (there == nullptr) {
    setFigure(this, row, column, words, number);
    there = item(row, column);
  } else {
    there->setText(words);
  }
  // Where the list is narrow, the whole of a long name.
  there->setToolTip(words);
}

void LinesList::show(const LinesView& view, const std::vector<LineTrace>& lines, const std::vector<MarkSighting>& marks,
                     const LinesFit* fit, const std::vector<LineTrace>& placed, const Numbers& numbers) {
  const QSignalBlocker quiet(this);
  const auto mm = [&](double length_m) { return tr("%1 mm").arg(numbers.fixed(millimetresFromMetres(length_m), 1)); };
  const int noses = static_cast<int>(view.noses().size());
  setRowCount(noses + static_cast<int>(view.marks().size()));
  for (int row = 0; row < noses; ++row) {
    const LineTrace& nose = view.noses()[static_cast<std::size_t>(row)];
    const auto isIt = [&](const LineTrace& line) { return line.kind == nose.kind && line.cushion == nose.cushion; };
    const bool byHand = std::ranges::any_of(placed, isIt);
    put(row, 0, atStart(cushionWords(nose.cushion)));
    put(row, 1,
        byHand ? tr("by hand") : (view.isGuess(static_cast<std::size_t>(row)) ? tr("not found") : tr("the picture")));
    const auto at = std::ranges::find_if(lines, isIt);
    const bool known = fit != nullptr && at != lines.end() && fit->lineOff_m.size() == lines.size();
    put(row, 2, known ? mm(fit->lineOff_m[static_cast<std::size_t>(at - lines.begin())]) : QString(), true);
  }
  for (int i = 0; i < static_cast<int>(view.marks().size()); ++i) {
    const ShownMark& mark = view.marks()[static_cast<std::size_t>(i)];
    put(noses + i, 0, atStart(markWords(mark.mark)));
    QString how;
    switch (mark.state) {
      case MarkState::Found:
        how = tr("the picture");
        break;
      case MarkState::ByHand:
        how = tr("by hand");
        break;
      case MarkState::NotThere:
        how = tr("not there");
        break;
      case MarkState::Missing:
        how = tr("not found");
        break;
    }
    put(noses + i, 1, how);
    const auto at = std::ranges::find(marks, mark.mark, &MarkSighting::mark);
    const auto index = static_cast<std::size_t>(at - marks.begin());
    const bool known =
        fit != nullptr && at != marks.end() && fit->markOff_m.size() == marks.size() && fit->markOff_m[index];
    put(noses + i, 2, known ? mm(std::abs(*fit->markOff_m[index])) : QString(), true);
  }
}

void LinesList::choose(std::size_t thing) {
  const QSignalBlocker quiet(this);
  setCurrentCell(static_cast<int>(thing), 0);
}

}  // namespace ferrule
