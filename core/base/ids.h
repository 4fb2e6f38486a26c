// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace ferrule {

/// A row's number in the record; ids of different kinds do not mix. 0 means none.
template <class Tag>
struct Id {
  std::int64_t value = 0;

  explicit operator bool() const { return value != 0; }
  auto operator<=>(const Id&) const = default;
};

using PlayerId = Id<struct PlayerTag>;
using TableId = Id<struct TableTag>;
using FilmId = Id<struct FilmTag>;
using RigId = Id<struct RigTag>;
using SessionId = Id<struct SessionTag>;
using FrameId = Id<struct FrameTag>;
using ShotId = Id<struct ShotTag>;
using CorrectionId = Id<struct CorrectionTag>;  ///< a person's correction of a value
using NoteId = Id<struct NoteTag>;

}  // namespace ferrule
