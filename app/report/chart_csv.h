// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "app/report/chart.h"

namespace ferrule {

/// What a chart shows, one mark, cell, bar, side or point a row (RFC 4180, UTF-8), numbers with a decimal point in
/// every language. Header: series: place, the value's name with its unit, least, most, count; grid: row, column, share,
/// words; bars: label, value, least, most, words; split: label, left, right, words; points: the names of both axes with
/// their units, hollow, words. Speeds are in the unit that the chart shows. A number that is not there is empty.
[[nodiscard]] std::string chartCsv(const Chart& chart);

}  // namespace ferrule
