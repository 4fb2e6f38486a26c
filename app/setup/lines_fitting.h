// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <optional>
#include <vector>

#include "app/window/background_job.h"
#include "core/vision/film_rig.h"

namespace ferrule {

/// Fits a rig to lines and marks as a person moves them, beside the window. What is asked for while a fit runs waits;
/// of several that wait only the last is worked out.
class LinesFitting : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;

  void fit(const RigWanted& wanted, std::vector<LineTrace> lines, std::vector<MarkSighting> marks);
  /// The answer of what runs is dropped.
  void forget();
  [[nodiscard]] bool isRunning() const { return job_.isRunning(); }

 signals:
  /// For the lines and marks that were handed over last.
  void fitted(const ferrule::Result<ferrule::LinesFit>& fit);

 private:
  struct Asked {
    RigWanted wanted;
    std::vector<LineTrace> lines;
    std::vector<MarkSighting> marks;
  };
  void start(Asked asked);

  std::optional<Asked> waiting_;
  bool forgotten_ = false;
  BackgroundJob job_;
};

}  // namespace ferrule
