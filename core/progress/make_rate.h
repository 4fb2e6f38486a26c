// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// How many pots of a kind go in.
namespace ferrule {

/// Upper ends of the bands of the cut, rad: 5, 15, 30, 45, 60 and 90 degrees. Common practice, no source.
inline constexpr std::array<double, 6> kCutBands_rad{0.0872664626, 0.2617993878, 0.5235987756,
                                                     0.7853981634, 1.0471975512, 1.5707963268};
/// Upper ends of the bands of a distance in widths of the playing surface; the last one is open. Common practice, no
/// source.
inline constexpr std::array<double, 3> kDistanceBands_widths{0.5, 1.0, 1.5};
inline constexpr std::size_t kDistanceBandCount = kDistanceBands_widths.size() + 1;

[[nodiscard]] std::size_t cutBand(double cut_rad);
[[nodiscard]] std::size_t distanceBand(double distance_m, double tableWidth_m);

/// One cell's makes. shrunken is drawn toward the player's own mean:
///   (made + m mu) / (tried + m),  mu = (all made + 1/2) / (all tried + 1),
/// m the strength that the cells' own differences give (priorStrength); its interval is that of the Beta distribution
/// with parameters made + m mu and tried - made + m (1 - mu). Use it to compare cells; raw and Wilson to show one.
struct MakeCell {
  int made = 0;
  int tried = 0;
  std::optional<Interval> wilson;  ///< nothing where nothing was tried
  double shrunken = 0.0;
  Interval shrunkenInterval;

  void add(const PlayedShot& shot) {
    ++tried;
    if (shot.made) ++made;
  }
  [[nodiscard]] bool isEnough() const { return tried >= kFewestForShare; }
  [[nodiscard]] double share() const { return static_cast<double>(made) / tried; }
  bool operator==(const MakeCell&) const = default;
};

/// Sets wilson and the shrunken values of all cells together.
void finishCells(std::vector<MakeCell*> cells);

/// The strength m of the common prior, by moments: with k cells, N trials, mean mu,
///   rho = (sum n_i (p_i - mu)2 / (mu (1 - mu)) - (k - 1)) / (N - sum n_i2 / N - (k - 1)),  m = 1 / rho - 1
/// held within 2 and 200: cells that differ by no more than chance are drawn hard, but never wholly, to the mean.
/// Source: Kleinman 1973, J. Am. Stat. Assoc. 68, 46.
[[nodiscard]] double priorStrength(const std::vector<MakeCell*>& cells);

struct MakeGrid {
  /// [distance][cut]
  std::array<std::array<MakeCell, kCutBands_rad.size()>, kDistanceBandCount> cells;
  int tried = 0;
};

enum class GridDistance { CueBall, ObjectBall };
/// Attempts of one kind of intent.
[[nodiscard]] MakeGrid makeGrid(const PlayerHistory& history, Intent intent, GridDistance distance);

/// In the order of kPocketNames.
[[nodiscard]] std::array<MakeCell, 6> makesByPocket(const PlayerHistory& history, Intent intent);

/// All attempts of one kind of intent.
[[nodiscard]] Answer<Estimate> makeShare(const PlayerHistory& history, Intent intent);

/// Misses that were read as too thick (under) or too thin (over). Source of the words: common practice, no source.
struct MissCell {
  int thick = 0;
  int thin = 0;
  std::optional<Interval> thickShare;  ///< Wilson, of all that were read; nothing where none was

  [[nodiscard]] int total() const { return thick + thin; }
  bool operator==(const MissCell&) const = default;
};

/// Speed bands by their upper ends, m/s; the last one is open. Common practice, no source.
inline constexpr std::array<double, 4> kSpeedBands_mps{0.9, 1.9, 3.2, 4.5};

struct MissSides {
  MissCell leftCuts;
  MissCell rightCuts;
  std::array<MissCell, 6> pockets;                          ///< in the order of kPocketNames
  std::array<MissCell, kSpeedBands_mps.size() + 1> speeds;  ///< slow to hard
};
/// Misses only: a made ball has no miss side, and its line is in aimMeasure.
[[nodiscard]] MissSides missSides(const PlayerHistory& history);

}  // namespace ferrule
