// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/camera_source.h"

#include <chrono>

#include "app/live/camera_picture.h"

namespace ferrule {

namespace {

/// Images that wait to be turned into pictures; more means that the computer is too slow, not that it has to wait.
constexpr std::size_t kMostSeen = 4;

/// By the camera's own clock where it tells it, else by the time of arrival.
double timeOf_s(const QVideoFrame& image) {
  if (image.startTime() >= 0) return static_cast<double>(image.startTime()) * 1e-6;
  const auto now = std::chrono::steady_clock::now().time_since_epoch();
  return std::chrono::duration<double>(now).count();
}

}  // namespace

CameraSource::CameraSource(const QCameraDevice& device, const QCameraFormat& format, QObject* parent)
    : LiveSource(parent), device_(device), camera_(device) {
  if (!format.isNull()) camera_.setCameraFormat(format);
  session_.setCamera(&camera_);
  session_.setVideoSink(&sink_);
  // On whatever thread the images come: nothing is done there but handing them on.
  connect(&sink_, &QVideoSink::videoFrameChanged, this, &CameraSource::take, Qt::DirectConnection);
  connect(&camera_, &QCamera::errorOccurred, this, [this](QCamera::Error error, const QString& reason) {
    if (error == QCamera::NoError) return;
    emit lost(tr("The camera %1 sends no images (%2). Look at its cable, whether another program uses it, and whether "
                 "this program may use cameras.")
                  .arg(name(), reason));
  });
  connect(&devices_, &QMediaDevices::videoInputsChanged, this, [this] {
    if (images_ && !QMediaDevices::videoInputs().contains(device_)) {
      emit lost(tr("The camera %1 is gone; what it saw until then is kept.").arg(name()));
    }
  });
}

CameraSource::~CameraSource() {
  CameraSource::stop();
}

void CameraSource::start(std::shared_ptr<ImageQueue> images) {
  images_ = std::move(images);
  thread_ = std::jthread([this](const std::stop_token& stop) { convert(stop); });
  camera_.start();
}

void CameraSource::stop() {
  camera_.stop();
  thread_ = {};  // stops and waits
  const std::scoped_lock lock(mutex_);
  seen_.clear();
  images_.reset();
}

void CameraSource::take(const QVideoFrame& image) {
  {
    const std::scoped_lock lock(mutex_);
    if (!images_) return;
    if (seen_.size() >= kMostSeen) {
      images_->countLost(1);
      return;
    }
    seen_.push_back({image, timeOf_s(image)});
  }
  came_.notify_one();
}

void CameraSource::convert(const std::stop_token& stop) {
  while (true) {
    Seen next;
    {
      std::unique_lock lock(mutex_);
      if (!came_.wait(lock, stop, [this] { return !seen_.empty(); })) return;
      next = std::move(seen_.front());
      seen_.pop_front();
    }
    cv::Mat picture = pictureOf(next.image);
    if (picture.empty()) {
      images_->countLost(1);
    } else {
      images_->offer(std::move(picture), next.time_s);
    }
  }
}

}  // namespace ferrule
