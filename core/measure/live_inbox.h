// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <mutex>
#include <utility>
#include <vector>

#include "core/measure/measure.h"

namespace ferrule {

/// A suggestion that somebody saw while a session ran.
struct SuggestionShown {
  double time_s = 0.0;  ///< of the image that it was made for
  SuggestionEntry suggestion;

  bool operator==(const SuggestionShown&) const = default;
};

/// What people do beside a session while it is measured, on its way to the thread that measures. Anyone may put
/// something in; one thread takes it out.
class LiveInbox {
 public:
  void put(SuggestionShown shown) {
    const std::scoped_lock lock(mutex_);
    shown_.push_back(std::move(shown));
  }
  [[nodiscard]] std::vector<SuggestionShown> takeShown() {
    const std::scoped_lock lock(mutex_);
    return std::exchange(shown_, {});
  }
  void put(SaidOfRecorded said) {
    const std::scoped_lock lock(mutex_);
    said_.push_back(std::move(said));
  }
  [[nodiscard]] std::vector<SaidOfRecorded> takeSaid() {
    const std::scoped_lock lock(mutex_);
    return std::exchange(said_, {});
  }

 private:
  std::mutex mutex_;
  std::vector<SaidOfRecorded> said_;
  std::vector<SuggestionShown> shown_;
};

}  // namespace ferrule
