// SPDX-License-Identifier: GPL-3.0-or-later
// The plan view of Review as a file.
#include <QFileDialog>
#include <QPainter>

#include "app/picture/picture_file.h"
#include "app/picture/plan_view.h"
#include "app/review/review_place.h"
#include "app/words/error_sentence.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

/// Dots of a PNG for each dot of the screen: sharp on paper.
constexpr double kPngUnit = 2.0;

}  // namespace

void ReviewPlace::choosePictureFile() {
  if (!desk_.shot()) return;
  const QString name = tr("shot-%1.png").arg(desk_.shot()->reading.number);
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the picture"), name, tr("Pictures (*.png *.svg)"));
  if (!path.isEmpty()) savePicture(path);
}

void ReviewPlace::savePicture(const QString& path) {
  const auto shot = desk_.shot();
  if (!shot) return;
  FilePicture picture;
  picture.title = shotHeading(shot->reading);
  picture.background = palette().color(QPalette::Base);
  picture.pngUnit = kPngUnit;
  picture.size = [this](double unit) { return QSizeF(plan_->size()) * unit; };
  picture.draw = [this](QPainter& painter, double unit) {
    painter.scale(unit, unit);
    painter.fillRect(plan_->rect(), palette().color(QPalette::Base));
    plan_->drawFor(painter);
  };
  const auto written = writePicture(picture, path);
  tell(written ? tr("The picture is in %1.").arg(path) : errorSentence(written.error()));
}

}  // namespace ferrule
