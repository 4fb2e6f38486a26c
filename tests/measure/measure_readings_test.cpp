// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <numbers>

#include "core/base/text_file.h"
#include "core/cue/cue_text.h"
#include "core/measure/measure.h"
#include "core/physics/simulator.h"
#include "core/record/export_record.h"
#include "tests/measure/synthetic_readings.h"
#include "tests/record/sample.h"
#include "tests/support/shot_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A film of a simulated shot.
class SimulatedFilm : public ReadingSource {
 public:
  SimulatedFilm(const MeasuredTable& measured, const Position& balls, const Strike& strike) {
    const auto simulator = Simulator::create(measured.table, parametersFor(measured.balls));
    Random random(7);
    readings_ = ferrule::testing::filmOf(*simulator->shoot(balls, strike), {}, random);
  }
  std::optional<std::vector<ImageReading>> next() override {
    if (readings_.empty()) return std::nullopt;
    return std::exchange(readings_, {});
  }
  SourceProgress progress() const override { return {}; }

 private:
  std::vector<ImageReading> readings_;
};

/// Readings of a camera that was moved before the first strike.
class MovedCamera : public ReadingSource {
 public:
  MovedCamera(std::vector<ImageReading> readings, TablePoint3 from, TablePoint3 to)
      : readings_(std::move(readings)), camera_(from), to_(to) {}
  std::optional<std::vector<ImageReading>> next() override {
    if (next_ == readings_.size()) return std::nullopt;
    const std::size_t until = next_ == 0 ? 10 : readings_.size();
    if (next_ > 0) camera_ = to_;
    const std::vector<ImageReading> some(readings_.begin() + static_cast<std::ptrdiff_t>(next_),
                                         readings_.begin() + static_cast<std::ptrdiff_t>(until));
    next_ = until;
    return some;
  }
  SourceProgress progress() const override { return {}; }
  std::optional<TablePoint3> camera() const override { return camera_; }

 private:
  std::vector<ImageReading> readings_;
  std::size_t next_ = 0;
  TablePoint3 camera_;
  TablePoint3 to_;
};

/// A film that also shows the cue before each shot.
class CueSeen : public synthetic::Readings {
 public:
  using synthetic::Readings::Readings;
  std::optional<CueReading> cueOf(const ReadShot& shot) override {
    CueReading cue;
    cue.images = 10 * shot.reading.number;
    cue.aim_rad = Measured{0.01, 0.001};
    return cue;
  }
};

}  // namespace

class MeasureReadingsTest : public QObject {
  Q_OBJECT
 private slots:
  void fileAndRecordAndObserverGetTheSameShots();
  void whatBroughtAMissThereIsKeptWithTheShot();
  void aMovedCameraIsReadFromItsNewPlace();
  void whatIsKnownOfTheTableReachesTheReading();
  void aRefereesRulingStandsBesideItsShot();
  void whatWasSeenOfTheCueIsKeptWithItsShot();
  void cancellingKeepsWhatWasCommitted();
  void progressRisesToTheEnd();
};

/// Two strikes in 22 s.
void MeasureReadingsTest::fileAndRecordAndObserverGetTheSameShots() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  auto file = MeasuredFile::make(folder.file("measured.json"));
  QVERIFY(file.has_value());
  std::vector<ShotReading> told;
  long images = 0;
  MeasureObserver observer;
  observer.shot = [&](const ReadShot& shot) { told.push_back(shot.reading); };
  observer.image = [&](const ImageReading&) { ++images; };
  synthetic::Readings source(22 * 60);
  const auto report = measureReadings(source, sample::table(), {&record, game.frame, game.ada, &*file}, {}, observer);
  QVERIFY(report.has_value());
  QCOMPARE(report->shots, 2);
  QCOMPARE(report->images, 22L * 60);
  QCOMPARE(images, 22L * 60);
  QCOMPARE(told.size(), std::size_t{2});
  QVERIFY(std::abs(told[0].strike_s - 2.0) < 0.1);
  QVERIFY(std::abs(told[1].strike_s - 12.0) < 0.1);

  const auto shots = record.shots(game.frame);
  QVERIFY(shots.has_value());
  QCOMPARE(shots->size(), std::size_t{2});
  for (std::size_t i = 0; i < 2; ++i) {
    const auto shot = record.shot((*shots)[i].id);
    QVERIFY(shot.has_value());
    QVERIFY(shot->reading == told[i]);
    QVERIFY(shot->player == game.ada);
    QVERIFY(!shot->tracks.empty());
  }
  QVERIFY(file->keep({"synthetic", report->images, report->duration_s, {1280, 720}}, sample::rig()).has_value());
  const auto measured = nlohmann::json::parse(readTextFile(folder.file("measured.json")).value());
  QCOMPARE(measured["shots"].size(), std::size_t{2});
  QCOMPARE(measured["tracks"].size(), std::size_t{2});
  QCOMPARE(measured["tracks"][0]["t_s"].size(), std::size_t{22 * 60});
  QCOMPARE(measured["tracks"][0]["seen"].size(), std::size_t{22 * 60});
}

