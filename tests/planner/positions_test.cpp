// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/planner/frozen_positions.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class PositionsTest : public QObject {
  Q_OBJECT
 private slots:
  void theFirstSuggestionIsTheRightIdea();
};

/// At least nine of ten: the ideas are common practice, no source, and a search may see what practice overlooks. Those
/// that differ are named in the output.
void PositionsTest::theFirstSuggestionIsTheRightIdea() {
  int right = 0;
  const auto& positions = frozenPositions();
  for (const FrozenPosition& position : positions) {
    SearchBudget budget;
    budget.mostSimulations = 8000;
    const Scatter scatter = scatterOf(position.level);
    const auto suggestion = ninefoot().suggest(position.situation, {scatter, scatter}, budget);
    QVERIFY2(suggestion.has_value(), position.name);
    const RankedPlan& best = suggestion->plans.front();
    if (position.isRight(best)) {
      ++right;
      continue;
    }
    const auto& strike = best.plan.strike;
    qInfo("differs: %s: %s %d %s, value %.3f, pot %.2f, scratch %.2f, speed %.2f, side %.2f, height %.2f",
          position.name, std::string(toText(best.plan.kind)).c_str(), best.plan.ball.number(),
          best.plan.pocket ? std::string(toText(*best.plan.pocket)).c_str() : "", best.chances.value, best.chances.pot,
          best.chances.scratch, strike.speed_mps, strike.side, strike.height);
  }
  qInfo("%d of %d first suggestions agree", right, static_cast<int>(positions.size()));
  QVERIFY(positions.size() >= 30);
  QVERIFY(10 * right >= 9 * static_cast<int>(positions.size()));
}

FERRULE_TEST(PositionsTest)
#include "positions_test.moc"
