// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/progress/played_shot.h"

/// Which of a player's shots are looked at. Every condition that is not set lets everything pass.
namespace ferrule {

struct HistoryFilter {
  std::optional<std::int64_t> from_ms;   ///< of the session's start, UTC, since 1970
  std::optional<std::int64_t> until_ms;  ///< no longer in it
  std::optional<Occasion> occasion;
  std::optional<std::string> table;  ///< by its name
  std::optional<std::string> game;   ///< "eight-ball", ...

  // Of single shots.
  bool missedOnly = false;  ///< pots that were tried and did not fall
  std::optional<double> leastCut_rad;
  std::optional<double> mostCut_rad;
  std::optional<MissSide> missSide;
  std::optional<double> leastSpeed_mps;
  std::optional<double> mostSpeed_mps;
  std::optional<PocketName> pocket;

  bool operator==(const HistoryFilter&) const = default;
};

/// A shot whose cut or speed is unknown does not pass a condition on it; a condition on the cut or a miss asks for a
/// pot that was tried (isPotAttempt).
[[nodiscard]] bool passes(const PlayedShot& shot, const PlayedSession& session, const PlayedTable& table,
                          const HistoryFilter& filter);

/// The history with the shots that pass; sessions and tables that are left without one go too.
[[nodiscard]] PlayerHistory filtered(const PlayerHistory& history, const HistoryFilter& filter);

}  // namespace ferrule
