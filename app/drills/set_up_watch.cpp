// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/set_up_watch.h"

#include <functional>
#include <utility>

#include "app/live/people_watch.h"
#include "core/camera/image_size_mismatch.h"
#include "core/camera/rig_file.h"
#include "core/measure/balls_seen.h"
#include "core/measure/live_readings.h"

namespace ferrule {

namespace {

/// Whoever moves a ball by hand sees no more often where it lies.
constexpr double kBetween_s = 0.2;

/// Whoever hears of what the images show, on the thread that looks at them.
struct Told {
  std::function<void(Position)> balls;
  std::function<void(bool)> leans;
  std::shared_ptr<const std::atomic<bool>> watchesPeople;
};

/// Until the images end. Answers what went wrong.
Result<void> watch(const std::string& rigFile, const std::string& tableFile, const std::string& camera,
                   ImageQueue& images, const std::stop_token& stop, const Told& tell) {
  const auto rig = readRigFile(rigFile);
  if (!rig) return tl::make_unexpected(rig.error());
  const auto measured = measuredTableFrom(tableFile);
  if (!measured) return tl::make_unexpected(measured.error());
  LiveReadings source(images, *rig, *measured, stop);
  PeopleWatch people(*measured, tell.watchesPeople);
  double told_s = -kBetween_s;
  while (const auto readings = source.next()) {
    if (const auto seen = source.glimpse()) {
      if (const auto leans = people.look(seen->kept, seen->reading.time_s)) tell.leans(*leans);
    }
    if (readings->empty() || readings->back().time_s - told_s < kBetween_s) continue;
    told_s = readings->back().time_s;
    tell.balls(positionOf(readings->back()));
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
       images = images_, watches = watchesPeople_](const JobControl& job) {
        const auto later = [this, images](auto say) {
          QMetaObject::invokeMethod(
              this,
              [this, images, say] {
                if (images == images_) say();
              },
              Qt::QueuedConnection);
        };
        return watch(rig, table, name, *images, job.stop,
                     {[&](Position balls) { later([this, balls = std::move(balls)] { emit seen(balls); }); },
                      [&](bool leans) { later([this, leans] { emit somebodyLeans(leans); }); }, watches});
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
  // Nobody looks any more: light must not stay away for somebody who was seen last.
  emit somebodyLeans(false);
  // It may be the source that called.
  QMetaObject::invokeMethod(
      this, [source = std::exchange(source_, nullptr)] {}, Qt::QueuedConnection);
  emit runningChanged();
}

}  // namespace ferrule
