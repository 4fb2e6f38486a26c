// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr double kTitle_pt = 10.0;
constexpr double kText_pt = 8.0;
constexpr double kSmall_pt = 7.0;
constexpr double kTitleHeight_pt = 20.0;
constexpr double kBelowGap_pt = 4.0;
constexpr double kPlot_pt = 130.0;
constexpr double kPlane_pt = 190.0;
constexpr double kCell_pt = 30.0;
constexpr double kHighCell_pt = 40.0;
constexpr double kBar_pt = 17.0;

QColor shaded(const Inks& inks, double share) {
  // Light enough for black words on every shade.
  const double mix = 0.08 + 0.50 * std::clamp(share, 0.0, 1.0);
  const auto channel = [mix](int from, int to) { return static_cast<int>(std::lround(from + mix * (to - from))); };
  return {channel(inks.panel.red(), inks.accent.red()), channel(inks.panel.green(), inks.accent.green()),
          channel(inks.panel.blue(), inks.accent.blue())};
}

bool noteFits(const QString& title, const QString& note, double width, const ChartStyle& style) {
  const double end = QFontMetricsF(sizedFont(style, kTitle_pt, true)).horizontalAdvance(title);
  return end + 8.0 * style.unit + QFontMetricsF(sizedFont(style, kText_pt)).horizontalAdvance(note) <= width;
}

/// A note that has no room beside the title stands before the words below.
template <class Kind>
QString belowWords(const Kind& chart, double width, const ChartStyle& style) {
  if (chart.note.isEmpty() || noteFits(chart.title, chart.note, width, style)) return chart.below;
  QString note = chart.note;
  note[0] = note[0].toUpper();
  return sentencesOf({stopped(note), chart.below});
}

/// Of the words under a chart, which wrap.
double belowHeight(const QString& words, double width, const ChartStyle& style) {
  if (words.isEmpty()) return 0.0;
  return QFontMetricsF(sizedFont(style, kSmall_pt))
      .boundingRect(QRectF(0.0, 0.0, width, 1e6), Qt::TextWordWrap, words)
      .height();
}

/// How wide a grid's words for its rows are.
double rowWordsWidth(const GridChart& chart, const ChartStyle& style) {
  double words = 0.0;
  for (const QString& row : chart.rows)
    words = std::max(words, QFontMetricsF(sizedFont(style, kText_pt)).horizontalAdvance(row));
  return words;
}

