// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/camera_move.h"
#include "core/record/record_values.h"

namespace ferrule {

/// A frame with its shots and the balls that were put down by hand.
struct FrameContent {
  FrameSummary frame;
  std::vector<ShotSummary> shots;
  std::vector<Placement> placements;
  std::optional<Rig> rig;         ///< nothing when the frame was put in by hand
  std::vector<CameraMove> moves;  ///< after each of which its own rig holds
};

/// One session, everything but the tracks.
struct SessionContent {
  SessionSummary session;
  std::vector<FrameContent> frames;
  MeasuredTable table;
  std::vector<std::string> tags;  ///< of all shots of the record, each once
};

/// What the Review place needs of a record. Lives on the reader's thread.
class ReviewSource {
 public:
  virtual ~ReviewSource() = default;

  /// Newest first.
  [[nodiscard]] virtual Result<std::vector<SessionSummary>> sessions() = 0;
  [[nodiscard]] virtual Result<SessionContent> content(const SessionSummary& session) = 0;
  [[nodiscard]] virtual Result<StoredShot> shot(ShotId shot) = 0;
};

/// Opens a source on the thread that calls it.
using ReviewSourceOpener = std::function<Result<std::unique_ptr<ReviewSource>>(const std::string& path)>;

}  // namespace ferrule
