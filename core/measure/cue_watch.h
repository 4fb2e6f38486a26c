// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/cue/cue_reading.h"
#include "core/cue/cue_tag_finder.h"
#include "core/cue/pitch_log.h"
#include "core/cue/shaft_line.h"
#include "core/reading/shot_reader.h"
#include "core/table/measured_cue.h"

namespace ferrule {

/// What an owner of an instrumented cue gives beside a film.
struct CueKit {
  MeasuredCue cue;
  std::optional<PitchLog> log;
};

/// Keeps what a film shows of the cue until a shot asks for it: its tags where it carries some, else the line of its
/// shaft before a cue ball at rest. Memory is that of the time since the last shot, ten minutes at most.
class CueWatch {
 public:
  /// kit: nothing for a plain cue; a dictionary that nobody knows counts as none.
  CueWatch(const Rig& rig, const MeasuredTable& measured, const std::optional<CueKit>& kit);

  /// picture: of the rig's size. Images in order.
  void look(const cv::Mat& picture, long image, double time_s);
  /// Where the cue ball lies is where the cue will be.
  void note(const ImageReading& reading);
  /// The camera was moved; the new rig holds from then on.
  void setRig(const Rig& rig, double since_s);

  /// The cue before a shot; what came before it is forgotten. Nothing where the cue was not seen.
  [[nodiscard]] std::optional<CueReading> readingOf(const ReadShot& shot);

 private:
  void lookForShaft(const cv::Mat& picture, double time_s);
  void forgetBefore(double time_s);

  Table table_;
  double radius_m_;
  std::optional<CueKit> kit_;
  std::optional<CueTagFinder> finder_;
  std::vector<std::pair<double, Rig>> rigs_;  ///< since when
  std::vector<CueSighting> sightings_;
  std::vector<ShaftLine> shafts_;
  std::optional<TablePoint> cueBall_;
  TablePoint restsAt_;
  double rests_s_ = 0.0;  ///< since then the cue ball lies there
  double seen_s_ = 0.0;   ///< of the last note
  double next_s_ = 0.0;
};

}  // namespace ferrule
