// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/photo_position.h"

#include <algorithm>

#include "core/camera/image_size_mismatch.h"
#include "core/camera/rig_file.h"
#include "core/measure/balls_seen.h"
#include "core/vision/ball_tracker.h"
#include "core/vision/film_source.h"

namespace ferrule {

namespace {

/// The tracker settles names over many images; a photo is shown to it as a film on which nothing moves. A second of it
/// is what it takes to call a new ball one.
constexpr int kLooks = 60;
constexpr double kBetweenLooks_s = 1.0 / 60.0;

}  // namespace

Result<PhotoPosition> positionInPhoto(const PhotoFiles& files, const JobControl& job) {
  const auto rig = readRigFile(files.rig);
  if (!rig) return tl::make_unexpected(rig.error());
  auto measured = measuredTableFrom(files.table);
  if (!measured) return tl::make_unexpected(measured.error());
  auto photo = FilmSource::open(files.photo);
  if (!photo) return tl::make_unexpected(photo.error());
  const ImageSize size = photo->info().size;
  if (size != rig->lens.size)
    return tl::make_unexpected(imageSizeMismatch(files.photo, size, files.rig, rig->lens.size));
  FilmImage image;
  if (!photo->next(image)) return failure(ErrorCode::FilmTruncated, files.photo);
  BallTracker tracker(*rig, *measured);
  std::vector<ImageReading> readings;
  for (int look = 0; look < kLooks; ++look) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    tracker.feed(image.picture, look, look * kBetweenLooks_s);
    std::ranges::move(tracker.take(), std::back_inserter(readings));
    job.reportShare(static_cast<double>(look + 1) / kLooks, "balls");
  }
  tracker.finish();
  std::ranges::move(tracker.take(), std::back_inserter(readings));
  PhotoPosition found{readings.empty() ? Position() : positionOf(readings.back()), std::move(*measured)};
  if (found.balls.empty()) return failure(ErrorCode::BallsNotFound, files.photo);
  return found;
}

}  // namespace ferrule
