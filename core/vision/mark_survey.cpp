// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/mark_survey.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <utility>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// A sight is looked for so far about its place: nothing else of the rail lies so near to it.
constexpr double kSightReach_m = 0.025;
/// Sights are inlays of 5 to 30 mm. Common practice, no source.
constexpr double kLeastSight_m2 = 0.000015;
constexpr double kMostSight_m2 = 0.000600;
/// Samples a pixel, each way.
constexpr double kSamples = 2.0;
/// Grey levels, and deviations of the rail's own grain, that a sight stands off it.
constexpr double kLeastContrast = 14.0;
constexpr double kLeastDeviations = 5.0;
/// A second spot of this share of the first one's weight makes it unsure which is the sight.
constexpr double kRival = 0.5;
/// An opening is looked for so many hole radii about its middle, first where it is expected, then where it is.
constexpr std::array<double, 3> kPocketReach{1.7, 1.5, 1.5};
/// Shares of the hole's own area.
constexpr double kLeastOpening = 0.35;
constexpr double kMostOpening = 1.8;
/// What lies beside an opening is read off the outermost part of the patch, from this share of its radius on: its
/// darkest kind is the rail or the cloth, whichever is the darker.
constexpr double kRimFrom = 0.88;
constexpr double kDarkestBeside = 0.25;
/// Dark is below this share of the way from the opening's own light to that.
constexpr double kDarkShare = 0.5;
/// Of the rim of the patch that may be dark.
constexpr double kMostOfRim = 0.05;
constexpr double kLeastDepth = 14.0;  ///< grey levels between the two
constexpr double kFloor_px = 0.1;     ///< the same pixels cut the same edges in every image
constexpr double kMostOff_m = 0.010;

/// A square piece of the table, laid out straight.
struct Patch {
  cv::Mat bgr;  ///< 8-bit
  TablePoint centre;
  double step_m = 0.0;
  int half = 0;  ///< steps from the middle to the border

  [[nodiscard]] TablePoint at(double column, double row) const {
    return centre + TableVector{(column - half) * step_m, (row - half) * step_m};
  }
};

std::optional<Patch> patchAbout(const cv::Mat& picture, const Rig& rig, TablePoint centre, double height_m,
                                double reach_m) {
  const auto pixel = imageFromTable(rig, {centre.x, centre.y, height_m});
  const auto beside = imageFromTable(rig, {centre.x + 0.01, centre.y, height_m});
  if (!pixel || !beside) return std::nullopt;
  const double step_m = 0.01 / (kSamples * distance(*pixel, *beside));
  const int half = static_cast<int>(std::lround(reach_m / step_m));
  if (half < 6) return std::nullopt;
  Patch patch{{}, centre, step_m, half};
  const int size = 2 * half + 1;
  cv::Mat x(size, size, CV_32F);
  cv::Mat y(size, size, CV_32F);
  for (int row = 0; row < size; ++row) {
    for (int column = 0; column < size; ++column) {
      const TablePoint p = patch.at(column, row);
      const auto seen = imageFromTable(rig, {p.x, p.y, height_m});
      // A mark at the picture's border is not seen whole.
      if (!seen || seen->x < 0.0 || seen->y < 0.0 || seen->x > picture.cols - 1.0 || seen->y > picture.rows - 1.0) {
        return std::nullopt;
      }
      x.at<float>(row, column) = static_cast<float>(seen->x);
      y.at<float>(row, column) = static_cast<float>(seen->y);
    }
  }
  cv::remap(picture, patch.bgr, x, y, cv::INTER_LINEAR);
  return patch;
}

/// How far each sample's colour lies from the patch's middle colour, grey levels; and what the grain itself does.
struct Apart {
  cv::Mat levels;  ///< CV_32F
  double grain = 0.0;
};