/// Where columns are narrow, interval and count of a cell stand on lines of their own.
double cellPoints(const GridChart& chart, double width, const ChartStyle& style) {
  const double columns = std::max<double>(1.0, static_cast<double>(chart.columns.size()));
  const double across =
      (width - rowWordsWidth(chart, style)) / columns - 10.0 * style.unit / columns - 4.0 * style.unit;
  const QFontMetricsF small(sizedFont(style, kSmall_pt));
  for (const auto& row : chart.cells) {
    for (const GridCell& cell : row) {
      if (small.horizontalAdvance(cell.small) > across) return kHighCell_pt;
    }
  }
  return kCell_pt;
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
    if (chart.trend && !chart.trend->band.empty()) {
      QPolygonF band;
      for (const ChartBand& one : chart.trend->band)
        band << QPointF(x(one.place), y(one.value.most));
      for (auto one = chart.trend->band.rbegin(); one != chart.trend->band.rend(); ++one)
        band << QPointF(x(one->place), y(one->value.least));
      painter_.setPen(Qt::NoPen);
      painter_.setBrush(shaded(style_.inks, 0.12));
      painter_.drawPolygon(band);
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
      spot(QRectF(x(mark.place) - pt(5), plot.top(), pt(10), plot.height()), mark.key, 0, mark.words);
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
    below(belowWords(chart, area_.width(), style_));
  }

  void draw(const GridChart& chart) {
    title(chart.title, chart.note);
    const double words = rowWordsWidth(chart, style_);
    const double high = cellPoints(chart, area_.width(), style_);
    const double left = area_.left() + words + pt(6);
    const double across = (area_.right() - left) / std::max<double>(1.0, static_cast<double>(chart.columns.size()));
    double top = area_.top() + pt(kTitleHeight_pt);
    for (std::size_t r = 0; r < chart.rows.size(); ++r) {
      text(QRectF(area_.left(), top, words, pt(high)), Qt::AlignRight | Qt::AlignVCenter, chart.rows[r], kText_pt,
           style_.inks.text);
      for (std::size_t c = 0; c < chart.columns.size(); ++c) {
        const GridCell& cell = chart.cells[r][c];
        const QRectF box(left + static_cast<double>(c) * across + pt(1), top + pt(1), across - pt(2), pt(high - 2));
        painter_.setPen(QPen(style_.inks.line, pt(0.5)));
        painter_.setBrush(cell.shade ? QBrush(shaded(style_.inks, *cell.shade)) : QBrush(Qt::NoBrush));
        painter_.drawRect(box);
        spot(box, r < chart.rowKeys.size() ? chart.rowKeys[r] : r, c,
             QStringList{chart.columns[c], chart.rows[r], cell.words, cell.small}.join(QStringLiteral(" \u00b7 ")));
        const QColor ink = cell.shade ? style_.inks.text : style_.inks.quiet;
        if (cell.small.isEmpty()) {
          text(box, Qt::AlignCenter, cell.words, kSmall_pt, ink);
        } else {
          text(QRectF(box.left(), box.top() + pt(3), box.width(), pt(12)), Qt::AlignCenter, cell.words, kText_pt + 1.0,
               ink, true);
          QString small = cell.small;
          if (high > kCell_pt) small.replace(QStringLiteral(" \u00b7 "), QStringLiteral("\n"));
          text(QRectF(box.left(), box.top() + pt(15), box.width(), pt(high - 20)), Qt::AlignCenter, small, kSmall_pt,
               ink);
        }
      }
      top += pt(high);
    }
    for (std::size_t c = 0; c < chart.columns.size(); ++c) {
      text(QRectF(left + static_cast<double>(c) * across, top + pt(2), across, pt(10)), Qt::AlignCenter,
           chart.columns[c], kText_pt, style_.inks.text);
    }
    below(belowWords(chart, area_.width(), style_));
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
    std::size_t number = 0;
    for (const ChartBar& bar : chart.bars) {
      spot(QRectF(area_.left(), row, area_.width(), pt(kBar_pt)), number++, 0,
           bar.label + QStringLiteral(" \u00b7 ") + bar.words);
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
    below(belowWords(chart, area_.width(), style_));
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
      const QString told = QStringLiteral("%1 \u00b7 %2: %3");
      spot(QRectF(left, row, middle - left, pt(kBar_pt)), entry.key, 0,
           told.arg(entry.label, chart.leftWords, QString::number(entry.left)));
      spot(QRectF(middle, row, right - middle, pt(kBar_pt)), entry.key, 1,
           told.arg(entry.label, chart.rightWords, QString::number(entry.right)));
      text(QRectF(middle - each * entry.left - pt(24), row, pt(22), pt(kBar_pt)), Qt::AlignRight | Qt::AlignVCenter,
           QString::number(entry.left), kText_pt, style_.inks.text);
      text(QRectF(middle + each * entry.right + pt(2), row, pt(22), pt(kBar_pt)), Qt::AlignLeft | Qt::AlignVCenter,
           QString::number(entry.right), kText_pt, style_.inks.text);
      text(QRectF(right + pt(6), row, words, pt(kBar_pt)), Qt::AlignLeft | Qt::AlignVCenter, entry.words, kText_pt,
           style_.inks.quiet);
      row += pt(kBar_pt);
    }
    line({middle, top}, {middle, row}, style_.inks.text, 1.0);
    below(belowWords(chart, area_.width(), style_));
  }

  void draw(const PointChart& chart) {
    title(chart.title, chart.note);
    double words = 0.0;
    for (const ChartTick& tick : chart.up)
      words = std::max(words, width(tick.words, kText_pt));
    const double upper = chart.upWords.isEmpty() ? 4.0 : 14.0;
    QRectF plot(area_.left() + words + pt(6), area_.top() + pt(kTitleHeight_pt + upper), area_.width() - words - pt(12),
                pt(kPlane_pt));
    const double wide = chart.right - chart.left;
    const double high = chart.top - chart.bottom;
    if (chart.equal) {
      const double scale = std::min(plot.width() / wide, plot.height() / high);
      const QPointF middle = plot.center();
      plot.setSize({scale * wide, scale * high});
      plot.moveCenter(middle);
    }
    const auto at = [&](double x, double y) {
      return QPointF(plot.left() + plot.width() * (x - chart.left) / wide,
                     plot.bottom() - plot.height() * (y - chart.bottom) / high);
    };
    for (const ChartTick& tick : chart.up) {
      const double y = at(0.0, tick.value).y();
      line({plot.left(), y}, {plot.right(), y}, style_.inks.line, tick.value == 0.0 ? 1.2 : 0.5);
      text(QRectF(plot.left() - words - pt(4), y - pt(6), words, pt(12)), Qt::AlignRight | Qt::AlignVCenter, tick.words,
           kText_pt, style_.inks.quiet);
    }
    for (const ChartTick& tick : chart.across) {
      const double x = at(tick.value, 0.0).x();
      line({x, plot.top()}, {x, plot.bottom()}, style_.inks.line, tick.value == 0.0 ? 1.2 : 0.5);
      text(QRectF(x - pt(25), plot.bottom() + pt(2), pt(50), pt(10)), Qt::AlignCenter, tick.words, kText_pt,
           style_.inks.quiet);
    }
    text(QRectF(area_.left(), plot.bottom() + pt(12), area_.width(), pt(10)), Qt::AlignCenter, chart.acrossWords,
         kText_pt, style_.inks.quiet);
    text(QRectF(area_.left(), area_.top() + pt(kTitleHeight_pt - 2), area_.width(), pt(10)), Qt::AlignLeft,
         chart.upWords, kText_pt, style_.inks.quiet);
    painter_.save();
    painter_.setClipRect(plot.adjusted(-pt(1), -pt(1), pt(1), pt(1)), Qt::IntersectClip);
    painter_.setBrush(Qt::NoBrush);
    for (const ChartOutline& outline : chart.outlines) {
      QPolygonF way;
      for (const auto& [x, y] : outline.points)
        way << at(x, y);
      painter_.setPen(QPen(style_.inks.quiet, pt(0.8), outline.dashed ? Qt::DashLine : Qt::SolidLine));
      painter_.drawPolyline(way);
    }
    for (const ChartPoint& point : chart.points) {
      const QPointF place = at(point.x, point.y);
      painter_.setPen(QPen(style_.inks.accent, pt(0.8)));
      painter_.setBrush(point.kind == PointKind::Hollow ? style_.inks.panel : style_.inks.accent);
      painter_.drawEllipse(place, pt(1.7), pt(1.7));
      if (plot.contains(place))
        spot(QRectF(place.x() - pt(4), place.y() - pt(4), pt(8), pt(8)), point.key, 0, point.words);
    }
    if (chart.ellipse) {
      QPolygonF around;
      const ChartEllipse& ellipse = *chart.ellipse;
      for (int i = 0; i <= 72; ++i) {
        const double angle = 2.0 * 3.14159265358979 * i / 72;
        const double along = ellipse.longHalf * std::cos(angle);
        const double across = ellipse.shortHalf * std::sin(angle);
        around << at(ellipse.x + along * std::cos(ellipse.turn_rad) - across * std::sin(ellipse.turn_rad),
                     ellipse.y + along * std::sin(ellipse.turn_rad) + across * std::cos(ellipse.turn_rad));
      }
      painter_.setPen(QPen(style_.inks.text, pt(1.2)));
      painter_.setBrush(Qt::NoBrush);
      painter_.drawPolyline(around);
    }
    painter_.restore();
    for (const ChartLabel& label : chart.labels) {
      const QPointF place = at(label.x, label.y);
      const double half = width(label.words, kSmall_pt) / 2.0;
      const double x = std::clamp(place.x(), area_.left() + half, std::max(area_.left() + half, area_.right() - half));
      text(QRectF(x - half, place.y() - pt(5), 2.0 * half, pt(10)), Qt::AlignCenter, label.words, kSmall_pt,
           style_.inks.text);
    }
    below(belowWords(chart, area_.width(), style_));
  }

  [[nodiscard]] std::vector<ChartSpot> spots() && { return std::move(spots_); }

 private:
  void spot(const QRectF& area, std::size_t key, std::size_t column, const QString& words) {
    spots_.push_back({area, key, column, words});
  }

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
    text(QRectF(area_.left(), area_.top(), area_.width(), pt(14)), Qt::AlignLeft | Qt::AlignVCenter, words, kTitle_pt,
         style_.inks.text, true);
    if (!noteFits(words, note, area_.width(), style_)) return;
    text(QRectF(area_.left(), area_.top(), area_.width(), pt(14)), Qt::AlignRight | Qt::AlignVCenter, note, kText_pt,
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
  std::vector<ChartSpot> spots_;
};

double contentPoints(const SeriesChart&, double, const ChartStyle&) {
  return kPlot_pt + 30.0;
}
double contentPoints(const GridChart& chart, double width, const ChartStyle& style) {
  return cellPoints(chart, width, style) * static_cast<double>(chart.rows.size()) + 14.0;
}
double contentPoints(const BarChart& chart, double, const ChartStyle&) {
  return kBar_pt * static_cast<double>(chart.bars.size()) + 14.0;
}
double contentPoints(const PointChart& chart, double, const ChartStyle&) {
  return kPlane_pt + (chart.upWords.isEmpty() ? 4.0 : 14.0) + (chart.acrossWords.isEmpty() ? 14.0 : 24.0);
}
double contentPoints(const SplitChart& chart, double, const ChartStyle&) {
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
  const double content = std::visit([&](const auto& one) { return contentPoints(one, width, style); }, chart);
  const QString below = std::visit([&](const auto& one) { return belowWords(one, width, style); }, chart);
  return style.unit * (kTitleHeight_pt + content + kBelowGap_pt) + belowHeight(below, width, style);
}

const QString& titleOf(const Chart& chart) {
  return std::visit([](const auto& one) -> const QString& { return one.title; }, chart);
}

std::vector<ChartSpot> drawChart(QPainter& painter, const QRectF& area, const Chart& chart, const ChartStyle& style) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  Drawing drawing(painter, area, style);
  std::visit([&](const auto& one) { drawing.draw(one); }, chart);
  painter.restore();
  return std::move(drawing).spots();
}

}  // namespace ferrule
