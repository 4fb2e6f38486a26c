// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <functional>
#include <memory>
#include <optional>

#include "app/film/film_pictures.h"
#include "app/window/inks.h"
#include "core/camera/rig.h"
#include "core/record/record_values.h"

/// The images of a clip of one shot. What is drawn over an image belongs to that image's own time. Painted on any
/// thread.
namespace ferrule {

using ClipImages = std::function<std::optional<QImage>(double time_s)>;

/// The film's own images. film: opened on the thread that paints.
[[nodiscard]] ClipImages filmImages(std::shared_ptr<FilmPictures> film);
/// The film's images with the ways of the shot over them. rig: the one it was measured with.
[[nodiscard]] ClipImages filmImagesWithWays(std::shared_ptr<FilmPictures> film, std::shared_ptr<const StoredShot> shot,
                                            const Rig& rig, const BallSet& balls, const Inks& inks);
/// The table from above: shows no person.
[[nodiscard]] ClipImages planImages(std::shared_ptr<const StoredShot> shot, const MeasuredTable& table,
                                    const Inks& inks, const QSize& size);

}  // namespace ferrule
