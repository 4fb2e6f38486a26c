// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/camera/camera_move.h"
#include "core/record/record.h"

/// Moves of the camera while a frame was filmed. They are kept with the frame's rig: that rig holds until the first
/// move, each move brings the one that holds after it.
namespace ferrule {

/// In place of what was kept of the frame's moves before. Nothing happens for a frame without a rig.
/// Errors: those of Record; NotFound.
[[nodiscard]] Result<void> keepMoves(Record& record, FrameId frame, std::span<const CameraMove> moves);

/// In order; empty for a camera that stood still. Errors: those of Record; NotFound; FieldInvalid.
[[nodiscard]] Result<std::vector<CameraMove>> movesOf(Record& record, FrameId frame);

}  // namespace ferrule
