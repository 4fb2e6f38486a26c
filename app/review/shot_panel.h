// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <memory>

#include "app/review/review_source.h"
#include "app/words/numbers.h"
#include "core/planner/suggestion_text.h"

class QLabel;
class QTableView;
class QVBoxLayout;

namespace ferrule {

class EventListModel;

/// One shot, read from top to bottom like a sentence: what it was, what was struck, what happened, where everything
/// came to rest, how it is ruled.
class ShotPanel : public QScrollArea {
  Q_OBJECT
 public:
  explicit ShotPanel(QWidget* parent = nullptr);

  /// players: of the session, in playing order. kept: what had been suggested.
  /// How far the camera moved on the table while the next shot that is shown was played; nothing: it stood still.
  void setCameraMoved(std::optional<double> moved_m) { cameraMoved_m_ = moved_m; }
  void setShot(std::shared_ptr<const StoredShot> shot, const MeasuredTable& measured,
               const std::vector<std::string>& players = {}, const std::optional<KeptSuggestion>& kept = {});
  void setNumbers(const Numbers& numbers);
  /// Marks the event that has just happened at an image; spacing_s: between images.
  void setTime(double time_s, double spacing_s);

 signals:
  /// A film time was chosen from the events.
  void timeChosen(double time_s);
  /// A correction is to be taken back.
  void takeBackWanted(ferrule::CorrectionId correction);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void rebuild();
  void addStruck(QVBoxLayout& column);
  void addCue(QVBoxLayout& column);
  void addHappened(QVBoxLayout& column);
  void addMiss(QVBoxLayout& column);
  void addChoice(QVBoxLayout& column);
  void addCorrections(QVBoxLayout& column);
  void addLines(QVBoxLayout& column, const QString& title, const QStringList& lines, const QString& name);
  QLabel* label(const QString& text, double factor, bool bold, bool quiet);
  QLabel* sectionTitle(const QString& text);

  std::shared_ptr<const StoredShot> shot_;
  MeasuredTable measured_;
  std::optional<double> cameraMoved_m_;
  std::vector<std::string> players_;
  std::optional<KeptSuggestion> kept_;
  Numbers numbers_;
  EventListModel* events_;
  QTableView* eventView_ = nullptr;
  double time_s_ = 0.0;
  double spacing_s_ = 0.0;
};

}  // namespace ferrule