Apart apartFromMiddle(const Patch& patch) {
  std::array<std::vector<double>, 3> channels;
  for (int row = 0; row < patch.bgr.rows; ++row) {
    for (int column = 0; column < patch.bgr.cols; ++column) {
      for (int c = 0; c < 3; ++c)
        channels[static_cast<std::size_t>(c)].push_back(patch.bgr.at<cv::Vec3b>(row, column)[c]);
    }
  }
  const cv::Vec3d middle(median(channels[0]), median(channels[1]), median(channels[2]));
  Apart apart{cv::Mat(patch.bgr.size(), CV_32F), 0.0};
  std::vector<double> all;
  for (int row = 0; row < patch.bgr.rows; ++row) {
    for (int column = 0; column < patch.bgr.cols; ++column) {
      const cv::Vec3d off = cv::Vec3d(patch.bgr.at<cv::Vec3b>(row, column)) - middle;
      const double level = cv::norm(off) / std::numbers::sqrt3;
      apart.levels.at<float>(row, column) = static_cast<float>(level);
      all.push_back(level);
    }
  }
  apart.grain = kDeviationFromMedian * median(std::move(all));
  return apart;
}

/// One connected piece of a mask.
struct Piece {
  double area_m2 = 0.0;
  double weight = 0.0;
  TablePoint middle;  ///< centroid, by weight
  bool touchesBorder = false;
};

/// weight: CV_32F; what a sample counts for.
std::vector<Piece> piecesOf(const cv::Mat& mask, const cv::Mat& weight, const Patch& patch) {
  cv::Mat labels, stats, centroids;
  const int count = cv::connectedComponentsWithStats(mask, labels, stats, centroids, 8, CV_32S);
  std::vector<Piece> pieces;
  for (int label = 1; label < count; ++label) {
    Piece piece;
    double column = 0.0;
    double row = 0.0;
    for (int r = 0; r < mask.rows; ++r) {
      for (int c = 0; c < mask.cols; ++c) {
        if (labels.at<int>(r, c) != label) continue;
        const double w = weight.at<float>(r, c);
        piece.weight += w;
        column += w * c;
        row += w * r;
      }
    }
    if (!(piece.weight > 0.0)) continue;
    piece.middle = patch.at(column / piece.weight, row / piece.weight);
    piece.area_m2 = stats.at<int>(label, cv::CC_STAT_AREA) * patch.step_m * patch.step_m;
    const int left = stats.at<int>(label, cv::CC_STAT_LEFT);
    const int top = stats.at<int>(label, cv::CC_STAT_TOP);
    piece.touchesBorder = left == 0 || top == 0 || left + stats.at<int>(label, cv::CC_STAT_WIDTH) == mask.cols ||
                          top + stats.at<int>(label, cv::CC_STAT_HEIGHT) == mask.rows;
    pieces.push_back(piece);
  }
  std::ranges::stable_sort(pieces, std::ranges::greater{}, &Piece::weight);
  return pieces;
}

std::optional<TablePoint> sightIn(const Patch& patch) {
  const Apart apart = apartFromMiddle(patch);
  double most = 0.0;
  cv::minMaxLoc(apart.levels, nullptr, &most);
  if (most < std::max(kLeastContrast, kLeastDeviations * apart.grain)) return std::nullopt;
  // Half-way between the rail and the sight lies its outline, whatever the blur.
  const cv::Mat mask = apart.levels > 0.5 * most;
  const std::vector<Piece> pieces = piecesOf(mask, apart.levels, patch);
  if (pieces.empty()) return std::nullopt;
  const Piece& piece = pieces.front();
  if (piece.touchesBorder || piece.area_m2 < kLeastSight_m2 || piece.area_m2 > kMostSight_m2) return std::nullopt;
  if (pieces.size() > 1 && pieces[1].weight > kRival * piece.weight) return std::nullopt;
  return piece.middle;
}

double percentile(std::vector<double> values, double share) {
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
  std::nth_element(values.begin(), at, values.end());
  return *at;
}

/// Whether what is dark goes past the patch's round rim: something else is joined to the opening.
bool reachesRim(const cv::Mat& mask, const Patch& patch) {
  cv::Mat rim = cv::Mat::zeros(mask.size(), CV_8U);
  cv::circle(rim, {patch.half, patch.half}, patch.half - 1, cv::Scalar::all(255), 1);
  return cv::countNonZero(rim & mask) > kMostOfRim * cv::countNonZero(rim);
}

