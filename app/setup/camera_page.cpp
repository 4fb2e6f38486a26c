// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/camera_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/window/inks.h"

namespace ferrule {

FirstPicture::FirstPicture(QWidget* parent) : QWidget(parent) {
  setMinimumHeight(220);
  setAccessibleName(tr("The film's first picture"));
}

void FirstPicture::setPicture(const QImage& picture) {
  if (picture_.cacheKey() == picture.cacheKey()) return;
  picture_ = picture;
  update();
}

void FirstPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  if (picture_.isNull()) {
    painter.setPen(QPen(inksFor(palette()).line, 1.0, Qt::DashLine));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    painter.setPen(inksFor(palette()).quiet);
    painter.drawText(rect(), Qt::AlignCenter, tr("No film yet"));
    return;
  }
  QSizeF size = picture_.size();
  size.scale(QSizeF(this->size()), Qt::KeepAspectRatio);
  painter.drawImage(QRectF({0.0, 0.0}, size), picture_);
}

QString askForFilm(QWidget* over, const QString& before) {
  return QFileDialog::getOpenFileName(
      over, FirstPicture::tr("A film or still of the table"), before.isEmpty() ? QString() : QFileInfo(before).path(),
      FirstPicture::tr("Films and stills (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;All files (*)"));
}

CameraPage::CameraPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Camera, parent) {
  setObjectName(QStringLiteral("cameraPage"));
  QFormLayout* form = addForm();
  camera_ = new QLineEdit;
  camera_->setObjectName(QStringLiteral("cameraName"));
  camera_->setPlaceholderText(tr("Such as: wide camera, hall"));
  form->addRow(tr("&Camera"), camera_);
  film_ = new QLabel;
  film_->setObjectName(QStringLiteral("filmName"));
  film_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  form->addRow(tr("Film"), film_);
  size_ = new QLabel;
  size_->setObjectName(QStringLiteral("filmSize"));
  size_->setWordWrap(true);
  form->addRow(tr("Picture"), size_);
  QPushButton* choose = button("chooseFilm", tr("Choose a &film or still…"));
  addButtons({choose});
  picture_ = new FirstPicture;
  column()->addWidget(picture_, 1);
  addQuiet(
      tr("Fixed focus and exposure, a whole number of mains periods, the highest image rate; stabilisation, zoom and "
         "lens correction off. Every later step needs pictures of this size."));
  addCaution(
      tr("A camera overhead hangs over people: fix it to the building's structure with fittings rated for its "
         "load, never to a ceiling tile, and add a steel tether to a second point. Work from a proper ladder with "
         "a second person, not from the table, and secure yourself against a fall. Fixed mains wiring is the work "
         "of a licensed electrician; lead no cable where people walk. Local codes come first."));
  connect(camera_, &QLineEdit::editingFinished, this, [this] {
    camera_->setModified(false);
    this->desk().change(tr("the camera's name"), [&](SetupState& state) { state.camera = camera_->text().trimmed(); });
  });
  connect(choose, &QPushButton::clicked, this, [this] {
    const QString film = askForFilm(this, this->desk().state().film);
    if (!film.isEmpty()) this->desk().look(film);
  });
  CameraPage::refresh();
}

void CameraPage::refresh() {
  const SetupState& state = desk().state();
  if (!camera_->isModified()) camera_->setText(state.camera);
  film_->setText(state.film.isEmpty() ? tr("none yet") : QFileInfo(state.film).fileName());
  film_->setToolTip(state.film);
  const auto& look = desk().filmLook();
  picture_->setPicture(look ? look->picture : QImage());
  if (!look) {
    size_->setText(tr("not known yet"));
    return;
  }
  QString words = tr("%1 × %2 px").arg(look->size.width).arg(look->size.height);
  if (look->rate_hz > 1.0) words = tr("%1, %2 images a second").arg(words, numbers().fixed(look->rate_hz, 0));
  if (look->rotation_deg != 0) words = tr("%1, turned by %2° as its file says").arg(words).arg(look->rotation_deg);
  size_->setText(words);
}

}  // namespace ferrule
