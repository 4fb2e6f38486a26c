// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/table_priors.h"

#include <QtTest>

#include "core/physics/simulator.h"
#include "core/reading/shot_reader.h"
#include "tests/support/shot_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

Fingerprint found(std::vector<FittedCoefficient> coefficients) {
  return {"club table 2", "2026-03-01", std::move(coefficients), 5, 500, 5e-4, true};
}

}  // namespace

class TablePriorsTest : public QObject {
  Q_OBJECT
 private slots:
  void withoutAFingerprintTheLiteratureHolds();
  void whatWasDeterminedTakesTheLiteraturesPlace();
  void whatWasNotDeterminedStaysTheLiteratures();
  void noTableIsKnownBetterThanItsDays();
  void aSlowClothIsReadBetterWithItsFingerprint();
};

void TablePriorsTest::withoutAFingerprintTheLiteratureHolds() {
  const DeliveryPriors priors = tablePriors(PhysicsParameters{}, std::nullopt);
  QCOMPARE(priors.middle, PhysicsParameters{});
  QCOMPARE(priors.slidingFrictionSpread, DeliveryPriors{}.slidingFrictionSpread);
}

void TablePriorsTest::whatWasDeterminedTakesTheLiteraturesPlace() {
  const DeliveryPriors priors = tablePriors(
      PhysicsParameters{},
      found({{"sliding_friction", 0.28, 0.014, 0.2, 0.05, true}, {"ball_friction_factor", 1.5, 0.15, 1.0, 0.4, true}}));
  QCOMPARE(priors.middle.slidingFriction, 0.28);
  QCOMPARE(priors.slidingFrictionSpread, 0.05);  // 0.014 of 0.28
  QCOMPARE(priors.middle.ballFriction.floor, 1.5 * PhysicsParameters{}.ballFriction.floor);
  QCOMPARE(priors.ballFrictionSpread, 0.1);
}

void TablePriorsTest::whatWasNotDeterminedStaysTheLiteratures() {
  const DeliveryPriors priors =
      tablePriors(PhysicsParameters{}, found({{"cushion_restitution", 0.7, 0.04, 0.85, 0.05, false}}));
  QCOMPARE(priors.middle.cushionRestitution, PhysicsParameters{}.cushionRestitution);
  QCOMPARE(priors.cushionRestitutionSpread, DeliveryPriors{}.cushionRestitutionSpread);
}

void TablePriorsTest::noTableIsKnownBetterThanItsDays() {
  const DeliveryPriors priors =
      tablePriors(PhysicsParameters{}, found({{"rolling_friction", 0.012, 1e-7, 0.01, 0.003, true}}));
  QCOMPARE(priors.rollingFrictionSpread, 0.2 * DeliveryPriors{}.rollingFrictionSpread);
}

/// A cloth at the edge of what the literature gives, and soft strikes whose first images only show how they slow down.
void TablePriorsTest::aSlowClothIsReadBetterWithItsFingerprint() {
  MeasuredTable measured;
  measured.table = tableOfSize(*tableSizeNamed("9ft"));
  PhysicsParameters cloth = parametersFor(measured.balls);
  cloth.slidingFriction = 0.3;
  cloth.rollingFriction = 0.016;
  const Fingerprint fingerprint =
      found({{"sliding_friction", 0.3, 0.01, 0.2, 0.05, true}, {"rolling_friction", 0.016, 2e-4, 0.01, 0.003, true}});
  double squares[2] = {0.0, 0.0};
  double widths[2] = {0.0, 0.0};
  for (int i = 0; i < 16; ++i) {
    const Position balls{{kCueBall, {-0.7, -0.1}}, {BallName(3), {-0.1, -0.05 + 0.012 * i}}};
    const Strike strike{0.012 * i, 0.8 + 0.05 * i, 0.1, 0.25 - 0.04 * i, 0.06};
    const Simulation s = *Simulator::create(measured.table, cloth)->shoot(balls, strike);
    Random random(static_cast<std::uint64_t>(i));
    const auto readings = ferrule::testing::filmOf(s, {}, random);
    for (const bool knows : {false, true}) {
      ShotReader reader(measured);
      if (knows) reader.setTable(fingerprint);
      for (const ImageReading& reading : readings)
        reader.feed(reading);
      reader.finish();
      const auto shots = reader.takeShots();
      QCOMPARE(shots.size(), std::size_t{1});
      const Delivery& d = shots.front().reading.delivery;
      QVERIFY(d.speed_mps.has_value());
      const double off = d.speed_mps->value / strike.speed_mps - 1.0;
      squares[knows ? 1 : 0] += off * off;
      widths[knows ? 1 : 0] += d.speed_mps->standardUncertainty / strike.speed_mps;
    }
  }
  const QString words = QStringLiteral("squares %1 without, %2 with; widths %3, %4");
  QVERIFY2(squares[1] < squares[0], qPrintable(words.arg(squares[0]).arg(squares[1]).arg(widths[0]).arg(widths[1])));
  QVERIFY(widths[1] < widths[0]);
}

FERRULE_TEST(TablePriorsTest)
#include "table_priors_test.moc"
