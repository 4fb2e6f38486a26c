// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ferrule {

/// One field by RFC 4180: quoted when it holds a comma, a quote or a line's end.
[[nodiscard]] std::string csvField(const std::string& value);

/// One record of a CSV text.
struct CsvRow {
  int line = 1;  ///< on which it begins, from 1
  std::vector<std::string> fields;

  bool operator==(const CsvRow&) const = default;
};

/// A CSV text by its rows.
struct CsvText {
  std::vector<CsvRow> rows;
  /// The fields are parted by semicolons, as spreadsheets do where numbers have a decimal comma.
  bool decimalComma = false;

  /// A field as a finite number; nothing for anything else. Spaces around it do not count.
  [[nodiscard]] std::optional<double> number(std::string_view field) const;
};

/// Reads RFC 4180, and its form with semicolons: that one is meant when the first line has a semicolon and no comma. A
/// byte order mark and lines that are empty are passed over. Whatever the text is, it has rows: a quote that is never
/// closed reaches to the end.
[[nodiscard]] CsvText parseCsv(std::string_view text);

}  // namespace ferrule
