// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>

#include "app/film/film_sound.h"
#include "app/review/clip_desk.h"
#include "app/review/correction_desk.h"
#include "app/review/correction_menu.h"
#include "app/review/judging_anew.h"
#include "app/review/review_desk.h"
#include "app/review/suggested_shot.h"
#include "app/window/place.h"
#include "app/window/places.h"

class QLabel;
class QPainter;
class QPushButton;
class QSplitter;
class QStackedWidget;
class QTreeView;

namespace ferrule {

class CompareView;
class FilmView;
class ProgressService;
class RemarksSection;
class ShotFilter;
class MessageBar;
class PlanView;
class ShotPanel;
class ShotTreeModel;
class TableEditor;
class TimeLine;
class WorkStrip;

enum class PictureMode { Plan, Film, Both };

/// Review: sessions, frames and shots on the left, plan and film in the middle over the time line, the shot's details
/// on the right.
class ReviewPlace : public Place {
  Q_OBJECT
 public:
  ReviewPlace(const Openers& openers, const ActionSet& actions, QWidget* parent = nullptr);

  bool act(ActionId action) override;
  void openRecord(const QString& path) override;
  void showShots(const ShotList& shots) override;
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings& settings) const override;
  void restore(const QSettings& settings) override;

  [[nodiscard]] ReviewDesk& desk() { return desk_; }
  [[nodiscard]] CorrectionDesk& corrections() { return corrections_; }
  [[nodiscard]] PictureMode mode() const { return mode_; }
  void setMode(PictureMode mode);
  /// Writes what is shown: the plan as PNG or SVG, by the path's ending, the film's image with what is drawn over it as
  /// PNG. Says what became of it.
  void savePicture(const QString& path);
  /// Writes the shot that is shown as a short film, in the background. Says what became of it.
  void saveClip(ClipKind kind, const QString& path);
  [[nodiscard]] ClipDesk& clips() { return clips_; }
  [[nodiscard]] JudgingAnew& judging() { return judging_; }
  [[nodiscard]] FilmSound& sound() { return sound_; }

 private:
  void choosePictureFile();
  QWidget* makePictures(const ActionSet& actions);
  QWidget* makeEmpty(const ActionSet& actions);
  QWidget* makeTransport(const ActionSet& actions);
  QWidget* makeHeader(const ActionSet& actions);
  void connectDesk();
  void connectViews();
  void showContent();
  void showShot();
  void showSuggested();
  void showMoment();
  void showFilmState();
  void askForPicture();
  void findFilm();
  void connectFilter();
  /// Reads the shots that meet the conditions.
  void askForList();
  void showListed(const ListedShot& shot);
  void playList();
  /// Goes on to the list's next shot, or ends playing it.
  void playNextListed();
  void takeChosen();
  void tell(const QString& sentence);
  void connectCorrections();
  /// The actions that correct the shot that is shown; false for any other.
  bool correct(ActionId action);
  void say(const ShotSaying& saying);
  /// After the record changed.
  void showCorrected(const QString& sentence);
  /// Opens a menu of corrections of the shot that is shown. ball: that is pointed at.
  void popUp(FillMenu fill, const QPoint& place, std::optional<BallName> ball = {});
  [[nodiscard]] QPoint placeOfMenu() const;
  /// What lies around the shot: placements before it, whether another follows.
  void fillSurroundings(CorrectionSubject& subject);
  void connectClips();
  void chooseClipFile();
  /// The picture of a view as a file.
  void writeShown(const QWidget& shown, const std::function<void(QPainter&)>& draw, const QString& path);
  /// By their names in the record.
  [[nodiscard]] std::vector<std::string> peopleOnFilm();
  void connectSound();
  /// Holds the shot that is shown, so that others are set beside it, or ends that.
  void compareShots();
  void showCompared();
  void connectPlaces();
  /// Goes on from looking to moving balls before the shot, then after it, then back.
  void movePlaces();
  /// What the arrow keys moved is where it is to be.
  void putNudged();
  /// Shows the ball where the record has it.
  void forgetNudged();
  void showMoving();
  void connectRemarks();
  [[nodiscard]] std::optional<ShotAddress> shownShot();

  ReviewDesk desk_;
  CorrectionDesk corrections_;
  JudgingAnew judging_;
  ClipDesk clips_;
  FilmSound sound_;
  std::vector<std::string> recordPlayers_;  ///< everyone whom the record knows
  std::optional<ShotEnd> moving_;           ///< the places that are moved now
  std::optional<BallAt> nudged_;            ///< a ball that is moved and not yet read again there
  std::optional<ShotAddress> nudgedAt_;     ///< its shot
  bool nudgeIsSaid_ = false;
  QTimer nudges_;
  Numbers numbers_;
  QString demoRecord_;
  QString demoFolder_;
  PictureMode mode_ = PictureMode::Plan;
  ShotTreeModel* model_;
  QStackedWidget* stack_;
  QSplitter* columns_;
  QSplitter* pictures_;
  QStackedWidget* pictureStack_;  ///< one shot's pictures, or two shots side by side
  CompareView* compare_;
  QStackedWidget* lists_;  ///< all sessions, or the shots that were asked for
  QTreeView* tree_;
  ShotFilter* filter_;
  ProgressService* query_;
  std::optional<ShotList> wantedList_;  ///< until its record is open
  bool playsList_ = false;
  QStackedWidget* planStack_;  ///< the plan, or the table on which balls are moved
  PlanView* plan_;
  TableEditor* editor_;
  FilmView* film_;
  QStackedWidget* filmStack_;  ///< the film, or why there is none
  QLabel* filmWords_;
  QPushButton* filmButton_;
  TimeLine* timeLine_;
  ShotPanel* panel_;
  RemarksSection* remarks_;
  QLabel* title_;
  QLabel* subtitle_;
  QLabel* moment_;
  MessageBar* message_;
  WorkStrip* work_;
  std::optional<SuggestedShot> suggested_;  ///< before the shot that is shown
  bool showsSuggested_ = true;
  bool followsTree_ = true;  ///< false while the tree is moved by the desk
  bool takesFocus_ = false;  ///< the first shot of a record that was just opened puts the keys into the list
};

}  // namespace ferrule
