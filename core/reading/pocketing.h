// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/reading/measured_path.h"
#include "core/table/table.h"

namespace ferrule {

/// What became of a ball by the end of a shot.
enum class Fate {
  OnTable,
  Pocketed,
  OffTable,  ///< gone over a rail
  Lost,      ///< not seen any more, without a reason that the path tells
};

struct BallEnd {
  Fate fate = Fate::OnTable;
  std::optional<PocketName> pocket;  ///< fate Pocketed
  double time_s = 0.0;               ///< Pocketed: when its centre passed over the hole; else its last measured time
  double timeUncertainty_s = 0.0;    ///< Pocketed: standard; a slow ball's time hangs on where the hole's edge lies
  TablePoint position;               ///< then
  bool certain = true;               ///< false: lost before it reached the pocket that it moved to
  /// How many points of the path lie before the fall: later ones are of a ball below the cloth and place it wrongly.
  std::size_t pointsOnTable = 0;
};

/// Judges from a ball's path whether it fell: the path leads into a pocket's opening and the ball stays away for at
/// least kGoneAfter_s, or it is seen over the hole itself, where no ball can lie. A ball that hangs on the jaw is on
/// the table.
///
/// path: the ball's measured points of the shot, not empty. end_s: time of the shot's last image.
[[nodiscard]] BallEnd fateOf(const MeasuredPath& path, double end_s, const Table& table, double radius_m);

inline constexpr double kGoneAfter_s = 0.25;

}  // namespace ferrule
