// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

namespace ferrule {

/// The set-up that a person last finished: what films of this table are measured with unless another is chosen.
struct RigInUse {
  QString name;  ///< of the table
  QString rig;   ///< its files
  QString table;

  bool operator==(const RigInUse&) const = default;
};

/// Nothing where none was finished, or where its files are gone.
[[nodiscard]] std::optional<RigInUse> rigInUse();
void setRigInUse(const RigInUse& rig);

}  // namespace ferrule
