// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/record/record_values.h"
#include "core/rules/game_state.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// How a recorded frame stood before each of its shots, from the rulings that are kept beside them: what a person
/// overruled counts as overruled. Options that nobody is known to have chosen count as the first. Feed it every shot of
/// a frame of the record, in order.
class FrameFollower {
 public:
  explicit FrameFollower(const MeasuredTable& measured);

  /// The state before this shot. Nothing for a shot without a ruling that can be read; the next one is then joined.
  [[nodiscard]] std::optional<GameState> before(const StoredShot& shot);

 private:
  SurfaceLines lines_;
  std::optional<GameState> state_;
  int rack_ = 0;  ///< that the state belongs to: a film may show several
};

}  // namespace ferrule
