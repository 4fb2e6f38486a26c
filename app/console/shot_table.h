// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <vector>

#include "core/rules/ruling_text.h"
#include "core/table/shot.h"

namespace ferrule {

/// Shots as lines of an aligned table with a header, for a terminal. A value stands with its 95 % interval as
/// value +- 2 u; a dash stands for what was not observed.
/// rulings: one for each shot, or none; a column then tells who was at the table and which fouls there were, with a
/// question mark where a person is asked.
[[nodiscard]] QStringList shotTable(const std::vector<ShotReading>& shots, const std::vector<RuledShot>& rulings = {});

}  // namespace ferrule
