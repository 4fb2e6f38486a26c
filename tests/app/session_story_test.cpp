// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QToolButton>
#include <QtTest>

#include "app/session/session_place.h"
#include "app/session/table_editor.h"
#include "app/setup/rig_in_use.h"
#include "core/record/record.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The Session place alone, as a coach uses it without a camera.
class SessionStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void aSessionIsBegunFromTheForm();
  void aShotIsLoggedByKeysAlone();
  void aPotWithoutABallIsAskedFor();
  void aBallIsDraggedAndDrawnToTheCushion();
  void aBallLetGoBesideTheTableIsTakenAndBroughtBack();
  void whatFellOnTheBreakIsDraggedOrSaidByKeys();
  void arrowKeysMoveTheChosenBallByAMillimetre();
  void undoTakesEverythingBack();
  void aFoulIsChosenFromTheList();
  void aSessionThatWasBrokenOffCanBeResumed();
  void anEndedSessionStandsInTheRecord();
  void aTableFileThatIsMissingIsOneSentence();
  void aSuggestionIsShownWhenAskedForAndKeptWithItsShot();
  void anotherPlanAndAnotherStrikeCanBeLookedAt();
  void anEndedSessionIsJudged();
  void ballsArePutWhereAPhotoShowsThem();
  void aGuestIsAskedForWhenTheSessionEnds();
  void aGuestMayStayOne();

 private:
  void open();
  void begin(const char* game = "nine-ball");
  template <class T>
  T* find(const char* name) const {
    // Pages that are not shown may have fields of the same name.
    const QList<T*> all = place_->findChildren<T*>(QString::fromLatin1(name));
    for (T* one : all) {
      if (one->isVisible()) return one;
    }
    return all.isEmpty() ? nullptr : all.front();
  }
  TableEditor& table() const { return *find<TableEditor>("tableEditor"); }
  [[nodiscard]] const HandState& state() const { return place_->desk().hand()->session.state(); }
  [[nodiscard]] QPoint onScreen(BallName ball) const {
    return table().mapping().screenFromTable(ballIn(state().balls, ball)->position).toPoint();
  }
  void drag(const QPoint& from, const QPoint& to);
  void press(ActionId action) { place_->act(action); }

  std::unique_ptr<QTemporaryDir> folder_;
  std::unique_ptr<QWidget> window_;
  ActionSet* actions_ = nullptr;  ///< the window's
  std::unique_ptr<SessionPlace> place_;
  UtcMilliseconds now_ = 1'772'389'800'000;
};

namespace {

const QString kClip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");

}  // namespace

void SessionStoryTest::init() {
  folder_ = std::make_unique<QTemporaryDir>();
  QLocale::setDefault(QLocale::c());
  open();
}

void SessionStoryTest::cleanup() {
  place_.reset();
  window_.reset();
  folder_.reset();
}

void SessionStoryTest::open() {
  window_ = std::make_unique<QWidget>();
  actions_ = new ActionSet(window_.get());
  place_ = std::make_unique<SessionPlace>(*actions_, [this] { return now_ += 5000; });
  place_->resize(1200, 700);
  QSignalSpy changed(&place_->desk(), &HandDesk::changed);
  place_->openRecord(folder_->filePath("sessions.sqlite"));
  place_->show();
  QVERIFY(changed.wait(kPatience_ms));
}

void SessionStoryTest::begin(const char* game) {
  find<QLineEdit>("sessionName")->setText("Evening");
  find<QLineEdit>("sessionPlayers")->setText("Ada, Ben");
  find<QComboBox>("sessionGame")->setCurrentIndex(find<QComboBox>("sessionGame")->findData(game));
  QSignalSpy changed(&place_->desk(), &HandDesk::changed);
  find<QPushButton>("beginSession")->click();
  QVERIFY(changed.wait(kPatience_ms));
  QVERIFY(place_->desk().hand() != nullptr);
}

