// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"

namespace ferrule {

/// One compressed image of a film as its container holds it.
struct ContainerImage {
  double time_s = 0.0;  ///< presentation time, on the container's own zero
  bool key = false;     ///< can be decoded without any image before it

  bool operator==(const ContainerImage&) const = default;
};

/// What a container says of the film inside it.
struct FilmContainer {
  int width = 0;            ///< px, before any turn
  int height = 0;           ///< px, before any turn
  int turn_deg = 0;         ///< clockwise turn that sets the picture upright: 0, 90, 180, 270
  double rate_hz = 0.0;     ///< guessed; 0 when unknown
  double duration_s = 0.0;  ///< claimed; 0 when unknown
  long images = 0;          ///< claimed; 0 when unknown
  /// When the camera says that it was filmed: UTC, ms since 1970. Cameras mean its start or its end.
  std::optional<std::int64_t> created_ms;
  /// Whether images may be held against the film: it comes from a list of the images, or at least from a duration that
  /// is not that of a longer sound.
  bool imagesAreFirm = false;
};

/// Opens a film's container without decoding pictures.
/// Errors: FileMissing, FileEmpty, FileUnreadable, NotAFilm, FilmWithoutPicture, FilmTruncated.
[[nodiscard]] Result<FilmContainer> readFilmContainer(const std::string& path);

/// The times of all images of a film in presentation order, in one cheap pass that decodes nothing. An image without a
/// time of its own takes its decoding time. Errors: as readFilmContainer.
[[nodiscard]] Result<std::vector<ContainerImage>> readContainerImages(const std::string& path);

}  // namespace ferrule
