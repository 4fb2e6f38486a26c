// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/fingerprint.h"

#include <QtTest>
#include <algorithm>

#include "core/geometry/units.h"
#include "tests/support/filmed_shot.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class FingerprintTest : public QObject {
  Q_OBJECT
 private slots:
  void recordedShotsGiveTheTableBack();
  void whatNoShotShowsIsSaidToBeUndetermined();
  void tracksWithoutAStrikeAreRefused();
  void theFileFormComesBackWhole();
};

namespace {

/// The literature's table with each coefficient off by its usual spread, and the fit's names for the values.
struct Planted {
  PhysicsParameters parameters;
  std::vector<std::pair<const char*, double>> values;
};

Planted planted(Random& random) {
  PhysicsParameters p;
  const auto around = [&](double value, double spread, double least, double most) {
    return std::clamp(value + spread * random.normal(), least, most);
  };
  p.slidingFriction = around(p.slidingFriction, 0.04, 0.1, 0.35);
  p.rollingFriction = around(p.rollingFriction, 0.003, 0.004, 0.02);
  p.spinDecay_radps2 = around(p.spinDecay_radps2, 3.0, 4.0, 18.0);
  p.cushionRestitution = around(p.cushionRestitution, 0.05, 0.6, 0.95);
  p.cushionFriction = around(p.cushionFriction, 0.06, 0.05, 0.4);
  p.ballRestitution = around(p.ballRestitution, 0.015, 0.9, 0.985);
  const double factor = around(1.0, 0.3, 0.3, 2.0);
  p.ballFriction.floor *= factor;
  p.ballFriction.extra *= factor;
  return {p,
          {{"sliding_friction", p.slidingFriction},
           {"rolling_friction", p.rollingFriction},
           {"spin_decay_rad_s2", p.spinDecay_radps2},
           {"cushion_restitution", p.cushionRestitution},
           {"cushion_friction", p.cushionFriction},
           {"ball_restitution", p.ballRestitution},
           {"ball_friction_factor", factor}}};
}

const FittedCoefficient& named(const Fingerprint& f, const std::string& name) {
  return *std::ranges::find(f.coefficients, name, &FittedCoefficient::name);
}

}  // namespace

void FingerprintTest::recordedShotsGiveTheTableBack() {
  Random random(77);
  int within = 0;
  int all = 0;
  for (int round = 0; round < 3; ++round) {
    const Planted table = planted(random);
    std::vector<FingerprintShot> shots;
    for (int i = 0; i < 8; ++i) {
      const Position before{{kCueBall, {-0.6 + 0.3 * random.uniform(), 0.4 * (random.uniform() - 0.5)}},
                            {BallName(1), {0.3 * random.uniform(), 0.4 * (random.uniform() - 0.5)}},
                            {BallName(2), {0.6 + 0.3 * random.uniform(), 0.6 * (random.uniform() - 0.5)}}};
      // Half of them hit the 1, half go where they go.
      const double toOne = direction(before[1].position - before[0].position) + 0.05 * (random.uniform() - 0.5);
      const Strike strike{i % 2 == 0 ? toOne : 6.28 * random.uniform(), 1.0 + 2.0 * random.uniform(),
                          0.5 * (random.uniform() - 0.5), 0.6 * (random.uniform() - 0.5), 0.0};
      shots.push_back(filmed(table.parameters, before, strike, random));
    }
    const auto f = fitFingerprint(Table{}, PhysicsParameters{}, shots);
    QVERIFY(f.has_value());
    QVERIFY(f->shots >= 6);
    QVERIFY2(f->rms_m < 1e-3, qPrintable(QString::number(f->rms_m)));
    for (const auto& [name, value] : table.values) {
      const FittedCoefficient& c = named(*f, name);
      const double off = std::abs(c.value - value) / c.standardUncertainty;
      const QString words = QStringLiteral("%1 %2 +- %3, planted %4");
      QVERIFY2(off < 4.0, qPrintable(words.arg(name).arg(c.value).arg(c.standardUncertainty).arg(value)));
      within += off < 1.96 ? 1 : 0;
      ++all;
    }
    for (const char* name : {"sliding_friction", "rolling_friction", "cushion_restitution", "ball_restitution"})
      QVERIFY2(named(*f, name).determined, name);
    QCOMPARE(applied(*f, PhysicsParameters{}).slidingFriction, named(*f, "sliding_friction").value);
  }
  // 95 % intervals; fewer than 17 of 21 would be a chance of one in 400.
  QVERIFY2(within >= 17, qPrintable(QStringLiteral("%1 of %2 within").arg(within).arg(all)));
}

void FingerprintTest::whatNoShotShowsIsSaidToBeUndetermined() {
  PhysicsParameters truth;
  truth.rollingFriction = 0.013;
  Random random(5);
  std::vector<FingerprintShot> shots;
  for (const double aim : {0.1, -0.2, 0.3}) {
    shots.push_back(filmed(truth, {{kCueBall, {-0.9, 0.0}}}, {aim, 0.5, 0.0, 0.0, 0.0}, random));
  }
  const auto f = fitFingerprint(Table{}, PhysicsParameters{}, shots);
  QVERIFY(f.has_value());
  const auto open = undetermined(*f);
  for (const char* name :
       {"cushion_restitution", "cushion_friction", "ball_restitution", "ball_friction_factor", "spin_decay_rad_s2"}) {
    QVERIFY2(std::ranges::find(open, name) != open.end(), name);
    QVERIFY(std::abs(named(*f, name).value - named(*f, name).literature) < 1e-9);
  }
  QVERIFY(named(*f, "rolling_friction").determined);
  QVERIFY(std::abs(named(*f, "rolling_friction").value - 0.013) < 5e-4);
  QCOMPARE(applied(*f, PhysicsParameters{}).ballRestitution, PhysicsParameters{}.ballRestitution);
}

void FingerprintTest::tracksWithoutAStrikeAreRefused() {
  QCOMPARE(fitFingerprint(Table{}, {}, {}).error().code, ErrorCode::NotFound);
  const FingerprintShot empty;
  QCOMPARE(fitFingerprint(Table{}, {}, std::span(&empty, 1)).error().code, ErrorCode::NotFound);
}

void FingerprintTest::theFileFormComesBackWhole() {
  const Fingerprint f{"club 1", "2026-11-25", {{"rolling_friction", 0.011, 0.0001, 0.01, 0.003, true}}, 3, 120,
                      5e-4,     true};
  QCOMPARE(*parseFingerprint(fingerprintText(f), "f.json"), f);
  QCOMPARE(parseFingerprint("{}", "f.json").error().code, ErrorCode::FileMalformed);
}

FERRULE_TEST(FingerprintTest)
#include "fingerprint_test.moc"
