// SPDX-License-Identifier: GPL-3.0-or-later
// What Review shows as a file: the plan, or the film's image.
#include <QDateTime>
#include <QFileDialog>
#include <QPainter>

#include "app/picture/film_view.h"
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
  const QString kinds = mode_ == PictureMode::Film ? tr("Pictures (*.png)") : tr("Pictures (*.png *.svg)");
  const QString path = QFileDialog::getSaveFileName(this, tr("Save the picture"), name, kinds);
  if (!path.isEmpty()) savePicture(path);
}

void ReviewPlace::savePicture(const QString& path) {
  if (!desk_.shot()) return;
  if (mode_ != PictureMode::Film || !film_->hasPicture()) {
    return writeShown(
        *plan_, [this](QPainter& painter) { plan_->drawFor(painter); }, path);
  }
  // People are on it.
  clips_.whenAllowed(desk_.recordPath().toStdString(), peopleOnFilm(), QDateTime::currentMSecsSinceEpoch(),
                     [this, path] {
                       writeShown(
                           *film_, [this](QPainter& painter) { film_->drawFor(painter); }, path);
                     });
}

void ReviewPlace::writeShown(const QWidget& shown, const std::function<void(QPainter&)>& draw, const QString& path) {
  const auto shot = desk_.shot();
  if (!shot) return;
  FilePicture picture;
  picture.title = shotHeading(shot->reading);
  picture.background = palette().color(QPalette::Base);
  picture.pngUnit = kPngUnit;
  picture.size = [&shown](double unit) { return QSizeF(shown.size()) * unit; };
  picture.draw = [&](QPainter& painter, double unit) {
    painter.scale(unit, unit);
    painter.fillRect(shown.rect(), palette().color(QPalette::Base));
    draw(painter);
  };
  const auto written = writePicture(picture, path);
  tell(written ? tr("The picture is in %1.").arg(path) : errorSentence(written.error()));
}

}  // namespace ferrule
