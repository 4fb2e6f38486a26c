// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/measure_live.h"

#include <QtTest>
#include <filesystem>
#include <opencv2/core.hpp>

#include "core/camera/rig_file.h"
#include "core/measure/correct_shot.h"
#include "core/measure/film_readings.h"
#include "core/measure/live_readings.h"
#include "core/record/frame_moves.h"
#include "core/rules/answers.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What a camera sees, with the clip of the tests for a camera.
class MeasureLiveTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void theSameImagesGiveTheSameReadings();
  void keptPicturesAreThoseOfTheirReadings();
  void theNewestImageIsKnownAtOnceAndNearlyAsInTheEnd();
  void noneIsShownWhileManyWait();
  void aLiveSessionStandsInTheRecordComplete();
  void theShotIsToldBeforeTheCameraEnds();
  void aSuggestionSeenBeforeTheStrikeIsKeptWithTheShot();
  void anAnswerWhileTheCameraRunsIsACorrectionAndInForce();
  void imagesOfAnotherSizeAreRefusedBeforeAnythingIsMade();
  void withoutAnImageNothingIsMade();
  void aStopEndsTheSessionWhole();
  void aCameraThatIsPushedBetweenShotsKeepsBothRigs();

 private:
  [[nodiscard]] static MeasureOptions options(const sample::Folder& folder);
  [[nodiscard]] LiveInput input(ImageQueue& images) {
    return {images, inbox_, [] { return UtcMilliseconds{1'772'389'800'000}; }};
  }
  /// A queue that holds the whole clip.
  [[nodiscard]] std::unique_ptr<ImageQueue> clip(bool closed = true) const;

  std::vector<FilmImage> images_;
  LiveInbox inbox_;
};

namespace {

const std::string kClip = FERRULE_SOURCE_DIR "/tests/data/clip/";

FilmSource openClip() {
  auto film = FilmSource::open(kClip + "stop-shot.mp4");
  if (!film) qFatal("the clip cannot be read");
  return std::move(*film);
}

std::vector<ImageReading> allOf(ReadingSource& source) {
  std::vector<ImageReading> all;
  while (const auto some = source.next())
    all.insert(all.end(), some->begin(), some->end());
  return all;
}

}  // namespace

void MeasureLiveTest::initTestCase() {
  FilmSource film = openClip();
  for (FilmImage image; film.next(image); image = {})
    images_.push_back(image);
  QVERIFY(images_.size() > 50);
}

MeasureOptions MeasureLiveTest::options(const sample::Folder& folder) {
  MeasureOptions made;
  made.film = "a camera";
  made.rig = kClip + "rig.json";
  made.table = kClip + "table.json";
  made.game = "eight-ball";
  made.record = folder.file("r.sqlite");
  made.session = "Evening";
  made.players = {"Ada", "Ben"};
  made.kind = SessionKind::Match;
  return made;
}

std::unique_ptr<ImageQueue> MeasureLiveTest::clip(bool closed) const {
  auto queue = std::make_unique<ImageQueue>(images_.size());
  for (const FilmImage& image : images_) {
    if (!queue->offer(image.picture, image.time_s)) qFatal("no room");
  }
  if (closed) queue->close();
  return queue;
}

void MeasureLiveTest::theSameImagesGiveTheSameReadings() {
  const auto rig = readRigFile(kClip + "rig.json");
  const auto measured = measuredTableFrom(kClip + "table.json");
  QVERIFY(rig.has_value() && measured.has_value());
  FilmReadings film(openClip(), *rig, *measured);
  const auto queue = clip();
  LiveReadings live(*queue, *rig, *measured, {});
  const auto fromFilm = allOf(film);
  const auto fromCamera = allOf(live);
  QCOMPARE(fromFilm.size(), images_.size());
  QVERIFY(fromCamera == fromFilm);
  QCOMPARE(live.progress().images, film.progress().images);
}