void SessionStoryTest::drag(const QPoint& from, const QPoint& to) {
  QTest::mousePress(&table(), Qt::LeftButton, {}, from);
  QTest::mouseMove(&table(), (from + to) / 2);
  QTest::mouseMove(&table(), to);
  QTest::mouseRelease(&table(), Qt::LeftButton, {}, to);
}

void SessionStoryTest::aSessionIsBegunFromTheForm() {
  QVERIFY(find<QWidget>("startForm")->isVisible());
  begin();
  QVERIFY(!find<QWidget>("startForm")->isVisible());
  QCOMPARE(find<QLabel>("turn")->text(), QString("Ada breaks"));
  QCOMPARE(state().balls.size(), std::size_t{10});
}

void SessionStoryTest::aShotIsLoggedByKeysAlone() {
  begin();
  press(ActionId::LogBreak);
  table().setFocus();
  // Tab goes through the balls: the cue ball, then the 1.
  QTest::keyClick(&table(), Qt::Key_Tab);
  QTest::keyClick(&table(), Qt::Key_Tab);
  QVERIFY(place_->desk().target() == BallName{1});
  place_->desk().aimAt(PocketName::FootLeft);
  press(ActionId::LogMade);
  QCOMPARE(state().shots.size(), std::size_t{2});
  QVERIFY(ballIn(state().balls, BallName{1}) == nullptr);
  QCOMPARE(find<QListWidget>("loggedShots")->count(), 2);
  QVERIFY(find<QListWidget>("loggedShots")->item(0)->text().contains("made"));
}

void SessionStoryTest::aPotWithoutABallIsAskedFor() {
  begin();
  press(ActionId::LogMade);
  QVERIFY(state().shots.empty());
  QVERIFY(find<QLabel>("sessionMessage")->isVisible());
  press(ActionId::LogBreak);
  QVERIFY(!find<QLabel>("sessionMessage")->isVisible());
}

void SessionStoryTest::aBallIsDraggedAndDrawnToTheCushion() {
  begin();
  const MeasuredTable& measured = place_->desk().hand()->session.terms().table;
  const double rail_m = measured.table.width_m / 2.0 - measured.balls.radius_m();
  drag(onScreen(kCueBall), table().mapping().screenFromTable({-0.4, rail_m - 0.006}).toPoint());
  QCOMPARE(ballIn(state().balls, kCueBall)->position.y, rail_m);
  QVERIFY(std::abs(ballIn(state().balls, kCueBall)->position.x + 0.4) < 0.01);
}

void SessionStoryTest::aBallLetGoBesideTheTableIsTakenAndBroughtBack() {
  begin();
  drag(onScreen(kCueBall), {2, 2});
  QVERIFY(ballIn(state().balls, kCueBall) == nullptr);
  auto* bring = find<QToolButton>("bring-cue");
  QVERIFY(bring != nullptr);
  bring->click();
  QVERIFY(ballIn(state().balls, kCueBall) != nullptr);
}

void SessionStoryTest::whatFellOnTheBreakIsDraggedOrSaidByKeys() {
  begin();
  press(ActionId::LogFell);
  QVERIFY(find<QLabel>("sessionMessage")->isVisible());
  press(ActionId::LogBreak);
  const Table& measured = place_->desk().hand()->session.terms().table.table;
  const Pocket pocket = pockets(measured)[static_cast<std::size_t>(PocketName::HeadRight)];
  const TablePoint inside = pocket.mouth + pocket.inward * 0.05;
  drag(onScreen(BallName{2}), table().mapping().screenFromTable(inside).toPoint());
  QCOMPARE(state().shots.back().said.others, (std::vector<PocketedBall>{{BallName{2}, PocketName::HeadRight}}));
  QVERIFY(ballIn(state().balls, BallName{2}) == nullptr);
  // By keys: tab to the 1, page keys to the pocket.
  table().setFocus();
  QTest::keyClick(&table(), Qt::Key_Tab);
  QTest::keyClick(&table(), Qt::Key_Tab);
  const auto likely = place_->desk().pocket();
  QTest::keyClick(&table(), Qt::Key_PageDown);
  QVERIFY(place_->desk().pocket() != likely);
  for (int i = 0; i < 6 && place_->desk().pocket() != PocketName::FootLeft; ++i)
    QTest::keyClick(&table(), Qt::Key_PageUp);
  press(ActionId::LogFell);
  QCOMPARE(state().shots.back().said.others.back(), (PocketedBall{BallName{1}, PocketName::FootLeft}));
  QVERIFY(find<QListWidget>("loggedShots")->item(0)->text().endsWith("break; pocketed: 2, 1"));
  QCOMPARE(find<QLabel>("turn")->text().left(3), QString("Ada"));
}

