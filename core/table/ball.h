// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace ferrule {

/// Which ball: the cue ball or the object balls 1 to 15. Each stands on the table at most once.
class BallName {
 public:
  static constexpr int kCount = 16;

  constexpr BallName() = default;  ///< the cue ball
  /// number: 0 for the cue ball, 1 to 15.
  explicit BallName(int number);

  [[nodiscard]] constexpr int number() const { return number_; }
  [[nodiscard]] constexpr bool isCueBall() const { return number_ == 0; }
  [[nodiscard]] constexpr bool isSolid() const { return number_ >= 1 && number_ <= 7; }
  [[nodiscard]] constexpr bool isStripe() const { return number_ >= 9; }
  auto operator<=>(const BallName&) const = default;

 private:
  int number_ = 0;
};

inline constexpr BallName kCueBall{};

/// "cue", "1" ... "15": the form used in files.
[[nodiscard]] std::string toText(BallName ball);
/// Nothing for anything else.
[[nodiscard]] std::optional<BallName> ballFromText(std::string_view text);

}  // namespace ferrule
