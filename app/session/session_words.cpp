// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_words.h"

#include <QCoreApplication>

#include "app/words/plan_sentence.h"
#include "app/words/ruling_sentence.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct SessionWords {
  Q_DECLARE_TR_FUNCTIONS(SessionWords)
};

}  // namespace

SeatNames seatNamesOf(const HandTerms& terms) {
  const auto name = [&](std::size_t seat) {
    return seat < terms.players.size() ? QString::fromStdString(terms.players[seat]) : QString();
  };
  return {name(0), name(1)};
}

QString turnWords(const HandSession& session) {
  const auto& frame = session.referee();
  if (!frame) return SessionWords::tr("Practice without a referee");
  const GameState& state = frame->state();
  const SeatNames names = seatNamesOf(session.terms());
  if (state.result) {
    return SessionWords::tr("%1 won: %2.").arg(atStart(names.of(state.result->winner)), winWords(state.result->why));
  }
  const QString player = atStart(names.of(state.atTable));
  if (state.phase == Phase::Break) return SessionWords::tr("%1 breaks").arg(player);
  if (session.terms().game == Game::StraightPool) {
    return SessionWords::tr("%1 is at the table, %2 to %3", "player, points of the first and the second seat")
        .arg(player)
        .arg(state.points[0])
        .arg(state.points[1]);
  }
  const auto group = groupOf(state, state.atTable);
  if (isOnEight(state, state.atTable)) return SessionWords::tr("%1 is on the 8").arg(player);
  if (group) return SessionWords::tr("%1 is at the table and has %2").arg(player, groupWords(*group));
  return SessionWords::tr("%1 is at the table").arg(player);
}

QString aimWords(const HandSession& session, std::optional<BallName> ball, std::optional<PocketName> pocket,
                 const Numbers& numbers) {
  if (!ball) return SessionWords::tr("Choose the ball that is played for, then say what happened.");
  if (!pocket) return SessionWords::tr("%1; choose its pocket.").arg(ballWordsAtStart(*ball));
  const auto cut_rad = neededCut_rad(session.state().balls, session.terms().table, *ball, *pocket);
  const QString plan = SessionWords::tr("%1 to %2").arg(ballWordsAtStart(*ball), pocketWords(*pocket));
  if (!cut_rad) return plan;
  return SessionWords::tr("%1, cut %2", "ball to pocket, angle").arg(plan, numbers.degrees(*cut_rad, 0));
}

QString loggedWords(const HandSession& session, std::size_t shot) {
  const ShotReading reading = session.readingOf(shot);
  QString what = shotWords(reading.outcome, reading.target, reading.pocketed, reading.firstContact);
  if (reading.outcome != Outcome::Break) what += QStringLiteral(", ") + outcomeWords(reading.outcome);
  if (reading.target && reading.target->missSide) what += ' ' + missWords(*reading.target->missSide);
  const auto seat = session.shooterOf(shot);
  if (!seat || session.terms().players.empty()) return QStringLiteral("%1  %2").arg(reading.number).arg(what);
  return QStringLiteral("%1  %2: %3").arg(reading.number).arg(seatNamesOf(session.terms()).of(*seat), what);
}

QString suggestionWords(const SuggestionAnswer& answer, const Numbers& numbers) {
  constexpr std::size_t kTold = 3;
  QStringList lines;
  for (std::size_t i = 0; i < std::min(kTold, answer.suggestion.plans.size()); ++i) {
    const RankedPlan& plan = answer.suggestion.plans[i];
    lines << QStringLiteral("%1  %2, %3: %4")
                 .arg(QString::number(plan.rank), planWords(plan.plan), numbers.speed(plan.plan.strike.speed_mps),
                      planSentence(answer.suggestion, i));
  }
  return lines.join(QStringLiteral("\n\n"));
}

QString lastRulingWords(const HandSession& session) {
  const std::size_t shots = session.state().shots.size();
  const auto ruled = shots == 0 ? std::nullopt : session.rulingOf(shots - 1);
  return ruled ? rulingSentence(*ruled, seatNamesOf(session.terms())) : QString();
}

}  // namespace ferrule
