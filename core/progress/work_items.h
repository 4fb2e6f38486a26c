// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/progress/findings.h"

/// What to work on, by what it would bring.
///
/// In balls: pots are judged by the object ball's line alone. A pot counts as in when its line error is within the
/// pocket's margin (difficulty.h). One cause is taken away from the lines that were measured, and the pots in are
/// counted again; the difference, less what the same rule counts for the lines as they were, is the gain in balls of
/// 100 pots tried.
///
/// In frames: where shots were played again in the simulator with one part of the scatter drawn in
/// (PlayedShot::steadier), the mean gain of a shot times the player's shots in a frame is the gain in frames won; that
/// of a region is its shots' share of the aim's. Shots are taken to add up, and the opponent to stay as he is. Causes
/// that are no scatter (a pull to one side, tiredness) have no such play: their balls are turned into frames at the
/// rate of the regions. Shots count as played again in proportion to how often each kind was struck.
namespace ferrule {

enum class WorkKind {
  AimSide,       ///< the mean aim to one side is taken away
  LeftCutSide,   ///< the mean thick or thin on balls cut to the left is taken away
  RightCutSide,  ///< on balls cut to the right
  LateAim,       ///< lines after kLate_min are drawn in to the spread before
  LongShots,     ///< lines of long shots are drawn in by kDrawnIn
  ThinCuts,      ///< lines of cuts over kThinCut_rad are drawn in by kDrawnIn
  ShortShots,    ///< lines of all others are drawn in by kDrawnIn
  SpeedControl,  ///< the speed's scatter is drawn in by kDrawnIn; known in frames alone
  TipPoint,      ///< the tip point's scatter is drawn in by kDrawnIn; known in frames alone
};

/// Whether the kind is counted in pots; speed and tip point are known in frames alone.
[[nodiscard]] inline bool isOfPots(WorkKind kind) {
  return kind != WorkKind::SpeedControl && kind != WorkKind::TipPoint;
}

/// What steady practice of one thing may well bring in a few weeks: a fifth less spread. Common practice, no source.
inline constexpr double kDrawnIn = 0.2;
/// Cue ball's way and object ball's way together, in widths of the table.
inline constexpr double kLongWay_widths = 1.5;
/// 45 degrees.
inline constexpr double kThinCut_rad = 0.7853981634;
/// Pots of the kind that must have been tried before it is spoken of.
inline constexpr int kFewestForWork = 30;
/// Shots that must have been played again before frames are spoken of.
inline constexpr int kFewestPlayedAgain = 20;

/// The drills that the items send to; their names for people are in app.
enum class WorkDrill { CentreLine, CutFanLeft, CutFanRight, CutFanTired, StopLadder, ThinCut, LongCut, Lag, DrawBands };

struct WorkItem {
  WorkKind kind = WorkKind::LongShots;
  int tried = 0;            ///< pots of this kind in the period; speed and tip point: shots played again
  double share = 0.0;       ///< of the pots made; speed and tip point: the spread that is drawn in
  double effect_rad = 0.0;  ///< the mean that is taken away, signed, or the spread that is drawn in; of the aim
  double gain = 0.0;        ///< balls of 100 pots tried of all kinds; speed and tip point: 0
  Interval gainInterval;    ///< from drawing sessions again
  std::optional<double> frames = {};  ///< won more of 100; nothing where too few shots were played again
  Interval framesInterval = {};       ///< from drawing sessions again; of causes that are no scatter: the gain's
  bool tiesWithNext = false;          ///< the next item's gain lies within this one's interval
  WorkDrill drill = WorkDrill::StopLadder;
  int trials = 20;
  int target = 0;      ///< makes of trials at the gained level
  int convincing = 0;  ///< makes of trials that would not be chance at the level of now (fewestConvincing)

  bool operator==(const WorkItem&) const = default;
};

/// Three at most, largest gain first, in frames where they are known. A habit (side, thick or thin) and tiredness only
/// where the finding stands; a region only where it was tried often enough; nothing whose interval of the gain reaches
/// zero.
[[nodiscard]] std::vector<WorkItem> workItems(const PlayerHistory& history, const std::vector<Finding>& findings,
                                              const Resampling& resampling);

/// Days until the drill is tested again. Common practice, no source.
inline constexpr int kRetestDays = 14;

}  // namespace ferrule
