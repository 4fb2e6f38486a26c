// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/erase_player.h"
#include "core/record/record_people.h"

/// Which rows go with a person. For this folder's .cpp files only.
namespace ferrule {

/// The rows of one person, as conditions of SQL.
class PersonsRows {
 public:
  explicit PersonsRows(PlayerId player);

  /// Replaces in SQL: %P by the player's id, %S, %F and %H by lists of the sessions, frames and shots that go, %G by
  /// the condition on (entity, entity_id) of what hangs on anything that goes.
  [[nodiscard]] QString filled(const char* sql) const;

 private:
  QString player_;
  QString sessions_;
  QString frames_;
  QString shots_;
  QString going_;
};

/// The name as a word of its own taken out of a text; nothing when it is not in it.
[[nodiscard]] std::optional<std::string> withoutName(const std::string& text, const std::string& name);

/// A JSON text whose "overruled_by" fields no longer hold this name; nothing when none did.
[[nodiscard]] std::optional<std::string> withoutOverruler(const std::string& json, const std::string& name);

/// What erasing would do, in the caller's transaction or none. Nothing for an unknown player.
[[nodiscard]] Result<std::optional<ErasePreview>> erasePreview(Connection& connection, PlayerId player);

}  // namespace ferrule
