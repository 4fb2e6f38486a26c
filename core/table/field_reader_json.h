// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>

#include "core/base/error.h"
#include "core/geometry/units.h"
#include "core/table/measured_table_fields.h"

namespace ferrule::tablefile {

/// Numbers of one JSON object, each within its limits; the object must outlive the reader.
class FieldReader {
 public:
  FieldReader(const nlohmann::json& object, std::string file) : object_(object), file_(std::move(file)) {}

  [[nodiscard]] bool has(const char* field) const { return object_.contains(field); }

  [[nodiscard]] Result<double> number(const char* field, Limits limits) const {
    if (!has(field)) return failure(ErrorCode::FieldMissing, file_, field);
    return numberOf(object_.at(field), field, limits);
  }

  [[nodiscard]] Result<double> numberOf(const nlohmann::json& value, const std::string& field, Limits limits) const {
    if (!value.is_number()) return failure(ErrorCode::FieldInvalid, file_, field);
    const double number = value.get<double>();
    if (!(number >= limits.least && number <= limits.most)) {
      return failure(ErrorCode::FieldInvalid, file_, field, {number, limits.least, limits.most});
    }
    return number;
  }

  [[nodiscard]] Result<double> metres(const char* field, Limits limits) const {
    return number(field, limits).map(metresFromMillimetres);
  }

  [[nodiscard]] Result<double> metresOf(const nlohmann::json& value, const std::string& field, Limits limits) const {
    return numberOf(value, field, limits).map(metresFromMillimetres);
  }

  [[nodiscard]] Result<int> wholeOf(const nlohmann::json& value, const std::string& field, Limits limits) const {
    if (!value.is_number_integer()) return failure(ErrorCode::FieldInvalid, file_, field);
    return numberOf(value, field, limits).map([](double number) { return static_cast<int>(number); });
  }

  [[nodiscard]] const std::string& file() const { return file_; }

 private:
  const nlohmann::json& object_;
  std::string file_;
};

/// "line 3": where a person finds the byte.
[[nodiscard]] inline std::string lineOf(const std::string& text, std::size_t byte) {
  const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(byte, text.size()));
  return "line " + std::to_string(1 + std::count(text.begin(), end, '\n'));
}

}  // namespace ferrule::tablefile
