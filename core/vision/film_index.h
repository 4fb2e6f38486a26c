// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/vision/film_source.h"

namespace ferrule {

/// Any image of a film by its number, exact to the image, for looking at a film back and forth. One owner thread.
///
/// Opening reads the container's times once and decodes one image. After that an image that lies ahead within one group
/// of pictures costs its decoding, one elsewhere the decoding from the key image before it; images that were passed on
/// the way are kept, so that single steps back are quick. The reader's own idea of where it landed after a jump is
/// never believed: the image's time is looked up in the table (seeking by number is wrong for variable rates).
class FilmIndex {
 public:
  /// Errors: as FilmSource::open.
  [[nodiscard]] static Result<FilmIndex> open(const std::string& path);
  ~FilmIndex();
  FilmIndex(FilmIndex&&) noexcept;
  FilmIndex& operator=(FilmIndex&&) noexcept;

  [[nodiscard]] const FilmInfo& info() const;
  /// How many images there are; images of a damaged tail may be counted that do not decode.
  [[nodiscard]] long size() const;
  /// The images' presentation times, s, from the first image; as FilmSource gives them, but exact to the
  /// last image.
  [[nodiscard]] const std::vector<double>& times_s() const;
  /// The image that is shown at a time: the last one not later, within a tenth of a millisecond. Clamped to the film.
  [[nodiscard]] long numberAt(double time_s) const;

  /// Image number (0 to size() - 1). image.picture is shared with the cache: clone it before drawing into it.
  /// False when it does not decode.
  bool imageAt(long number, FilmImage& image);

 private:
  class Impl;
  explicit FilmIndex(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
