// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/base/error.h"

namespace ferrule {

/// One image of a film as it is shown, with its own time: the overlay is drawn for this time, never for another.
struct FilmPicture {
  QImage picture;
  long number = 0;      ///< from 0
  double time_s = 0.0;  ///< from the film's first image
};

/// Any image of a film, exactly. Belongs to the thread that opened it.
class FilmPictures {
 public:
  virtual ~FilmPictures() = default;

  /// The time of every image, rising.
  [[nodiscard]] virtual const std::vector<double>& times() const = 0;
  /// Nothing past the end.
  [[nodiscard]] virtual std::optional<FilmPicture> picture(long number) = 0;
};

/// Opens a film on the thread that calls it, giving up as Cancelled soon after a stop is asked for.
using FilmOpener = std::function<Result<std::unique_ptr<FilmPictures>>(const std::string& path, std::stop_token stop)>;

}  // namespace ferrule
