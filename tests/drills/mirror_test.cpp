// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/mirror.h"

#include <QtTest>

#include "core/drills/aim_lines.h"
#include "core/drills/drill_file.h"
#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

class MirrorTest : public QObject {
  Q_OBJECT
 private slots:
  void sidesExchangeLeftAndRight();
  void endsExchangeHeadAndFoot();
  void sideSpinTurnsWithOneMirrorAndBackWithTwo();
  void everyBuiltInDrillMirroredTwiceIsItself();
  void aMirroredCutIsAsThickAndGoesToTheOtherSide();
  void wordsComeBack();
};

void MirrorTest::sidesExchangeLeftAndRight() {
  Drill drill = cutDrill();
  drill.stations[0].cueBall->frozen = CushionName::RightHead;
  drill.stations[0].goals[0].cushions = {CushionName::LeftFoot, CushionName::Head};
  drill.stations[0].goals[0].zone = Zone{{{0.25, 0.1}}, 0.05};
  const DrillStation station = mirrored(drill, {true, false}).stations[0];
  QCOMPARE(station.balls[0].place, (SurfacePlace{1.5, 0.5}));
  QVERIFY(std::abs(station.cueBall->place.across - 0.782) < 1e-12);
  QCOMPARE(station.cueBall->place.along, 1.035);
  QVERIFY(station.cueBall->frozen == CushionName::LeftHead);
  QVERIFY(station.goals[0].pocket == PocketName::FootRight);
  QVERIFY((station.goals[0].cushions == std::vector{CushionName::RightFoot, CushionName::Head}));
  QCOMPARE(station.goals[0].zone->corners[0], (SurfacePlace{0.25, 0.9}));
  QCOMPARE(station.goals[0].zone->reach_widths, 0.05);
}

void MirrorTest::endsExchangeHeadAndFoot() {
  Drill drill = cutDrill();
  drill.stations[0].goals[0].cushions = {CushionName::LeftFoot, CushionName::Head};
  const DrillStation station = mirrored(drill, {false, true}).stations[0];
  QCOMPARE(station.balls[0].place, (SurfacePlace{0.5, 0.5}));
  QVERIFY(station.goals[0].pocket == PocketName::HeadLeft);
  QVERIFY((station.goals[0].cushions == std::vector{CushionName::LeftHead, CushionName::Foot}));
}

void MirrorTest::sideSpinTurnsWithOneMirrorAndBackWithTwo() {
  Drill drill = cutDrill();
  drill.stations[0].asked.side = 0.3;
  QCOMPARE(*mirrored(drill, {true, false}).stations[0].asked.side, -0.3);
  QCOMPARE(*mirrored(drill, {false, true}).stations[0].asked.side, -0.3);
  QCOMPARE(*mirrored(drill, {true, true}).stations[0].asked.side, 0.3);
}

void MirrorTest::everyBuiltInDrillMirroredTwiceIsItself() {
  const MeasuredTable table = nineFoot();
  for (const Drill& drill : builtInDrills()) {
    for (const Mirroring mirroring : {Mirroring{true, false}, Mirroring{false, true}, Mirroring{true, true}}) {
      if (mirroring.ends && !drill.turnsRound) continue;
      const Drill twice = mirrored(mirrored(drill, mirroring), mirroring);
      for (std::size_t i = 0; i < drill.stations.size(); ++i) {
        const Position once = setUpOf(drill.stations[i], table);
        const Position again = setUpOf(twice.stations[i], table);
        QCOMPARE(again.size(), once.size());
        for (std::size_t ball = 0; ball < once.size(); ++ball)
          QVERIFY(distance(once[ball].position, again[ball].position) < 1e-12);
        for (std::size_t goal = 0; goal < drill.stations[i].goals.size(); ++goal) {
          QVERIFY(twice.stations[i].goals[goal].pocket == drill.stations[i].goals[goal].pocket);
          QVERIFY(twice.stations[i].goals[goal].cushions == drill.stations[i].goals[goal].cushions);
        }
      }
    }
  }
}

void MirrorTest::aMirroredCutIsAsThickAndGoesToTheOtherSide() {
  const auto lines = aimLines(cutDrill().stations[0], nineFoot());
  const auto image = aimLines(mirrored(cutDrill(), {true, false}).stations[0], nineFoot());
  const auto both = aimLines(mirrored(cutDrill(), {true, true}).stations[0], nineFoot());
  QVERIFY(lines && image && both);
  QVERIFY(std::abs(*lines->cut_rad - *image->cut_rad) < 1e-12);
  QVERIFY(lines->cutSide.has_value());
  QVERIFY(image->cutSide.has_value() && image->cutSide != lines->cutSide);
  QVERIFY(both->cutSide == lines->cutSide);
}

void MirrorTest::wordsComeBack() {
  for (const Mirroring mirroring :
       {Mirroring{}, Mirroring{true, false}, Mirroring{false, true}, Mirroring{true, true}}) {
    QVERIFY(mirroringFromText(toText(mirroring)) == mirroring);
  }
  QVERIFY(!mirroringFromText("left").has_value());
}

FERRULE_TEST(MirrorTest)
#include "mirror_test.moc"
