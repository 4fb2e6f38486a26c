// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_words.h"

#include "app/words/joining.h"

namespace ferrule {

namespace {

QStringList partsOf(const SeriesChart& chart) {
  QStringList parts;
  for (const ChartMark& mark : chart.marks)
    parts << mark.words;
  return parts;
}

QStringList partsOf(const GridChart& chart) {
  QStringList parts;
  for (std::size_t r = 0; r < chart.rows.size(); ++r) {
    for (std::size_t c = 0; c < chart.columns.size(); ++c) {
      const GridCell& cell = chart.cells[r][c];
      if (!cell.shade && cell.small.isEmpty() && chart.columns.size() > 3) continue;  // nothing was tried there
      parts << toldOf(listOf({chart.rows[r], chart.columns[c]}), listOf({cell.words, cell.small}));
    }
  }
  return parts;
}

QStringList partsOf(const BarChart& chart) {
  QStringList parts;
  for (const ChartBar& bar : chart.bars)
    parts << toldOf(bar.label, bar.words);
  return parts;
}

QStringList partsOf(const SplitChart& chart) {
  QStringList parts;
  for (const SplitRow& row : chart.rows) {
    parts << toldOf(row.label, listOf({toldOf(chart.leftWords, QString::number(row.left)),
                                       toldOf(chart.rightWords, QString::number(row.right)), row.words}));
  }
  return parts;
}

QStringList partsOf(const PointChart& chart) {
  QStringList parts{chart.acrossWords, chart.upWords};
  parts.removeAll(QString());
  return parts;
}

QStringList partsOf(const MapChart& chart) {
  QStringList parts;
  for (const ChartLabel& label : chart.labels)
    parts << label.words;
  return parts;
}

}  // namespace

QString spokenChart(const Chart& chart) {
  return std::visit(
      [](const auto& one) {
        QStringList sentences{stopped(one.note.isEmpty() ? one.title : toldOf(one.title, one.note))};
        const QStringList parts = partsOf(one);
        if (!parts.isEmpty()) sentences << stopped(listApart(parts));
        sentences << one.below;
        return sentencesOf(sentences);
      },
      chart);
}

}  // namespace ferrule
