// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/jaw_touch.h"

#include <QtTest>
#include <algorithm>

#include "core/physics/simulator.h"
#include "core/reading/shot_reader.h"
#include "tests/support/shot_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

struct Roll {
  std::optional<double> touch_s;  ///< the last touch of the jaws before the fall
  double fall_s = 0.0;
  std::optional<ShotReading> read;
};

/// Rolls the cue ball from the table's middle at a place beside the foot-left pocket's middle, and films it.
Roll rolled(double beside_m, double speed_mps, double rate_hz, std::uint64_t seed) {
  MeasuredTable measured;
  measured.table = tableOfSize(*tableSizeNamed("9ft"));
  const Pocket pocket = pockets(measured.table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const TablePoint from{0.6, 0.1};
  const TablePoint at = pocket.mouth + beside_m * perpendicular(pocket.inward);
  const Strike strike{direction(at - from), speed_mps, 0.0, 0.0, 0.05};
  const Position balls{{kCueBall, from}, {BallName(3), {-0.9, -0.4}}};
  const Simulation s = *Simulator::create(measured.table, parametersFor(measured.balls))->shoot(balls, strike);
  Roll roll;
  for (const ShotEvent& event : s.events) {
    if (event.kind == EventKind::Cushion) roll.touch_s = event.time_s;
    if (event.kind == EventKind::Pocket) roll.fall_s = event.time_s;
  }
  if (roll.fall_s <= 0.0) return roll;
  Random random(seed);
  ferrule::testing::FilmSampling sampling;
  sampling.rate_hz = rate_hz;
  sampling.noise_m = 0.0004;
  // A ball that falls is seen for a while longer, on its course and a little aside as it drops (by 5/14 g t^2 at
  // first; a camera over the table sees a third of that at a corner).
  const BallState last = s.paths.front().stateAt(roll.fall_s - 1e-6);
  ShotReader reader(measured);
  for (ImageReading& reading : filmOf(s, sampling, random)) {
    const double falling_s = reading.time_s - sampling.strike_s - roll.fall_s;
    if (falling_s > 0.0 && falling_s < 0.12) {
      const double drop_m = 5.0 / 14.0 * 9.81 * falling_s * falling_s;
      const TableVector gone = falling_s * planOf(last.velocity) - (drop_m / 3.0) * pocket.inward;
      const TableVector noise{sampling.noise_m * random.normal(), sampling.noise_m * random.normal()};
      reading.balls.push_back({kCueBall, planOf(last.position) + gone + noise, sampling.noise_m, true, false});
    }
    reader.feed(reading);
  }
  reader.finish();
  const auto shots = reader.takeShots();
  if (shots.size() == 1) roll.read = shots.front().reading;
  return roll;
}

bool tellsTouchThenFall(const ShotReading& reading) {
  const auto touch = std::ranges::find(reading.events, EventKind::Cushion, &ShotEvent::kind);
  const auto fall = std::ranges::find(reading.events, EventKind::Pocket, &ShotEvent::kind);
  return touch != reading.events.end() && fall != reading.events.end() && touch < fall;
}

}  // namespace

class JawTouchTest : public QObject {
  Q_OBJECT
 private slots:
  void aJawThatIsMetJustBeforeTheFallIsTold();
  void aBallThatFallsClearOfTheJawsTouchesNothing();
  void theTimeOfASlowFallIsUnsure();
};

/// Two or three images before the fall: too few on the cloth alone. Nearer touches are glances that no film tells.
void JawTouchTest::aJawThatIsMetJustBeforeTheFallIsTold() {
  int met = 0;
  int told = 0;
  for (int i = 0; i < 60; ++i) {
    const double side = i % 2 == 0 ? 1.0 : -1.0;
    const Roll roll = rolled(side * (0.016 + 0.0008 * (i / 2)), 1.1 + 0.02 * i, 60.0, static_cast<std::uint64_t>(i));
    if (!roll.touch_s || !roll.read) continue;
    const double before_s = roll.fall_s - *roll.touch_s;
    if (before_s < 0.028 || before_s > 0.06) continue;
    ++met;
    told += tellsTouchThenFall(*roll.read) ? 1 : 0;
  }
  QVERIFY2(met >= 10, qPrintable(QString::number(met)));
  QVERIFY2(told * 10 >= met * 8, qPrintable(QStringLiteral("%1 of %2").arg(told).arg(met)));
}

void JawTouchTest::aBallThatFallsClearOfTheJawsTouchesNothing() {
  for (int i = 0; i < 12; ++i) {
    const Roll roll = rolled(0.0005 * i, 0.9 + 0.15 * i, i % 2 == 0 ? 30.0 : 60.0, static_cast<std::uint64_t>(i));
    QVERIFY(roll.read.has_value() && !roll.touch_s);
    QVERIFY(std::ranges::none_of(roll.read->events, [](const ShotEvent& e) { return e.kind == EventKind::Cushion; }));
    QCOMPARE(roll.read->pocketed.size(), std::size_t{1});
  }
}

/// The edge of the slate is not measured: a slow ball takes long to pass what is open of it.
void JawTouchTest::theTimeOfASlowFallIsUnsure() {
  const auto unsure_s = [](double speed_mps) {
    const Roll roll = rolled(0.0, speed_mps, 60.0, 1);
    for (const ShotEvent& event : roll.read->events) {
      if (event.kind == EventKind::Pocket) return event.timeUncertainty_s;
    }
    return 0.0;
  };
  QVERIFY(unsure_s(0.65) > 1.5 * unsure_s(2.5));
  QVERIFY(unsure_s(2.5) > 0.002);
}

FERRULE_TEST(JawTouchTest)
#include "jaw_touch_test.moc"
