// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QObject>
#include <span>
#include <vector>

namespace ferrule {

enum class ActionId {
  OpenRecord,
  ImportRecord,
  Quit,
  ShowPlan,
  ShowFilm,
  ShowBoth,
  ZoomIn,
  ZoomOut,
  ZoomFit,
  SavePicture,
  SaveClip,
  NarrowPlaces,
  Play,
  ImageBack,
  ImageOn,
  EventBack,
  EventOn,
  ShotBack,
  ShotOn,
  FilterShots,
  PlayList,
  CompareShots,
  Mute,
  Undo,
  Redo,
  CorrectShot,
  CorrectTarget,
  CorrectPlayer,
  CorrectRuling,
  CorrectNames,
  MovePlaces,
  CorrectParts,
  CorrectPlacements,
  WriteNote,
  GiveTag,
  LogMade,
  LogThick,
  LogThin,
  LogMissed,
  LogSafety,
  LogScratch,
  LogFoul,
  LogBreak,
  LogFell,
  ShowSuggestion,
  RackBalls,
  BallsFromPhoto,
  NextFrame,
  EndSession,
  Answer1,
  Answer2,
  Answer3,
  Answer4,
  Answer5,
  Answer6,
  Answer7,
  Answer8,
  AnswerLater,
  ShotsBehind,
  ExportChart,
  ExportReport,
  AddPlayer,
  AddGuest,
  ExportPlayer,
  StepBack,
  StepOn,
  CheckAgain,
  StopWork,
  SpeedMetres,
  SpeedKilometres,
  SpeedMiles,
  LookSystem,
  LookLight,
  LookDark,
  LanguageSystem,
  LanguageEnglish,
  LanguageGerman,
  LanguageFrench,
  LanguageSpanish,
  LanguageChinese,
  PlaceHelp,
  Shortcuts,
  About,
};

enum class MenuId {
  Record,
  Edit,
  View,
  Step,
  Session,
  Answers,
  Figures,
  Players,
  Setup,
  SpeedUnit,
  Appearance,
  Language,
  Help
};

/// One action of the window. Menus, tool buttons and the shortcut page are made from these rows.
struct ActionRow {
  ActionId id;
  MenuId menu;
  const char* name;          ///< object name, for tests and settings
  const char* text;          ///< to be translated in the context "Actions"
  const char* help;          ///< one plain line, to be translated
  const char* icon;          ///< of resources/icons; may be empty
  const char* keys;          ///< portable text, alternatives separated by "; "; may be empty
  bool checkable = false;    ///< checkable actions of one menu exclude each other
  bool startsGroup = false;  ///< a line stands before it in its menu
};

/// In the order of the menus.
[[nodiscard]] std::span<const ActionRow> actionRows();
[[nodiscard]] QString menuTitle(MenuId menu);

/// The rows as Qt actions.
class ActionSet : public QObject {
  Q_OBJECT
 public:
  explicit ActionSet(QWidget* window);

  [[nodiscard]] QAction* at(ActionId id) const;
  /// A menu's actions in order; a null action stands for a line.
  [[nodiscard]] std::vector<QAction*> of(MenuId menu) const;

 signals:
  void triggered(ferrule::ActionId id);

 private:
  std::vector<QAction*> actions_;
};

}  // namespace ferrule
