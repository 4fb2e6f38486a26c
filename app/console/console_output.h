// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/base/error.h"
#include "core/base/progress.h"

namespace ferrule {

/// The two ways a command speaks. Results on standard output, all else on standard error, both in UTF-8.
void printResult(const QString& line);
void printNote(const QString& line);
/// The error's sentence on standard error; returns the exit status 1.
[[nodiscard]] int reportError(const Error& error);
/// A job control that writes a percentage to standard error, overwriting itself on a terminal.
[[nodiscard]] JobControl consoleJob();
/// "1 shot", "2 shots"; thing takes a plain s.
[[nodiscard]] QString counted(long count, const char* thing);

}  // namespace ferrule
