// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/shot_reader.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/units.h"
#include "tests/reading/synthetic_play.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::synthetic;

namespace {

struct Read {
  std::vector<ReadShot> shots;
  std::vector<Placement> placements;
};

Read readAll(const MeasuredTable& measured, const std::vector<ImageReading>& readings) {
  ShotReader reader(measured);
  Read read;
  const auto take = [&] {
    for (ReadShot& shot : reader.takeShots())
      read.shots.push_back(std::move(shot));
    for (Placement& placement : reader.takePlacements())
      read.placements.push_back(placement);
  };
  for (const ImageReading& reading : readings) {
    reader.feed(reading);
    take();
  }
  reader.finish();
  take();
  return read;
}

/// The direction that sends a resting ball straight to a pocket's mouth by a full hit, and a cue ball place for it.
struct StraightPot {
  Position position;
  double aim_rad = 0.0;
};

StraightPot straightPot(const MeasuredTable& measured, PocketName name) {
  const Pocket pocket = pockets(measured.table)[static_cast<std::size_t>(name)];
  const TablePoint ball{0.55, 0.1};
  const TableVector way = unit(pocket.mouth - ball);
  return {{{kCueBall, ball - 0.6 * way}, {BallName(3), ball}}, direction(way)};
}

const ShotEvent* find(const ShotReading& reading, EventKind kind, BallName ball) {
  for (const ShotEvent& event : reading.events) {
    if (event.kind == kind && event.ball == ball) return &event;
  }
  return nullptr;
}

}  // namespace

class ShotReaderTest : public QObject {
  Q_OBJECT
 private slots:
  void aStraightPotIsReadWhole();
  void theOrderOfThreeContactsIsRead();
  void jitterMakesNoShots();
  void aSlowRollIsOneShot();
  void missingSamplesChangeNothing();
  void twoShotsAreTwo();
  void aCueBallPutDownIsAPlacement();
  void aPushedCueBallIsNoShot();
  void aScratchIsRead();
  void aBallOnTheJawIsNotPocketed();
  void aShotAtABallCloseByIsRead();
  void aShotThatHitsNothingIsAFoul();
  void everyBallOfABreakIsFoundAtRest();
  void readingsInOneGoAndOneByOneAgree();
};

void ShotReaderTest::aStraightPotIsReadWhole() {
  const MeasuredTable measured = nineFeet();
  const StraightPot pot = straightPot(measured, PocketName::FootLeft);
  for (const double rate_hz : {30.0, 60.0, 240.0}) {
    Play play(measured, pot.position);
    play.strike({1.513, pot.aim_rad, 1.8, -0.3});
    const auto readings = play.film(12.0, {rate_hz, 0.0005, 0.0, 7});
    const Read read = readAll(measured, readings);
    QCOMPARE(read.shots.size(), std::size_t{1});
    QVERIFY(read.placements.empty());
    const ShotReading& shot = read.shots.front().reading;
    QVERIFY2(std::abs(shot.strike_s - 1.513) < 0.005, qPrintable(QString::number(shot.strike_s)));
    QVERIFY(shot.firstContact == BallName(3));
    QCOMPARE(shot.pocketed, (std::vector<PocketedBall>{{BallName(3), PocketName::FootLeft}}));
    QVERIFY(!shot.scratch);
    QCOMPARE(shot.outcome, Outcome::Pot);
    QCOMPARE(shot.outcomeVerdict, Verdict::Certain);
    QVERIFY(shot.target.has_value());
    QCOMPARE(shot.target->pocket, PocketName::FootLeft);
    QVERIFY(*shot.target->cut_rad < radiansFromDegrees(3.0));
    QVERIFY(std::abs(shot.rest_s - play.lastMotion_s()) < 0.1);
    // What the design asks for one shot, three times over.
    QVERIFY(std::abs(wrapAngle(shot.delivery.aim_rad->value - pot.aim_rad)) < radiansFromDegrees(0.3));
    QVERIFY(std::abs(shot.delivery.speed_mps->value - 1.8) < 0.03 * 1.8);
    // R w / v of -0.3 is a tip point 0.12 radii low (2.5 times the offset); what is not measured says why.
    QVERIFY(shot.delivery.height.has_value());
    QVERIFY(std::abs(shot.delivery.height->value + 0.12) < 0.05);
    QVERIFY(shot.delivery.side.has_value() != shot.delivery.whyNoSide.has_value());
    if (shot.delivery.side)
      QVERIFY(std::abs(shot.delivery.side->value) < 4.0 * shot.delivery.side->standardUncertainty);
    const ShotEvent* contact = find(shot, EventKind::Ball, kCueBall);
    QVERIFY(contact != nullptr);
    QVERIFY(std::abs(contact->time_s - play.firstEvent(EventKind::Ball)->time_s) < 0.005);
    const ShotEvent* fall = find(shot, EventKind::Pocket, BallName(3));
    QVERIFY(fall != nullptr);
    QVERIFY(std::abs(fall->time_s - play.firstEvent(EventKind::Pocket)->time_s) < 0.03);
    QCOMPARE(shot.after.size(), std::size_t{1});
    QVERIFY(distance(shot.after.front().position, play.at(kCueBall)) < 0.0005);
    QCOMPARE(shot.before.size(), std::size_t{2});
    QVERIFY(distance(shot.before.front().position, pot.position.front().position) < 0.0005);
  }
}

