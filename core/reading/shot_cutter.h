// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <deque>
#include <optional>
#include <vector>

#include "core/reading/onset.h"
#include "core/reading/rest_watch.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule {

/// The images of one shot, from shortly before the strike until every ball had lain still for a moment.
struct CutShot {
  std::vector<ImageReading> readings;
  double strike_s = 0.0;  ///< to about one image
  /// Where each ball lay before, known over a longer time than the readings hold.
  std::vector<std::pair<BallName, RestingPlace>> before;
  bool atRest = false;       ///< false: the film ended, or the next strike came, while balls still moved
  bool filmEnded = false;    ///< the film ended with it
  bool begunBefore = false;  ///< balls moved when the film began: strike_s is the film's first image
};

/// Cuts a stream of readings into shots. A shot begins with a blow on a cue ball that lay still, or with the film when
/// a ball that no hand holds moves then, and ends when every ball has lain still for kStillWindow_s or is away. Balls
/// moved by hand give placements. Memory is bounded: a second before a strike, and one shot of at most kLongestShot_s.
class ShotCutter {
 public:
  static constexpr double kLongestShot_s = 60.0;

  explicit ShotCutter(const MeasuredTable& measured);

  void feed(const ImageReading& reading);
  /// The film has ended: closes a shot that is under way.
  void finish();
  [[nodiscard]] std::vector<CutShot> takeShots();
  [[nodiscard]] std::vector<Placement> takePlacements();

 private:
  void watch(const ImageReading& reading);
  void notePlacement(BallName ball);
  [[nodiscard]] bool cueBallWasStruck(double& strike_s) const;
  [[nodiscard]] bool movedWhenTheFilmBegan() const;
  [[nodiscard]] bool wasHitByAnother(double time_s) const;
  [[nodiscard]] bool everythingSettled() const;
  void open(double strike_s);
  void close(bool atRest);

  double radius_m_;
  std::array<TablePoint, 6> holes_;
  std::array<RestWatch, BallName::kCount> watches_;
  /// The place that has been told already, as a placement or as the end of a shot.
  std::array<std::optional<TablePoint>, BallName::kCount> toldPlaces_;
  double filmStart_s_ = 0.0;
  bool started_ = false;
  bool beginningJudged_ = false;
  std::deque<ImageReading> history_;
  double interval_s_ = 1.0 / 30.0;
  std::optional<double> settledSince_s_;
  bool inShot_ = false;
  bool hadShot_ = false;
  CutShot current_;
  std::vector<CutShot> shots_;
  std::vector<Placement> placements_;
};

}  // namespace ferrule
