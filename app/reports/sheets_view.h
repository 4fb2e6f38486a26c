// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPageSize>
#include <QScrollArea>
#include <optional>

#include "app/report/report.h"

class QVBoxLayout;

namespace ferrule {

/// The sheets of a report below each other, as wide as there is room, on white whatever the window's colours are.
class SheetsView : public QScrollArea {
  Q_OBJECT
 public:
  explicit SheetsView(QWidget* parent = nullptr);

  void setReport(const Report& report, QPageSize::PageSizeId paper);
  [[nodiscard]] int sheetCount() const { return count_; }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void draw();

  std::optional<Report> report_;
  QPageSize::PageSizeId paper_ = QPageSize::A4;
  QVBoxLayout* column_;
  int count_ = 0;
  int drawnWidth_ = 0;
};

}  // namespace ferrule
