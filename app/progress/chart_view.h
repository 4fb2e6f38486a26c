// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>
#include <QWidget>
#include <optional>

#include "app/report/chart_painter.h"

namespace ferrule {

/// The style of charts on the screen, in the colours of a palette.
[[nodiscard]] ChartStyle screenStyle(const QFont& font, const QPalette& palette);

/// One chart, drawn by the report's painter. Pointing at a part, or going to it with the arrow keys, tells its numbers;
/// a click or Return opens the shots behind it.
class ChartView : public QWidget {
  Q_OBJECT
 public:
  explicit ChartView(QWidget* parent = nullptr);

  /// Without a chart the sentence stands in its place.
  void setChart(const QString& title, const std::optional<Chart>& chart, const QString& otherwise);
  [[nodiscard]] const std::optional<Chart>& chart() const { return chart_; }
  [[nodiscard]] const std::optional<ChartSpot>& pointed() const { return pointed_; }
  /// What can be pointed at, as it was drawn last.
  [[nodiscard]] const std::vector<ChartSpot>& spots();

  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 signals:
  void pointedAt(const QString& words);
  void opened(const ferrule::ChartSpot& spot);
  void focused();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void draw();
  void point(std::optional<std::size_t> spot);
  [[nodiscard]] std::optional<std::size_t> spotAt(QPointF place) const;

  QString title_;
  std::optional<Chart> chart_;
  QString otherwise_;
  QPixmap picture_;  ///< drawn once for a size and a palette
  std::vector<ChartSpot> spots_;
  std::optional<ChartSpot> pointed_;
  std::optional<std::size_t> at_;  ///< of pointed_ in spots_
};

}  // namespace ferrule
