// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/error_map_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/window/spoken_role.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kColumns = 33;
constexpr int kRows = 17;
/// Even, so that no figure stands at the middle, where the mark is at first.
constexpr int kNumberColumns = 8;
constexpr int kNumberRows = 4;
/// From certain to uncertain; all light enough for dark figures, and rising in darkness, so that grey tells it too.
const QColor kCertain(222, 238, 236);
const QColor kBetween(238, 220, 160);
const QColor kUncertain(222, 140, 82);
const QColor kFigure(24, 24, 24);

QColor between(const QColor& a, const QColor& b, double share) {
  return {static_cast<int>(a.red() + share * (b.red() - a.red())),
          static_cast<int>(a.green() + share * (b.green() - a.green())),
          static_cast<int>(a.blue() + share * (b.blue() - a.blue()))};
}

QColor heatOf(double share) {
  const double s = std::clamp(share, 0.0, 1.0);
  return s < 0.5 ? between(kCertain, kBetween, 2.0 * s) : between(kBetween, kUncertain, 2.0 * s - 1.0);
}

/// A round value at or above, so that two maps of one kind are coloured alike.
double roundedUp_m(double value_m) {
  for (const double step_mm : {1.0, 2.0, 3.0, 5.0, 10.0, 20.0, 30.0, 50.0, 100.0}) {
    if (metresFromMillimetres(step_mm) >= value_m) return metresFromMillimetres(step_mm);
  }
  return value_m;
}

}  // namespace

ErrorMapView::ErrorMapView(QWidget* parent) : PlanPicture(parent) {
  setObjectName(QStringLiteral("errorMap"));
  setAccessibleName(tr("How far a ball may be off, over the table"));
  setFocusPolicy(Qt::StrongFocus);
  speakAs(this, QAccessible::Chart);
  setMinimumHeight(300);
}

void ErrorMapView::setMap(std::shared_ptr<const ErrorMap> map, const MeasuredTable& measured) {
  setTable(measured);
  if (map_ == map) return;
  map_ = std::move(map);
  heat_ = QImage();
  most_m_ = 0.0;
  if (map_) {
    const double length_m = measured.table.length_m - measured.balls.diameter_m;
    const double width_m = measured.table.width_m - measured.balls.diameter_m;
    std::vector<double> reach_m;
    for (int row = 0; row < kRows; ++row) {
      for (int column = 0; column < kColumns; ++column) {
        const auto at = map_->at({length_m * (static_cast<double>(column) / (kColumns - 1) - 0.5),
                                  width_m * (0.5 - static_cast<double>(row) / (kRows - 1))});
        reach_m.push_back(at ? at->reach95_m() : 0.0);
        most_m_ = std::max(most_m_, reach_m.back());
      }
    }
    most_m_ = roundedUp_m(most_m_);
    heat_ = QImage(kColumns, kRows, QImage::Format_RGB32);
    for (int row = 0; row < kRows; ++row) {
      for (int column = 0; column < kColumns; ++column) {
        const double reach = reach_m[static_cast<std::size_t>(row * kColumns + column)];
        heat_.setPixelColor(column, row, heatOf(reach / most_m_));
      }
    }
  }
  update();
}

void ErrorMapView::setShot(std::optional<std::array<TablePoint, 3>> shot) {
  shot_ = shot;
  update();
}

void ErrorMapView::choose(TablePoint place) {
  const Table& table = measured().table;
  const double radius_m = measured().balls.radius_m();
  place_ = {std::clamp(place.x, radius_m - 0.5 * table.length_m, 0.5 * table.length_m - radius_m),
            std::clamp(place.y, radius_m - 0.5 * table.width_m, 0.5 * table.width_m - radius_m)};
  update();
  emit placeChosen(place_);
}

void ErrorMapView::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) choose(mapping().tableFromScreen(event->position()));
  PlanPicture::mousePressEvent(event);
}

void ErrorMapView::keyPressEvent(QKeyEvent* event) {
  const double step_m = event->modifiers().testFlag(Qt::ShiftModifier) ? 0.100 : 0.010;
  switch (event->key()) {
    case Qt::Key_Left:
      return choose(place_ + TableVector{-step_m, 0.0});
    case Qt::Key_Right:
      return choose(place_ + TableVector{step_m, 0.0});
    case Qt::Key_Up:
      return choose(place_ + TableVector{0.0, step_m});
    case Qt::Key_Down:
      return choose(place_ + TableVector{0.0, -step_m});
    default:
      PlanPicture::keyPressEvent(event);
  }
}

