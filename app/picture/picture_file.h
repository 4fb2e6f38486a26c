// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QSize>
#include <QString>
#include <functional>

#include "core/base/error.h"

class QPainter;

namespace ferrule {

/// A picture that can be drawn at any size.
struct FilePicture {
  QString title;
  QColor background = Qt::white;
  double pngUnit = 1.0;                     ///< dots of a PNG for each point
  std::function<QSizeF(double unit)> size;  ///< in dots; unit: dots for each point
  std::function<void(QPainter& painter, double unit)> draw;
};

/// Writes a picture whole or leaves the old file: as PNG where the path ends so, as SVG otherwise.
/// Errors: FileNotWritable.
[[nodiscard]] Result<void> writePicture(const FilePicture& picture, const QString& path);

}  // namespace ferrule
