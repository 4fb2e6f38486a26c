// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace ferrule {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

bool isEmptyLine(const CsvRow& row) {
  return row.fields.size() == 1 && trimmed(row.fields.front()).empty();
}

}  // namespace

std::string csvField(const std::string& value) {
  if (value.find_first_of(",\"\r\n") == std::string::npos) return value;
  std::string quoted = "\"";
  for (const char letter : value) {
    if (letter == '"') quoted += '"';
    quoted += letter;
  }
  return quoted + '"';
}

std::optional<double> CsvText::number(std::string_view field) const {
  std::string digits(trimmed(field));
  if (decimalComma) std::ranges::replace(digits, ',', '.');
  double value = 0.0;
  const char* end = digits.data() + digits.size();
  const auto [stopped, error] = std::from_chars(digits.data(), end, value);
  if (error != std::errc() || stopped != end || !std::isfinite(value)) return std::nullopt;
  return value;
}

CsvText parseCsv(std::string_view text) {
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  CsvText csv;
  const std::string_view header = text.substr(0, text.find_first_of("\r\n"));
  csv.decimalComma = header.find(';') != std::string_view::npos && header.find(',') == std::string_view::npos;
  const char separator = csv.decimalComma ? ';' : ',';
  CsvRow row{1, {std::string()}};
  bool quoted = false;
  int line = 1;
  const auto endRow = [&] {
    if (!isEmptyLine(row)) csv.rows.push_back(std::move(row));
    row = CsvRow{line, {std::string()}};
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char letter = text[i];
    const bool twice = i + 1 < text.size() && text[i + 1] == letter;
    if (letter == '\n') ++line;
    if (quoted) {
      if (letter == '"' && !twice) {
        quoted = false;
      } else {
        row.fields.back() += letter;
        if (letter == '"') ++i;
      }
    } else if (letter == '"' && trimmed(row.fields.back()).empty()) {
      row.fields.back().clear();
      quoted = true;
    } else if (letter == separator) {
      row.fields.emplace_back();
    } else if (letter == '\n') {
      endRow();
    } else if (letter != '\r') {
      row.fields.back() += letter;
    }
  }
  endRow();
  return csv;
}

}  // namespace ferrule
