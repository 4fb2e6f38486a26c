// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/projector/projector_screen.h"

#include <QCloseEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScreen>
#include <QWindow>

namespace ferrule {

namespace {

/// Light that changes three times a second or more is flashing (Web content accessibility guidelines 2.1, 2.3.1); this
/// is far slower, and there is no step in it.
constexpr int kFade_ms = 1200;
/// To black when somebody leans in: quick enough to spare the eyes; since light returns only after seconds without
/// anybody, it cannot flash.
constexpr int kDarken_ms = 200;

}  // namespace

ProjectorScreen::ProjectorScreen(QWidget* parent) : QWidget(parent, Qt::Window) {
  setObjectName(QStringLiteral("projectorScreen"));
  setWindowTitle(tr("Projector"));
  setAccessibleName(tr("The projector's picture; Escape closes it, B makes it black"));
  setAttribute(Qt::WA_OpaquePaintEvent);
  setCursor(Qt::BlankCursor);
  fade_.setStartValue(0.0);
  fade_.setEndValue(1.0);
  fade_.setDuration(kFade_ms);
  connect(&fade_, &QVariantAnimation::valueChanged, this, qOverload<>(&QWidget::update));
}

QSize ProjectorScreen::pixelsOf(const QScreen* screen) {
  return (QSizeF(screen->size()) * screen->devicePixelRatio()).toSize();
}

void ProjectorScreen::showOn(QScreen* screen) {
  setGeometry(screen->geometry());
  create();
  windowHandle()->setScreen(screen);
  showFullScreen();
}

void ProjectorScreen::setPicture(const QImage& picture) {
  // A change within a fade goes on from what shows at this moment: no step.
  before_ = fade_.state() == QAbstractAnimation::Running ? mixed() : picture_;
  picture_ = picture;
  fade_.stop();
  fade_.setDuration(kFade_ms);
  fade_.start();
}

void ProjectorScreen::darkenNow() {
  setPicture({});
  fade_.stop();
  fade_.setDuration(kDarken_ms);
  fade_.start();
}

void ProjectorScreen::closeEvent(QCloseEvent* event) {
  picture_ = before_ = {};
  fade_.stop();
  event->accept();
  emit closed();
}

void ProjectorScreen::paintPicture(QPainter& painter, const QImage& picture, double opacity) const {
  if (picture.isNull() || opacity <= 0.0) return;
  painter.setOpacity(opacity);
  const double ratio = devicePixelRatioF();
  painter.drawImage(QRectF(QPointF(0.0, 0.0), QSizeF(picture.size()) / ratio), picture);
}

QImage ProjectorScreen::mixed() const {
  const QSize size = before_.size().expandedTo(picture_.size());
  if (size.isEmpty()) return {};
  QImage result(size, QImage::Format_RGB32);
  result.fill(Qt::black);
  QPainter painter(&result);
  const double share = faded();
  painter.setOpacity(1.0 - share);
  painter.drawImage(0, 0, before_);
  painter.setCompositionMode(QPainter::CompositionMode_Plus);
  painter.setOpacity(share);
  painter.drawImage(0, 0, picture_);
  return result;
}

void ProjectorScreen::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), Qt::black);
  const double share = faded();
  paintPicture(painter, before_, 1.0 - share);
  painter.setCompositionMode(QPainter::CompositionMode_Plus);
  paintPicture(painter, picture_, share);
}

void ProjectorScreen::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
  } else if (event->key() == Qt::Key_B) {
    setPicture({});
    emit darkWanted();
  } else {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace ferrule
