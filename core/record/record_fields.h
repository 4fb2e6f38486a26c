// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/record/record_impl.h"

/// The values of a shot that corrections touch, as text: what stands there, and how another is put in its place.
namespace ferrule {

using OptionalText = std::optional<std::string>;

/// A value of a shot: a column of shots, or what stands in the tables beside it. The name is also the field's name in
/// corrections.
struct ShotColumn {
  enum class Kind {
    Word,
    Truth,
    Real,
    Player,
    Ruling,
    Explanation,
    Reading,
    Names,      ///< of two tracks: the same text puts them back
    Told,       ///< only said; nothing stands in the record
    Split,      ///< told; taking it back makes one shot of the two
    Joined,     ///< told; taking it back makes two shots of the one
    Placement,  ///< a row of the shot's frame
    Suggestion,
  };

  std::string_view name;
  bool mayBeAbsent = false;
  Kind kind = Kind::Word;
};

/// Whether such a value stands nowhere but in the corrections (or, of a placement, in no column of the shot).
[[nodiscard]] bool isTold(ShotColumn::Kind kind);

/// Null for a name that is none.
[[nodiscard]] const ShotColumn* columnNamed(std::string_view name);
/// Whether a value is one of the words that a field takes.
[[nodiscard]] bool isKnownValue(ShotField field, const std::string& value);
/// Whether a change of one of these fields may have changed the other.
[[nodiscard]] bool touchEachOther(std::string_view field, std::string_view other);

/// The value that stands in a column. Nothing inside for an absent value; nothing at all for an unknown shot.
[[nodiscard]] Result<std::optional<OptionalText>> standing(Connection& connection, std::int64_t shot,
                                                           const ShotColumn& column);
/// replaced: what stands there now. Errors: NotFound for an unknown player, a track or a placement that is not there,
/// RecordBroken for a text that is none.
[[nodiscard]] Result<void> put(Connection& connection, std::int64_t shot, const ShotColumn& column,
                               const OptionalText& value, const OptionalText& replaced);

}  // namespace ferrule
