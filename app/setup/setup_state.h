// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/base/error.h"
#include "core/camera/board.h"
#include "core/table/measured_table.h"
#include "core/vision/line_survey.h"
#include "core/vision/mark_survey.h"

namespace ferrule {

/// The steps of the path, in their order.
enum class SetupStep { Table, Balls, Camera, Lens, Tags, Rig, Check, Map, Projector, Done };
inline constexpr int kSetupSteps = 10;

/// One tag as it is being measured; what was not measured yet is nothing.
struct TagEntry {
  int id = 0;
  std::optional<double> height_mm;                  ///< another height than the others'
  std::array<std::optional<double>, 8> corners_mm;  ///< x and y, in the order of RailTag::corners

  bool operator==(const TagEntry&) const = default;
};

/// Everything that a person chose and measured on the way; kept, so that the path can be left and entered again.
struct SetupState {
  SetupStep step = SetupStep::Table;
  QString name;                            ///< of the table
  MeasuredTable measured;                  ///< its tags are made of the entries below
  QString preset = QStringLiteral("9ft");  ///< empty: measured lengths
  double diagonalA_mm = 0.0;               ///< 0: not measured
  double diagonalB_mm = 0.0;
  QString camera;
  QString film;  ///< a film or still of the table
  QString board = QStringLiteral("charuco:8x6:30:22:DICT_5X5_100");
  double rulerAcross_mm = 100.0;
  double rulerDown_mm = 100.0;
  QStringList stills;
  QString lens;               ///< the lens file; empty: none yet
  bool withoutBoard = false;  ///< the lens comes from the cushions
  bool withoutTags = false;
  PictureSide head = PictureSide::Left;
  double tagSide_mm = 80.0;
  double tagHeight_mm = 38.0;
  std::vector<TagEntry> tags{{0, {}, {}}, {1, {}, {}}, {2, {}, {}}, {3, {}, {}}};
  std::vector<LineTrace> handLines;  ///< placed by hand in the film's picture, in place of those found
  std::vector<HandMark> handMarks;   ///< what a person said of sights and pockets there
  QString rig;                       ///< the rig file; empty: none yet
  QString folder;                    ///< where the files were saved; empty: not yet

  bool operator==(const SetupState&) const = default;
};

/// Corners that were left out, from the first two: a tag is square. Nothing while one of those is missing.
[[nodiscard]] std::optional<RailTag> tagFrom(const TagEntry& entry, double side_mm, double height_mm);
/// The other way round, for tags that come from a file. heightOfAll_mm: what is not repeated in the entry.
[[nodiscard]] TagEntry entryFrom(const RailTag& tag, double heightOfAll_mm);

/// The table as it was put in, checked as a table file is. Tags whose first two corners are not measured are left out;
/// withoutTags leaves out all. Errors: those of parseMeasuredTable (subject: "table"); FieldInvalid (detail
/// "tags[].corners"; numbers: side as measured, least, most, mm) when the sides are not those of the black square.
[[nodiscard]] Result<MeasuredTable> tableOf(const SetupState& state);
/// Takes over a table file.
void takeTable(SetupState& state, const MeasuredTable& measured);

/// The state as JSON; what setupFromText makes of it has the same text (lengths to the table file's digits).
[[nodiscard]] std::string setupText(const SetupState& state);
/// A state of another version, or a damaged one, is nothing.
[[nodiscard]] std::optional<SetupState> setupFromText(const std::string& text);

}  // namespace ferrule
