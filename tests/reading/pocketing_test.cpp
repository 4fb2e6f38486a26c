// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/pocketing.h"

#include <QtTest>
#include <cmath>

#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
constexpr double kInterval_s = 1.0 / 60.0;
constexpr double kNoise_m = 0.0005;

/// A ball on an even way from a place at a velocity, seen until it has gone a distance.
MeasuredPath evenWay(TablePoint from, TableVector velocity, double until_m) {
  MeasuredPath path;
  for (double t = 0.0; t * length(velocity) <= until_m; t += kInterval_s)
    path.push_back({t, from + t * velocity, kNoise_m});
  return path;
}

Pocket pocketNamed(PocketName name) {
  return pockets(Table{})[static_cast<std::size_t>(name)];
}

BallEnd fate(const MeasuredPath& path, double after_s) {
  return fateOf(path, path.back().time_s + after_s, Table{}, kRadius_m);
}

}  // namespace

class PocketingTest : public QObject {
  Q_OBJECT
 private slots:
  void aBallThatVanishesAtAHoleFellIntoIt_data();
  void aBallThatVanishesAtAHoleFellIntoIt();
  void aBallThatHangsInTheJawsIsOnTheTable();
  void aBallThatWasJustSeenIsNotGoneYet();
  void aBallLostOnItsWayToAPocketFellUnsurely();
  void aBallLostInTheMiddleIsLost();
  void aFastBallAtARailLeftTheTable();
  void aHiddenBallThatLayStillIsWhereItLay();
};

void PocketingTest::aBallThatVanishesAtAHoleFellIntoIt_data() {
  QTest::addColumn<int>("pocket");
  for (const PocketName name : kPocketNames)
    QTest::newRow(std::string(toText(name)).c_str()) << static_cast<int>(name);
}

void PocketingTest::aBallThatVanishesAtAHoleFellIntoIt() {
  QFETCH(int, pocket);
  const Pocket into = pocketNamed(static_cast<PocketName>(pocket));
  const TablePoint from = into.hole - 0.6 * into.inward;
  const double edge_m = 0.6 - into.holeRadius_m;
  const double speed_mps = 1.2;
  const BallEnd end = fate(evenWay(from, speed_mps * into.inward, edge_m), 1.0);
  QVERIFY(end.fate == Fate::Pocketed);
  QVERIFY(end.pocket == into.name);
  QVERIFY(end.certain);
  // Even motion reaches the edge after its way over its speed.
  QVERIFY2(std::abs(end.time_s - edge_m / speed_mps) < 0.004, qPrintable(QString::number(end.time_s)));
  QVERIFY(distance(end.position, into.hole) < into.holeRadius_m + 0.003);
}

void PocketingTest::aBallThatHangsInTheJawsIsOnTheTable() {
  const Pocket into = pocketNamed(PocketName::FootRight);
  const TablePoint lip = into.hole - (into.holeRadius_m + 0.006) * into.inward;
  MeasuredPath path;
  for (int i = 0; i < 90; ++i)
    path.push_back({i * kInterval_s, lip, kNoise_m});
  QVERIFY(fate(path, 0.0).fate == Fate::OnTable);
}

void PocketingTest::aBallThatWasJustSeenIsNotGoneYet() {
  const Pocket into = pocketNamed(PocketName::SideLeft);
  const MeasuredPath path = evenWay(into.hole - 0.4 * into.inward, 0.8 * into.inward, 0.25);
  QVERIFY(fate(path, 0.5 * kGoneAfter_s).fate == Fate::OnTable);
}

void PocketingTest::aBallLostOnItsWayToAPocketFellUnsurely() {
  const Pocket into = pocketNamed(PocketName::HeadLeft);
  const BallEnd end = fate(evenWay(into.hole - 0.8 * into.inward, 1.5 * into.inward, 0.45), 1.0);
  QVERIFY(end.fate == Fate::Pocketed);
  QVERIFY(end.pocket == into.name);
  QVERIFY(!end.certain);
}

void PocketingTest::aBallLostInTheMiddleIsLost() {
  const BallEnd end = fate(evenWay({-0.5, 0.0}, {0.3, 0.05}, 0.2), 1.0);
  QVERIFY(end.fate == Fate::Lost);
  QVERIFY(!end.certain);
}

void PocketingTest::aFastBallAtARailLeftTheTable() {
  const Table table;
  // Toward the middle of the foot rail, where there is no pocket.
  const BallEnd end = fate(evenWay({0.5, 0.2}, {4.0, 0.0}, table.length_m / 2.0 - 0.5 - 0.1), 1.0);
  QVERIFY(end.fate == Fate::OffTable);
}

void PocketingTest::aHiddenBallThatLayStillIsWhereItLay() {
  MeasuredPath path;
  for (int i = 0; i < 30; ++i)
    path.push_back({i * kInterval_s, {0.2, 0.1}, kNoise_m});
  const BallEnd end = fate(path, 3.0);
  QVERIFY(end.fate == Fate::OnTable);
  QVERIFY(distance(end.position, {0.2, 0.1}) < 1e-9);
}

FERRULE_TEST(PocketingTest)
#include "pocketing_test.moc"
