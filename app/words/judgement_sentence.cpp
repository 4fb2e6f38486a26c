// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/judgement_sentence.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "app/words/plan_sentence.h"

namespace ferrule {

namespace {

struct JudgementSentence {
  Q_DECLARE_TR_FUNCTIONS(JudgementSentence)
};

/// In hundredths of a frame (or of a point, in games of points).
QString hundredths(double amount) {
  return QLocale().toString(100.0 * std::abs(amount), 'f', 0);
}

QString deliveryPart(double loss) {
  if (loss < 0.0)
    return JudgementSentence::tr("what came out was %1 in 100 better than the shot is worth").arg(hundredths(loss));
  return JudgementSentence::tr("delivery cost %1 in 100").arg(hundredths(loss));
}

QString choicePart(const ShotReview& review) {
  if (review.tie) return JudgementSentence::tr("The choice cost nothing that can be told");
  if (review.choiceLoss < 0.0)
    return JudgementSentence::tr("The choice gained %1 in 100").arg(hundredths(review.choiceLoss));
  return JudgementSentence::tr("The choice cost %1 in 100").arg(hundredths(review.choiceLoss));
}

QString notJudgedSentence(NotJudged why) {
  switch (why) {
    case NotJudged::NoRuling:
      return JudgementSentence::tr("No game is known for this shot, so that no plan can be set beside it.");
    case NotJudged::FrameOver:
      return JudgementSentence::tr("The frame was over.");
    case NotJudged::NoCueBall:
      return JudgementSentence::tr("Where the cue ball lay before the shot is not known.");
    case NotJudged::NoPlan:
      break;
  }
  return JudgementSentence::tr("No legal shot was found from this position.");
}

}  // namespace

QString lossSentence(const ShotReview& review) {
  return JudgementSentence::tr("%1; %2.", "what the choice cost; what the delivery cost")
      .arg(choicePart(review), deliveryPart(review.deliveryLoss));
}

QString unmatchedSentence(const Suggestion& suggestion) {
  return JudgementSentence::tr("Suggested: %1. What was taken could not be matched to a plan.")
      .arg(planWords(suggestion.plans.front().plan));
}

QString judgementSentence(const JudgedShot& judged) {
  if (judged.why) return notJudgedSentence(*judged.why);
  if (judged.review) return reviewSentence(*judged.review) + ' ' + lossSentence(*judged.review);
  return unmatchedSentence(judged.suggestion);
}

}  // namespace ferrule