/// An elevated stroke hops, and a ball in the air is seen aside of where it is: by how much depends on the camera.
void MeasureReadingsTest::aMovedCameraIsReadFromItsNewPlace() {
  const MeasuredTable measured = sample::table();
  const auto simulator = Simulator::create(measured.table, parametersFor(measured.balls));
  const Position balls{{kCueBall, {-0.7, 0.0}}, {BallName(3), {0.5, 0.3}}};
  const Simulation hop = *simulator->shoot(balls, {0.05, 2.5, 0.0, 0.0, 0.35});
  const TablePoint3 first{0.0, 0.0, 2.5};
  ferrule::testing::FilmSampling sampling;
  sampling.camera = TablePoint3{0.6, -1.2, 1.6};
  Random random(3);
  const auto readings = ferrule::testing::filmOf(hop, sampling, random);
  const auto readFrom = [&](TablePoint3 from, TablePoint3 to) {
    MovedCamera source(readings, from, to);
    ShotReading read;
    MeasureObserver observer;
    observer.shot = [&](const ReadShot& shot) { read = shot.reading; };
    if (!measureReadings(source, measured, {}, {}, observer)) qFatal("not read");
    return read;
  };
  const ShotReading moved = readFrom(first, *sampling.camera);
  QVERIFY(moved == readFrom(*sampling.camera, *sampling.camera));
  QVERIFY(!(moved == readFrom(first, first)));
}

/// A cut into the foot-left corner that comes out thick: the record says where the line's error came from.
void MeasureReadingsTest::whatBroughtAMissThereIsKeptWithTheShot() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const MeasuredTable measured = sample::table();
  // The ghost ball for the corner lies at (0.454, 0.066); the aim is 0.2 degrees thick of it.
  const Position balls{{kCueBall, {-0.3, -0.1}}, {BallName(3), {0.5, 0.1}}};
  const double aim_rad = std::atan2(0.166, 0.754) + 0.2 * std::numbers::pi / 180.0;
  SimulatedFilm source(measured, balls, {aim_rad, 1.8, 0.0, 0.0, 0.05});
  std::vector<ShotReading> told;
  MeasureObserver observer;
  observer.shot = [&](const ReadShot& shot) { told.push_back(shot.reading); };
  QVERIFY(measureReadings(source, measured, {&record, game.frame, game.ada}, {}, observer).has_value());
  QCOMPARE(told.size(), std::size_t{1});
  const auto shots = record.shots(game.frame);
  QVERIFY(shots.has_value());
  const auto kept = record.shot(shots->front().id);
  QVERIFY(kept.has_value());
  QVERIFY(kept->reading == told.front());
  const auto& account = kept->reading.missAccount;
  QVERIFY(account.has_value());
  const double sum_rad = account->aim_rad.value + account->squirt_rad.value + account->swerve_rad.value +
                         account->collisionThrow_rad.value + account->spinThrow_rad.value + account->speed_rad.value +
                         account->remainder_rad.value;
  QVERIFY(std::abs(sum_rad - account->total_rad.value) < 1e-9);
  QVERIFY(std::abs(account->total_rad.value) > 0.02);
  for (const Measured& part : {account->aim_rad, account->collisionThrow_rad, account->remainder_rad})
    QVERIFY(part.standardUncertainty > 0.0);
  // Read from the plain table: the aim is what was wrong, and on the side of the miss.
  QVERIFY(account->aim_rad.value * account->total_rad.value > 0.0);
  QVERIFY(exportRecord(record, {folder.file("out"), std::nullopt}).has_value());
  const auto all = nlohmann::json::parse(*readTextFile(folder.file("out/record.json")));
  const auto& json = all["sessions"][0]["frames"][0]["shots"][0]["miss_account"];
  QVERIFY(std::abs(json["aim_deg"].get<double>() - account->aim_rad.value * 180.0 / std::numbers::pi) < 1e-5);
  QVERIFY(json["aim_u_deg"].get<double>() > 0.0);
}

void MeasureReadingsTest::whatIsKnownOfTheTableReachesTheReading() {
  const MeasuredTable measured = sample::table();
  const Fingerprint cloth{"table", "2026-03-01", {{"sliding_friction", 0.3, 0.01, 0.2, 0.05, true}}, 5, 300,
                          5e-4,    true};
  const auto readWith = [&](const Fingerprint* table) {
    SimulatedFilm source(measured, {{kCueBall, {-0.3, -0.1}}, {BallName(3), {0.5, 0.1}}}, {0.2, 1.8, 0.0, 0.0, 0.05});
    ShotReading read;
    MeasureObserver observer;
    observer.shot = [&](const ReadShot& shot) { read = shot.reading; };
    MeasureSinks sinks;
    sinks.table = table;
    if (!measureReadings(source, measured, sinks, {}, observer)) qFatal("not read");
    return read.delivery;
  };
  QVERIFY(readWith(nullptr).speed_mps.has_value());
  QVERIFY(!(readWith(nullptr) == readWith(&cloth)));
}

