// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/interrupt.h"

namespace ferrule {

Interrupt::Interrupt() {
  sigemptyset(&signals_);
  sigaddset(&signals_, SIGINT);
  sigaddset(&signals_, SIGTERM);
  sigaddset(&signals_, SIGHUP);
  pthread_sigmask(SIG_BLOCK, &signals_, &before_);
  watcher_ = std::jthread([this](const std::stop_token& ended) {
    constexpr timespec kPause{0, 100'000'000};
    while (!ended.stop_requested()) {
      if (sigtimedwait(&signals_, nullptr, &kPause) > 0) stop_.request_stop();
    }
  });
}

Interrupt::~Interrupt() {
  watcher_.request_stop();
  watcher_.join();
  pthread_sigmask(SIG_SETMASK, &before_, nullptr);
}

}  // namespace ferrule
