// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>

#include "core/geometry/units.h"
#include "core/physics/simulator.h"
#include "core/reading/shot_reader.h"
#include "tests/support/shot_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using ferrule::testing::filmOf;
using ferrule::testing::FilmSampling;

namespace {

struct Film {
  MeasuredTable measured;
  Simulation simulation;
  std::vector<ImageReading> readings;
};

/// A stroke that moves the cue ball and the 3; the 5 lies apart.
Film stroke(double until_s = 1e9) {
  Film film;
  film.measured.table = tableOfSize(*tableSizeNamed("9ft"));
  const Position balls{{kCueBall, {-0.4, 0.0}}, {BallName(3), {0.3, 0.03}}, {BallName(5), {-0.8, -0.4}}};
  const Strike strike{radiansFromDegrees(1.5), 2.0, 0.0, 0.1, radiansFromDegrees(4.0)};
  film.simulation = *Simulator::create(film.measured.table, parametersFor(film.measured.balls))->shoot(balls, strike);
  Random random(4);
  FilmSampling sampling;
  sampling.until_s = until_s;
  film.readings = filmOf(film.simulation, sampling, random);
  return film;
}

std::vector<ReadShot> readAll(const Film& film) {
  ShotReader reader(film.measured);
  for (const ImageReading& reading : film.readings)
    reader.feed(reading);
  reader.finish();
  return reader.takeShots();
}

bool has(const ShotReading& shot, ShotFlag flag) {
  return std::ranges::find(shot.flags, flag) != shot.flags.end();
}

}  // namespace

/// What is not clean is recorded as what it is, never guessed into a clean shot.
class UncleanShotTest : public QObject {
  Q_OBJECT
 private slots:
  void aCleanShotHasNoFlags();
  void aShotThatTheFilmsEndCutsOffIsAsked();
  void aFilmThatBeginsInAShotInventsNone();
  void aBallThatIsPickedUpIsAsked();
  void twoBallsMovedByHandAtOnceAreAsked();
  void namesThatMayHaveChangedInAClusterAreAsked();
};

void UncleanShotTest::aCleanShotHasNoFlags() {
  const auto shots = readAll(stroke());
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(shots.front().reading.flags.empty());
  QVERIFY(shots.front().reading.outcomeVerdict != Verdict::Ask);
}

void UncleanShotTest::aShotThatTheFilmsEndCutsOffIsAsked() {
  const auto shots = readAll(stroke(1.8));
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(has(shots.front().reading, ShotFlag::CutOffAtEnd));
  QCOMPARE(shots.front().reading.outcomeVerdict, Verdict::Ask);
}

void UncleanShotTest::aFilmThatBeginsInAShotInventsNone() {
  Film film = stroke();
  std::erase_if(film.readings, [](const ImageReading& reading) { return reading.time_s < 1.2; });
  for (std::size_t i = 0; i < film.readings.size(); ++i)
    film.readings[i].image = static_cast<long>(i);
  QVERIFY(readAll(film).empty());
}

void UncleanShotTest::aBallThatIsPickedUpIsAsked() {
  Film film = stroke();
  for (ImageReading& reading : film.readings) {
    if (reading.time_s < 2.0 || reading.time_s > 2.6) continue;
    for (BallSample& ball : reading.balls) {
      if (ball.ball == BallName(5)) ball.inHand = true;
    }
  }
  const auto shots = readAll(film);
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(has(shots.front().reading, ShotFlag::PickedUp));
  QCOMPARE(shots.front().reading.outcomeVerdict, Verdict::Ask);
}

void UncleanShotTest::twoBallsMovedByHandAtOnceAreAsked() {
  Film film = stroke();
  // Resting balls that glide away while the shot runs, touched by nothing.
  for (ImageReading& reading : film.readings) {
    const double since_s = std::clamp(reading.time_s - 1.6, 0.0, 0.5);
    for (BallSample& ball : reading.balls) {
      if (ball.ball == BallName(5)) ball.position.x -= 0.4 * since_s * since_s;
    }
    BallSample more{BallName(7), {0.9, -0.4 + 0.4 * since_s * since_s}, 0.0007, true, false};
    reading.balls.push_back(more);
  }
  const auto shots = readAll(film);
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(has(shots.front().reading, ShotFlag::MovedByHand));
  QCOMPARE(shots.front().reading.outcomeVerdict, Verdict::Ask);
}

void UncleanShotTest::namesThatMayHaveChangedInAClusterAreAsked() {
  Film film = stroke();
  const auto contact = std::ranges::find(film.simulation.events, EventKind::Ball, &ShotEvent::kind);
  QVERIFY(contact != film.simulation.events.end());
  const double met_s = 1.0 + contact->time_s;
  for (ImageReading& reading : film.readings) {
    if (reading.time_s < met_s - 0.03 || reading.time_s > met_s + 0.08) continue;
    std::erase_if(reading.balls, [](const BallSample& ball) { return ball.ball.number() <= 3; });
  }
  const auto shots = readAll(film);
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(has(shots.front().reading, ShotFlag::IdentityLost));
  QCOMPARE(shots.front().reading.outcomeVerdict, Verdict::Ask);
}

FERRULE_TEST(UncleanShotTest)
#include "unclean_shot_test.moc"
