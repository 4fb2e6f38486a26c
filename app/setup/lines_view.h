// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QWidget>
#include <vector>

#include "core/camera/check_evidence.h"
#include "core/table/table.h"
#include "core/vision/line_survey.h"

namespace ferrule {

/// The cushions' noses over the film's picture, each held by a few handles that a person drags, or moves with the arrow
/// keys, under a loupe. Page up and page down go from handle to handle.
class LinesView : public QWidget {
  Q_OBJECT
 public:
  explicit LinesView(QWidget* parent = nullptr);

  static constexpr int kHandles = 5;  ///< of a nose: a lens bends it into little more than a parabola
  /// A person with a loupe is right to about half a pixel. Common practice, no source.
  static constexpr double kHandPlaced_px = 0.5;

  /// lines: as found or placed; cushions without a nose among them get a guess that waits to be dragged.
  void setLines(const QImage& picture, const std::vector<LineTrace>& lines, const Table& table, PictureSide head);
  void clear();
  [[nodiscard]] bool isEmpty() const { return picture_.isNull(); }
  /// The noses as they show, in the order of kCushionNames, kHandles places each.
  [[nodiscard]] const std::vector<LineTrace>& noses() const { return noses_; }
  /// Those that were not found in the picture and nobody placed yet.
  [[nodiscard]] int guesses() const;
  /// Where a place of the picture is on the widget.
  [[nodiscard]] QPointF screenFromImage(ImagePoint pixel) const;
  /// "head cushion, place 2 of 5"
  [[nodiscard]] QString handleWords() const;

 signals:
  /// A handle was put somewhere: the whole nose as a person has it now.
  void placed(const ferrule::LineTrace& nose);
  void handleChosen();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] double scale() const;
  [[nodiscard]] ImagePoint imageFromScreen(QPointF place) const;
  [[nodiscard]] ImagePoint& chosen();
  void choose(std::size_t nose, std::size_t handle);
  void paintLoupe(QPainter& painter) const;

  QImage picture_;
  std::vector<LineTrace> noses_;
  std::vector<bool> guessed_;
  std::size_t nose_ = 0;
  std::size_t handle_ = 0;
  bool dragging_ = false;
  bool moved_ = false;
};

}  // namespace ferrule
