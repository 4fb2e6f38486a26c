// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>

#include "app/live/live_source.h"
#include "app/window/background_job.h"
#include "core/base/error.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule {

/// Where the balls lie now, as a camera or a film in its place sees them: to set up a drill by. Keeps nothing.
class SetUpWatch : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;
  ~SetUpWatch() override;

  /// rig, table: paths of their files. What was watched before ends.
  void start(const QString& rig, const QString& table, std::shared_ptr<LiveSource> source);
  void stop();
  [[nodiscard]] bool isRunning() const { return source_ != nullptr; }
  /// Whether the pictures are to be asked who leans over the table; answered by somebodyLeans().
  void watchForPeople(bool watches) { *watchesPeople_ = watches; }

 signals:
  void runningChanged();
  /// Some times a second.
  void seen(const ferrule::Position& balls);
  void somebodyLeans(bool leans);
  /// It ended.
  void failed(const ferrule::Error& error);
  void said(const QString& sentence);

 private:
  std::shared_ptr<LiveSource> source_;  ///< null while nothing is watched
  std::shared_ptr<ImageQueue> images_;
  std::shared_ptr<std::atomic<bool>> watchesPeople_ = std::make_shared<std::atomic<bool>>(false);
  BackgroundJob job_;  ///< last: its thread ends before what it tells is gone
};

}  // namespace ferrule