void ShotReaderTest::theOrderOfThreeContactsIsRead() {
  const MeasuredTable measured = nineFeet();
  Play play(measured, {{kCueBall, {-0.6, -0.2}},
                       {BallName(1), {0.0, -0.178}},
                       {BallName(5), {0.03, -0.30}},
                       {BallName(9), {0.4, -0.15}}});
  play.strike({1.2, 0.0, 2.5, 0.5});
  const auto readings = play.film(20.0, {60.0, 0.0004, 0.0, 3});
  std::vector<std::pair<int, int>> happened;
  std::vector<double> times;
  for (const ShotEvent& event : play.events()) {
    if (event.kind != EventKind::Ball) continue;
    happened.emplace_back(event.ball.number(), event.other->number());
    times.push_back(event.time_s);
  }
  QVERIFY(happened.size() >= 2);
  const Read read = readAll(measured, readings);
  QCOMPARE(read.shots.size(), std::size_t{1});
  std::vector<std::pair<int, int>> seen;
  std::vector<double> seenTimes;
  for (const ShotEvent& event : read.shots.front().reading.events) {
    if (event.kind != EventKind::Ball) continue;
    const int one = event.ball.number();
    const int two = event.other->number();
    seen.emplace_back(std::min(one, two), std::max(one, two));
    seenTimes.push_back(event.time_s);
  }
  QCOMPARE(seen, happened);
  for (std::size_t i = 0; i < times.size(); ++i)
    QVERIFY(std::abs(times[i] - seenTimes[i]) < 0.008);
}

void ShotReaderTest::jitterMakesNoShots() {
  const MeasuredTable measured = nineFeet();
  for (std::uint64_t seed = 0; seed < 5; ++seed) {
    Play play(measured, {{kCueBall, {-0.6, 0.0}}, {BallName(8), {0.6, 0.2}}});
    const Read read = readAll(measured, play.film(30.0, {60.0, 0.001, 0.05, seed}));
    QVERIFY(read.shots.empty());
    QVERIFY(read.placements.empty());
  }
}

/// A ball at 0.15 m/s rolls for 1.5 s and is slower than 0.02 m/s for the last 0.2 s.
void ShotReaderTest::aSlowRollIsOneShot() {
  const MeasuredTable measured = nineFeet();
  Play play(measured, {{kCueBall, {-0.3, 0.0}}, {BallName(8), {0.6, 0.2}}});
  play.strike({1.0, 0.0, 0.15, 1.0});
  const Read read = readAll(measured, play.film(6.0, {60.0, 0.0006, 0.0, 11}));
  QCOMPARE(read.shots.size(), std::size_t{1});
  QVERIFY(std::abs(read.shots.front().reading.rest_s - play.lastMotion_s()) < 0.15);
}

void ShotReaderTest::missingSamplesChangeNothing() {
  const MeasuredTable measured = nineFeet();
  const StraightPot pot = straightPot(measured, PocketName::FootRight);
  for (std::uint64_t seed = 0; seed < 8; ++seed) {
    Play play(measured, pot.position);
    play.strike({1.5, pot.aim_rad, 1.6, 0.4});
    const Read read = readAll(measured, play.film(14.0, {60.0, 0.0005, 0.15, seed}));
    QCOMPARE(read.shots.size(), std::size_t{1});
    QVERIFY(read.shots.front().reading.firstContact == BallName(3));
    QCOMPARE(read.shots.front().reading.pocketed.front().ball, BallName(3));
    QVERIFY(read.placements.empty());
  }
}

void ShotReaderTest::twoShotsAreTwo() {
  const MeasuredTable measured = nineFeet();
  Play play(measured, {{kCueBall, {-0.6, 0.0}}, {BallName(8), {0.9, 0.4}}});
  play.strike({1.0, 0.1, 0.6, 0.0});
  play.strike({9.0, 2.9, 0.8, 0.2});
  const Read read = readAll(measured, play.film(22.0));
  QCOMPARE(read.shots.size(), std::size_t{2});
  QCOMPARE(read.shots[0].reading.number, 1);
  QCOMPARE(read.shots[1].reading.number, 2);
  QVERIFY(std::abs(read.shots[1].reading.strike_s - 9.0) < 0.005);
}

