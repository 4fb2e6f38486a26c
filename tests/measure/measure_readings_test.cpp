// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/measure/measure.h"
#include "tests/measure/synthetic_readings.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A reading without what only measured.json tells: why something is absent, how sure an event is, flags, and what
/// follows from the target's line.
ShotReading asRecorded(ShotReading reading) {
  reading.delivery.whyNoStrike.reset();
  reading.delivery.whyNoSide.reset();
  reading.delivery.whyNoHeight.reset();
  reading.delivery.whyNoElevation.reset();
  for (ShotEvent& event : reading.events) {
    event.timeUncertainty_s = 0.0;
    event.verdict.reset();
  }
  if (reading.target) {
    const Target full = *reading.target;
    reading.target = Target{full.ball, full.pocket, full.cut_rad, full.lineError_rad, full.missSide};
  }
  reading.missAccount.reset();
  reading.flags.clear();
  return reading;
}

}  // namespace

class MeasureReadingsTest : public QObject {
  Q_OBJECT
 private slots:
  void fileAndRecordAndObserverGetTheSameShots();
  void aRefereesRulingStandsBesideItsShot();
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
    QCOMPARE(shot->reading, asRecorded(told[i]));
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
