// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "app/window/inks.h"
#include "core/table/ball.h"

namespace ferrule {

/// A picture that is zoomed with the wheel or the keys and moved by dragging, and that knows which ball is pointed at.
class PictureView : public QWidget {
  Q_OBJECT
 public:
  explicit PictureView(QWidget* parent = nullptr);

  /// 1 shows everything.
  [[nodiscard]] double zoom() const { return zoom_; }
  /// What stands in the middle, as shares of the content's width and height.
  [[nodiscard]] QPointF centre() const { return centre_; }
  void setZoom(double zoom, const QPointF& centre);
  void zoomIn();
  void zoomOut();
  void fit();

  [[nodiscard]] std::optional<BallName> lit() const { return lit_; }
  void setLit(std::optional<BallName> ball);

  QSize minimumSizeHint() const override;
  QSize sizeHint() const override;

 signals:
  /// The pointer went onto a ball or off it.
  void pointed(std::optional<ferrule::BallName> ball);
  void zoomChanged();

 protected:
  /// Width and height of the content in any unit; empty while there is none.
  [[nodiscard]] virtual QSizeF contentSize() const = 0;
  /// The ball drawn at a place of the widget.
  [[nodiscard]] virtual std::optional<BallName> ballUnder(const QPointF& place) const = 0;
  /// Space kept free around the whole content.
  static constexpr double kMargin_px = 12.0;

  /// Where the whole content lies on the widget, zoomed and moved.
  [[nodiscard]] QRectF contentOnScreen() const;
  [[nodiscard]] const Inks& inks() const { return inks_; }
  /// Called after size, zoom, palette or screen changed.
  virtual void pictureChanged() {}

  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] double fittingScale() const;
  void zoomBy(double factor, const QPointF& anchor);
  void keepInside();

  Inks inks_;
  double zoom_ = 1.0;
  QPointF centre_{0.5, 0.5};
  std::optional<BallName> lit_;
  std::optional<QPointF> dragFrom_;
};

}  // namespace ferrule
