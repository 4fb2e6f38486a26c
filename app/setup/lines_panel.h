// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QWidget>
#include <optional>

#include "app/setup/lines_fitting.h"
#include "app/setup/lines_view.h"
#include "app/setup/setup_desk.h"
#include "app/words/numbers.h"

class QLabel;
class QPushButton;

namespace ferrule {

class LinesList;

/// What a rig without tags is made from: the noses, sights and pockets that were found, over the picture and by name,
/// each to be put right by hand, and how well they agree as they stand. Holds no truth: what a person says goes to the
/// desk.
class LinesPanel : public QWidget {
  Q_OBJECT
 public:
  explicit LinesPanel(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh(const Numbers& numbers);

 private:
  void makeButtons();
  void take(const QImage& picture, const std::vector<LineTrace>& lines, const std::vector<MarkSighting>& marks);
  void place(const LineTrace& nose);
  void mark(const HandMark& said);
  /// Everything as it stands: found, but for what a person said.
  [[nodiscard]] std::vector<LineTrace> lines() const;
  [[nodiscard]] std::vector<MarkSighting> marks() const;
  [[nodiscard]] std::vector<ShownMark> shownMarks() const;
  void fitAnew();
  void showFit();
  void showHandle();

  SetupDesk& desk_;
  Numbers numbers_;
  QPushButton* adjust_;
  QPushButton* asFound_;
  QPushButton* notThere_;
  QPushButton* putHere_;
  QLabel* words_;
  QLabel* handle_;
  QLabel* agree_;
  LinesView* view_;
  LinesList* list_;
  LinesFitting fitting_;
  QImage picture_;                ///< that the lines were found in
  std::vector<LineTrace> found_;  ///< before a person placed any
  std::vector<MarkSighting> foundMarks_;
  QString foundIn_;  ///< the film, the head's side and the table that they belong to
  /// What the fit below is of.
  std::vector<LineTrace> fittedLines_;
  std::vector<MarkSighting> fittedMarks_;
  bool asked_ = false;
  std::optional<LinesFit> fit_;
  QString fault_;  ///< why there is no fit
};

}  // namespace ferrule
