// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/camera/check_evidence.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// What can be wrong between a film, its rig and its table file. In brackets what SelfCheck::amounts holds.
enum class RigFault {
  None,            ///< everything fits {}
  CameraMoved,     ///< since the rig was made {shift of the camera in m, turn in rad}
  WrongLens,       ///< of another camera, or another zoom {}
  CorrectedTwice,  ///< the film was straightened before, and the rig's lens straightens it again {}
  NotCorrected,    ///< the rig's lens bends nothing, but the film is bent {}
  WrongImageSize,  ///< the lens belongs to another size or crop of the picture {size over what the lens was made for}
  TagHeight,       ///< all tags lie higher or lower than the table file says {how much higher, m}
  TagMisplaced,    ///< {how far, m}
  TagsSwapped,     ///< {}
  TagTurned,       ///< {clockwise, rad}
  TableSize,       ///< {how much longer, how much wider than the file says, m}
  Unexplained,     ///< something is wrong, and no single fault of these explains it {}
};

/// "fits", "camera moved", ...: the words used in files.
[[nodiscard]] std::string_view toText(RigFault fault);

/// One thing that was looked at, as it comes out under the rig and the table file as they are.
struct CheckFinding {
  enum class Kind {
    Tag,           ///< rms distance of its corners from where the table file has them
    NoseStraight,  ///< rms of a nose from its own best straight line
    NosePlace,     ///< a nose from its place, mean, + inward
    Parallel,      ///< opposite noses: difference of their distance from end to end
    Length,        ///< nose to nose along the table, seen minus measured
    Width,         ///< nose to nose across the table, seen minus measured
    BallSize,      ///< of the balls' diameters over the table: largest minus smallest
    BallPlace,     ///< how far the worst ball lies inside a cushion or another ball
  };
  Kind kind = Kind::Tag;
  std::string what;               ///< "0", "left-head", "head and foot", ...; may be empty
  std::optional<double> found_m;  ///< nothing: not seen
  double expected_m = 0.0;        ///< a sound rig stays within this, either way

  bool operator==(const CheckFinding&) const = default;
};

[[nodiscard]] std::string_view toText(CheckFinding::Kind kind);

/// One hypothesis, fitted.
struct Explanation {
  RigFault fault = RigFault::None;
  std::vector<int> tags;  ///< those it speaks of
  std::vector<double> amounts;
  double misfit = 0.0;       ///< root of the mean square of the residuals in standard deviations; 1 is what noise gives
  int parameters = 0;        ///< that were free
  double probability = 0.0;  ///< among the hypotheses tried
  Rig rig;                   ///< lens and pose under this hypothesis

  bool operator==(const Explanation&) const = default;
};

struct SelfCheck {
  RigFault verdict = RigFault::None;
  std::vector<int> tags;        ///< that the verdict speaks of
  std::vector<double> amounts;  ///< see RigFault
  double confidence = 0.0;      ///< 0 to 1
  double costRms_m = 0.0;       ///< error of a ball's place over the table if the rig is used as it is
  double costMax_m = 0.0;
  TablePoint costliest;  ///< where costMax_m is
  std::vector<CheckFinding> findings;
  std::vector<Explanation> explanations;  ///< likeliest first

  bool operator==(const SelfCheck&) const = default;
};

/// Whether a rig and a table file belong to a film, and if not, what is wrong.
///
/// Every hypothesis is fitted to all evidence with its own unknowns free; they are compared by the fit's likelihood
/// with the usual price for each unknown. A fault is named only when it explains the film clearly better than "fits"
/// does and costs more than a table's own tolerances. Source: Schwarz 1978 (the price); Kass and Raftery 1995 (the
/// scale).
///
/// evidence: with at least three lines or three tags; fewer give Unexplained with no confidence. A film of another size
/// than the rig's is WrongImageSize at once, without findings or costs.
[[nodiscard]] SelfCheck checkRig(const Rig& rig, const MeasuredTable& measured, const CheckEvidence& evidence);

}  // namespace ferrule
