// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/delivery_fit.h"

#include <ceres/tiny_solver.h>

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

using Indices = std::vector<Eigen::Index>;

/// Tip points to start from, in spreads.
constexpr std::array kSideStarts{0.0, -1.2, 1.2};
constexpr std::array kHeightStarts{0.0, -1.3, 1.3};
constexpr std::array kOtherHeights{-1.8, -1.2, -0.6, 0.0, 0.6, 1.2, 1.8};
constexpr double kOtherSide = 0.3;
/// Elevations that are gone through, in spreads of its logarithm.
constexpr double kElevationStep = 0.5;
constexpr double kLeastElevation = -2.5;
constexpr double kMostElevation = 3.0;
/// Hops that carry the ball over some images are valleys of their own.
constexpr std::array kElevationStarts{-1.5, -0.5, 0.5, 1.5, 2.3};
constexpr double kSameElevation = 1e-6;
/// Around the best ones the elevations are gone through this much finer.
constexpr int kFineNodes = 4;
constexpr double kWorthRefining = 6.0;
/// Modes this much dearer than the best do not count, in chi-square.
constexpr double kHopeless = 20.0;
constexpr std::size_t kMostModes = 4;
/// By how much an unknown may follow one spread of elevation.
constexpr double kMostFollow = 5.0;
constexpr int kMostParts = 3;
/// A cost that rises by more than this over one step along the elevations has lost its valley, or the hope.
constexpr double kLostValley = 12.0;
constexpr double kLostHope = 60.0;
constexpr int kRoughSteps = 8;
constexpr int kFineSteps = 14;
constexpr double kLeastGain = 0.02;  ///< half of a chi-square below which a step is the last
/// A fit that leaves out more than this share of the samples follows something else.
constexpr double kLeastUsed = 0.75;
constexpr double kWorstChiSquare = 4.0;
constexpr double kMostFar = 60.0;
constexpr std::size_t kFewestSamples = 4;
/// How far the first fit looks, and how much farther every further one; less where that was too far.
constexpr double kFirstHorizon_s = 0.25;
constexpr double kHorizonGrowth = 1.8;
constexpr double kLeastGrowth = 1.1;
/// The cost is looked at this many standard uncertainties to both sides, to see whether it rises as it should.
constexpr double kProbe = 2.0;
constexpr double kMostWidening = 4.0;

/// The problem as the solver sees it: some unknowns free, the others held.
class FreeProblem {
 public:
  using Scalar = double;
  enum { NUM_RESIDUALS = Eigen::Dynamic, NUM_PARAMETERS = Eigen::Dynamic };

  FreeProblem(const DeliveryProblem& problem, Eigen::VectorXd held, const Indices& free)
      : problem_(problem), held_(std::move(held)), free_(free) {}

  [[nodiscard]] int NumResiduals() const { return static_cast<int>(problem_.residuals()); }
  [[nodiscard]] int NumParameters() const { return static_cast<int>(free_.size()); }

  bool operator()(const double* parameters, double* residuals, double* jacobian) const {
    const Eigen::VectorXd z = whole(parameters);
    const auto played = problem_.play(z);
    Eigen::Map<Eigen::VectorXd>(residuals, problem_.residuals()) = played.residuals;
    if (jacobian != nullptr) {
      Eigen::Map<Eigen::MatrixXd>(jacobian, problem_.residuals(), NumParameters()) = problem_.slopes(z, played, free_);
    }
    return true;
  }

  [[nodiscard]] Eigen::VectorXd whole(const double* parameters) const {
    Eigen::VectorXd z = held_;
    for (std::size_t i = 0; i < free_.size(); ++i)
      z[free_[i]] = parameters[i];
    return z;
  }

 private:
  const DeliveryProblem& problem_;
  Eigen::VectorXd held_;
  const Indices& free_;
};

/// A least of the cost.
struct Mode {
  Eigen::VectorXd z;
  double cost = 0.0;
};

Mode minimise(const DeliveryProblem& problem, const Eigen::VectorXd& from, const Indices& free, int steps) {
  const FreeProblem function(problem, from, free);
  Eigen::VectorXd parameters(static_cast<Eigen::Index>(free.size()));
  for (std::size_t i = 0; i < free.size(); ++i)
    parameters[static_cast<Eigen::Index>(i)] = from[free[i]];
  ceres::TinySolver<FreeProblem> solver;
  solver.options.max_num_iterations = steps;
  solver.options.function_tolerance = kLeastGain;
  solver.Solve(function, &parameters);
  return {function.whole(parameters.data()), 2.0 * solver.summary.final_cost};
}

