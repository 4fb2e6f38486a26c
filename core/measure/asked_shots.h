// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/record/record.h"
#include "core/table/asked_delivered.h"

namespace ferrule {

/// A measured strike under its shot's number.
struct NumberedDelivery {
  int shot = 0;
  Delivery delivery;

  bool operator==(const NumberedDelivery&) const = default;
};

/// The strikes of a session, numbered from 1 on through its frames in order. Errors: those of Record.
[[nodiscard]] Result<std::vector<NumberedDelivery>> deliveriesOf(Record& record, SessionId session);
/// The strikes of a measured.json under the numbers that stand there. Errors: those of readTextFile(); FileMalformed
/// (detail: where), FieldMissing (no shots).
[[nodiscard]] Result<std::vector<NumberedDelivery>> readDeliveries(const std::string& path);

/// Commands with what came of them.
struct AskedMatch {
  std::vector<AskedShot> shots;
  std::vector<int> missing;  ///< numbers that were asked and are not among the shots
};

[[nodiscard]] AskedMatch matchAsked(std::span<const AskedLine> asked, std::span<const NumberedDelivery> delivered);

}  // namespace ferrule