/// whole: what reaches the patch's rim is more than an opening.
std::optional<TablePoint> openingIn(const Patch& patch, double holeRadius_m, bool whole) {
  cv::Mat grey;
  cv::cvtColor(patch.bgr, grey, cv::COLOR_BGR2GRAY);
  // In a round patch the floor beyond the rails, dark as well, is farther away; along its rim lie cloth and rail.
  cv::Mat disc = cv::Mat::zeros(grey.size(), CV_8U);
  cv::circle(disc, {patch.half, patch.half}, patch.half, cv::Scalar::all(255), cv::FILLED);
  std::vector<double> inside;
  std::vector<double> along;
  const double within = kRimFrom * patch.half;
  for (int row = 0; row < grey.rows; ++row) {
    for (int column = 0; column < grey.cols; ++column) {
      const double from = std::hypot(row - patch.half, column - patch.half);
      if (from > patch.half) continue;
      (from < within ? inside : along).push_back(grey.at<unsigned char>(row, column));
    }
  }
  const double dark = percentile(std::move(inside), 0.1);
  const double beside = percentile(std::move(along), kDarkestBeside);
  if (beside - dark < kLeastDepth) return std::nullopt;
  cv::Mat mask = grey < dark + kDarkShare * (beside - dark);
  mask &= disc;
  const std::vector<Piece> pieces = piecesOf(mask, cv::Mat::ones(grey.size(), CV_32F), patch);
  const double hole_m2 = std::numbers::pi * holeRadius_m * holeRadius_m;
  if (pieces.empty() || (whole && reachesRim(mask, patch))) return std::nullopt;
  const double share = pieces.front().area_m2 / hole_m2;
  if (share < kLeastOpening || share > kMostOpening) return std::nullopt;
  return pieces.front().middle;
}

}  // namespace

std::vector<MarkSighting> findMarks(const cv::Mat& picture, const Rig& rough, const Table& table) {
  std::vector<MarkSighting> found;
  const auto holes = pockets(table);
  for (const TableMark& mark : tableMarks()) {
    const TablePoint expected = markPlace(table, mark).place;
    const bool sight = mark.kind == MarkKind::Sight;
    const double radius_m = sight ? 0.0 : holes[static_cast<std::size_t>(mark.number)].holeRadius_m;
    // Looked at again about what was found: then it no longer matters how rough the rig is.
    std::optional<TablePoint> middle = expected;
    for (std::size_t round = 0; round < kPocketReach.size() && middle; ++round) {
      const double reach_m = sight ? kSightReach_m : kPocketReach[round] * radius_m;
      const auto patch = patchAbout(picture, rough, *middle, table.noseHeight_m, reach_m);
      if (!patch) {
        middle.reset();
      } else {
        middle = sight ? sightIn(*patch) : openingIn(*patch, radius_m, round > 0);
      }
    }
    const auto pixel = middle ? imageFromTable(rough, {middle->x, middle->y, table.noseHeight_m}) : std::nullopt;
    if (pixel) found.push_back({mark, *pixel, kFloor_px});
  }
  return found;
}

std::vector<MarkSighting> withHandMarks(std::vector<MarkSighting> found, const std::vector<HandMark>& said) {
  for (const HandMark& hand : said) {
    std::erase_if(found, [&](const MarkSighting& other) { return other.mark == hand.mark; });
    if (hand.isThere) found.push_back({hand.mark, hand.place, kHandPlaced_px});
  }
  return found;
}

std::vector<MarkSighting> marksByLines(const cv::Mat& picture, const RigEvidence& evidence,
                                       const MeasuredTable& measured, const std::vector<LineTrace>& lines) {
  const auto rough = rigFromLines(evidence, measured, lines);
  if (!rough) return {};
  std::vector<MarkSighting> marks = findMarks(picture, *rough, measured.table);
  const auto fit = fitRigFromLines(evidence, measured, lines, marks);
  if (!fit) return {};
  std::vector<MarkSighting> kept;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    if (fit->markOff_m[i] && std::abs(*fit->markOff_m[i]) <= kMostOff_m) kept.push_back(marks[i]);
  }
  return kept;
}

}  // namespace ferrule
