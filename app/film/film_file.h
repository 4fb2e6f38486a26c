// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/film/film_pictures.h"

namespace ferrule {

/// A film file as pictures for the screen.
[[nodiscard]] Result<std::unique_ptr<FilmPictures>> openFilmFile(const std::string& path, std::stop_token stop);

}  // namespace ferrule
