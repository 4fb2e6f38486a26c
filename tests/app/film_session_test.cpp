// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QDragEnterEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QToolButton>
#include <QtTest>

#include "app/film/film_file.h"
#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/review/record_source.h"
#include "app/session/known_rigs.h"
#include "app/session/measuring_words.h"
#include "app/session/rig_choice.h"
#include "app/session/start_form.h"
#include "app/window/main_window.h"
#include "core/camera/rig_file.h"
#include "tests/app/session_screen.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// A session from a film, from the form to the record.
class FilmSessionTest : public QObject {
  Q_OBJECT
 private slots:
  void init() { screen_ = std::make_unique<SessionScreen>(); }
  void cleanup() { screen_.reset(); }
  void aFilmIsMeasuredFromTheFormAndLookedAt();
  void theBallsFoundStandInTheirOwnPicture();
  void aStoppedFilmKeepsItsSessionAndCanBeMeasuredAgain();
  void aMeasuredFilmIsNotMeasuredTwiceUnasked();
  void withoutARigTheFormLeadsToSetUp();
  void theRigInUseIsOfferedFirstAndOthersAreRemembered();
  void whatIsMissingIsOneSentence();
  void filesThatCannotBeReadAreOneSentence_data();
  void filesThatCannotBeReadAreOneSentence();
  void aDroppedFilmStandsInTheForm();
  void whatIsDroppedOnTheWindowGoesToItsPlace();
  void theTimeLeftIsSaidInWords();
  void aFilmThatFitsItsRigSaysSo();
  void aFilmThatDoesNotFitItsRigIsDoubtedBeforeItIsMeasured();

 private:
  void fill(const QString& film = kClipFolder + "stop-shot.mp4", const QString& rig = kClipFolder + "rig.json",
            const QString& table = kClipFolder + "table.json");
  void begin() { screen_->find<QPushButton>("beginSession")->click(); }
  void measure();
  [[nodiscard]] FilmDesk& film() { return screen_->place().film(); }
  [[nodiscard]] QListWidget* shots() const { return screen_->find<QListWidget>("measuredShots"); }

  std::unique_ptr<SessionScreen> screen_;
};

void FilmSessionTest::fill(const QString& film, const QString& rig, const QString& table) {
  screen_->find<QToolButton>("wayFromFilm")->click();
  auto* known = screen_->find<QComboBox>("knownRigs");
  known->setCurrentIndex(known->count() - 1);
  screen_->find<QLineEdit>("sessionFilm")->setText(film);
  screen_->find<QLineEdit>("rigFile")->setText(rig);
  screen_->find<QLineEdit>("rigTable")->setText(table);
  screen_->find<QLineEdit>("sessionPlayers")->setText("Ada, Ben");
  auto* kind = screen_->find<QComboBox>("sessionKind");
  kind->setCurrentIndex(kind->findData(static_cast<int>(SessionKind::Match)));
}

void FilmSessionTest::measure() {
  begin();
  QTRY_VERIFY(film().state() != FilmState::Measuring && film().state() != FilmState::None);
}

void FilmSessionTest::aFilmIsMeasuredFromTheFormAndLookedAt() {
  fill();
  measure();
  QCOMPARE(film().state(), FilmState::Done);
  QCOMPARE(shots()->count(), 1);
  const QString row = shots()->item(0)->text();
  QVERIFY2(row.contains("made") && row.contains("aim") && row.contains("m/s"), qPrintable(row));
  QVERIFY(screen_->words("measuringWords").startsWith("1 shot"));
  auto record = Record::open(screen_->record().toStdString());
  QVERIFY(record.has_value());
  const auto sessions = record->sessions();
  QCOMPARE(sessions->size(), std::size_t{1});
  // Without a name of its own the session has the film's.
  QCOMPARE(sessions->front().name, std::string("stop-shot"));
  QCOMPARE(sessions->front().kind, SessionKind::Match);
  QCOMPARE(sessions->front().players, (std::vector<std::string>{"Ada", "Ben"}));
  const auto frames = record->frames(sessions->front().id);
  QVERIFY(frames->front().complete);
  QCOMPARE(frames->front().game, std::string("eight-ball"));

  QSignalSpy wanted(&screen_->place(), &Place::shotsWanted);
  screen_->find<QPushButton>("lookAtIt")->click();
  QVERIFY(wanted.wait(kPatience_ms));
  const auto list = wanted.front().front().value<ShotList>();
  QCOMPARE(list.record, screen_->record());
  QCOMPARE(list.title, QString("stop-shot"));
  QCOMPARE(list.shots.size(), std::size_t{1});
  QCOMPARE(list.shots.front().shot, film().shots().all().front()->id);
  screen_->find<QPushButton>("anotherSession")->click();
  QVERIFY(screen_->isVisible("startForm"));
}

