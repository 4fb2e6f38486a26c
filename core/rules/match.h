// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/rules/frame_log.h"

namespace ferrule {

/// Who breaks the next frame. Source: world rules of play, 1.2: alternate is the world's, events may choose.
enum class BreakOrder { Alternate, Winner, Loser };

struct MatchTerms {
  RuleSet rules;
  BreakOrder breaks = BreakOrder::Alternate;
  int raceTo = 0;  ///< frames to win; 0: play on without end
  Seat firstBreak = Seat::First;
  SurfaceLines lines;

  bool operator==(const MatchTerms&) const = default;
};

/// Frames after each other, and what they add up to.
class Match {
 public:
  explicit Match(const MatchTerms& terms);

  [[nodiscard]] const MatchTerms& terms() const { return terms_; }
  [[nodiscard]] const std::vector<FrameLog>& frames() const { return frames_; }
  /// The one that is being played; there is always one.
  [[nodiscard]] FrameLog& current() { return frames_.back(); }
  [[nodiscard]] FrameLog& frame(std::size_t number) { return frames_.at(number); }

  /// Frames won, by seat.
  [[nodiscard]] std::array<int, 2> score() const;
  /// Nothing while nobody has won the race.
  [[nodiscard]] std::optional<Seat> winner() const;
  /// Who breaks after the last frame as it stands; after a frame without result, who would have broken it again.
  [[nodiscard]] Seat nextBreaker() const;

  /// Begins another frame with its break.
  void nextFrame();
  /// Begins another frame in a given state, such as one that was joined in the middle.
  void nextFrame(GameState start);

 private:
  MatchTerms terms_;
  std::vector<FrameLog> frames_;
};

/// "alternate", "winner", "loser".
[[nodiscard]] std::string_view toText(BreakOrder order);
[[nodiscard]] std::optional<BreakOrder> breakOrderFromText(std::string_view text);

}  // namespace ferrule
