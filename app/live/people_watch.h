// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <memory>
#include <optional>
#include <utility>

#include "core/measure/image_follower.h"
#include "core/vision/lean_watch.h"

namespace ferrule {

/// Asks the images of a camera who leans over the table, as long as somebody wants to know, and under whatever rig they
/// were taken. Only its own thread may look.
class PeopleWatch {
 public:
  PeopleWatch(MeasuredTable table, std::shared_ptr<const std::atomic<bool>> wanted)
      : table_(std::move(table)), wanted_(std::move(wanted)) {}

  /// Whether somebody leans over the table; nothing while that is as it was, or nobody wants to know. time_s: rising.
  [[nodiscard]] std::optional<bool> look(const KeptPicture& kept, double time_s) {
    if (!*wanted_) {
      watch_.reset();
      return std::nullopt;
    }
    if (watch_ && time_s < last_s_ + ImageFollower::kPictureSpacing_s) return std::nullopt;
    last_s_ = time_s;
    if (!watch_ || watch_->rig() != kept.rig) watch_.emplace(kept.rig, table_);
    return watch_->look(kept.picture);
  }

 private:
  MeasuredTable table_;
  std::shared_ptr<const std::atomic<bool>> wanted_;
  std::optional<LeanWatch> watch_;
  double last_s_ = 0.0;
};

}  // namespace ferrule
