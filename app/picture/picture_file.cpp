// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/picture_file.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kPointsAnInch = 72.0;
constexpr double kInch_m = 0.0254;

QSize sizeOf(const FilePicture& picture, double unit) {
  const QSizeF size = picture.size(unit);
  return {static_cast<int>(std::ceil(size.width())), static_cast<int>(std::ceil(size.height()))};
}

QByteArray svgOf(const FilePicture& picture) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setResolution(static_cast<int>(kPointsAnInch));
  const QSize size = sizeOf(picture, 1.0);
  generator.setSize(size);
  generator.setViewBox(QRect({0, 0}, size));
  generator.setTitle(picture.title);
  QPainter painter(&generator);
  picture.draw(painter, 1.0);
  painter.end();
  return bytes;
}

QByteArray pngOf(const FilePicture& picture) {
  QImage image(sizeOf(picture, picture.pngUnit), QImage::Format_RGB32);
  image.fill(picture.background);
  QPainter painter(&image);
  picture.draw(painter, picture.pngUnit);
  painter.end();
  const int dots = static_cast<int>(picture.pngUnit * kPointsAnInch / kInch_m);
  image.setDotsPerMeterX(dots);
  image.setDotsPerMeterY(dots);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

}  // namespace

Result<void> writePicture(const FilePicture& picture, const QString& path) {
  const bool png = path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive);
  const QByteArray bytes = png ? pngOf(picture) : svgOf(picture);
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
    return failure(ErrorCode::FileNotWritable, path.toStdString(), file.errorString().toStdString());
  }
  return {};
}

}  // namespace ferrule
