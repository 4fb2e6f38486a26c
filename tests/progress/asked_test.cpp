// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/asked.h"

#include <QtTest>
#include <cmath>
#include <numbers>
#include <random>

#include "core/progress/set_ups.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// So many repeats of one set-up, each faster than the one before.
PlayerHistory repeats(int count) {
  PlayerHistory history;
  history.tables.emplace_back();
  history.sessions.emplace_back();
  for (int i = 0; i < count; ++i) {
    PlayedShot shot;
    shot.cueBall = TablePoint{0.1, 0.2};
    shot.speed_mps = 1.0 + 0.1 * i;
    shot.rest = TablePoint{0.5, 0.1 * i};
    history.shots.push_back(shot);
  }
  return history;
}

}  // namespace

/// What was asked of each shot.
class AskedTest : public QObject {
  Q_OBJECT
 private slots:
  void repeatsAskForTheirOwnMean();
  void tooFewRepeatsAskNothing();
  void whatWasMeantComesBeforeRepeats();
  void theEllipseHoldsAboutNineteenOfTwenty();
};

void AskedTest::repeatsAskForTheirOwnMean() {
  const auto asked = askedOf(repeats(kFewestRepeats));
  QCOMPARE(asked.size(), std::size_t{kFewestRepeats});
  QVERIFY(std::abs(*asked[0].speed_mps - 1.2) < 1e-12);
  QVERIFY(std::abs(asked[4].rest->y - 0.2) < 1e-12);
  QVERIFY(asked[0].speedFromRepeats && asked[0].restFromRepeats);
}

void AskedTest::tooFewRepeatsAskNothing() {
  for (const Asked& asked : askedOf(repeats(kFewestRepeats - 1)))
    QVERIFY(!asked.speed_mps && !asked.rest);
}

void AskedTest::whatWasMeantComesBeforeRepeats() {
  PlayerHistory history = repeats(kFewestRepeats);
  history.shots[1].meant.speed_mps = 2.5;
  const auto asked = askedOf(history);
  QCOMPARE(*asked[1].speed_mps, 2.5);
  QVERIFY(!asked[1].speedFromRepeats && asked[1].restFromRepeats);
}

void AskedTest::theEllipseHoldsAboutNineteenOfTwenty() {
  // A normal law with spreads 3 and 1, turned by 30 degrees: half axes 3 and 1 times sqrt(5.991) (printed tables of
  // the chi-squared law, two degrees, 95 %).
  std::mt19937 random(3);
  std::normal_distribution<double> normal(0.0, 1.0);
  const double turn = std::numbers::pi / 6.0;
  std::vector<std::array<double, 2>> points;
  for (int i = 0; i < 20000; ++i) {
    const double along = 3.0 * normal(random);
    const double across = normal(random);
    points.push_back({10.0 + along * std::cos(turn) - across * std::sin(turn),
                      -4.0 + along * std::sin(turn) + across * std::cos(turn)});
  }
  const auto ellipse = spreadEllipse(points);
  QVERIFY(ellipse.has_value());
  QVERIFY(std::abs(ellipse->longHalf - 3.0 * std::sqrt(5.991)) < 0.15);
  QVERIFY(std::abs(ellipse->shortHalf - std::sqrt(5.991)) < 0.05);
  QVERIFY(std::abs(std::remainder(ellipse->turn_rad - turn, std::numbers::pi)) < 0.02);
  QVERIFY(std::abs(ellipse->x - 10.0) < 0.1 && std::abs(ellipse->y + 4.0) < 0.1);
  QVERIFY(!spreadEllipse(std::span(points).first(2)));
}

FERRULE_TEST(AskedTest)
#include "asked_test.moc"
