// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/clip_images.h"

#include <QPainter>
#include <algorithm>

#include "app/picture/ball_painter.h"
#include "app/picture/film_projection.h"
#include "app/picture/plan_mapping.h"
#include "app/picture/shot_painter.h"
#include "app/picture/table_painter.h"
#include "app/review/moment.h"

namespace ferrule {

namespace {

constexpr double kMargin_px = 24.0;
/// Times that differ by less are of one image.
constexpr double kSameTime_s = 0.0005;

/// The image that is shown at a time: the last one not later.
std::optional<FilmPicture> pictureAt(FilmPictures& film, double time_s) {
  const std::vector<double>& times_s = film.times();
  if (times_s.empty()) return std::nullopt;
  const auto after = std::ranges::upper_bound(times_s, time_s + kSameTime_s);
  const long number = after == times_s.begin() ? 0 : static_cast<long>(after - times_s.begin()) - 1;
  return film.picture(number);
}

}  // namespace

ClipImages filmImages(std::shared_ptr<FilmPictures> film) {
  return [film = std::move(film)](double time_s) -> std::optional<QImage> {
    const auto picture = pictureAt(*film, time_s);
    return picture ? std::optional(picture->picture) : std::nullopt;
  };
}

ClipImages filmImagesWithWays(std::shared_ptr<FilmPictures> film, std::shared_ptr<const StoredShot> shot,
                              const Rig& rig, const BallSet& balls, const Inks& inks) {
  return [film = std::move(film), shot = std::move(shot), rig, radius_m = balls.radius_m(),
          inks](double time_s) -> std::optional<QImage> {
    const auto picture = pictureAt(*film, time_s);
    if (!picture) return std::nullopt;
    QImage image = picture->picture.convertToFormat(QImage::Format_RGB32);
    QPainter painter(&image);
    const FilmProjection projection{rig, QRectF(image.rect()), image.size(), radius_m};
    paintShot(
        painter, *shot, [&](TablePoint point) { return projection.screenFromTable(point); },
        [&](TablePoint point) { return projection.scaleAt(point); }, radius_m, std::nullopt, inks);
    painter.end();
    return image;
  };
}

ClipImages planImages(std::shared_ptr<const StoredShot> shot, const MeasuredTable& table, const Inks& inks,
                      const QSize& size) {
  const QRectF space = QRectF(QPointF(), QSizeF(size)).adjusted(kMargin_px, kMargin_px, -kMargin_px, -kMargin_px);
  const bool portrait = PlanMapping::fitsPortrait(table.table, space.size());
  QRectF content(QPointF(), PlanMapping::outerSize_m(table.table, portrait).scaled(space.size(), Qt::KeepAspectRatio));
  content.moveCenter(space.center());
  const PlanMapping mapping(table.table, content, portrait);
  QImage empty(size, QImage::Format_RGB32);
  empty.fill(inks.page);
  {
    QPainter once(&empty);
    paintTable(once, table.table, mapping, inks);
  }
  return [shot = std::move(shot), balls = table.balls, mapping, empty, inks](double time_s) -> std::optional<QImage> {
    QImage image = empty;
    QPainter painter(&image);
    const double radius_m = balls.radius_m();
    paintShot(
        painter, *shot, [&](TablePoint point) { return std::optional(mapping.screenFromTable(point)); },
        [&](TablePoint) { return mapping.scale(); }, radius_m, std::nullopt, inks);
    for (const BallNow& ball : ballsAt(*shot, time_s)) {
      paintBall(painter, balls, ball.ball, mapping.screenFromTable(ball.position), radius_m * mapping.scale(),
                {false, ball.seen}, inks);
    }
    painter.end();
    return image;
  };
}

}  // namespace ferrule
