// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QStringList>

#include "core/record/erase_player.h"

namespace ferrule {

class EraseWords {
  Q_DECLARE_TR_FUNCTIONS(EraseWords)
};

/// Lines under a heading.
struct EraseSection {
  QString heading;
  QStringList lines;
};

/// What erasing a person means, in words: what goes, whose texts lose the name, which films and copies are named, what
/// stays. The window and the command line both show this.
[[nodiscard]] std::vector<EraseSection> erasePreviewWords(const ErasePreview& preview);
/// What the record's files still hold of an erased name (EraseReport::namesLeft), one sentence.
[[nodiscard]] QString namesLeftWords(const std::optional<long>& namesLeft);
/// What was done, one sentence a line.
[[nodiscard]] QStringList eraseReportWords(const EraseReport& report);

}  // namespace ferrule
