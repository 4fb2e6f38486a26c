// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "app/words/numbers.h"
#include "core/record/record_values.h"

/// Two shots against each other, in words and numbers.
namespace ferrule {

/// One line: what, the first shot's value, the second's, and second minus first. A value that was not seen is a dash,
/// and so is a difference with it.
struct ComparedValue {
  QString name;
  QString first;
  QString second;
  QString difference;

  bool operator==(const ComparedValue&) const = default;
};

/// Delivery, cut, line error, where the cue ball came to rest, result. The standard uncertainty of a difference is that
/// of two independent values. Source: JCGM 100:2008, 5.1.2.
[[nodiscard]] std::vector<ComparedValue> comparedValues(const StoredShot& first, const StoredShot& second,
                                                        const Numbers& numbers);

}  // namespace ferrule
