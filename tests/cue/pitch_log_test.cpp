// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/pitch_log.h"

#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PitchLogTest : public QObject {
  Q_OBJECT
 private slots:
  void itsLinesAreReadAndOtherColumnsSkipped();
  void aColumnThatIsNotThereIsNamed();
  void aLineThatIsNoNumberIsNamed();
  void timeThatRunsBackIsNamed();
  void aPitchBeyondARightAngleIsRefused();
  void aHeaderAloneIsEmpty();
  void gapsAreFoundAndHoldNoPitch();
  void theNoiseIsThatOfItsLines();
  void aPitchIsReadBetweenTheLines();
};

namespace {

std::string logOf(double until_s, double noise_deg, double slope_deg_s, std::uint64_t seed) {
  Random random(seed);
  std::string text = "time_s,pitch_deg\n";
  for (int i = 0; i * 0.01 < until_s; ++i) {
    text += std::to_string(i * 0.01) + "," +
            std::to_string(5.0 + slope_deg_s * i * 0.01 + noise_deg * random.normal()) + "\n";
  }
  return text;
}

}  // namespace

void PitchLogTest::itsLinesAreReadAndOtherColumnsSkipped() {
  const auto log = parsePitchLog("\xEF\xBB\xBFroll, time_s,pitch_deg\r\n1,0.5, 90\r\n\r\nx,0.6,-45\r\n", "p.csv");
  QVERIFY(log.has_value());
  QCOMPARE(log->samples.size(), std::size_t{2});
  QCOMPARE(log->samples[0].time_s, 0.5);
  QCOMPARE(log->samples[1].pitch_rad, radiansFromDegrees(-45.0));
  QVERIFY(std::abs(log->step_s - 0.1) < 1e-12);
}

void PitchLogTest::aColumnThatIsNotThereIsNamed() {
  const auto log = parsePitchLog("time_s,pitch\n0,1\n", "p.csv");
  QVERIFY(!log.has_value());
  QCOMPARE(log.error(), (Error{ErrorCode::FieldMissing, "p.csv", "pitch_deg", {}}));
}

void PitchLogTest::aLineThatIsNoNumberIsNamed() {
  const auto log = parsePitchLog("time_s,pitch_deg\n0,1\n0.1,high\n", "p.csv");
  QVERIFY(!log.has_value());
  QCOMPARE(log.error(), (Error{ErrorCode::FileMalformed, "p.csv", "line 3", {}}));
}

void PitchLogTest::timeThatRunsBackIsNamed() {
  const auto log = parsePitchLog("time_s,pitch_deg\n0,1\n0.1,1\n0.1,1\n", "p.csv");
  QVERIFY(!log.has_value());
  QCOMPARE(log.error().detail, std::string("line 4: time_s"));
}

void PitchLogTest::aPitchBeyondARightAngleIsRefused() {
  const auto log = parsePitchLog("time_s,pitch_deg\n0,1\n0.1,912\n", "p.csv");
  QVERIFY(!log.has_value());
  QCOMPARE(log.error(), (Error{ErrorCode::FieldInvalid, "p.csv", "pitch_deg", {912.0, -90.0, 90.0}}));
}

void PitchLogTest::aHeaderAloneIsEmpty() {
  QCOMPARE(parsePitchLog("time_s,pitch_deg\n", "p.csv").error().code, ErrorCode::FileEmpty);
}

void PitchLogTest::gapsAreFoundAndHoldNoPitch() {
  std::string text = "time_s,pitch_deg\n";
  for (int i = 0; i < 300; ++i) {
    if (i < 100 || i >= 180) text += std::to_string(i * 0.01) + ",5\n";
  }
  const auto log = parsePitchLog(text, "p.csv");
  QVERIFY(log.has_value());
  QCOMPARE(log->gaps.size(), std::size_t{1});
  QVERIFY(std::abs(log->gaps[0].from_s - 0.99) < 1e-9 && std::abs(log->gaps[0].until_s - 1.8) < 1e-9);
  QVERIFY(pitchAt(*log, 0.9).has_value());
  QVERIFY(!pitchAt(*log, 1.4).has_value());
  QVERIFY(!pitchAt(*log, 1.02).has_value());
  QVERIFY(pitchAt(*log, 2.0).has_value());
  QVERIFY(!pitchAt(*log, -1.0).has_value());
  QVERIFY(!pitchAt(*log, 4.0).has_value());
}

void PitchLogTest::theNoiseIsThatOfItsLines() {
  const auto log = parsePitchLog(logOf(10.0, 0.15, 2.0, 3), "p.csv");
  QVERIFY(std::abs(degreesFromRadians(log->noise_rad) / 0.15 - 1.0) < 0.15);
}

/// Means over many places: no bias, and the stated uncertainty.
void PitchLogTest::aPitchIsReadBetweenTheLines() {
  const auto log = parsePitchLog(logOf(20.0, 0.15, 2.0, 4), "p.csv");
  double sum = 0.0;
  double squares = 0.0;
  int count = 0;
  for (double time_s = 0.1; time_s < 19.8; time_s += 0.0937) {
    const auto pitch = pitchAt(*log, time_s);
    QVERIFY(pitch.has_value());
    const double off = (pitch->value - radiansFromDegrees(5.0 + 2.0 * time_s)) / pitch->standardUncertainty;
    sum += off;
    squares += off * off;
    ++count;
  }
  QVERIFY(std::abs(sum / count) < 0.25);
  QVERIFY(squares / count > 0.7 && squares / count < 1.4);
}

FERRULE_TEST(PitchLogTest)
#include "pitch_log_test.moc"
