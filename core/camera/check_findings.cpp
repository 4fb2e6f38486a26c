// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/check_findings.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/camera/evidence_fit.h"
#include "core/camera/silhouette.h"

namespace ferrule {

namespace {

/// What sound rigs on sound tables stay within.
constexpr double kTag_m = 0.0015;
constexpr double kStraight_m = 0.0010;
constexpr double kPlace_m = 0.0030;
constexpr double kParallel_m = 0.0030;
constexpr double kSize_m = 0.0040;
constexpr double kBallSize_m = 0.0030;
constexpr double kBallPlace_m = 0.0020;

/// A nose's best straight line: its distance from its place at the ends of what was seen of it, and its own bend.
struct NoseLine {
  double atStart_m = 0.0;
  double atEnd_m = 0.0;
  double rms_m = 0.0;
  [[nodiscard]] double mean_m() const { return 0.5 * (atStart_m + atEnd_m); }
};

std::optional<NoseLine> lineOf(const LineTrace& trace, const Rig& rig, const Table& table) {
  double n = 0.0, s = 0.0, ss = 0.0, v = 0.0, sv = 0.0;
  std::vector<PlaceOnLine> places;
  for (const auto& place : placesOnLine(trace, rig, table)) {
    if (!place) continue;
    places.push_back(*place);
    n += 1.0;
    s += place->along_m;
    v += place->inward_m;
  }
  if (places.size() < 3) return std::nullopt;
  const double middle = s / n;
  const double mean = v / n;
  for (const PlaceOnLine& place : places) {
    ss += (place.along_m - middle) * (place.along_m - middle);
    sv += (place.along_m - middle) * (place.inward_m - mean);
  }
  const double slope = sv / ss;
  NoseLine line;
  line.atStart_m = mean + slope * (places.front().along_m - middle);
  line.atEnd_m = mean + slope * (places.back().along_m - middle);
  double sum = 0.0;
  for (const PlaceOnLine& place : places)
    sum += std::pow(place.inward_m - mean - slope * (place.along_m - middle), 2);
  line.rms_m = std::sqrt(sum / n);
  return line;
}

using Kind = CheckFinding::Kind;

void addTags(std::vector<CheckFinding>& all, const Rig& rig, const MeasuredTable& measured,
             const CheckEvidence& evidence) {
  for (const RailTag& tag : measured.tags) {
    CheckFinding finding{Kind::Tag, std::to_string(tag.id), std::nullopt, kTag_m};
    const auto seen = std::ranges::find(evidence.tags, tag.id, [](const AveragedTag& t) { return t.tag.id; });
    if (seen != evidence.tags.end()) {
      double sum = 0.0;
      bool reached = true;
      for (std::size_t i = 0; i < 4; ++i) {
        const auto place = tableFromImage(rig, seen->tag.corners[i], tag.corners[i].z);
        reached = reached && place.has_value();
        if (place) sum += std::pow(distance(*place, TablePoint{tag.corners[i].x, tag.corners[i].y}), 2);
      }
      if (reached) finding.found_m = std::sqrt(sum / 4.0);
    }
    all.push_back(std::move(finding));
  }
}

void addNoses(std::vector<CheckFinding>& all, const Rig& rig, const MeasuredTable& measured,
              const CheckEvidence& evidence) {
  std::map<CushionName, NoseLine> lines;
  for (const LineTrace& trace : evidence.lines) {
    if (trace.kind != LineTrace::Kind::Nose) continue;
    if (const auto line = lineOf(trace, rig, measured.table)) lines[trace.cushion] = *line;
  }
  for (const CushionName cushion : kCushionNames) {
    const std::string name(toText(cushion));
    const auto line = lines.find(cushion);
    const bool seen = line != lines.end();
    all.push_back({Kind::NoseStraight, name, seen ? std::optional(line->second.rms_m) : std::nullopt, kStraight_m});
    all.push_back({Kind::NosePlace, name, seen ? std::optional(line->second.mean_m()) : std::nullopt, kPlace_m});
  }
  const auto pair = [&](CushionName a, CushionName b, const char* what) {
    if (!lines.contains(a) || !lines.contains(b)) return;
    // Both run from head to foot, or from right to left.
    const double atStart_m = lines[a].atStart_m + lines[b].atStart_m;
    const double atEnd_m = lines[a].atEnd_m + lines[b].atEnd_m;
    all.push_back({Kind::Parallel, what, atEnd_m - atStart_m, kParallel_m});
  };
  pair(CushionName::Head, CushionName::Foot, "head and foot");
  pair(CushionName::LeftHead, CushionName::RightHead, "left-head and right-head");
  pair(CushionName::LeftFoot, CushionName::RightFoot, "left-foot and right-foot");
  const auto mean = [&](std::initializer_list<CushionName> names) -> std::optional<double> {
    double sum = 0.0;
    int n = 0;
    for (const CushionName name : names) {
      if (!lines.contains(name)) continue;
      sum += lines[name].mean_m();
      ++n;
    }
    return n > 0 ? std::optional(sum / n) : std::nullopt;
  };
  // Inward is shorter.
  const auto size = [&](Kind kind, std::initializer_list<CushionName> a, std::initializer_list<CushionName> b) {
    const auto one = mean(a);
    const auto other = mean(b);
    all.push_back({kind, "", one && other ? std::optional(-*one - *other) : std::nullopt, kSize_m});
  };
  size(Kind::Length, {CushionName::Head}, {CushionName::Foot});
  size(Kind::Width, {CushionName::LeftHead, CushionName::LeftFoot}, {CushionName::RightHead, CushionName::RightFoot});
}

void addBalls(std::vector<CheckFinding>& all, const Rig& rig, const MeasuredTable& measured,
              const CheckEvidence& evidence) {
  const double radius_m = measured.balls.radius_m();
  std::vector<TablePoint> places;
  double least = INFINITY;
  double most = -INFINITY;
  double inside_m = -INFINITY;
  for (const BallSighting& ball : evidence.balls) {
    const auto place = tableFromImage(rig, ball.centre, radius_m);
    const auto outline = place ? silhouetteOf(rig, *place, radius_m) : std::nullopt;
    if (!outline) continue;
    const double share = ball.radius_px / outline->radius_px();
    least = std::min(least, share);
    most = std::max(most, share);
    inside_m = std::max({inside_m, std::abs(place->x) + radius_m - 0.5 * measured.table.length_m,
                         std::abs(place->y) + radius_m - 0.5 * measured.table.width_m});
    for (const TablePoint other : places)
      inside_m = std::max(inside_m, 2.0 * radius_m - distance(other, *place));
    places.push_back(*place);
  }
  if (places.size() > 1) {
    all.push_back({Kind::BallSize, "", (most - least) * measured.balls.diameter_m, kBallSize_m});
  }
  if (!places.empty()) all.push_back({Kind::BallPlace, "", std::max(0.0, inside_m), kBallPlace_m});
}

}  // namespace

std::vector<CheckFinding> findingsOf(const Rig& rig, const MeasuredTable& measured, const CheckEvidence& evidence) {
  std::vector<CheckFinding> all;
  addTags(all, rig, measured, evidence);
  addNoses(all, rig, measured, evidence);
  addBalls(all, rig, measured, evidence);
  return all;
}

}  // namespace ferrule
