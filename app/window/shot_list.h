// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/record/record_values.h"

namespace ferrule {

/// A shot of a list, with what a row says of it.
struct ListedShot {
  SessionId session;
  ShotId shot;
  QString words;  ///< "2 Mar 2026 · 12"
  Outcome outcome = Outcome::Miss;
};

/// Shots that belong together, for one place to hand to another.
struct ShotList {
  QString record;  ///< path
  QString title;   ///< what they have in common
  std::vector<ListedShot> shots;
};

}  // namespace ferrule