void MeasureLiveTest::theNewestImageIsKnownAtOnceAndNearlyAsInTheEnd() {
  const auto rig = readRigFile(kClip + "rig.json");
  const auto measured = measuredTableFrom(kClip + "table.json");
  ImageQueue queue;
  LiveReadings live(queue, *rig, *measured, {});
  std::vector<ImageReading> seen;
  std::vector<ImageReading> settled;
  for (const FilmImage& image : images_) {
    QVERIFY(queue.offer(image.picture, image.time_s));
    const auto some = live.next();
    settled.insert(settled.end(), some->begin(), some->end());
    auto glimpse = live.glimpse();
    QVERIFY(glimpse.has_value());
    QCOMPARE(glimpse->kept.picture.data, image.picture.data);
    seen.push_back(std::move(glimpse->reading));
    QCOMPARE(seen.back().image, static_cast<long>(seen.size()) - 1);
  }
  queue.close();
  const auto rest = allOf(live);
  settled.insert(settled.end(), rest.begin(), rest.end());
  QVERIFY(!live.glimpse());
  QCOMPARE(settled.size(), seen.size());
  // Once the names had their time, what is seen of a ball stands.
  std::size_t balls = 0;
  std::size_t same = 0;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    if (seen[i].time_s < 1.0) continue;
    balls += settled[i].balls.size();
    for (const BallSample& ball : settled[i].balls)
      same += static_cast<std::size_t>(std::ranges::count(seen[i].balls, ball));
  }
  QVERIFY(balls > 100);
  QVERIFY2(static_cast<double>(same) > 0.98 * static_cast<double>(balls),
           qPrintable(QString("%1 of %2").arg(same).arg(balls)));
}

void MeasureLiveTest::noneIsShownWhileManyWait() {
  const auto rig = readRigFile(kClip + "rig.json");
  const auto measured = measuredTableFrom(kClip + "table.json");
  const auto queue = clip();
  LiveReadings live(*queue, *rig, *measured, {});
  std::vector<double> shown_s;
  while (live.next()) {
    if (const auto glimpse = live.glimpse()) shown_s.push_back(glimpse->reading.time_s);
  }
  // The first and then four a second, until at the end nothing waits any more.
  const auto slow = std::ranges::count_if(shown_s, [&](double time_s) { return time_s < images_.back().time_s - 0.1; });
  const double expected = images_.back().time_s / LiveReadings::kSeldom_s;
  QVERIFY2(static_cast<double>(slow) > 0.7 * expected && static_cast<double>(slow) <= expected + 1.0,
           qPrintable(QString("%1 instead of %2").arg(slow).arg(expected)));
  QVERIFY(shown_s.back() > images_.back().time_s - 1e-6);
}

void MeasureLiveTest::keptPicturesAreThoseOfTheirReadings() {
  const sample::Folder folder;
  const auto queue = clip();
  std::vector<long> numbers;
  LiveObserver observer;
  observer.measured.picture = [&](const ImageReading& reading, const KeptPicture& kept) {
    numbers.push_back(reading.image);
    const cv::Mat& seen = images_[static_cast<std::size_t>(reading.image)].picture;
    QVERIFY(cv::norm(kept.picture, seen, cv::NORM_INF) == 0.0);
    QVERIFY(kept.rig != nullptr);
  };
  QVERIFY(measureLive(options(folder), input(*queue), {}, observer).has_value());
  // Some images a second, to the film's end, and far from all.
  const double length_s = images_.back().time_s;
  QVERIFY(static_cast<double>(numbers.size()) > 0.5 * length_s / ImageFollower::kPictureSpacing_s);
  QVERIFY(static_cast<double>(numbers.size()) <= length_s / ImageFollower::kPictureSpacing_s + 1.0);
  QVERIFY(std::ranges::is_sorted(numbers));
}

void MeasureLiveTest::aLiveSessionStandsInTheRecordComplete() {
  const sample::Folder folder;
  const auto queue = clip();
  std::vector<LiveStanding> standings;
  LiveObserver observer;
  observer.standing = [&](const LiveStanding& standing) { standings.push_back(standing); };
  const auto report = measureLive(options(folder), input(*queue), {}, observer);
  QVERIFY(report.has_value());
  QCOMPARE(report->shots, 1);
  QCOMPARE(standings.size(), std::size_t{1});
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto sessions = record.sessions();
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front().name, std::string("Evening"));
  QCOMPARE(sessions->front().kind, SessionKind::Match);
  QCOMPARE(sessions->front().started, UtcMilliseconds{1'772'389'800'000});
  const auto frames = record.frames(sessions->front().id);
  QVERIFY(frames->front().complete);
  // Seen live: a film of its own, of which no file was kept.
  QVERIFY(frames->front().film.has_value());
  QVERIFY(frames->front().film->path.empty());
  QCOMPARE(frames->front().film->images, static_cast<long>(images_.size()));
  const auto shots = record.shots(frames->front().id);
  QCOMPARE(shots->size(), std::size_t{1});
  QVERIFY(shots->front().struckAt.has_value());
  QVERIFY(*shots->front().struckAt > sessions->front().started);
  // The next evening of that name is a session of its own.
  const auto again = clip();
  QVERIFY(measureLive(options(folder), input(*again), {}).has_value());
  QCOMPARE(record.sessions()->size(), std::size_t{2});
}

