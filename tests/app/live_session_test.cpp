// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QToolButton>
#include <QtTest>
#include <atomic>
#include <thread>

#include "app/live/camera_picture.h"
#include "app/live/paced_film.h"
#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/session/live_words.h"
#include "core/camera/rig_file.h"
#include "core/record/consent.h"
#include "tests/app/session_screen.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A film that stands in for a camera and waits at a time until it is told to go on: what a person does meanwhile
/// depends on no clock.
class HeldFilm : public LiveSource {
 public:
  HeldFilm(const QString& path, double hold_s) : path_(path), hold_s_(hold_s) {}
  ~HeldFilm() override { HeldFilm::stop(); }

  [[nodiscard]] QString name() const override { return path_; }
  void start(std::shared_ptr<ImageQueue> images) override {
    thread_ = std::jthread([this, images = std::move(images)](const std::stop_token& stop) {
      auto film = FilmSource::open(path_.toStdString());
      for (FilmImage image; film && film->next(image); image = {}) {
        const auto mayGo = [&] { return images->hasRoom() && (goesOn_ || image.time_s < hold_s_); };
        while (!mayGo() && !stop.stop_requested())
          std::this_thread::sleep_for(std::chrono::milliseconds(1));
        if (stop.stop_requested()) return;
        images->offer(image.picture, image.time_s);
      }
      emit ended();
    });
  }
  void stop() override { thread_ = {}; }
  void goOn() { goesOn_ = true; }

 private:
  QString path_;
  double hold_s_;
  std::atomic<bool> goesOn_ = false;
  std::jthread thread_;
};

}  // namespace

/// A session while it is played, with a film for a camera.
class LiveSessionTest : public QObject {
  Q_OBJECT
 private slots:
  void init() { screen_ = std::make_unique<SessionScreen>(); }
  void cleanup() { screen_.reset(); }
  void aLiveShotIsMeasuredAndRecorded();
  void pictureAndPlanShowTheSameImage();
  void aSessionBegunFromTheFormIsEndedByKey();
  void aSuggestionIsShownWhenAskedForAndKeptWithTheShot();
  void whatTheRefereeAsksIsAnsweredByOneKey();
  void anAnswerGivenAtOnceIsInTheRecordWhenTheSessionEnds();
  void theFilmIsKeptBesideTheRecordOfThoseWhoAgreed();
  void withoutConsentNoFilmIsKeptAndTheSessionGoesOn();
  void aSourceThatCannotBeReadIsOneSentence();
  void imagesOfAnotherSizeAreRefused();
  void theRigIsCheckedAsTheSessionBegins();
  void aCameraThatWasPushedIsSaidAtOnce();
  void withoutACameraAFilmIsAskedFor();
  void countsAreSaidInWords();
  void everyFormOfACamerasImageBecomesThePicture();

 private:
  [[nodiscard]] static MeasureOptions options(const SessionScreen& screen);
  void play(const QString& film = kClipFolder + "stop-shot.mp4");
  [[nodiscard]] LiveDesk& live() { return screen_->place().live(); }

  std::unique_ptr<SessionScreen> screen_;
};

MeasureOptions LiveSessionTest::options(const SessionScreen& screen) {
  MeasureOptions made;
  made.rig = (kClipFolder + "rig.json").toStdString();
  made.table = (kClipFolder + "table.json").toStdString();
  made.game = "eight-ball";
  made.record = screen.record().toStdString();
  made.session = "Evening";
  made.players = {"Ada", "Ben"};
  made.kind = SessionKind::Match;
  return made;
}

/// Every image, as fast as it is measured: how fast this computer is does not matter.
void LiveSessionTest::play(const QString& film) {
  live().start(options(*screen_), std::make_shared<PacedFilm>(film, FilmPace::AsTaken));
}

void LiveSessionTest::aLiveShotIsMeasuredAndRecorded() {
  play();
  QVERIFY(screen_->isVisible("livePage"));
  QCOMPARE(screen_->words("liveTurn"), QString("Waiting for the first image"));
  QTRY_COMPARE(live().state(), LiveState::Done);
  auto* shots = screen_->find<QListWidget>("liveShots");
  QCOMPARE(shots->count(), 1);
  QVERIFY(shots->item(0)->text().contains("made"));
  QVERIFY(screen_->words("liveCounts").contains("none dropped"));
  QVERIFY(live().standing().has_value());
  auto record = Record::open(screen_->record().toStdString());
  const auto sessions = record->sessions();
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front().name, std::string("Evening"));
  QVERIFY(record->frames(sessions->front().id)->front().complete);
  QSignalSpy wanted(&screen_->place(), &Place::shotsWanted);
  screen_->find<QPushButton>("lookAtLive")->click();
  QVERIFY(wanted.wait(kPatience_ms));
  QCOMPARE(wanted.front().front().value<ShotList>().shots.size(), std::size_t{1});
  screen_->find<QPushButton>("anotherLive")->click();
  QVERIFY(screen_->isVisible("startForm"));
}

