// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <QtTest>

#include "app/picture/plan_view.h"
#include "app/review/judgement_section.h"
#include "app/review/shot_panel.h"
#include "app/review/suggested_shot.h"
#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Suggested against taken, and why a shot missed, as Review shows them.
class JudgementPanelTest : public QObject {
  Q_OBJECT
 private slots:
  void thePanelSetsSuggestedBesideTaken();
  void whatWasShownBeforeTheShotIsSaid();
  void aMissTellsItsPartsAndTheyAddUp();
  void aMadeShotHasNoReasonsForAMiss();
  void thePlanDrawsTheSuggestionAndHidesIt();
  void whatIsNoSuggestionIsLeftOut();
};

namespace {

RankedPlan plan(int rank, int ball, PocketName pocket, double aim_deg, double pot, double value) {
  RankedPlan ranked;
  ranked.rank = rank;
  ranked.plan.ball = ranked.plan.first = BallName(ball);
  ranked.plan.pocket = pocket;
  ranked.plan.strike = {radiansFromDegrees(aim_deg), 1.5, 0.0, 0.1, 0.0};
  ranked.chances.pot = pot;
  ranked.chances.value = value;
  ranked.chances.leave = {{0.3, 0.1}, 0.15, 0.05, 0.4};
  return ranked;
}

/// An invented miss of the 1, before which the 3 had been suggested.
std::shared_ptr<StoredShot> missedShot(bool shown) {
  auto shot = std::make_shared<StoredShot>();
  ShotReading& reading = shot->reading;
  reading.number = 4;
  reading.before = {{kCueBall, {-0.5, 0.0}}, {BallName(1), {0.6, 0.2}}, {BallName(3), {0.4, -0.3}}};
  reading.outcome = Outcome::Miss;
  Target target;
  target.ball = BallName(1);
  target.pocket = PocketName::FootLeft;
  target.lineError_rad = radiansFromDegrees(1.5);
  target.missSide = MissSide::Over;
  target.missAtMouth_m = 0.02;
  reading.target = target;
  MissAccount account;
  account.aim_rad = {radiansFromDegrees(2.0), radiansFromDegrees(0.2)};
  account.collisionThrow_rad = {radiansFromDegrees(-0.5), radiansFromDegrees(0.1)};
  account.total_rad = {radiansFromDegrees(1.5), radiansFromDegrees(0.1)};
  reading.missAccount = account;
  ShotReview review;
  review.suggested = plan(1, 3, PocketName::FootRight, -15.0, 0.71, 0.62);
  review.taken = plan(2, 1, PocketName::FootLeft, 10.0, 0.64, 0.51);
  review.cameOutValue = 0.2;
  review.choiceLoss = 0.11;
  review.deliveryLoss = 0.31;
  const Suggestion suggestion{{review.suggested, review.taken}, 1000, SearchEnd::Settled};
  shot->suggestion = SuggestionEntry{"planner 2", shown, 0.11, 0.31,
                                     suggestionText(suggestion, scatterOf(PlayerLevel::Club), {}, review)};
  return shot;
}

QString textOf(const ShotPanel& panel, const char* name) {
  const auto* label = panel.findChild<QLabel*>(QString::fromLatin1(name));
  return label == nullptr ? QString() : label->text();
}

QString allTextOf(const ShotPanel& panel) {
  QStringList all;
  for (const QLabel* label : panel.findChildren<QLabel*>())
    all << label->text();
  return all.join(QLatin1Char('\n'));
}

}  // namespace

void JudgementPanelTest::thePanelSetsSuggestedBesideTaken() {
  const auto shot = missedShot(false);
  const auto suggested = suggestedShot(*shot, MeasuredTable{});
  QVERIFY(suggested.has_value());
  ShotPanel panel;
  panel.setShot(shot, MeasuredTable{}, {}, suggested->kept);
  const QString words = textOf(panel, "choiceWords");
  QVERIFY2(words.contains(QStringLiteral("71\u00a0%")) && words.contains(QStringLiteral("64\u00a0%")) &&
               words.contains("11 in 100"),
           qPrintable(words));
  QVERIFY(!words.contains("had been shown"));
  const auto rows = planRows(suggested->kept, Numbers());
  QCOMPARE(rows.size(), std::size_t{7});
  QCOMPARE(rows[1].suggested, QStringLiteral("71\u00a0%"));
  QCOMPARE(rows[1].taken, QStringLiteral("64\u00a0%"));
  QVERIFY(allTextOf(panel).contains(rows[0].taken));
}

void JudgementPanelTest::whatWasShownBeforeTheShotIsSaid() {
  const auto shot = missedShot(true);
  ShotPanel panel;
  panel.setShot(shot, MeasuredTable{}, {}, suggestedShot(*shot, MeasuredTable{})->kept);
  QVERIFY(textOf(panel, "choiceWords").contains("had been shown"));
}

void JudgementPanelTest::aMissTellsItsPartsAndTheyAddUp() {
  const auto shot = missedShot(false);
  ShotPanel panel;
  panel.setShot(shot, MeasuredTable{});
  const QString words = textOf(panel, "missWords");
  QVERIFY2(words.contains("thin") && words.contains("aim"), qPrintable(words));
  const auto parts = missParts(*shot->reading.missAccount, Numbers());
  QCOMPARE(parts.size(), std::size_t{8});
  QCOMPARE(parts.back().shown.value, Numbers().degrees(shot->reading.missAccount->total_rad, true).value);
}

void JudgementPanelTest::aMadeShotHasNoReasonsForAMiss() {
  const auto shot = missedShot(false);
  shot->reading.outcome = Outcome::Pot;
  ShotPanel panel;
  panel.setShot(shot, MeasuredTable{});
  QVERIFY(textOf(panel, "missWords").isEmpty());
  QVERIFY(textOf(panel, "choiceWords").isEmpty());
}

void JudgementPanelTest::thePlanDrawsTheSuggestionAndHidesIt() {
  const auto shot = missedShot(false);
  const auto suggested = suggestedShot(*shot, MeasuredTable{});
  QVERIFY(!suggested->ways.empty());
  PlanView view;
  view.resize(800, 450);
  view.setTable(MeasuredTable{});
  view.setShot(shot);
  const QImage without = view.grab().toImage();
  view.setSuggested(suggested->ways, suggested->kept.suggestion.plans.front().chances.leave, {});
  QVERIFY(view.grab().toImage() != without);
  view.setSuggested({}, {}, {});
  QCOMPARE(view.grab().toImage(), without);
}

void JudgementPanelTest::whatIsNoSuggestionIsLeftOut() {
  const auto shot = missedShot(false);
  shot->suggestion->content = "{\"format\": \"something else\"}";
  QVERIFY(!suggestedShot(*shot, MeasuredTable{}).has_value());
  shot->suggestion.reset();
  QVERIFY(!suggestedShot(*shot, MeasuredTable{}).has_value());
}

FERRULE_TEST(JudgementPanelTest)
#include "judgement_panel_test.moc"
