// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/paced_film.h"

#include <QFileInfo>
#include <chrono>
#include <condition_variable>

#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

using Clock = std::chrono::steady_clock;

/// Looks this often whether the queue has room again.
constexpr std::chrono::milliseconds kLook{2};

/// False when a stop came first.
bool waitUntil(Clock::time_point time, const std::stop_token& stop) {
  std::mutex mutex;
  std::condition_variable_any never;
  std::unique_lock lock(mutex);
  never.wait_until(lock, stop, time, [] { return false; });
  return !stop.stop_requested();
}

}  // namespace

PacedFilm::PacedFilm(const QString& path, FilmPace pace, QObject* parent)
    : LiveSource(parent), path_(path), pace_(pace) {}

PacedFilm::~PacedFilm() {
  PacedFilm::stop();
}

QString PacedFilm::name() const {
  return QFileInfo(path_).fileName();
}

void PacedFilm::start(std::shared_ptr<ImageQueue> images) {
  stop();
  thread_ = std::jthread([this, images = std::move(images)](const std::stop_token& stop) { play(stop, *images); });
}

void PacedFilm::stop() {
  thread_ = {};  // stops and waits
}

void PacedFilm::play(const std::stop_token& stop, ImageQueue& images) {
  auto film = FilmSource::open(path_.toStdString());
  if (!film) {
    emit lost(errorSentence(film.error()));
    return;
  }
  const Clock::time_point start = Clock::now();
  // Each picture is a new one: the queue keeps it.
  for (FilmImage image; film->next(image); image = {}) {
    if (pace_ == FilmPace::Own) {
      const auto due = start + std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(image.time_s));
      if (!waitUntil(due, stop)) return;
    } else {
      while (!images.hasRoom()) {
        if (!waitUntil(Clock::now() + kLook, stop)) return;
      }
    }
    if (stop.stop_requested()) return;
    images.offer(std::move(image.picture), image.time_s);
  }
  emit ended();
}

}  // namespace ferrule