/// The cue ball meets nothing, twice: a foul each time, so the turns alternate.
void MeasureReadingsTest::aRefereesRulingStandsBesideItsShot() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  auto file = MeasuredFile::make(folder.file("measured.json"));
  QVERIFY(file.has_value());
  FilmReferee referee(worldRules(Game::NineBall), sample::table());
  std::vector<FilmRuling> told;
  MeasureObserver observer;
  observer.ruling = [&](const ReadShot&, const FilmRuling& ruling) { told.push_back(ruling); };
  synthetic::Readings source(22 * 60);
  MeasureSinks sinks;
  sinks.record = &record;
  sinks.frame = game.frame;
  sinks.file = &*file;
  sinks.referee = &referee;
  sinks.seats = {game.ada, game.ben};
  QVERIFY(measureReadings(source, sample::table(), sinks, {}, observer).has_value());
  QCOMPARE(told.size(), std::size_t{2});
  QCOMPARE(told[0].ruled.ruling.fouls.at(0).kind, FoulKind::NoContact);
  QCOMPARE(told[1].ruled.ruling.shooter, Seat::Second);
  const auto shots = record.shots(game.frame);
  QVERIFY(shots.has_value());
  for (std::size_t i = 0; i < 2; ++i) {
    const auto shot = record.shot((*shots)[i].id);
    QVERIFY(shot.has_value() && shot->ruling.has_value());
    QCOMPARE(rulingFromText(shot->ruling->content), std::optional(told[i].ruled));
    QCOMPARE(shot->ruling->fouls, std::vector<std::string>{"no-contact"});
    // The film begins in the middle of a frame: nobody knows who struck.
    QVERIFY(!shot->player.has_value());
  }
  QVERIFY(file->keep({"synthetic", 1, 1.0, {1280, 720}}, sample::rig()).has_value());
  const auto measured = nlohmann::json::parse(readTextFile(folder.file("measured.json")).value());
  QCOMPARE(rulingFromText(measured["shots"][1]["ruling"].dump()), std::optional(told[1].ruled));
}

void MeasureReadingsTest::whatWasSeenOfTheCueIsKeptWithItsShot() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  auto file = MeasuredFile::make(folder.file("m.json"));
  MeasureSinks sinks;
  sinks.record = &record;
  sinks.frame = game.frame;
  sinks.file = &*file;
  std::vector<int> told;
  MeasureObserver observer;
  observer.cue = [&](const ReadShot&, const CueReading& cue) { told.push_back(cue.images); };
  CueSeen source(22 * 60);
  QVERIFY(measureReadings(source, sample::table(), sinks, {}, observer).has_value());
  QCOMPARE(told, (std::vector<int>{10, 20}));
  QVERIFY(file->keep({"a.mp4", 1, 1.0, {1, 1}}, sample::rig()).has_value());
  const auto shots = nlohmann::json::parse(*readTextFile(folder.file("m.json")))["shots"];
  QCOMPARE(shots.size(), std::size_t{2});
  QCOMPARE(shots[1]["cue"]["images"].get<int>(), 20);
  const auto kept = record.shots(game.frame);
  QVERIFY(kept.has_value());
  const auto shot = record.shot(kept->back().id);
  QVERIFY(shot.has_value() && shot->explanation.has_value());
  const auto cue = cueInExplanation(*shot->explanation);
  QVERIFY(cue.has_value());
  QCOMPARE(cue->images, 20);
}

void MeasureReadingsTest::cancellingKeepsWhatWasCommitted() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  {
    auto file = MeasuredFile::make(folder.file("measured.json"));
    QVERIFY(file.has_value());
    std::stop_source stop;
    synthetic::Readings source(40 * 60);
    source.beforeImage = [&](long image) {
      if (image == 13 * 60) stop.request_stop();
    };
    JobControl job;
    job.stop = stop.get_token();
    const auto report = measureReadings(source, sample::table(), {&record, game.frame, std::nullopt, &*file}, job);
    QVERIFY(!report.has_value());
    QCOMPARE(report.error().code, ErrorCode::Cancelled);
  }
  QCOMPARE(record.shots(game.frame)->size(), std::size_t{1});
  QVERIFY(!record.frames(game.session)->front().complete);
  QVERIFY(!std::filesystem::exists(folder.file("measured.json")));
  QVERIFY(!std::filesystem::exists(folder.file("measured.json.part")));
}

void MeasureReadingsTest::progressRisesToTheEnd() {
  double last = 0.0;
  bool rises = true;
  JobControl job;
  job.report = [&](double share, std::string_view step) {
    rises = rises && share >= last && step == "measuring";
    last = share;
  };
  synthetic::Readings source(300);
  QVERIFY(measureReadings(source, sample::table(), {}, job).has_value());
  QVERIFY(rises);
  QCOMPARE(last, 1.0);
}

FERRULE_TEST(MeasureReadingsTest)
#include "measure_readings_test.moc"