void ErrorMapView::paintHeat(QPainter& painter) {
  const Table& table = measured().table;
  // Where a ball's middle can be.
  const double x_m = 0.5 * table.length_m - measured().balls.radius_m();
  const double y_m = 0.5 * table.width_m - measured().balls.radius_m();
  const QPointF headLeft = mapping().screenFromTable({-x_m, y_m});
  const QPointF footRight = mapping().screenFromTable({x_m, -y_m});
  const QRectF bed = QRectF(headLeft, footRight).normalized();
  // In portrait the head is at the bottom.
  const QImage turned = mapping().isPortrait() ? heat_.transformed(QTransform().rotate(-90.0)) : heat_;
  painter.save();
  painter.setClipRect(bed);
  // Worked out at the pixels' middles, from edge to edge: half a pixel stands over on each side.
  const double stepX = bed.width() / (turned.width() - 1);
  const double stepY = bed.height() / (turned.height() - 1);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(bed.adjusted(-0.5 * stepX, -0.5 * stepY, 0.5 * stepX, 0.5 * stepY), turned);
  painter.restore();
  painter.setPen(kFigure);
  for (int row = 0; row < kNumberRows; ++row) {
    for (int column = 0; column < kNumberColumns; ++column) {
      const TablePoint place{table.length_m * ((column + 0.5) / kNumberColumns - 0.5),
                             table.width_m * (0.5 - (row + 0.5) / kNumberRows)};
      const auto at = map_->at(place);
      const QString words =
          at ? locale().toString(millimetresFromMetres(at->reach95_m()), 'f', 1) : QStringLiteral("–");
      const QPointF middle = mapping().screenFromTable(place);
      painter.drawText(QRectF(middle - QPointF(40, 12), QSizeF(80, 24)), Qt::AlignCenter, words);
    }
  }
}

void ErrorMapView::paintScale(QPainter& painter) const {
  constexpr double kWidth_px = 150.0;
  constexpr double kHeight_px = 8.0;
  const QRectF bar(width() - kWidth_px - 56.0, 4.0, kWidth_px, kHeight_px);
  QLinearGradient ramp(bar.topLeft(), bar.topRight());
  for (int i = 0; i <= 4; ++i)
    ramp.setColorAt(i / 4.0, heatOf(i / 4.0));
  painter.fillRect(bar, ramp);
  painter.setPen(inks().text);
  painter.drawText(QPointF(bar.left() - 12.0, bar.bottom() + 1.0), QStringLiteral("0"));
  painter.drawText(QPointF(bar.right() + 5.0, bar.bottom() + 1.0),
                   tr("%1 mm").arg(locale().toString(millimetresFromMetres(most_m_), 'f', 0)));
}

void ErrorMapView::paintShot(QPainter& painter) const {
  const auto& [cue, object, mouth] = *shot_;
  const double radius_m = measured().balls.radius_m();
  const double radius = radius_m * mapping().scale();
  const TableVector toPocket = unit(mouth - object);
  const TablePoint ghost = object - 2.0 * radius_m * toPocket;
  const auto at = [&](TablePoint p) { return mapping().screenFromTable(p); };
  for (const auto& [width, colour] : {std::pair{3.5, QColor(255, 255, 255)}, std::pair{1.6, kFigure}}) {
    painter.setPen(QPen(colour, width, Qt::DashLine));
    painter.drawLine(at(cue), at(ghost));
    painter.drawLine(at(object), at(mouth));
  }
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(kFigure, 1.2, Qt::DashLine));
  painter.drawEllipse(at(ghost), radius, radius);
  painter.setPen(QPen(kFigure, 1.2));
  painter.setBrush(Qt::white);
  painter.drawEllipse(at(cue), radius, radius);
  const BallColour& three = measured().balls.colours[3];
  painter.setBrush(QColor(three.red, three.green, three.blue));
  painter.drawEllipse(at(object), radius, radius);
}

void ErrorMapView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintEmptyTable(painter);
  if (!map_) return;
  paintHeat(painter);
  paintScale(painter);
  if (shot_) paintShot(painter);
  const QPointF mark = mapping().screenFromTable(place_);
  for (const auto& [width, colour] : {std::pair{4.0, QColor(255, 255, 255)}, std::pair{1.8, kFigure}}) {
    painter.setPen(QPen(colour, width));
    painter.drawLine(mark - QPointF(9, 0), mark + QPointF(9, 0));
    painter.drawLine(mark - QPointF(0, 9), mark + QPointF(0, 9));
  }
  if (hasFocus()) {
    painter.setPen(QPen(inks().accent, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(mark, 13.0, 13.0);
  }
}

}  // namespace ferrule
