// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/camera/board.h"

namespace ferrule {

/// What becomes of a still.
enum class StillFate {
  Used,
  NoBoard,
  LayoutOld,  ///< see BoardSight
  Mirrored,
  Blurred,
  Repeated,   ///< shows the board where another still has it: it says nothing new, and counting it twice would say
              ///< more certainty than there is
  OtherSize,  ///< than the first still that could be read
  Unreadable,
};

/// One still as it was looked at.
struct BoardStill {
  std::string path;
  StillFate fate = StillFate::NoBoard;
  ImageSize size;
  std::vector<BoardCorner> corners;  ///< of Used, Blurred and Repeated
  double edge_px = 0.0;              ///< see BoardSharpness; 0: not known
  std::string sameAs;                ///< of Repeated: the still that counts
  std::optional<Error> error;        ///< of Unreadable and OtherSize

  bool operator==(const BoardStill&) const = default;
};

/// What one picture shows of a board, before it is compared with others. grey: 8-bit; path: what the still is called.
[[nodiscard]] BoardStill lookAtStill(const Board& board, const cv::Mat& grey, const std::string& path);
/// The one of known that counts and has the board where still has it; null where none does.
[[nodiscard]] const BoardStill* sameStillAs(const BoardStill& still, std::span<const BoardStill> known);

/// Looks at every still, one after another. Pictures are taken as the sensor gave them: an orientation note in the file
/// is not followed, since the lens belongs to the sensor. Stills before these, of the same board, are given as known.
/// Errors: those of checkBoard; Cancelled.
[[nodiscard]] Result<std::vector<BoardStill>> surveyStills(const Board& board, std::span<const std::string> stills,
                                                           std::span<const BoardStill> known = {},
                                                           const JobControl& job = {});

/// The views that a lens is calibrated from.
[[nodiscard]] std::vector<BoardView> usableViews(std::span<const BoardStill> stills);

/// The same, where there is nothing else to choose from.
/// Errors: those of the stills that could not be read or are of another size; none shows the board, and why:
/// BoardLayoutOld, ImageMirrored, BoardNotFound (detail "blurred" where one is only too blurred, else empty).
[[nodiscard]] Result<std::vector<BoardView>> viewsOfBoard(const Board& board, std::span<const BoardStill> stills);

}  // namespace ferrule
