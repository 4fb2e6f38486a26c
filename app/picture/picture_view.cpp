// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/picture_view.h"

#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kMostZoom = 20.0;
constexpr double kZoomStep = 1.25;
/// One notch of an ordinary wheel, in eighths of a degree. Source: Qt, QWheelEvent::angleDelta.
constexpr double kWheelNotch = 120.0;

}  // namespace

PictureView::PictureView(QWidget* parent) : QWidget(parent), inks_(inksFor(palette())) {
  setMouseTracking(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

QSize PictureView::minimumSizeHint() const {
  return {200, 140};
}

QSize PictureView::sizeHint() const {
  return {720, 420};
}

void PictureView::setZoom(double zoom, const QPointF& centre) {
  zoom_ = std::clamp(zoom, 1.0, kMostZoom);
  centre_ = centre;
  keepInside();
  pictureChanged();
  update();
  emit zoomChanged();
}

void PictureView::zoomIn() {
  zoomBy(kZoomStep, rect().toRectF().center());
}

void PictureView::zoomOut() {
  zoomBy(1.0 / kZoomStep, rect().toRectF().center());
}

void PictureView::fit() {
  setZoom(1.0, {0.5, 0.5});
}

void PictureView::setLit(std::optional<BallName> ball) {
  if (lit_ == ball) return;
  lit_ = ball;
  update();
}

double PictureView::fittingScale() const {
  const QSizeF content = contentSize();
  if (content.isEmpty()) return 1.0;
  const double width = std::max(1.0, this->width() - 2.0 * kMargin_px);
  const double height = std::max(1.0, this->height() - 2.0 * kMargin_px);
  return std::min(width / content.width(), height / content.height());
}

QRectF PictureView::contentOnScreen() const {
  const QSizeF size = contentSize() * (fittingScale() * zoom_);
  const QPointF middle = rect().toRectF().center();
  return {middle - QPointF(centre_.x() * size.width(), centre_.y() * size.height()), size};
}

void PictureView::zoomBy(double factor, const QPointF& anchor) {
  const QRectF before = contentOnScreen();
  if (before.isEmpty()) return;
  const QPointF share((anchor.x() - before.left()) / before.width(), (anchor.y() - before.top()) / before.height());
  const double zoom = std::clamp(zoom_ * factor, 1.0, kMostZoom);
  const QSizeF size = before.size() * (zoom / zoom_);
  // What is under the pointer stays under it.
  const QPointF middle = rect().toRectF().center();
  setZoom(zoom, {share.x() + (middle.x() - anchor.x()) / size.width(),
                 share.y() + (middle.y() - anchor.y()) / size.height()});
}

void PictureView::keepInside() {
  const double slack = 0.5 - 0.5 / zoom_;
  centre_ = {std::clamp(centre_.x(), 0.5 - slack, 0.5 + slack), std::clamp(centre_.y(), 0.5 - slack, 0.5 + slack)};
}

void PictureView::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / kWheelNotch;
  if (notches != 0.0) zoomBy(std::pow(kZoomStep, notches), event->position());
  event->accept();
}

void PictureView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
  dragFrom_ = event->position();
}

void PictureView::mouseMoveEvent(QMouseEvent* event) {
  if (dragFrom_ && event->buttons() != Qt::NoButton) {
    const QRectF content = contentOnScreen();
    if (zoom_ <= 1.0 || content.isEmpty()) return;
    setCursor(Qt::ClosedHandCursor);
    const QPointF moved = event->position() - *dragFrom_;
    dragFrom_ = event->position();
    setZoom(zoom_, centre_ - QPointF(moved.x() / content.width(), moved.y() / content.height()));
    return;
  }
  emit pointed(ballUnder(event->position()));
}

void PictureView::mouseReleaseEvent(QMouseEvent*) {
  dragFrom_.reset();
  unsetCursor();
}

void PictureView::mouseDoubleClickEvent(QMouseEvent*) {
  fit();
}

void PictureView::leaveEvent(QEvent*) {
  emit pointed(std::nullopt);
}

void PictureView::resizeEvent(QResizeEvent*) {
  pictureChanged();
}

void PictureView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    inks_ = inksFor(palette());
    pictureChanged();
    update();
  }
  QWidget::changeEvent(event);
}

}  // namespace ferrule
