// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/shot_review.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ShotReviewTest : public QObject {
  Q_OBJECT
 private slots:
  void theSuggestedShotWellStruckLosesNothingByChoice();
  void aWorseBallIsAChoiceLoss();
  void aMissedAimIsADeliveryLoss();
};

namespace {

const Position kBalls{ballAt(0, 1.2, 0.5), ballAt(1, 1.8, 0.8), ballAt(2, 0.15, 0.45),
                      ballAt(8, 1.5, 0.3), ballAt(9, 0.6, 0.2), ballAt(10, 0.4, 0.8)};

std::array<Scatter, 2> club() {
  return {scatterOf(PlayerLevel::Club), scatterOf(PlayerLevel::Club)};
}

Suggestion suggested(const Situation& situation) {
  SearchBudget budget;
  budget.mostSimulations = 8000;
  return *ninefoot().suggest(situation, club(), budget);
}

/// What a film would have seen of this strike.
TakenShot taken(const Situation& situation, const Strike& strike, const std::optional<PocketedBall>& meant) {
  const auto played = ninefoot().simulator().shoot(situation.balls, strike);
  TakenShot shot;
  shot.meant = meant;
  shot.firstContact = firstContactIn(*played);
  shot.delivered = strike;
  shot.events = played->events;
  for (const auto& ball : played->after) {
    if (ball.fate == BallFate::OnTable) shot.after.push_back({ball.ball, ball.position});
  }
  return shot;
}

}  // namespace

void ShotReviewTest::theSuggestedShotWellStruckLosesNothingByChoice() {
  const Situation situation = situationOf(Game::EightBall, kBalls, "solids");
  const Suggestion suggestion = suggested(situation);
  const Plan& best = suggestion.plans.front().plan;
  QVERIFY(best.pocket.has_value());
  const auto review =
      reviewShot(ninefoot(), situation, suggestion, taken(situation, best.strike, callOf(best)), club());
  QVERIFY(review.has_value());
  QCOMPARE(review->taken.rank, 1);
  QVERIFY(review->tie);
  QVERIFY(std::abs(review->choiceLoss) < 0.02);
  // A pot that comes out as meant is worth more than the chance of it.
  QVERIFY(review->deliveryLoss < 0.02);
}

void ShotReviewTest::aWorseBallIsAChoiceLoss() {
  const Situation situation = situationOf(Game::EightBall, kBalls, "solids");
  const Suggestion suggestion = suggested(situation);
  const auto other = std::ranges::find_if(suggestion.plans, [&](const RankedPlan& p) {
    return p.plan.pocket && p.chances.value < suggestion.plans.front().chances.value - 0.1;
  });
  QVERIFY(other != suggestion.plans.end());
  const auto review =
      reviewShot(ninefoot(), situation, suggestion, taken(situation, other->plan.strike, callOf(other->plan)), club());
  QVERIFY(review.has_value());
  QCOMPARE(review->taken.plan.ball, other->plan.ball);
  QVERIFY(review->choiceLoss > 0.05);
  QVERIFY(!review->tie);
}

void ShotReviewTest::aMissedAimIsADeliveryLoss() {
  const Situation situation = situationOf(Game::EightBall, kBalls, "solids");
  const Suggestion suggestion = suggested(situation);
  const Plan& best = suggestion.plans.front().plan;
  Strike missed = best.strike;
  missed.aim_rad += radiansFromDegrees(1.5);
  const auto review = reviewShot(ninefoot(), situation, suggestion, taken(situation, missed, callOf(best)), club());
  QVERIFY(review.has_value());
  // The choice was the same: only the aim was off.
  QVERIFY(std::abs(review->choiceLoss) < 0.02);
  QVERIFY(review->deliveryLoss > 0.1);
}

FERRULE_TEST(ShotReviewTest)
#include "shot_review_test.moc"
