// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/asked_delivered.h"

#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Shots of a device with known faults.
struct Device {
  double speedScale = 1.0;
  double speedOffset_mps = 0.0;
  double sideLimit = 1.0;
  double scatter = 0.0;  ///< of the speed, relative to 1 m/s, and of the side
  double uncertainty = 0.01;
};

std::vector<AskedShot> shotsOf(const Device& device, int count, std::uint64_t seed) {
  Random random(seed);
  std::vector<AskedShot> shots;
  for (int i = 0; i < count; ++i) {
    AskedShot shot;
    shot.asked.speed_mps = 1.0 + 3.0 * i / (count - 1.0);
    shot.asked.side = -0.45 + 0.9 * i / (count - 1.0);
    const double noise = std::hypot(device.scatter, device.uncertainty);
    shot.delivered.speed_mps =
        Measured{device.speedOffset_mps + device.speedScale * *shot.asked.speed_mps + noise * random.normal(),
                 device.uncertainty};
    shot.delivered.side =
        Measured{std::clamp(*shot.asked.side, -device.sideLimit, device.sideLimit) + noise * random.normal(),
                 device.uncertainty};
    shots.push_back(shot);
  }
  return shots;
}

}  // namespace

class AskedDeliveredTest : public QObject {
  Q_OBJECT
 private slots:
  void aSpeedThatFallsShortShowsFromTenShots();
  void aSideThatIsCutOffShowsFromTenShots();
  void aSoundDeviceShowsNoLimit();
  void theScatterIsThatOfTheDeviceAlone();
  void statedIntervalsHoldTheTruth();
  void anglesAreComparedAcrossTheTurn();
  void fewShotsSayNothing();
  void commandsAreReadFromCsv();
  void decimalCommasOfASpreadsheetAreRead();
  void aBadCommandNamesItsLine();
};

void AskedDeliveredTest::aSpeedThatFallsShortShowsFromTenShots() {
  const auto shots = shotsOf({.speedScale = 0.92}, 10, 1);
  const AskedDelivered all = askedDelivered(shots);
  QVERIFY(all.speed_mps && all.speed_mps->scale);
  QVERIFY(std::abs(all.speed_mps->scale->value - 0.92) < 0.02);
  QVERIFY(all.speed_mps->scale->value + 2.0 * all.speed_mps->scale->standardUncertainty < 1.0);
}

void AskedDeliveredTest::aSideThatIsCutOffShowsFromTenShots() {
  const auto shots = shotsOf({.sideLimit = 0.3}, 10, 2);
  const AskedDelivered all = askedDelivered(shots);
  QVERIFY(all.side && all.side->limit);
  QVERIFY2(std::abs(all.side->limit->value - 0.3) < 0.03, qPrintable(QString::number(all.side->limit->value)));
  QVERIFY(all.side->limit->standardUncertainty > 0.0);
}

void AskedDeliveredTest::aSoundDeviceShowsNoLimit() {
  int limits = 0;
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    const AskedDelivered all = askedDelivered(shotsOf({.scatter = 0.02}, 12, seed));
    limits += all.side->limit ? 1 : 0;
    limits += all.speed_mps->limit ? 1 : 0;
  }
  QVERIFY2(limits <= 8, qPrintable(QString::number(limits)));
}

void AskedDeliveredTest::theScatterIsThatOfTheDeviceAlone() {
  const AskedDelivered all = askedDelivered(shotsOf({.scatter = 0.05, .uncertainty = 0.03}, 400, 3));
  QVERIFY(std::abs(all.speed_mps->scatter.value - 0.05) < 4.0 * all.speed_mps->scatter.standardUncertainty);
}

void AskedDeliveredTest::statedIntervalsHoldTheTruth() {
  int held = 0;
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const AskedDelivered all = askedDelivered(shotsOf({.speedScale = 0.95, .scatter = 0.03}, 15, seed));
    held += std::abs(all.speed_mps->scale->value - 0.95) < 1.96 * all.speed_mps->scale->standardUncertainty;
  }
  // 95 % less what 15 shots cost a normal interval; binomial spread of 300 draws is 1.3 %.
  QVERIFY2(held > 0.87 * 300 && held < 0.99 * 300, qPrintable(QString::number(held)));
}

void AskedDeliveredTest::anglesAreComparedAcrossTheTurn() {
  std::vector<AskedShot> shots;
  for (int i = 0; i < 6; ++i) {
    AskedShot shot;
    shot.asked.aim_rad = radiansFromDegrees(179.9);
    shot.delivered.aim_rad = Measured{radiansFromDegrees(-179.9), 0.001};
    shots.push_back(shot);
  }
  const AskedDelivered all = askedDelivered(shots);
  QVERIFY(std::abs(degreesFromRadians(all.aim_rad->offset.value) - 0.2) < 1e-6);
  QVERIFY(!all.aim_rad->scale.has_value());
}

void AskedDeliveredTest::fewShotsSayNothing() {
  QVERIFY(!askedDelivered(shotsOf({}, 3, 1)).speed_mps.has_value());
  QVERIFY(!askedDelivered({}).side.has_value());
}

void AskedDeliveredTest::commandsAreReadFromCsv() {
  const auto lines = parseAskedCsv("side,shot,note,speed_m_s,aim_deg\n0.1,2,x,1.5,90\r\n,,y,2.5,\n", "commands.csv");
  QVERIFY(lines.has_value());
  QCOMPARE(lines->size(), std::size_t{2});
  QCOMPARE((*lines)[0].shot, 2);
  QCOMPARE(*(*lines)[0].asked.side, 0.1);
  QVERIFY(std::abs(*(*lines)[0].asked.aim_rad - radiansFromDegrees(90.0)) < 1e-12);
  QCOMPARE((*lines)[1].shot, 3);
  QVERIFY(!(*lines)[1].asked.side.has_value());
  QCOMPARE(*(*lines)[1].asked.speed_mps, 2.5);
}

void AskedDeliveredTest::decimalCommasOfASpreadsheetAreRead() {
  const auto points = parseAskedCsv("shot,speed_m_s,aim_deg\n1,2.75,-90.5\n", "commands.csv");
  const auto commas = parseAskedCsv("shot;speed_m_s;aim_deg\r\n1;2,75;-90,5\r\n", "commands.csv");
  QVERIFY(points.has_value() && commas.has_value());
  QCOMPARE(*commas, *points);
  QCOMPARE(*(*commas)[0].asked.speed_mps, 2.75);
}

void AskedDeliveredTest::aBadCommandNamesItsLine() {
  const auto lines = parseAskedCsv("side\n0.1\nleft\n", "commands.csv");
  QVERIFY(!lines.has_value());
  QVERIFY(lines.error().code == ErrorCode::FileMalformed);
  QCOMPARE(lines.error().subject, std::string("commands.csv"));
  QCOMPARE(lines.error().detail, std::string("3: side"));
  QVERIFY(parseAskedCsv("a,b\n1,2\n", "commands.csv").error().code == ErrorCode::FieldMissing);
  QVERIFY(parseAskedCsv("", "commands.csv").error().code == ErrorCode::FileEmpty);
}

FERRULE_TEST(AskedDeliveredTest)
#include "asked_delivered_test.moc"
