// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <csignal>
#include <stop_token>
#include <thread>

namespace ferrule {

/// Turns Ctrl-C and a polite kill into a stop token, so that a job ends in order: temporary files go, committed shots
/// stay. To be made before any other thread, since threads inherit which signals they leave alone.
class Interrupt {
 public:
  Interrupt();
  ~Interrupt();
  Interrupt(const Interrupt&) = delete;
  Interrupt& operator=(const Interrupt&) = delete;

  [[nodiscard]] std::stop_token token() const { return stop_.get_token(); }

 private:
  sigset_t signals_{};
  sigset_t before_{};
  std::stop_source stop_;
  std::jthread watcher_;
};

}  // namespace ferrule
