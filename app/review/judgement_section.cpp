// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/judgement_section.h"

#include <QCoreApplication>

#include "app/words/joining.h"
#include "app/words/judgement_sentence.h"
#include "app/words/plan_sentence.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct JudgementSection {
  Q_DECLARE_TR_FUNCTIONS(JudgementSection)
};

QString percent(double share, const Numbers& numbers) {
  return numbers.percent(share);
}

QString potWords(const RankedPlan& plan, const Numbers& numbers) {
  return plan.plan.pocket ? percent(plan.chances.pot, numbers) : QStringLiteral("–");
}

QString tipWords(const Strike& strike, const Numbers& numbers) {
  return QStringLiteral("%1 / %2").arg(numbers.withSign(strike.side, 2), numbers.withSign(strike.height, 2));
}

}  // namespace

std::vector<PlanRow> planRows(const KeptSuggestion& kept, const Numbers& numbers) {
  if (!kept.review) return {};
  const RankedPlan& a = kept.review->suggested;
  const RankedPlan& b = kept.review->taken;
  const auto row = [&](const QString& name, const auto& words) { return PlanRow{name, words(a), words(b)}; };
  return {
      row(JudgementSection::tr("Shot"), [](const RankedPlan& p) { return planWords(p.plan); }),
      row(JudgementSection::tr("Pot"), [&](const RankedPlan& p) { return potWords(p, numbers); }),
      row(JudgementSection::tr("Foul"), [&](const RankedPlan& p) { return percent(p.chances.foul, numbers); }),
      row(JudgementSection::tr("Worth", "of a shot, in hundredths of a frame"),
          [&](const RankedPlan& p) { return numbers.fixed(100.0 * p.chances.value, 0); }),
      row(JudgementSection::tr("Aim"), [&](const RankedPlan& p) { return numbers.degrees(p.plan.strike.aim_rad); }),
      row(JudgementSection::tr("Speed"), [&](const RankedPlan& p) { return numbers.speed(p.plan.strike.speed_mps); }),
      row(JudgementSection::tr("Side / height, R"),
          [&](const RankedPlan& p) { return tipWords(p.plan.strike, numbers); }),
  };
}

QString choiceWords(const KeptSuggestion& kept, bool shown) {
  QStringList sentences;
  if (kept.review) {
    sentences << reviewSentence(*kept.review) << lossSentence(*kept.review);
  } else {
    sentences << unmatchedSentence(kept.suggestion);
  }
  if (shown) sentences << JudgementSection::tr("The suggestion had been shown before the shot.");
  return sentencesOf(sentences);
}

std::vector<MissPart> missParts(const MissAccount& account, const Numbers& numbers) {
  const auto part = [&](const QString& name, const Measured& value) {
    return MissPart{name, numbers.degrees(value, true)};
  };
  return {part(JudgementSection::tr("Aim"), account.aim_rad),
          part(JudgementSection::tr("Squirt"), account.squirt_rad),
          part(JudgementSection::tr("Swerve"), account.swerve_rad),
          part(JudgementSection::tr("Throw of the cut"), account.collisionThrow_rad),
          part(JudgementSection::tr("Throw of the spin"), account.spinThrow_rad),
          part(JudgementSection::tr("Speed"), account.speed_rad),
          part(JudgementSection::tr("Unexplained"), account.remainder_rad),
          part(JudgementSection::tr("In all"), account.total_rad)};
}

}  // namespace ferrule