void LiveSessionTest::pictureAndPlanShowTheSameImage() {
  play();
  QSignalSpy seen(&live(), &LiveDesk::imageSeen);
  QTRY_COMPARE(live().state(), LiveState::Done);
  QVERIFY(seen.count() > 3);
  auto* page = screen_->find<QWidget>("livePage");
  const SeenImage& image = *live().image();
  QCOMPARE(page->findChild<FilmView*>("measuredFilm")->picture().number, image.picture.number);
  QVERIFY(page->findChild<PlanView*>("measuredPlan")->balls() == image.balls);
  QVERIFY(!image.balls.empty());
}

void LiveSessionTest::aSessionBegunFromTheFormIsEndedByKey() {
  screen_->find<QToolButton>("wayLive")->click();
  auto* cameras = screen_->find<QComboBox>("cameras");
  cameras->setCurrentIndex(cameras->count() - 1);
  screen_->find<QLineEdit>("standInFilm")->setText(kClipFolder + "stop-shot.mp4");
  auto* known = screen_->find<QComboBox>("knownRigs");
  known->setCurrentIndex(known->count() - 1);
  screen_->find<QLineEdit>("rigFile")->setText(kClipFolder + "rig.json");
  screen_->find<QLineEdit>("rigTable")->setText(kClipFolder + "table.json");
  screen_->find<QPushButton>("beginSession")->click();
  QTRY_VERIFY(live().state() == LiveState::Running || live().state() == LiveState::Done);
  screen_->actions().at(ActionId::EndSession)->trigger();
  QTRY_COMPARE(live().state(), LiveState::Done);
  auto record = Record::open(screen_->record().toStdString());
  QVERIFY(record->frames(record->sessions()->front().id)->front().complete);
}

void LiveSessionTest::aSuggestionIsShownWhenAskedForAndKeptWithTheShot() {
  // The strike comes at about 3.4 s.
  const auto camera = std::make_shared<HeldFilm>(kClipFolder + "stop-shot.mp4", 2.5);
  live().start(options(*screen_), camera);
  QTRY_VERIFY(live().image() != nullptr && live().image()->picture.time_s > 1.0);
  QCOMPARE(screen_->words("liveTurn"), QString("Waiting for the first shot"));
  QVERIFY(live().suggestion().found() == nullptr);
  screen_->actions().at(ActionId::ShowSuggestion)->trigger();
  QTRY_VERIFY(live().suggestion().found() != nullptr);
  auto* page = screen_->find<QWidget>("livePage");
  QVERIFY(page->findChild<QListWidget*>("suggestedPlans")->count() > 0);
  camera->goOn();
  QTRY_COMPARE(live().state(), LiveState::Done);
  // Hidden again with the shot, and remembered with it.
  QVERIFY(!live().suggestion().isWanted());
  auto record = Record::open(screen_->record().toStdString());
  const auto shot = record->shot(live().shots().all().front()->id);
  QVERIFY(shot->suggestion.has_value());
  QVERIFY(shot->suggestion->shown);
}

/// The clip begins in the middle of a frame: nobody told who plays which group.
void LiveSessionTest::whatTheRefereeAsksIsAnsweredByOneKey() {
  play();
  QTRY_COMPARE(live().state(), LiveState::Done);
  QVERIFY(live().shots().question().has_value());
  const RuledShot before = live().shots().all().front()->ruling->ruled;
  const std::size_t asked = before.ruling.questions.size();
  QVERIFY(screen_->isVisible("refereeQuestion"));
  QVERIFY(screen_->words("questionWords").startsWith("Shot 1: "));
  QVERIFY(screen_->find<QToolButton>("answer1")->text().startsWith("1 "));
  screen_->actions().at(ActionId::Answer8)->trigger();  // nothing has this number
  QVERIFY(!live().shots().canUndo());
  const auto ruled = [&] { return live().shots().all().front()->ruling->ruled; };
  screen_->actions().at(ActionId::Answer1)->trigger();
  QTRY_COMPARE(ruled().ruling.questions.size(), asked - 1);
  auto record = Record::open(screen_->record().toStdString());
  const auto kept = [&] { return rulingFromText(record->shot(live().shots().all().front()->id)->ruling->content); };
  QCOMPARE(kept()->said.answers.size(), std::size_t{1});
  screen_->actions().at(ActionId::Undo)->trigger();
  QTRY_COMPARE(ruled(), before);
  QCOMPARE(*kept(), before);
  screen_->actions().at(ActionId::AnswerLater)->trigger();
  QVERIFY(!screen_->isVisible("refereeQuestion"));
}

