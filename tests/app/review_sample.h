// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/film/film_pictures.h"
#include "app/review/review_source.h"

namespace ferrule {

/// An invented session: one frame of three shots on a nine-foot table (a pot of the 3, a miss of the 12, a safety off
/// the 8) and a second frame of one break. Images are 1/60 s apart; shot n of the first frame is struck at 10 n s.
[[nodiscard]] SessionSummary sampleSession();
[[nodiscard]] SessionContent sampleContent();
/// number: 1 to 4, counted through both frames.
[[nodiscard]] StoredShot sampleShot(int number);
/// A camera straight above the middle of the table: 1280 x 720, 400 px a metre at the height of a ball's centre.
[[nodiscard]] Rig sampleRig();

/// Serves the sample; fails for any path but "sample".
[[nodiscard]] ReviewSourceOpener sampleOpener();
/// A film of 3000 images 1/60 s apart whose red and green channels spell the image's number; path "sample-film". Fails
/// as missing for any other path.
[[nodiscard]] FilmOpener sampleFilmOpener();
/// The number that an image of the sample film spells.
[[nodiscard]] long spelledNumber(const QImage& picture);

}  // namespace ferrule
