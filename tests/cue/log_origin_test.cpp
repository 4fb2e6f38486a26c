// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/log_origin.h"

#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class LogOriginTest : public QObject {
  Q_OBJECT
 private slots:
  void aLogOfTheFilmsClockIsTakenAsItIs();
  void anotherOriginIsFoundFromTheCuesMovements();
  void anotherOriginIsFoundInALongLog();
  void aStillCueTellsNoOrigin();
  void aStillCueLeavesTheFilmsClock();
  void aLogOfAnotherCueIsNotUsed();
};

namespace {

/// An elevation that comes down and then swings, different at every time.
double elevationAt(double time_s) {
  return 0.1 + 0.15 * std::exp(-std::max(0.0, time_s)) + 0.02 * std::sin(1.3 * time_s) +
         0.015 * std::sin(2.9 * time_s + 1.0);
}

std::vector<SeenElevation> imagesOf(double (*elevation)(double), std::uint64_t seed) {
  Random random(seed);
  std::vector<SeenElevation> seen;
  for (double time_s = 1.0; time_s < 6.0; time_s += 1.0 / 30.0)
    seen.push_back({time_s, elevation(time_s) + 0.006 * random.normal()});
  return seen;
}

PitchLog logOf(double (*elevation)(double), double from_s, double until_s, double logMinusFilm_s) {
  Random random(9);
  std::string text = "time_s,pitch_deg\n";
  for (double time_s = from_s; time_s < until_s; time_s += 0.01) {
    text += std::to_string(time_s + logMinusFilm_s) + "," +
            std::to_string(degreesFromRadians(elevation(time_s) + 0.02 + 0.003 * random.normal())) + "\n";
  }
  return parsePitchLog(text, "p.csv").value();
}

double still(double /*time_s*/) {
  return 0.1;
}

}  // namespace

void LogOriginTest::aLogOfTheFilmsClockIsTakenAsItIs() {
  const LogOrigin origin = originOf(logOf(elevationAt, 0.0, 8.0, 0.0), imagesOf(elevationAt, 1));
  QCOMPARE(origin.clock, LogClock::Same);
  QCOMPARE(origin.logMinusFilm_s, 0.0);
}

/// Still overlapping the film, so that only the movements can tell.
void LogOriginTest::anotherOriginIsFoundFromTheCuesMovements() {
  for (const double shift_s : {-0.9, 1.3}) {
    const LogOrigin origin = originOf(logOf(elevationAt, -4.0, 12.0, shift_s), imagesOf(elevationAt, 2));
    QCOMPARE(origin.clock, LogClock::Shifted);
    QVERIFY2(std::abs(origin.logMinusFilm_s - shift_s) < 0.1, qPrintable(QString::number(origin.logMinusFilm_s)));
  }
}

/// Seconds of the day.
void LogOriginTest::anotherOriginIsFoundInALongLog() {
  const LogOrigin origin = originOf(logOf(elevationAt, -60.0, 90.0, 46012.5), imagesOf(elevationAt, 3));
  QCOMPARE(origin.clock, LogClock::Shifted);
  QVERIFY(std::abs(origin.logMinusFilm_s - 46012.5) < 0.06);
}

void LogOriginTest::aStillCueTellsNoOrigin() {
  const LogOrigin origin = originOf(logOf(still, 0.0, 60.0, 1000.0), imagesOf(still, 4));
  QCOMPARE(origin.clock, LogClock::Unknown);
}

void LogOriginTest::aStillCueLeavesTheFilmsClock() {
  const LogOrigin origin = originOf(logOf(still, 0.0, 60.0, 0.0), imagesOf(still, 5));
  QCOMPARE(origin.clock, LogClock::Same);
}

void LogOriginTest::aLogOfAnotherCueIsNotUsed() {
  const LogOrigin origin = originOf(logOf([](double time_s) { return 0.3 * std::sin(9.0 * time_s); }, 0.0, 60.0, 500.0),
                                    imagesOf(elevationAt, 6));
  QCOMPARE(origin.clock, LogClock::Unknown);
}

FERRULE_TEST(LogOriginTest)
#include "log_origin_test.moc"
