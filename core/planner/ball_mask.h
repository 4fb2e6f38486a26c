// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstdint>

#include "core/table/ball.h"

namespace ferrule {

/// A set of balls, for sets that are asked for millions of times in a search.
class BallMask {
 public:
  constexpr BallMask() = default;
  /// All balls of numbers first to last, both included.
  [[nodiscard]] static constexpr BallMask range(int first, int last) {
    BallMask mask;
    for (int number = first; number <= last; ++number)
      mask.bits_ = static_cast<std::uint32_t>(mask.bits_ | (1U << number));
    return mask;
  }
  [[nodiscard]] static constexpr BallMask of(BallName ball) { return range(ball.number(), ball.number()); }

  [[nodiscard]] constexpr bool has(BallName ball) const { return ((bits_ >> ball.number()) & 1U) != 0; }
  [[nodiscard]] constexpr bool empty() const { return bits_ == 0; }
  [[nodiscard]] constexpr int count() const { return std::popcount(bits_); }
  /// The ball of the smallest number; not for an empty set.
  [[nodiscard]] BallName lowest() const { return BallName(std::countr_zero(bits_)); }

  friend constexpr BallMask operator|(BallMask a, BallMask b) { return BallMask(a.bits_ | b.bits_); }
  friend constexpr BallMask operator&(BallMask a, BallMask b) { return BallMask(a.bits_ & b.bits_); }
  /// Those of a that are not in b.
  friend constexpr BallMask operator-(BallMask a, BallMask b) { return BallMask(a.bits_ & ~b.bits_); }
  bool operator==(const BallMask&) const = default;

 private:
  constexpr explicit BallMask(std::uint32_t bits) : bits_(bits) {}
  std::uint32_t bits_ = 0;
};

inline constexpr BallMask kSolids = BallMask::range(1, 7);
inline constexpr BallMask kStripes = BallMask::range(9, 15);

}  // namespace ferrule
