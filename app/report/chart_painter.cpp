// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kTitle_pt = 10.0;
constexpr double kText_pt = 8.0;
constexpr double kSmall_pt = 7.0;
constexpr double kTitleHeight_pt = 20.0;
constexpr double kBelowGap_pt = 4.0;
constexpr double kPlot_pt = 130.0;
constexpr double kCell_pt = 30.0;
constexpr double kBar_pt = 17.0;

QColor shaded(const Inks& inks, double share) {
  // Light enough for black words on every shade.
  const double mix = 0.08 + 0.50 * std::clamp(share, 0.0, 1.0);
  const auto channel = [mix](int from, int to) { return static_cast<int>(std::lround(from + mix * (to - from))); };
  return {channel(inks.panel.red(), inks.accent.red()), channel(inks.panel.green(), inks.accent.green()),
          channel(inks.panel.blue(), inks.accent.blue())};
}

/// Of the words under a chart, which wrap.
double belowHeight(const QString& words, double width, const ChartStyle& style) {
  if (words.isEmpty()) return 0.0;
  return QFontMetricsF(sizedFont(style, kSmall_pt))
      .boundingRect(QRectF(0.0, 0.0, width, 1e6), Qt::TextWordWrap, words)
      .height();
}

/// One chart at its place.
class Drawing {
 public:
  Drawing(QPainter& painter, const QRectF& area, const ChartStyle& style)
      : painter_(painter), area_(area), style_(style) {}

  void draw(const SeriesChart& chart) {
    title(chart.title, chart.note);
    const double least = chart.values.empty() ? 0.0 : chart.values.front().value;
    const double most = chart.values.empty() ? 1.0 : chart.values.back().value;
    double words = 0.0;
    for (const ChartTick& tick : chart.values)
      words = std::max(words, width(tick.words, kText_pt));
    const QRectF plot(area_.left() + words + pt(6), area_.top() + pt(kTitleHeight_pt + 6),
                      area_.width() - words - pt(12), pt(kPlot_pt));
    double first = 0.0;
    double last = 1.0;
    if (!chart.marks.empty()) {
      first = chart.marks.front().place;
      last = chart.marks.back().place;
    }
    const double margin = last > first ? 0.04 * (last - first) : 0.5;
    const auto x = [&](double place) {
      return plot.left() + plot.width() * (place - first + margin) / (last - first + 2.0 * margin);
    };
    const auto y = [&](double value) {
      return plot.bottom() - plot.height() * (std::clamp(value, least, most) - least) / (most - least);
    };
    for (const ChartTick& tick : chart.values) {
      line({plot.left(), y(tick.value)}, {plot.right(), y(tick.value)}, style_.inks.line, 0.5);
      text(QRectF(area_.left(), y(tick.value) - pt(6), words, pt(12)), Qt::AlignRight | Qt::AlignVCenter, tick.words,
           kText_pt, style_.inks.quiet);
    }
    if (chart.trend) {
      QPen pen(style_.inks.text, pt(1.2), chart.trend->stands ? Qt::SolidLine : Qt::DashLine);
      painter_.setPen(pen);
      painter_.drawLine(QPointF(x(chart.trend->firstPlace), y(chart.trend->first)),
                        QPointF(x(chart.trend->lastPlace), y(chart.trend->last)));
    }
    double counted = -1e9;
    for (const ChartMark& mark : chart.marks) {
      if (mark.interval) {
        line({x(mark.place), y(mark.interval->least)}, {x(mark.place), y(mark.interval->most)}, style_.inks.accent,
             1.0);
      }
      painter_.setPen(QPen(style_.inks.accent, pt(1.2)));
      painter_.setBrush(mark.hollow ? style_.inks.panel : style_.inks.accent);
      painter_.drawEllipse(QPointF(x(mark.place), y(mark.value)), pt(2.4), pt(2.4));
      // Every count that has room.
      const double half = width(mark.below, kSmall_pt) / 2.0;
      if (x(mark.place) - half < counted + pt(2)) continue;
      text(QRectF(x(mark.place) - pt(20), plot.bottom() + pt(3), pt(40), pt(10)), Qt::AlignCenter, mark.below,
           kSmall_pt, style_.inks.quiet);
      counted = x(mark.place) + half;
    }
    for (const ChartTick& tick : chart.places) {
      text(QRectF(x(tick.value) - pt(40), plot.bottom() + pt(13), pt(80), pt(10)), Qt::AlignCenter, tick.words,
           kText_pt, style_.inks.quiet);
    }
    below(chart.below);
  }

