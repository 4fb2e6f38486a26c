// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>
#include <QtTest>

#include "app/drills/drill_picture.h"
#include "app/drills/drills_place.h"
#include "app/drills/set_up_section.h"
#include "app/drills/zone_editor.h"
#include "app/live/paced_film.h"
#include "app/progress/chart_view.h"
#include "app/setup/rig_in_use.h"
#include "app/words/drill_words.h"
#include "core/drills/drill_file.h"
#include "core/measure/photo_position.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The place of drills alone, as a player uses it without a camera.
class DrillsStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void everyBuiltInDrillHasItsWords();
  void wordsAndTagsFindADrill();
  void aMirroredDrillMovesItsBalls();
  void aHeadAndFootDrillCannotBeTurnedRound();
  void aRunIsPlayedByKeysAndStandsInTheRecord();
  void aClickPutsTheLeaveAndDecidesTheZone();
  void aTryIsTakenBackAndPutAgain();
  void aScratchMeetsNothing();
  void twoRunsShowWhetherTheyDiffer();
  void theLeaveIsMovedByKeys();
  void tableFilesThatAreMissingAreOneSentence();
  void importAndExportGoThroughAFile();
  void aBrokenDrillFileIsOneSentence();
  void aNewDrillIsDraggedIntoShapeAndKept();
  void aBallAtACushionStaysThereOnEveryTable();
  void theZoneIsDraggedAndWidened();
  void setUpsAreAddedAndRemoved();
  void aDrillThatCannotBePlayedIsNotKept();
  void anEditIsTakenBack();
  void aDeletedDrillComesBackAndItsRunsStay();
  void aJumpShotCarriesItsCaution();
  void triesAreCountedFromARecordedSession();
  void aRunThatWasBrokenOffIsGoneOnWith();
  void theCameraSaysHowFarEachBallIsOff();
  void withoutARigTheSetUpCannotBeChecked();

 private:
  void open();
  template <class T>
  T* find(const char* name) const {
    return place_->findChild<T*>(QString::fromLatin1(name));
  }
  void choose(const char* key) const { place_->desk().choose(key); }
  void begin();
  void end();
  DrillPicture& picture() const { return *find<DrillPicture>("drillPicture"); }
  void click(TablePoint at) {
    QTest::mouseClick(&picture(), Qt::LeftButton, {}, picture().mapping().screenFromTable(at).toPoint());
  }
  void makeNew();
  void keep();
  ZoneEditor& editor() const { return *find<ZoneEditor>("drillEditor"); }
  void drag(TablePoint from, TablePoint to);
  [[nodiscard]] const DrillStation& edited() const { return place_->desk().drill().stations[place_->desk().station()]; }
  [[nodiscard]] QString message() const { return find<QLabel>("drillsMessage")->text(); }
  [[nodiscard]] const KeptRun& run() const { return *place_->desk().run(); }

  std::unique_ptr<FreshSettings> settings_;
  std::unique_ptr<QWidget> window_;
  ActionSet* actions_ = nullptr;  ///< the window's
  std::unique_ptr<DrillsPlace> place_;
  UtcMilliseconds now_ = 1'772'389'800'000;
};

void DrillsStoryTest::init() {
  settings_ = std::make_unique<FreshSettings>();
  open();
}

void DrillsStoryTest::cleanup() {
  place_.reset();
  window_.reset();
  settings_.reset();
}