void SessionStoryTest::arrowKeysMoveTheChosenBallByAMillimetre() {
  begin();
  table().setFocus();
  QTest::keyClick(&table(), Qt::Key_Tab);
  const TablePoint before = ballIn(state().balls, kCueBall)->position;
  QTest::keyClick(&table(), Qt::Key_Left);
  QTest::keyClick(&table(), Qt::Key_Up, Qt::ShiftModifier);
  const TableVector moved = ballIn(state().balls, kCueBall)->position - before;
  // Whichever way the table is turned, one axis moves by 1 mm and the other by 10.
  const double least = std::min(std::abs(moved.x), std::abs(moved.y));
  const double most = std::max(std::abs(moved.x), std::abs(moved.y));
  QVERIFY(std::abs(least - 0.001) < 1e-9);
  QVERIFY(std::abs(most - 0.010) < 1e-9);
  QTest::keyClick(&table(), Qt::Key_Delete);
  QVERIFY(ballIn(state().balls, kCueBall) == nullptr);
}

void SessionStoryTest::undoTakesEverythingBack() {
  begin();
  const HandState racked = state();
  press(ActionId::LogBreak);
  place_->desk().put(kCueBall, {0.1, 0.1}, 0.0);
  press(ActionId::Undo);
  press(ActionId::Undo);
  QCOMPARE(state(), racked);
  press(ActionId::Redo);
  QCOMPARE(state().shots.size(), std::size_t{1});
}

void SessionStoryTest::aFoulIsChosenFromTheList() {
  begin();
  press(ActionId::LogBreak);
  place_->desk().choose(BallName{1});
  press(ActionId::LogFoul);
  auto* menu = find<QMenu>("foulMenu");
  QVERIFY(menu != nullptr);
  const auto actions = menu->actions();
  QVERIFY(!actions.isEmpty());
  actions[4]->trigger();  // the double hit
  menu->close();
  QVERIFY(state().shots.back().said.foul == FoulKind::DoubleHit);
  QVERIFY(find<QLabel>("lastRuling")->text().startsWith("Foul"));
}

void SessionStoryTest::aSessionThatWasBrokenOffCanBeResumed() {
  begin();
  press(ActionId::LogBreak);
  const HandState left = state();
  place_.reset();  // the window is gone, the session was not ended
  open();
  auto* resume = find<QPushButton>("resumeSession");
  QVERIFY(resume->isVisible());
  resume->click();
  QCOMPARE(state(), left);
}

void SessionStoryTest::anEndedSessionStandsInTheRecord() {
  begin();
  press(ActionId::LogBreak);
  press(ActionId::LogSafety);
  press(ActionId::EndSession);
  QVERIFY(find<QWidget>("startForm")->isVisible());
  place_.reset();
  auto record = Record::open(folder_->filePath("sessions.sqlite").toStdString());
  QVERIFY(record.has_value());
  const auto sessions = record->sessions();
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front().name, std::string("Evening"));
  QCOMPARE(sessions->front().shots, 2);
  const auto shots = record->shots(record->frames(sessions->front().id)->front().id);
  QVERIFY(shots->at(1).outcome == Outcome::Safety);
  QVERIFY(!record->draft("hand-session")->has_value());
}