/// The camera still runs when the shot is told: within a second of film after rest.
void MeasureLiveTest::theShotIsToldBeforeTheCameraEnds() {
  const sample::Folder folder;
  ImageQueue queue(images_.size() + 200);
  for (const FilmImage& image : images_)
    QVERIFY(queue.offer(image.picture, image.time_s));
  // The table lies still a while longer.
  const double end_s = images_.back().time_s;
  for (int i = 1; i <= 90; ++i)
    QVERIFY(queue.offer(images_.back().picture, end_s + i / 30.0));
  queue.close();
  double newest_s = 0.0;
  double told_s = 0.0;
  double rest_s = 0.0;
  LiveObserver observer;
  observer.measured.image = [&](const ImageReading& reading) { newest_s = reading.time_s; };
  observer.measured.shot = [&](const ReadShot& shot) {
    told_s = newest_s;
    rest_s = shot.reading.rest_s;
  };
  QVERIFY(measureLive(options(folder), input(queue), {}, observer).has_value());
  QVERIFY(rest_s > 0.0);
  QVERIFY2(told_s - rest_s < 1.0, qPrintable(QString::number(told_s - rest_s)));
}

void MeasureLiveTest::aSuggestionSeenBeforeTheStrikeIsKeptWithTheShot() {
  const sample::Folder folder;
  inbox_.put({0.1, {"planner 1", false, {}, {}, "{\"plans\":[]}"}});
  inbox_.put({0.2, {"planner 1", false, {}, {}, "{\"plans\":[1]}"}});
  inbox_.put({1e6, {"planner 1", false, {}, {}, "{}"}});  // before a shot that never comes
  const auto queue = clip();
  QVERIFY(measureLive(options(folder), input(*queue), {}).has_value());
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto frame = record.frames(record.sessions()->front().id)->front().id;
  const auto shot = record.shot(record.shots(frame)->front().id);
  QVERIFY(shot->suggestion.has_value());
  QVERIFY(shot->suggestion->shown);
  QCOMPARE(shot->suggestion->content, std::string("{\"plans\":[1]}"));
}

/// The clip begins in the middle of a frame: the referee asks for the groups.
void MeasureLiveTest::anAnswerWhileTheCameraRunsIsACorrectionAndInForce() {
  const sample::Folder folder;
  ImageQueue queue(images_.size() + 200);
  for (const FilmImage& image : images_)
    QVERIFY(queue.offer(image.picture, image.time_s));
  const double end_s = images_.back().time_s;
  for (int i = 1; i <= 90; ++i)
    QVERIFY(queue.offer(images_.back().picture, end_s + i / 30.0));
  queue.close();
  ShotId asked;
  PocketedBall fallen;
  std::vector<RuledAgain> again;
  std::vector<LiveStanding> standings;
  LiveObserver observer;
  observer.standing = [&](const LiveStanding& standing) { standings.push_back(standing); };
  observer.measured.ruledAgain = [&](const std::vector<RuledAgain>& ruled) { again = ruled; };
  observer.measured.recorded = [&](const ReadShot& shot, ShotId id) {
    asked = id;
    const auto answers = answersTo({DoubtKind::GroupsUnknown, {}, {}}, shot.reading.events);
    // And one that was seen to lie still fell, says who stood by.
    Testimony fell;
    fell.kind = TestimonyKind::Fell;
    fell.ball = shot.reading.after.back().ball;
    fallen = {fell.ball, fell.pocket};
    inbox_.put(SaidOfRecorded{id, {{}, {}, {}, {answers.back().says, fell}, {}}, "Cleo", 7});
    inbox_.put(SaidOfRecorded{{}, {}, "Cleo", 7});  // of a shot that this session does not hold
  };
  QVERIFY(measureLive(options(folder), input(queue), {}, observer).has_value());
  QCOMPARE(again.size(), std::size_t{1});
  QCOMPARE(again.front().shot, asked);
  QCOMPARE(standings.size(), std::size_t{2});
  QCOMPARE(standings.back().state.groupOfFirst, std::optional(Group::Stripes));
  QVERIFY(std::ranges::none_of(again.front().ruling.ruled.ruling.questions, [](const Question& question) {
    return question.doubt.kind == DoubtKind::GroupsUnknown;
  }));

  Record record = sample::openOrDie(folder.file("r.sqlite"));
  const auto shot = record.shot(asked);
  const auto ruled = rulingFromText(shot->ruling->content);
  QCOMPARE(ruled->said.answers.size(), std::size_t{2});
  QCOMPARE(*ruled, again.front().ruling.ruled);
  QCOMPARE(shot->reading.pocketed.back(), fallen);
  QCOMPARE(again.front().reading->pocketed, shot->reading.pocketed);
  QCOMPARE(again.front().reading->outcome, shot->reading.outcome);
  QCOMPARE(shot->corrections.front().field, std::string("ruling"));
  const auto said = std::ranges::find(shot->corrections, std::string("ruling"), &ValueCorrection::field);
  QVERIFY(said != shot->corrections.end());
  QCOMPARE(said->who, std::string("Cleo"));
  const auto measured = rulingFromText(said->measured.value_or(std::string()));
  QVERIFY(measured && measured->said == SaidOfRuling{});
  // Read from the record again it is ruled the same.
  const auto why = sayOfShot(record, asked, RulingSaid{ruled->said}, "Cleo", 8);
  QVERIFY(why.has_value() && !why->why);
  QCOMPARE(rulingFromText(record.shot(asked)->ruling->content), ruled);
}

