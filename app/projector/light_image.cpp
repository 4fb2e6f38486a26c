// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/projector/light_image.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/picture/image_of.h"

namespace ferrule {

namespace {

/// Letters on the cloth are to be read from beside the table; a projector's picture covers about its length.
constexpr double kLetterShare = 0.028;  ///< of the picture's height
constexpr double kLeastLetter_px = 14.0;

}  // namespace

QImage lightImage(const Projector& projector, const LightDrawing& drawing) {
  LightDrawing lines = drawing;
  lines.labels.clear();
  QImage image = imageOf(projectionPicture(projector, lines));
  if (drawing.labels.empty()) return image;
  QPainter painter(&image);
  painter.setRenderHint(QPainter::TextAntialiasing);
  painter.setPen(Qt::white);
  QFont font = painter.font();
  font.setPixelSize(static_cast<int>(std::lround(std::max(kLeastLetter_px, kLetterShare * image.height()))));
  painter.setFont(font);
  const QFontMetricsF metrics(font);
  for (const LightLabel& label : drawing.labels) {
    const auto at = projectorFromTable(projector, label.place);
    if (!at) continue;
    const QString words = QString::fromStdString(label.text);
    const double x = std::clamp(at->x, 0.0, std::max(0.0, image.width() - metrics.horizontalAdvance(words)));
    const double y = std::clamp(at->y, metrics.ascent(), image.height() - metrics.descent());
    painter.drawText(QPointF(x, y), words);
  }
  return image;
}

}  // namespace ferrule
