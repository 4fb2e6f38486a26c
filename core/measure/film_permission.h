// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/record/consent.h"

namespace ferrule {

/// Whether a film of people may be kept.
struct FilmPermission {
  bool named = false;                     ///< somebody was named; of people whom nobody knows no film is kept
  std::vector<FilmObstacle> obstacles{};  ///< in the order of the names

  [[nodiscard]] bool granted() const { return named && obstacles.empty(); }
  bool operator==(const FilmPermission&) const = default;
};

/// Whether the film of a session with players of these names may be kept at that moment. Who is not in the record, or
/// where there is none yet, has consented to nothing. Errors: those of Record.
[[nodiscard]] Result<FilmPermission> filmPermission(const std::string& record, const std::vector<std::string>& names,
                                                    UtcMilliseconds at);

}  // namespace ferrule
