// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/plan_sentence.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct PlanSentence {
  Q_DECLARE_TR_FUNCTIONS(PlanSentence)
};

/// A pot this likely on the next ball makes the leave worth telling.
constexpr double kTellingLeave = 0.3;
/// Values closer than this many standard errors of their difference are a tie.
constexpr double kTie = 1.0;

QString percent(double share) {
  return Numbers().percent(share);
}

int tenths(double share) {
  return static_cast<int>(std::lround(10.0 * share));
}

QString potPart(const RankedPlan& plan, const RankedPlan* against) {
  if (!plan.plan.pocket) {
    return PlanSentence::tr("leaves the opponent an open pot %1 times in 10").arg(tenths(plan.chances.opponentOpen));
  }
  if (against == nullptr || !against->plan.pocket) return PlanSentence::tr("pot %1").arg(percent(plan.chances.pot));
  return PlanSentence::tr("pot %1 against %2").arg(percent(plan.chances.pot), percent(against->chances.pot));
}

QString leavePart(const RankedPlan& plan) {
  const Chances& c = plan.chances;
  if (!plan.plan.pocket || !c.nextBall || c.nextOpen < kTellingLeave) return {};
  return PlanSentence::tr("the leave gives %1 a shot %2 times in 10")
      .arg(ballWords(*c.nextBall))
      .arg(tenths(c.nextOpen));
}

QString foulPart(const RankedPlan& plan) {
  if (plan.chances.foul < 0.05) return {};
  return PlanSentence::tr("foul %1").arg(percent(plan.chances.foul));
}

QString valuePart(const RankedPlan& plan, const RankedPlan* against) {
  if (against == nullptr) return {};
  const double difference = plan.chances.value - against->chances.value;
  const double error = std::hypot(plan.chances.valueError, against->chances.valueError);
  if (std::abs(difference) < kTie * error) return PlanSentence::tr("as good as %1").arg(planWords(against->plan));
  if (difference > 0.0) return PlanSentence::tr("better than %1").arg(planWords(against->plan));
  return PlanSentence::tr("behind %1").arg(planWords(against->plan));
}

}  // namespace

QString planWords(const Plan& plan) {
  const QString ball = ballShort(plan.ball);
  const QString pocket = plan.pocket ? pocketWords(*plan.pocket) : QString();
  switch (plan.kind) {
    case PlanKind::Direct:
      return PlanSentence::tr("%1 to %2", "ball, pocket").arg(ball, pocket);
    case PlanKind::Combination:
      return PlanSentence::tr("%1 into %2 to %3", "ball, ball, pocket").arg(ballShort(plan.first), ball, pocket);
    case PlanKind::Carom:
      return PlanSentence::tr("off %1 onto %2 to %3", "ball, ball, pocket").arg(ballShort(plan.first), ball, pocket);
    case PlanKind::Bank:
      return plan.cushions == 1 ? PlanSentence::tr("bank %1 to %2", "ball, pocket").arg(ball, pocket)
                                : PlanSentence::tr("two-cushion bank %1 to %2", "ball, pocket").arg(ball, pocket);
    case PlanKind::Kick:
      return plan.cushions == 1 ? PlanSentence::tr("kick at %1", "a ball").arg(ball)
                                : PlanSentence::tr("two-cushion kick at %1", "a ball").arg(ball);
    case PlanKind::Safety:
      return PlanSentence::tr("safety off %1", "a ball").arg(ball);
    case PlanKind::Break:
      break;
  }
  return PlanSentence::tr("break");
}

QString planSentence(const Suggestion& suggestion, std::size_t index) {
  const RankedPlan& plan = suggestion.plans.at(index);
  const RankedPlan* against = nullptr;
  if (suggestion.plans.size() > 1) against = &suggestion.plans.at(index == 0 ? 1 : 0);
  QStringList parts{potPart(plan, against)};
  for (const QString& part : {leavePart(plan), foulPart(plan), valuePart(plan, against)}) {
    if (!part.isEmpty()) parts << part;
  }
  return stopped(atStart(listOf(parts)));
}

QString reviewSentence(const ShotReview& review) {
  QStringList parts{potPart(review.suggested, &review.taken)};
  if (const QString leave = leavePart(review.suggested); !leave.isEmpty()) parts << leave;
  const QString reasons = listOf(parts);
  const QString suggested = planWords(review.suggested.plan);
  const QString taken = planWords(review.taken.plan);
  if (suggested == taken && review.tie) return atStart(PlanSentence::tr("%1 was the right shot.").arg(taken));
  if (suggested == taken) {
    return atStart(
        PlanSentence::tr("%1 was the right ball, but another speed or spin was better: %2.").arg(taken, reasons));
  }
  if (review.tie) return atStart(PlanSentence::tr("%1 is as good as %2: %3.").arg(taken, suggested, reasons));
  if (review.choiceLoss < 0.0) return atStart(PlanSentence::tr("%1 was better than %2.").arg(taken, suggested));
  return atStart(PlanSentence::tr("%1 was better than %2: %3.").arg(suggested, taken, reasons));
}

std::vector<std::string> planSentences(const Suggestion& suggestion) {
  std::vector<std::string> sentences;
  for (std::size_t i = 0; i < suggestion.plans.size(); ++i)
    sentences.push_back(planSentence(suggestion, i).toStdString());
  return sentences;
}

}  // namespace ferrule