void ShotReaderTest::aCueBallPutDownIsAPlacement() {
  const MeasuredTable measured = nineFeet();
  Play play(measured, {{kCueBall, {-0.6, 0.0}}, {BallName(8), {0.6, 0.2}}});
  auto readings = play.film(8.0);
  const TablePoint there{0.1, -0.3};
  for (ImageReading& reading : readings) {
    for (BallSample& sample : reading.balls) {
      if (!sample.ball.isCueBall() || reading.time_s < 3.0) continue;
      // Carried from 3 to 4 s, in the hand; adjusted by some millimetres until 4.3 s.
      const double share = std::min(1.0, reading.time_s - 3.0);
      const TableVector way = there - TablePoint{-0.6, 0.0};
      sample.position = sample.position + share * way;
      sample.inHand = reading.time_s < 4.0;
      if (reading.time_s >= 4.0 && reading.time_s < 4.3) sample.position.y += 0.01 * (4.3 - reading.time_s);
    }
  }
  const Read read = readAll(measured, readings);
  QVERIFY(read.shots.empty());
  QCOMPARE(read.placements.size(), std::size_t{1});
  QCOMPARE(read.placements.front().ball, kCueBall);
  QVERIFY(distance(read.placements.front().position, there) < 0.001);
  QVERIFY(std::abs(read.placements.front().time_s - 4.3) < 0.35);
}

/// A hand gathers speed over a quarter of a second; a tip does not.
void ShotReaderTest::aPushedCueBallIsNoShot() {
  const MeasuredTable measured = nineFeet();
  for (const double rate_hz : {30.0, 60.0}) {
    Play play(measured, {{kCueBall, {-0.6, 0.0}}, {BallName(8), {0.6, 0.2}}});
    auto readings = play.film(8.0, {rate_hz, 0.0005, 0.0, 5});
    for (ImageReading& reading : readings) {
      for (BallSample& sample : reading.balls) {
        if (!sample.ball.isCueBall()) continue;
        // 150 mm within half a second, at rest at both ends.
        const double share = std::clamp((reading.time_s - 3.0) / 0.5, 0.0, 1.0);
        sample.position.x += 0.075 * (1.0 - std::cos(std::numbers::pi * share));
      }
    }
    const Read read = readAll(measured, readings);
    QVERIFY(read.shots.empty());
    QCOMPARE(read.placements.size(), std::size_t{1});
  }
}

void ShotReaderTest::aScratchIsRead() {
  const MeasuredTable measured = nineFeet();
  const StraightPot pot = straightPot(measured, PocketName::FootLeft);
  Play play(measured, {pot.position.front(), {BallName(8), {-0.6, -0.4}}});
  play.strike({1.5, pot.aim_rad, 1.8, 0.3});
  play.place(kCueBall, {-0.4, 0.1}, 6.0);
  const Read read = readAll(measured, play.film(10.0));
  QCOMPARE(read.shots.size(), std::size_t{1});
  const ShotReading& shot = read.shots.front().reading;
  QVERIFY(shot.scratch);
  QCOMPARE(shot.outcome, Outcome::Scratch);
  QCOMPARE(shot.pocketed, (std::vector<PocketedBall>{{kCueBall, PocketName::FootLeft}}));
  QVERIFY(!shot.firstContact.has_value());
  QCOMPARE(read.placements.size(), std::size_t{1});
  QVERIFY(distance(read.placements.front().position, {-0.4, 0.1}) < 0.0005);
}

