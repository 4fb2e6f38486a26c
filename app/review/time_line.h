// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/review/time_axis.h"
#include "app/window/inks.h"
#include "app/words/numbers.h"

namespace ferrule {

/// A session along its time: shots as blocks, results as marks above and below, placements as ticks, frames parted by
/// lines. Drag to scrub, wheel to zoom, shift and wheel to move along.
class TimeLine : public QWidget {
  Q_OBJECT
 public:
  explicit TimeLine(QWidget* parent = nullptr);

  void setContent(std::shared_ptr<const SessionContent> content, const TimeAxis& axis);
  void setNumbers(const Numbers& numbers);
  /// shot: the selected one; session_s: where the playhead stands.
  void setNow(ShotId shot, double session_s);

  /// The stretch of session time that is shown.
  [[nodiscard]] double from_s() const { return from_s_; }
  [[nodiscard]] double to_s() const { return to_s_; }
  [[nodiscard]] double xOf(double session_s) const;
  [[nodiscard]] double timeAt(double x) const;

  QSize minimumSizeHint() const override;
  QSize sizeHint() const override;

 signals:
  void seekWanted(double session_s);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void show(double from_s, double to_s);
  /// Where the selected shot's number stands, px.
  [[nodiscard]] double numberAt() const;
  void paintShots(QPainter& painter) const;
  void paintTimes(QPainter& painter) const;
  [[nodiscard]] QString timeWords(double session_s) const;
  /// The shot under a place, with the session time of its strike.
  [[nodiscard]] const ShotSummary* shotUnder(const QPointF& place) const;

  std::shared_ptr<const SessionContent> content_;
  TimeAxis axis_;
  Numbers numbers_;
  Inks inks_;
  ShotId selected_;
  double now_s_ = 0.0;
  double from_s_ = 0.0;
  double to_s_ = 1.0;
};

}  // namespace ferrule
