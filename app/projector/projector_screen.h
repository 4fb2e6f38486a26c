// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QVariantAnimation>
#include <QWidget>

namespace ferrule {

/// A second screen that is all picture, pixel for pixel, for a projector. It begins black; pictures follow one another
/// in a slow fade and nothing blinks, since flashing light can harm people. Escape closes it, B makes it black.
class ProjectorScreen : public QWidget {
  Q_OBJECT
 public:
  explicit ProjectorScreen(QWidget* parent = nullptr);

  void showOn(QScreen* screen);
  /// A null picture is black.
  void setPicture(const QImage& picture);
  /// Black, in a short fade: somebody's eyes may be in the beam.
  void darkenNow();
  /// In the projector's own pixels.
  [[nodiscard]] static QSize pixelsOf(const QScreen* screen);
  /// 0 while the picture before still shows, 1 when the new one does.
  [[nodiscard]] double faded() const { return fade_.currentValue().toDouble(); }

 signals:
  void closed();
  /// The key for black was pressed.
  void darkWanted();

 protected:
  void closeEvent(QCloseEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  /// What shows within a fade, as one picture.
  [[nodiscard]] QImage mixed() const;
  void paintPicture(QPainter& painter, const QImage& picture, double opacity) const;

  QImage before_;
  QImage picture_;
  QVariantAnimation fade_;
};

}  // namespace ferrule
