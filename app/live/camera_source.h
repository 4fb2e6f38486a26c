// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCamera>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QVideoFrame>
#include <QVideoSink>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

#include "app/live/live_source.h"

namespace ferrule {

/// A camera of this computer. Its images are turned into pictures on a thread of their own.
class CameraSource : public LiveSource {
  Q_OBJECT
 public:
  CameraSource(const QCameraDevice& device, const QCameraFormat& format, QObject* parent = nullptr);
  ~CameraSource() override;

  [[nodiscard]] QString name() const override { return device_.description(); }
  void start(std::shared_ptr<ImageQueue> images) override;
  void stop() override;

 private:
  struct Seen {
    QVideoFrame image;
    double time_s = 0.0;
  };

  void take(const QVideoFrame& image);
  void convert(const std::stop_token& stop);

  QCameraDevice device_;
  QMediaDevices devices_;
  QCamera camera_;
  QVideoSink sink_;
  QMediaCaptureSession session_;
  std::shared_ptr<ImageQueue> images_;
  std::mutex mutex_;
  std::condition_variable_any came_;
  std::deque<Seen> seen_;  ///< not yet turned into pictures
  std::jthread thread_;
};

}  // namespace ferrule
