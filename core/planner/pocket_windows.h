// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/physics/simulator.h"

namespace ferrule {

/// The directions in which a rolling ball drops into a pocket: every one from least to most.
struct PocketWindow {
  double middle_rad = 0.0;
  double halfWidth_rad = 0.0;

  bool operator==(const PocketWindow&) const = default;
};

/// Found by rolling a lone ball through the simulator: jaws, shelf, rails beside the pocket and speed all count.
/// Nothing when no direction near the pocket drops. from: the ball's centre; speed_mps: of the ball there.
[[nodiscard]] std::optional<PocketWindow> pocketWindow(const Simulator& simulator, PocketName pocket, TablePoint from,
                                                       double speed_mps);

/// The same for the whole table, measured once on a grid and read off in between: for values that are asked for in
/// every sample of a search.
class PocketWindows {
 public:
  /// Rolls some ten thousand lone balls, on all cores.
  explicit PocketWindows(const Simulator& simulator);

  /// Distance to the middle of the mouth, never less than a little.
  [[nodiscard]] double awayFrom(PocketName pocket, TablePoint from) const;
  /// halfWidth_rad 0 where the pocket is closed from here.
  [[nodiscard]] PocketWindow at(PocketName pocket, TablePoint from, double speed_mps) const;

 private:
  static constexpr std::size_t kAlong = 25;
  static constexpr std::size_t kAcross = 13;
  static constexpr std::array kSpeeds_mps{0.8, 3.0};

  /// The middle's offset from the line to the mouth's middle, and the half width as a length at the mouth, which
  /// changes less from place to place than the angle.
  struct Node {
    double offset_rad = 0.0;
    double room_m = 0.0;
  };

  [[nodiscard]] static std::size_t indexOf(std::size_t kind, std::size_t speed, std::size_t i, std::size_t j);
  [[nodiscard]] TablePoint placeOf(std::size_t i, std::size_t j) const;

  double halfLength_m_;  ///< of the area that a ball's centre can reach
  double halfWidth_m_;
  std::array<TablePoint, 6> mouths_;
  std::vector<Node> nodes_;  ///< for foot-left and side-left; the others are their mirror images
};

/// The middle of a pocket's mouth.
[[nodiscard]] TablePoint mouthOf(const Bed& bed, PocketName pocket);

}  // namespace ferrule