Indices unknownsOf(const DeliveryProblem& problem, bool withElevation, bool withWorld) {
  Indices free;
  for (Eigen::Index i = 0; i < problem.unknowns(); ++i) {
    if (i == kLogElevation && !withElevation) continue;
    if (!withWorld && i > kLogElevation && i < kDeliveryUnknowns) continue;
    if (problem.matters(i)) free.push_back(i);
  }
  return free;
}

bool alike(const Mode& a, const Mode& b) {
  return std::abs(a.z[kSide] - b.z[kSide]) < 0.25 && std::abs(a.z[kHeight] - b.z[kHeight]) < 0.25 &&
         std::abs(a.z[kLogElevation] - b.z[kLogElevation]) < 2.0 * kElevationStep;
}

/// The cheapest ones that differ.
std::vector<Mode> distinct(std::vector<Mode> modes, std::size_t most) {
  std::ranges::stable_sort(modes, {}, &Mode::cost);
  std::vector<Mode> kept;
  for (const Mode& mode : modes) {
    if (kept.size() >= most || mode.cost > modes.front().cost + kHopeless) break;
    if (std::ranges::none_of(kept, [&](const Mode& other) { return alike(other, mode); })) kept.push_back(mode);
  }
  return kept;
}

/// What all modes say together about some unknowns.
struct Belief {
  Eigen::VectorXd mean;
  Eigen::MatrixXd covariance;
};

constexpr std::array<Eigen::Index, 6> kAsked{kStrikeTime, kAim, kLogSpeed, kSide, kHeight, kLogElevation};
constexpr Eigen::Index kAskedCount = 6;

/// One mode with its weight, before normalising, as a logarithm.
struct Weighed {
  Eigen::VectorXd mean;
  Eigen::MatrixXd covariance;
  double logWeight = 0.0;
};

/// The cost around a mode with the elevation held, to second order.
struct Expansion {
  Eigen::MatrixXd covariance;  ///< of the free unknowns
  Eigen::VectorXd follow;      ///< how the free unknowns follow the elevation along the valley
  double logVolume = 0.0;      ///< half of the logarithm of the covariance's determinant
};

std::optional<Expansion> expand(const DeliveryProblem& problem, const Eigen::VectorXd& z, const Indices& free) {
  Indices all = free;
  all.push_back(kLogElevation);
  const Eigen::MatrixXd slopes = problem.slopes(z, problem.play(z), all);
  const auto count = static_cast<Eigen::Index>(free.size());
  const auto own = slopes.leftCols(count);
  const Eigen::LDLT<Eigen::MatrixXd> solver(own.transpose() * own);
  const Eigen::VectorXd pivots = solver.vectorD();
  if (!(pivots.minCoeff() > 0.0)) return std::nullopt;
  Expansion expansion;
  expansion.covariance = solver.solve(Eigen::MatrixXd::Identity(count, count));
  expansion.follow = -expansion.covariance * (own.transpose() * slopes.rightCols(1));
  expansion.logVolume = -0.5 * pivots.array().log().sum();
  return expansion;
}