void FilmSessionTest::theBallsFoundStandInTheirOwnPicture() {
  fill();
  QSignalSpy seen(&film(), &FilmDesk::imageSeen);
  measure();
  QVERIFY(seen.count() > 3);
  const SeenImage& image = *film().image();
  QVERIFY(!image.balls.empty());
  auto* picture = screen_->find<FilmView>("measuredFilm");
  auto* plan = screen_->find<PlanView>("measuredPlan");
  QCOMPARE(picture->picture().number, image.picture.number);
  QCOMPARE(picture->picture().picture.size(), QSize(1280, 720));
  QVERIFY(plan->balls() == image.balls);
  QVERIFY(picture->screenFromTable(image.balls.front().position).has_value());
}

void FilmSessionTest::aStoppedFilmKeepsItsSessionAndCanBeMeasuredAgain() {
  fill();
  QSignalSpy seen(&film(), &FilmDesk::imageSeen);
  begin();
  QVERIFY(seen.wait(kPatience_ms));
  screen_->actions().at(ActionId::StopWork)->trigger();
  QTRY_COMPARE(film().state(), FilmState::Stopped);
  QVERIFY(screen_->words("measuringWords").contains("incomplete"));
  screen_->find<QPushButton>("anotherSession")->click();
  begin();
  QTRY_VERIFY(screen_->isVisible("knownFilm"));
  QVERIFY(screen_->words("knownFilm").contains("broken off"));
  screen_->find<QPushButton>("measureAgain")->click();
  QTRY_COMPARE(film().state(), FilmState::Done);
  QVERIFY(screen_->words("measuringWords").contains("stands beside session \"stop-shot\""));
  auto record = Record::open(screen_->record().toStdString());
  QCOMPARE(record->sessions()->size(), std::size_t{2});
}

void FilmSessionTest::aMeasuredFilmIsNotMeasuredTwiceUnasked() {
  fill();
  measure();
  screen_->find<QPushButton>("anotherSession")->click();
  begin();
  QTRY_VERIFY(screen_->isVisible("knownFilm"));
  QVERIFY(screen_->isVisible("startForm"));
  QVERIFY(screen_->words("knownFilm").contains("measured before"));
  QVERIFY(!screen_->isVisible("sessionMessage"));
  QSignalSpy wanted(&screen_->place(), &Place::shotsWanted);
  screen_->find<QPushButton>("lookAtKnown")->click();
  QVERIFY(wanted.wait(kPatience_ms));
  QCOMPARE(wanted.front().front().value<ShotList>().shots.size(), std::size_t{1});
  // Another film is another matter.
  screen_->find<QLineEdit>("sessionFilm")->setText("other.mp4");
  QVERIFY(!screen_->isVisible("knownFilm"));
}

void FilmSessionTest::withoutARigTheFormLeadsToSetUp() {
  screen_->find<QToolButton>("wayFromFilm")->click();
  QVERIFY(screen_->isVisible("noRig"));
  QSignalSpy wanted(&screen_->place(), &Place::placeWanted);
  screen_->find<QPushButton>("makeRig")->click();
  QCOMPARE(wanted.front().front().toString(), QString("setup"));
}

void FilmSessionTest::theRigInUseIsOfferedFirstAndOthersAreRemembered() {
  fill();
  measure();
  screen_->find<QPushButton>("anotherSession")->click();
  auto* known = screen_->find<QComboBox>("knownRigs");
  QCOMPARE(known->count(), 2);
  QCOMPARE(known->itemText(0), QString("clip/rig.json"));
  QVERIFY(!screen_->isVisible("noRig"));
  const RigInUse hall{"Hall", screen_->file("rig.json"), screen_->file("table.json")};
  QFile::copy(kClipFolder + "rig.json", hall.rig);
  QFile::copy(kClipFolder + "table.json", hall.table);
  setRigInUse(hall);
  screen_->place().hide();
  screen_->place().show();
  QCOMPARE(known->count(), 3);
  QCOMPARE(known->itemText(0), QString("Hall"));
  // A form that is opened anew has it chosen.
  RigChoice fresh;
  QCOMPARE(fresh.findChild<QComboBox*>("knownRigs")->currentText(), QString("Hall"));
  // Gone files are offered no more.
  QFile::remove(hall.rig);
  QCOMPARE(knownRigs().size(), std::size_t{1});
}

void FilmSessionTest::whatIsMissingIsOneSentence() {
  fill({});
  begin();
  QCOMPARE(screen_->words("sessionMessage"), QString("Choose the film first."));
  fill(kClipFolder + "stop-shot.mp4", {});
  begin();
  QVERIFY(screen_->words("sessionMessage").contains("rig"));
  fill(kClipFolder + "stop-shot.mp4", kClipFolder + "rig.json", {});
  screen_->find<QLineEdit>("rigTable")->clear();
  begin();
  QVERIFY(screen_->words("sessionMessage").contains("table"));
  QCOMPARE(film().state(), FilmState::None);
}

void FilmSessionTest::filesThatCannotBeReadAreOneSentence_data() {
  QTest::addColumn<QString>("film");
  QTest::addColumn<QString>("rig");
  QTest::addColumn<QString>("table");
  const QString film = kClipFolder + "stop-shot.mp4";
  QTest::newRow("no film") << "gone.mp4" << kClipFolder + "rig.json" << kClipFolder + "table.json";
  QTest::newRow("no rig") << film << "gone.json" << kClipFolder + "table.json";
  QTest::newRow("no table") << film << kClipFolder + "rig.json"
                            << "gone-table.json";
  QTest::newRow("a lens for a rig") << film << kClipFolder + "lens.json" << kClipFolder + "table.json";
}

