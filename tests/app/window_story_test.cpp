// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QToolButton>
#include <QTreeView>
#include <QtTest>

#include "app/film/film_file.h"
#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/review/record_source.h"
#include "app/review/review_place.h"
#include "app/review/shot_panel.h"
#include "app/review/shot_tree_model.h"
#include "app/review/time_line.h"
#include "app/setup/setup_place.h"
#include "app/session/demo_session.h"
#include "app/window/main_window.h"
#include "app/window/window_call.h"
#include "core/measure/measure.h"
#include "core/record/frame_moves.h"
#include "core/record/record.h"
#include "tests/app/fresh_settings.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// The sample as a record file.
void writeSample(const std::string& path) {
  auto record = Record::open(path);
  QVERIFY(record.has_value());
  const SessionContent content = sampleContent();
  NewSession session;
  session.name = content.session.name;
  session.started = content.session.started;
  session.tableName = content.session.tableName;
  session.table = content.table;
  const auto sessionId = record->addSession(session);
  QVERIFY(sessionId.has_value());
  FilmEntry film = *content.frames[0].frame.film;
  film.sha256 = std::string(64, 'a');
  const auto filmId = record->addFilm(film);
  QVERIFY(filmId.has_value());
  const auto frameId = record->addFrame({*sessionId, "eight-ball", *filmId, sampleRig()});
  QVERIFY(frameId.has_value());
  for (int number = 1; number <= 3; ++number) {
    const StoredShot shot = sampleShot(number);
    QVERIFY(record->appendShot(*frameId, shot.reading, shot.tracks).has_value());
  }
}

}  // namespace

class WindowStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void anEmptyWindowSaysWhatToDo();
  void theDemosFilmIsMeasuredFromAnEmptyWindow();
  void theFirstRunReachesAMeasuredSessionInThreeClicks();
  void anotherRecordIsTakenIntoTheOpenOne();
  void aRecordFileIsReadAndReviewedByKeysAlone();
  void filmAndOverlayStandOnTheSameImage();
  void playingGoesOnIntoTheNextShot();
  void scrubbingTheTimeLineChangesTheShot();
  void aMissingFilmLeavesThePlanAndSaysWhatToDo();
  void aFileThatIsNoRecordIsOneSentenceAndLosesNothing();
  void selectionAndViewSurviveARestart();
  void speedsFollowTheChosenUnit();
  void everythingFitsAt960By600();
  void callsOfTheWindowAreToldFromCommands();
  void aCameraThatMovedIsFollowedOverTheFilm();
  void aFieldLeavesUndoToItsPlaceOnceItWasTakenOver();

 private:
  std::unique_ptr<MainWindow> open(const Openers& openers, const QString& record);
  template <class T>
  T* find(const char* name) const {
    return window_->findChild<T*>(QString::fromLatin1(name));
  }
  ReviewPlace& review() const { return *window_->findChild<ReviewPlace*>(); }
  void key(int code, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QTest::keyClick(window_.get(), Qt::Key(code), modifiers);
  }

  std::unique_ptr<FreshSettings> folder_;
  std::unique_ptr<MainWindow> window_;
};

void WindowStoryTest::init() {
  folder_ = std::make_unique<FreshSettings>();
}

void WindowStoryTest::cleanup() {
  window_.reset();
  folder_.reset();
}

std::unique_ptr<MainWindow> WindowStoryTest::open(const Openers& openers, const QString& record) {
  auto window = std::make_unique<MainWindow>(openers);
  window->setLocale(QLocale::c());
  window->start(record);
  window->resize(1280, 720);
  window->show();
  static_cast<void>(QTest::qWaitForWindowActive(window.get()));
  return window;
}

void WindowStoryTest::anEmptyWindowSaysWhatToDo() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, {});
  QVERIFY(find<QWidget>("emptyReview")->isVisible());
  QVERIFY(find<QWidget>("openRecordFromEmpty")->isVisible());
  QVERIFY(find<QWidget>("openDemo") == nullptr);  // no button without a demo
  QVERIFY(find<QWidget>("measureDemo") == nullptr);
}

/// Nobody measured the demo before: its film is there alone.
void WindowStoryTest::theDemosFilmIsMeasuredFromAnEmptyWindow() {
  QStandardPaths::setTestModeEnabled(true);
  const auto restored = qScopeGuard([] { QStandardPaths::setTestModeEnabled(false); });
  QFile::remove(demoRecordPath());
  window_ = open({openRecordSource, openFilmFile, {}, FERRULE_SOURCE_DIR "/tests/data/clip"}, {});
  const auto click = [&](const char* name) {
    auto* button = find<QWidget>(name);
    QVERIFY(button != nullptr);
    QTRY_VERIFY(button->isVisible() && button->isEnabled());
    QTest::mouseClick(button, Qt::LeftButton);
  };
  click("measureDemo");
  QVERIFY(find<QWidget>("filmPage")->isVisible());
  click("lookAtIt");
  QTRY_VERIFY(review().desk().shot() != nullptr);
  QCOMPARE(review().desk().shot()->reading.outcome, Outcome::Pot);
  QVERIFY(review().isVisible());
  QVERIFY(QFile::exists(demoRecordPath()));
}

