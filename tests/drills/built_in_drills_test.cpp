// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <set>

#include "core/drills/aim_lines.h"
#include "core/drills/drill_file.h"
#include "core/drills/mirror.h"
#include "core/geometry/units.h"
#include "core/planner/planner.h"
#include "core/planner/pot_line.h"
#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

namespace {

const Planner& planner() {
  static const Planner kPlanner = std::move(*Planner::create(Table{}, PhysicsParameters{}));
  return kPlanner;
}

/// Every image of a drill that means the same.
std::vector<Drill> images(const Drill& drill) {
  std::vector<Drill> all{drill, mirrored(drill, {true, false})};
  if (drill.turnsRound) {
    all.push_back(mirrored(drill, {false, true}));
    all.push_back(mirrored(drill, {true, true}));
  }
  return all;
}

/// Whether a ball goes along these straight pieces past all others.
bool isWayOpen(const Layout& layout, const std::vector<TablePoint>& way, BallMask leftOut, double radius_m) {
  for (std::size_t i = 1; i < way.size(); ++i) {
    if (!isOpen(layout, way[i - 1], way[i], leftOut, radius_m)) return false;
  }
  return true;
}

}  // namespace

class BuiltInDrillsTest : public QObject {
  Q_OBJECT
 private slots:
  void thereAreTwentyFiveWithKeysOfTheirOwn();
  void everyOneIsSoundOnEverySizeOfTable();
  void cutsAreThoseOfThePracticeTable_data();
  void cutsAreThoseOfThePracticeTable();
  void everyStraightPotHasAnOpenLine();
  void everyWayOverCushionsIsOpenAndMeetsTheCushions();
  void kicksHaveNoStraightWayToTheBall();
  void everyZoneCanHoldARestingBall();
  void theRackStandsBehindTheFootSpot();
  void looseBallsLieApartAndDifferWithTheSeed();
};

void BuiltInDrillsTest::thereAreTwentyFiveWithKeysOfTheirOwn() {
  QCOMPARE(builtInDrills().size(), std::size_t{25});
  std::set<std::string> keys;
  for (const Drill& drill : builtInDrills()) {
    keys.insert(drill.key);
    QVERIFY(drill.title.empty() && drill.text.empty());
    QVERIFY(!drill.tags.empty());
  }
  QCOMPARE(keys.size(), std::size_t{25});
  QVERIFY(builtInDrill("lag") != nullptr);
  QVERIFY(builtInDrill("no such drill") == nullptr);
}

void BuiltInDrillsTest::everyOneIsSoundOnEverySizeOfTable() {
  for (const TableSize& size : tableSizes()) {
    MeasuredTable table;
    table.table = tableOfSize(size);
    for (const Drill& drill : builtInDrills()) {
      for (const Drill& image : images(drill)) {
        const auto faults = faultsOf(image, table);
        if (!faults.empty()) qWarning() << drill.key.c_str() << static_cast<int>(faults.front().fault);
        QVERIFY(faults.empty());
      }
    }
  }
}

void BuiltInDrillsTest::cutsAreThoseOfThePracticeTable_data() {
  QTest::addColumn<QString>("key");
  QTest::addColumn<int>("station");
  QTest::addColumn<double>("cut_deg");
  // Of the object ball's way to the corner of the playing surface, or to the middle of the side: common practice, no
  // source.
  struct Known {
    const char* key;
    std::vector<double> cuts_deg;
  };
  for (const Known& known :
       {Known{"stop-ladder", {0, 0, 0, 0}}, Known{"cut-fan", {0, 15, 30, 45, 60}},
        Known{"foot-spot-cuts", {33, 47, 60}}, Known{"rail-frozen-cut", {24, 44}}, Known{"side-pocket-pair", {39, 44}},
        Known{"thin-cut", {65}}, Known{"stun-to-the-mark", {29}}, Known{"correct-side", {21}},
        Known{"cue-ball-on-rail", {11}}}) {
    for (std::size_t i = 0; i < known.cuts_deg.size(); ++i) {
      QTest::newRow(qPrintable(QStringLiteral("%1 %2").arg(known.key).arg(i)))
          << QString::fromLatin1(known.key) << static_cast<int>(i) << known.cuts_deg[i];
    }
  }
}

/// The lines here run to the middle of the mouth, which lies a little inside the corner: up to 4 degrees beside a rail.
void BuiltInDrillsTest::cutsAreThoseOfThePracticeTable() {
  QFETCH(QString, key);
  QFETCH(int, station);
  QFETCH(double, cut_deg);
  const Drill* drill = builtInDrill(key.toStdString());
  QVERIFY(drill != nullptr);
  const auto lines = aimLines(drill->stations[static_cast<std::size_t>(station)], nineFoot());
  QVERIFY(lines && lines->cut_rad);
  const double found_deg = degreesFromRadians(*lines->cut_rad);
  if (std::abs(found_deg - cut_deg) > 4.0) qWarning() << found_deg;
  QVERIFY(std::abs(found_deg - cut_deg) <= 4.0);
}

