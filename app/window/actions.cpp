// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/actions.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QWidget>
#include <array>
#include <map>

#include "app/window/ink_icon.h"

namespace ferrule {

namespace {

constexpr std::array kRows{
    ActionRow{ActionId::OpenRecord, MenuId::Record, "openRecord", QT_TRANSLATE_NOOP("Actions", "&Open a record…"),
              QT_TRANSLATE_NOOP("Actions", "Open a record of measured sessions"), "open", "Ctrl+O"},
    ActionRow{ActionId::ImportRecord, MenuId::Record, "importRecord",
              QT_TRANSLATE_NOOP("Actions", "&Take in another record…"),
              QT_TRANSLATE_NOOP("Actions", "Add what a record of another computer holds, without doubles"), "",
              "Ctrl+Shift+O"},
    ActionRow{ActionId::Quit, MenuId::Record, "quit", QT_TRANSLATE_NOOP("Actions", "&Quit"),
              QT_TRANSLATE_NOOP("Actions", "Close the window"), "", "Ctrl+Q", false, true},

    ActionRow{ActionId::Undo, MenuId::Edit, "undo", QT_TRANSLATE_NOOP("Actions", "&Undo"),
              QT_TRANSLATE_NOOP("Actions", "Take back the last change"), "undo", "Ctrl+Z"},
    ActionRow{ActionId::Redo, MenuId::Edit, "redo", QT_TRANSLATE_NOOP("Actions", "&Redo"),
              QT_TRANSLATE_NOOP("Actions", "Make the change again"), "redo", "Ctrl+Shift+Z; Ctrl+Y"},
    ActionRow{ActionId::CorrectShot, MenuId::Edit, "correctShot", QT_TRANSLATE_NOOP("Actions", "&Correct the shot…"),
              QT_TRANSLATE_NOOP("Actions", "Put right what was read wrongly of the shot in Review"), "", "E", false,
              true},
    ActionRow{ActionId::CorrectTarget, MenuId::Edit, "correctTarget",
              QT_TRANSLATE_NOOP("Actions", "Correct &ball and pocket…"),
              QT_TRANSLATE_NOOP("Actions", "Say which ball was meant for which pocket"), "", "T"},
    ActionRow{ActionId::CorrectPlayer, MenuId::Edit, "correctPlayer",
              QT_TRANSLATE_NOOP("Actions", "Correct who &played…"),
              QT_TRANSLATE_NOOP("Actions", "Say who played the shot"), "", "Y"},
    ActionRow{ActionId::CorrectRuling, MenuId::Edit, "correctRuling",
              QT_TRANSLATE_NOOP("Actions", "Correct the ru&ling…"),
              QT_TRANSLATE_NOOP("Actions", "Replace what the referee made of the shot"), "", "U"},
    ActionRow{ActionId::CorrectNames, MenuId::Edit, "correctNames",
              QT_TRANSLATE_NOOP("Actions", "&Swap the names of two balls…"),
              QT_TRANSLATE_NOOP("Actions", "Say that two balls were taken for each other"), "", "W"},
    ActionRow{ActionId::MovePlaces, MenuId::Edit, "movePlaces", QT_TRANSLATE_NOOP("Actions", "&Move balls"),
              QT_TRANSLATE_NOOP("Actions", "Move balls to where they lay before the shot, then after it"), "", "D"},
    ActionRow{ActionId::CorrectParts, MenuId::Edit, "correctParts",
              QT_TRANSLATE_NOOP("Actions", "Split or &join shots…"),
              QT_TRANSLATE_NOOP("Actions", "Say where a shot ends: another one began in it, or the next belongs to it"),
              "", "J"},
    ActionRow{ActionId::CorrectPlacements, MenuId::Edit, "correctPlacements",
              QT_TRANSLATE_NOOP("Actions", "Balls put do&wn…"),
              QT_TRANSLATE_NOOP("Actions", "Put right which balls were put down before the shot"), "", "L"},
    ActionRow{ActionId::WriteNote, MenuId::Edit, "writeNote", QT_TRANSLATE_NOOP("Actions", "Write a no&te"),
              QT_TRANSLATE_NOOP("Actions", "Write a note on the shot in Review"), "", "Ctrl+N", false, true},
    ActionRow{ActionId::GiveTag, MenuId::Edit, "giveTag", QT_TRANSLATE_NOOP("Actions", "Give a ta&g"),
              QT_TRANSLATE_NOOP("Actions", "Give the shot in Review a tag, by which it can be found"), "", "Ctrl+G"},

    ActionRow{ActionId::ShowPlan, MenuId::View, "showPlan", QT_TRANSLATE_NOOP("Actions", "&Plan"),
              QT_TRANSLATE_NOOP("Actions", "Show the table from above"), "plan", "Ctrl+1", true},
    ActionRow{ActionId::ShowFilm, MenuId::View, "showFilm", QT_TRANSLATE_NOOP("Actions", "&Film"),
              QT_TRANSLATE_NOOP("Actions", "Show the film with the measured ways"), "film", "Ctrl+2", true},
    ActionRow{ActionId::ShowBoth, MenuId::View, "showBoth", QT_TRANSLATE_NOOP("Actions", "&Side by side"),
              QT_TRANSLATE_NOOP("Actions", "Show plan and film together"), "both", "Ctrl+3", true},
    ActionRow{ActionId::ZoomIn, MenuId::View, "zoomIn", QT_TRANSLATE_NOOP("Actions", "Zoom &in"),
              QT_TRANSLATE_NOOP("Actions", "Enlarge the picture"), "", "Ctrl++; Ctrl+=", false, true},
    ActionRow{ActionId::ZoomOut, MenuId::View, "zoomOut", QT_TRANSLATE_NOOP("Actions", "Zoom &out"),
              QT_TRANSLATE_NOOP("Actions", "Make the picture smaller"), "", "Ctrl+-"},
    ActionRow{ActionId::ZoomFit, MenuId::View, "zoomFit", QT_TRANSLATE_NOOP("Actions", "&Whole table"),
              QT_TRANSLATE_NOOP("Actions", "Fit the whole picture into its space"), "", "Ctrl+0"},
    ActionRow{ActionId::SavePicture, MenuId::View, "savePicture", QT_TRANSLATE_NOOP("Actions", "S&ave the picture…"),
              QT_TRANSLATE_NOOP("Actions", "Write the picture that Review shows as PNG, or the plan as SVG"), "",
              "Ctrl+Shift+S", false, true},
    ActionRow{ActionId::SaveClip, MenuId::View, "saveClip", QT_TRANSLATE_NOOP("Actions", "Save a &clip…"),
              QT_TRANSLATE_NOOP("Actions", "Write the shot in Review as a short film"), "", "Ctrl+Shift+C"},
    ActionRow{ActionId::NarrowPlaces, MenuId::View, "narrowPlaces",
              QT_TRANSLATE_NOOP("Actions", "&Narrow list of places"),
              QT_TRANSLATE_NOOP("Actions", "Show the places as icons only"), "", "Ctrl+B", false, true},

    ActionRow{ActionId::Play, MenuId::Step, "play", QT_TRANSLATE_NOOP("Actions", "&Play"),
              QT_TRANSLATE_NOOP("Actions", "Play in real time, or pause"), "play", "Space"},
    ActionRow{ActionId::ImageBack, MenuId::Step, "imageBack", QT_TRANSLATE_NOOP("Actions", "Image back"),
              QT_TRANSLATE_NOOP("Actions", "One image back"), "image-back", "Left", false, true},
    ActionRow{ActionId::ImageOn, MenuId::Step, "imageOn", QT_TRANSLATE_NOOP("Actions", "Image on"),
              QT_TRANSLATE_NOOP("Actions", "One image on"), "image-on", "Right"},
    ActionRow{ActionId::EventBack, MenuId::Step, "eventBack", QT_TRANSLATE_NOOP("Actions", "Event back"),
              QT_TRANSLATE_NOOP("Actions", "Back to the last contact, strike or rest"), "event-back", "Shift+Left"},
    ActionRow{ActionId::EventOn, MenuId::Step, "eventOn", QT_TRANSLATE_NOOP("Actions", "Event on"),
              QT_TRANSLATE_NOOP("Actions", "On to the next contact or to rest"), "event-on", "Shift+Right"},
    ActionRow{ActionId::ShotBack, MenuId::Step, "shotBack", QT_TRANSLATE_NOOP("Actions", "Shot back"),
              QT_TRANSLATE_NOOP("Actions", "The shot before"), "shot-back", "PgUp"},
    ActionRow{ActionId::ShotOn, MenuId::Step, "shotOn", QT_TRANSLATE_NOOP("Actions", "Shot on"),
              QT_TRANSLATE_NOOP("Actions", "The next shot"), "shot-on", "PgDown"},

    ActionRow{ActionId::FilterShots, MenuId::Step, "filterShots", QT_TRANSLATE_NOOP("Actions", "&Filter the shots"),
              QT_TRANSLATE_NOOP("Actions", "List the shots that meet conditions, or go back to all sessions"), "filter",
              "Ctrl+F", false, true},
    ActionRow{ActionId::PlayList, MenuId::Step, "playList", QT_TRANSLATE_NOOP("Actions", "Play the &list"),
              QT_TRANSLATE_NOOP("Actions", "Play the listed shots one after another, or stop"), "play-list",
              "Ctrl+Space"},
    ActionRow{ActionId::CompareShots, MenuId::Step, "compareShots", QT_TRANSLATE_NOOP("Actions", "&Compare shots"),
              QT_TRANSLATE_NOOP("Actions", "Hold this shot and set others beside it, or end that"), "", "Q"},
    ActionRow{ActionId::Mute, MenuId::Step, "mute", QT_TRANSLATE_NOOP("Actions", "Play with &sound"),
              QT_TRANSLATE_NOOP("Actions", "Let the film be heard while it plays, or not"), "", "Ctrl+M"},

    ActionRow{ActionId::LogMade, MenuId::Session, "logMade", QT_TRANSLATE_NOOP("Actions", "&Made"),
              QT_TRANSLATE_NOOP("Actions", "The chosen ball went into its pocket"), "", "M"},
    ActionRow{ActionId::LogThick, MenuId::Session, "logThick", QT_TRANSLATE_NOOP("Actions", "Missed thic&k"),
              QT_TRANSLATE_NOOP("Actions", "The chosen ball was hit too full"), "", "K"},
    ActionRow{ActionId::LogThin, MenuId::Session, "logThin", QT_TRANSLATE_NOOP("Actions", "Missed thi&n"),
              QT_TRANSLATE_NOOP("Actions", "The chosen ball was cut too much"), "", "N"},
    ActionRow{ActionId::LogMissed, MenuId::Session, "logMissed", QT_TRANSLATE_NOOP("Actions", "M&issed"),
              QT_TRANSLATE_NOOP("Actions", "The chosen ball was missed, on either side"), "", "I"},
    ActionRow{ActionId::LogSafety, MenuId::Session, "logSafety", QT_TRANSLATE_NOOP("Actions", "&Safety"),
              QT_TRANSLATE_NOOP("Actions", "A safety was played"), "", "S"},
    ActionRow{ActionId::LogScratch, MenuId::Session, "logScratch", QT_TRANSLATE_NOOP("Actions", "S&cratch"),
              QT_TRANSLATE_NOOP("Actions", "The cue ball fell or left the table"), "", "C"},
    ActionRow{ActionId::LogFoul, MenuId::Session, "logFoul", QT_TRANSLATE_NOOP("Actions", "&Foul…"),
              QT_TRANSLATE_NOOP("Actions", "Another foul, to be chosen"), "", "F"},
    ActionRow{ActionId::LogBreak, MenuId::Session, "logBreak", QT_TRANSLATE_NOOP("Actions", "&Break"),
              QT_TRANSLATE_NOOP("Actions", "The balls were broken"), "", "B"},
    ActionRow{ActionId::LogFell, MenuId::Session, "logFell", QT_TRANSLATE_NOOP("Actions", "Fell &too"),
              QT_TRANSLATE_NOOP("Actions",
                                "The chosen ball fell in its pocket with the last shot, as on a break; "
                                "dragging it into a pocket says the same"),
              "", "A"},
    ActionRow{ActionId::ShowSuggestion, MenuId::Session, "showSuggestion",
              QT_TRANSLATE_NOOP("Actions", "Su&ggest a shot"),
              QT_TRANSLATE_NOOP("Actions", "Show what would be suggested here, or hide it"), "", "G", false, true},
    ActionRow{ActionId::RackBalls, MenuId::Session, "rackBalls", QT_TRANSLATE_NOOP("Actions", "&Rack the balls"),
              QT_TRANSLATE_NOOP("Actions", "Set all balls up for a break"), "", "R", false, true},
    ActionRow{ActionId::BallsFromPhoto, MenuId::Session, "ballsFromPhoto",
              QT_TRANSLATE_NOOP("Actions", "Balls from a &photo…"),
              QT_TRANSLATE_NOOP("Actions", "Put the balls where a photo of the table's camera shows them"), "", "P"},
    ActionRow{ActionId::NextFrame, MenuId::Session, "nextFrame", QT_TRANSLATE_NOOP("Actions", "Ne&xt frame"),
              QT_TRANSLATE_NOOP("Actions", "End this frame and begin the next one"), "", "Ctrl+Return"},
    ActionRow{ActionId::EndSession, MenuId::Session, "endSession", QT_TRANSLATE_NOOP("Actions", "&End the session"),
              QT_TRANSLATE_NOOP("Actions", "Keep all shots and close the session"), "", "Ctrl+E"},

    ActionRow{ActionId::Answer1, MenuId::Answers, "answer1", QT_TRANSLATE_NOOP("Actions", "Answer &1"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "1"},
    ActionRow{ActionId::Answer2, MenuId::Answers, "answer2", QT_TRANSLATE_NOOP("Actions", "Answer &2"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "2"},
    ActionRow{ActionId::Answer3, MenuId::Answers, "answer3", QT_TRANSLATE_NOOP("Actions", "Answer &3"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "3"},
    ActionRow{ActionId::Answer4, MenuId::Answers, "answer4", QT_TRANSLATE_NOOP("Actions", "Answer &4"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "4"},
    ActionRow{ActionId::Answer5, MenuId::Answers, "answer5", QT_TRANSLATE_NOOP("Actions", "Answer &5"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "5"},
    ActionRow{ActionId::Answer6, MenuId::Answers, "answer6", QT_TRANSLATE_NOOP("Actions", "Answer &6"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "6"},
    ActionRow{ActionId::Answer7, MenuId::Answers, "answer7", QT_TRANSLATE_NOOP("Actions", "Answer &7"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "7"},
    ActionRow{ActionId::Answer8, MenuId::Answers, "answer8", QT_TRANSLATE_NOOP("Actions", "Answer &8"),
              QT_TRANSLATE_NOOP("Actions", "Give the answer of this number to what the referee asks"), "", "8"},
    ActionRow{ActionId::AnswerLater, MenuId::Answers, "answerLater", QT_TRANSLATE_NOOP("Actions", "Answer &later"),
              QT_TRANSLATE_NOOP("Actions", "Put the question off; Review keeps the shot marked"), "", "0", false, true},

    ActionRow{ActionId::ShotsBehind, MenuId::Figures, "shotsBehind", QT_TRANSLATE_NOOP("Actions", "&Shots behind it"),
              QT_TRANSLATE_NOOP("Actions", "Look at the shots behind the chosen part of a chart"), "", "Ctrl+R"},
    ActionRow{ActionId::ExportChart, MenuId::Figures, "exportChart", QT_TRANSLATE_NOOP("Actions", "&Export the chart…"),
              QT_TRANSLATE_NOOP("Actions", "Write the chosen chart as SVG, PNG or CSV"), "", "Ctrl+Shift+E"},

    ActionRow{ActionId::ExportReport, MenuId::Figures, "exportReport",
              QT_TRANSLATE_NOOP("Actions", "Export the &report…"),
              QT_TRANSLATE_NOOP("Actions", "Write the report as PDF or HTML, or its numbers as CSV"), "", "Ctrl+P"},

    ActionRow{ActionId::AddPlayer, MenuId::Players, "addPlayer", QT_TRANSLATE_NOOP("Actions", "&Add a player"),
              QT_TRANSLATE_NOOP("Actions", "Add a player to the record"), "", "Ctrl+Shift+N"},
    ActionRow{ActionId::AddGuest, MenuId::Players, "addGuest", QT_TRANSLATE_NOOP("Actions", "Add a &guest"),
              QT_TRANSLATE_NOOP("Actions", "Add somebody whose shots are given to a player later, or erased"), "",
              "Ctrl+Shift+G"},
    ActionRow{ActionId::ExportPlayer, MenuId::Players, "exportPlayer",
              QT_TRANSLATE_NOOP("Actions", "&Export the player…"),
              QT_TRANSLATE_NOOP("Actions", "Write all that is kept of the chosen player into a folder"), "",
              "Ctrl+Shift+P", false, true},

    ActionRow{ActionId::StepBack, MenuId::Setup, "stepBack", QT_TRANSLATE_NOOP("Actions", "Step &back"),
              QT_TRANSLATE_NOOP("Actions", "The step of the set-up before"), "", "Alt+Left"},
    ActionRow{ActionId::StepOn, MenuId::Setup, "stepOn", QT_TRANSLATE_NOOP("Actions", "Step &on"),
              QT_TRANSLATE_NOOP("Actions", "The next step of the set-up"), "", "Alt+Right"},
    ActionRow{ActionId::CheckAgain, MenuId::Setup, "checkRigAgain",
              QT_TRANSLATE_NOOP("Actions", "&Check the rig again…"),
              QT_TRANSLATE_NOOP("Actions", "Ask a film whether the rig in use still fits"), "", "Ctrl+K", false, true},
    ActionRow{ActionId::StopWork, MenuId::Setup, "stopWork", QT_TRANSLATE_NOOP("Actions", "&Stop"),
              QT_TRANSLATE_NOOP("Actions", "Stop the long work that is going on"), "", "Ctrl+."},

    ActionRow{ActionId::SpeedMetres, MenuId::SpeedUnit, "speedMetres",
              QT_TRANSLATE_NOOP("Actions", "&Metres per second"), QT_TRANSLATE_NOOP("Actions", "Show speeds in m/s"),
              "", "", true},
    ActionRow{ActionId::SpeedKilometres, MenuId::SpeedUnit, "speedKilometres",
              QT_TRANSLATE_NOOP("Actions", "&Kilometres per hour"), QT_TRANSLATE_NOOP("Actions", "Show speeds in km/h"),
              "", "", true},
    ActionRow{ActionId::SpeedMiles, MenuId::SpeedUnit, "speedMiles", QT_TRANSLATE_NOOP("Actions", "M&iles per hour"),
              QT_TRANSLATE_NOOP("Actions", "Show speeds in mph"), "", "", true},

    ActionRow{ActionId::LookSystem, MenuId::Appearance, "lookSystem", QT_TRANSLATE_NOOP("Actions", "As the &system"),
              QT_TRANSLATE_NOOP("Actions", "Light or dark as the desktop is"), "", "", true},
    ActionRow{ActionId::LookLight, MenuId::Appearance, "lookLight", QT_TRANSLATE_NOOP("Actions", "&Light"),
              QT_TRANSLATE_NOOP("Actions", "Always light"), "", "", true},
    ActionRow{ActionId::LookDark, MenuId::Appearance, "lookDark", QT_TRANSLATE_NOOP("Actions", "&Dark"),
              QT_TRANSLATE_NOOP("Actions", "Always dark"), "", "", true},

    ActionRow{ActionId::LanguageSystem, MenuId::Language, "languageSystem",
              QT_TRANSLATE_NOOP("Actions", "As the &system"),
              QT_TRANSLATE_NOOP("Actions", "The desktop's language, where the program speaks it"), "", "", true},
    // A language is named as its speakers write it, whatever is spoken now.
    ActionRow{ActionId::LanguageEnglish, MenuId::Language, "languageEnglish", "English",
              QT_TRANSLATE_NOOP("Actions", "Show every word in this language"), "", "", true, true},
    ActionRow{ActionId::LanguageGerman, MenuId::Language, "languageGerman", "Deutsch",
              QT_TRANSLATE_NOOP("Actions", "Show every word in this language"), "", "", true},
    ActionRow{ActionId::LanguageFrench, MenuId::Language, "languageFrench", "Français",
              QT_TRANSLATE_NOOP("Actions", "Show every word in this language"), "", "", true},
    ActionRow{ActionId::LanguageSpanish, MenuId::Language, "languageSpanish", "Español",
              QT_TRANSLATE_NOOP("Actions", "Show every word in this language"), "", "", true},
    ActionRow{ActionId::LanguageChinese, MenuId::Language, "languageChinese", "简体中文",
              QT_TRANSLATE_NOOP("Actions", "Show every word in this language"), "", "", true},

    ActionRow{ActionId::PlaceHelp, MenuId::Help, "placeHelp", QT_TRANSLATE_NOOP("Actions", "&How this place is used"),
              QT_TRANSLATE_NOOP("Actions", "What the place is for, and the steps in their order"), "", "F1"},
    ActionRow{ActionId::Shortcuts, MenuId::Help, "shortcuts", QT_TRANSLATE_NOOP("Actions", "&Keys"),
              QT_TRANSLATE_NOOP("Actions", "Every action of the window and its keys"), "", "Ctrl+F1"},
    ActionRow{ActionId::About, MenuId::Help, "about", QT_TRANSLATE_NOOP("Actions", "&About Ferrule"),
              QT_TRANSLATE_NOOP("Actions", "Version, cautions and licences"), "", "", false, true},
};

QString translated(const char* text) {
  return QCoreApplication::translate("Actions", text);
}

}  // namespace

std::span<const ActionRow> actionRows() {
  return kRows;
}

QString menuTitle(MenuId menu) {
  switch (menu) {
    case MenuId::Record:
      return QCoreApplication::translate("Actions", "&Record");
    case MenuId::Edit:
      return QCoreApplication::translate("Actions", "&Edit");
    case MenuId::View:
      return QCoreApplication::translate("Actions", "&View");
    case MenuId::Step:
      return QCoreApplication::translate("Actions", "&Step");
    case MenuId::Session:
      return QCoreApplication::translate("Actions", "Sess&ion");
    case MenuId::Answers:
      return QCoreApplication::translate("Actions", "&What the referee asks");
    case MenuId::Figures:
      return QCoreApplication::translate("Actions", "Fi&gures");
    case MenuId::Players:
      return QCoreApplication::translate("Actions", "&Players");
    case MenuId::Setup:
      return QCoreApplication::translate("Actions", "Set-&up");
    case MenuId::SpeedUnit:
      return QCoreApplication::translate("Actions", "S&peed unit");
    case MenuId::Appearance:
      return QCoreApplication::translate("Actions", "&Appearance");
    case MenuId::Language:
      return QCoreApplication::translate("Actions", "&Language");
    case MenuId::Help:
      return QCoreApplication::translate("Actions", "&Help");
  }
  return {};
}

ActionSet::ActionSet(QWidget* window) : QObject(window) {
  std::map<MenuId, QActionGroup*> groups;
  for (const ActionRow& row : kRows) {
    auto* action = new QAction(translated(row.text), window);
    action->setObjectName(QString::fromLatin1(row.name));
    const QString help = translated(row.help);
    action->setShortcuts(QKeySequence::listFromString(QString::fromLatin1(row.keys), QKeySequence::PortableText));
    const QString keys = action->shortcut().toString(QKeySequence::NativeText);
    action->setToolTip(keys.isEmpty() ? help : QStringLiteral("%1 (%2)").arg(help, keys));
    action->setStatusTip(help);
    if (row.icon[0] != '\0') action->setIcon(inkIcon(QString::fromLatin1(row.icon)));
    if (row.checkable) {
      action->setCheckable(true);
      QActionGroup*& group = groups[row.menu];
      if (group == nullptr) group = new QActionGroup(this);
      group->addAction(action);
    }
    connect(action, &QAction::triggered, this, [this, id = row.id] { emit triggered(id); });
    window->addAction(action);
    actions_.push_back(action);
  }
}

QAction* ActionSet::at(ActionId id) const {
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    if (kRows[i].id == id) return actions_[i];
  }
  return nullptr;
}

std::vector<QAction*> ActionSet::of(MenuId menu) const {
  std::vector<QAction*> found;
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    if (kRows[i].menu != menu) continue;
    if (kRows[i].startsGroup) found.push_back(nullptr);
    found.push_back(actions_[i]);
  }
  return found;
}

}  // namespace ferrule
