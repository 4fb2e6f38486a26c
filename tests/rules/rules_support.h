// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/rules/referee.h"

/// Shots and states in the short form in which the cases of the rules are told.
namespace ferrule {

/// "FC 5, rail, R 1, OBR 4, P 5@FR, CB@HL, OFF 11": first contact with 5; the cue ball to a rail, before the contact
/// where it comes before FC; that many cushions of the cue ball; four object balls to a rail each; 5 into the
/// foot-right pocket; the cue ball into head-left; 11 off the table. "2 same rail": the ball 2 meets the foot cushion.
/// call: "c=5@FR", "safety", "push-out", or empty.
[[nodiscard]] ShotEvents shotOf(Game game, const QString& call, const QString& events);

/// A state of play with the first seat at the table: "break", "open", "S" (it has solids), "T" (stripes), "S: 1 2 3"
/// (solids with only these left), "clr" (solids, all gone); in the other games "break", "second" (the shot after the
/// break), "low 3" (that lowest ball), "play".
[[nodiscard]] GameState stateOf(const RuleSet& rules, const QString& text);

/// What a ruling comes to, in a line: "wrong-ball-first | next second | in-hand | open | proposed".
[[nodiscard]] QString summaryOf(const GameState& before, const Ruling& ruling);
/// The sections that a ruling cites, in no order, each once.
[[nodiscard]] QStringList sectionsOf(const Ruling& ruling);

/// Columns of a table of cases: "state", "call", "events", "expected", "sections".
void addCaseColumns();
void addCase(const char* name, const char* state, const char* call, const char* events, const char* expected,
             const char* sections);
/// Checks a row of such a table: the ruling comes to what is expected and cites every section named.
void checkCase(const RuleSet& rules);

[[nodiscard]] PocketName pocketOf(const QString& shortName);

}  // namespace ferrule
