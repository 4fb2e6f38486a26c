// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/table/ball_set.h"
#include "core/table/table.h"

namespace ferrule {

/// A printed tag that lies on a rail, face up.
struct RailTag {
  int id = 0;
  /// The black square's corners: top-left, top-right, bottom-right, bottom-left of the print; z is its height.
  std::array<TablePoint3, 4> corners;

  bool operator==(const RailTag&) const = default;
};

/// Two tags on the cue, measured from the tip along the cue.
struct CueTags {
  std::string dictionary;
  std::vector<int> ids;
  double blackSide_m = 0.0;
  std::vector<double> centreFromTip_m;  ///< one for each id
  std::vector<double> cueRadius_m;      ///< one for each id

  bool operator==(const CueTags&) const = default;
};

/// What an owner measures with a steel rule: the table, its balls and its tags.
struct MeasuredTable {
  Table table;
  BallSet balls = poolBalls();
  std::string tagDictionary = "DICT_4X4_50";
  std::vector<RailTag> tags;
  std::optional<CueTags> cueTags;
  std::optional<double> bridgeHeight_m;  ///< of the cue's axis at the bridge

  bool operator==(const MeasuredTable&) const = default;
};

/// Reads table.json (DEVELOPERS.md, file formats). Errors: FileMissing, FileEmpty, FileUnreadable, FileMalformed
/// (detail: where), FieldMissing, FieldInvalid (with the value and the limits in the file's unit, where they are
/// numbers).
[[nodiscard]] Result<MeasuredTable> readMeasuredTable(const std::string& path);
/// A preset's name ("9ft") or a path.
[[nodiscard]] Result<MeasuredTable> measuredTableFrom(const std::string& presetOrPath);
/// table.json's content; name stands for the file in errors.
[[nodiscard]] Result<MeasuredTable> parseMeasuredTable(const std::string& json, const std::string& name);
/// The same content again, in the form of table.json: what parseMeasuredTable makes of it equals measured.
[[nodiscard]] std::string measuredTableText(const MeasuredTable& measured);

}  // namespace ferrule
