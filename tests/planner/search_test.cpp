// SPDX-License-Identifier: GPL-3.0-or-later
#include <tbb/global_control.h>

#include <QtTest>

#include "core/table/rack.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class SearchTest : public QObject {
  Q_OBJECT
 private slots:
  void theSameSeedGivesTheSameAnswerOnAnyNumberOfCores();
  void theBestSoFarIsThereEarlyAndTheStopIsHeeded();
  void everyPlanPlaysAsItSays();
  void everyGameHasASuggestion_data();
  void everyGameHasASuggestion();
  void aBreakIsSuggestedForARack();
  void theCueBallInHandIsPlacedWhereItMayLie();
  void aHiddenBallIsKickedAt();
  void badPositionsAreRefused();
};

namespace {

const Position kBalls{ballAt(0, 0.6, 0.2),  ballAt(1, 1.3, 0.7), ballAt(4, 0.3, 0.4),  ballAt(6, 1.75, 0.2),
                      ballAt(8, 1.6, 0.45), ballAt(9, 1.1, 0.9), ballAt(13, 1.8, 0.6), ballAt(15, 0.9, 0.4)};

std::array<Scatter, 2> both(PlayerLevel level) {
  return {scatterOf(level), scatterOf(level)};
}

SearchBudget small(std::uint64_t seed = 1) {
  SearchBudget budget;
  budget.mostSimulations = 6000;
  budget.seed = seed;
  return budget;
}

}  // namespace

void SearchTest::theSameSeedGivesTheSameAnswerOnAnyNumberOfCores() {
  const Situation situation = situationOf(Game::EightBall, kBalls, "solids");
  const auto search = [&](std::size_t cores) {
    const tbb::global_control control(tbb::global_control::max_allowed_parallelism, cores);
    return *ninefoot().suggest(situation, both(PlayerLevel::Club), small());
  };
  const Suggestion one = search(1);
  QVERIFY(one.plans.size() > 1);
  QCOMPARE(search(2), one);
  QCOMPARE(search(4), one);
}

void SearchTest::theBestSoFarIsThereEarlyAndTheStopIsHeeded() {
  const Situation situation = situationOf(Game::EightBall, kBalls, "solids");
  std::stop_source source;
  SearchBudget budget;
  budget.stop = source.get_token();
  int reports = 0;
  const auto stopped = ninefoot().suggest(situation, both(PlayerLevel::Club), budget, [&](const Suggestion& best) {
    ++reports;
    QVERIFY(!best.plans.empty());
    source.request_stop();
  });
  QVERIFY(stopped.has_value());
  QCOMPARE(reports, 1);
  QCOMPARE(stopped->end, SearchEnd::Stopped);
  QVERIFY(!stopped->plans.empty());
}

/// The faultless play of every plan that pots something pots it.
void SearchTest::everyPlanPlaysAsItSays() {
  const Situation situation = situationOf(Game::EightBall, kBalls, "solids");
  const auto suggestion = ninefoot().suggest(situation, both(PlayerLevel::Club), small());
  QVERIFY(suggestion.has_value());
  for (std::size_t i = 0; i < suggestion->plans.size(); ++i) {
    const RankedPlan& ranked = suggestion->plans[i];
    QCOMPARE(ranked.rank, static_cast<int>(i) + 1);
    QVERIFY(i == 0 || ranked.chances.value <= suggestion->plans[i - 1].chances.value);
    QVERIFY(ranked.chances.pot >= 0.0 && ranked.chances.pot <= 1.0 && ranked.chances.value <= 1.0);
    if (!ranked.plan.pocket) continue;
    const auto played = ninefoot().simulator().shoot(situation.balls, ranked.plan.strike);
    const auto pocketed = pocketedIn(*played);
    QVERIFY(std::ranges::find(pocketed, *callOf(ranked.plan)) != pocketed.end());
  }
}

void SearchTest::everyGameHasASuggestion_data() {
  QTest::addColumn<int>("game");
  for (const Game game : kGames)
    QTest::newRow(std::string(toText(game)).c_str()) << static_cast<int>(game);
}