/// As the demo is: a film that was measured, not a picture of one.
void WindowStoryTest::theFirstRunReachesAMeasuredSessionInThreeClicks() {
  const std::string clip = FERRULE_SOURCE_DIR "/tests/data/clip/";
  const QString demo = folder_->filePath("demo.sqlite");
  MeasureOptions options;
  options.film = clip + "stop-shot.mp4";
  options.rig = clip + "rig.json";
  options.table = clip + "table.json";
  options.record = demo.toStdString();
  options.judge = false;
  QVERIFY(measureFilm(options, {}).has_value());

  window_ = open({openRecordSource, openFilmFile, demo}, {});
  int clicks = 0;
  const auto click = [&](const char* name) {
    auto* button = find<QWidget>(name);
    QVERIFY(button != nullptr && button->isVisible() && button->isEnabled());
    QTest::mouseClick(button, Qt::LeftButton);
    ++clicks;
  };
  click("openDemo");
  QTRY_VERIFY(review().desk().shot() != nullptr);
  QVERIFY(!find<QWidget>("emptyReview")->isVisible());
  QCOMPARE(review().desk().shot()->reading.outcome, Outcome::Pot);
  QVERIFY(review().desk().shot()->reading.delivery.speed_mps.has_value());
  // And its film beside the plan.
  click("showBothButton");
  QVERIFY(clicks <= 3);
  QTRY_VERIFY(find<FilmView>("filmView")->picture().picture.width() > 0);
}

void WindowStoryTest::anotherRecordIsTakenIntoTheOpenOne() {
  const QString ours = folder_->filePath("ours.sqlite");
  const QString theirs = folder_->filePath("theirs.sqlite");
  writeSample(ours.toStdString());
  writeSample(theirs.toStdString());
  window_ = open({openRecordSource, sampleFilmOpener(), {}}, ours);
  QTRY_VERIFY(review().desk().shot() != nullptr);
  auto* message = find<QLabel>("windowMessage");
  window_->importRecord(theirs);
  QTRY_VERIFY(message->text().contains("1 session"));
  QCOMPARE(Record::open(ours.toStdString())->sessions()->size(), std::size_t{2});
  window_->importRecord(theirs);
  QTRY_COMPARE(message->text(), QString("Nothing of it was new."));
  window_->importRecord(folder_->filePath("gone.sqlite"));
  QTRY_VERIFY(message->text().contains("gone.sqlite"));
  QCOMPARE(Record::open(ours.toStdString())->sessions()->size(), std::size_t{2});
}

void WindowStoryTest::aRecordFileIsReadAndReviewedByKeysAlone() {
  const QString path = folder_->filePath(QStringLiteral("lesson.sqlite"));
  writeSample(path.toStdString());
  window_ = open({openRecordSource, sampleFilmOpener(), {}}, path);
  ReviewDesk& desk = review().desk();
  QTRY_VERIFY(desk.shot() != nullptr);
  QCOMPARE(desk.shot()->reading.number, 1);
  QCOMPARE(find<QLabel>("sessionTitle")->text(), QStringLiteral("Invented lesson"));
  QTRY_COMPARE(find<QLabel>("shotHeading")->text(), QStringLiteral("Shot 1: the 3 to foot-left, made"));
  QCOMPARE(find<QTreeView>("shotTree")->currentIndex().data(ShotTreeModel::NumberRole).toInt(), 1);
  QTRY_VERIFY(desk.countsFilmImages());
  QTRY_COMPARE(desk.playhead().index(), 600);  // struck at 10 s, 60 images a second

  key(Qt::Key_Right);
  QCOMPARE(desk.playhead().index(), 601);
  key(Qt::Key_Left);
  QCOMPARE(desk.playhead().index(), 600);
  key(Qt::Key_Right, Qt::ShiftModifier);
  QCOMPARE(desk.playhead().index(), 630);  // the contact at 10.5 s
  QVERIFY(find<QLabel>("moment")->text().contains(QStringLiteral("The cue ball meets the 3")));
  key(Qt::Key_PageDown);
  QTRY_COMPARE(desk.shot()->reading.number, 2);
  QTRY_COMPARE(desk.playhead().index(), 1200);
  QTRY_COMPARE(find<QTreeView>("shotTree")->currentIndex().data(ShotTreeModel::NumberRole).toInt(), 2);
  key(Qt::Key_PageUp);
  QTRY_COMPARE(desk.shot()->reading.number, 1);
}

