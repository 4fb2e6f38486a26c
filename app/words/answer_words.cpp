// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/answer_words.h"

#include <QCoreApplication>

#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct AnswerWords {
  Q_DECLARE_TR_FUNCTIONS(AnswerWords)
};

}  // namespace

QString answerWords(const DoubtAnswer& answer, Seat shooter, const SeatNames& names) {
  switch (answer.kind) {
    case AnswerKind::Yes:
      return AnswerWords::tr("Yes");
    case AnswerKind::No:
      return AnswerWords::tr("No");
    case AnswerKind::Ball:
      return ballWordsAtStart(answer.ball);
    case AnswerKind::LeftTable:
      return AnswerWords::tr("It left the table");
    case AnswerKind::OnTable:
      return AnswerWords::tr("It lies on the table");
    case AnswerKind::InPocket:
      return AnswerWords::tr("It fell: %1", "a pocket").arg(pocketWords(answer.pocket));
    case AnswerKind::SafetyCall:
      return AnswerWords::tr("A safety was called");
    case AnswerKind::Group:
      return AnswerWords::tr("%1 has %2", "a player, solids or stripes")
          .arg(atStart(names.of(shooter)), groupWords(answer.group));
    case AnswerKind::Count:
      return QString::number(answer.number);
    case AnswerKind::CountUp:
      return AnswerWords::tr("%1 or more", "balls").arg(answer.number);
    case AnswerKind::AsRead:
      return AnswerWords::tr("Leave it as it is ruled");
  }
  return {};
}

}  // namespace ferrule
