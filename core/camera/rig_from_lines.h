// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/base/error.h"
#include "core/camera/check_evidence.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// A rig from the table itself, with how well what was seen agrees with it.
struct LinesFit {
  Rig rig;
  /// Root mean square of the residuals in standard deviations: about 1 where everything is as it is said to be.
  double misfit = 0.0;
  std::vector<double> lineOff_m;                 ///< rms across each line, in the order of the lines
  std::vector<std::optional<double>> markOff_m;  ///< of each mark, along what is sure of it; + as MarkPlace::sure

  bool operator==(const LinesFit&) const = default;
};

/// A rig from the table itself: where the camera sits comes from the noses and back edges of the cushions, at the
/// nose's height, and from sights and pockets; with evidence.lens of model None and no focal length, the lens comes
/// from all of these too.
///
/// A plane alone hardly tells focal length from height. It need not: a ball's centre lies 8 mm below the noses, so that
/// a fifth too much of either moves it by less than a millimetre at the table's ends. The uncertainty of both is in the
/// rig's covariances, and its error map is wider for it. Nor does a plane tell its own scale or which end is the head:
/// both are taken from the person's word.
///
/// evidence: lens (or none), film and date; its tags are not used. marks: may be empty.
/// Errors: ImageSizeMismatch; TagsTooFew (detail "cushions"; numbers: noses seen, noses needed); LensNotUsable
/// (subject: the film; detail "no-fit").
[[nodiscard]] Result<LinesFit> fitRigFromLines(const RigEvidence& evidence, const MeasuredTable& measured,
                                               const std::vector<LineTrace>& lines,
                                               const std::vector<MarkSighting>& marks = {});
/// The rig alone.
[[nodiscard]] Result<Rig> rigFromLines(const RigEvidence& evidence, const MeasuredTable& measured,
                                       const std::vector<LineTrace>& lines,
                                       const std::vector<MarkSighting>& marks = {});

/// Whether a rig was made so: its chain says it.
[[nodiscard]] bool isFromCushions(const Rig& rig);
/// Whether sights had a part in it.
[[nodiscard]] bool isFromSights(const Rig& rig);

/// Whether evidence asks for a lens from the cushions.
[[nodiscard]] bool lensIsWanted(const RigEvidence& evidence);

/// How high sights lie above the noses, and the rims of pockets, before the film is seen: standard deviations, m. Rails
/// are level with the noses or a little higher. Common practice, no source.
inline constexpr double kSightsHigherSpread_m = 0.005;
inline constexpr double kPocketsHigherSpread_m = 0.020;

}  // namespace ferrule
