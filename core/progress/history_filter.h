// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>

#include "core/progress/played_shot.h"

/// Which of a player's shots are looked at. Every condition that is not set lets everything pass.
namespace ferrule {

/// Shots that people ask for by what came of them.
enum class ShotGroup {
  Missed,        ///< pots that were tried and did not fall
  PositionLost,  ///< pots that fell, but after which the frame stood worse than planned by kTie or more
  WrongSide,     ///< pots after which the cue ball lay on the wrong side of the next ball (position_play.h)
  PoorChoice,    ///< another shot was worth more by kTie or more
  LostByChoice,  ///< PlayedShot::lostByChoice
  Fouls,
  Safeties,
  Breaks,
  Corrected,  ///< a person changed at least one value
  Unsure,     ///< the reading waits for a person, or is no more than likely
  Untracked,  ///< no film showed how the cue ball was struck
};
inline constexpr std::array kShotGroups{ShotGroup::Missed,     ShotGroup::PositionLost, ShotGroup::WrongSide,
                                        ShotGroup::PoorChoice, ShotGroup::LostByChoice, ShotGroup::Fouls,
                                        ShotGroup::Safeties,   ShotGroup::Breaks,       ShotGroup::Corrected,
                                        ShotGroup::Unsure,     ShotGroup::Untracked};

struct HistoryFilter {
  std::optional<std::int64_t> from_ms;   ///< of the session's start, UTC, since 1970
  std::optional<std::int64_t> until_ms;  ///< no longer in it
  std::optional<Occasion> occasion;
  std::optional<std::string> table;     ///< by its name
  std::optional<std::string> opponent;  ///< who else played in the session
  std::optional<std::string> game;      ///< "eight-ball", ...
  std::optional<std::string> drill;     ///< by its key: the first shots of tries

  // Of single shots.
  std::optional<ShotGroup> group;
  std::optional<double> leastCut_rad;
  std::optional<double> mostCut_rad;
  std::optional<MissSide> missSide;
  std::optional<CutSide> cutSide;
  std::optional<double> leastMinutes;  ///< since the session's first shot
  std::optional<double> leastSpeed_mps;
  std::optional<double> mostSpeed_mps;
  std::optional<PocketName> pocket;
  std::optional<std::string> tag;     ///< one that a person gave the shot
  std::optional<double> mostProduct;  ///< of the distanceProduct, in squares of a diamond
  /// Of the cue ball's way to the contact, in widths of the playing surface; below most alone.
  std::optional<double> leastCueWay_widths;
  std::optional<double> mostCueWay_widths;

  bool operator==(const HistoryFilter&) const = default;
};

/// How long a pot is: way of the cue ball times way of the object ball, in squares of a diamond (an eighth of the
/// table's length). Of straight shots with the same product each asks the same of the hand. Nothing without a pot.
/// Source: common practice in coaching, no source.
[[nodiscard]] std::optional<double> distanceProduct(const PlayedShot& shot, const PlayedTable& table);

/// A shot whose cut or speed is unknown does not pass a condition on it; a condition on the cut or a miss asks for a
/// pot that was tried (isPotAttempt).
[[nodiscard]] bool passes(const PlayedShot& shot, const PlayedSession& session, const PlayedTable& table,
                          const HistoryFilter& filter);

/// Whether a run of a drill is looked at: by period, table and drill; what is asked of shots and games does not touch
/// it.
[[nodiscard]] bool passes(const PlayedRun& run, const PlayedTable& table, const HistoryFilter& filter);

/// The history with the shots and runs that pass; sessions and tables that are left without one go too.
[[nodiscard]] PlayerHistory filtered(const PlayerHistory& history, const HistoryFilter& filter);

}  // namespace ferrule
