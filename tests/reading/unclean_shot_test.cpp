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

/// Where the balls lie that are left on the table.
Position restOf(const Simulation& simulation) {
  Position rest;
  for (const FinalBall& ball : simulation.after) {
    if (ball.fate == BallFate::OnTable) rest.push_back({ball.ball, ball.position});
  }
  return rest;
}

/// The same film switched on later.
Film startingAt(Film film, double from_s) {
  std::erase_if(film.readings, [&](const ImageReading& reading) { return reading.time_s < from_s; });
  for (std::size_t i = 0; i < film.readings.size(); ++i)
    film.readings[i].image = static_cast<long>(i);
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
  void aShotThatTheFilmsBeginningCutsOffIsAsked();
  void aFilmThatBeginsAsTheCueBallIsGoneShowsWhatIsLeft();
  void aFilmThatBeginsWithAHandOverTheTableInventsNoShot();
  void theShotAfterOneThatWasCutOffIsClean();
  void aBallThatIsPickedUpIsAsked();
  void aBallThatIsPickedUpBeforeThePocketDidNotFall();
  void twoBallsMovedByHandAtOnceAreAsked();
  void twoBallsMovedByHandBetweenShotsAreNoShot();
  void namesThatMayHaveChangedInAClusterAreAsked();
};

void UncleanShotTest::aCleanShotHasNoFlags() {
  const auto shots = readAll(stroke());
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(shots.front().reading.flags.empty());
  QVERIFY(shots.front().reading.outcomeVerdict != Verdict::Ask);
}

/// From soon after the strike at 1 s until shortly before rest.
void UncleanShotTest::aShotThatTheFilmsEndCutsOffIsAsked() {
  for (const double until_s : {1.25, 1.4, 1.8, 2.5}) {
    const auto shots = readAll(stroke(until_s));
    QVERIFY2(shots.size() == 1, qPrintable(QString::number(until_s)));
    QVERIFY(has(shots.front().reading, ShotFlag::CutOffAtEnd));
    QCOMPARE(shots.front().reading.outcomeVerdict, Verdict::Ask);
  }
}

void UncleanShotTest::aShotThatTheFilmsBeginningCutsOffIsAsked() {
  for (const double from_s : {1.02, 1.2, 1.6, 2.0}) {
    const Film film = startingAt(stroke(), from_s);
    const auto shots = readAll(film);
    QVERIFY2(shots.size() == 1, qPrintable(QString::number(from_s)));
    const ShotReading& shot = shots.front().reading;
    QVERIFY(has(shot, ShotFlag::CutOffAtStart));
    QCOMPARE(shot.outcomeVerdict, Verdict::Ask);
    QCOMPARE(shot.strike_s, film.readings.front().time_s);
    // Nobody saw the strike, nor what was met first.
    QVERIFY(!shot.delivery.aim_rad && !shot.delivery.speed_mps && !shot.delivery.side && !shot.delivery.height);
    QCOMPARE(shot.delivery.whyNoStrike, std::optional(NotShown::NotFollowed));
    QVERIFY(!shot.firstContact && !shot.target && !shot.missAccount);
    // Where everything came to rest was seen.
    QCOMPARE(shot.after.size(), std::size_t{3});
    const Position simulated = restOf(film.simulation);
    for (const BallAt& rest : shot.after) {
      const BallAt* there = ballIn(simulated, rest.ball);
      QVERIFY(there != nullptr && distance(there->position, rest.position) < 0.003);
    }
    QVERIFY(!shots.front().tracks.empty());
  }
}

void UncleanShotTest::aFilmThatBeginsAsTheCueBallIsGoneShowsWhatIsLeft() {
  Film film = startingAt(stroke(), 1.8);
  for (ImageReading& reading : film.readings)
    std::erase_if(reading.balls, [](const BallSample& ball) { return ball.ball.isCueBall(); });
  const auto shots = readAll(film);
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(has(shots.front().reading, ShotFlag::CutOffAtStart));
  QVERIFY(!shots.front().reading.scratch);  // it may as well have been taken up
  QCOMPARE(shots.front().reading.outcomeVerdict, Verdict::Ask);
}

void UncleanShotTest::aFilmThatBeginsWithAHandOverTheTableInventsNoShot() {
  Film film = startingAt(stroke(), 0.0);
  std::erase_if(film.readings, [](const ImageReading& reading) { return reading.time_s > 0.9; });
  for (ImageReading& reading : film.readings) {
    BallSample carried{BallName(7), {0.9 - 0.5 * reading.time_s, 0.2}, 0.0007, true, reading.time_s < 0.4};
    if (reading.time_s >= 0.4) carried.position.x = 0.7;
    reading.balls.push_back(carried);
  }
  QVERIFY(readAll(film).empty());
}

