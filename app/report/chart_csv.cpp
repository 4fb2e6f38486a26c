// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_csv.h"

#include <QStringList>

namespace ferrule {

namespace {

QString number(double value) {
  return QString::number(value, 'g', 10);
}

QString number(const std::optional<double>& value) {
  return value ? number(*value) : QString();
}

QString least(const std::optional<Interval>& interval) {
  return interval ? number(interval->least) : QString();
}

QString most(const std::optional<Interval>& interval) {
  return interval ? number(interval->most) : QString();
}

class Rows {
 public:
  void operator()(const SeriesChart& chart) {
    add({"place", chart.valueName, "least", "most", "count"});
    for (const ChartMark& mark : chart.marks)
      add({number(mark.place), number(mark.value), least(mark.interval), most(mark.interval), mark.below});
  }

  void operator()(const GridChart& chart) {
    add({"row", "column", "share", "words"});
    for (std::size_t r = 0; r < chart.rows.size(); ++r) {
      for (std::size_t c = 0; c < chart.columns.size(); ++c) {
        const GridCell& cell = chart.cells[r][c];
        add({chart.rows[r], chart.columns[c], number(cell.shade),
             cell.small.isEmpty() ? cell.words : cell.words + QStringLiteral(" ") + cell.small});
      }
    }
  }

  void operator()(const BarChart& chart) {
    add({"label", "value", "least", "most", "words"});
    for (const ChartBar& bar : chart.bars)
      add({bar.label, number(bar.value), least(bar.interval), most(bar.interval), bar.words});
  }

  void operator()(const SplitChart& chart) {
    add({"label", "left", "right", "words"});
    for (const SplitRow& row : chart.rows)
      add({row.label, QString::number(row.left), QString::number(row.right), row.words});
  }

  void operator()(const PointChart& chart) {
    add({chart.acrossName, chart.upName, "hollow", "words"});
    for (const ChartPoint& point : chart.points)
      add({number(point.x), number(point.y), point.kind == PointKind::Hollow ? "1" : "0", point.words});
  }

  void operator()(const MapChart& chart) {
    add({"x_m", "y_m", "hollow", "words"});
    for (const ChartPoint& point : chart.points)
      add({number(point.x), number(point.y), point.kind == PointKind::Hollow ? "1" : "0", point.words});
  }

  [[nodiscard]] std::string text() const { return text_.toStdString(); }

 private:
  void add(QStringList cells) {
    for (QString& cell : cells) {
      if (!cell.contains(QLatin1Char(',')) && !cell.contains(QLatin1Char('"')) && !cell.contains(QLatin1Char('\n')))
        continue;
      cell.replace(QLatin1Char('"'), QStringLiteral("\"\""));
      cell = QLatin1Char('"') + cell + QLatin1Char('"');
    }
    text_ += cells.join(QLatin1Char(',')) + QStringLiteral("\r\n");
  }

  QString text_;
};

}  // namespace

std::string chartCsv(const Chart& chart) {
  Rows rows;
  std::visit(rows, chart);
  return rows.text();
}

}  // namespace ferrule