std::optional<Weighed> weigh(const DeliveryProblem& problem, const Mode& mode, const Indices& free) {
  const auto expansion = expand(problem, mode.z, free);
  if (!expansion) return std::nullopt;
  Weighed weighed;
  weighed.logWeight = -0.5 * mode.cost + expansion->logVolume;
  weighed.mean.resize(kAskedCount);
  weighed.covariance.setZero(kAskedCount, kAskedCount);
  std::array<std::optional<Eigen::Index>, kAskedCount> column;
  for (std::size_t i = 0; i < kAsked.size(); ++i) {
    weighed.mean[static_cast<Eigen::Index>(i)] = mode.z[kAsked[i]];
    const auto found = std::ranges::find(free, kAsked[i]);
    if (found != free.end()) column[i] = found - free.begin();
  }
  for (std::size_t i = 0; i < kAsked.size(); ++i) {
    for (std::size_t j = 0; j < kAsked.size(); ++j) {
      if (!column[i] || !column[j]) continue;
      weighed.covariance(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
          expansion->covariance(*column[i], *column[j]);
    }
  }
  return weighed;
}

std::optional<Belief> joined(const std::vector<Weighed>& all) {
  if (all.empty()) return std::nullopt;
  const double most = std::ranges::max_element(all, {}, &Weighed::logWeight)->logWeight;
  Belief belief{Eigen::VectorXd::Zero(kAskedCount), Eigen::MatrixXd::Zero(kAskedCount, kAskedCount)};
  double total = 0.0;
  for (const Weighed& one : all) {
    const double weight = std::exp(one.logWeight - most);
    total += weight;
    belief.mean += weight * one.mean;
    belief.covariance += weight * (one.covariance + one.mean * one.mean.transpose());
  }
  belief.mean /= total;
  belief.covariance = belief.covariance / total - belief.mean * belief.mean.transpose();
  return belief;
}

/// The mode at another elevation, followed along the valley in as many steps as it takes.
Mode followed(const DeliveryProblem& problem, const Mode& from, double elevation, const Indices& free) {
  const double way = elevation - from.z[kLogElevation];
  for (int parts = 1;; parts *= 3) {
    Mode mode = from;
    for (int i = 0; i < parts; ++i) {
      const double step = way / parts;
      if (const auto expansion = expand(problem, mode.z, free)) {
        for (std::size_t k = 0; k < free.size(); ++k)
          mode.z[free[k]] +=
              step * std::clamp(expansion->follow[static_cast<Eigen::Index>(k)], -kMostFollow, kMostFollow);
      }
      mode.z[kLogElevation] += step;
      mode = minimise(problem, mode.z, free, kRoughSteps);
    }
    if (parts >= kMostParts || mode.cost < from.cost + kLostValley * std::max(1.0, std::abs(way) / kElevationStep)) {
      return mode;
    }
  }
}

/// The modes along the elevations, one by one from where the search began. Ends where the cost has left all hope.
std::vector<Mode> sweep(const DeliveryProblem& problem, const Mode& from, const Indices& free) {
  std::vector<Mode> all{from};
  for (const double step : {kElevationStep, -kElevationStep}) {
    Mode mode = from;
    for (double e = from.z[kLogElevation] + step; e >= kLeastElevation - 1e-9 && e <= kMostElevation + 1e-9;
         e += step) {
      mode = followed(problem, mode, e, free);
      all.push_back(mode);
      if (mode.cost > from.cost + kLostHope) break;
    }
  }
  return all;
}

/// Mean and standard deviation of a quantity whose logarithm is normal.
Measured ofLogarithm(double mean, double deviation) {
  const double square = deviation * deviation;
  const double value = std::exp(mean + 0.5 * square);
  return {value, value * std::sqrt(std::expm1(square))};
}

class Fitter {
 public:
  Fitter(const Table& table, const DeliveryWindow& window, const PathFit& start, const DeliveryPriors& priors)
      : window_(window), problem_(table, window, start, priors) {}

  DeliveryFit run() {
    DeliveryFit fit;
    fit.samples = static_cast<int>(window_.samples.size());
    explainAbsence(fit.delivery, NotShown::NotFollowed);
    if (window_.samples.size() < kFewestSamples) return fit;

    const Indices held = unknownsOf(problem_, false, true);
    std::vector<Mode> modes = startModes();
    for (int round = 0; round < 2; ++round) {
      problem_.reweight(modes.front().z);
      for (Mode& mode : modes)
        mode = minimise(problem_, mode.z, held, kFineSteps);
      modes = distinct(modes, kMostModes);
    }
    std::vector<Mode> along;
    for (const Mode& mode : modes) {
      // Met already on the way along the elevations from another one.
      const bool again = std::ranges::any_of(along, [&](const Mode& other) {
        return std::abs(other.z[kLogElevation] - mode.z[kLogElevation]) < kSameElevation && alike(other, mode) &&
               other.cost < mode.cost + kWorthRefining;
      });
      if (again) continue;
      const std::vector<Mode> more = sweep(problem_, mode, held);
      along.insert(along.end(), more.begin(), more.end());
    }
    const Mode level = *std::ranges::min_element(along, {}, &Mode::cost);
    const auto belief = believed(along, level);
    if (!belief) {
      explainAbsence(fit.delivery, NotShown::NotFitted);
      return fit;
    }
    return told(*belief, fit);
  }

 private:
  /// Strikes from all over the tip, followed further and further: from far off, a fit of the whole way at once would
  /// not find the slope.
  std::vector<Mode> startModes() {
    const Indices few = unknownsOf(problem_, false, false);
    const Indices held = unknownsOf(problem_, false, true);
    std::vector<Mode> modes;
    for (const double elevation : kElevationStarts) {
      for (const double height : kHeightStarts) {
        for (const double side : kSideStarts) {
          if (side != 0.0 && height != 0.0) continue;
          Mode mode{Eigen::VectorXd::Zero(problem_.unknowns())};
          mode.z[kSide] = side;
          mode.z[kHeight] = height;
          mode.z[kLogElevation] = elevation;
          modes.push_back(mode);
        }
      }
    }
    const double strike_s = problem_.middle(kStrikeTime);
    double ahead_s = kFirstHorizon_s;
    double growth = kHorizonGrowth;
    for (bool first = true;; first = false) {
      const bool last = strike_s + 1.2 * ahead_s > problem_.lastSample_s();
      const double before_s = problem_.horizon_s();
      problem_.setHorizon(last ? problem_.lastSample_s() : strike_s + ahead_s);
      std::vector<Mode> further = modes;
      for (Mode& mode : further)
        mode = minimise(problem_, mode.z, first ? few : held, kFineSteps);
      further = distinct(further, 2 * kMostModes);
      if (!first && tooFar(further.front())) {
        // From so far off there is no slope to follow; or it is something that the simulation does not follow, and then
        // the way until there still tells of the strike.
        problem_.setHorizon(before_s);
        ahead_s /= growth;
        growth = std::sqrt(growth);
        if (growth < kLeastGrowth) return reconsidered(modes);
        ahead_s *= growth;
        continue;
      }
      modes = further;
      if (last) return reconsidered(modes);
      ahead_s *= growth;
    }
  }

  [[nodiscard]] bool tooFar(const Mode& mode) const {
    return mode.cost > kMostFar + kWorstChiSquare * 2.0 * static_cast<double>(problem_.samplesInHorizon());
  }

  /// A wrong side of the ball, or rolling taken for sliding, is a valley of its own: the other ones are tried from the
  /// best strike that was found.
  [[nodiscard]] std::vector<Mode> reconsidered(std::vector<Mode> modes) const {
    const Indices held = unknownsOf(problem_, false, true);
    const Eigen::VectorXd best = modes.front().z;
    for (const double height : kOtherHeights) {
      for (const double side : {best[kSide], -best[kSide]}) {
        if (side != best[kSide] && std::abs(side) < kOtherSide) continue;
        Eigen::VectorXd z = best;
        z[kSide] = side;
        z[kHeight] = height;
        modes.push_back(minimise(problem_, z, held, kRoughSteps));
      }
    }
    return distinct(modes, kMostModes);
  }

  /// Weighs the strikes at every elevation that was gone through, and at some more around the best.
  std::optional<Belief> believed(std::vector<Mode> along, const Mode& level) {
    const Indices held = unknownsOf(problem_, false, true);
    for (const Mode& top : distinct(along, 2)) {
      if (top.cost > level.cost + kWorthRefining) continue;
      for (const double direction : {1.0, -1.0}) {
        Mode mode = top;
        for (int i = 1; i < kFineNodes; ++i) {
          mode = followed(problem_, mode, top.z[kLogElevation] + direction * i * kElevationStep / kFineNodes, held);
          along.push_back(mode);
        }
      }
    }
    best_ = *std::ranges::min_element(along, {}, &Mode::cost);
    std::erase_if(along, [&](const Mode& mode) { return mode.cost > best_.cost + kHopeless; });
    std::ranges::stable_sort(along, {}, [](const Mode& mode) { return mode.z[kLogElevation]; });
    std::vector<Weighed> grid;
    for (std::size_t i = 0; i < along.size(); ++i) {
      const Mode& mode = along[i];
      // Two ways to the same place count once.
      const bool again = std::any_of(along.begin(), along.begin() + static_cast<std::ptrdiff_t>(i), [&](const Mode& o) {
        return std::abs(o.z[kLogElevation] - mode.z[kLogElevation]) < kSameElevation && alike(o, mode);
      });
      if (again) continue;
      if (auto one = weigh(problem_, mode, held)) {
        const double width = widthAround(along, mode.z[kLogElevation]);
        one->logWeight += std::log(width);
        // Of an even spread over the width.
        one->covariance(kAskedCount - 1, kAskedCount - 1) = width * width / 12.0;
        grid.push_back(*one);
      }
    }
    return joined(grid);
  }

  /// The share of the elevations that a node stands for: half of the way to both neighbours.
  static double widthAround(const std::vector<Mode>& sorted, double elevation) {
    double below = elevation - kElevationStep;
    double above = elevation + kElevationStep;
    for (const Mode& mode : sorted) {
      const double there = mode.z[kLogElevation];
      if (there < elevation - kSameElevation) below = std::max(below, there);
      if (there > elevation + kSameElevation) above = std::min(above, there);
    }
    return 0.5 * (above - below);
  }

  /// How much wider a part of the strike is open than its second order says, from the cost at both sides: bends of the
  /// cost (a landing, the start of rolling) and curved valleys make a mode look sharper than it is.
  [[nodiscard]] double widening(Eigen::Index unknown) const {
    Indices free = unknownsOf(problem_, false, true);
    const auto expansion = expand(problem_, best_.z, free);
    if (!expansion) return kMostWidening;
    const auto column = std::ranges::find(free, unknown) - free.begin();
    const double sd = std::sqrt(expansion->covariance(column, column));
    double most = 1.0;
    for (const double side : {kProbe, -kProbe}) {
      Eigen::VectorXd z = best_.z;
      for (std::size_t k = 0; k < free.size(); ++k)
        z[free[k]] += side * expansion->covariance(static_cast<Eigen::Index>(k), column) / sd;
      Indices others = free;
      others.erase(others.begin() + column);
      const double rise = minimise(problem_, z, others, kRoughSteps).cost - best_.cost;
      most = std::max(most, kProbe / std::sqrt(std::max(rise, 1e-3)));
    }
    return std::min(most, kMostWidening);
  }

  DeliveryFit told(const Belief& belief, DeliveryFit fit) const {
    const auto played = problem_.play(best_.z);
    const double used = problem_.weightSum();
    const double freedom = std::max(1.0, 2.0 * used - static_cast<double>(kAskedCount));
    fit.chiSquare = problem_.sampleSquares(played) / freedom;
    fit.best = problem_.at(best_.z);
    const auto all = static_cast<double>(problem_.samplesInHorizon());
    fit.usable = used > kLeastUsed * all && fit.chiSquare < kWorstChiSquare;
    if (!fit.usable) {
      explainAbsence(fit.delivery, NotShown::NotFitted);
      return fit;
    }
    fit.delivery = {};
    // Residuals larger than stated mean that the stated uncertainties were too small, or the model too simple.
    const double widen = std::sqrt(std::max(1.0, fit.chiSquare));
    std::array<double, kAskedCount> further;
    for (std::size_t i = 0; i < kAsked.size(); ++i)
      further[i] = kAsked[i] == kLogElevation ? 1.0 : widening(kAsked[i]);
    const auto value = [&](std::size_t i) {
      return problem_.middle(kAsked[i]) + problem_.spread(kAsked[i]) * belief.mean[static_cast<Eigen::Index>(i)];
    };
    const auto sd = [&](std::size_t i) {
      const auto k = static_cast<Eigen::Index>(i);
      return widen * further[i] * problem_.spread(kAsked[i]) * std::sqrt(std::max(0.0, belief.covariance(k, k)));
    };
    fit.strike_s = value(0);
    fit.strikeUncertainty_s = sd(0);
    fit.delivery.aim_rad = Measured{wrapAngle(value(1)), sd(1)};
    fit.delivery.speed_mps = ofLogarithm(value(2), sd(2));
    const auto shown = [&](std::size_t i) { return sd(i) < kShownShare * problem_.spread(kAsked[i]); };
    if (shown(3)) {
      fit.delivery.side = Measured{value(3), sd(3)};
    } else {
      const bool acted = window_.cushion || window_.contact;
      fit.delivery.whyNoSide = acted ? NotShown::TooFaint : NotShown::NoCushionNoCurve;
    }
    if (shown(4)) {
      fit.delivery.height = Measured{value(4), sd(4)};
    } else {
      fit.delivery.whyNoHeight = NotShown::SlideNotSeen;
    }
    if (shown(5)) {
      fit.delivery.elevation_rad = ofLogarithm(value(5), sd(5));
    } else {
      fit.delivery.whyNoElevation = NotShown::NoHopNoCurve;
    }
    return fit;
  }

  static void explainAbsence(Delivery& delivery, NotShown why) {
    delivery.whyNoStrike = delivery.whyNoSide = delivery.whyNoHeight = delivery.whyNoElevation = why;
  }

  const DeliveryWindow& window_;
  DeliveryProblem problem_;
  Mode best_;
};

}  // namespace

DeliveryFit fitDelivery(const Table& table, const DeliveryWindow& window, const PathFit& start,
                        const DeliveryPriors& priors) {
  return Fitter(table, window, start, priors).run();
}

}  // namespace ferrule
