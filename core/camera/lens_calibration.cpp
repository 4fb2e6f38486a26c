// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_calibration.h"

#include <algorithm>
#include <cmath>

#include "core/camera/lens_adjustment.h"
#include "core/camera/pose_fit.h"

namespace ferrule {

namespace {

constexpr std::size_t kViewsNeeded = 8;
constexpr std::size_t kCornersPerView = 8;
constexpr double kCoverageNeeded = 0.5;
/// Of the cells of the outer third on each side.
constexpr double kSideNeeded = 0.25;
constexpr std::size_t kFolds = 5;
constexpr int kMostRounds = 10;
/// A corner is dropped beyond this many robust standard deviations, and never below half a pixel.
constexpr double kCornerGate = 5.0;
constexpr double kCornerGateLeast_px = 0.5;
/// A still is dropped when its rms exceeds the median still's by this factor, and half a pixel.
constexpr double kViewGate = 3.0;
constexpr double kViewGateLeast_px = 0.5;

/// From simple to rich; of two that foretell equally well the earlier is taken.
const std::array<LensShape, 4>& shapes() {
  static const std::array<LensShape, 4> all{{{LensModel::Brown5, 4, "brown4"},
                                             {LensModel::Brown5, 5, "brown5"},
                                             {LensModel::Fisheye, 4, "fisheye"},
                                             {LensModel::Brown8, 8, "brown8"}}};
  return all;
}

double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

double rmsOf(std::span<const ImageVector> residuals) {
  double sum = 0.0;
  for (const ImageVector& r : residuals)
    sum += dot(r, r);
  return residuals.empty() ? 0.0 : std::sqrt(sum / static_cast<double>(residuals.size()));
}

/// plain: the solution for Brown5. The rational model must start from it: far from its solution it has poles.
std::optional<LensAdjustment> adjust(const LensShape& shape, const Board& board, std::span<const BoardView> views,
                                     const Lens& plain) {
  if (shape.model == LensModel::Fisheye) return adjustLens(shape, board, views);
  Lens start = plain;
  std::fill(start.coefficients.begin() + shape.coefficients, start.coefficients.end(), 0.0);
  return adjustLens(shape, board, views, start);
}

Result<void> checkViews(std::span<const BoardView> views) {
  for (const BoardView& view : views) {
    if (view.size != views[0].size) {
      return failure(ErrorCode::ImageSizesMixed, view.still, {},
                     {static_cast<double>(view.size.width), static_cast<double>(view.size.height),
                      static_cast<double>(views[0].size.width), static_cast<double>(views[0].size.height)});
    }
  }
  return {};
}

tl::unexpected<Error> tooFew(const Board& board, std::size_t usable) {
  return failure(ErrorCode::ViewsTooFew, board.text, {},
                 {static_cast<double>(usable), static_cast<double>(kViewsNeeded)});
}

double coveredShare(const Coverage& coverage, int left, int right, int top, int bottom) {
  int covered = 0;
  int all = 0;
  for (int row = top; row < bottom; ++row) {
    for (int column = left; column < right; ++column) {
      ++all;
      if (coverage.corners[static_cast<std::size_t>(row * Coverage::kColumns + column)] > 0) ++covered;
    }
  }
  return static_cast<double>(covered) / all;
}

Result<void> checkCoverage(const Board& board, const Coverage& coverage) {
  constexpr int w = Coverage::kColumns;
  constexpr int h = Coverage::kRows;
  struct Strip {
    const char* name;
    int left, right, top, bottom;
    double needed;
  };
  // Sides first: "nothing on the left" helps more than "too little in all".
  constexpr Strip strips[] = {{"left", 0, 3, 0, h, kSideNeeded},
                              {"right", w - 3, w, 0, h, kSideNeeded},
                              {"top", 0, w, 0, 2, kSideNeeded},
                              {"bottom", 0, w, h - 2, h, kSideNeeded},
                              {"whole", 0, w, 0, h, kCoverageNeeded}};
  for (const Strip& strip : strips) {
    const double share = coveredShare(coverage, strip.left, strip.right, strip.top, strip.bottom);
    if (share < strip.needed)
      return failure(ErrorCode::CoverageOneSided, board.text, strip.name, {share, strip.needed});
  }
  return {};
}

/// Views with their bad corners taken out, and what was done to each.
struct Cleaning {
  std::vector<BoardView> views;
  std::vector<ViewReport> reports;  ///< of all views that came in
  Lens plain;                       ///< the last fit's
};

/// Fits, drops what lies too far off, and fits again until nothing does. Corners go before stills: two wrong corners
/// must not cost the other thirty.
std::optional<Cleaning> cleaned(const Board& board, std::vector<BoardView> views) {
  Cleaning result;
  std::vector<std::size_t> origin;
  for (const BoardView& view : views) {
    result.reports.push_back({view.still, 0.0, static_cast<int>(view.corners.size()), 0, true});
    origin.push_back(origin.size());
  }
  const LensShape shape = shapes()[1];
  std::optional<Lens> start;
  for (int round = 0; round < kMostRounds; ++round) {
    const auto fit = adjustLens(shape, board, views, start);
    if (!fit) return std::nullopt;
    start = fit->lens;
    result.plain = fit->lens;
    std::vector<double> lengths;
    std::vector<double> perView;
    for (const auto& residuals : fit->residuals) {
      for (const ImageVector& r : residuals)
        lengths.push_back(length(r));
      perView.push_back(rmsOf(residuals));
    }
    // For two normal components the median length is 1.1774 standard deviations.
    const double gate = std::max(kCornerGate * median(lengths) / 1.1774, kCornerGateLeast_px);
    const double viewGate = std::max(kViewGate * median(perView), kViewGateLeast_px);
    bool changed = false;
    std::vector<BoardView> kept;
    std::vector<std::size_t> keptOrigin;
    for (std::size_t v = 0; v < views.size(); ++v) {
      ViewReport& report = result.reports[origin[v]];
      const auto& residuals = fit->residuals[v];
      const double worst = length(*std::ranges::max_element(residuals, {}, [](ImageVector r) { return length(r); }));
      BoardView next = views[v];
      next.corners.clear();
      for (std::size_t i = 0; i < residuals.size(); ++i) {
        // Only the worst go in one round: they pull their neighbours' residuals up.
        if (length(residuals[i]) > gate && length(residuals[i]) > 0.7 * worst) continue;
        next.corners.push_back(views[v].corners[i]);
      }
      const auto dropped = views[v].corners.size() - next.corners.size();
      // A few bad corners are a misreading; many are a bad still.
      const auto droppedInAll = static_cast<std::size_t>(report.dropped) + dropped;
      const bool bad = next.corners.size() < kCornersPerView ||
                       4 * droppedInAll > views[v].corners.size() + static_cast<std::size_t>(report.dropped) ||
                       (dropped == 0 && perView[v] > viewGate);
      if (bad) {
        report.used = false;
        report.rms_px = perView[v];
        changed = true;
        continue;
      }
      report.dropped += static_cast<int>(dropped);
      report.corners = static_cast<int>(next.corners.size());
      changed = changed || dropped > 0;
      kept.push_back(std::move(next));
      keptOrigin.push_back(origin[v]);
    }
    views = std::move(kept);
    origin = std::move(keptOrigin);
    if (views.size() < kViewsNeeded || !changed) break;
  }
  result.views = std::move(views);
  return result;
}

/// Squared rms of each view when its fold was left out, in the order of the views; empty when a fit fails.
/// start: the shape's solution over all views, where each fold's search begins.
std::vector<double> heldOutErrors(const LensShape& shape, const Board& board, std::span<const BoardView> views,
                                  const Lens& start) {
  std::vector<double> errors(views.size(), 0.0);
  for (std::size_t fold = 0; fold < kFolds; ++fold) {
    std::vector<BoardView> training;
    for (std::size_t v = 0; v < views.size(); ++v) {
      if (v % kFolds != fold) training.push_back(views[v]);
    }
    const auto fit = adjustLens(shape, board, training, start);
    if (!fit) return {};
    for (std::size_t v = fold; v < views.size(); v += kFolds) {
      std::vector<Sighting> sightings;
      for (const BoardCorner& corner : views[v].corners) {
        sightings.push_back({board.corner(corner.index), corner.pixel, 1.0});
      }
      const auto pose = fitPose(fit->lens, sightings);
      if (!pose) return {};
      errors[v] = pose->rms_px * pose->rms_px;
    }
  }
  return errors;
}

double mean(std::span<const double> values) {
  double sum = 0.0;
  for (const double value : values)
    sum += value;
  return sum / static_cast<double>(values.size());
}

/// Whether the errors a are worse than b by more than chance: paired differences, one standard error.
/// Source: Hastie, Tibshirani and Friedman 2009, section 7.10 (the one-standard-error rule).
bool clearlyWorse(std::span<const double> a, std::span<const double> b) {
  std::vector<double> differences(a.size());
  for (std::size_t i = 0; i < a.size(); ++i)
    differences[i] = a[i] - b[i];
  const double middle = mean(differences);
  double squares = 0.0;
  for (const double d : differences)
    squares += (d - middle) * (d - middle);
  const double n = static_cast<double>(a.size());
  return middle > std::sqrt(squares / (n * (n - 1.0)));
}

}  // namespace

double Coverage::share() const {
  return coveredShare(*this, 0, kColumns, 0, kRows);
}

Coverage coverageOf(std::span<const BoardView> views, ImageSize size) {
  Coverage coverage;
  const ImagePoint middle{0.5 * (size.width - 1), 0.5 * (size.height - 1)};
  for (const BoardView& view : views) {
    for (const BoardCorner& corner : view.corners) {
      const int column = static_cast<int>((corner.pixel.x + 0.5) / size.width * Coverage::kColumns);
      const int row = static_cast<int>((corner.pixel.y + 0.5) / size.height * Coverage::kRows);
      const int index =
          std::clamp(row, 0, Coverage::kRows - 1) * Coverage::kColumns + std::clamp(column, 0, Coverage::kColumns - 1);
      ++coverage.corners[static_cast<std::size_t>(index)];
      coverage.reach =
          std::max(coverage.reach, distance(corner.pixel, middle) / (0.5 * std::hypot(size.width, size.height)));
    }
  }
  return coverage;
}

bool coversItsPicture(const Lens& lens) {
  constexpr int kSteps = 16;
  const double right = lens.size.width - 0.5;
  const double bottom = lens.size.height - 0.5;
  for (int i = 0; i <= kSteps; ++i) {
    const double x = -0.5 + (right + 0.5) * i / kSteps;
    const double y = -0.5 + (bottom + 0.5) * i / kSteps;
    for (const ImagePoint point : {ImagePoint{x, -0.5}, {x, bottom}, {-0.5, y}, {right, y}}) {
      if (!rayFromImage(lens, point)) return false;
    }
  }
  return true;
}

Result<LensCalibration> calibrateLens(const Board& board, std::vector<BoardView> views, const JobControl& job) {
  if (const auto sizes = checkViews(views); !sizes) return tl::make_unexpected(sizes.error());
  std::erase_if(views, [](const BoardView& view) { return view.corners.size() < kCornersPerView; });
  if (views.size() < kViewsNeeded) return tooFew(board, views.size());
  const ImageSize size = views[0].size;
  if (const auto enough = checkCoverage(board, coverageOf(views, size)); !enough)
    return tl::make_unexpected(enough.error());

  job.reportShare(0.0, "fitting the lens");
  auto cleaning = cleaned(board, std::move(views));
  if (!cleaning) return failure(ErrorCode::LensNotUsable, board.text, "no-fit");
  if (cleaning->views.size() < kViewsNeeded) return tooFew(board, cleaning->views.size());

  LensCalibration result;
  result.usedViews = std::move(cleaning->views);
  result.views = std::move(cleaning->reports);
  result.coverage = coverageOf(result.usedViews, size);
  if (const auto enough = checkCoverage(board, result.coverage); !enough) return tl::make_unexpected(enough.error());

  struct Candidate {
    std::size_t shape;
    LensAdjustment fit;
    std::vector<double> errors;
  };
  std::vector<Candidate> candidates;
  for (std::size_t s = 0; s < shapes().size(); ++s) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    job.reportShare(static_cast<double>(s + 1) / (static_cast<double>(shapes().size()) + 1.0), "fitting the lens");
    ShapeScore score;
    score.name = shapes()[s].name;
    auto fit = adjust(shapes()[s], board, result.usedViews, cleaning->plain);
    auto errors = fit ? heldOutErrors(shapes()[s], board, result.usedViews, fit->lens) : std::vector<double>();
    if (fit) score.training_px = fit->rms_px;
    if (errors.empty()) {
      score.refused = "no-fit";
    } else {
      score.heldOut_px = std::sqrt(mean(errors));
      if (!coversItsPicture(fit->lens)) {
        score.refused = "folds";
      } else {
        candidates.push_back({s, std::move(*fit), std::move(errors)});
      }
    }
    result.shapes.push_back(std::move(score));
  }
  if (candidates.empty()) return failure(ErrorCode::LensNotUsable, board.text, "folds");
  const auto best = std::ranges::min_element(candidates, {}, [](const Candidate& c) { return mean(c.errors); });
  const auto chosen =
      std::ranges::find_if(candidates, [&](const Candidate& c) { return !clearlyWorse(c.errors, best->errors); });

  result.lens = chosen->fit.lens;
  result.lens.board = board.text;
  const auto names = coefficientNames(result.lens.model);
  const int free = shapes()[chosen->shape].coefficients;
  result.uncertainty = LensUncertainty::of(chosen->fit.covariance);
  const auto u = [&](int k) { return std::sqrt(chosen->fit.covariance(k, k)); };
  result.parameters = {{"fx", result.lens.focalX_px, u(0)},
                       {"fy", result.lens.focalY_px, u(1)},
                       {"cx", result.lens.centre.x, u(2)},
                       {"cy", result.lens.centre.y, u(3)}};
  for (int k = 0; k < free; ++k) {
    const auto index = static_cast<std::size_t>(k);
    result.parameters.push_back({std::string(names[index]), result.lens.coefficients[index], u(4 + k)});
  }
  std::size_t used = 0;
  for (ViewReport& report : result.views) {
    if (report.used) report.rms_px = rmsOf(chosen->fit.residuals[used++]);
  }
  job.reportShare(1.0, "fitting the lens");
  return result;
}

}  // namespace ferrule
