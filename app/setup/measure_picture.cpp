// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/measure_picture.h"

#include <QPainter>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kArrow_px = 7.0;
constexpr double kExampleSide_m = 0.080;

void paintArrow(QPainter& painter, QPointF from, QPointF to) {
  painter.drawLine(from, to);
  const double length = std::hypot(to.x() - from.x(), to.y() - from.y());
  if (length < 1.0) return;
  const QPointF way = (to - from) / length;
  const QPointF across(-way.y(), way.x());
  for (const auto& [tip, back] : {std::pair{to, -kArrow_px}, std::pair{from, kArrow_px}}) {
    painter.drawLine(tip, tip + back * way + 0.5 * kArrow_px * across);
    painter.drawLine(tip, tip + back * way - 0.5 * kArrow_px * across);
  }
}

/// Words on a plate, so that they read on every cloth.
void paintWords(QPainter& painter, const QString& words, QPointF middle, const Inks& inks) {
  QRectF plate = painter.fontMetrics().boundingRect(words).adjusted(-4, -2, 4, 2);
  plate.moveCenter(middle);
  painter.save();
  painter.setPen(Qt::NoPen);
  painter.setBrush(inks.panel);
  painter.drawRoundedRect(plate, 3.0, 3.0);
  painter.setPen(inks.text);
  painter.drawText(plate, Qt::AlignCenter, words);
  painter.restore();
}

/// One tag at each corner of the rails, top up.
std::vector<RailTag> exampleTags(const Table& table) {
  const double half_m = 0.5 * kExampleSide_m;
  const double x_m = 0.5 * table.length_m - 0.15;
  const double y_m = 0.5 * table.width_m + 0.5 * (table.cushionWidth_m + table.railWidth_m);
  std::vector<RailTag> tags;
  int id = 0;
  for (const TablePoint c :
       {TablePoint{-x_m, -y_m}, TablePoint{x_m, -y_m}, TablePoint{x_m, y_m}, TablePoint{-x_m, y_m}}) {
    RailTag tag;
    tag.id = id++;
    tag.corners = {TablePoint3{c.x - half_m, c.y + half_m, 0.0},
                   {c.x + half_m, c.y + half_m, 0.0},
                   {c.x + half_m, c.y - half_m, 0.0},
                   {c.x - half_m, c.y - half_m, 0.0}};
    tags.push_back(tag);
  }
  return tags;
}

}  // namespace

MeasurePicture::MeasurePicture(Shows shows, QWidget* parent) : PlanPicture(parent), shows_(shows) {
  setMinimumHeight(240);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(shows == Shows::Sides ? tr("Where to measure the table: from nose to nose, and both diagonals")
                                          : tr("Where to measure the tags: their corners from the table's middle"));
}

void MeasurePicture::setTags(const std::vector<RailTag>& tags) {
  tags_ = tags;
  update();
}

void MeasurePicture::paintSides(QPainter& painter) const {
  const double x_m = 0.5 * measured().table.length_m;
  const double y_m = 0.5 * measured().table.width_m;
  const auto at = [&](double x, double y) { return mapping().screenFromTable({x, y}); };
  const auto arrow = [&](QPointF from, QPointF to, bool dashed) {
    painter.setPen(QPen(inks().casing, 3.5));
    painter.drawLine(from, to);
    painter.setPen(QPen(inks().sight, 1.6, dashed ? Qt::DashLine : Qt::SolidLine));
    paintArrow(painter, from, to);
  };
  arrow(at(-x_m, -y_m), at(x_m, y_m), true);
  arrow(at(-x_m, y_m), at(x_m, -y_m), true);
  arrow(at(-x_m, 0.0), at(x_m, 0.0), false);
  arrow(at(0.25 * x_m, -y_m), at(0.25 * x_m, y_m), false);
  paintWords(painter, tr("length"), at(-0.55 * x_m, 0.0), inks());
  paintWords(painter, tr("width"), at(0.25 * x_m, 0.55 * y_m), inks());
  paintWords(painter, tr("diagonal A"), at(0.68 * x_m, 0.68 * y_m), inks());
  paintWords(painter, tr("diagonal B"), at(0.68 * x_m, -0.68 * y_m), inks());
  paintWords(painter, tr("head"), at(-0.9 * x_m, 0.35 * y_m), inks());
}

void MeasurePicture::paintTags(QPainter& painter) const {
  const std::vector<RailTag> shown = tags_.empty() ? exampleTags(measured().table) : tags_;
  const auto at = [&](double x, double y) { return mapping().screenFromTable({x, y}); };
  const QPointF middle = at(0.0, 0.0);
  const RailTag& first = shown.front();
  // From the middle along the table, then across, to the first corner of one tag.
  const QPointF corner = at(first.corners[0].x, first.corners[0].y);
  const QPointF bend = at(first.corners[0].x, 0.0);
  painter.setPen(QPen(inks().sight, 1.6));
  paintArrow(painter, middle, bend);
  paintArrow(painter, bend, corner);
  painter.setBrush(inks().sight);
  painter.drawEllipse(middle, 4.0, 4.0);
  for (const RailTag& tag : shown) {
    QPolygonF square;
    for (const TablePoint3& c : tag.corners)
      square << at(c.x, c.y);
    painter.setPen(QPen(inks().sight, 1.2));
    painter.setBrush(QColor(20, 20, 20));
    painter.drawPolygon(square);
    painter.setPen(Qt::white);
    painter.drawText(square.boundingRect(), Qt::AlignCenter, QString::number(tag.id));
    for (int i = 0; i < 4; ++i) {
      const QPointF out = square[i] - square.boundingRect().center();
      const QPointF place = square[i] + 9.0 * out / std::max(1.0, std::hypot(out.x(), out.y()));
      paintWords(painter, QString::number(i + 1), place, inks());
    }
  }
  paintWords(painter, tr("x"), 0.5 * (middle + bend), inks());
  paintWords(painter, tr("y"), 0.5 * (bend + corner), inks());
  paintWords(painter, tr("the table's middle"), middle + QPointF(0.0, 18.0), inks());
}

void MeasurePicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintEmptyTable(painter);
  shows_ == Shows::Sides ? paintSides(painter) : paintTags(painter);
}

}  // namespace ferrule
