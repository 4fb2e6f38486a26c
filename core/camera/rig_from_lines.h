// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/base/error.h"
#include "core/camera/check_evidence.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// A rig from the table itself: where the camera sits comes from the noses and back edges of the cushions, at the
/// nose's height; with evidence.lens of model None and no focal length, the lens comes from their straightness too.
///
/// A plane alone hardly tells focal length from height. It need not: a ball's centre lies 8 mm below the noses, so that
/// a fifth too much of either moves it by less than a millimetre at the table's ends. The uncertainty of both is in the
/// rig's covariances, and its error map is wider for it.
///
/// evidence: lens (or none), film and date; its tags are not used.
/// Errors: ImageSizeMismatch; TagsTooFew (detail "cushions"; numbers: noses seen, noses needed); LensNotUsable
/// (subject: the film; detail "no-fit").
[[nodiscard]] Result<Rig> rigFromLines(const RigEvidence& evidence, const MeasuredTable& measured,
                                       const std::vector<LineTrace>& lines);

/// Whether a rig was made so: its chain says it.
[[nodiscard]] bool isFromCushions(const Rig& rig);

/// Whether evidence asks for a lens from the cushions.
[[nodiscard]] bool lensIsWanted(const RigEvidence& evidence);

}  // namespace ferrule
