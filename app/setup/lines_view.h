// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QWidget>
#include <vector>

#include "core/camera/check_evidence.h"
#include "core/table/table.h"
#include "core/vision/line_survey.h"
#include "core/vision/mark_survey.h"

namespace ferrule {

/// How a mark of the table is known.
enum class MarkState {
  Found,     ///< in the picture
  ByHand,    ///< placed by a person
  NotThere,  ///< a person said so
  Missing,   ///< not found, and nobody spoke of it
};

/// A mark as it shows: what is not there or missing shows where it would be.
struct ShownMark {
  TableMark mark;
  ImagePoint place;
  MarkState state = MarkState::Missing;

  bool operator==(const ShownMark&) const = default;
};

/// The cushions' noses, the sights and the pockets over the film's picture. A nose is held by a few handles, a mark is
/// its own; a person drags them, or moves them with the arrow keys, under a loupe that stands beside them. Page up and
/// page down go from one to the next, over all; delete says that a mark is not there, insert puts it where it shows.
class LinesView : public QWidget {
  Q_OBJECT
 public:
  explicit LinesView(QWidget* parent = nullptr);

  static constexpr int kHandles = 5;  ///< of a nose: a lens bends it into little more than a parabola

  /// lines: as found or placed; cushions without a nose among them get a guess that waits to be dragged.
  void setLines(const QImage& picture, const std::vector<LineTrace>& lines, const Table& table, PictureSide head);
  void setMarks(std::vector<ShownMark> marks);
  void clear();
  [[nodiscard]] bool isEmpty() const { return picture_.isNull(); }
  /// The noses as they show, in the order of kCushionNames, kHandles places each.
  [[nodiscard]] const std::vector<LineTrace>& noses() const { return noses_; }
  [[nodiscard]] const std::vector<ShownMark>& marks() const { return marks_; }
  /// Those that were not found in the picture and nobody placed yet.
  [[nodiscard]] int guesses() const;
  [[nodiscard]] bool isGuess(std::size_t nose) const { return guessed_[nose]; }
  /// Where a place of the picture is on the widget.
  [[nodiscard]] QPointF screenFromImage(ImagePoint pixel) const;
  /// "The head cushion, place 2 of 5", "Sight 1 of 3 on the foot rail, from the left".
  [[nodiscard]] QString handleWords() const;

  /// Noses and marks are counted through: the six cushions, then the marks in their order.
  [[nodiscard]] std::size_t chosenThing() const;
  void chooseThing(std::size_t thing);
  /// Whether what is chosen is a mark, about which the two below may be said.
  [[nodiscard]] const ShownMark* chosenMark() const;
  void sayNotThere();
  void putHere();

 signals:
  /// A handle was put somewhere: the whole nose as a person has it now.
  void placed(const ferrule::LineTrace& nose);
  /// A person spoke of a mark.
  void marked(const ferrule::HandMark& mark);
  void handleChosen();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] double scale() const;
  [[nodiscard]] ImagePoint imageFromScreen(QPointF place) const;
  [[nodiscard]] std::size_t handles() const { return noses_.size() * kHandles + marks_.size(); }
  [[nodiscard]] bool isNose(std::size_t handle) const { return handle < noses_.size() * kHandles; }
  [[nodiscard]] ImagePoint& placeOf(std::size_t handle);
  [[nodiscard]] ImagePoint placeOf(std::size_t handle) const;
  void choose(std::size_t handle);
  /// What is chosen was moved by a person.
  void tell();
  void paintNoses(QPainter& painter) const;
  void paintMarks(QPainter& painter) const;

  QImage picture_;
  std::vector<LineTrace> noses_;
  std::vector<bool> guessed_;
  std::vector<ShownMark> marks_;
  std::size_t handle_ = 0;  ///< of all
  bool dragging_ = false;
  bool moved_ = false;
};

}  // namespace ferrule
