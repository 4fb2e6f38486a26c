// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/coverage_view.h"

#include <QPainter>

#include "app/window/inks.h"
#include "core/camera/lens_calibration.h"

namespace ferrule {

CoverageView::CoverageView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("coverage"));
  setMinimumSize(240, 150);
}

void CoverageView::setViews(std::vector<BoardView> views, ImageSize size, int lit) {
  views_ = std::move(views);
  size_ = size;
  lit_ = lit;
  const Coverage coverage = coverageOf(views_, size_);
  setAccessibleName(tr("The board was seen in %1\u00a0% of the picture").arg(qRound(100.0 * coverage.share())));
  update();
}

void CoverageView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Inks inks = inksFor(palette());
  QSizeF size(size_.width > 0 ? size_.width : 16, size_.height > 0 ? size_.height : 9);
  size.scale(QSizeF(width() - 1.0, height() - 1.0), Qt::KeepAspectRatio);
  const QRectF frame({0.5, 0.5}, size);
  painter.fillRect(frame, inks.panel);
  const Coverage coverage = coverageOf(views_, size_.width > 0 ? size_ : ImageSize{16, 9});
  for (int row = 0; row < Coverage::kRows; ++row) {
    for (int column = 0; column < Coverage::kColumns; ++column) {
      const QRectF cell(frame.left() + frame.width() * column / Coverage::kColumns,
                        frame.top() + frame.height() * row / Coverage::kRows, frame.width() / Coverage::kColumns,
                        frame.height() / Coverage::kRows);
      if (coverage.corners.at(static_cast<std::size_t>(row * Coverage::kColumns + column)) == 0) {
        painter.fillRect(cell, QBrush(inks.quiet, Qt::BDiagPattern));
      }
      painter.setPen(QPen(inks.line, 1.0));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(cell);
    }
  }
  if (size_.width <= 0) return;
  const double scale = frame.width() / size_.width;
  for (std::size_t i = 0; i < views_.size(); ++i) {
    const bool lit = static_cast<int>(i) == lit_;
    painter.setPen(Qt::NoPen);
    painter.setBrush(lit ? inks.taken : inks.accent);
    for (const BoardCorner& corner : views_[i].corners) {
      const QPointF place(frame.left() + (corner.pixel.x + 0.5) * scale, frame.top() + (corner.pixel.y + 0.5) * scale);
      const double radius = lit ? 3.5 : 1.8;
      painter.drawEllipse(place, radius, radius);
    }
  }
}

}  // namespace ferrule
