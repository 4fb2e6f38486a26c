// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/wrapping_row.h"

#include <QWidget>
#include <algorithm>

namespace ferrule {

WrappingRow::~WrappingRow() = default;

void WrappingRow::addItem(QLayoutItem* item) {
  items_.emplace_back(item);
}

QLayoutItem* WrappingRow::itemAt(int index) const {
  return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)].get() : nullptr;
}

QLayoutItem* WrappingRow::takeAt(int index) {
  if (index < 0 || index >= count()) return nullptr;
  QLayoutItem* item = items_[static_cast<std::size_t>(index)].release();
  items_.erase(items_.begin() + index);
  return item;
}

int WrappingRow::heightForWidth(int width) const {
  return place(QRect(0, 0, width, 0), false);
}

QSize WrappingRow::minimumSize() const {
  QSize least;
  for (const auto& item : items_) {
    if (!item->isEmpty()) least = least.expandedTo(item->minimumSize());
  }
  const QMargins around = contentsMargins();
  return least + QSize(around.left() + around.right(), around.top() + around.bottom());
}

QSize WrappingRow::sizeHint() const {
  int width = 0;
  int height = 0;
  for (const auto& item : items_) {
    if (item->isEmpty()) continue;
    width += item->sizeHint().width() + (width > 0 ? spacing() : 0);
    height = std::max(height, item->sizeHint().height());
  }
  const QMargins around = contentsMargins();
  return QSize(width, height) + QSize(around.left() + around.right(), around.top() + around.bottom());
}

void WrappingRow::setGeometry(const QRect& space) {
  QLayout::setGeometry(space);
  place(space, true);
}

int WrappingRow::place(const QRect& space, bool move) const {
  const QMargins around = contentsMargins();
  const QRect inside = space.marginsRemoved(around);
  const bool fromRight = parentWidget() != nullptr && parentWidget()->isRightToLeft();
  int x = inside.left();
  int y = inside.top();
  int rowHeight = 0;
  for (const auto& item : items_) {
    if (item->isEmpty()) continue;
    const QSize size =
        item->sizeHint().boundedTo(QSize(std::max(inside.width(), item->minimumSize().width()), 1 << 20));
    if (rowHeight > 0 && x + size.width() > inside.right() + 1) {
      x = inside.left();
      y += rowHeight + spacing();
      rowHeight = 0;
    }
    if (move) {
      QRect spot(QPoint(x, y), size);
      if (fromRight) spot.moveLeft(inside.right() + 1 - (x - inside.left()) - size.width());
      item->setGeometry(spot);
    }
    x += size.width() + spacing();
    rowHeight = std::max(rowHeight, size.height());
  }
  return y + rowHeight - space.top() + around.bottom();
}

}  // namespace ferrule
