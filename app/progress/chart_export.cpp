// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/chart_export.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>
#include <cmath>

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

QSize sizeOf(const Chart& chart, double unit) {
  const double width = kWidth_pt * unit;
  const double margins = 2.0 * kMargin_pt * unit;
  return {static_cast<int>(std::ceil(width + margins)),
          static_cast<int>(std::ceil(chartHeight(chart, width, paperStyle(unit)) + margins))};
}

QByteArray svgOf(const Chart& chart) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(72);
  const QSize size = sizeOf(chart, 1.0);
  generator.setSize(size);
  generator.setViewBox(QRect({0, 0}, size));
  generator.setTitle(titleOf(chart));
  QPainter painter(&generator);
  draw(painter, chart, 1.0);
  painter.end();
  return bytes;
}

QByteArray pngOf(const Chart& chart) {
  QImage image(sizeOf(chart, kPngUnit), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  draw(painter, chart, kPngUnit);
  painter.end();
  image.setDotsPerMeterX(static_cast<int>(300.0 / 0.0254));
  image.setDotsPerMeterY(static_cast<int>(300.0 / 0.0254));
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

}  // namespace

Result<void> writeChart(const Chart& chart, const QString& path) {
  if (path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) {
    return writeTextFile(path.toStdString(), chartCsv(chart));
  }
  const bool png = path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive);
  const QByteArray bytes = png ? pngOf(chart) : svgOf(chart);
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
    return failure(ErrorCode::FileNotWritable, path.toStdString());
  }
  return {};
}

}  // namespace ferrule
