// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/still_watch.h"

#include <functional>
#include <opencv2/imgproc.hpp>
#include <utility>

namespace ferrule {

namespace {

/// Until the images end. True: nothing can go wrong with images alone.
bool watch(const Board& board, ImageQueue& images, const std::stop_token& stop,
           const std::function<void(std::shared_ptr<const LiveStill>)>& tell) {
  while (auto image = images.next(stop)) {
    // Only the newest is worth looking at: a person holds the board to what the screen shows.
    if (images.counts().waiting > 0) continue;
    cv::Mat grey;
    cv::cvtColor(image->picture, grey, cv::COLOR_BGR2GRAY);
    BoardStill still = lookAtStill(board, grey, {});
    tell(std::make_shared<const LiveStill>(LiveStill{std::move(image->picture), std::move(still)}));
  }
  return true;
}

}  // namespace

StillWatch::~StillWatch() {
  // Whoever listens may be half gone.
  blockSignals(true);
  StillWatch::stop();
}

void StillWatch::start(const Board& board, std::shared_ptr<LiveSource> source) {
  stop();
  source_ = std::move(source);
  images_ = std::make_shared<ImageQueue>();
  connect(source_.get(), &LiveSource::ended, this, &StillWatch::stop);
  connect(source_.get(), &LiveSource::lost, this, [this](const QString& sentence) {
    stop();
    emit said(sentence);
  });
  job_.start<bool>(
      [this, board, images = images_](const JobControl& job) {
        return watch(board, *images, job.stop, [this, images](std::shared_ptr<const LiveStill> image) {
          QMetaObject::invokeMethod(
              this,
              [this, images, image = std::move(image)] {
                if (images == images_) emit seen(image);
              },
              Qt::QueuedConnection);
        });
      },
      [](bool) {});
  source_->start(images_);
  emit runningChanged();
}

void StillWatch::stop() {
  if (!source_) return;
  source_->stop();
  images_->close();
  source_->disconnect(this);
  // It may be the source that called.
  QMetaObject::invokeMethod(
      this, [source = std::exchange(source_, nullptr)] {}, Qt::QueuedConnection);
  emit runningChanged();
}

}  // namespace ferrule