void LiveSessionTest::anAnswerGivenAtOnceIsInTheRecordWhenTheSessionEnds() {
  bool answered = false;
  connect(&live().shots(), &MeasuredShots::changed, this, [&] {
    if (!answered && live().shots().question()) answered = live().shots().answer(0);
  });
  play();
  QTRY_COMPARE(live().state(), LiveState::Done);
  QVERIFY(answered);
  QTRY_COMPARE(live().shots().all().front()->ruling->ruled.said.answers.size(), std::size_t{1});
  auto record = Record::open(screen_->record().toStdString());
  const auto shot = record->shot(live().shots().all().front()->id);
  QCOMPARE(rulingFromText(shot->ruling->content)->said.answers.size(), std::size_t{1});
  live().shots().disconnect(this);
}

void LiveSessionTest::theFilmIsKeptBesideTheRecordOfThoseWhoAgreed() {
  {
    auto record = Record::open(screen_->record().toStdString());
    for (const char* name : {"Ada", "Ben"}) {
      Player player;
      player.name = name;
      ConsentEntry consent;
      consent.player = *record->addPlayer(player);
      consent.scope = ConsentScope::Film;
      consent.by = name;
      QVERIFY(addConsent(*record, consent).has_value());
    }
  }
  live().start(options(*screen_), std::make_shared<PacedFilm>(kClipFolder + "stop-shot.mp4", FilmPace::AsTaken), true);
  QTRY_COMPARE(live().state(), LiveState::Done);
  QVERIFY(screen_->words("liveFilm").contains("Filming"));
  QVERIFY(live().filmRefusal().isEmpty());
  auto record = Record::open(screen_->record().toStdString());
  const auto frame = record->frames(*live().session())->front();
  const auto hash = fileSha256(frame.film->path);
  QVERIFY(hash.has_value());
  QCOMPARE(frame.film->sha256, *hash);
  QVERIFY(QString::fromStdString(frame.film->path).startsWith(QFileInfo(screen_->record()).absolutePath()));
  // It plays, and the shot is in it.
  auto film = FilmSource::open(frame.film->path);
  QVERIFY(film.has_value());
  double last_s = 0.0;
  for (FilmImage image; film->next(image);)
    last_s = image.time_s;
  QVERIFY(std::abs(last_s - frame.film->duration_s) < 0.05);
  QVERIFY(record->shots(frame.id)->front().strike_s < last_s);
}

void LiveSessionTest::withoutConsentNoFilmIsKeptAndTheSessionGoesOn() {
  live().start(options(*screen_), std::make_shared<PacedFilm>(kClipFolder + "stop-shot.mp4", FilmPace::AsTaken), true);
  QTRY_COMPARE(live().state(), LiveState::Done);
  QVERIFY(screen_->words("liveFilm").contains("Ada"));
  QVERIFY(screen_->words("liveFilm").contains("consent"));
  QCOMPARE(live().shots().all().size(), std::size_t{1});
  auto record = Record::open(screen_->record().toStdString());
  QVERIFY(record->frames(*live().session())->front().film->path.empty());
  QCOMPARE(QDir(QFileInfo(screen_->record()).absolutePath()).entryList({"*-films"}).size(), 0);
}

void LiveSessionTest::aSourceThatCannotBeReadIsOneSentence() {
  play(screen_->file("gone.mp4"));
  QTRY_VERIFY(screen_->isVisible("sessionMessage"));
  QVERIFY(screen_->words("sessionMessage").contains("gone.mp4"));
  QTRY_VERIFY(screen_->isVisible("startForm"));
  QVERIFY(Record::open(screen_->record().toStdString())->sessions()->empty());
}