void DrillsStoryTest::open() {
  window_ = std::make_unique<QWidget>();
  actions_ = new ActionSet(window_.get());
  place_ = std::make_unique<DrillsPlace>(*actions_, [this] { return now_ += 60'000; });
  place_->resize(1280, 720);
  place_->openRecord(settings_->filePath("drills.sqlite"));
  place_->show();
  QTRY_VERIFY(place_->desk().wasRead());
}

void DrillsStoryTest::begin() {
  find<QPushButton>("beginRun")->click();
  QTRY_VERIFY(place_->desk().run() != nullptr);
}

void DrillsStoryTest::end() {
  const std::size_t before = place_->desk().shelf().runs.size();
  place_->act(ActionId::EndSession);
  QTRY_VERIFY(place_->desk().shelf().runs.size() > before);
}

void DrillsStoryTest::everyBuiltInDrillHasItsWords() {
  QSet<QString> titles;
  for (const Drill& drill : builtInDrills()) {
    QVERIFY2(drillTitle(drill) != QString::fromStdString(drill.key), drill.key.c_str());
    QVERIFY2(drillText(drill).size() > 40, drill.key.c_str());
    titles << drillTitle(drill);
    for (const DrillStation& station : drill.stations) {
      for (const DrillGoal& goal : station.goals)
        QVERIFY(!goalWords(goal, Numbers()).isEmpty());
    }
  }
  QCOMPARE(titles.size(), 25);
  QVERIFY(cautionSentence(DrillCaution::Jump).contains("eye protection"));
}

void DrillsStoryTest::wordsAndTagsFindADrill() {
  auto* list = find<QListWidget>("drillList");
  QCOMPARE(list->count(), 25);
  find<QLineEdit>("findDrill")->setText("KICK");
  QCOMPARE(list->count(), 2);
  find<QLineEdit>("findDrill")->clear();
  auto* tag = find<QComboBox>("drillTag");
  tag->setCurrentIndex(tag->findData("break"));
  QCOMPARE(list->count(), 1);
  list->setCurrentRow(0);
  QCOMPARE(place_->desk().drill().key, std::string("break-control"));
  QVERIFY(find<QLabel>("drillCaution")->isVisibleTo(place_.get()));
}

void DrillsStoryTest::aMirroredDrillMovesItsBalls() {
  choose("thin-cut");
  const QString before = find<QLabel>("drillPlaces")->text();
  QVERIFY(before.contains("3.44 across"));
  find<QCheckBox>("mirrorSides")->click();
  QVERIFY(find<QLabel>("drillPlaces")->text().contains("0.56 across"));
  QVERIFY(place_->desk().played().stations[0].goals[0].pocket == PocketName::FootLeft);
}

void DrillsStoryTest::aHeadAndFootDrillCannotBeTurnedRound() {
  choose("lag");
  QVERIFY(!find<QCheckBox>("mirrorEnds")->isEnabled());
  choose("cut-fan");
  find<QCheckBox>("mirrorEnds")->click();
  QVERIFY(place_->desk().mirroring().ends);
  choose("break-control");
  QVERIFY(!place_->desk().mirroring().ends);
}

void DrillsStoryTest::aRunIsPlayedByKeysAndStandsInTheRecord() {
  choose("cut-fan");
  find<QComboBox>("runPlayer")->setCurrentText("Ada");
  begin();
  QVERIFY(find<QWidget>("runPanel")->isVisible());
  for (int i = 0; i < 7; ++i)
    place_->act(ActionId::LogMade);
  place_->act(ActionId::LogThick);
  place_->act(ActionId::LogThin);
  place_->act(ActionId::LogMissed);
  QVERIFY(find<QLabel>("runScore")->text().contains(QStringLiteral("7 of 10: 70\u00a0%, between 40 and 89\u00a0%")));
  QVERIFY(find<QLabel>("runScore")->text().contains("thick 1, thin 1"));
  QCOMPARE(find<QListWidget>("runTries")->count(), 10);
  // The first station has had its ten.
  QCOMPARE(place_->desk().station(), std::size_t{1});
  end();
  QVERIFY(!find<QWidget>("runPanel")->isVisible());
  QVERIFY(find<ChartView>("drillHistory")->chart().has_value());
  place_.reset();
  open();
  QCOMPARE(place_->desk().shelf().runs.size(), std::size_t{1});
  const KeptRun& kept = place_->desk().shelf().runs.front();
  QCOMPARE(kept.terms.player, std::string("Ada"));
  QCOMPARE(kept.trials.size(), std::size_t{10});
  QVERIFY(kept.trials[7].missSide == MissSide::Under);
  QVERIFY(kept.ended.has_value());
}

void DrillsStoryTest::aClickPutsTheLeaveAndDecidesTheZone() {
  choose("three-zones");
  begin();
  const Table table = place_->desk().table().table;
  // Into the first zone, about (1.40, 0.25).
  click(tableFromSurface(table, {1.42, 0.27}));
  QVERIFY(place_->desk().leave().has_value());
  place_->act(ActionId::LogMade);
  QCOMPARE(run().trials.size(), std::size_t{1});
  QVERIFY(run().trials[0].succeeded() == true);
  QVERIFY(!place_->desk().leave().has_value());
  // The second try asks for another zone.
  QCOMPARE(place_->desk().station(), std::size_t{1});
  click(tableFromSurface(table, {1.0, 0.5}));
  find<QCheckBox>("goal1")->click();
  QVERIFY(place_->desk().said().front() == true);
  place_->act(ActionId::LogMade);
  QVERIFY(run().trials[1].goals[0].met == true);
  QVERIFY(run().trials[1].goals[1].met == false);
  // Without a leave what was said stands.
  find<QCheckBox>("goal1")->click();
  place_->act(ActionId::LogMade);
  QVERIFY(run().trials[2].goals[1].met == true);
  // And what nobody said stays open.
  place_->act(ActionId::LogMade);
  QVERIFY(!run().trials[3].goals[1].met.has_value());
  end();
}

void DrillsStoryTest::aTryIsTakenBackAndPutAgain() {
  choose("lag");
  begin();
  place_->act(ActionId::LogMade);
  place_->act(ActionId::LogMissed);
  place_->act(ActionId::Undo);
  QCOMPARE(run().trials.size(), std::size_t{1});
  place_->act(ActionId::Redo);
  QCOMPARE(run().trials.size(), std::size_t{2});
  place_->act(ActionId::Undo);
  end();
  QCOMPARE(place_->desk().shelf().runs.front().trials.size(), std::size_t{1});
}

void DrillsStoryTest::aScratchMeetsNothing() {
  choose("thin-cut");
  begin();
  place_->act(ActionId::LogScratch);
  QVERIFY(run().trials[0].succeeded() == false);
  end();
}

void DrillsStoryTest::twoRunsShowWhetherTheyDiffer() {
  choose("object-ball-pace");
  for (const int made : {2, 10}) {
    begin();
    for (int i = 0; i < 10; ++i)
      place_->act(i < made ? ActionId::LogMade : ActionId::LogMissed);
    end();
  }
  QVERIFY(find<QLabel>("drillChange")->text().contains("more than chance"));
  QVERIFY(find<QLabel>("drillChange")->text().contains("Best run: 10 of 10"));
  QCOMPARE(std::get<SeriesChart>(*find<ChartView>("drillHistory")->chart()).marks.size(), std::size_t{2});
}

void DrillsStoryTest::theLeaveIsMovedByKeys() {
  choose("lag");
  begin();
  picture().setFocus();
  QTest::keyClick(&picture(), Qt::Key_Left, Qt::ShiftModifier);
  QTest::keyClick(&picture(), Qt::Key_Up);
  QVERIFY(place_->desk().leave().has_value());
  QVERIFY(std::abs(place_->desk().leave()->x + 0.100) < 1e-9);
  QVERIFY(std::abs(place_->desk().leave()->y - 0.010) < 1e-9);
  QTest::keyClick(&picture(), Qt::Key_Delete);
  QVERIFY(!place_->desk().leave().has_value());
  place_->act(ActionId::EndSession);
}

void DrillsStoryTest::tableFilesThatAreMissingAreOneSentence() {
  find<QComboBox>("runTable")->setCurrentText("/no/such/table.json");
  find<QPushButton>("beginRun")->click();
  QVERIFY(message().contains("/no/such/table.json"));
  QVERIFY(place_->desk().run() == nullptr);
}

void DrillsStoryTest::importAndExportGoThroughAFile() {
  choose("cut-fan");
  const QString path = settings_->filePath("fan.json");
  place_->exportDrill(path);
  QVERIFY(message().contains("fan.json"));
  place_->importDrills(path);
  QTRY_COMPARE(find<QListWidget>("drillList")->count(), 26);
  const Drill& own = place_->desk().shelf().own.front();
  QVERIFY(own.key != "cut-fan");
  QCOMPARE(own.title, std::string("Cut fan"));
  QCOMPARE(own.stations, builtInDrill("cut-fan")->stations);
  place_->act(ActionId::Undo);
  QTRY_COMPARE(find<QListWidget>("drillList")->count(), 25);
  place_->act(ActionId::Redo);
  QTRY_COMPARE(find<QListWidget>("drillList")->count(), 26);
}

void DrillsStoryTest::aBrokenDrillFileIsOneSentence() {
  const QString path = settings_->filePath("broken.json");
  QFile file(path);
  QVERIFY(file.open(QIODevice::WriteOnly));
  file.write(R"({"format": "ferrule-drills/1", "drills": [{"key": "a", "stations": [{"goals": [], "trials": 3}]}]})");
  file.close();
  place_->importDrills(path);
  QVERIFY(message().contains("Nothing of"));
  place_->importDrills(settings_->filePath("none.json"));
  QVERIFY(message().contains("none.json"));
  QVERIFY(place_->desk().shelf().own.empty());
}

void DrillsStoryTest::makeNew() {
  find<QPushButton>("newDrill")->click();
  QVERIFY(place_->desk().isEditing());
  QVERIFY(find<QWidget>("editorPanel")->isVisible());
}

void DrillsStoryTest::keep() {
  const std::string key = place_->desk().drill().key;
  find<QPushButton>("keepDrill")->click();
  QTRY_VERIFY(place_->desk().isOwn(key));
  QVERIFY(!place_->desk().isEditing());
}

void DrillsStoryTest::drag(TablePoint from, TablePoint to) {
  const QPoint start = editor().mapping().screenFromTable(from).toPoint();
  const QPoint end = editor().mapping().screenFromTable(to).toPoint();
  QTest::mousePress(&editor(), Qt::LeftButton, {}, start);
  QTest::mouseMove(&editor(), (start + end) / 2);
  QTest::mouseMove(&editor(), end);
  QTest::mouseRelease(&editor(), Qt::LeftButton, {}, end);
}

void DrillsStoryTest::aNewDrillIsDraggedIntoShapeAndKept() {
  makeNew();
  const Table& table = place_->desk().table().table;
  drag(tableFromSurface(table, {1.5, 0.5}), tableFromSurface(table, {1.05, 0.7}));
  const SurfacePlace put = edited().balls[0].place;
  QVERIFY(std::abs(put.along - 1.05) < 0.02 && std::abs(put.across - 0.7) < 0.02);
  // A click on another pocket aims there.
  const TablePoint mouth = pockets(table)[static_cast<std::size_t>(PocketName::SideLeft)].mouth;
  QTest::mouseClick(&editor(), Qt::LeftButton, {}, editor().mapping().screenFromTable(mouth).toPoint());
  QVERIFY(edited().goals[0].pocket == PocketName::SideLeft);
  find<QLineEdit>("editTitle")->setText("Long into the side");
  QTest::keyClick(find<QLineEdit>("editTitle"), Qt::Key_Return);
  find<QLineEdit>("editTags")->setText("side-pocket, mine");
  QTest::keyClick(find<QLineEdit>("editTags"), Qt::Key_Return);
  keep();
  place_.reset();
  open();
  const Drill& kept = place_->desk().shelf().own.front();
  QCOMPARE(kept.title, std::string("Long into the side"));
  QCOMPARE(kept.tags, (std::vector<std::string>{"side-pocket", "mine"}));
  QCOMPARE(kept.stations[0].balls[0].place, put);
  find<QLineEdit>("findDrill")->setText("long into");
  QCOMPARE(find<QListWidget>("drillList")->count(), 1);
}

void DrillsStoryTest::aBallAtACushionStaysThereOnEveryTable() {
  makeNew();
  const Table& table = place_->desk().table().table;
  drag(tableFromSurface(table, {1.5, 0.5}), tableFromSurface(table, {1.5, 0.024}));
  QVERIFY(edited().balls[0].frozen == CushionName::RightFoot);
  MeasuredTable small = *measuredTableFrom("7ft");
  QVERIFY(std::abs(placeOf(edited().balls[0], small).y + small.table.width_m / 2.0 - small.balls.radius_m()) < 1e-9);
}

void DrillsStoryTest::theZoneIsDraggedAndWidened() {
  makeNew();
  auto* ask = find<QComboBox>("editAsk");
  ask->setCurrentIndex(ask->findText("Pot and leave"));
  emit ask->activated(ask->currentIndex());
  QCOMPARE(edited().goals.size(), std::size_t{2});
  const Table& table = place_->desk().table().table;
  drag(tableFromSurface(table, {1.05, 0.55}), tableFromSurface(table, {0.75, 0.75}));
  const SurfacePlace middle = edited().goals[1].zone->corners[0];
  QVERIFY(std::abs(middle.along - 0.7) < 0.02 && std::abs(middle.across - 0.7) < 0.02);
  auto* reach = find<QDoubleSpinBox>("editReach");
  QVERIFY(reach->isVisible());
  reach->setValue(254.0);
  QTest::keyClick(reach, Qt::Key_Return);
  QVERIFY(std::abs(edited().goals[1].zone->reach_widths - 0.2) < 1e-9);
}

void DrillsStoryTest::setUpsAreAddedAndRemoved() {
  makeNew();
  find<QPushButton>("addSetUp")->click();
  QCOMPARE(place_->desk().drill().stations.size(), std::size_t{2});
  QCOMPARE(place_->desk().station(), std::size_t{1});
  find<QPushButton>("bringBall")->click();
  QCOMPARE(place_->desk().drill().stations[1].balls.size(), std::size_t{2});
  QCOMPARE(place_->desk().drill().stations[0].balls.size(), std::size_t{1});
  find<QPushButton>("removeSetUp")->click();
  QCOMPARE(place_->desk().drill().stations.size(), std::size_t{1});
}

void DrillsStoryTest::aDrillThatCannotBePlayedIsNotKept() {
  makeNew();
  QVERIFY(find<QPushButton>("keepDrill")->isEnabled());
  const Table& table = place_->desk().table().table;
  // Straight away from the pocket.
  drag(tableFromSurface(table, {0.5, 0.25}), tableFromSurface(table, {1.9, 0.9}));
  QVERIFY(!find<QPushButton>("keepDrill")->isEnabled());
  QVERIFY(find<QLabel>("drillFaults")->text().contains("cannot be cut"));
  find<QPushButton>("dropDrill")->click();
  QVERIFY(!place_->desk().isEditing());
  QVERIFY(place_->desk().shelf().own.empty());
}

void DrillsStoryTest::anEditIsTakenBack() {
  makeNew();
  const Table& table = place_->desk().table().table;
  const Drill before = place_->desk().drill();
  drag(tableFromSurface(table, {1.5, 0.5}), tableFromSurface(table, {1.3, 0.6}));
  const Drill after = place_->desk().drill();
  QVERIFY(after != before);
  place_->act(ActionId::Undo);
  QCOMPARE(place_->desk().drill(), before);
  place_->act(ActionId::Redo);
  QCOMPARE(place_->desk().drill(), after);
}

void DrillsStoryTest::aDeletedDrillComesBackAndItsRunsStay() {
  makeNew();
  keep();
  const std::string key = place_->desk().drill().key;
  begin();
  place_->act(ActionId::LogMade);
  end();
  find<QPushButton>("removeDrill")->click();
  QTRY_VERIFY(!place_->desk().isOwn(key));
  QCOMPARE(place_->desk().shelf().runs.size(), std::size_t{1});
  place_->act(ActionId::Undo);
  QTRY_VERIFY(place_->desk().isOwn(key));
  QCOMPARE(place_->desk().runsHere().size(), std::size_t{1});
}

void DrillsStoryTest::aJumpShotCarriesItsCaution() {
  makeNew();
  find<QCheckBox>("editJump")->click();
  keep();
  QVERIFY(find<QLabel>("drillCaution")->text().contains("eye protection"));
}

void DrillsStoryTest::triesAreCountedFromARecordedSession() {
  place_.reset();
  {
    auto record = Record::open(settings_->filePath("drills.sqlite").toStdString());
    QVERIFY(record.has_value());
    const MeasuredTable table = *measuredTableFrom("9ft");
    const auto session = record->addSession({"Evening", now_, "9ft", table, {}, SessionKind::Practice});
    const auto frame = record->addFrame({*session, "", std::nullopt, std::nullopt});
    for (int number = 1; number <= 2; ++number) {
      ShotReading shot;
      shot.number = number;
      shot.before = setUpOf(mirrored(*builtInDrill("thin-cut"), {true, false}).stations[0], table);
      shot.after = {{kCueBall, {0.1, 0.2}}};
      if (number == 1) shot.pocketed = {{BallName(1), PocketName::FootLeft}};
      QVERIFY(record->appendShot(*frame, shot, {}).has_value());
    }
  }
  open();
  choose("thin-cut");
  find<QPushButton>("countSession")->click();
  QTRY_COMPARE(place_->desk().runsHere().size(), std::size_t{1});
  QVERIFY(message().contains("2 try(s) counted") || message().contains("2 tries counted"));
  QVERIFY(place_->desk().mirroring().sides);
  QVERIFY(place_->desk().runsHere().front()->trials[0].succeeded() == true);
  QVERIFY(place_->desk().runsHere().front()->trials[1].succeeded() == false);
}

void DrillsStoryTest::aRunThatWasBrokenOffIsGoneOnWith() {
  choose("stop-ladder");
  QVERIFY(place_->desk().brokenRun() == nullptr);
  place_->desk().mirror({true, false});
  begin();
  place_->act(ActionId::LogMade);
  place_->act(ActionId::LogMissed);
  const std::vector<DrillTrial> tries = run().trials;
  // The program ends in the middle.
  place_.reset();
  open();
  choose("stop-ladder");
  QTRY_VERIFY(place_->desk().brokenRun() != nullptr);
  auto* button = find<QPushButton>("resumeRun");
  QVERIFY(button->isVisibleTo(place_.get()));
  QVERIFY(button->text().contains("(2 of"));
  button->click();
  QCOMPARE(run().trials.size(), tries.size());
  QVERIFY(place_->desk().mirroring() == (Mirroring{true, false}));
  place_->act(ActionId::LogMade);
  place_->act(ActionId::Undo);
  place_->act(ActionId::LogMade);
  place_->act(ActionId::EndSession);
  QTRY_VERIFY(!place_->desk().shelf().runs.empty() && place_->desk().shelf().runs.back().ended);
  QCOMPARE(place_->desk().shelf().runs.size(), std::size_t{1});
  QCOMPARE(place_->desk().shelf().runs.back().trials.size(), std::size_t{3});
  QVERIFY(place_->desk().brokenRun() == nullptr);
}

/// The clip shows a stop shot: its balls are set up as a drill of one's own would want them.
void DrillsStoryTest::theCameraSaysHowFarEachBallIsOff() {
  const QString clip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");
  setRigInUse({"clip", clip + "rig.json", clip + "table.json"});
  const auto measured = measuredTableFrom((clip + "table.json").toStdString());
  const auto photo = positionInPhoto(
      {(clip + "stop-shot.mp4").toStdString(), (clip + "rig.json").toStdString(), (clip + "table.json").toStdString()});
  QVERIFY(measured.has_value() && photo.has_value());
  place_->desk().setTable("clip", *measured);
  place_->desk().make("Mine");
  Drill drill = place_->desk().drill();
  DrillStation& station = drill.stations.front();
  station.balls.clear();
  for (const BallAt& ball : photo->balls) {
    // Each 20 mm nearer to the head than it lies.
    const SurfacePlace place = surfaceFromTable(measured->table, {ball.position.x - 0.020, ball.position.y});
    if (ball.ball.isCueBall()) {
      station.cueBall = DrillBall{kCueBall, place};
    } else {
      station.balls.push_back({ball.ball, place});
    }
  }
  QVERIFY(!station.balls.empty());
  station.goals = {{GoalKind::Pot, station.balls.front().ball, PocketName::FootLeft}};
  place_->desk().change(drill);
  keep();
  SetUpSection& section = place_->setUp();
  section.begin(std::make_shared<PacedFilm>(clip + "stop-shot.mp4", FilmPace::AsTaken));
  std::optional<double> largest_m;
  connect(&section, &SetUpSection::checked, this, [&] {
    if (section.check() && section.check()->largestError_m() && !largest_m)
      largest_m = section.check()->largestError_m();
  });
  QTRY_VERIFY(largest_m.has_value());
  QVERIFY2(std::abs(*largest_m - 0.020) < 0.004, qPrintable(QString::number(*largest_m)));
  section.watch().stop();
  QTRY_VERIFY(!section.check());
  section.disconnect(this);
}

void DrillsStoryTest::withoutARigTheSetUpCannotBeChecked() {
  place_->setUp().begin(std::make_shared<PacedFilm>(QString("any.mp4")));
  QVERIFY(message().contains("Set-up"));
  QVERIFY(!place_->setUp().watch().isRunning());
}

FERRULE_TEST(DrillsStoryTest)
#include "drills_story_test.moc"
