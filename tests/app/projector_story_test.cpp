// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QDir>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QtTest>

#include "app/drills/drills_place.h"
#include "app/projector/projector_desk.h"
#include "app/setup/projector_page.h"
#include "app/setup/setup_place.h"
#include "core/base/text_file.h"
#include "core/physics/position_file.h"
#include "tests/app/session_screen.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// A projector over the table, whose screen is the test's own.
class ProjectorStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void aDrillsSetUpLiesOnTheCloth();
  void theMirroredSetUpFollowsTheDrill();
  void withoutAProjectorThePlaceSaysWhatToDo();
  void aSessionShowsWhereBallsBelong();
  void aSessionShowsTheSuggestion();
  void aPositionFileLiesOnTheCloth();
  void itIsBlackWhileSomebodyLeansIn();
  void theKeyForBlackLiftsTheButton();

 private:
  /// A set-up in use with a projector of the screen's size that looks straight down.
  void putUpProjector();
  void openDrills();
  template <class T>
  T* find(const char* name) const {
    return drills_->findChild<T*>(QString::fromLatin1(name));
  }
  /// Light on the cloth at a place, 0 to 255: the brightest of the pixels about it.
  [[nodiscard]] int lightAt(TablePoint place) const;
  [[nodiscard]] bool ringLies(TablePoint place) const;
  void waitForLight() const { QTRY_VERIFY(projector_->isOpen() && projector_->screen()->faded() >= 1.0); }

  std::unique_ptr<FreshSettings> settings_;
  std::unique_ptr<QWidget> window_;
  ActionSet* actions_ = nullptr;
  Projector truth_;
  std::unique_ptr<ProjectorDesk> projector_;
  std::unique_ptr<DrillsPlace> drills_;
};

namespace {

constexpr double kRadius_m = 0.028575;

}  // namespace

void ProjectorStoryTest::init() {
  settings_ = std::make_unique<FreshSettings>();
  projector_ = std::make_unique<ProjectorDesk>();
  window_ = std::make_unique<QWidget>();
  actions_ = new ActionSet(window_.get());
}

void ProjectorStoryTest::cleanup() {
  drills_.reset();
  projector_.reset();
  window_.reset();
  settings_.reset();
}

void ProjectorStoryTest::putUpProjector() {
  const QScreen* screen = QGuiApplication::primaryScreen();
  const QSize size = ProjectorScreen::pixelsOf(screen);
  truth_ = {};
  truth_.size = {size.width(), size.height()};
  // A third of a metre to the picture's tenth, no keystone.
  truth_.straightFromTable << 0.3, 0.0, 0.0, 0.0, -0.3, 0.0, 0.0, 0.0, 1.0;
  truth_.tags = 24;
  truth_.date = "2026-03-01";
  const QString folder = settings_->filePath("hall");
  QDir().mkpath(folder);
  for (const char* name : {"rig.json", "table.json"})
    QVERIFY(QFile::copy(kClipFolder + name, folder + "/" + name));
  QVERIFY(writeProjectorFile((folder + "/projector.json").toStdString(), truth_).has_value());
  setRigInUse({"Hall", folder + "/rig.json", folder + "/table.json"});
  projector_->chooseScreen(screen);
}

void ProjectorStoryTest::openDrills() {
  drills_ = std::make_unique<DrillsPlace>(
      *actions_, [] { return UtcMilliseconds{1'772'389'800'000}; }, projector_.get());
  drills_->resize(1280, 720);
  QSignalSpy changed(&drills_->desk(), &DrillDesk::changed);
  drills_->openRecord(settings_->filePath("drills.sqlite"));
  drills_->show();
  QTRY_VERIFY(drills_->desk().wasRead());
}

int ProjectorStoryTest::lightAt(TablePoint place) const {
  const QImage picture = projector_->screen()->grab().toImage();
  const auto pixel = projectorFromTable(truth_, place);
  if (!pixel) return 0;
  int most = 0;
  for (int dx = -2; dx <= 2; ++dx) {
    for (int dy = -2; dy <= 2; ++dy) {
      const QPoint at(static_cast<int>(std::lround(pixel->x)) + dx, static_cast<int>(std::lround(pixel->y)) + dy);
      if (picture.rect().contains(at)) most = std::max(most, qGray(picture.pixel(at)));
    }
  }
  return most;
}

