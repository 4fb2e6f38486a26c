// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/table/shot.h"
#include "core/table/table.h"

/// One player's shots as plain values: what the measures of this folder are made from.
namespace ferrule {

enum class Occasion { Practice, Match, Lesson };
/// Whether the target was read from the tracks or named by a person. Where it was read, a ball that fell by luck counts
/// as meant; the two are never mixed.
enum class Intent { Inferred, Called };

/// Which side of the cue ball's line the object ball is sent to, as the shooter sees it.
enum class CutSide { Left, Right };

/// The table of a session, as far as it matters here.
struct PlayedTable {
  std::string name;
  Table table;
  double ballRadius_m = 0.028575;

  bool operator==(const PlayedTable&) const = default;
};

struct PlayedSession {
  std::int64_t id = 0;
  std::string name;
  std::int64_t started_ms = 0;  ///< UTC, since 1970
  std::size_t table = 0;        ///< place in PlayerHistory::tables
  Occasion occasion = Occasion::Practice;
  std::vector<std::string> opponents = {};  ///< who else played

  bool operator==(const PlayedSession&) const = default;
};

/// What was meant, where somebody or something said so before the strike: the drill, else a plan that was shown and
/// played.
struct Meant {
  std::optional<double> speed_mps;
  std::optional<double> side;      ///< in ball radii
  std::optional<double> height;    ///< in ball radii
  std::optional<TablePoint> rest;  ///< of the cue ball
  /// Nobody said where: rest is the leave of the plan that the shot was read as, played without a fault.
  bool restFromPlan = false;

  bool operator==(const Meant&) const = default;
};

/// What the plan that was taken gains, as a chance of winning the frame, when one part of the player's scatter is
/// smaller by kDrawnIn (work_items.h): the plan played again many times, each time with the same errors.
struct SteadierGain {
  double aim = 0.0;
  double speed = 0.0;
  double tip = 0.0;          ///< side and height together
  double speedSpread = 0.0;  ///< that was drawn in, as a share
  double tipSpread = 0.0;    ///< that was drawn in, in ball radii

  bool operator==(const SteadierGain&) const = default;
};

/// What the player of the next shot did with the table, after a safety.
struct Reply {
  Outcome outcome = Outcome::Miss;
  bool foul = false;

  bool operator==(const Reply&) const = default;
};

/// One run of a drill.
struct PlayedRun {
  std::string drill;            ///< its key
  std::string title = {};       ///< of a person's own drill; empty for a built-in one
  std::int64_t started_ms = 0;  ///< UTC, since 1970
  std::size_t table = 0;        ///< place in PlayerHistory::tables
  int met = 0;                  ///< tries that met every goal
  int known = 0;                ///< tries of which that is known

  bool operator==(const PlayedRun&) const = default;
};

/// One shot of one player.
struct PlayedShot {
  std::int64_t id = 0;      ///< of the record; 0 without one
  std::size_t session = 0;  ///< place in PlayerHistory::sessions
  std::int64_t frame = 0;
  std::string game;                     ///< of the frame: "eight-ball", ...; empty when unknown
  int number = 0;                       ///< within the frame
  std::optional<double> minutes;        ///< since the session's first shot
  std::optional<double> preparation_s;  ///< from the rest of the shot before to this strike
  Outcome outcome = Outcome::Miss;
  Verdict verdict = Verdict::Certain;
  bool corrected = false;  ///< a person changed at least one value
  bool tracked = true;     ///< the film showed how the cue ball was struck
  Intent intent = Intent::Inferred;

  // The pot that was tried.
  std::optional<PocketName> pocket;
  bool made = false;                       ///< the target fell into its pocket
  std::optional<double> cut_rad;           ///< the turn that the straight pot needs, unsigned
  std::optional<CutSide> cutSide;          ///< nothing for a cut below kStraight_rad
  std::optional<double> cueToGhost_m;      ///< way of the cue ball's centre to the contact
  std::optional<double> objectToPocket_m;  ///< from the object ball's centre to the middle of the mouth
  std::optional<double> lineError_rad;     ///< of the object ball, + counter-clockwise
  std::optional<MissSide> missSide;

  std::optional<double> speed_mps;
  std::optional<double> side;
  std::optional<double> height;
  std::optional<TablePoint> cueBall;     ///< before
  std::optional<TablePoint> objectBall;  ///< before
  std::optional<TablePoint> rest;        ///< of the cue ball; nothing when it was pocketed
  Meant meant;
  bool suggestionShown = false;               ///< before the shot: the choice was then not the player's alone
  std::optional<double> choiceLoss;           ///< value(suggested) - value(taken)
  std::optional<double> deliveryLoss;         ///< value(taken) - value(what came out)
  std::optional<SteadierGain> steadier = {};  ///< nothing where nobody played the shot again

  std::optional<double> potChance = {};     ///< of the plan that was taken, as the planner had it for this player
  std::optional<TablePoint> nextBall = {};  ///< where the ball lay afterwards that the plan goes on with
  std::optional<bool> cushionMet = {};      ///< by the cue ball; nothing where its way is not known
  std::optional<Reply> reply = {};          ///< of somebody else to a safety
  std::string drill = {};                   ///< the key of the drill at which it was the first shot of a try

  int potted = 0;                      ///< object balls
  bool foul = false;                   ///< a ruling says so, or a scratch
  bool ruled = false;                  ///< a referee watched
  bool wonFrame = false;               ///< the frame ended with this shot in favour of the player
  bool lostByChoice = false;           ///< the dearest choice of a frame that was lost by choices (game_measures.h)
  std::vector<std::string> tags = {};  ///< that a person gave it
  std::optional<bool> safeLeave;       ///< after a safety: the next player had no direct shot; nothing: unknown

  bool operator==(const PlayedShot&) const = default;
};

/// Everything of one player in one period. Sessions in order of their start, shots in order of sessions, frames and
/// numbers.
struct PlayerHistory {
  std::string player;
  std::vector<PlayedTable> tables;
  std::vector<PlayedSession> sessions;
  std::vector<PlayedShot> shots;
  std::vector<PlayedRun> runs = {};  ///< in the order of their start

  [[nodiscard]] const PlayedTable& tableOf(const PlayedShot& shot) const {
    return tables[sessions[shot.session].table];
  }
  bool operator==(const PlayerHistory&) const = default;
};

/// A cut below this has no side: 5 degrees, the first band of practice tables. Common practice, no source.
inline constexpr double kStraight_rad = 0.0872664625997165;

/// The geometry of a reading on its table; session, frame, times and what only the record knows are left to the caller.
/// The cut is the turn from the way of the cue ball to the ghost point onto the way of the object ball to the middle of
/// the mouth, as it was needed, not as it came out: a miss must not change the difficulty of what was tried. Nothing of
/// it where the target was not met first, where a ball's place is unknown, or where no straight pot exists.
[[nodiscard]] PlayedShot playedShot(const ShotReading& reading, const PlayedTable& table);

/// A pot that was tried straight, so that cut and distances describe it.
[[nodiscard]] inline bool isPotAttempt(const PlayedShot& shot) {
  return shot.cut_rad && shot.outcome != Outcome::Break && shot.outcome != Outcome::Safety;
}

}  // namespace ferrule
