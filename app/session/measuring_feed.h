// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <atomic>

#include "app/session/measured_values.h"
#include "core/measure/measure_live.h"

namespace ferrule {

/// Brings what a measuring thread tells over to the window's thread, and never makes it wait: a picture is turned into
/// one for the screen only when the last one was shown.
class MeasuringFeed : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;

  /// To be called on the measuring thread, while the feed lives. What was told for an earlier observer is dropped.
  /// inbox: what people say meanwhile.
  [[nodiscard]] MeasureObserver observer(const std::shared_ptr<LiveInbox>& inbox);
  /// The same for a live session, whose images are shown before their readings are final.
  [[nodiscard]] LiveObserver liveObserver(const std::shared_ptr<LiveInbox>& inbox);

 signals:
  void opened(ferrule::SessionId session, const QString& name);
  /// The balls of the first image, once it is known which they are; in a live session.
  void firstBallsKnown(const ferrule::Position& balls);
  void imageSeen(std::shared_ptr<const ferrule::SeenImage> image);
  void shotMeasured(std::shared_ptr<const ferrule::MeasuredShot> shot);
  void ruledAgain(const std::vector<ferrule::RuledAgain>& ruled);
  void standingChanged(const ferrule::LiveStanding& standing);

 private:
  template <class Tell>
  void post(int round, Tell tell);

  int round_ = 0;
  std::atomic<bool> pictureOnItsWay_ = false;
};

}  // namespace ferrule
