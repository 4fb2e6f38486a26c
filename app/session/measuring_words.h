// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/session/measured_values.h"
#include "app/words/numbers.h"
#include "app/words/ruling_words.h"
#include "core/camera/check_file.h"
#include "core/measure/film_in_record.h"
#include "core/measure/measure.h"

/// What a session says while it is measured from a film or a camera, and afterwards.
namespace ferrule {

/// "about 3 minutes left"; empty while nobody can tell. share: of the work that took elapsed_s so far, 0 to 1.
[[nodiscard]] QString remainingWords(double elapsed_s, double share);
/// One line under the progress bar: "Image 1,204, 35 %; about 3 minutes left". step: core's key. images: seen so far.
[[nodiscard]] QString measuringWords(const QString& step, long images, double share, double elapsed_s,
                                     const Numbers& numbers);
/// What a list says of a shot: "4  3 to foot-left, made", then aim and speed, then the ruling, a line each.
[[nodiscard]] QString measuredShotWords(const MeasuredShot& shot, const SeatNames& names, const Numbers& numbers);
/// What came of a film that was measured to its end.
[[nodiscard]] QString measuredFilmWords(const MeasureReport& report, const Numbers& numbers);
/// What remains of a film that was stopped on the way.
/// What does not belong together, with its cure and what it costs as it is.
[[nodiscard]] QString misfitWords(const SelfCheck& check, const CheckNames& names, const Numbers& numbers);
[[nodiscard]] QString stoppedFilmWords(const QString& session, int shots);
/// Where a film was measured before, and what may be done now.
[[nodiscard]] QString knownFilmWords(const FilmInRecord& known);

/// The names of the players of a session, by seat.
[[nodiscard]] SeatNames seatNamesOf(const std::vector<std::string>& players);

}  // namespace ferrule
