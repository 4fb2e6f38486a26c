// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/read_cue.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "tests/cue/address_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ReadCueTest : public QObject {
  Q_OBJECT
 private slots:
  void theLineIsReadWithinItsUncertainty();
  void thePlantedErrorOfTheSensorIsFound();
  void withoutALogTheElevationIsLessSure();
  void aLogWithAGapBeforeTheStrikeIsSaidAndLeftOut();
  void aLogOfAnotherOriginIsSetRight();
  void aSwayIsFoundAndAStillCueHasNone();
  void theTipsSpeedIsThatOfTheStroke();
  void theAimBeforeIsSetAgainstTheWayAfter();
  void oneTagWidensTheUncertainty();
  void aCueThatWasNotThereIsNotRead();
  void tagsTooSmallToReadSayWhatSizeTheyNeed();
};

namespace {

StruckBall ballOf(const InventedStroke& stroke) {
  StruckBall ball;
  ball.strike_s = stroke.strike_s;
  ball.place = stroke.ball;
  ball.radius_m = stroke.radius_m;
  return ball;
}

std::optional<CueReading> readingOf(const InventedStroke& stroke, std::uint64_t seed, bool withLog = true) {
  const Rig rig = cameraAbove();
  const AddressFilm film = filmOf(stroke, rig, taggedCue(), seed);
  return readCue(rig, taggedCue(), film.sightings, withLog ? &film.log : nullptr, ballOf(stroke));
}

/// Squared error over the uncertainty.
double squareOf(const std::optional<Measured>& value, double truth) {
  const double off = wrapAngle(value->value - truth) / value->standardUncertainty;
  return off * off;
}

}  // namespace

/// The design's limits, and the stated uncertainties against twelve films: a mean square near 1.
void ReadCueTest::theLineIsReadWithinItsUncertainty() {
  double aim = 0.0, elevation = 0.0, side = 0.0, height = 0.0;
  constexpr int kFilms = 12;
  for (int film = 0; film < kFilms; ++film) {
    InventedStroke stroke;
    stroke.aim_rad = 2.6 + 0.1 * film;
    stroke.elevation_rad = 0.06 + 0.006 * film;
    stroke.side_m = 0.001 * (film % 5 - 2);
    const auto reading = readingOf(stroke, 100U + static_cast<unsigned>(film));
    const double height_m = filmOf(stroke, cameraAbove(), taggedCue(), 1).tipHeight_m;
    QVERIFY(reading.has_value() && reading->aim_rad && reading->elevation_rad && reading->tipHeight_m);
    QVERIFY(std::abs(wrapAngle(reading->aim_rad->value - stroke.aim_rad)) < radiansFromDegrees(0.2));
    QVERIFY(std::abs(reading->elevation_rad->value - stroke.elevation_rad) < radiansFromDegrees(0.3));
    QVERIFY(std::abs(reading->tipSide_m->value - stroke.side_m) < 0.002);
    QVERIFY(std::abs(reading->tipHeight_m->value - height_m) < 0.0025);
    aim += squareOf(reading->aim_rad, stroke.aim_rad) / kFilms;
    elevation += squareOf(reading->elevation_rad, stroke.elevation_rad) / kFilms;
    side += squareOf(reading->tipSide_m, stroke.side_m) / kFilms;
    height += squareOf(reading->tipHeight_m, height_m) / kFilms;
  }
  const QString told = QStringLiteral("%1 %2 %3 %4").arg(aim).arg(elevation).arg(side).arg(height);
  QVERIFY2(aim < 2.0 && elevation < 2.0 && side < 2.0 && height < 2.0, qPrintable(told));
}

void ReadCueTest::thePlantedErrorOfTheSensorIsFound() {
  for (const double bias_rad : {-0.03, 0.02}) {
    InventedStroke stroke;
    stroke.sensorBias_rad = bias_rad;
    const auto reading = readingOf(stroke, 5);
    QCOMPARE(reading->log, LogUse::Used);
    QVERIFY(reading->sensorBias_rad.has_value());
    QVERIFY(std::abs(reading->sensorBias_rad->value - bias_rad) < 4.0 * reading->sensorBias_rad->standardUncertainty);
    QVERIFY(reading->sensorBias_rad->standardUncertainty < radiansFromDegrees(0.3));
  }
}

void ReadCueTest::withoutALogTheElevationIsLessSure() {
  const InventedStroke stroke;
  const auto with = readingOf(stroke, 6);
  const auto without = readingOf(stroke, 6, false);
  QCOMPARE(without->log, LogUse::None);
  QVERIFY(!without->sensorBias_rad.has_value());
  QVERIFY(without->elevation_rad->standardUncertainty > with->elevation_rad->standardUncertainty);
  QVERIFY(squareOf(without->elevation_rad, stroke.elevation_rad) < 16.0);
}

