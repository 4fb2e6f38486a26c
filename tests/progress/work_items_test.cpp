// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/work_items.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <functional>

#include "core/progress/player_progress.h"
#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr std::size_t kShotsInAFrame = 8;

/// A player without habits, eight shots to a frame, whose every third shot was played again; gain: of a shot.
PlayerHistory playedAgain(const std::function<SteadierGain(const PlayedShot&)>& gain) {
  invented::Plan plan;
  plan.matchShots = 60;
  PlayerHistory history = invented::history(invented::Habits{.name = "Nobody"}, plan);
  for (std::size_t i = 0; i < history.shots.size(); ++i) {
    PlayedShot& shot = history.shots[i];
    shot.game = "eight-ball";
    shot.frame = static_cast<std::int64_t>(1 + i / kShotsInAFrame);
    if (i % 3 == 0) shot.steadier = gain(shot);
  }
  history.shots.resize(history.shots.size() / kShotsInAFrame * kShotsInAFrame);
  return history;
}

std::vector<WorkItem> itemsOf(const PlayerHistory& history) {
  return playerProgress(history, {2'000'000'000'000, {}}).work;
}

const WorkItem* of(const std::vector<WorkItem>& items, WorkKind kind) {
  const auto found = std::ranges::find(items, kind, &WorkItem::kind);
  return found == items.end() ? nullptr : &*found;
}

}  // namespace

class WorkItemsTest : public QObject {
  Q_OBJECT
 private slots:
  void speedThatIsWorthMostComesFirst();
  void whatGainsNothingIsNotNamed();
  void aRegionGainsWhatItsOwnShotsGain();
  void tooFewPlayedAgainLeaveTheOrderOfBalls();
};

/// Every shot gains 0.002 of a frame by steadier speed, eight shots make a frame: 1.6 frames of 100.
void WorkItemsTest::speedThatIsWorthMostComesFirst() {
  const PlayerHistory history = playedAgain([](const PlayedShot&) {
    return SteadierGain{0.0002, 0.002, 0.0, 0.08, 0.04};
  });
  const auto items = itemsOf(history);
  QVERIFY(!items.empty());
  QCOMPARE(items.front().kind, WorkKind::SpeedControl);
  QVERIFY(items.front().frames.has_value());
  QVERIFY(std::abs(*items.front().frames - 1.6) < 1e-9);
  QVERIFY(std::abs(items.front().share - 0.08) < 1e-12);
  QCOMPARE(items.front().drill, WorkDrill::Lag);
  for (std::size_t i = 1; i < items.size(); ++i)
    QVERIFY(!items[i].frames || *items[i].frames <= *items[i - 1].frames);
}

void WorkItemsTest::whatGainsNothingIsNotNamed() {
  int count = 0;
  const auto items = itemsOf(playedAgain([&count](const PlayedShot&) {
    // As often a loss as a gain: no more than chance.
    const double sign = ++count % 2 == 0 ? 1.0 : -1.0;
    return SteadierGain{0.001, 0.001 * sign, 0.001 * sign, 0.08, 0.04};
  }));
  QVERIFY(of(items, WorkKind::SpeedControl) == nullptr);
  QVERIFY(of(items, WorkKind::TipPoint) == nullptr);
}

void WorkItemsTest::aRegionGainsWhatItsOwnShotsGain() {
  const double width_m = Table{}.width_m;
  const auto isLong = [&](const PlayedShot& shot) {
    return shot.cut_rad && *shot.cut_rad <= kThinCut_rad &&
           *shot.cueToGhost_m + *shot.objectToPocket_m > kLongWay_widths * width_m;
  };
  const PlayerHistory history = playedAgain([&](const PlayedShot& shot) {
    return SteadierGain{isLong(shot) ? 0.01 : 0.0, 0.0, 0.0, 0.08, 0.04};
  });
  const auto items = itemsOf(history);
  const WorkItem* longShots = of(items, WorkKind::LongShots);
  QVERIFY(longShots != nullptr && longShots->frames.has_value());
  QVERIFY(*longShots->frames > 0.0);
  QCOMPARE(items.front().kind, WorkKind::LongShots);
  for (const WorkKind other : {WorkKind::ThinCuts, WorkKind::ShortShots}) {
    const WorkItem* item = of(items, other);
    if (item != nullptr) QCOMPARE(*item->frames, 0.0);
  }
}

void WorkItemsTest::tooFewPlayedAgainLeaveTheOrderOfBalls() {
  PlayerHistory history = playedAgain([](const PlayedShot&) { return SteadierGain{0.01, 0.01, 0.01, 0.08, 0.04}; });
  int left = kFewestPlayedAgain - 1;
  for (PlayedShot& shot : history.shots) {
    if (shot.steadier && --left < 0) shot.steadier.reset();
  }
  const auto items = itemsOf(history);
  QVERIFY(!items.empty());
  for (std::size_t i = 0; i < items.size(); ++i) {
    QVERIFY(!items[i].frames.has_value());
    if (i > 0) QVERIFY(items[i - 1].gain >= items[i].gain);
  }
}

FERRULE_TEST(WorkItemsTest)
#include "work_items_test.moc"