void FilmSessionTest::filesThatCannotBeReadAreOneSentence() {
  QFETCH(QString, film);
  QFETCH(QString, rig);
  QFETCH(QString, table);
  fill(film, rig, table);
  begin();
  QTRY_VERIFY(screen_->isVisible("sessionMessage"));
  const QString said = screen_->words("sessionMessage");
  QVERIFY2(said.contains("gone") || said.contains("lens.json"), qPrintable(said));
  QVERIFY(screen_->isVisible("startForm"));
  auto record = Record::open(screen_->record().toStdString());
  QVERIFY(record->sessions()->empty());
}

void FilmSessionTest::aDroppedFilmStandsInTheForm() {
  QVERIFY(screen_->place().openFilm("/films/evening.mp4"));
  QCOMPARE(screen_->find<QLineEdit>("sessionFilm")->text(), QString("/films/evening.mp4"));
  QVERIFY(screen_->isVisible("sessionFilm"));
  QVERIFY(!screen_->isVisible("sessionTable"));
  QCOMPARE(screen_->find<QLineEdit>("sessionName")->placeholderText(), QString("evening"));
  screen_->find<QToolButton>("wayByHand")->click();
  QVERIFY(!screen_->isVisible("sessionFilm"));
  QVERIFY(screen_->isVisible("sessionTable"));
}

void FilmSessionTest::whatIsDroppedOnTheWindowGoesToItsPlace() {
  MainWindow window(Openers{openRecordSource, openFilmFile, {}});
  window.show();
  QMimeData dropped;
  dropped.setUrls({QUrl::fromLocalFile(screen_->file("evening.mp4"))});
  QDragEnterEvent enter({50, 50}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window, &enter);
  QVERIFY(enter.isAccepted());
  QDropEvent drop({50, 50}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window, &drop);
  auto* film = window.findChild<QLineEdit*>("sessionFilm");
  QVERIFY(film->isVisible());
  QCOMPARE(film->text(), screen_->file("evening.mp4"));
  // Text from another program is nothing to open.
  QMimeData text;
  text.setText("evening");
  QDragEnterEvent other({50, 50}, Qt::CopyAction, &text, Qt::LeftButton, Qt::NoModifier);
  other.ignore();
  QCoreApplication::sendEvent(&window, &other);
  QVERIFY(!other.isAccepted());
}

void FilmSessionTest::theTimeLeftIsSaidInWords() {
  QCOMPARE(remainingWords(1.0, 0.5), QString());  // too early to tell
  QCOMPARE(remainingWords(60.0, -1.0), QString());
  QCOMPARE(remainingWords(30.0, 0.5), QString("less than a minute left"));
  QCOMPARE(remainingWords(60.0, 0.25), QString("about 3 minute(s) left"));
  QCOMPARE(remainingWords(3600.0, 0.25), QString("about 3 hour(s) left"));
}

void FilmSessionTest::aFilmThatFitsItsRigSaysSo() {
  fill();
  measure();
  QVERIFY(film().check() != nullptr);
  QCOMPARE(film().check()->verdict, RigFault::None);
  QVERIFY2(screen_->words("measuringWords").contains("belong together"), qPrintable(screen_->words("measuringWords")));
}

/// A rig whose camera was pushed since it was made.
void FilmSessionTest::aFilmThatDoesNotFitItsRigIsDoubtedBeforeItIsMeasured() {
  Rig pushed = readRigFile((kClipFolder + "rig.json").toStdString()).value();
  pushed.pose.translation_m.x() += 0.020;
  const QString rig = screen_->file("pushed.json");
  QVERIFY(writeRigFile(rig.toStdString(), pushed).has_value());
  fill(kClipFolder + "stop-shot.mp4", rig);
  begin();
  QTRY_VERIFY(screen_->isVisible("filmMisfit"));
  const QString said = screen_->words("filmMisfit");
  QVERIFY2(said.contains("moved by 2") && said.contains("off by up to"), qPrintable(said));
  auto record = Record::open(screen_->record().toStdString());
  QVERIFY(record->sessions()->empty());
  // The way to the cure, and the way on.
  QSignalSpy wanted(&screen_->place(), &Place::placeWanted);
  screen_->find<QPushButton>("mendInSetup")->click();
  QCOMPARE(wanted.front().front().toString(), QString("setup"));
  screen_->find<QPushButton>("measureDespite")->click();
  QTRY_COMPARE(film().state(), FilmState::Done);
  QVERIFY(record->sessions()->size() == 1);
  // Another rig is another matter.
  screen_->find<QPushButton>("anotherSession")->click();
  QVERIFY(!screen_->isVisible("filmMisfit"));
}

FERRULE_TEST(FilmSessionTest)
#include "film_session_test.moc"