void SessionStoryTest::aTableFileThatIsMissingIsOneSentence() {
  find<QComboBox>("sessionTable")->setEditText("no-such-table.json");
  find<QPushButton>("beginSession")->click();
  QVERIFY(find<QLabel>("sessionMessage")->isVisible());
  QVERIFY(find<QLabel>("sessionMessage")->text().contains("no-such-table.json"));
  QVERIFY(place_->desk().hand() == nullptr);
}

void SessionStoryTest::aSuggestionIsShownWhenAskedForAndKeptWithItsShot() {
  begin();
  press(ActionId::LogBreak);
  QVERIFY(!find<QLabel>("suggestion")->isVisible());
  press(ActionId::ShowSuggestion);
  QVERIFY(find<QLabel>("suggestion")->isVisible());
  QTRY_VERIFY(place_->desk().suggestion() != nullptr);
  QTRY_VERIFY(find<QListWidget>("suggestedPlans")->count() > 0);
  QVERIFY(find<QListWidget>("suggestedPlans")->item(0)->text().startsWith("1  "));
  QVERIFY(place_->desk().shownPlan() != nullptr);
  press(ActionId::LogSafety);
  // Hidden again, and remembered.
  QVERIFY(!find<QLabel>("suggestion")->isVisible());
  QVERIFY(!state().shots.back().suggestion.empty());
  QVERIFY(state().shots.front().suggestion.empty());
}

void SessionStoryTest::anotherPlanAndAnotherStrikeCanBeLookedAt() {
  begin();
  press(ActionId::LogBreak);
  HandDesk& desk = place_->desk();
  desk.put(BallName(1), {0.9, -0.35}, 0.0);
  press(ActionId::ShowSuggestion);
  QTRY_VERIFY(desk.suggestion() != nullptr && desk.suggestion()->final);
  auto* plans = find<QListWidget>("suggestedPlans");
  QVERIFY(plans->count() > 1);
  plans->setCurrentRow(1);
  QTRY_COMPARE(desk.shownPlan()->ranked.rank, 2);
  QVERIFY(!desk.shownPlan()->ways.empty());
  // A little faster: the same plan, played anew.
  const PlayedPlan before = *desk.shownPlan();
  auto* speed = find<QDoubleSpinBox>("wishedSpeed");
  speed->setValue(speed->value() + 0.3);
  QTRY_VERIFY(desk.shownPlan()->ranked.rank == 0 || desk.triedInVain());
  if (!desk.triedInVain()) {
    QCOMPARE(desk.shownPlan()->ranked.plan.ball, before.ranked.plan.ball);
    QVERIFY(desk.shownPlan()->ranked.plan.strike.speed_mps > before.ranked.plan.strike.speed_mps);
  }
  // For the player at the table, as the record knows them, until another level is chosen.
  QVERIFY(desk.suggestion()->estimate.has_value());
  auto* level = find<QComboBox>("suggestionLevel");
  level->setCurrentIndex(3);
  emit level->activated(3);
  QTRY_VERIFY(desk.suggestion() != nullptr && desk.suggestion()->final);
  QVERIFY(!desk.suggestion()->estimate.has_value());
  QCOMPARE(desk.suggestion()->scatter, scatterOf(PlayerLevel::Expert));
}

void SessionStoryTest::anEndedSessionIsJudged() {
  begin();
  press(ActionId::LogBreak);
  HandDesk& desk = place_->desk();
  desk.put(BallName(1), {0.9, -0.35}, 0.0);
  desk.choose(BallName(1));
  press(ActionId::LogMissed);
  const QString path = desk.recordPath();
  const FrameId frame = desk.hand()->place.frame;
  QSignalSpy judged(&desk, &HandDesk::judged);
  press(ActionId::EndSession);
  QTRY_COMPARE(judged.count(), 1);
  auto record = Record::open(path.toStdString());
  QVERIFY(record.has_value());
  const auto shots = record->shots(frame);
  QCOMPARE(shots->size(), std::size_t{2});
  QVERIFY(record->shot(shots->back().id)->suggestion.has_value());
  QVERIFY(!record->shot(shots->back().id)->suggestion->shown);
}

