// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "app/review/correction_desk.h"
#include "app/window/background_job.h"

namespace ferrule {

/// Works out the suggestions of a corrected frame anew, in the background and with a record of its own. Frames wait for
/// one another; a frame that is corrected while it is worked on is begun again, which leaves alone what still stands.
class JudgingAnew : public QObject {
  Q_OBJECT
 public:
  explicit JudgingAnew(QObject* parent = nullptr);

  void judge(const QString& record, const ShotAddress& at);
  /// What was worked out stays; the rest follows with the next correction, or when the session is judged.
  void stop();
  [[nodiscard]] BackgroundJob& job() { return job_; }

 signals:
  /// shots: beside which other plans stand now.
  void judged(int shots);
  void failed(const ferrule::Error& error);

 private:
  struct Frame {
    QString record;
    SessionId session;
    FrameId frame;

    bool operator==(const Frame&) const = default;
  };

  void begin();

  BackgroundJob job_;
  std::vector<Frame> waiting_;  ///< the first is worked on
  bool again_ = false;          ///< it was corrected once more
};

}  // namespace ferrule