void LiveSessionTest::imagesOfAnotherSizeAreRefused() {
  play(QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/films/turn-0.mp4"));
  QTRY_VERIFY(screen_->isVisible("sessionMessage"));
  QVERIFY(screen_->words("sessionMessage").contains("turn-0.mp4"));
  QTRY_VERIFY(screen_->isVisible("startForm"));
  QVERIFY(Record::open(screen_->record().toStdString())->sessions()->empty());
}

void LiveSessionTest::withoutACameraAFilmIsAskedFor() {
  screen_->find<QToolButton>("wayLive")->click();
  auto* cameras = screen_->find<QComboBox>("cameras");
  cameras->setCurrentIndex(cameras->count() - 1);
  QVERIFY(screen_->isVisible("standInFilm"));
  QVERIFY(!screen_->isVisible("cameraFormats"));
  screen_->find<QPushButton>("beginSession")->click();
  QVERIFY(screen_->words("sessionMessage").contains("camera"));
  QCOMPARE(live().state(), LiveState::None);
}

void LiveSessionTest::countsAreSaidInWords() {
  const Numbers numbers;
  QCOMPARE(countWords({1204, 0, 1}, 2, numbers), QString("1204 images, none dropped"));
  QCOMPARE(countWords({1204, 3, 0}, 0, numbers), QString("1204 images, 3 dropped"));
  QCOMPARE(countWords({30, 2, 12}, 14, numbers), QString("30 images, 2 dropped; the picture is 14 image(s) behind"));
}

/// A grey image in each form: whatever the form, the picture is that grey.
void LiveSessionTest::everyFormOfACamerasImageBecomesThePicture() {
  for (const auto form :
       {QVideoFrameFormat::Format_NV12, QVideoFrameFormat::Format_NV21, QVideoFrameFormat::Format_YUYV,
        QVideoFrameFormat::Format_UYVY, QVideoFrameFormat::Format_BGRA8888, QVideoFrameFormat::Format_RGBA8888}) {
    QVideoFrame image(QVideoFrameFormat(QSize(64, 32), form));
    QVERIFY(image.map(QVideoFrame::WriteOnly));
    // Every byte the same: grey in each of them (Y 128 of 16 to 235 is grey 130).
    for (int plane = 0; plane < image.planeCount(); ++plane)
      std::fill_n(image.bits(plane), image.mappedBytes(plane), uchar{128});
    image.unmap();
    const cv::Mat picture = pictureOf(image);
    QCOMPARE(picture.cols, 64);
    QCOMPARE(picture.rows, 32);
    QCOMPARE(picture.type(), CV_8UC3);
    const cv::Vec3b grey = picture.at<cv::Vec3b>(20, 40);
    for (int channel = 0; channel < 3; ++channel)
      QVERIFY2(std::abs(grey[channel] - 129) <= 2, qPrintable(QString::number(grey[channel])));
  }
  QVERIFY(pictureOf(QVideoFrame()).empty());
}

void LiveSessionTest::theRigIsCheckedAsTheSessionBegins() {
  play();
  QTRY_VERIFY(live().lastCheck() != nullptr);
  QTRY_VERIFY(screen_->isVisible("liveCheck"));
  QVERIFY2(screen_->words("liveCheck").contains("it fits"), qPrintable(screen_->words("liveCheck")));
  // What fits is no news: it is said beside the counts alone.
  QVERIFY(!screen_->words("sessionMessage").contains("checked"));
  QTRY_COMPARE(live().state(), LiveState::Done);
}

void LiveSessionTest::aCameraThatWasPushedIsSaidAtOnce() {
  Rig pushed = readRigFile((kClipFolder + "rig.json").toStdString()).value();
  pushed.pose.translation_m.x() += 0.020;
  MeasureOptions made = options(*screen_);
  made.rig = screen_->file("pushed.json").toStdString();
  QVERIFY(writeRigFile(made.rig, pushed).has_value());
  live().start(made, std::make_shared<PacedFilm>(kClipFolder + "stop-shot.mp4", FilmPace::AsTaken));
  QTRY_VERIFY(live().lastCheck() != nullptr);
  QTRY_VERIFY(screen_->isVisible("sessionMessage"));
  const QString said = screen_->words("sessionMessage");
  QVERIFY2(said.contains("moved by 2") && said.contains("pushed.json"), qPrintable(said));
  QTRY_COMPARE(live().state(), LiveState::Done);
}

FERRULE_TEST(LiveSessionTest)
#include "live_session_test.moc"
