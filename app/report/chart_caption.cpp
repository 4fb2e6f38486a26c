// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_caption.h"

#include <QFontMetricsF>
#include <QPainter>

#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr double kBelowTitle_pt = 8.0;
constexpr double kAboveWords_pt = 4.0;
constexpr double kBeforeNote_pt = 8.0;

double wrappedHeight(const QString& words, const QFont& font, double width) {
  if (words.isEmpty()) return 0.0;
  return QFontMetricsF(font).boundingRect(QRectF(0.0, 0.0, width, 1e6), Qt::TextWordWrap, words).height();
}

}  // namespace

ChartCaption::ChartCaption(const QString& title, const QString& note, const QString& below, double width,
                           const ChartStyle& style)
    : title_(title), note_(note), below_(below), style_(style) {
  const double beside = wordsWidth(style, title, kChartTitle_pt, true) + kBeforeNote_pt * style.unit +
                        wordsWidth(style, note, kChartText_pt);
  if (!note.isEmpty() && beside > width) {
    QString first = note;
    first[0] = first[0].toUpper();
    below_ = sentencesOf({stopped(first), below});
    note_.clear();
  }
  above_ = wrappedHeight(title_, sizedFont(style, kChartTitle_pt, true), width) + kBelowTitle_pt * style.unit;
  if (!below_.isEmpty()) {
    belowHeight_ = kAboveWords_pt * style.unit + wrappedHeight(below_, sizedFont(style, kChartSmall_pt), width);
  }
}

void ChartCaption::draw(QPainter& painter, const QRectF& area) const {
  painter.setFont(sizedFont(style_, kChartTitle_pt, true));
  painter.setPen(style_.inks.text);
  const QRectF head(area.left(), area.top(), area.width(), above_ - kBelowTitle_pt * style_.unit);
  painter.drawText(head, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap | Qt::TextDontClip, title_);
  painter.setPen(style_.inks.quiet);
  if (!note_.isEmpty()) {
    painter.setFont(sizedFont(style_, kChartText_pt));
    painter.drawText(head, Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, note_);
  }
  painter.setFont(sizedFont(style_, kChartSmall_pt));
  const double height = belowHeight_ - kAboveWords_pt * style_.unit;
  painter.drawText(QRectF(area.left(), area.bottom() - height, area.width(), height),
                   Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap | Qt::TextDontClip, below_);
}

}  // namespace ferrule
