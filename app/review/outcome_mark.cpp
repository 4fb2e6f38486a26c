// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/outcome_mark.h"

namespace ferrule {

MarkSide sideOf(Outcome outcome) {
  switch (outcome) {
    case Outcome::Miss:
    case Outcome::Scratch:
    case Outcome::Foul:
      return MarkSide::Below;
    case Outcome::Pot:
    case Outcome::Safety:
    case Outcome::Break:
      break;
  }
  return MarkSide::Above;
}

void paintOutcome(QPainter& painter, Outcome outcome, const QPointF& centre, double size, const QColor& colour) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const double r = size / 2.0;
  painter.setPen(QPen(colour, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  const auto cross = [&](double reach) {
    painter.drawLine(centre + QPointF(-reach, -reach), centre + QPointF(reach, reach));
    painter.drawLine(centre + QPointF(-reach, reach), centre + QPointF(reach, -reach));
  };
  switch (outcome) {
    case Outcome::Pot:
      painter.setBrush(colour);
      painter.drawEllipse(centre, r - 0.8, r - 0.8);
      break;
    case Outcome::Miss:
      painter.drawEllipse(centre, r - 0.8, r - 0.8);
      break;
    case Outcome::Safety:
      painter.drawRect(QRectF(centre.x() - r + 1.0, centre.y() - r + 1.0, size - 2.0, size - 2.0));
      break;
    case Outcome::Scratch:
      painter.drawEllipse(centre, r - 0.8, r - 0.8);
      cross((r - 0.8) * 0.7);
      break;
    case Outcome::Foul:
      cross(r - 1.0);
      break;
    case Outcome::Break: {
      painter.setBrush(colour);
      const QPointF triangle[] = {centre + QPointF(0, -r + 1.0), centre + QPointF(r - 1.0, r - 1.2),
                                  centre + QPointF(-r + 1.0, r - 1.2)};
      painter.drawPolygon(triangle, 3);
      break;
    }
  }
  painter.restore();
}

}  // namespace ferrule