void WindowStoryTest::filmAndOverlayStandOnTheSameImage() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  auto* film = find<FilmView>("filmView");
  key(Qt::Key_3, Qt::ControlModifier);
  QTRY_VERIFY(film->isVisible());
  QVERIFY(find<PlanView>("planView")->isVisible());
  QTRY_VERIFY(film->hasPicture());
  for (int step = 0; step < 5; ++step) {
    key(Qt::Key_Right);
    const int wanted = review().desk().playhead().index();
    QTRY_COMPARE(film->picture().number, long{wanted});
    QCOMPARE(spelledNumber(film->picture().picture), long{wanted});
    QCOMPARE(film->picture().time_s, review().desk().playhead().time_s());
  }
  key(Qt::Key_2, Qt::ControlModifier);
  QTRY_VERIFY(!find<PlanView>("planView")->isVisible());
  key(Qt::Key_1, Qt::ControlModifier);
  QTRY_VERIFY(!film->isVisible());
}

void WindowStoryTest::playingGoesOnIntoTheNextShot() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  ReviewDesk& desk = review().desk();
  QTRY_VERIFY(desk.countsFilmImages());
  key(Qt::Key_Space);
  QVERIFY(desk.playhead().isPlaying());
  desk.playhead().advance(9.5);  // as the clock would in 9.5 s: into the second shot's last practice strokes
  QTRY_COMPARE(desk.shot()->id, ShotId{2});
  QVERIFY(desk.playhead().isPlaying());
  key(Qt::Key_Space);
  QVERIFY(!desk.playhead().isPlaying());
}

void WindowStoryTest::scrubbingTheTimeLineChangesTheShot() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  ReviewDesk& desk = review().desk();
  QTRY_VERIFY(desk.countsFilmImages());
  auto* line = find<TimeLine>("timeLine");
  QTest::mouseClick(line, Qt::LeftButton, {}, QPoint(static_cast<int>(line->xOf(30.5)), line->height() / 2));
  QTRY_COMPARE(desk.shot()->id, ShotId{3});
  QTRY_VERIFY(std::abs(desk.playhead().time_s() - 30.5) < 0.2);
}

void WindowStoryTest::aMissingFilmLeavesThePlanAndSaysWhatToDo() {
  const FilmOpener missing = [](const std::string& path, std::stop_token) -> Result<std::unique_ptr<FilmPictures>> {
    return failure(ErrorCode::FileMissing, path);
  };
  window_ = open({sampleOpener(), missing, {}}, QStringLiteral("sample"));
  ReviewDesk& desk = review().desk();
  QTRY_VERIFY(desk.shot() != nullptr);
  key(Qt::Key_2, Qt::ControlModifier);
  QTRY_VERIFY(find<QWidget>("findFilm")->isVisible());
  QVERIFY(find<QLabel>("filmWords")->text().contains(QStringLiteral("sample-film")));
  key(Qt::Key_Right);  // steps through the tracks' own images
  QVERIFY(desk.playhead().time_s() > 10.0);
}

void WindowStoryTest::aFileThatIsNoRecordIsOneSentenceAndLosesNothing() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  QTRY_VERIFY(review().desk().shot() != nullptr);
  review().openRecord(QStringLiteral("holiday.mp4"));
  auto* message = find<QLabel>("message");
  QTRY_VERIFY(message->isVisible());
  QVERIFY(message->text().contains(QStringLiteral("holiday.mp4")));
  QVERIFY(review().desk().shot() != nullptr);  // what was open stays open
}

void WindowStoryTest::selectionAndViewSurviveARestart() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  QTRY_VERIFY(review().desk().shot() != nullptr);
  key(Qt::Key_PageDown);
  QTRY_COMPARE(review().desk().shot()->id, ShotId{2});
  key(Qt::Key_3, Qt::ControlModifier);
  find<PlanView>("planView")->setZoom(2.0, {0.4, 0.6});
  window_->close();
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, {});
  QTRY_VERIFY(review().desk().shot() != nullptr);
  QTRY_COMPARE(review().desk().shot()->id, ShotId{2});
  QCOMPARE(review().mode(), PictureMode::Both);
  QCOMPARE(find<PlanView>("planView")->zoom(), 2.0);
}

void WindowStoryTest::speedsFollowTheChosenUnit() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  QTRY_VERIFY(review().desk().shot() != nullptr);
  window_->actions().at(ActionId::SpeedKilometres)->trigger();
  auto* tree = find<QTreeView>("shotTree");
  const QModelIndex speed = tree->currentIndex().siblingAtColumn(ShotTreeModel::Speed);
  QTRY_COMPARE(speed.data().toString(), QStringLiteral("7.2\u202Fkm/h"));
}