  void draw(const GridChart& chart) {
    title(chart.title, chart.note);
    double words = 0.0;
    for (const QString& row : chart.rows)
      words = std::max(words, width(row, kText_pt));
    const double left = area_.left() + words + pt(6);
    const double across = (area_.right() - left) / std::max<double>(1.0, static_cast<double>(chart.columns.size()));
    double top = area_.top() + pt(kTitleHeight_pt);
    for (std::size_t r = 0; r < chart.rows.size(); ++r) {
      text(QRectF(area_.left(), top, words, pt(kCell_pt)), Qt::AlignRight | Qt::AlignVCenter, chart.rows[r], kText_pt,
           style_.inks.text);
      for (std::size_t c = 0; c < chart.columns.size(); ++c) {
        const GridCell& cell = chart.cells[r][c];
        const QRectF box(left + static_cast<double>(c) * across + pt(1), top + pt(1), across - pt(2), pt(kCell_pt - 2));
        painter_.setPen(QPen(style_.inks.line, pt(0.5)));
        painter_.setBrush(cell.shade ? QBrush(shaded(style_.inks, *cell.shade)) : QBrush(Qt::NoBrush));
        painter_.drawRect(box);
        const QColor ink = cell.shade ? style_.inks.text : style_.inks.quiet;
        if (cell.small.isEmpty()) {
          text(box, Qt::AlignCenter, cell.words, kSmall_pt, ink);
        } else {
          text(QRectF(box.left(), box.top() + pt(3), box.width(), pt(12)), Qt::AlignCenter, cell.words, kText_pt + 1.0,
               ink, true);
          text(QRectF(box.left(), box.top() + pt(15), box.width(), pt(10)), Qt::AlignCenter, cell.small, kSmall_pt,
               ink);
        }
      }
      top += pt(kCell_pt);
    }
    for (std::size_t c = 0; c < chart.columns.size(); ++c) {
      text(QRectF(left + static_cast<double>(c) * across, top + pt(2), across, pt(10)), Qt::AlignCenter,
           chart.columns[c], kText_pt, style_.inks.text);
    }
    below(chart.below);
  }

  void draw(const BarChart& chart) {
    title(chart.title, chart.note);
    double labels = 0.0;
    double words = 0.0;
    for (const ChartBar& bar : chart.bars) {
      labels = std::max(labels, width(bar.label, kText_pt));
      words = std::max(words, width(bar.words, kText_pt));
    }
    const double left = area_.left() + labels + pt(6);
    const double right = area_.right() - words - pt(6);
    const auto x = [&](double value) { return left + (right - left) * std::clamp(value, 0.0, 1.0); };
    const double top = area_.top() + pt(kTitleHeight_pt);
    const double bottom = top + pt(kBar_pt) * static_cast<double>(chart.bars.size());
    for (const ChartTick& tick : chart.values) {
      line({x(tick.value), top}, {x(tick.value), bottom}, style_.inks.line, 0.5);
      text(QRectF(x(tick.value) - pt(25), bottom + pt(2), pt(50), pt(10)), Qt::AlignCenter, tick.words, kText_pt,
           style_.inks.quiet);
    }
    double row = top;
    for (const ChartBar& bar : chart.bars) {
      const double middle = row + pt(kBar_pt / 2.0);
      text(QRectF(area_.left(), row, labels, pt(kBar_pt)), Qt::AlignRight | Qt::AlignVCenter, bar.label, kText_pt,
           style_.inks.text);
      if (bar.value) {
        painter_.setPen(QPen(style_.inks.accent, pt(0.5)));
        painter_.setBrush(shaded(style_.inks, 0.55));
        painter_.drawRect(QRectF(left, row + pt(4), x(*bar.value) - left, pt(kBar_pt - 8)));
      }
      if (bar.interval) {
        const double least = x(bar.interval->least);
        const double most = x(bar.interval->most);
        line({least, middle}, {most, middle}, style_.inks.text, 1.0);
        for (const double end : {least, most})
          line({end, middle - pt(2.5)}, {end, middle + pt(2.5)}, style_.inks.text, 1.0);
      }
      text(QRectF(right + pt(6), row, words, pt(kBar_pt)), Qt::AlignLeft | Qt::AlignVCenter, bar.words, kText_pt,
           style_.inks.text);
      row += pt(kBar_pt);
    }
    below(chart.below);
  }

