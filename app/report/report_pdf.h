// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPageSize>
#include <string>

#include "app/report/report.h"
#include "core/base/error.h"

namespace ferrule {

/// Writes a report as PDF: fonts embedded, parts tagged in the order of reading, title, author "Ferrule", creator and
/// language set. Needs a QApplication, no
/// display. Errors: FileNotWritable.
[[nodiscard]] Result<void> writeReportPdf(const Report& report, QPageSize::PageSizeId paper, const std::string& path);

/// The letters of a text that no installed font has; they would print as boxes.
[[nodiscard]] QString lettersWithoutFont(const QString& text);

}  // namespace ferrule
