// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/playhead.h"

#include <algorithm>

namespace ferrule {

namespace {

/// How often the clock looks: finer than any usual film's images.
constexpr int kTick_ms = 8;

}  // namespace

Playhead::Playhead(QObject* parent) : QObject(parent) {
  timer_.setTimerType(Qt::PreciseTimer);
  timer_.setInterval(kTick_ms);
  connect(&timer_, &QTimer::timeout, this, &Playhead::tick);
}

void Playhead::setTimes(std::vector<double> times_s) {
  const double kept_s = time_s();
  times_s_ = std::move(times_s);
  index_ = indexNear(kept_s);
  if (isEmpty()) {
    pause();
    return;
  }
  if (isPlaying()) {
    clock_s_ = std::max(clock_s_, times_s_.front());
  } else {
    clock_s_ = time_s();
  }
  emit moved(time_s());
}

double Playhead::time_s() const {
  return isEmpty() ? 0.0 : times_s_[static_cast<std::size_t>(index_)];
}

double Playhead::spacing_s() const {
  if (times_s_.size() < 2) return 0.0;
  const auto next = static_cast<std::size_t>(std::clamp(index_ + 1, 1, static_cast<int>(times_s_.size()) - 1));
  return times_s_[next] - times_s_[next - 1];
}

int Playhead::indexNear(double time_s) const {
  if (isEmpty()) return 0;
  const auto after = std::ranges::lower_bound(times_s_, time_s);
  if (after == times_s_.begin()) return 0;
  const auto index = static_cast<int>(after - times_s_.begin());
  if (after == times_s_.end()) return index - 1;
  return *after - time_s < time_s - *(after - 1) ? index : index - 1;
}

void Playhead::seek(double time_s) {
  if (isEmpty()) return;
  moveTo(indexNear(time_s));
  clock_s_ = this->time_s();
  elapsed_.restart();
}

void Playhead::step(int images) {
  if (isEmpty()) return;
  pause();
  moveTo(std::clamp(index_ + images, 0, static_cast<int>(times_s_.size()) - 1));
  clock_s_ = time_s();
}

void Playhead::play() {
  if (isEmpty() || isPlaying()) return;
  if (index_ + 1 >= static_cast<int>(times_s_.size())) moveTo(0);
  clock_s_ = time_s();
  elapsed_.start();
  timer_.start();
  emit playingChanged(true);
}

void Playhead::pause() {
  if (!isPlaying()) return;
  timer_.stop();
  emit playingChanged(false);
}

void Playhead::toggle() {
  if (isPlaying()) {
    pause();
  } else {
    play();
  }
}

void Playhead::advance(double elapsed_s) {
  if (isEmpty()) return;
  clock_s_ += elapsed_s;
  const auto after = std::ranges::upper_bound(times_s_, clock_s_);
  moveTo(after == times_s_.begin() ? 0 : static_cast<int>(after - times_s_.begin()) - 1);
  if (index_ + 1 >= static_cast<int>(times_s_.size())) pause();
}

void Playhead::tick() {
  advance(static_cast<double>(elapsed_.nsecsElapsed()) * 1e-9);
  elapsed_.restart();
}

void Playhead::moveTo(int index) {
  if (index == index_) return;
  index_ = index;
  emit moved(time_s());
}

}  // namespace ferrule
