// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/table_painter.h"

#include <QPainterPath>
#include <algorithm>
#include <array>

namespace ferrule {

namespace {

/// How round the rails' outer corners are: common practice, no source.
constexpr double kRailCorner_m = 0.09;
/// Half a diagonal of a sight, and the radius of a spot: common practice, no source.
constexpr double kSight_m = 0.014;
constexpr double kSpot_m = 0.007;
/// Visible width of a pocket's leather or plastic rim: common practice, no source.
constexpr double kPocketRim_m = 0.012;

class TablePainter {
 public:
  TablePainter(QPainter& painter, const Table& table, const PlanMapping& mapping, const Inks& inks)
      : painter_(painter), table_(table), mapping_(mapping), inks_(inks) {}

  void rails() {
    const double corner = kRailCorner_m * mapping_.scale();
    painter_.setPen(QPen(inks_.wood.darker(130), 1.0));
    painter_.setBrush(inks_.wood);
    painter_.drawRoundedRect(mapping_.outline(table_), corner, corner);
  }

  void cloth() {
    const double x = table_.length_m / 2.0 + table_.cushionWidth_m;
    const double y = table_.width_m / 2.0 + table_.cushionWidth_m;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(inks_.cloth);
    painter_.drawRect(QRectF(mapping_.screenFromTable({-x, -y}), mapping_.screenFromTable({x, y})).normalized());
  }

  void cushionsWithJaws() {
    const auto allPockets = pockets(table_);
    painter_.setPen(QPen(inks_.cushion.darker(125), 1.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter_.setBrush(inks_.cushion);
    for (const Cushion& cushion : cushions(table_)) {
      const QPointF shape[] = {screen(cushion.nose.start), screen(cushion.nose.end),
                               screen(backOf(cushion.nose.end, allPockets)),
                               screen(backOf(cushion.nose.start, allPockets))};
      painter_.drawPolygon(shape, 4);
    }
  }

  void holes() {
    for (const Pocket& pocket : pockets(table_)) {
      const double rim = (pocket.holeRadius_m + kPocketRim_m) * mapping_.scale();
      const double hole = pocket.holeRadius_m * mapping_.scale();
      painter_.setPen(Qt::NoPen);
      painter_.save();
      painter_.setClipPath(outsideTheMouth(pocket));
      painter_.setBrush(inks_.wood.darker(155));
      painter_.drawEllipse(screen(pocket.hole), rim, rim);
      painter_.restore();
      painter_.setBrush(inks_.pocket);
      painter_.drawEllipse(screen(pocket.hole), hole, hole);
    }
  }

  void sightsAndLines() {
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(inks_.sight);
    const double s = std::max(2.0, kSight_m * mapping_.scale());
    for (const TablePoint& sight : sights(table_)) {
      const QPointF at = screen(sight);
      const QPointF diamond[] = {at + QPointF(0, -s), at + QPointF(s * 0.7, 0), at + QPointF(0, s),
                                 at + QPointF(-s * 0.7, 0)};
      painter_.drawPolygon(diamond, 4);
    }
    const double y = table_.width_m / 2.0;
    painter_.setPen(QPen(inks_.clothLine, 1.0));
    painter_.drawLine(screen({headString_m(table_), -y}), screen({headString_m(table_), y}));
    painter_.setPen(QPen(inks_.clothLine, 1.0, Qt::DotLine));
    painter_.drawLine(screen({footString_m(table_), -y}), screen({footString_m(table_), y}));
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(inks_.clothLine);
    const double spot = std::max(1.5, kSpot_m * mapping_.scale());
    for (const TablePoint& point : {headSpot(table_), centreSpot(table_), footSpot(table_)}) {
      painter_.drawEllipse(screen(point), spot, spot);
    }
  }

 private:
  [[nodiscard]] QPointF screen(TablePoint point) const { return mapping_.screenFromTable(point); }

  /// Where the cushion's back edge begins: at the far end of the facing that starts at this nose point.
  static TablePoint backOf(TablePoint nose, const std::array<Pocket, 6>& allPockets) {
    const TableSegment* nearest = nullptr;
    for (const Pocket& pocket : allPockets) {
      for (const TableSegment& facing : pocket.facings) {
        if (nearest == nullptr || distance(facing.start, nose) < distance(nearest->start, nose)) nearest = &facing;
      }
    }
    return nearest->end;
  }

  /// Everything beyond the mouth, where a rim may be seen.
  [[nodiscard]] QPainterPath outsideTheMouth(const Pocket& pocket) const {
    const TableVector along = perpendicular(pocket.inward);
    const double far_m = 4.0 * pocket.holeRadius_m;
    const TablePoint start = pocket.hole - 0.35 * pocket.holeRadius_m * pocket.inward;
    QPainterPath path;
    path.moveTo(screen(start + far_m * along));
    path.lineTo(screen(start - far_m * along));
    path.lineTo(screen(start - far_m * along + far_m * pocket.inward));
    path.lineTo(screen(start + far_m * along + far_m * pocket.inward));
    path.closeSubpath();
    return path;
  }

  QPainter& painter_;
  const Table& table_;
  const PlanMapping& mapping_;
  const Inks& inks_;
};

}  // namespace

void paintTable(QPainter& painter, const Table& table, const PlanMapping& mapping, const Inks& inks) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  TablePainter picture(painter, table, mapping, inks);
  picture.rails();
  picture.cloth();
  picture.cushionsWithJaws();
  picture.holes();
  picture.sightsAndLines();
  painter.restore();
}

}  // namespace ferrule
