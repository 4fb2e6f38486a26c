// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/set_up_check.h"

#include <QtTest>

#include "core/drills/drill_file.h"
#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

namespace {

BallAt moved(BallAt ball, TableVector by) {
  ball.position = ball.position + by;
  return ball;
}

}  // namespace

class SetUpCheckTest : public QObject {
  Q_OBJECT
 private slots:
  void eachBallsErrorIsAVector();
  void anyObjectBallMayStandAtAPlace();
  void aMissingBallLeavesItsPlaceEmpty();
  void anExtraBallIsNamed();
  void neighboursAreNotExchanged();
  void aCueBallInHandMustLieInItsZone();
  void looseBallsMustLieApart();
  void theStationIsTheOneThatStandsThere();
  void stationsThatDifferInTheirGoalsAloneGoByWhoseTurnItIs();
};

void SetUpCheckTest::eachBallsErrorIsAVector() {
  const Position set = setUpOf(cutDrill().stations[0], nineFoot());
  const Position found{moved(set[0], {0.003, -0.004}), moved(set[1], {0.0, 0.012})};
  const SetUpCheck check = checkSetUp(cutDrill().stations[0], nineFoot(), found);
  QCOMPARE(check.places.size(), std::size_t{2});
  QVERIFY(std::abs(length(*check.places[0].error()) - 0.005) < 1e-12);
  QVERIFY(std::abs(check.places[1].error()->y - 0.012) < 1e-12);
  QVERIFY(std::abs(*check.largestError_m() - 0.012) < 1e-12);
  QVERIFY(check.isWithin(0.015));
  QVERIFY(!check.isWithin(0.010));
}

void SetUpCheckTest::anyObjectBallMayStandAtAPlace() {
  const Position found{ball(0, 1.035, 0.218), ball(13, 1.5, 0.5)};
  const SetUpCheck check = checkSetUp(cutDrill().stations[0], nineFoot(), found);
  QVERIFY(check.isWithin(0.001));
  QCOMPARE(check.places[1].wanted.ball, BallName(1));
  QCOMPARE(check.places[1].found->ball, BallName(13));
}

void SetUpCheckTest::aMissingBallLeavesItsPlaceEmpty() {
  const SetUpCheck check = checkSetUp(cutDrill().stations[0], nineFoot(), {ball(0, 1.035, 0.218)});
  QVERIFY(!check.places[1].found.has_value());
  QVERIFY(!check.places[1].error().has_value());
  QVERIFY(!check.largestError_m().has_value());
  QVERIFY(!check.isWithin(1.0));
}

void SetUpCheckTest::anExtraBallIsNamed() {
  const Position found{ball(0, 1.035, 0.218), ball(1, 1.5, 0.5), ball(9, 0.3, 0.9)};
  const SetUpCheck check = checkSetUp(cutDrill().stations[0], nineFoot(), found);
  QCOMPARE(check.extra, std::vector{ball(9, 0.3, 0.9)});
  QVERIFY(check.isWithin(0.001));
}

/// Each ball a little toward the other's place, and one nearer to the wrong one.
void SetUpCheckTest::neighboursAreNotExchanged() {
  DrillStation station = cutDrill().stations[0];
  station.balls = {{BallName(1), {1.5, 0.5}}, {BallName(2), {1.5, 0.56}}};
  const Position found{ball(0, 1.035, 0.218), ball(5, 1.5, 0.535), ball(6, 1.5, 0.585)};
  const SetUpCheck check = checkSetUp(station, nineFoot(), found);
  QCOMPARE(check.places[1].found->ball, BallName(5));
  QCOMPARE(check.places[2].found->ball, BallName(6));
}

void SetUpCheckTest::aCueBallInHandMustLieInItsZone() {
  DrillStation station = cutDrill().stations[0];
  station.cueBall.reset();
  station.cueBallZone = rectangleZone({0.0, 0.0}, {0.5, 1.0});
  QVERIFY(checkSetUp(station, nineFoot(), {ball(0, 0.4, 0.2), ball(1, 1.5, 0.5)}).isWithin(0.01));
  QVERIFY(checkSetUp(station, nineFoot(), {ball(0, 0.6, 0.2), ball(1, 1.5, 0.5)}).cueBallAmiss);
  QVERIFY(checkSetUp(station, nineFoot(), {ball(1, 1.5, 0.5)}).cueBallAmiss);
}

void SetUpCheckTest::looseBallsMustLieApart() {
  const DrillStation& station = builtInDrill("three-ball-pattern")->stations.front();
  const BallAt cueBall = ball(0, 0.3, 0.3);
  QVERIFY(checkSetUp(station, nineFoot(), {cueBall, ball(1, 1.0, 0.5), ball(2, 1.5, 0.4), ball(7, 1.2, 0.7)})
              .isWithin(0.01));
  QVERIFY(checkSetUp(station, nineFoot(), {cueBall, ball(1, 1.0, 0.5), ball(2, 1.5, 0.4)}).looseAmiss);
  QVERIFY(
      checkSetUp(station, nineFoot(), {cueBall, ball(1, 1.0, 0.5), ball(2, 1.1, 0.5), ball(7, 1.2, 0.7)}).looseAmiss);
  QVERIFY(
      checkSetUp(station, nineFoot(), {cueBall, ball(1, 1.0, 0.1), ball(2, 1.5, 0.4), ball(7, 1.2, 0.7)}).looseAmiss);
}

void SetUpCheckTest::theStationIsTheOneThatStandsThere() {
  const Drill& fan = *builtInDrill("cut-fan");
  const Position third{ball(0, 0.985, 0.339), ball(1, 1.5, 0.5)};
  QCOMPARE(stationSetUp(fan, nineFoot(), third, 0), std::optional<std::size_t>(2));
  QVERIFY(!stationSetUp(fan, nineFoot(), {ball(0, 0.2, 0.9), ball(1, 1.5, 0.5)}, 0).has_value());
}

void SetUpCheckTest::stationsThatDifferInTheirGoalsAloneGoByWhoseTurnItIs() {
  const Drill& bands = *builtInDrill("follow-bands");
  const Position set = setUpOf(bands.stations[0], nineFoot());
  for (std::size_t wanted = 0; wanted < 3; ++wanted)
    QCOMPARE(stationSetUp(bands, nineFoot(), set, wanted), std::optional(wanted));
}

FERRULE_TEST(SetUpCheckTest)
#include "set_up_check_test.moc"
