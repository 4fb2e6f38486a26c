// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_calibration.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/camera/lens_fitting.h"
#include "core/camera/pose_fit.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr std::size_t kTagsNeeded = 3;
/// A rule read to the nearest half millimetre: half-width 0.5 mm, rectangular. Source: JCGM 100:2008, 4.3.7.
constexpr double kMeasuring_m = 0.0005 / 1.7320508075688772;
/// What averaging cannot remove: the same pixels cut the same edges in every image.
constexpr double kDetectionFloor_px = 0.1;
/// A table whose tags disagree more than this was put down wrongly or measured wrongly; a tag's own side is 80 mm.
constexpr double kRefused_m = 0.010;
/// Beyond this the rig is made but does not say that it fits; ball positions tolerate 2 mm.
constexpr double kDoubtful_m = 0.0015;
constexpr double kDoubtful_px = 1.0;
/// A nose that bends more (rms from its best line) is not its cushion's own doing: rails are fitted to a straight edge.
/// Common practice, no source.
constexpr double kBent_m = 0.001;

using Corners = std::array<TablePoint3, 4>;

/// A tag of the table and where it was seen.
struct TagPair {
  int id = 0;
  Corners onTable;
  TagObservation seen;
  double scatter_px = 0.0;
};

Corners turnedBy(const Corners& corners, int quarters) {
  Corners result;
  for (std::size_t i = 0; i < 4; ++i)
    result[i] = corners[(i + static_cast<std::size_t>(quarters)) % 4];
  return result;
}

std::vector<Sighting> sightings(const std::vector<TagPair>& pairs, int without = -1) {
  std::vector<Sighting> all;
  for (const TagPair& pair : pairs) {
    if (pair.id == without) continue;
    const double u_px = cornerUncertainty_px({pair.seen, pair.scatter_px, 0}, pair.onTable);
    for (std::size_t i = 0; i < 4; ++i)
      all.push_back({pair.onTable[i], pair.seen.corners[i], u_px});
  }
  return all;
}

/// Rms distance of a tag's seen corners from their places, on their own planes. Nothing when they are not reached.
std::optional<double> missOnTable(const Rig& rig, const TagPair& pair) {
  double sum = 0.0;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto place = tableFromImage(rig, pair.seen.corners[i], pair.onTable[i].z);
    if (!place) return std::nullopt;
    const TableVector miss = *place - TablePoint{pair.onTable[i].x, pair.onTable[i].y};
    sum += dot(miss, miss);
  }
  return std::sqrt(sum / 4.0);
}

double missOfAll(const Rig& rig, const std::vector<TagPair>& pairs) {
  double sum = 0.0;
  for (const TagPair& pair : pairs) {
    const auto miss = missOnTable(rig, pair);
    if (!miss) return INFINITY;
    sum += *miss * *miss;
  }
  return std::sqrt(sum / static_cast<double>(pairs.size()));
}

bool solve(Rig& rig, const std::vector<TagPair>& pairs, int without = -1) {
  const auto fit = fitPose(rig.lens, sightings(pairs, without));
  if (!fit) return false;
  rig.pose = fit->pose;
  rig.poseCovariance = fit->covariance;
  rig.poseRms_px = fit->rms_px;
  return true;
}

double missAfterSolving(Rig rig, const std::vector<TagPair>& pairs) {
  return solve(rig, pairs) ? missOfAll(rig, pairs) : INFINITY;
}

/// Says which tag is wrong, and how: tries what happens to tags in life and keeps what explains the picture.
tl::unexpected<Error> explain(const Rig& rig, const std::vector<TagPair>& pairs, const std::string& film) {
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    for (std::size_t j = i + 1; j < pairs.size(); ++j) {
      auto trial = pairs;
      std::swap(trial[i].onTable, trial[j].onTable);
      if (missAfterSolving(rig, trial) < kRefused_m) {
        return failure(ErrorCode::TagsInconsistent, film, "swapped",
                       {static_cast<double>(pairs[i].id), static_cast<double>(pairs[j].id)});
      }
    }
  }
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    for (int quarters = 1; quarters < 4; ++quarters) {
      auto trial = pairs;
      trial[i].onTable = turnedBy(pairs[i].onTable, quarters);
      if (missAfterSolving(rig, trial) < kRefused_m) {
        // The print's first corner is found where the table's corner number `quarters` should be.
        return failure(ErrorCode::TagsInconsistent, film, "turned",
                       {static_cast<double>(pairs[i].id), 90.0 * quarters});
      }
    }
  }
  // The tag whose removal makes the others agree best is the one that lies elsewhere.
  const TagPair* odd = nullptr;
  double best = INFINITY;
  double distance_m = 0.0;
  for (const TagPair& pair : pairs) {
    Rig trial = rig;
    if (!solve(trial, pairs, pair.id)) continue;
    std::vector<TagPair> others;
    std::ranges::copy_if(pairs, std::back_inserter(others), [&](const TagPair& other) { return other.id != pair.id; });
    const double rest = missOfAll(trial, others);
    if (rest < best) {
      best = rest;
      odd = &pair;
      distance_m = missOnTable(trial, pair).value_or(0.0);
    }
  }
  if (!odd) return failure(ErrorCode::TagsInconsistent, film, "no-pose");
  return failure(ErrorCode::TagsInconsistent, film, "misplaced",
                 {static_cast<double>(odd->id), millimetresFromMetres(distance_m)});
}