void SessionStoryTest::ballsArePutWhereAPhotoShowsThem() {
  const FreshSettings settings;
  begin("eight-ball");
  const Position racked = state().balls;
  auto& message = *find<QLabel>("sessionMessage");
  place_->putFromPhoto(kClip + QStringLiteral("stop-shot.mp4"));
  QVERIFY(message.text().contains("Set-up"));  // no rig yet
  setRigInUse({QStringLiteral("club"), kClip + QStringLiteral("rig.json"), kClip + QStringLiteral("table.json")});
  place_->putFromPhoto(kClip + QStringLiteral("rig.json"));
  QTRY_VERIFY(message.text().contains("rig.json"));
  QCOMPARE(state().balls, racked);
  place_->putFromPhoto(kClip + QStringLiteral("stop-shot.mp4"));
  QTRY_COMPARE(state().balls.size(), std::size_t{2});
  // Where truth.json of the clip has the 3.
  QVERIFY(message.text().contains("check them"));
  QVERIFY(distance(ballIn(state().balls, BallName(3))->position, {0.5865, 0.19643}) < 0.002);
  press(ActionId::Undo);
  QCOMPARE(state().balls, racked);
}

void SessionStoryTest::aGuestIsAskedForWhenTheSessionEnds() {
  const std::string path = folder_->filePath("sessions.sqlite").toStdString();
  {
    auto record = Record::open(path);
    Player guest;
    guest.name = "Ben";
    guest.guest = true;
    QVERIFY(record->addPlayer(guest).has_value());
    Player known;
    known.name = "Cleo";
    QVERIFY(record->addPlayer(known).has_value());
  }
  begin();
  QVERIFY(!find<QWidget>("guestBar")->isVisible());
  press(ActionId::RackBalls);
  press(ActionId::LogBreak);
  press(ActionId::EndSession);
  QTRY_VERIFY(find<QWidget>("guestBar")->isVisible());
  QVERIFY(find<QLabel>("guestWords")->text().contains("Ben"));
  auto* who = find<QComboBox>("guestIs");
  QVERIFY(who->findText("Cleo") >= 0);
  QVERIFY(who->findText("Ada") < 0);  // who sat at the same table
  // Nobody has to answer before going on.
  QVERIFY(find<QPushButton>("beginSession")->isEnabled());
  who->setCurrentText("Cleo");
  find<QPushButton>("nameGuest")->click();
  QTRY_VERIFY(find<QPushButton>("takeBackGuest")->isVisible());
  auto record = Record::open(path);
  QCOMPARE(record->sessions()->front().players, (std::vector<std::string>{"Ada", "Cleo"}));
  find<QPushButton>("takeBackGuest")->click();
  QTRY_VERIFY(find<QPushButton>("nameGuest")->isVisible());
  QCOMPARE(record->sessions()->front().players, (std::vector<std::string>{"Ada", "Ben"}));
  // Or somebody new.
  find<QComboBox>("guestIs")->setCurrentText("Dee");
  find<QPushButton>("nameGuest")->click();
  QTRY_COMPARE(record->sessions()->front().players, (std::vector<std::string>{"Ada", "Dee"}));
  QVERIFY(!record->playerNamed("Dee")->value().guest);
}

void SessionStoryTest::aGuestMayStayOne() {
  {
    auto record = Record::open(folder_->filePath("sessions.sqlite").toStdString());
    Player guest;
    guest.name = "Ben";
    guest.guest = true;
    QVERIFY(record->addPlayer(guest).has_value());
  }
  begin();
  press(ActionId::RackBalls);
  press(ActionId::LogBreak);
  press(ActionId::EndSession);
  QTRY_VERIFY(find<QWidget>("guestBar")->isVisible());
  find<QPushButton>("leaveGuest")->click();
  QVERIFY(!find<QWidget>("guestBar")->isVisible());
  QVERIFY(Record::open(folder_->filePath("sessions.sqlite").toStdString())->playerNamed("Ben")->value().guest);
}

FERRULE_TEST(SessionStoryTest)
#include "session_story_test.moc"
