// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/shot_painter.h"

#include <QPainterPath>
#include <QPolygonF>
#include <algorithm>

namespace ferrule {

namespace {

/// Balls that moved less than this did not take part; above the noise of a resting ball.
constexpr double kMoved_m = 0.006;
/// Samples closer than this add nothing to a line.
constexpr double kLeastStep_m = 0.0015;
/// 95 % of a normal law lies within so many standard uncertainties. Source: JCGM 100:2008, table G.1.
constexpr double kCoverage = 1.96;

constexpr double kCueLine_px = 3.0;
constexpr double kBallLine_px = 2.0;
constexpr double kContact_px = 4.0;
constexpr double kRestLine_px = 1.6;
/// Dark on both sides of a line, together: less than this is lost on a bright cloth (contrast_test.cpp).
constexpr double kCasing_px = 3.2;

struct Step {
  TablePoint position;
  double standardUncertainty_m = 0.0;
  bool seen = true;
};

/// The way without the samples of rest and noise.
std::vector<Step> wayOf(const Track& track) {
  std::vector<Step> way;
  for (const TrackSample& sample : track.samples) {
    if (!way.empty() && distance(way.back().position, sample.position) < kLeastStep_m) continue;
    way.push_back({sample.position, sample.standardUncertainty_m, sample.seen});
  }
  return way;
}

bool hasMoved(const Track& track) {
  if (track.samples.empty()) return false;
  const TablePoint start = track.samples.front().position;
  return std::ranges::any_of(
      track.samples, [start](const TrackSample& sample) { return distance(start, sample.position) > kMoved_m; });
}

class ShotPainter {
 public:
  ShotPainter(QPainter& painter, const ScreenFromTable& screenFromTable,
              const std::function<double(TablePoint)>& scaleAt, const Inks& inks)
      : painter_(painter), screenFromTable_(screenFromTable), scaleAt_(scaleAt), inks_(inks) {}

  void band(const std::vector<Step>& way, double line_px) {
    QPainterPath area;
    area.setFillRule(Qt::WindingFill);
    for (std::size_t i = 1; i < way.size(); ++i) {
      const auto a = screenFromTable_(way[i - 1].position);
      const auto b = screenFromTable_(way[i].position);
      if (!a || !b) continue;
      const double half = kCoverage * way[i].standardUncertainty_m * scaleAt_(way[i].position);
      if (2.0 * half <= line_px + 2.0) continue;
      area.addEllipse(*b, half, half);
      const QPointF along = *b - *a;
      const double length_px = std::hypot(along.x(), along.y());
      if (length_px <= 0.0) continue;
      const QPointF across(-along.y() / length_px * half, along.x() / length_px * half);
      area.addPolygon(QPolygonF({*a + across, *b + across, *b - across, *a - across, *a + across}));
    }
    QColor colour = inks_.taken;
    colour.setAlpha(60);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(colour);
    painter_.drawPath(area.simplified());
  }

  void line(const std::vector<Step>& way, double width_px, bool lit) {
    QPainterPath seen;
    QPainterPath hidden;
    for (std::size_t i = 1; i < way.size(); ++i) {
      const auto a = screenFromTable_(way[i - 1].position);
      const auto b = screenFromTable_(way[i].position);
      if (!a || !b) continue;
      QPainterPath& path = way[i].seen && way[i - 1].seen ? seen : hidden;
      if (path.isEmpty() || path.currentPosition() != *a) path.moveTo(*a);
      path.lineTo(*b);
    }
    painter_.setBrush(Qt::NoBrush);
    const double width = lit ? width_px + 1.5 : width_px;
    painter_.setPen(QPen(inks_.casing, width + kCasing_px, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter_.drawPath(seen);
    painter_.setPen(QPen(inks_.taken, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter_.drawPath(seen);
    for (const auto& [colour, extra] : {std::pair{inks_.casing, 1.6}, std::pair{inks_.taken, 0.0}}) {
      QPen dots(colour, width * 0.8 + extra, Qt::CustomDashLine, Qt::RoundCap);
      const double unit = width * 0.8 + extra;
      dots.setDashPattern({0.01 / unit, 7.0 / unit});
      painter_.setPen(dots);
      painter_.drawPath(hidden);
    }
  }

  void rest(TablePoint position, double radius_m, double standardUncertainty_m) {
    const auto at = screenFromTable_(position);
    if (!at) return;
    const double scale = scaleAt_(position);
    QColor colour = inks_.taken;
    colour.setAlpha(70);
    const double radius = std::max(radius_m, kCoverage * standardUncertainty_m) * scale;
    painter_.setBrush(colour);
    painter_.setPen(QPen(inks_.casing, kRestLine_px + kCasing_px));
    painter_.drawEllipse(*at, radius, radius);
    painter_.setBrush(Qt::NoBrush);
    painter_.setPen(QPen(inks_.taken, kRestLine_px));
    painter_.drawEllipse(*at, radius, radius);
  }

  void contact(TablePoint position) {
    const auto at = screenFromTable_(position);
    if (!at) return;
    painter_.setPen(QPen(inks_.casing, 2.2));
    painter_.setBrush(inks_.taken);
    painter_.drawEllipse(*at, kContact_px, kContact_px);
  }

 private:
  QPainter& painter_;
  const ScreenFromTable& screenFromTable_;
  const std::function<double(TablePoint)>& scaleAt_;
  const Inks& inks_;
};

}  // namespace

void paintShot(QPainter& painter, const StoredShot& shot, const ScreenFromTable& screenFromTable,
               const std::function<double(TablePoint)>& scaleAt, double ballRadius_m, std::optional<BallName> lit,
               const Inks& inks) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  ShotPainter picture(painter, screenFromTable, scaleAt, inks);
  for (const Track& track : shot.tracks) {
    if (!hasMoved(track)) continue;
    const BallAt* rests = ballIn(shot.reading.after, track.ball);
    if (rests == nullptr) continue;
    picture.rest(rests->position, ballRadius_m, track.samples.back().standardUncertainty_m);
  }
  // Object balls first: the cue ball's way stays on top.
  for (const bool cueBall : {false, true}) {
    for (const Track& track : shot.tracks) {
      if (track.ball.isCueBall() != cueBall || !hasMoved(track)) continue;
      const std::vector<Step> way = wayOf(track);
      const double width_px = cueBall ? kCueLine_px : kBallLine_px;
      picture.band(way, width_px);
      picture.line(way, width_px, lit == track.ball);
    }
  }
  for (const ShotEvent& event : shot.reading.events)
    picture.contact(event.position);
  painter.restore();
}

}  // namespace ferrule