bool ProjectorStoryTest::ringLies(TablePoint place) const {
  return lightAt(place + TableVector{kRadius_m, 0.0}) > 150 && lightAt(place - TableVector{kRadius_m, 0.0}) > 150 &&
         lightAt(place + TableVector{0.0, kRadius_m}) > 150;
}

void ProjectorStoryTest::aDrillsSetUpLiesOnTheCloth() {
  putUpProjector();
  openDrills();
  QVERIFY(!find<QLabel>("beamCaution")->isVisible());
  find<QPushButton>("projectSetUp")->click();
  waitForLight();
  QVERIFY(find<QLabel>("beamCaution")->isVisible());
  const MeasuredTable table = ProjectorDesk::tableInUse().value();
  const DrillDesk& desk = drills_->desk();
  const Drill played = desk.played();
  const Position balls = setUpOf(played.stations[desk.station()], table, desk.seed());
  QVERIFY(!balls.empty());
  for (const BallAt& ball : balls)
    QVERIFY2(ringLies(ball.position), qPrintable(QStringLiteral("%1 %2").arg(ball.position.x).arg(ball.position.y)));
  // Up again: black.
  find<QPushButton>("projectSetUp")->click();
  waitForLight();
  for (const BallAt& ball : balls)
    QVERIFY(!ringLies(ball.position));
  QVERIFY(!find<QLabel>("beamCaution")->isVisible());
}

void ProjectorStoryTest::theMirroredSetUpFollowsTheDrill() {
  putUpProjector();
  openDrills();
  find<QPushButton>("projectSetUp")->click();
  waitForLight();
  drills_->desk().mirror({true, false});
  const MeasuredTable table = ProjectorDesk::tableInUse().value();
  const Drill played = drills_->desk().played();
  const Position balls = setUpOf(played.stations[drills_->desk().station()], table, drills_->desk().seed());
  for (const BallAt& ball : balls)
    QTRY_VERIFY(ringLies(ball.position));
}

void ProjectorStoryTest::withoutAProjectorThePlaceSaysWhatToDo() {
  openDrills();
  find<QPushButton>("projectSetUp")->click();
  QVERIFY(find<QLabel>("drillsMessage")->text().contains("no projector"));
  QVERIFY(!find<QPushButton>("projectSetUp")->isChecked());
  QVERIFY(!projector_->isOpen());
  // One that was found on a screen of other pixels.
  putUpProjector();
  truth_.size = {1234, 567};
  QVERIFY(writeProjectorFile(settings_->filePath("hall/projector.json").toStdString(), truth_).has_value());
  find<QPushButton>("projectSetUp")->click();
  QVERIFY2(find<QLabel>("drillsMessage")->text().contains("1234"), qPrintable(find<QLabel>("drillsMessage")->text()));
}

void ProjectorStoryTest::aSessionShowsWhereBallsBelong() {
  SessionScreen screen;
  putUpProjector();
  projector_.reset();
  screen.find<QPushButton>("beginSession")->click();
  QTRY_VERIFY(screen.place().desk().hand() != nullptr);
  ProjectorDesk& projector = screen.place().projector();
  screen.find<QPushButton>("projectPutBack")->click();
  QTRY_COMPARE(projector.shown(), QString("projectPutBack"));
  QTRY_VERIFY(projector.screen()->faded() >= 1.0);
  projector.close();
  QTRY_VERIFY(!screen.find<QPushButton>("projectPutBack")->isChecked());
}

