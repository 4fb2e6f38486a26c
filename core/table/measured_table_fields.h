// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/table/measured_table.h"

/// The fields of table.json, for its reader and its writer only.
namespace ferrule::tablefile {

/// What a value may be before it is taken for a slip of the pen, in the file's unit.
struct Limits {
  double least = 0.0;
  double most = 0.0;
};

inline constexpr Limits kTagId{0.0, 999.0};
inline constexpr Limits kTagHeight_mm{0.0, 150.0};
inline constexpr Limits kTagSide_mm{10.0, 300.0};
inline constexpr Limits kCoordinate_mm{-3000.0, 3000.0};
inline constexpr Limits kCueTagSide_mm{5.0, 100.0};
inline constexpr Limits kCueLength_mm{0.0, 2000.0};
inline constexpr Limits kCueRadius_mm{3.0, 40.0};
inline constexpr Limits kBridgeHeight_mm{0.0, 500.0};
/// Tables are twice as long as wide; a tenth to either side leaves room for odd ones and none for a wrong digit.
inline constexpr Limits kWidthOverLength{0.45, 0.55};
/// Source: world equipment specification, cushions (62.5 to 64.5 %).
inline constexpr double kNoseHeightOverDiameter = 0.635;
inline constexpr const char* kNoseHeightField = "nose_height_above_cloth";

/// One number of the table or its balls.
struct Size {
  const char* field;
  Limits limits;                  ///< in the file's unit
  double perUnit;                 ///< how many of the file's unit make one SI unit
  double& (*of)(MeasuredTable&);  ///< where it lives
  bool required;
};

/// Length first, width second.
inline constexpr std::array kSizes{
    Size{"table_length_nose_to_nose",
         {1000.0, 4000.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.length_m; },
         true},
    Size{"table_width_nose_to_nose",
         {500.0, 2000.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.width_m; },
         true},
    Size{"ball_diameter", {40.0, 70.0}, 1000.0, [](MeasuredTable& m) -> double& { return m.balls.diameter_m; }, true},
    Size{"ball_mass_g", {80.0, 300.0}, 1000.0, [](MeasuredTable& m) -> double& { return m.balls.mass_kg; }, false},
    Size{"corner_pocket_mouth",
         {75.0, 150.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.corner.mouth_m; },
         false},
    Size{"side_pocket_mouth",
         {80.0, 160.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.side.mouth_m; },
         false},
    Size{"corner_pocket_shelf",
         {0.0, 80.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.corner.shelf_m; },
         false},
    Size{"side_pocket_shelf",
         {0.0, 40.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.side.shelf_m; },
         false},
    Size{kNoseHeightField,
         {20.0, 50.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.noseHeight_m; },
         false},
    Size{"cushion_width",
         {30.0, 70.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.cushionWidth_m; },
         false},
    Size{"rail_width", {80.0, 250.0}, 1000.0, [](MeasuredTable& m) -> double& { return m.table.railWidth_m; }, false},
    Size{"sight_offset_from_nose",
         {40.0, 160.0},
         1000.0,
         [](MeasuredTable& m) -> double& { return m.table.sightOffset_m; },
         false},
};

}  // namespace ferrule::tablefile