void UncleanShotTest::theShotAfterOneThatWasCutOffIsClean() {
  Film film = startingAt(stroke(), 1.6);
  const Position rest = restOf(film.simulation);
  const Strike strike{radiansFromDegrees(170.0), 1.0, 0.0, 0.1, radiansFromDegrees(4.0)};
  const auto simulator = Simulator::create(film.measured.table, parametersFor(film.measured.balls));
  Random random(5);
  FilmSampling sampling;
  sampling.strike_s = 2.0;
  const double shift_s = film.readings.back().time_s + 1.0 / 60.0;
  for (ImageReading reading : filmOf(*simulator->shoot(rest, strike), sampling, random)) {
    reading.time_s += shift_s;
    reading.image = static_cast<long>(film.readings.size());
    film.readings.push_back(reading);
  }
  const auto shots = readAll(film);
  QCOMPARE(shots.size(), std::size_t{2});
  QVERIFY(has(shots[0].reading, ShotFlag::CutOffAtStart));
  QVERIFY(shots[1].reading.flags.empty());
  QCOMPARE(shots[1].reading.number, 2);
  QVERIFY(std::abs(wrapAngle(shots[1].reading.delivery.aim_rad->value - strike.aim_rad)) < radiansFromDegrees(0.5));
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

/// On its way into the corner a hand takes the 3 up, a ball's width before the hole.
void UncleanShotTest::aBallThatIsPickedUpBeforeThePocketDidNotFall() {
  Film film;
  film.measured.table = tableOfSize(*tableSizeNamed("9ft"));
  const Pocket pocket = pockets(film.measured.table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const TablePoint ball{0.8, 0.2};
  const TableVector way = unit(pocket.mouth - ball);
  const Position balls{{kCueBall, ball - 0.4 * way}, {BallName(3), ball}};
  const Strike strike{direction(way), 1.2, 0.0, 0.0, 0.0};
  film.simulation = *Simulator::create(film.measured.table, parametersFor(film.measured.balls))->shoot(balls, strike);
  QVERIFY(ballIn(restOf(film.simulation), BallName(3)) == nullptr);  // left alone it falls
  Random random(4);
  film.readings = filmOf(film.simulation, {}, random);
  bool taken = false;
  for (ImageReading& reading : film.readings) {
    for (BallSample& sample : reading.balls) {
      if (sample.ball != BallName(3)) continue;
      if (distance(sample.position, pocket.hole) < pocket.holeRadius_m + 0.06) taken = true;
      sample.inHand = taken;
    }
    if (taken && reading.time_s > 3.0) std::erase_if(reading.balls, [](const BallSample& b) { return b.inHand; });
  }
  QVERIFY(taken);
  const auto shots = readAll(film);
  QCOMPARE(shots.size(), std::size_t{1});
  QVERIFY(shots.front().reading.pocketed.empty());
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

/// The cue ball and the 5 are pushed to other places at once, a finger on each.
void UncleanShotTest::twoBallsMovedByHandBetweenShotsAreNoShot() {
  const Film begun = stroke(0.9);
  for (int seed = 0; seed < 20; ++seed) {
    Random random(static_cast<std::uint64_t>(seed));
    std::vector<ImageReading> readings = begun.readings;
    const ImageReading still = readings.back();
    for (int i = 0; i < 240; ++i) {
      ImageReading reading = still;
      reading.image = still.image + 1 + i;
      reading.time_s = still.time_s + (i + 1) / 60.0;
      // Pushed over 0.8 s, slowly off and slowly to a stop.
      const double share = std::clamp((i - 30) / 48.0, 0.0, 1.0);
      const double way_m = 0.2 * share * share * (3.0 - 2.0 * share);
      for (BallSample& sample : reading.balls) {
        if (sample.ball == BallName(3)) continue;
        sample.position.y += way_m;
        sample.position = sample.position + TableVector{4e-4 * random.normal(), 4e-4 * random.normal()};
      }
      readings.push_back(reading);
    }
    ShotReader reader(begun.measured);
    for (const ImageReading& reading : readings)
      reader.feed(reading);
    reader.finish();
    QVERIFY2(reader.takeShots().empty(), qPrintable(QString::number(seed)));
    std::vector<int> moved;
    for (const Placement& placement : reader.takePlacements())
      moved.push_back(placement.ball.number());
    std::ranges::sort(moved);
    QCOMPARE(moved, (std::vector<int>{0, 5}));
  }
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
