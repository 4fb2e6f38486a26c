// SPDX-License-Identifier: GPL-3.0-or-later
// What happens at pockets. That a pocket takes slow balls more willingly, and that a ball may rattle in its jaws:
// common practice, no source.
#include <QtTest>
#include <algorithm>

#include "core/physics/simulator.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class PocketPlayTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallRattlesInTheJawsAndStaysOut();
  void aBallRolledInOffTheJawGoesDown();
  void aFastBallFindsThePocketSmaller();
  void aHangingBallStaysUntilItIsTouched();
  void aBallOverTheEdgeFalls();
  void everyJawSendsBackASquareHit();
};

namespace {

const PhysicsParameters kP = referenceParameters();
const Table kTable;

Simulator simulator() {
  return *Simulator::create(kTable, kP);
}

Pocket pocketNamed(PocketName name) {
  return pockets(kTable)[static_cast<std::size_t>(name)];
}

/// One rolling ball sent into a pocket's mouth from half a metre, straight, but offset_m to its left.
Simulation sentAt(const Pocket& pocket, double offset_m, double speed_mps) {
  const TablePoint start = pocket.mouth - 0.5 * pocket.inward + offset_m * perpendicular(pocket.inward);
  const Vector3 v = horizontal(speed_mps * pocket.inward);
  const BallState ball{BallName(1), {start.x, start.y, kP.ballRadius_m}, v, rollingSpin(v, 0.0, kP.ballRadius_m)};
  return *simulator().run(std::span(&ball, 1));
}

int jawHits(const Simulation& s, const Pocket& pocket) {
  return static_cast<int>(std::ranges::count_if(s.events, [&](const ShotEvent& event) {
    return event.kind == EventKind::Cushion && distance(event.position, pocket.mouth) < pocket.mouth_m;
  }));
}

bool wentDown(const Simulation& s) {
  return s.after.front().fate == BallFate::Pocketed;
}

/// Half the width of the stretch of offsets, in 0.2 mm steps from the middle, that goes down.
double half(const Pocket& pocket, double speed_mps) {
  double offset_m = 0.0;
  while (wentDown(sentAt(pocket, offset_m, speed_mps)) && offset_m < 0.1)
    offset_m += 2e-4;
  return offset_m;
}

}  // namespace

void PocketPlayTest::aBallRattlesInTheJawsAndStaysOut() {
  const Pocket pocket = pocketNamed(PocketName::FootLeft);
  int rattles = 0;
  for (double offset_m = 0.0; offset_m < 0.06; offset_m += 5e-4) {
    const Simulation s = sentAt(pocket, offset_m, 3.0);
    if (wentDown(s) || jawHits(s, pocket) < 2) continue;
    ++rattles;
    QCOMPARE(s.end, SimulationEnd::AtRest);
    QCOMPARE(s.after.front().fate, BallFate::OnTable);
    QVERIFY(pocketedIn(s).empty());
  }
  QVERIFY2(rattles > 0, "no offset makes the ball rattle");
}

void PocketPlayTest::aBallRolledInOffTheJawGoesDown() {
  const Pocket pocket = pocketNamed(PocketName::HeadRight);
  int rolledIn = 0;
  for (double offset_m = 0.0; offset_m < 0.06; offset_m += 5e-4) {
    const Simulation s = sentAt(pocket, offset_m, 1.0);
    if (!wentDown(s) || jawHits(s, pocket) == 0) continue;
    ++rolledIn;
    const auto down = pocketedIn(s);
    QCOMPARE(down.size(), std::size_t{1});
    QCOMPARE(down.front().pocket, PocketName::HeadRight);
    QCOMPARE(s.events.back().kind, EventKind::Pocket);
  }
  QVERIFY2(rolledIn > 0, "no offset sends the ball in off the jaw");
}

void PocketPlayTest::aFastBallFindsThePocketSmaller() {
  for (const PocketName name : {PocketName::FootRight, PocketName::SideLeft}) {
    const Pocket pocket = pocketNamed(name);
    const double slow_m = half(pocket, 0.8);
    const double fast_m = half(pocket, 6.0);
    QVERIFY2(slow_m >= fast_m, qPrintable(QStringLiteral("%1 %2").arg(slow_m).arg(fast_m)));
    // Whatever clears both nose points without touching goes down at any sensible speed.
    const double clear_m = pocket.mouth_m / 2.0 - kP.ballRadius_m;
    QVERIFY2(fast_m > 0.9 * clear_m, qPrintable(QStringLiteral("%1 %2").arg(fast_m).arg(clear_m)));
  }
}

void PocketPlayTest::aHangingBallStaysUntilItIsTouched() {
  for (const Pocket& pocket : pockets(kTable)) {
    // A tenth of a millimetre of slate is left under its centre.
    const TablePoint brink = pocket.hole - (pocket.holeRadius_m + 1e-4) * pocket.inward;
    const BallState alone = ballAtRest(BallName(8), brink, kP);
    const auto left = simulator().run(std::span(&alone, 1));
    QVERIFY(left.has_value());
    QCOMPARE(left->after.front().fate, BallFate::OnTable);
    QCOMPARE(left->after.front().position, brink);
    const TablePoint cueBall = brink - 0.4 * pocket.inward;
    const auto touched =
        simulator().shoot({{kCueBall, cueBall}, {BallName(8), brink}}, {direction(pocket.inward), 0.7, 0.0, 0.0, 0.0});
    QVERIFY(touched.has_value());
    QCOMPARE(touched->after[1].fate, BallFate::Pocketed);
    QCOMPARE(*touched->after[1].pocket, pocket.name);
  }
}

void PocketPlayTest::aBallOverTheEdgeFalls() {
  for (const Pocket& pocket : pockets(kTable)) {
    const TablePoint start = pocket.hole - (pocket.holeRadius_m + 1e-3) * pocket.inward;
    const Vector3 v = horizontal(0.05 * pocket.inward);
    const BallState ball{BallName(2), {start.x, start.y, kP.ballRadius_m}, v, rollingSpin(v, 0.0, kP.ballRadius_m)};
    const auto s = simulator().run(std::span(&ball, 1));
    QVERIFY(s.has_value());
    QCOMPARE(s->after.front().fate, BallFate::Pocketed);
    QVERIFY(s->duration_s < 0.5);
  }
}

/// Along the line that halves the corner of nose and facing, the ball comes back the way it came.
void PocketPlayTest::everyJawSendsBackASquareHit() {
  const Simulator table = simulator();
  for (const PocketWell& well : table.bed().wells) {
    for (std::size_t i = 0; i < 2; ++i) {
      const JawPoint& jaw = well.jaws[i];
      const TableVector out = table.bed().noses[static_cast<std::size_t>(jaw.cushion)].inward;
      const TableVector way = -unit(out + well.facings[i].inward);
      const TablePoint start = jaw.point - 0.05 * way;
      const Vector3 v = horizontal(1.0 * way);
      const BallState ball{BallName(3), {start.x, start.y, kP.ballRadius_m}, v, {}};
      const auto s = table.run(std::span(&ball, 1));
      QVERIFY(s.has_value());
      QCOMPARE(s->events.front().kind, EventKind::Cushion);
      QCOMPARE(s->events.front().cushion, std::optional(jaw.cushion));
      const Vector3 after = s->paths.front().stateAt(s->events.front().time_s + 1e-9).velocity;
      COMPARE_WITHIN(dot(planOf(after), way) / length(after), -1.0, 1e-12);
    }
  }
}

FERRULE_TEST(PocketPlayTest)
#include "pocket_play_test.moc"