void SearchTest::everyGameHasASuggestion() {
  QFETCH(int, game);
  const Situation situation = situationOf(static_cast<Game>(game), kBalls);
  const auto suggestion = ninefoot().suggest(situation, both(PlayerLevel::Expert), small());
  QVERIFY(suggestion.has_value());
  const BallMask first = legalFirst(situation);
  for (const RankedPlan& ranked : suggestion->plans)
    QVERIFY(first.has(ranked.plan.first));
}

void SearchTest::aBreakIsSuggestedForARack() {
  Random random(4);
  Situation situation = situationOf(Game::EightBall, racked(RackKind::EightBall, Table{}, poolBalls(), random));
  situation.breakShot = true;
  situation.cueBall = CueBallFreedom::BehindString;
  const auto suggestion = ninefoot().suggest(situation, both(PlayerLevel::Expert), small());
  QVERIFY(suggestion.has_value());
  const Plan& plan = suggestion->plans.front().plan;
  QCOMPARE(plan.kind, PlanKind::Break);
  QVERIFY(plan.cueBall && plan.cueBall->x < headString_m(Table{}));
  QVERIFY(suggestion->plans.front().chances.foul < 0.3);
}

void SearchTest::theCueBallInHandIsPlacedWhereItMayLie() {
  Situation situation = situationOf(Game::NineBall, kBalls);
  for (const CueBallFreedom freedom : {CueBallFreedom::Anywhere, CueBallFreedom::BehindString}) {
    situation.cueBall = freedom;
    const auto suggestion = ninefoot().suggest(situation, both(PlayerLevel::Club), small());
    QVERIFY(suggestion.has_value());
    for (const RankedPlan& ranked : suggestion->plans) {
      QVERIFY(ranked.plan.cueBall.has_value());
      QVERIFY(freedom == CueBallFreedom::Anywhere || ranked.plan.cueBall->x < headString_m(Table{}));
      for (const BallAt& ball : situation.balls) {
        QVERIFY(ball.ball.isCueBall() || distance(ball.position, *ranked.plan.cueBall) > 2.0 * 0.028575);
      }
    }
  }
}

/// Drill "one-rail kick": a blocker between cue ball and the only legal ball. Common practice, no source.
void SearchTest::aHiddenBallIsKickedAt() {
  const Position balls{ballAt(0, 0.5, 0.25), ballAt(1, 1.5, 0.25), ballAt(9, 1.0, 0.25), ballAt(8, 1.0, 0.19),
                       ballAt(10, 1.0, 0.31)};
  const auto suggestion =
      ninefoot().suggest(situationOf(Game::EightBall, balls, "solids"), both(PlayerLevel::Club), small());
  QVERIFY(suggestion.has_value());
  const RankedPlan& best = suggestion->plans.front();
  QCOMPARE(best.plan.kind, PlanKind::Kick);
  QVERIFY(best.chances.foul < 0.6);
}

void SearchTest::badPositionsAreRefused() {
  const auto refusal = [&](const Situation& situation) {
    const auto suggestion = ninefoot().suggest(situation, both(PlayerLevel::Club), small());
    return suggestion ? Error{ErrorCode::Cancelled, "none", {}, {}} : suggestion.error();
  };
  QCOMPARE(refusal(situationOf(Game::EightBall, {ballAt(1, 1.0, 0.5)}, "solids")).subject, std::string("cue ball"));
  QCOMPARE(refusal(situationOf(Game::EightBall, {ballAt(0, 1.0, 0.5), ballAt(9, 1.5, 0.5)}, "solids")).subject,
           std::string("legal shot"));
  QCOMPARE(refusal(situationOf(Game::EightBall, {ballAt(0, 1.0, 0.5), ballAt(1, 1.01, 0.5)}, "solids")).code,
           ErrorCode::BallsOverlap);
  QCOMPARE(refusal(situationOf(Game::EightBall, {ballAt(0, 1.0, 0.5), ballAt(1, 2.4, 0.5)}, "solids")).code,
           ErrorCode::BallOutsideTable);
}

FERRULE_TEST(SearchTest)
#include "search_test.moc"
