// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/every_place.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QtTest>

#include "app/drills/drills_place.h"
#include "app/film/film_file.h"
#include "app/players/players_place.h"
#include "app/progress/progress_place.h"
#include "app/reports/reports_place.h"
#include "app/review/record_source.h"
#include "app/review/review_place.h"
#include "app/session/session_place.h"
#include "app/window/languages.h"
#include "app/window/main_window.h"
#include "tests/app/fresh_settings.h"
#include "tests/app/squad_file.h"
#include "tests/support/patience.h"

namespace ferrule {

namespace {

constexpr QSize kWindow{1280, 720};
constexpr int kSetupSteps = 10;
constexpr int kSettled_ms = 60;
constexpr int kLayoutRounds = 5;

/// The application's font and locale while it lives.
class Dressed {
 public:
  Dressed(const QFont& font, const QLocale& locale) : font_(QApplication::font()) {
    QApplication::setFont(font);
    QLocale::setDefault(locale);
  }
  ~Dressed() {
    QApplication::setFont(font_);
    QLocale::setDefault(QLocale::c());
  }
  Dressed(const Dressed&) = delete;
  Dressed& operator=(const Dressed&) = delete;

 private:
  QFont font_;
};

}  // namespace

void visitEveryPlace(const QString& language, const QFont& font,
                     const std::function<void(MainWindow&, const QString&)>& visit) {
  const FreshSettings settings;
  const Dressed dressed(font, QLocale(language));
  const SpokenLanguage spoken(language);
  // A copy: a session is begun in it.
  const QString record = settings.filePath(QStringLiteral("squad.sqlite"));
  QVERIFY(QFile::copy(squadRecord(), record));
  MainWindow window({openRecordSource, openFilmFile, {}});
  window.start(record);
  window.resize(kWindow);
  window.show();
  QVERIFY(QTest::qWaitForWindowExposed(&window));
  const auto show = [&](const QString& place, const QString& name) {
    window.showPlace(place);
    QTest::qWait(kSettled_ms);
    // On a machine that is busy with other things the columns of wrapped words may still be on their way.
    for (int round = 0; round < kLayoutRounds; ++round)
      QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    visit(window, name);
  };
  const auto act = [&window](ActionId action) { window.actions().at(action)->trigger(); };

  for (int step = 1; step <= kSetupSteps; ++step) {
    show(QStringLiteral("setup"), QStringLiteral("setup %1").arg(step));
    act(ActionId::StepOn);
  }
  show(QStringLiteral("session"), QStringLiteral("session form"));
  auto& session = *window.findChild<SessionPlace*>();
  window.findChild<QLineEdit*>(QStringLiteral("sessionPlayers"))->setText(QStringLiteral("Ada, Ben"));
  window.findChild<QPushButton*>(QStringLiteral("beginSession"))->click();
  QTRY_VERIFY(session.desk().hand() != nullptr);
  show(QStringLiteral("session"), QStringLiteral("session"));
  act(ActionId::ShowSuggestion);
  QTRY_VERIFY(session.desk().suggestion() != nullptr);
  show(QStringLiteral("session"), QStringLiteral("session with a suggestion"));
  act(ActionId::ShowSuggestion);

  window.showPlace(QStringLiteral("review"));
  auto& review = *window.findChild<ReviewPlace*>();
  QTRY_VERIFY(review.desk().shot() != nullptr);
  show(QStringLiteral("review"), QStringLiteral("review"));
  act(ActionId::FilterShots);
  show(QStringLiteral("review"), QStringLiteral("review with a filter"));
  act(ActionId::FilterShots);
  window.showPlace(QStringLiteral("drills"));
  DrillDesk& drills = window.findChild<DrillsPlace*>()->desk();
  QTRY_VERIFY(drills.wasRead());
  for (const char* key : {"cut-fan", "break-control", "three-ball-pattern"}) {
    drills.choose(key);
    show(QStringLiteral("drills"), QStringLiteral("drill ") + QString::fromLatin1(key));
  }
  drills.choose("three-zones");
  drills.beginRun("Ada");
  QTRY_VERIFY(drills.run() != nullptr);
  act(ActionId::LogMade);
  show(QStringLiteral("drills"), QStringLiteral("a run of a drill"));
  act(ActionId::EndSession);
  drills.copy(QStringLiteral("My own"));
  show(QStringLiteral("drills"), QStringLiteral("a drill that is edited"));
  drills.dropDraft();
  window.showPlace(QStringLiteral("progress"));
  QTRY_VERIFY(window.findChild<ProgressPlace*>()->answer() != nullptr);
  show(QStringLiteral("progress"), QStringLiteral("progress"));
  QSignalSpy built(window.findChild<ReportsPlace*>(), &ReportsPlace::shown);
  window.showPlace(QStringLiteral("reports"));
  QVERIFY(built.wait(kPatience_ms));
  show(QStringLiteral("reports"), QStringLiteral("reports"));

  window.showPlace(QStringLiteral("players"));
  PeopleDesk& players = window.findChild<PlayersPlace*>()->desk();
  QTRY_VERIFY(players.wasRead() && !players.people().empty());
  show(QStringLiteral("players"), QStringLiteral("players"));
  players.choose(players.people().front().details.player.id);
  QTRY_VERIFY(players.person() != nullptr);
  show(QStringLiteral("players"), QStringLiteral("a player"));
  window.findChild<QPushButton*>(QStringLiteral("give-measuring"))->click();
  show(QStringLiteral("players"), QStringLiteral("a player's consent"));
}

}  // namespace ferrule