void ReadCueTest::aLogWithAGapBeforeTheStrikeIsSaidAndLeftOut() {
  // The sensor falls silent early in the address, or in its last second only.
  for (const double until_s : {2.0, 4.2}) {
    InventedStroke stroke;
    stroke.logUntil_s = until_s;
    const auto reading = readingOf(stroke, 7);
    QCOMPARE(reading->log, LogUse::Gap);
    QVERIFY(!reading->sensorBias_rad.has_value());
    QVERIFY(squareOf(reading->elevation_rad, stroke.elevation_rad) < 16.0);
  }
}

void ReadCueTest::aLogOfAnotherOriginIsSetRight() {
  InventedStroke stroke;
  stroke.logMinusFilm_s = 7321.4;
  stroke.logFrom_s = -30.0;
  stroke.logUntil_s = 40.0;
  const auto reading = readingOf(stroke, 8);
  QCOMPARE(reading->log, LogUse::Shifted);
  QVERIFY(std::abs(reading->logMinusFilm_s - 7321.4) < 0.2);
  QVERIFY(squareOf(reading->elevation_rad, stroke.elevation_rad) < 16.0);
}

void ReadCueTest::aSwayIsFoundAndAStillCueHasNone() {
  InventedStroke stroke;
  const auto still = readingOf(stroke, 9);
  QVERIFY(still->steadiness_rad->value < radiansFromDegrees(0.05));
  stroke.sway_rad = radiansFromDegrees(0.3);
  stroke.rate_hz = 60.0;
  const auto swaying = readingOf(stroke, 9);
  QVERIFY(std::abs(degreesFromRadians(swaying->steadiness_rad->value) - 0.3) <
          3.0 * degreesFromRadians(swaying->steadiness_rad->standardUncertainty) + 0.03);
  QVERIFY(swaying->aim_rad->standardUncertainty > still->aim_rad->standardUncertainty);
}

void ReadCueTest::theTipsSpeedIsThatOfTheStroke() {
  InventedStroke stroke;
  for (const double rate_hz : {30.0, 60.0}) {
    stroke.rate_hz = rate_hz;
    const auto reading = readingOf(stroke, 10);
    QVERIFY(reading->tipSpeed_mps.has_value());
    QVERIFY2(squareOf(reading->tipSpeed_mps, stroke.tipSpeed_mps) < 9.0,
             qPrintable(QString::number(reading->tipSpeed_mps->value)));
    QVERIFY(reading->tipSpeed_mps->standardUncertainty < 0.2);
  }
}

void ReadCueTest::theAimBeforeIsSetAgainstTheWayAfter() {
  const InventedStroke stroke;
  const Rig rig = cameraAbove();
  const AddressFilm film = filmOf(stroke, rig, taggedCue(), 11);
  StruckBall ball = ballOf(stroke);
  QVERIFY(!readCue(rig, taggedCue(), film.sightings, nullptr, ball)->aimBeforeMinusAfter_rad.has_value());
  ball.aim_rad = Measured{stroke.aim_rad - 0.01, 0.001};
  const auto reading = readCue(rig, taggedCue(), film.sightings, nullptr, ball);
  QVERIFY(std::abs(reading->aimBeforeMinusAfter_rad->value - 0.01) < 0.003);
  QVERIFY(reading->aimBeforeMinusAfter_rad->standardUncertainty > 0.001);
}

void ReadCueTest::oneTagWidensTheUncertainty() {
  const InventedStroke stroke;
  const Rig rig = cameraAbove();
  AddressFilm film = filmOf(stroke, rig, taggedCue(), 12);
  const auto both = readCue(rig, taggedCue(), film.sightings, &film.log, ballOf(stroke));
  for (CueSighting& sighting : film.sightings)
    std::erase_if(sighting.tags, [](const TagObservation& tag) { return tag.id == 11; });
  const auto one = readCue(rig, taggedCue(), film.sightings, &film.log, ballOf(stroke));
  QVERIFY(one->aim_rad.has_value());
  QVERIFY(one->aim_rad->standardUncertainty > both->aim_rad->standardUncertainty);
  QVERIFY(squareOf(one->aim_rad, stroke.aim_rad) < 16.0);
}

void ReadCueTest::aCueThatWasNotThereIsNotRead() {
  const InventedStroke stroke;
  QVERIFY(!readCue(cameraAbove(), taggedCue(), {}, nullptr, ballOf(stroke)).has_value());
  // Before another shot, long ago.
  const AddressFilm film = filmOf(stroke, cameraAbove(), taggedCue(), 13);
  StruckBall later = ballOf(stroke);
  later.strike_s += 60.0;
  QVERIFY(!readCue(cameraAbove(), taggedCue(), film.sightings, nullptr, later).has_value());
}

void ReadCueTest::tagsTooSmallToReadSayWhatSizeTheyNeed() {
  MeasuredCue small = taggedCue();
  small.tags.blackSide_m = 0.015;
  const auto reading = readCue(cameraAbove(), small, {}, nullptr, ballOf({}));
  QVERIFY(reading.has_value());
  QVERIFY(!reading->aim_rad.has_value());
  QCOMPARE(reading->images, 0);
  QCOMPARE(reading->tags->sideNeeded_m.value(), 0.040);
}

FERRULE_TEST(ReadCueTest)
#include "read_cue_test.moc"
