// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>

#include "core/measure/image_queue.h"

namespace ferrule {

/// Puts images into a queue, on threads of its own, until it is stopped: a camera, or a film that stands in for one.
class LiveSource : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;

  /// What people call it.
  [[nodiscard]] virtual QString name() const = 0;
  virtual void start(std::shared_ptr<ImageQueue> images) = 0;
  /// No more images after it returned; the queue is left open.
  virtual void stop() = 0;

 signals:
  /// No more images come: the film is over.
  void ended();
  /// No more images come, and that was not meant. One sentence.
  void lost(const QString& sentence);
};

}  // namespace ferrule
