// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/measuring_feed.h"

#include <utility>

#include "app/picture/image_of.h"
#include "core/measure/balls_seen.h"

namespace ferrule {

namespace {

SeenImage seenImage(const ImageReading& reading, const KeptPicture& kept) {
  SeenImage seen;
  seen.picture = {imageOf(kept.picture), reading.image, reading.time_s};
  seen.rig = kept.rig;
  seen.light = faultOf(lightOf(kept.picture));
  seen.exposure_s = kept.exposure_s;
  for (const BallSample& ball : reading.balls)
    seen.balls.push_back({ball.ball, ball.position, ball.standardUncertainty_m, ball.seen});
  return seen;
}

}  // namespace

template <class Tell>
void MeasuringFeed::post(int round, Tell tell) {
  QMetaObject::invokeMethod(
      this,
      [this, round, tell = std::move(tell)] {
        if (round == round_) tell();
      },
      Qt::QueuedConnection);
}

MeasureObserver MeasuringFeed::observer(const std::shared_ptr<LiveInbox>& inbox) {
  const int round = ++round_;
  pictureOnItsWay_ = false;
  MeasureObserver observer;
  observer.opened = [this, round](SessionId session, const std::string& name) {
    post(round, [this, session, name = QString::fromStdString(name)] { emit opened(session, name); });
  };
  observer.picture = [this, round](const ImageReading& reading, const KeptPicture& kept) {
    if (pictureOnItsWay_.exchange(true)) return;
    const auto seen = std::make_shared<const SeenImage>(seenImage(reading, kept));
    post(round, [this, seen] {
      pictureOnItsWay_ = false;
      emit imageSeen(seen);
    });
  };
  const auto ruling = std::make_shared<std::optional<FilmRuling>>();
  observer.ruling = [ruling](const ReadShot&, const FilmRuling& ruled) { *ruling = ruled; };
  observer.recorded = [this, round, ruling](const ReadShot& shot, ShotId id) {
    const auto measured =
        std::make_shared<const MeasuredShot>(MeasuredShot{shot.reading, std::exchange(*ruling, std::nullopt), id});
    post(round, [this, measured] { emit shotMeasured(measured); });
  };
  observer.said = [inbox] { return inbox->takeSaid(); };
  observer.ruledAgain = [this, round](const std::vector<RuledAgain>& ruled) {
    post(round, [this, ruled] { emit ruledAgain(ruled); });
  };
  return observer;
}

LiveObserver MeasuringFeed::liveObserver(const std::shared_ptr<LiveInbox>& inbox) {
  LiveObserver live;
  live.measured = observer(inbox);
  live.glimpse = std::exchange(live.measured.picture, {});
  live.measured.image = [this, round = round_, told = false](const ImageReading& reading) mutable {
    if (std::exchange(told, true)) return;
    post(round, [this, balls = positionOf(reading)] { emit firstBallsKnown(balls); });
  };
  live.standing = [this, round = round_](const LiveStanding& standing) {
    post(round, [this, standing] { emit standingChanged(standing); });
  };
  return live;
}

}  // namespace ferrule
