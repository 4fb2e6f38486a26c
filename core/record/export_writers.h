// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/base/output_file.h"
#include "core/record/people_values.h"

/// The two forms of an export, written shot by shot. For this folder's .cpp files only.
namespace ferrule {

struct DrillRunEntry;

/// A frame with what belongs to it and its session.
struct ExportedFrame {
  SessionSummary session;
  FrameSummary frame;
};

/// 2026-10-25T00:59:00.000Z
[[nodiscard]] std::string utcText(UtcMilliseconds time);

/// The header row, ending in CRLF.
[[nodiscard]] std::string csvHeader();
/// One shot's row, ending in CRLF.
[[nodiscard]] std::string csvRow(const ExportedFrame& frame, const StoredShot& shot);

/// The pieces of record.json; each is one JSON object.
[[nodiscard]] std::string playerJson(const Person& person);
[[nodiscard]] std::string tableJson(const std::string& name, const MeasuredTable& table);
[[nodiscard]] std::string filmJson(const FilmEntry& film);
/// onlyPlayer: other names are left out of what was corrected.
[[nodiscard]] std::string shotJson(const StoredShot& shot, const std::optional<std::string>& onlyPlayer);
/// With its drill as it was and its tries.
[[nodiscard]] std::string drillRunJson(const DrillRunEntry& run);
/// The JSON that another part wrote, on one line; null where it is none.
[[nodiscard]] std::string keptText(const std::string& content);
/// A JSON string with its quotes.
[[nodiscard]] std::string quotedJson(const std::string& text);

}  // namespace ferrule
