// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/background_job.h"

#include <chrono>

namespace ferrule {

namespace {

/// The eye sees no more.
constexpr std::chrono::milliseconds kBetweenReports{60};

}  // namespace

BackgroundJob::~BackgroundJob() {
  ++round_;
}

void BackgroundJob::begin(std::function<void(const JobControl&, long)> work) {
  thread_ = {};  // stops and waits for what was there
  const long round = ++round_;
  running_ = true;
  emit runningChanged();
  thread_ = std::jthread([this, round, work = std::move(work)](const std::stop_token& stop) {
    JobControl job;
    job.stop = stop;
    std::chrono::steady_clock::time_point last;
    job.report = [this, round, &last](double share, std::string_view step) {
      const auto now = std::chrono::steady_clock::now();
      if (now - last < kBetweenReports) return;
      last = now;
      QMetaObject::invokeMethod(
          this,
          [this, round, share, words = QString::fromUtf8(step.data(), static_cast<qsizetype>(step.size()))] {
            if (round == round_ && running_) emit progressed(share, words);
          },
          Qt::QueuedConnection);
    };
    work(job, round);
  });
}

bool BackgroundJob::finish(long round) {
  if (round != round_) return false;
  running_ = false;
  emit runningChanged();
  return true;
}

void BackgroundJob::cancel() {
  thread_.request_stop();
}

}  // namespace ferrule
