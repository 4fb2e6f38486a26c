// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/table/table.h"

namespace ferrule {

/// Marks of the table that a picture shows beside its lines.
enum class MarkKind {
  Sight,   ///< inlaid in a rail, at the rail's height
  Pocket,  ///< the middle of the dark opening
};

/// One mark of every table.
struct TableMark {
  MarkKind kind = MarkKind::Sight;
  int number = 0;  ///< of a sight: in the order of sights(); of a pocket: in the order of kPocketNames

  bool operator==(const TableMark&) const = default;
};

/// The 18 sights, then the 6 pockets.
[[nodiscard]] std::vector<TableMark> tableMarks();

/// Where a mark lies, and the direction in which its place is well known: along the rail for a sight; square to the
/// pocket's own axis for a pocket, whose opening reaches as far under the rail as its maker liked.
struct MarkPlace {
  TablePoint place;
  TableVector sure;  ///< unit
  bool operator==(const MarkPlace&) const = default;
};
/// mark: one of tableMarks().
[[nodiscard]] MarkPlace markPlace(const Table& table, TableMark mark);

/// A mark as a picture shows it.
struct MarkSighting {
  TableMark mark;
  ImagePoint place;
  double u_px = 0.0;  ///< standard uncertainty of the place, each axis

  bool operator==(const MarkSighting&) const = default;
};

}  // namespace ferrule
