// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace ferrule {

/// Fields side by side, each as wide as it wants to be; where the row is too narrow, the rest goes on below.
class WrappingRow : public QLayout {
 public:
  using QLayout::QLayout;
  ~WrappingRow() override;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize minimumSize() const override;
  [[nodiscard]] QSize sizeHint() const override;
  void setGeometry(const QRect& space) override;

 private:
  /// Puts the items into space, or only counts; the height that they take, margins included.
  int place(const QRect& space, bool move) const;

  std::vector<std::unique_ptr<QLayoutItem>> items_;
};

}  // namespace ferrule
