// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>

#include "app/live/live_source.h"
#include "app/window/background_job.h"
#include "core/vision/board_stills.h"

namespace ferrule {

/// A camera's image with what it shows of the board.
struct LiveStill {
  cv::Mat picture;   ///< 8-bit BGR, written to by nobody
  BoardStill still;  ///< without a file; fate: by itself alone
};

/// Looks for a board in the images of a camera, or of a film that stands in for one, as fast as that goes: images that
/// come meanwhile are passed over. Keeps nothing.
class StillWatch : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;
  ~StillWatch() override;

  /// What was watched before ends.
  void start(const Board& board, std::shared_ptr<LiveSource> source);
  void stop();
  [[nodiscard]] bool isRunning() const { return source_ != nullptr; }

 signals:
  void runningChanged();
  void seen(const std::shared_ptr<const ferrule::LiveStill>& image);
  void said(const QString& sentence);

 private:
  std::shared_ptr<LiveSource> source_;  ///< null while nothing is watched
  std::shared_ptr<ImageQueue> images_;
  BackgroundJob job_;  ///< last: its thread ends before what it tells is gone
};

}  // namespace ferrule
