// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/words/numbers.h"
#include "core/measure/film_keeper.h"
#include "core/measure/film_permission.h"

/// The film that is kept beside a live session, in words.
namespace ferrule {

/// Why no film may be kept, in one sentence. permission: one that was not granted.
[[nodiscard]] QString noFilmWords(const FilmPermission& permission);
/// Why no film could be kept.
[[nodiscard]] QString noFilmWords(const Error& error);
/// "Filming: 1204 images, none dropped".
[[nodiscard]] QString filmCountWords(const FilmKeeper::Counts& counts, const Numbers& numbers);

}  // namespace ferrule