void ProjectorStoryTest::aSessionShowsTheSuggestion() {
  SessionScreen screen;
  putUpProjector();
  projector_.reset();
  screen.find<QPushButton>("beginSession")->click();
  QTRY_VERIFY(screen.place().desk().hand() != nullptr);
  HandDesk& desk = screen.place().desk();
  // One ball before a pocket.
  for (const BallAt& ball : Position(desk.hand()->session.state().balls)) {
    if (!ball.ball.isCueBall() && ball.ball.number() != 1) desk.take(ball.ball);
  }
  desk.put(BallName{1}, {0.8, 0.3}, 0.0);
  desk.put(kCueBall, {0.2, 0.1}, 0.0);
  screen.actions().at(ActionId::ShowSuggestion)->trigger();
  screen.find<QPushButton>("projectSuggestion")->click();
  QTRY_VERIFY(desk.shownPlan() != nullptr);
  ProjectorDesk& projector = screen.place().projector();
  QTRY_COMPARE(projector.shown(), QString("projectSuggestion"));
  // Some of the light is the way of the ball that is to be potted, dashed from its place.
  QTRY_VERIFY([&] {
    const QImage picture = projector.screen()->grab().toImage();
    long lit = 0;
    for (int y = 0; y < picture.height(); ++y) {
      for (int x = 0; x < picture.width(); ++x)
        lit += qGray(picture.pixel(x, y)) > 150 ? 1 : 0;
    }
    return lit > 300;
  }());
}

void ProjectorStoryTest::aPositionFileLiesOnTheCloth() {
  putUpProjector();
  SetupPlace place(*actions_, settings_->filePath("setup"), projector_.get());
  place.show();
  const QString good = settings_->filePath("position.json");
  const Position balls{{kCueBall, {-0.4, 0.1}}, {BallName{7}, {0.5, -0.3}}};
  const auto table = readMeasuredTable((kClipFolder + "table.json").toStdString()).value();
  QVERIFY(writeTextFile(good.toStdString(), positionFileText(table, balls)).has_value());
  projector_->showPosition(good, truth_);
  waitForLight();
  for (const BallAt& ball : balls)
    QTRY_VERIFY(ringLies(ball.position));
  QSignalSpy said(projector_.get(), &ProjectorDesk::said);
  const QString bad = settings_->filePath("bad.json");
  QVERIFY(writeTextFile(bad.toStdString(), "{").has_value());
  projector_->showPosition(bad, truth_);
  QVERIFY(said.last().front().toString().contains("bad.json"));
  // Without a projector that was found the page says so.
  place.findChild<ProjectorPage*>()->showPosition(good);
  QVERIFY(place.findChild<QLabel*>("setupMessage")->text().contains("not known yet"));
}

void ProjectorStoryTest::itIsBlackWhileSomebodyLeansIn() {
  putUpProjector();
  openDrills();
  find<QPushButton>("projectSetUp")->click();
  waitForLight();
  const MeasuredTable table = ProjectorDesk::tableInUse().value();
  const Drill played = drills_->desk().played();
  const TablePoint place = setUpOf(played.stations[0], table, drills_->desk().seed()).front().position;
  QVERIFY(ringLies(place));
  projector_->setSomebodyLeans(true);
  QVERIFY(projector_->isHeldBack());
  waitForLight();
  QVERIFY(!ringLies(place));
  // Stepping back and in again within two seconds brings no light: nothing flickers.
  projector_->setSomebodyLeans(false);
  QTest::qWait(300);
  QVERIFY(projector_->isHeldBack());
  projector_->setSomebodyLeans(true);
  QTest::qWait(2300);
  QVERIFY(projector_->isHeldBack() && !ringLies(place));
  projector_->setSomebodyLeans(false);
  QTRY_VERIFY(!projector_->isHeldBack());
  QTRY_VERIFY(ringLies(place));
  QVERIFY(find<QPushButton>("projectSetUp")->isChecked());
}

void ProjectorStoryTest::theKeyForBlackLiftsTheButton() {
  putUpProjector();
  openDrills();
  find<QPushButton>("projectSetUp")->click();
  waitForLight();
  QTest::keyClick(projector_->screen(), Qt::Key_B);
  QVERIFY(!find<QPushButton>("projectSetUp")->isChecked());
  QVERIFY(!find<QLabel>("beamCaution")->isVisible());
}

FERRULE_TEST(ProjectorStoryTest)
#include "projector_story_test.moc"
