// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/physics/position_file.h"
#include "core/planner/planner.h"

/// What commands about a position have in common.
namespace ferrule {

/// For whom a command thinks.
struct ForPlayer {
  std::string record;
  std::string player;  ///< in the record; empty: the level alone
  std::string level;   ///< empty: club
};

/// Errors: NotFound for a word that is no level.
[[nodiscard]] Result<PlayerLevel> levelNamed(const std::string& name);

/// The situation that a position file describes. file: its name, for errors. Errors: FieldInvalid (detail: game).
[[nodiscard]] Result<Situation> situationIn(const PositionFile& file, const std::string& name);

/// The player's scatter: as the record knows it, else the level's, with what the file gives in their place. Notes on
/// standard error what it rests on. Errors: those of the record; NotFound for a player or level that is not there.
[[nodiscard]] Result<Scatter> scatterIn(const ForPlayer& call, const PositionFile& file);

/// The search speaks of "position" and "strike"; the user knows the file.
[[nodiscard]] tl::unexpected<Error> aboutPosition(const std::string& file, Error error);

}  // namespace ferrule
