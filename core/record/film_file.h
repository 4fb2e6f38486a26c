// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/record.h"

namespace ferrule {

/// The file in which the film of a frame that was seen live was kept, and its content's hash. An empty path: none was.
/// Errors: NotFound for a frame without a film, those of Record.
[[nodiscard]] Result<void> keepFilmFile(Record& record, FrameId frame, const std::string& path,
                                        const std::string& sha256);

}  // namespace ferrule
