// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>

#include "app/report/chart_style.h"

class QPainter;

namespace ferrule {

/// What stands above and below every chart: its title, a note beside it, and a sentence under it. A note that has no
/// room beside the title stands before the sentence.
class ChartCaption {
 public:
  ChartCaption(const QString& title, const QString& note, const QString& below, double width, const ChartStyle& style);

  /// Device pixels.
  [[nodiscard]] double above() const { return above_; }
  [[nodiscard]] double belowHeight() const { return belowHeight_; }
  /// area: of the whole chart, with the caption.
  void draw(QPainter& painter, const QRectF& area) const;

 private:
  QString title_;
  QString note_;  ///< empty where it has no room
  QString below_;
  double above_ = 0.0;
  double belowHeight_ = 0.0;
  const ChartStyle& style_;
};

}  // namespace ferrule
