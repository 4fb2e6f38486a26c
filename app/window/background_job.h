// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <stop_token>
#include <thread>

#include "core/base/progress.h"

namespace ferrule {

/// One piece of long work at a time on a thread of its own, which can be stopped. What it returns is handed over on the
/// thread that asked; the answer of work that was replaced by other work is dropped.
class BackgroundJob : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;
  ~BackgroundJob() override;

  /// work copies what it needs: it runs while the window goes on. done follows in any case.
  template <class Answer>
  void start(std::function<Answer(const JobControl&)> work, std::function<void(Answer)> done) {
    begin([this, work = std::move(work), done = std::move(done)](const JobControl& job, long round) {
      auto answer = std::make_shared<Answer>(work(job));
      QMetaObject::invokeMethod(
          this,
          [this, round, answer, done] {
            if (!finish(round)) return;
            done(std::move(*answer));
          },
          Qt::QueuedConnection);
    });
  }
  /// The work ends soon, its answer says how.
  void cancel();
  [[nodiscard]] bool isRunning() const { return running_; }

 signals:
  /// Work began or ended.
  void runningChanged();
  /// share: 0 to 1, negative when unknown. step: the key that core gives it.
  void progressed(double share, const QString& step);

 private:
  void begin(std::function<void(const JobControl&, long)> work);
  bool finish(long round);

  std::jthread thread_;
  bool running_ = false;
  long round_ = 0;
};

}  // namespace ferrule