void BuiltInDrillsTest::everyStraightPotHasAnOpenLine() {
  int looked = 0;
  for (const Drill& drill : builtInDrills()) {
    for (const Drill& image : images(drill)) {
      for (const DrillStation& station : image.stations) {
        for (const DrillGoal& goal : station.goals) {
          if (goal.kind != GoalKind::Pot || !goal.ball || !goal.pocket || !goal.cushions.empty()) continue;
          const Layout layout = layoutOf(setUpOf(station, nineFoot()));
          const double radius_m = nineFoot().balls.radius_m();
          const auto run = openRun(layout, *goal.ball, *goal.pocket, planner().windows(), radius_m);
          if (!run) qWarning() << drill.key.c_str();
          QVERIFY(run.has_value());
          // A ball that is played later gets its cue ball from the shot before.
          if (&goal != &station.goals.front()) continue;
          const auto line = withCueBall(*run, layout, placeOf(*station.cueBall, nineFoot()), radius_m);
          if (!line) qWarning() << drill.key.c_str();
          QVERIFY(line.has_value());
          QVERIFY(line->cut_rad < kMostDrillCut_rad);
          ++looked;
        }
      }
    }
  }
  QVERIFY(looked >= 100);
}

void BuiltInDrillsTest::everyWayOverCushionsIsOpenAndMeetsTheCushions() {
  int looked = 0;
  const double radius_m = nineFoot().balls.radius_m();
  for (const Drill& drill : builtInDrills()) {
    for (const DrillStation& station : drill.stations) {
      const DrillGoal& goal = station.goals.front();
      if (goal.cushions.empty() || !goal.ball) continue;
      const auto lines = aimLines(station, nineFoot());
      QVERIFY(lines.has_value());
      const Layout layout = layoutOf(setUpOf(station, nineFoot()));
      const auto& banked = goal.kind == GoalKind::Pot ? lines->objectBall : lines->cueBall;
      QCOMPARE(banked.size(), goal.cushions.size() + 2);
      QVERIFY(isWayOpen(layout, lines->cueBall, BallMask::of(kCueBall) | BallMask::of(*goal.ball), radius_m));
      QVERIFY(isWayOpen(layout, lines->objectBall, BallMask::of(kCueBall) | BallMask::of(*goal.ball), radius_m));
      for (std::size_t i = 0; i < goal.cushions.size(); ++i) {
        const Cushion cushion = cushions(Table{})[static_cast<std::size_t>(goal.cushions[i])];
        QVERIFY(std::abs(distanceToSegment(banked[i + 1], cushion.nose) - radius_m) < 1e-9);
      }
      ++looked;
    }
  }
  QCOMPARE(looked, 3);
}

void BuiltInDrillsTest::kicksHaveNoStraightWayToTheBall() {
  for (const char* key : {"one-rail-kick", "two-rail-kick"}) {
    const DrillStation& station = builtInDrill(key)->stations.front();
    const Layout layout = layoutOf(setUpOf(station, nineFoot()));
    const TablePoint cueBall = placeOf(*station.cueBall, nineFoot());
    QVERIFY(!isOpen(layout, cueBall, layout.at(BallName(1)), BallMask::range(0, 1), nineFoot().balls.radius_m()));
  }
}

void BuiltInDrillsTest::everyZoneCanHoldARestingBall() {
  const Table table;
  const double x = table.length_m / 2.0 - nineFoot().balls.radius_m();
  const double y = table.width_m / 2.0 - nineFoot().balls.radius_m();
  for (const Drill& drill : builtInDrills()) {
    for (const DrillStation& station : drill.stations) {
      for (const DrillGoal& goal : station.goals) {
        if (!goal.zone) continue;
        const TablePoint middle = middleOf(*goal.zone, table);
        const TablePoint inside{std::clamp(middle.x, -x, x), std::clamp(middle.y, -y, y)};
        QCOMPARE(distanceFrom_m(*goal.zone, table, inside), 0.0);
      }
    }
  }
}

void BuiltInDrillsTest::theRackStandsBehindTheFootSpot() {
  const Position balls = setUpOf(builtInDrill("break-control")->stations.front(), nineFoot());
  QCOMPARE(balls.size(), std::size_t{16});
  for (const BallAt& ball : balls) {
    if (ball.ball.isCueBall()) {
      QVERIFY(ball.position.x < headString_m(Table{}));
    } else {
      QVERIFY(ball.position.x > footSpot(Table{}).x - 1e-9);
    }
  }
}

void BuiltInDrillsTest::looseBallsLieApartAndDifferWithTheSeed() {
  const DrillStation& station = builtInDrill("open-spread-run")->stations.front();
  const Position one = setUpOf(station, nineFoot(), 1);
  QCOMPARE(one.size(), std::size_t{5});
  const double apart_m = 0.15 * Table{}.width_m;
  for (std::size_t i = 0; i < one.size(); ++i) {
    QVERIFY(Table{}.length_m / 2.0 - std::abs(one[i].position.x) >= apart_m);
    QVERIFY(Table{}.width_m / 2.0 - std::abs(one[i].position.y) >= apart_m);
    for (std::size_t k = 0; k < i; ++k)
      QVERIFY(distance(one[i].position, one[k].position) >= apart_m);
  }
  QCOMPARE(setUpOf(station, nineFoot(), 1), one);
  QVERIFY(setUpOf(station, nineFoot(), 2) != one);
}

FERRULE_TEST(BuiltInDrillsTest)
#include "built_in_drills_test.moc"
