// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/shot_row_delegate.h"

#include <QApplication>
#include <QPainter>

#include "app/review/outcome_mark.h"
#include "app/review/shot_tree_model.h"
#include "app/window/inks.h"

namespace ferrule {

namespace {

constexpr int kRow_px = 28;
constexpr int kPad_px = 4;
constexpr int kNumber_px = 22;
constexpr double kMark_px = 11.0;

}  // namespace

void ShotRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QVariant outcome = index.data(ShotTreeModel::OutcomeRole);
  QStyleOptionViewItem cell = option;
  initStyleOption(&cell, index);
  const QStyle* style = cell.widget != nullptr ? cell.widget->style() : QApplication::style();
  const QString text = cell.text;
  cell.text.clear();
  style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);

  const bool isSelected = option.state & QStyle::State_Selected;
  const Inks inks = inksFor(option.palette);
  const QColor ink = isSelected ? option.palette.color(QPalette::HighlightedText) : inks.text;
  const QColor quiet = isSelected ? ink : inks.quiet;
  painter->save();
  QRect box = option.rect.adjusted(kPad_px, 0, -kPad_px, 0);
  painter->setFont(withTabularFigures(option.font));
  if (outcome.isValid() && index.column() == ShotTreeModel::What) {
    painter->setPen(quiet);
    painter->drawText(QRect(box.left(), box.top(), kNumber_px - kPad_px, box.height()),
                      Qt::AlignRight | Qt::AlignVCenter, index.data(ShotTreeModel::NumberRole).toString());
    box.setLeft(box.left() + kNumber_px + kPad_px);
  }
  if (outcome.isValid() && index.column() == ShotTreeModel::Result) {
    const QPointF centre(box.left() + kMark_px / 2.0, option.rect.center().y() + 0.5);
    paintOutcome(*painter, static_cast<Outcome>(outcome.toInt()), centre, kMark_px, isSelected ? ink : inks.accent);
    box.setLeft(box.left() + static_cast<int>(kMark_px) + 6);
  }
  if (!outcome.isValid() && index.column() == ShotTreeModel::What && !index.parent().isValid()) {
    painter->setFont(scaled(option.font, 1.0, true));
  }
  painter->setPen(index.column() == ShotTreeModel::What ? ink : quiet);
  const int align = index.column() == ShotTreeModel::Speed ? Qt::AlignRight : Qt::AlignLeft;
  painter->drawText(box, align | Qt::AlignVCenter,
                    painter->fontMetrics().elidedText(text, Qt::ElideRight, box.width()));
  painter->restore();
}

QSize ShotRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QSize size = QStyledItemDelegate::sizeHint(option, index);
  size.setHeight(std::max(kRow_px, option.fontMetrics.height() + 6));
  size.rwidth() += 2 * kPad_px;
  if (index.data(ShotTreeModel::OutcomeRole).isValid()) {
    if (index.column() == ShotTreeModel::What) size.rwidth() += kNumber_px + 2 * kPad_px;
    if (index.column() == ShotTreeModel::Result) size.rwidth() += static_cast<int>(kMark_px) + 6 + kPad_px;
  }
  return size;
}

}  // namespace ferrule
