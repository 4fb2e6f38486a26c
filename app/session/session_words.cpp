// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_words.h"

#include <QCoreApplication>

#include "app/session/measuring_words.h"
#include "app/words/joining.h"
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
  return seatNamesOf(terms.players);
}

QString turnWords(const HandSession& session) {
  const auto& frame = session.referee();
  if (!frame) return SessionWords::tr("Practice without a referee");
  return turnWords(frame->state(), seatNamesOf(session.terms()));
}

QString turnWords(const GameState& state, const SeatNames& names) {
  if (state.result) {
    return SessionWords::tr("%1 won: %2.").arg(atStart(names.of(state.result->winner)), winWords(state.result->why));
  }
  const QString player = atStart(names.of(state.atTable));
  if (state.phase == Phase::Break) return SessionWords::tr("%1 breaks").arg(player);
  if (state.rules.game == Game::StraightPool) {
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
  const QString what = happenedWords(reading);
  const auto seat = session.shooterOf(shot);
  if (!seat || session.terms().players.empty()) return QStringLiteral("%1  %2").arg(reading.number).arg(what);
  return QStringLiteral("%1  %2").arg(reading.number).arg(toldOf(seatNamesOf(session.terms()).of(*seat), what));
}

QString planRowWords(const RankedPlan& plan, const Numbers& numbers) {
  const QString speed = numbers.speed(plan.plan.strike.speed_mps);
  const QString what =
      SessionWords::tr("%1  %2, %3", "rank, plan, speed").arg(QString::number(plan.rank), planWords(plan.plan), speed);
  if (!plan.plan.pocket) return what;
  return listOf({what, numbers.percent(plan.chances.pot)});
}

QString difficultyWords(double potChance) {
  if (potChance >= 0.9) return SessionWords::tr("easy");
  if (potChance >= 0.7) return SessionWords::tr("fair");
  if (potChance >= 0.4) return SessionWords::tr("hard");
  return SessionWords::tr("very hard");
}

QString shownPlanWords(const SuggestionAnswer& answer, const PlayedPlan& shown, const Numbers& numbers) {
  QStringList lines;
  const Chances& chances = shown.ranked.chances;
  if (shown.ranked.rank > 0) {
    lines << planSentence(answer.suggestion, static_cast<std::size_t>(shown.ranked.rank - 1));
  } else {
    // Against the first of the list, as one that came second.
    Suggestion pair{{answer.suggestion.plans.front(), shown.ranked}, 0, SearchEnd::Settled};
    lines << planSentence(pair, 1);
  }
  if (shown.margin) {
    lines << SessionWords::tr("%1 for this player: the aim may be off by %2 to the left and %3 to the right.")
                 .arg(atStart(difficultyWords(chances.pot)), numbers.degrees(shown.margin->left_rad, 2),
                      numbers.degrees(shown.margin->right_rad, 2));
  }
  if (answer.estimate && answer.estimate->aims == 0) {
    lines << SessionWords::tr("The record holds no measured pot of this player; a club player stands in.");
  } else if (answer.estimate) {
    lines << SessionWords::tr("Aim spread %1, from %n measured shot(s).", nullptr, answer.estimate->aims)
                 .arg(numbers.degrees(answer.scatter.aim_rad, 2));
  }
  return sentencesOf(lines);
}

QString lastRulingWords(const HandSession& session) {
  const std::size_t shots = session.state().shots.size();
  const auto ruled = shots == 0 ? std::nullopt : session.rulingOf(shots - 1);
  return ruled ? rulingSentence(*ruled, seatNamesOf(session.terms())) : QString();
}

}  // namespace ferrule
