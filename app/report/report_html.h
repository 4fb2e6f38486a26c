// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "app/report/report.h"
#include "core/base/error.h"

namespace ferrule {

/// The report as one HTML file that needs no other: charts are pictures in it (SVG). Needs a QApplication.
[[nodiscard]] QString reportHtml(const Report& report);
/// Errors: FileNotWritable.
[[nodiscard]] Result<void> writeReportHtml(const Report& report, const std::string& path);

}  // namespace ferrule
