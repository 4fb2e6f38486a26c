// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/ball_painter.h"

#include <QPainterPath>
#include <QRadialGradient>
#include <algorithm>

namespace ferrule {

namespace {

constexpr double kStripeHalf = 0.60;     ///< of the radius
constexpr double kNumberDisc = 0.56;     ///< of the radius
constexpr double kLeastNumber_px = 6.5;  ///< smaller balls bear no number: it could not be read

QColor colourOf(const BallSet& balls, BallName ball) {
  const BallColour& colour = balls.colours[static_cast<std::size_t>(ball.number())];
  return {colour.red, colour.green, colour.blue};
}

QColor whiteOf(const BallSet& balls) {
  return colourOf(balls, kCueBall);
}

void paintShadow(QPainter& painter, const QPointF& centre, double radius) {
  const QPointF at = centre + QPointF(radius * 0.12, radius * 0.18);
  QRadialGradient soft(at, radius * 1.25);
  soft.setColorAt(0.70, QColor(0, 0, 0, 90));
  soft.setColorAt(1.00, QColor(0, 0, 0, 0));
  painter.setPen(Qt::NoPen);
  painter.setBrush(soft);
  painter.drawEllipse(at, radius * 1.25, radius * 1.25);
}

void paintNumber(QPainter& painter, const BallSet& balls, BallName ball, const QPointF& centre, double radius) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(whiteOf(balls));
  painter.drawEllipse(centre, radius * kNumberDisc, radius * kNumberDisc);
  QFont font = painter.font();
  font.setPixelSize(std::max(1, static_cast<int>(radius * (ball.number() < 10 ? 0.92 : 0.74))));
  font.setWeight(QFont::Bold);
  font.setLetterSpacing(QFont::PercentageSpacing, ball.number() < 10 ? 100 : 92);
  painter.setFont(font);
  painter.setPen(QColor(0x16, 0x16, 0x18));
  const QRectF box(centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius);
  painter.drawText(box, Qt::AlignCenter, QString::number(ball.number()));
}

}  // namespace

void paintBall(QPainter& painter, const BallSet& balls, BallName ball, const QPointF& centre, double radius,
               const BallLook& look, const Inks& inks) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (look.seen) paintShadow(painter, centre, radius);
  if (!look.seen) painter.setOpacity(0.55);

  QPainterPath disc;
  disc.addEllipse(centre, radius, radius);
  painter.setPen(Qt::NoPen);
  painter.setBrush(ball.isStripe() ? whiteOf(balls) : colourOf(balls, ball));
  painter.drawPath(disc);
  if (ball.isStripe()) {
    QPainterPath band;
    band.addRect(
        QRectF(centre.x() - radius, centre.y() - kStripeHalf * radius, 2.0 * radius, 2.0 * kStripeHalf * radius));
    painter.setBrush(colourOf(balls, ball));
    painter.drawPath(disc.intersected(band));
  }
  if (!ball.isCueBall() && radius >= kLeastNumber_px) paintNumber(painter, balls, ball, centre, radius);

  QRadialGradient shade(centre - QPointF(radius * 0.35, radius * 0.4), radius * 1.5);
  shade.setColorAt(0.0, QColor(255, 255, 255, 70));
  shade.setColorAt(0.35, QColor(255, 255, 255, 0));
  shade.setColorAt(1.0, QColor(0, 0, 0, 95));
  painter.setPen(look.seen ? QPen(QColor(0, 0, 0, 110), 0.8) : QPen(QColor(0, 0, 0, 200), 1.0, Qt::DashLine));
  painter.setBrush(shade);
  painter.drawPath(disc);
  painter.restore();
  if (look.lit) paintRing(painter, centre, radius, inks);
}

void paintRing(QPainter& painter, const QPointF& centre, double radius, const Inks& inks, bool seen) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  const double ring = radius + 3.0;
  painter.setPen(QPen(inks.casing, 4.5));
  painter.drawEllipse(centre, ring, ring);
  painter.setPen(QPen(Qt::white, 2.0, seen ? Qt::SolidLine : Qt::DashLine));
  painter.drawEllipse(centre, ring, ring);
  painter.restore();
}

}  // namespace ferrule
