// SPDX-License-Identifier: GPL-3.0-or-later
// The whole way from a film to its shots, against the truth of a film that an independent ray tracer and an independent
// time-stepping simulation made. README.md in tests/data/clip says what it shows. The limits are the design's.
#include <QtTest>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/camera/rig_file.h"
#include "core/geometry/units.h"
#include "core/table/measured_table.h"
#include "tests/bench/accuracy/analysis.h"
#include "tests/bench/accuracy/image_comparison.h"
#include "tests/bench/accuracy/shot_comparison.h"
#include "tests/bench/accuracy/statistics.h"
#include "tests/bench/accuracy/truth.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ClipTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void everyImageIsMeasured();
  void restingBallsLieWithinAMillimetre();
  void ballsKeepTheirNames();
  void noBallIsMissedAndNoneInvented();
  void theOneShotIsFound();
  void whatHappenedIsTold();
  void ballsRestWhereTheyReallyDo();
  void theStrikeIsMeasured();

 private:
  std::optional<bench::Truth> truth_;
  std::vector<ImageReading> readings_;
  std::vector<ShotReading> shots_;
  bench::ImageScore images_;
};

void ClipTest::initTestCase() {
  const std::string folder = FERRULE_SOURCE_DIR "/tests/data/clip/";
  const auto truth = bench::readTruth(folder + "truth.json");
  QVERIFY(truth.has_value());
  truth_ = *truth;
  const auto measured = readMeasuredTable(folder + "table.json");
  QVERIFY(measured.has_value());
  const auto rig = readRigFile(folder + "rig.json");
  QVERIFY(rig.has_value());
  const auto analysis = bench::analyse(folder + "stop-shot.mp4", *rig, *measured);
  QVERIFY(analysis.has_value());
  readings_ = analysis->readings;
  shots_ = analysis->shots;
  bench::ImageLog noLog("");
  images_ = bench::compareImages("stop-shot", *truth_, readings_, noLog);
}

void ClipTest::everyImageIsMeasured() {
  QCOMPARE(readings_.size(), truth_->images.size());
  for (std::size_t i = 0; i < readings_.size(); ++i) {
    QCOMPARE(readings_[i].image, static_cast<long>(i));
    QVERIFY(std::abs(readings_[i].time_s - truth_->images[i].time_s) < 1e-4);
  }
}

void ClipTest::restingBallsLieWithinAMillimetre() {
  QVERIFY(images_.slowErrors_m.size() > 500);
  QVERIFY(bench::rms(images_.slowErrors_m) <= 0.0010);
  QVERIFY(bench::quantile(images_.slowErrors_m, 0.95) <= 0.0020);
  QVERIFY(bench::quantile(images_.slowErrors_m, 1.0) <= 0.0040);
}

void ClipTest::ballsKeepTheirNames() {
  QVERIFY(images_.wrongNames.all > 0);
  QVERIFY(images_.wrongNames.percent() <= 0.1);
}

void ClipTest::noBallIsMissedAndNoneInvented() {
  QVERIFY(images_.missed.percent() <= 0.2);
  QVERIFY(images_.falseSamples.percent() <= 0.1);
}

void ClipTest::theOneShotIsFound() {
  QCOMPARE(shots_.size(), std::size_t{1});
  QCOMPARE(shots_[0].number, 1);
  QVERIFY(std::abs(shots_[0].strike_s - truth_->shots[0].strike_s) < 0.05);
}

void ClipTest::whatHappenedIsTold() {
  QCOMPARE(shots_.size(), std::size_t{1});
  const ShotReading& shot = shots_[0];
  QVERIFY(shot.firstContact == BallName(3));
  QCOMPARE(shot.pocketed.size(), std::size_t{1});
  QVERIFY(shot.pocketed[0] == (PocketedBall{BallName(3), PocketName::FootLeft}));
  QVERIFY(!shot.scratch);
  QCOMPARE(shot.outcome, Outcome::Pot);
}

void ClipTest::ballsRestWhereTheyReallyDo() {
  const bench::ShotScore score = bench::compareShots(*truth_, shots_);
  QCOMPARE(score.restBalls.hits, 1L);
  QCOMPARE(score.restBalls.all, 1L);
  QVERIFY(score.restErrors_m[0] <= 0.0020);
}

void ClipTest::theStrikeIsMeasured() {
  QCOMPARE(shots_.size(), std::size_t{1});
  const Delivery& delivery = shots_[0].delivery;
  const bench::TrueShot& truth = truth_->shots[0];
  QVERIFY(delivery.aim_rad.has_value());
  QVERIFY(std::abs(wrapAngle(delivery.aim_rad->value - truth.aim_rad)) <= radiansFromDegrees(0.15));
  QVERIFY(delivery.speed_mps.has_value());
  QVERIFY(std::abs(delivery.speed_mps->value / truth.speed_mps - 1.0) <= 0.02);
}

FERRULE_TEST(ClipTest)
#include "clip_test.moc"
