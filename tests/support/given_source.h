// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/live/live_source.h"

namespace ferrule {

/// A camera whose images a test hands over, one by one.
class GivenSource : public LiveSource {
 public:
  [[nodiscard]] QString name() const override { return QStringLiteral("given"); }
  void start(std::shared_ptr<ImageQueue> images) override { images_ = std::move(images); }
  void stop() override { images_.reset(); }

  [[nodiscard]] bool isRunning() const { return images_ != nullptr; }
  /// A picture of its own, a twenty-fifth of a second after the one before.
  void show(const cv::Mat& picture) {
    time_s_ += 0.04;
    if (images_) images_->offer(picture.clone(), time_s_);
  }
  [[nodiscard]] bool hasRoom() const { return images_ && images_->hasRoom(); }

 private:
  std::shared_ptr<ImageQueue> images_;
  double time_s_ = 0.0;
};

}  // namespace ferrule
