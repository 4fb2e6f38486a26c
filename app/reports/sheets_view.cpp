// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reports/sheets_view.h"

#include <QLabel>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

#include "app/report/report_press.h"

namespace ferrule {

namespace {

constexpr int kMargin_px = 12;
constexpr int kLeast_px = 240;
/// Wider sheets are read no better.
constexpr int kMost_px = 900;

}  // namespace

SheetsView::SheetsView(QWidget* parent) : QScrollArea(parent) {
  setObjectName(QStringLiteral("sheets"));
  setAccessibleName(tr("Preview"));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* inside = new QWidget;
  column_ = new QVBoxLayout(inside);
  column_->setContentsMargins(kMargin_px, kMargin_px, kMargin_px, kMargin_px);
  column_->setSpacing(kMargin_px);
  setWidget(inside);
}

void SheetsView::setReport(const Report& report, QPageSize::PageSizeId paper) {
  report_ = report;
  paper_ = paper;
  draw();
}

void SheetsView::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  if (viewport()->width() != drawnWidth_) draw();
}

void SheetsView::draw() {
  if (!report_ || viewport()->width() <= 0) return;
  drawnWidth_ = viewport()->width();
  const int at = verticalScrollBar()->value();
  const int width = std::clamp(drawnWidth_ - 2 * kMargin_px, kLeast_px, kMost_px);
  const double ratio = devicePixelRatioF();
  const auto sheets = reportSheets(*report_, paper_, static_cast<int>(width * ratio));
  count_ = static_cast<int>(sheets.size());
  while (QLayoutItem* item = column_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  int number = 0;
  for (QImage sheet : sheets) {
    sheet.setDevicePixelRatio(ratio);
    auto* label = new QLabel;
    label->setObjectName(QStringLiteral("sheet%1").arg(++number));
    label->setAccessibleName(tr("Sheet %1 of %2").arg(number).arg(count_));
    label->setPixmap(QPixmap::fromImage(sheet));
    column_->addWidget(label, 0, Qt::AlignHCenter);
  }
  column_->addStretch(1);
  verticalScrollBar()->setValue(at);
}

}  // namespace ferrule
