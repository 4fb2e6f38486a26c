// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

#include "core/record/record_values.h"

namespace ferrule {

/// Marks all that the plans beside a shot, and what the shot was worth, are worked out from: the rulings of its frame
/// so far, and its own reading. Two marks are equal where a person has corrected nothing in between; times of the film
/// do not count. Feed it every shot of a frame of the record, in order.
///
/// Source of the sum: Fowler, Noll and Vo, the FNV-1a hash of 64 bits (from memory).
class SituationMark {
 public:
  /// Of this shot: 16 hexadecimal digits.
  [[nodiscard]] std::string of(const StoredShot& shot);

 private:
  std::uint64_t rulings_ = 0xcbf29ce484222325u;
};

}  // namespace ferrule
