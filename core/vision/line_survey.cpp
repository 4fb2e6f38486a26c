// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/line_survey.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/vision/edge_strip.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// Rounded ends of a cushion and the first of its facing, left out.
constexpr double kEndLeftOut_m = 0.06;
/// How far to either side of its expected place a line is looked for: less than half the cushion's width.
constexpr double kReach_m = 0.020;
constexpr double kAlong_px = 2.0;
constexpr double kAcross_px = 0.5;
/// Share of a line that must be seen.
constexpr double kLeastShare = 0.5;
/// Edges are averaged in so many groups along a line.
constexpr int kGroups = 24;
/// A darkening edge of at least this share of the lighter one's contrast is the nose's.
constexpr double kShadowShare = 0.4;
constexpr double kFloor_px = 0.1;  ///< the same pixels cut the same edges in every image

struct Strip {
  cv::Mat light;
  StripPlace place;
};

std::optional<Strip> stripAbout(const cv::Mat& light, const ClothOutline& outline, TableWay way, const Table& table,
                                const Cushion& cushion, double behind_m) {
  const TableVector whole = cushion.nose.end - cushion.nose.start;
  const TableVector along = unit(whole);
  const double length_m = length(whole) - 2.0 * kEndLeftOut_m;
  const TablePoint start = cushion.nose.start + kEndLeftOut_m * along - behind_m * cushion.inward;
  const auto seen = [&](TablePoint p) { return roughImageFromTable(outline, way, table, p); };
  const double length_px = distance(seen(start), seen(start + length_m * along));
  const TablePoint middle = start + 0.5 * length_m * along;
  const double across_pxpm = distance(seen(middle), seen(middle + 0.01 * cushion.inward)) / 0.01;
  const int rows = static_cast<int>(length_px / kAlong_px);
  const int half = static_cast<int>(kReach_m * across_pxpm / kAcross_px);
  if (!(length_m > 0.0) || rows < kLeastStripRows || half < kLeastHalfStrip) return std::nullopt;
  const double along_m = length_m / rows;
  const double across_m = kAcross_px / across_pxpm;
  const StripPlace place = [=, &outline, &table](double row, double column) -> std::optional<ImagePoint> {
    return roughImageFromTable(outline, way, table,
                               start + (row * along_m) * along + ((column - half) * across_m) * cushion.inward);
  };
  return Strip{stripOf(light, rows, 2 * half + 1, place), place};
}

LineTrace grouped(const Strip& strip, const std::vector<StripEdge>& edges) {
  LineTrace trace;
  // What scatters about a smooth curve is the picture's noise; a lens bends no line more sharply.
  double sum = 0.0;
  for (const double miss : missesOfPolynomial(edges, 3))
    sum += miss * miss;
  const double scatter_px = kAcross_px * std::sqrt(sum / static_cast<double>(edges.size()));
  const double perGroup = static_cast<double>(edges.size()) / kGroups;
  // Neighbouring rows share pixels: an average of n rows counts for about n / 5 independent ones.
  trace.u_px = std::hypot(kFloor_px, scatter_px / std::sqrt(std::max(1.0, perGroup / 5.0)));
  for (int group = 0; group < kGroups; ++group) {
    const auto from = static_cast<std::size_t>(group * perGroup);
    const auto to = std::max(from + 1, static_cast<std::size_t>((group + 1) * perGroup));
    double row = 0.0;
    double column = 0.0;
    for (std::size_t i = from; i < std::min(to, edges.size()); ++i) {
      row += edges[i].row;
      column += edges[i].column;
    }
    const auto n = static_cast<double>(std::min(to, edges.size()) - from);
    if (const auto p = strip.place(row / n, column / n)) trace.places.push_back(*p);
  }
  return trace;
}

}  // namespace

ImagePoint roughImageFromTable(const ClothOutline& outline, TableWay way, const Table& table, TablePoint point) {
  const double u = 0.5 + point.x / (table.length_m + 2.0 * table.cushionWidth_m);
  const double v = 0.5 - point.y / (table.width_m + 2.0 * table.cushionWidth_m);
  return way == TableWay::HeadAtStart ? outline.at(u, v) : outline.at(1.0 - u, 1.0 - v);
}

TableWay wayWithHead(const ClothOutline& outline, PictureSide side) {
  const ImageVector way = outline.at(1.0, 0.5) - outline.at(0.0, 0.5);
  const bool startsThere = side == PictureSide::Left    ? way.x > 0.0
                           : side == PictureSide::Right ? way.x < 0.0
                           : side == PictureSide::Top   ? way.y > 0.0
                                                        : way.y < 0.0;
  return startsThere ? TableWay::HeadAtStart : TableWay::HeadAtEnd;
}

std::vector<LineTrace> traceLines(const cv::Mat& picture, const ClothOutline& outline, TableWay way,
                                  const Table& table) {
  cv::Mat grey, light;
  cv::cvtColor(picture, grey, cv::COLOR_BGR2GRAY);
  grey.convertTo(light, CV_32F);
  std::vector<LineTrace> traces;
  for (const Cushion& cushion : cushions(table)) {
    for (const auto kind : {LineTrace::Kind::Nose, LineTrace::Kind::Back}) {
      const auto strip =
          stripAbout(light, outline, way, table, cushion, kind == LineTrace::Kind::Back ? table.cushionWidth_m : 0.0);
      if (!strip) continue;
      const FollowedEdge lighter = followEdge(strip->light, EdgeKind::Lighter);
      const FollowedEdge darker = followEdge(strip->light, EdgeKind::Darker);
      const double share = kind == LineTrace::Kind::Nose ? kShadowShare : 1.0;
      const auto& edges = (darker.contrast >= share * lighter.contrast ? darker : lighter).places;
      if (static_cast<double>(edges.size()) < std::max(kLeastShare * strip->light.rows, 1.0 * kGroups)) continue;
      LineTrace trace = grouped(*strip, edges);
      trace.kind = kind;
      trace.cushion = cushion.name;
      traces.push_back(std::move(trace));
    }
  }
  return traces;
}

std::vector<LineTrace> withHandLines(std::vector<LineTrace> found, const std::vector<LineTrace>& placed) {
  for (const LineTrace& line : placed)
    std::erase_if(found, [&](const LineTrace& other) { return other.cushion == line.cushion; });
  found.insert(found.end(), placed.begin(), placed.end());
  return found;
}

}  // namespace ferrule
