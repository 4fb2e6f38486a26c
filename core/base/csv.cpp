// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"

namespace ferrule {

std::string csvField(const std::string& value) {
  if (value.find_first_of(",\"\r\n") == std::string::npos) return value;
  std::string quoted = "\"";
  for (const char letter : value) {
    if (letter == '"') quoted += '"';
    quoted += letter;
  }
  return quoted + '"';
}

}  // namespace ferrule
