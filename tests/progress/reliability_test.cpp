// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/reliability.h"

#include <QtTest>
#include <cmath>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Sessions of 40 pots whose stated chance is lifted by a bias over the one that they fall with.
PlayerHistory foretold(std::size_t sessions, double bias) {
  PlayerHistory history;
  history.player = "Invented";
  history.tables = {{"9ft", Table{}, 0.028575}};
  Random random(7);
  for (std::size_t s = 0; s < sessions; ++s) {
    history.sessions.push_back(
        {static_cast<std::int64_t>(s) + 1, "s", static_cast<std::int64_t>(s) * 86'400'000, 0, {}});
    for (int i = 0; i < 40; ++i) {
      PlayedShot shot;
      shot.session = s;
      shot.cut_rad = 0.3;
      const double chance = 0.1 + 0.7 * random.uniform();
      shot.potChance = chance + bias;
      shot.made = random.uniform() < chance;
      shot.outcome = shot.made ? Outcome::Pot : Outcome::Miss;
      history.shots.push_back(shot);
    }
  }
  return history;
}

}  // namespace

/// Stated chances against what came out.
class ReliabilityTest : public QObject {
  Q_OBJECT
 private slots:
  void bandsAreTenths();
  void chancesThatAreKeptShowNoGap();
  void chancesThatAreTooHighShowIt();
  void theBrierScoreIsTheMeanSquare();
  void shotsWithoutAPredictionDoNotCount();
};

void ReliabilityTest::bandsAreTenths() {
  QCOMPARE(chanceBand(0.0), std::size_t{0});
  QCOMPARE(chanceBand(0.0999), std::size_t{0});
  QCOMPARE(chanceBand(0.5), std::size_t{5});
  QCOMPARE(chanceBand(1.0), std::size_t{9});
}

void ReliabilityTest::chancesThatAreKeptShowNoGap() {
  const Reliability found = reliability(foretold(30, 0.0), {1, 499});
  QCOMPARE(found.shots, 1200);
  QVERIFY(found.gap->interval.holds(0.0));
  int within = 0;
  int bands = 0;
  int tried = 0;
  for (const ChanceBand& band : found.bands) {
    tried += band.tried;
    if (!band.isEnough()) continue;
    ++bands;
    if (band.wilson->holds(band.predicted)) ++within;
  }
  QCOMPARE(tried, 1200);
  // Eight bands of 95 % each: two outside happen in one of twenty, three in one of two hundred.
  QVERIFY(bands >= 7 && within >= bands - 2);
}

void ReliabilityTest::chancesThatAreTooHighShowIt() {
  const Reliability found = reliability(foretold(30, 0.15), {1, 499});
  QVERIFY(found.gap->interval.most < 0.0);
  QVERIFY(std::abs(found.gap->value + 0.15) < 0.05);
}

void ReliabilityTest::theBrierScoreIsTheMeanSquare() {
  PlayerHistory history = foretold(1, 0.0);
  history.shots.resize(10);
  const double chances[10] = {0.1, 0.9, 0.8, 0.3, 0.5, 0.6, 0.7, 0.2, 0.95, 0.4};
  const bool made[10] = {false, true, true, false, true, false, true, false, true, false};
  for (std::size_t i = 0; i < 10; ++i) {
    history.shots[i].potChance = chances[i];
    history.shots[i].made = made[i];
  }
  // Python 3.11, statistics.fmean((c - m) ** 2 for c, m in zip(chances, made)) of these lists: 0.10525.
  QVERIFY(std::abs(reliability(history, {1, 99}).brier->value - 0.10525) < 1e-12);
}

void ReliabilityTest::shotsWithoutAPredictionDoNotCount() {
  PlayerHistory history = foretold(1, 0.0);
  for (PlayedShot& shot : history.shots)
    shot.potChance.reset();
  const Reliability none = reliability(history, {1, 99});
  QCOMPARE(none.shots, 0);
  QVERIFY(none.gap.error().kind == ShortageKind::NoValues);
  history.shots.front().potChance = 0.5;
  QVERIFY(reliability(history, {1, 99}).gap.error().kind == ShortageKind::Shots);
}

FERRULE_TEST(ReliabilityTest)
#include "reliability_test.moc"
