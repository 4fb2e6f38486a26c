// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <stop_token>
#include <string_view>

namespace ferrule {

/// How far long work has come. Called on the worker's thread; must be cheap.
/// share: 0 to 1, negative when unknown. step: a stable English key such as "measuring", for the app to translate.
using ProgressReport = std::function<void(double share, std::string_view step)>;

/// What every long job is handed: where to report, and when to stop.
struct JobControl {
  ProgressReport report;  ///< may be empty
  std::stop_token stop;

  void reportShare(double share, std::string_view step) const {
    if (report) report(share, step);
  }
};

}  // namespace ferrule