void ShotReaderTest::aBallOnTheJawIsNotPocketed() {
  const MeasuredTable measured = nineFeet();
  const Pocket pocket = pockets(measured.table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const StraightPot pot = straightPot(measured, PocketName::FootLeft);
  Play play(measured, pot.position);
  play.strike({1.0, pot.aim_rad, 1.2, 0.0});
  auto readings = play.film(12.0);
  // The ball stops one centimetre before the edge of the slate, and stays.
  const TablePoint hangs = pocket.hole - (pocket.holeRadius_m + 0.01) * pocket.inward;
  for (ImageReading& reading : readings) {
    const auto sample = std::ranges::find(reading.balls, BallName(3), &BallSample::ball);
    const bool past = sample == reading.balls.end() || dot(sample->position - hangs, pocket.inward) > 0.0;
    if (!past) continue;
    if (sample == reading.balls.end()) {
      reading.balls.push_back({BallName(3), hangs, 0.0005, true, false});
    } else {
      sample->position = hangs;
    }
  }
  const Read read = readAll(measured, readings);
  QCOMPARE(read.shots.size(), std::size_t{1});
  QVERIFY(read.shots.front().reading.pocketed.empty());
  QCOMPARE(read.shots.front().reading.after.size(), std::size_t{2});
}

/// The cue ball meets the object ball before it has been filmed on its way.
void ShotReaderTest::aShotAtABallCloseByIsRead() {
  const MeasuredTable measured = nineFeet();
  Play play(measured, {{kCueBall, {-0.6, 0.0}}, {BallName(4), {-0.53, 0.0}}});
  play.strike({1.005, 0.0, 2.0, 0.0});
  const Read read = readAll(measured, play.film(14.0, {30.0, 0.0005, 0.0, 9}));
  QCOMPARE(read.shots.size(), std::size_t{1});
  QVERIFY(read.shots.front().reading.firstContact == BallName(4));
  QVERIFY(std::abs(read.shots.front().reading.strike_s - 1.005) < 0.05);
}

void ShotReaderTest::aShotThatHitsNothingIsAFoul() {
  const MeasuredTable measured = nineFeet();
  Play play(measured, {{kCueBall, {-0.6, 0.0}}, {BallName(8), {0.6, 0.5}}});
  play.strike({1.0, -0.9, 0.8, 0.0});
  const Read read = readAll(measured, play.film(14.0));
  QCOMPARE(read.shots.size(), std::size_t{1});
  QCOMPARE(read.shots.front().reading.outcome, Outcome::Foul);
  QVERIFY(find(read.shots.front().reading, EventKind::Cushion, kCueBall) != nullptr);
  QVERIFY(find(read.shots.front().reading, EventKind::Cushion, kCueBall)->cushion == CushionName::RightHead);
}

/// Rack geometry: rows R sqrt(3) apart. Source: rules sheet, rack geometry.
void ShotReaderTest::everyBallOfABreakIsFoundAtRest() {
  const MeasuredTable measured = nineFeet();
  const double radius_m = measured.balls.radius_m();
  Position position{{kCueBall, {headString_m(measured.table) - 0.05, 0.03}}};
  int number = 1;
  for (int row = 0; row < 5; ++row) {
    for (int i = 0; i <= row; ++i) {
      position.push_back({BallName(number++),
                          {footSpot(measured.table).x + row * (radius_m * std::numbers::sqrt3 + 0.0001),
                           (2.0 * i - row) * (radius_m + 0.0001)}});
    }
  }
  Play play(measured, position);
  const double aim_rad = direction(position[1].position - position[0].position);
  play.strike({1.0, aim_rad, 8.0, 0.0});
  const auto readings = play.film(25.0, {30.0, 0.0005, 0.0, 2});
  const Read read = readAll(measured, readings);
  QCOMPARE(read.shots.size(), std::size_t{1});
  const ShotReading& shot = read.shots.front().reading;
  QCOMPARE(shot.outcome, Outcome::Break);
  QVERIFY(shot.firstContact == BallName(1));
  QVERIFY(!shot.target.has_value());
  std::vector<BallName> fell;
  for (const ShotEvent& event : play.events()) {
    if (event.kind == EventKind::Pocket) fell.push_back(event.ball);
  }
  QCOMPARE(shot.pocketed.size(), fell.size());
  for (std::size_t i = 0; i < fell.size(); ++i)
    QCOMPARE(shot.pocketed[i].ball, fell[i]);
  QCOMPARE(shot.after.size(), position.size() - fell.size());
  for (const BallAt& at : shot.after)
    QVERIFY(distance(at.position, play.at(at.ball)) < 0.001);
}

void ShotReaderTest::readingsInOneGoAndOneByOneAgree() {
  const MeasuredTable measured = nineFeet();
  const StraightPot pot = straightPot(measured, PocketName::FootLeft);
  Play play(measured, pot.position);
  play.strike({1.5, pot.aim_rad, 1.8, 0.0});
  const auto readings = play.film(10.0);
  ShotReader atOnce(measured);
  for (const ImageReading& reading : readings)
    atOnce.feed(reading);
  atOnce.finish();
  const Read stepwise = readAll(measured, readings);
  const auto shots = atOnce.takeShots();
  QCOMPARE(shots.size(), stepwise.shots.size());
  QVERIFY(shots.front().reading == stepwise.shots.front().reading);
}

FERRULE_TEST(ShotReaderTest)
#include "shot_reader_test.moc"
