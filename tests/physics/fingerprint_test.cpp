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
  void fewShotsClaimLittle();
  void whatNoShotShowsIsSaidToBeUndetermined();
  void tracksWithoutAStrikeAreRefused();
  void theFileFormComesBackWhole();
};

namespace {

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
    const std::vector<FingerprintShot> shots = filmedSet(table.parameters, 8, random);
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

/// Three shots: their errors hang together, and 95 % intervals must know it. Fewer than 76 of 84 would be a chance of
/// one in 30 if the coefficients were independent.
void FingerprintTest::fewShotsClaimLittle() {
  Random random(21);
  int within = 0;
  int all = 0;
  for (int round = 0; round < 12; ++round) {
    const Planted table = planted(random);
    const auto f = fitFingerprint(Table{}, PhysicsParameters{}, filmedSet(table.parameters, 3, random));
    QVERIFY(f.has_value());
    for (const auto& [name, value] : table.values) {
      const FittedCoefficient& c = named(*f, name);
      within += std::abs(c.value - value) < 1.96 * c.standardUncertainty ? 1 : 0;
      ++all;
    }
  }
  QVERIFY2(within >= 76, qPrintable(QStringLiteral("%1 of %2 within").arg(within).arg(all)));
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
