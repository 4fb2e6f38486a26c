// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/set_up_watch.h"

#include <functional>
#include <utility>

#include "core/camera/image_size_mismatch.h"
#include "core/camera/rig_file.h"
#include "core/measure/live_readings.h"

namespace ferrule {

namespace {

/// Whoever moves a ball by hand sees no more often where it lies.
constexpr double kBetween_s = 0.2;

/// Until the images end. Answers what went wrong.
Result<void> watch(const std::string& rigFile, const std::string& tableFile, const std::string& camera,
                   ImageQueue& images, const std::stop_token& stop, const std::function<void(Position)>& tell) {
  const auto rig = readRigFile(rigFile);
  if (!rig) return tl::make_unexpected(rig.error());
  const auto measured = measuredTableFrom(tableFile);
  if (!measured) return tl::make_unexpected(measured.error());
  LiveReadings source(images, *rig, *measured, stop);
  double told_s = -kBetween_s;
  while (const auto readings = source.next()) {
    if (readings->empty() || readings->back().time_s - told_s < kBetween_s) continue;
    told_s = readings->back().time_s;
    Position balls;
    for (const BallSample& ball : readings->back().balls)
      balls.push_back({ball.ball, ball.position});
    tell(std::move(balls));
  }
  if (!source.misfit()) return {};
  return tl::make_unexpected(imageSizeMismatch(camera, *source.misfit(), rigFile, rig->lens.size));
}

}  // namespace

SetUpWatch::~SetUpWatch() {
  // Whoever listens may be half gone.
  blockSignals(true);
  SetUpWatch::stop();
}

void SetUpWatch::start(const QString& rig, const QString& table, std::shared_ptr<LiveSource> source) {
  stop();
  source_ = std::move(source);
  images_ = std::make_shared<ImageQueue>();
  connect(source_.get(), &LiveSource::ended, this, &SetUpWatch::stop);
  connect(source_.get(), &LiveSource::lost, this, [this](const QString& sentence) {
    stop();
    emit said(sentence);
  });
  job_.start<Result<void>>(
      [this, rig = rig.toStdString(), table = table.toStdString(), name = source_->name().toStdString(),
       images = images_](const JobControl& job) {
        return watch(rig, table, name, *images, job.stop, [this, images](Position balls) {
          QMetaObject::invokeMethod(
              this,
              [this, images, balls = std::move(balls)] {
                if (images == images_) emit seen(balls);
              },
              Qt::QueuedConnection);
        });
      },
      [this](const Result<void>& done) {
        stop();
        if (!done) emit failed(done.error());
      });
  source_->start(images_);
  emit runningChanged();
}

void SetUpWatch::stop() {
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