  void draw(const SplitChart& chart) {
    title(chart.title, chart.note);
    double labels = 0.0;
    double words = 0.0;
    int most = 1;
    for (const SplitRow& row : chart.rows) {
      labels = std::max(labels, width(row.label, kText_pt));
      words = std::max(words, width(row.words, kText_pt));
      most = std::max({most, row.left, row.right});
    }
    const double left = area_.left() + labels + pt(6);
    const double right = area_.right() - words - pt(6);
    const double middle = (left + right) / 2.0;
    const double each = std::max(0.0, (right - left) / 2.0 - pt(22)) / most;
    double row = area_.top() + pt(kTitleHeight_pt);
    text(QRectF(left, row, middle - left - pt(4), pt(12)), Qt::AlignRight | Qt::AlignVCenter, chart.leftWords, kText_pt,
         style_.inks.quiet);
    text(QRectF(middle + pt(4), row, right - middle, pt(12)), Qt::AlignLeft | Qt::AlignVCenter, chart.rightWords,
         kText_pt, style_.inks.quiet);
    row += pt(12);
    const double top = row;
    for (const SplitRow& entry : chart.rows) {
      text(QRectF(area_.left(), row, labels, pt(kBar_pt)), Qt::AlignRight | Qt::AlignVCenter, entry.label, kText_pt,
           style_.inks.text);
      painter_.setPen(QPen(style_.inks.accent, pt(0.8)));
      painter_.setBrush(shaded(style_.inks, 0.8));
      if (entry.left > 0)
        painter_.drawRect(QRectF(middle - each * entry.left, row + pt(4), each * entry.left, pt(kBar_pt - 8)));
      painter_.setBrush(style_.inks.panel);  // the other side is hollow
      if (entry.right > 0) painter_.drawRect(QRectF(middle, row + pt(4), each * entry.right, pt(kBar_pt - 8)));
      text(QRectF(middle - each * entry.left - pt(24), row, pt(22), pt(kBar_pt)), Qt::AlignRight | Qt::AlignVCenter,
           QString::number(entry.left), kText_pt, style_.inks.text);
      text(QRectF(middle + each * entry.right + pt(2), row, pt(22), pt(kBar_pt)), Qt::AlignLeft | Qt::AlignVCenter,
           QString::number(entry.right), kText_pt, style_.inks.text);
      text(QRectF(right + pt(6), row, words, pt(kBar_pt)), Qt::AlignLeft | Qt::AlignVCenter, entry.words, kText_pt,
           style_.inks.quiet);
      row += pt(kBar_pt);
    }
    line({middle, top}, {middle, row}, style_.inks.text, 1.0);
    below(chart.below);
  }

 private:
  [[nodiscard]] double pt(double points) const { return points * style_.unit; }

  [[nodiscard]] double width(const QString& words, double points) const {
    return QFontMetricsF(sizedFont(style_, points)).horizontalAdvance(words);
  }

  void line(QPointF from, QPointF to, const QColor& colour, double points) {
    painter_.setPen(QPen(colour, pt(points)));
    painter_.drawLine(from, to);
  }

  void text(const QRectF& box, int flags, const QString& words, double points, const QColor& colour,
            bool bold = false) {
    painter_.setFont(sizedFont(style_, points, bold));
    painter_.setPen(colour);
    painter_.drawText(box, flags | Qt::TextDontClip, words);
  }

  void title(const QString& words, const QString& note) {
    const QFontMetricsF large(sizedFont(style_, kTitle_pt, true));
    const double end = large.horizontalAdvance(words);
    text(QRectF(area_.left(), area_.top(), area_.width(), pt(14)), Qt::AlignLeft | Qt::AlignVCenter, words, kTitle_pt,
         style_.inks.text, true);
    if (note.isEmpty()) return;
    const QString shown = QFontMetricsF(sizedFont(style_, kText_pt))
                              .elidedText(note, Qt::ElideRight, std::max(0.0, area_.width() - end - pt(8)));
    text(QRectF(area_.left(), area_.top(), area_.width(), pt(14)), Qt::AlignRight | Qt::AlignVCenter, shown, kText_pt,
         style_.inks.quiet);
  }

  void below(const QString& words) {
    const double height = belowHeight(words, area_.width(), style_);
    text(QRectF(area_.left(), area_.bottom() - height, area_.width(), height),
         Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words, kSmall_pt, style_.inks.quiet);
  }

  QPainter& painter_;
  QRectF area_;
  const ChartStyle& style_;
};

double contentPoints(const SeriesChart&) {
  return kPlot_pt + 30.0;
}
double contentPoints(const GridChart& chart) {
  return kCell_pt * static_cast<double>(chart.rows.size()) + 14.0;
}
double contentPoints(const BarChart& chart) {
  return kBar_pt * static_cast<double>(chart.bars.size()) + 14.0;
}
double contentPoints(const SplitChart& chart) {
  return kBar_pt * static_cast<double>(chart.rows.size()) + 14.0;
}

}  // namespace

double roundStep(double span, int count) {
  if (!(span > 0.0) || count < 1) return 1.0;
  const double rough = span / count;
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double step : {1.0, 2.0, 5.0, 10.0}) {
    if (step * power >= rough * (1.0 - 1e-9)) return step * power;
  }
  return 10.0 * power;
}

QFont sizedFont(const ChartStyle& style, double points, bool bold) {
  QFont font = style.font;
  font.setPixelSize(std::max(1, static_cast<int>(std::lround(points * style.unit))));
  font.setWeight(bold ? QFont::Bold : QFont::Normal);
  return font;
}

double chartHeight(const Chart& chart, double width, const ChartStyle& style) {
  const double content = std::visit([](const auto& one) { return contentPoints(one); }, chart);
  const QString below = std::visit([](const auto& one) { return one.below; }, chart);
  return style.unit * (kTitleHeight_pt + content + kBelowGap_pt) + belowHeight(below, width, style);
}

void drawChart(QPainter& painter, const QRectF& area, const Chart& chart, const ChartStyle& style) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  std::visit([&](const auto& one) { Drawing(painter, area, style).draw(one); }, chart);
  painter.restore();
}

}  // namespace ferrule
