// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/following_pose.h"

#include <utility>

#include "core/camera/evidence_fit.h"
#include "core/camera/pose_fit.h"
#include "core/camera/rig_from_lines.h"

namespace ferrule {

namespace {

std::vector<AveragedTag> tagsSeenBy(const Rig& rig, const MeasuredTable& measured) {
  std::vector<AveragedTag> tags;
  for (const RailTag& tag : measured.tags) {
    AveragedTag seen;
    seen.tag.id = tag.id;
    bool whole = true;
    for (std::size_t i = 0; i < 4; ++i) {
      const auto pixel = imageFromTable(rig, tag.corners[i]);
      whole = whole && pixel.has_value();
      if (pixel) seen.tag.corners[i] = *pixel;
    }
    if (whole) tags.push_back(seen);
  }
  return tags;
}

std::vector<LineTrace> nosesSeenBy(const Rig& rig, const Table& table) {
  constexpr int kPlaces = 12;
  std::vector<LineTrace> lines;
  for (const Cushion& cushion : cushions(table)) {
    LineTrace trace;
    trace.cushion = cushion.name;
    trace.u_px = 0.1;
    for (int i = 0; i < kPlaces; ++i) {
      const TablePoint p = cushion.nose.start + ((i + 0.5) / kPlaces) * (cushion.nose.end - cushion.nose.start);
      const auto pixel = imageFromTable(rig, {p.x, p.y, table.noseHeight_m});
      if (pixel) trace.places.push_back(*pixel);
    }
    lines.push_back(std::move(trace));
  }
  return lines;
}

std::vector<MarkSighting> sightsSeenBy(const Rig& rig, const Table& table) {
  std::vector<MarkSighting> marks;
  for (const TableMark& mark : tableMarks()) {
    if (mark.kind != MarkKind::Sight) continue;
    const TablePoint p = markPlace(table, mark).place;
    if (const auto pixel = imageFromTable(rig, {p.x, p.y, table.noseHeight_m})) marks.push_back({mark, *pixel, 0.15});
  }
  return marks;
}

}  // namespace

FollowingPose::FollowingPose(const Rig& rig, const MeasuredTable& measured) : pose_(rig.pose) {
  seen_.filmSize = rig.lens.size;
  if (!isFromCushions(rig)) seen_.tags = tagsSeenBy(rig, measured);
  if (!seen_.tags.empty()) return;
  seen_.lines = nosesSeenBy(rig, measured.table);
  if (isFromSights(rig)) seen_.marks = sightsSeenBy(rig, measured.table);
}

Eigen::Matrix<double, 6, 1> FollowingPose::step(const Lens& lens, const MeasuredTable& measured) const {
  const EvidenceFit fit(seen_, measured);
  // The sights' height is found with the pose, as when the rig was made.
  const Eigen::Index heights = seen_.marks.empty() ? 0 : 1;
  const auto residuals = [&](const Eigen::VectorXd& x) {
    Setting setting{lens, movedPose(pose_, x.head<6>()), measured, 0.0};
    if (heights > 0) setting.sightsHigher_m = x[6];
    Eigen::VectorXd all(fit.size() + heights);
    all.head(fit.size()) = fit.residuals(setting);
    if (heights > 0) all[fit.size()] = x[6] / kSightsHigherSpread_m;
    return all;
  };
  return leastSquares(residuals, Eigen::VectorXd::Zero(6 + heights)).parameters.head<6>();
}

}  // namespace ferrule
