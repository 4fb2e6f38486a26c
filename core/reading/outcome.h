// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/table/shot.h"
#include "core/table/table.h"

namespace ferrule {

/// Doubts that the reading of a shot leaves.
struct Doubts {
  bool splitHit = false;      ///< two object balls were hit too close together to tell which came first
  bool lostBall = false;      ///< a ball was lost from view while it moved
  bool unsurePocket = false;  ///< a ball was lost on its way to a pocket
  bool unfinished = false;    ///< the film ended, or the next strike came, before every ball lay still
  bool begunBefore = false;   ///< the film began with balls in motion: nobody saw what was met first
};

struct Judged {
  Outcome outcome = Outcome::Miss;
  Verdict verdict = Verdict::Proposed;
};

/// Whether the cue ball lies behind the head string and at least nine object balls are racked: each within a gap of a
/// few millimetres of another, all in one cluster. From the positions alone.
[[nodiscard]] bool isBreak(const Position& before, const Table& table, double radius_m);

/// The outcome by what is known to have happened. breaks: it was played at a rack. sawStart: what was met first would
/// be known, so that a reading without it is of a shot that met nothing. Verdicts: certain when tracks alone decide
/// (pot, scratch); proposed when a person may have meant or seen otherwise (miss or safety, no contact). Common
/// practice, no source.
[[nodiscard]] Judged judgeFacts(const ShotReading& reading, bool breaks, bool sawStart = true);

/// The outcome by what the tracks show. reading: complete but for outcome and verdict. Verdicts: as judgeFacts() has
/// them; ask with any doubt.
[[nodiscard]] Judged judgeOutcome(const ShotReading& reading, const Table& table, double radius_m,
                                  const Doubts& doubts);

}  // namespace ferrule
