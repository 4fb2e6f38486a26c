// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/chart_export.h"

#include <QPainter>

#include "app/picture/picture_file.h"
#include "app/report/chart_csv.h"
#include "app/report/report_sheet.h"
#include "core/base/text_file.h"

namespace ferrule {

namespace {

constexpr double kWidth_pt = 490.0;
constexpr double kMargin_pt = 10.0;
constexpr double kPngUnit = 300.0 / 72.0;

void draw(QPainter& painter, const Chart& chart, double unit) {
  const ChartStyle style = paperStyle(unit);
  const double width = kWidth_pt * unit;
  drawChart(painter, {kMargin_pt * unit, kMargin_pt * unit, width, chartHeight(chart, width, style)}, chart, style);
}

QSizeF sizeOf(const Chart& chart, double unit) {
  const double width = kWidth_pt * unit;
  const double margins = 2.0 * kMargin_pt * unit;
  return {width + margins, chartHeight(chart, width, paperStyle(unit)) + margins};
}

}  // namespace

Result<void> writeChart(const Chart& chart, const QString& path) {
  if (path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) {
    return writeTextFile(path.toStdString(), chartCsv(chart));
  }
  FilePicture picture;
  picture.title = titleOf(chart);
  picture.pngUnit = kPngUnit;
  picture.size = [&](double unit) { return sizeOf(chart, unit); };
  picture.draw = [&](QPainter& painter, double unit) { draw(painter, chart, unit); };
  return writePicture(picture, path);
}

}  // namespace ferrule
