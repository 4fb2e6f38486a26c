// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/measure/said_of_shot.h"

namespace ferrule {

/// A shot of a recorded frame as it is ruled now.
struct RuledAnew {
  RuledShot ruled;
  std::optional<Seat> shooter;  ///< nothing where nobody knows

  bool operator==(const RuledAnew&) const = default;
};

/// A shot of a recorded frame with what people said of it.
struct FrameShot {
  StoredShot shot;
  ShotSayings sayings;
};

/// Rules a frame of the record from its beginning: by its shots as they stand, with what people said of them.
///
/// shots: all of the frame, in order, of a game that the rules know; filmed: read from a film, or else put in by hand.
/// players: of the session, in playing order; with two, who played is whose turn it was.
[[nodiscard]] std::vector<RuledAnew> ruleFrame(const std::vector<FrameShot>& shots, Game game,
                                               const MeasuredTable& measured, const std::vector<std::string>& players,
                                               bool filmed);

/// The seat of a player; nothing where there are not two.
[[nodiscard]] std::optional<Seat> seatOf(const std::vector<std::string>& players, const std::string& name);

}  // namespace ferrule
