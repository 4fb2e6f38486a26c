// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/review/correction_service.h"
#include "app/words/numbers.h"

/// Corrections in the user's language.
namespace ferrule {

/// What a saying is about: "result", "ball and pocket".
[[nodiscard]] QString sayingWords(const ShotSaying& saying);
/// "note", "tag".
[[nodiscard]] QString remarkWords(const Remark& remark);
/// One sentence: what cannot be said, and what to do.
[[nodiscard]] QString notSaidSentence(NotSaid why);

/// A correction that a person made, as the panel lists it.
struct CorrectionLine {
  CorrectionId id;
  QString words;  ///< "Result: measured made, corrected to missed"
  QString by;     ///< "Nerea, 3 May 2026 10:12"
};

/// What people corrected of a shot, oldest first; what followed from it is left out.
[[nodiscard]] std::vector<CorrectionLine> correctionLines(const StoredShot& shot, const Numbers& numbers);
/// What was corrected of a shot, in short: "result, ball"; empty when nothing was.
[[nodiscard]] QString correctedWords(const StoredShot& shot);

}  // namespace ferrule