void WindowStoryTest::everythingFitsAt960By600() {
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, QStringLiteral("sample"));
  QTRY_VERIFY(review().desk().shot() != nullptr);
  window_->resize(960, 600);
  for (const int code : {Qt::Key_1, Qt::Key_2, Qt::Key_3}) {
    key(code, Qt::ControlModifier);
    QCoreApplication::processEvents();
    QCOMPARE(window_->size(), QSize(960, 600));
    for (const char* name : {"playButton", "showBothButton", "timeLine"}) {
      auto* part = find<QWidget>(name);
      const QRect place(part->mapTo(window_.get(), QPoint()), part->size());
      QVERIFY2(window_->rect().contains(place), name);
    }
  }
}

void WindowStoryTest::callsOfTheWindowAreToldFromCommands() {
  const auto call = [](std::vector<const char*> arguments) {
    arguments.insert(arguments.begin(), "ferrule");
    return windowCallFrom(static_cast<int>(arguments.size()), arguments.data());
  };
  QCOMPARE(call({}), std::optional(WindowCall{}));
  QCOMPARE(call({"club.sqlite"}), std::optional(WindowCall{"club.sqlite"}));
  QCOMPARE(call({"--record", "club.sqlite"}), std::optional(WindowCall{"club.sqlite"}));
  QCOMPARE(call({"-platform", "offscreen"}), std::optional(WindowCall{}));
  QVERIFY(!call({"measure", "film.mp4"}));
  QVERIFY(!call({"--help"}));
  QVERIFY(!call({"calibrate"}));
}

/// The camera was pushed while the second shot was played: what is drawn over the third follows it.
void WindowStoryTest::aCameraThatMovedIsFollowedOverTheFilm() {
  const QString path = folder_->filePath(QStringLiteral("lesson.sqlite"));
  writeSample(path.toStdString());
  {
    auto record = Record::open(path.toStdString());
    const auto frames = record->frames(record->sessions()->front().id);
    CameraMove move{1212, 20.2, 19.5, 20.6, 0.0123, sampleRig()};
    move.rig.pose.translation_m.x() += 0.05;
    QVERIFY(keepMoves(*record, frames->front().id, std::vector{move}).has_value());
  }
  window_ = open({openRecordSource, sampleFilmOpener(), {}}, path);
  auto* film = find<FilmView>("filmView");
  key(Qt::Key_2, Qt::ControlModifier);
  QTRY_VERIFY(film->isVisible() && film->hasPicture());
  const auto words = [this] { return find<QLabel>("outcomeLines")->text(); };
  QTRY_COMPARE(review().desk().shot()->reading.number, 1);
  QVERIFY2(!words().contains("camera moved"), qPrintable(words()));
  const auto before = film->screenFromTable({0.2, 0.1});
  key(Qt::Key_PageDown);
  QTRY_COMPARE(review().desk().shot()->reading.number, 2);
  QTRY_VERIFY2(words().contains("moved by 12.3 mm"), qPrintable(words()));
  key(Qt::Key_PageDown);
  QTRY_COMPARE(review().desk().shot()->reading.number, 3);
  QTRY_VERIFY(!words().contains("camera moved"));
  const auto after = film->screenFromTable({0.2, 0.1});
  QVERIFY(before && after);
  QVERIFY(std::abs(after->x() - before->x()) > 5.0);
}

void WindowStoryTest::aFieldLeavesUndoToItsPlaceOnceItWasTakenOver() {
  // Not the set-up of whoever runs the tests.
  QStandardPaths::setTestModeEnabled(true);
  window_ = open({sampleOpener(), sampleFilmOpener(), {}}, {});
  window_->showPlace(QStringLiteral("setup"));
  auto* place = window_->findChild<SetupPlace*>();
  QTRY_VERIFY(!place->isBusy());
  place->showStep(SetupStep::Table);
  auto* length = find<QDoubleSpinBox>("tableLength");
  QTRY_VERIFY(length->isVisible());
  length->setValue(2540.0);
  length->setFocus();
  length->selectAll();
  QTest::keyClicks(length, "2400");
  QTest::keyClick(length, Qt::Key_Return);
  QCOMPARE(length->value(), 2400.0);
  auto* edit = length->findChild<QLineEdit*>();
  QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(length->value(), 2540.0);
  QTest::keyClick(edit, Qt::Key_Y, Qt::ControlModifier);
  QCOMPARE(length->value(), 2400.0);
  // What is still being typed is the field's own to take back.
  length->selectAll();
  QTest::keyClicks(edit, "23");
  QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(length->value(), 2400.0);
  QVERIFY2(edit->text().startsWith("2400"), qPrintable(edit->text()));
  QStandardPaths::setTestModeEnabled(false);
}

FERRULE_TEST(WindowStoryTest)
#include "window_story_test.moc"