void MeasureLiveTest::imagesOfAnotherSizeAreRefusedBeforeAnythingIsMade() {
  const sample::Folder folder;
  ImageQueue queue;
  QVERIFY(queue.offer(cv::Mat(480, 640, CV_8UC3, cv::Scalar::all(60)), 0.0));
  queue.close();
  const auto report = measureLive(options(folder), input(queue), {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::ImageSizeMismatch);
  QCOMPARE(report.error().subject, std::string("a camera"));
  QCOMPARE(report.error().numbers, (std::vector<double>{640, 480, 1280, 720}));
  QVERIFY(!std::filesystem::exists(folder.file("r.sqlite")));
}

void MeasureLiveTest::withoutAnImageNothingIsMade() {
  const sample::Folder folder;
  ImageQueue queue;
  queue.close();
  const auto report = measureLive(options(folder), input(queue), {});
  QVERIFY(report.has_value());
  QCOMPARE(report->images, 0L);
  QVERIFY(!report->session.has_value());
  QVERIFY(!std::filesystem::exists(folder.file("r.sqlite")));
}

void MeasureLiveTest::aStopEndsTheSessionWhole() {
  const sample::Folder folder;
  const auto queue = clip(false);
  std::stop_source stop;
  JobControl job;
  job.stop = stop.get_token();
  LiveObserver observer;
  observer.measured.image = [&](const ImageReading& reading) {
    if (reading.image == 30) stop.request_stop();
  };
  const auto report = measureLive(options(folder), input(*queue), job, observer);
  QVERIFY(report.has_value());
  QVERIFY(report->images < static_cast<long>(images_.size()));
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  QVERIFY(record.frames(record.sessions()->front().id)->front().complete);
}

/// The clip, its last picture for a while, and then that picture shifted by 5 px: a camera that was pushed after the
/// shot.
void MeasureLiveTest::aCameraThatIsPushedBetweenShotsKeepsBothRigs() {
  const sample::Folder folder;
  ImageQueue queue(images_.size() + 400);
  double time_s = 0.0;
  for (const FilmImage& image : images_) {
    queue.offer(image.picture, image.time_s);
    time_s = image.time_s;
  }
  const cv::Mat& last = images_.back().picture;
  cv::Mat pushed = last.clone();
  last.colRange(0, last.cols - 5).copyTo(pushed.colRange(5, last.cols));
  const double pushed_s = time_s + 2.0;
  while (time_s < pushed_s + 4.0) {
    time_s += 1.0 / 30.0;
    QVERIFY(queue.offer(time_s < pushed_s ? last : pushed, time_s));
  }
  queue.close();
  const auto report = measureLive(options(folder), input(queue), {});
  QVERIFY(report.has_value());
  QCOMPARE(report->shots, 1);
  QCOMPARE(report->moves.size(), std::size_t{1});
  QVERIFY(report->moves.front().moved_m > 0.005);
  auto record = Record::open(folder.file("r.sqlite"));
  const auto frames = record->frames(*report->session);
  const auto moves = movesOf(*record, frames->front().id);
  QVERIFY(moves.has_value());
  QCOMPARE(moves->size(), std::size_t{1});
  const CameraMove& move = moves->front();
  QVERIFY2(std::abs(move.time_s - pushed_s) < 1.3, qPrintable(QString::number(move.time_s)));
  const Rig before = **record->rigOf(frames->front().id);
  QVERIFY(before == readRigFile(kClip + "rig.json").value());
  QVERIFY(before.pose.translation_m != move.rig.pose.translation_m);
  const auto shots = record->shots(frames->front().id);
  QVERIFY(!isDuring(move, shots->front().strike_s, shots->front().rest_s));
}

FERRULE_TEST(MeasureLiveTest)
#include "measure_live_test.moc"