Result<std::vector<TagPair>> pairsOf(const RigEvidence& evidence, const MeasuredTable& measured) {
  std::vector<TagPair> pairs;
  for (const RailTag& tag : measured.tags) {
    const auto seen = std::ranges::find_if(evidence.tags, [&](const AveragedTag& a) { return a.tag.id == tag.id; });
    if (seen != evidence.tags.end()) pairs.push_back({tag.id, tag.corners, seen->tag, seen->scatter_px});
  }
  if (pairs.size() < kTagsNeeded) {
    return failure(ErrorCode::TagsTooFew, evidence.film, {},
                   {static_cast<double>(pairs.size()), static_cast<double>(kTagsNeeded)});
  }
  return pairs;
}

void addResiduals(Rig& rig, const std::vector<TagPair>& pairs) {
  double sum = 0.0;
  for (const TagPair& pair : pairs) {
    TagResidual residual;
    residual.id = pair.id;
    double squared_px = 0.0;
    for (std::size_t i = 0; i < 4; ++i) {
      const auto pixel = imageFromTable(rig, pair.onTable[i]);
      const ImageVector miss = pixel ? pair.seen.corners[i] - *pixel : ImageVector{};
      squared_px += dot(miss, miss);
    }
    residual.rms_px = std::sqrt(squared_px / 4.0);
    residual.rms_m = missOnTable(rig, pair).value_or(0.0);
    sum += residual.rms_m * residual.rms_m;
    Rig without = rig;
    if (solve(without, pairs, pair.id)) residual.leaveOneOut_m = missOnTable(without, pair).value_or(0.0);
    rig.tags.push_back(residual);
  }
  rig.tagRms_m = std::sqrt(sum / static_cast<double>(pairs.size()));
}

}  // namespace

double cornerUncertainty_px(const AveragedTag& seen, const std::array<TablePoint3, 4>& onTable) {
  double side_px = 0.0;
  double side_m = 0.0;
  for (std::size_t i = 0; i < 4; ++i) {
    const std::size_t j = (i + 1) % 4;
    side_px += distance(seen.tag.corners[i], seen.tag.corners[j]);
    side_m += std::hypot(onTable[i].x - onTable[j].x, onTable[i].y - onTable[j].y);
  }
  const double measuring_px = kMeasuring_m * side_px / side_m;
  return std::hypot(measuring_px, std::hypot(kDetectionFloor_px, seen.scatter_px));
}

Result<Rig> rigWithoutPose(const RigEvidence& evidence) {
  Rig rig;
  rig.lens = evidence.lens;
  rig.lensUncertainty = evidence.lensUncertainty;
  Result<void> added;
  if (evidence.filmRotation_deg != 0) {
    rig.lensUncertainty = turnedUncertainty(rig.lensUncertainty, rig.lens, evidence.filmRotation_deg);
    rig.lens = turnedLens(rig.lens, evidence.filmRotation_deg);
    added = rig.chain.add(
        {CorrectionKind::Rotation, evidence.film,
         "turned clockwise by " + std::to_string(evidence.filmRotation_deg) + " degrees, as the film says",
         evidence.date});
    if (!added) return tl::make_unexpected(added.error());
  }
  if (rig.lens.size != evidence.filmSize) {
    auto scaled = scaledLens(rig.lens, evidence.filmSize, evidence.film, evidence.lensSource);
    if (!scaled) return tl::make_unexpected(scaled.error());
    const auto words = [](ImageSize size) { return std::to_string(size.width) + "x" + std::to_string(size.height); };
    added = rig.chain.add({CorrectionKind::ImageScale, evidence.film,
                           "the lens, made at " + words(rig.lens.size) + ", is scaled to " + words(evidence.filmSize),
                           evidence.date});
    if (!added) return tl::make_unexpected(added.error());
    rig.lensUncertainty = scaledUncertainty(rig.lensUncertainty, rig.lens, evidence.filmSize);
    rig.lens = std::move(*scaled);
  }
  added = rig.chain.add({CorrectionKind::Lens, evidence.lensSource,
                         "straightens what the lens bends (" + std::string(toText(rig.lens.model)) + ")",
                         evidence.lens.date});
  if (!added) return tl::make_unexpected(added.error());
  return rig;
}

Result<Rig> calibrateRig(const RigEvidence& evidence, const MeasuredTable& measured) {
  auto rig = rigWithoutPose(evidence);
  if (!rig) return rig;
  const auto pairs = pairsOf(evidence, measured);
  if (!pairs) return tl::make_unexpected(pairs.error());

  const bool solved = solve(*rig, *pairs);
  if (!solved || !(missOfAll(*rig, *pairs) < kRefused_m)) return explain(*rig, *pairs, evidence.film);
  const auto added = rig->chain.add(
      {CorrectionKind::Pose, evidence.film, "where the camera is, from the table's tags", evidence.date});
  if (!added) return tl::make_unexpected(added.error());
  addResiduals(*rig, *pairs);
  rig->verdict = rig->tagRms_m > kDoubtful_m || rig->poseRms_px > kDoubtful_px ? kTagsDisagree : kFits;
  return rig;
}

void addNoses(Rig& rig, std::vector<NoseStraightness> noses) {
  rig.noses = std::move(noses);
  const bool bent = std::ranges::any_of(rig.noses, [](const NoseStraightness& nose) { return nose.rms_m > kBent_m; });
  if (bent) rig.verdict = kNosesBent;
}

}  // namespace ferrule
