// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/table.h"

#include <cmath>
#include <numbers>

namespace ferrule {

namespace {

struct Corner {
  double xSign = 1.0;
  double ySign = 1.0;
};

/// How far a corner pocket's nose points lie from the corner of the nose lines.
double cornerSetback_m(const Table& table) {
  return table.corner.mouth_m / std::numbers::sqrt2;
}

TableVector rotated(TableVector v, double angle_rad) {
  const double c = std::cos(angle_rad);
  const double s = std::sin(angle_rad);
  return {c * v.x - s * v.y, s * v.x + c * v.y};
}

/// A facing from a nose point. alongNose: unit vector along the nose line toward the pocket; the facing turns away from
/// the cloth by 180 degrees less the cut angle. turn: +1 counter-clockwise, -1 clockwise.
TableSegment facing(TablePoint nose, TableVector alongNose, double turn, const PocketShape& shape,
                    double cushionWidth_m) {
  const double away_rad = std::numbers::pi - shape.cutAngle_rad;
  const double reach_m = cushionWidth_m / std::sin(away_rad);
  return {nose, nose + reach_m * rotated(alongNose, turn * away_rad)};
}

Pocket cornerPocket(const Table& table, PocketName name, Corner corner) {
  const TablePoint apex{corner.xSign * table.length_m / 2.0, corner.ySign * table.width_m / 2.0};
  const double setback_m = cornerSetback_m(table);
  const TableVector alongX{corner.xSign, 0.0};
  const TableVector alongY{0.0, corner.ySign};
  Pocket pocket;
  pocket.name = name;
  pocket.inward = unit(alongX + alongY);
  pocket.mouth_m = table.corner.mouth_m;
  pocket.mouth = apex - (setback_m / 2.0) * (alongX + alongY);
  pocket.holeRadius_m = table.corner.holeRadius_m;
  pocket.hole = pocket.mouth + (table.corner.shelf_m + pocket.holeRadius_m) * pocket.inward;
  // Seen from above, the long rail's facing turns from x toward y, the short rail's the other way.
  const double turn = corner.xSign * corner.ySign;
  const TableSegment longRail = facing(apex - setback_m * alongX, alongX, turn, table.corner, table.cushionWidth_m);
  const TableSegment shortRail = facing(apex - setback_m * alongY, alongY, -turn, table.corner, table.cushionWidth_m);
  const bool longRailIsRight = cross(pocket.inward, longRail.start - pocket.mouth) < 0.0;
  pocket.facings = longRailIsRight ? std::array{longRail, shortRail} : std::array{shortRail, longRail};
  return pocket;
}

Pocket sidePocket(const Table& table, PocketName name, double ySign) {
  const double half_m = table.side.mouth_m / 2.0;
  Pocket pocket;
  pocket.name = name;
  pocket.inward = {0.0, ySign};
  pocket.mouth_m = table.side.mouth_m;
  pocket.mouth = {0.0, ySign * table.width_m / 2.0};
  pocket.holeRadius_m = table.side.holeRadius_m;
  pocket.hole = pocket.mouth + (table.side.shelf_m + pocket.holeRadius_m) * pocket.inward;
  const TableSegment foot =
      facing(pocket.mouth + TableVector{half_m, 0.0}, {-1.0, 0.0}, -ySign, table.side, table.cushionWidth_m);
  const TableSegment head =
      facing(pocket.mouth - TableVector{half_m, 0.0}, {1.0, 0.0}, ySign, table.side, table.cushionWidth_m);
  pocket.facings = ySign > 0.0 ? std::array{foot, head} : std::array{head, foot};
  return pocket;
}

}  // namespace

Table tableOfSize(const TableSize& size) {
  Table table;
  table.length_m = size.length_m;
  table.width_m = size.width_m;
  return table;
}

std::array<Pocket, 6> pockets(const Table& table) {
  return {
      cornerPocket(table, PocketName::HeadLeft, {-1.0, 1.0}), cornerPocket(table, PocketName::HeadRight, {-1.0, -1.0}),
      sidePocket(table, PocketName::SideLeft, 1.0),           sidePocket(table, PocketName::SideRight, -1.0),
      cornerPocket(table, PocketName::FootLeft, {1.0, 1.0}),  cornerPocket(table, PocketName::FootRight, {1.0, -1.0})};
}

std::array<Cushion, 6> cushions(const Table& table) {
  const double x = table.length_m / 2.0;
  const double y = table.width_m / 2.0;
  const double corner = cornerSetback_m(table);
  const double side = table.side.mouth_m / 2.0;
  return {Cushion{CushionName::Head, {{-x, -y + corner}, {-x, y - corner}}, {1.0, 0.0}},
          Cushion{CushionName::Foot, {{x, -y + corner}, {x, y - corner}}, {-1.0, 0.0}},
          Cushion{CushionName::LeftHead, {{-x + corner, y}, {-side, y}}, {0.0, -1.0}},
          Cushion{CushionName::LeftFoot, {{side, y}, {x - corner, y}}, {0.0, -1.0}},
          Cushion{CushionName::RightHead, {{-x + corner, -y}, {-side, -y}}, {0.0, 1.0}},
          Cushion{CushionName::RightFoot, {{side, -y}, {x - corner, -y}}, {0.0, 1.0}}};
}

std::vector<TablePoint> sights(const Table& table) {
  const double x = table.length_m / 2.0 + table.sightOffset_m;
  const double y = table.width_m / 2.0 + table.sightOffset_m;
  constexpr std::array kLengthEighths{-3, -2, -1, 1, 2, 3};
  constexpr std::array kWidthQuarters{-1, 0, 1};
  std::vector<TablePoint> points;
  for (const int eighth : kLengthEighths)
    points.push_back({eighth * table.length_m / 8.0, -y});
  for (const int quarter : kWidthQuarters)
    points.push_back({x, quarter * table.width_m / 4.0});
  for (const int eighth : kLengthEighths)
    points.push_back({-eighth * table.length_m / 8.0, y});
  for (const int quarter : kWidthQuarters)
    points.push_back({-x, -quarter * table.width_m / 4.0});
  return points;
}

TablePoint headSpot(const Table& table) {
  return {headString_m(table), 0.0};
}

TablePoint centreSpot(const Table&) {
  return {0.0, 0.0};
}

TablePoint footSpot(const Table& table) {
  return {footString_m(table), 0.0};
}

double headString_m(const Table& table) {
  return -table.length_m / 4.0;
}

double footString_m(const Table& table) {
  return table.length_m / 4.0;
}

bool onPlayingSurface(const Table& table, TablePoint point) {
  return std::abs(point.x) <= table.length_m / 2.0 && std::abs(point.y) <= table.width_m / 2.0;
}

}  // namespace ferrule
