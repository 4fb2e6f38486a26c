// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/fingerprint.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/physics/fingerprint_block.h"

namespace ferrule {

namespace {

using namespace fingerprint;  // NOLINT(google-build-using-namespace): the fit's own words

constexpr int kMostRounds = 25;
constexpr int kMostAttempts = 12;
/// Change in units of the uncertainty at which the fit has settled.
constexpr double kSettled = 1e-2;
/// A coefficient is determined when the shots leave less than this share of the literature's spread.
constexpr double kDeterminedShare = 0.5;
/// A shot whose mean square is this many times the usual one was not understood, and is set aside.
constexpr double kStrange = 5.0;

/// A shot may carry so much of a direction at most when its own pull is judged.
constexpr double kMostCarried = 0.9;

/// Half the 95 % interval of Student's t over that of a normal distribution.
/// Source: the expansion of the quantile in 1 / freedom, Abramowitz and Stegun 1964, 26.7.5; for one and two degrees of
/// freedom the closed forms.
double studentRatio(double freedom) {
  constexpr double kNormal = 1.959964;
  if (freedom < 1.5) return 12.7062 / kNormal;
  if (freedom < 2.5) return 4.30265 / kNormal;
  const double x = kNormal;
  const double g1 = (std::pow(x, 3) + x) / 4.0;
  const double g2 = (5.0 * std::pow(x, 5) + 16.0 * std::pow(x, 3) + 3.0 * x) / 96.0;
  const double g3 = (3.0 * std::pow(x, 7) + 19.0 * std::pow(x, 5) + 17.0 * std::pow(x, 3) - 15.0 * x) / 384.0;
  return (x + g1 / freedom + g2 / (freedom * freedom) + g3 / (freedom * freedom * freedom)) / x;
}

/// Where the fit is.
struct Place {
  SharedVector values;
  std::vector<Eigen::VectorXd> own;
};

/// Seven unknowns of the table and those of each shot; the latter are eliminated shot by shot (Schur complement).
class Fit {
 public:
  Fit(const Model& model, std::vector<Shot> shots)
      : model_(model), shared_(sharedOf(model.literature)), shots_(std::move(shots)) {
    for (Eigen::Index i = 0; i < kShared; ++i)
      place_.values(i) = shared_[static_cast<std::size_t>(i)].literature;
    for (const Shot& shot : shots_)
      place_.own.push_back(Eigen::VectorXd::Zero(shot.spreads.size()));
  }

  /// Other strikes for every shot, where they fit better.
  void reconsider(int depth) {
    for (std::size_t k = 0; k < shots_.size(); ++k)
      place_.own[k] = reconsidered(model_, shots_[k], place_.values, place_.own[k], depth);
  }

  /// One damped step over the samples up to a depth. False when none makes the cost smaller. largest: the largest move
  /// of a shared unknown in units of its uncertainty.
  bool improve(int depth, double& damping, double& largest) {
    std::vector<Active> active;
    const std::vector<Block> blocks = blocksAt(depth, active);
    const double before = cost(place_, active);
    for (int attempt = 0; attempt < kMostAttempts; ++attempt) {
      const Place next = stepped(blocks, damping);
      if (cost(next, active) < before) {
        const SharedMatrix information = reduced(blocks, 0.0);
        largest = 0.0;
        for (Eigen::Index i = 0; i < kShared; ++i) {
          largest = std::max(largest, std::abs(next.values(i) - place_.values(i)) * std::sqrt(information(i, i)));
        }
        place_ = next;
        damping = std::max(damping / 5.0, 1e-9);
        return true;
      }
      damping = std::max(damping * 6.0, 1e-6);
    }
    return false;
  }

  /// Leaves out the shots that fit far worse than the others. True when there were any.
  bool setStrangeAside() {
    std::vector<Active> active;
    const std::vector<Block> blocks = blocksAt(kMostDepth, active);
    std::vector<double> squares;
    for (const Block& block : blocks)
      squares.push_back(block.count > 0.0 ? block.squares / block.count : 0.0);
    std::vector<double> sorted = squares;
    std::ranges::sort(sorted);
    const double most = kStrange * std::max(1.0, sorted[sorted.size() / 2]);
    const std::size_t before = shots_.size();
    for (std::size_t k = before; k-- > 0;) {
      if (squares[k] <= most) continue;
      shots_.erase(shots_.begin() + static_cast<std::ptrdiff_t>(k));
      place_.own.erase(place_.own.begin() + static_cast<std::ptrdiff_t>(k));
    }
    return shots_.size() < before;
  }

  void report(Fingerprint& out) const {
    std::vector<Active> active;
    const SharedVector uncertainty = uncertainties(blocksAt(kMostDepth, active));
    for (Eigen::Index i = 0; i < kShared; ++i) {
      const Shared& s = shared_[static_cast<std::size_t>(i)];
      out.coefficients.push_back({s.name, place_.values(i), uncertainty(i), s.literature, s.spread,
                                  uncertainty(i) < kDeterminedShare * s.spread});
    }
    double squares = 0.0;
    double count = 0.0;
    for (std::size_t k = 0; k < shots_.size(); ++k) {
      const auto outcome = play(model_.table, model_.at(place_.values), shots_[k], place_.own[k]);
      for (std::size_t n = 0; outcome && n < shots_[k].samples.size(); ++n) {
        if (!active[k][n]) continue;
        ++out.samples;
        const auto pair = outcome->residuals.segment(2 * static_cast<Eigen::Index>(n), 2);
        if (pair.cwiseAbs().maxCoeff() > kHuber) continue;
        squares += pair.squaredNorm() * shots_[k].samples[n].sigma_m * shots_[k].samples[n].sigma_m;
        count += 1.0;
      }
    }
    out.rms_m = count > 0.0 ? std::sqrt(squares / count) : 0.0;
    out.shots = static_cast<int>(shots_.size());
  }

 private:
  /// active: becomes the samples that count.
  [[nodiscard]] std::vector<Block> blocksAt(int depth, std::vector<Active>& active) const {
    std::vector<Block> blocks;
    for (std::size_t k = 0; k < shots_.size(); ++k) {
      const Linear linear = linearAt(model_, shots_[k], place_.values, place_.own[k]);
      active.push_back(activeSamples(shots_[k], linear, depth));
      blocks.push_back(blockOf(shots_[k], linear, active.back()));
    }
    return blocks;
  }

  [[nodiscard]] double cost(const Place& place, const std::vector<Active>& active) const {
    double sum = 0.0;
    for (Eigen::Index i = 0; i < kShared; ++i) {
      const Shared& s = shared_[static_cast<std::size_t>(i)];
      const double stray = (place.values(i) - s.literature) / s.spread;
      sum += stray * stray;
    }
    for (std::size_t k = 0; k < shots_.size(); ++k)
      sum += costOf(model_, shots_[k], place.values, place.own[k], active[k]);
    return sum;
  }

  /// What the shots and the literature say of the shared unknowns once the own ones are eliminated.
  [[nodiscard]] SharedMatrix reduced(const std::vector<Block>& blocks, double damping) const {
    SharedMatrix sum = SharedMatrix::Zero();
    for (Eigen::Index i = 0; i < kShared; ++i) {
      const double spread = shared_[static_cast<std::size_t>(i)].spread;
      sum(i, i) = 1.0 / (spread * spread);
    }
    for (const Block& block : blocks)
      sum += block.shared;
    sum.diagonal() *= 1.0 + damping;
    for (const Block& block : blocks)
      sum -= block.mixed * damped(block.own, damping).ldlt().solve(block.mixed.transpose());
    return sum;
  }

  [[nodiscard]] Place stepped(const std::vector<Block>& blocks, double damping) const {
    SharedVector slope;
    for (Eigen::Index i = 0; i < kShared; ++i) {
      const Shared& s = shared_[static_cast<std::size_t>(i)];
      slope(i) = (place_.values(i) - s.literature) / (s.spread * s.spread);
    }
    for (const Block& block : blocks) {
      slope += block.sharedSlope - block.mixed * damped(block.own, damping).ldlt().solve(block.ownSlope);
    }
    const SharedVector step = -reduced(blocks, damping).ldlt().solve(slope);
    Place next = place_;
    for (Eigen::Index i = 0; i < kShared; ++i) {
      const Shared& s = shared_[static_cast<std::size_t>(i)];
      next.values(i) = std::clamp(place_.values(i) + step(i), s.least, s.most);
    }
    const SharedVector taken = next.values - place_.values;
    for (std::size_t k = 0; k < blocks.size(); ++k) {
      const Eigen::VectorXd pull = blocks[k].ownSlope + blocks[k].mixed.transpose() * taken;
      next.own[k] -= damped(blocks[k].own, damping).ldlt().solve(pull);
    }
    return next;
  }

  [[nodiscard]] SharedVector uncertainties(const std::vector<Block>& blocks) const {
    const SharedMatrix inverse = reduced(blocks, 0.0).ldlt().solve(SharedMatrix::Identity());
    double squares = 0.0;
    double freedom = -static_cast<double>(kShared);
    // The scatter from shot to shot: of each shot's own pull on the shared unknowns.
    SharedMatrix scatter = SharedMatrix::Zero();
    for (const Block& block : blocks) {
      squares += block.squares;
      freedom += block.count - static_cast<double>(kStrike);
      const auto own = block.own.ldlt();
      SharedVector pull = block.sharedSlope - block.mixed * own.solve(block.ownSlope);
      // A shot that carries much of the fit has drawn the fit to itself: what it would pull if it had not. A shot that
      // carries all of a direction says nothing of its own scatter there, so that the share is held below one.
      const SharedMatrix carried = block.shared - block.mixed * own.solve(block.mixed.transpose());
      pull = (SharedMatrix::Identity() - kMostCarried * carried * inverse).partialPivLu().solve(pull);
      scatter += pull * pull.transpose();
    }
    const double misfit = freedom > 1.0 ? std::max(1.0, squares / freedom) : 1.0;
    const auto count = static_cast<double>(blocks.size());
    const double few = count > 1.0 ? (count - 1.0) / count : 1.0;
    const SharedMatrix sandwich = few * inverse * scatter * inverse;
    // Intervals are taken as two standard uncertainties, which few shots do not bear out.
    const double wide = studentRatio(std::max(1.0, count - 1.0));
    SharedVector result;
    for (Eigen::Index i = 0; i < kShared; ++i) {
      // Never more than was known beforehand.
      const double spread = shared_[static_cast<std::size_t>(i)].spread;
      result(i) = std::min(spread, std::sqrt(std::max({0.0, misfit * inverse(i, i), wide * wide * sandwich(i, i)})));
    }
    return result;
  }

  Model model_;
  std::array<Shared, kShared> shared_;
  std::vector<Shot> shots_;
  Place place_;
};

}  // namespace

Result<Fingerprint> fitFingerprint(const Table& table, const PhysicsParameters& start,
                                   std::span<const FingerprintShot> shots, const JobControl& job) {
  const auto simulator = Simulator::create(table, start);
  if (!simulator) return tl::make_unexpected(simulator.error());
  std::vector<Shot> usable;
  for (const FingerprintShot& shot : shots) {
    auto prepared = prepare(shot, start);
    if (!prepared) continue;
    const Eigen::VectorXd asRecorded = Eigen::VectorXd::Zero(prepared->spreads.size());
    if (play(table, start, *prepared, asRecorded)) usable.push_back(std::move(*prepared));
  }
  if (usable.empty()) return failure(ErrorCode::NotFound, "shots", "the recorded tracks");
  Fit fit({table, start}, std::move(usable));
  Fingerprint result;
  // The last depth twice: once more after the shots that were not understood are set aside.
  for (int stage = 0; stage <= kMostDepth + 1; ++stage) {
    const int depth = std::min(stage, kMostDepth);
    if (stage > kMostDepth && !fit.setStrangeAside()) break;
    if (stage <= kMostDepth) fit.reconsider(depth);
    double damping = 1e-3;
    result.converged = false;
    for (int round = 0; round < kMostRounds && !result.converged; ++round) {
      if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
      job.reportShare(static_cast<double>(stage) / (kMostDepth + 2), "fitting the table");
      double largest = 0.0;
      result.converged = !fit.improve(depth, damping, largest) || largest < kSettled;
    }
  }
  fit.report(result);
  return result;
}

PhysicsParameters applied(const Fingerprint& fingerprint, PhysicsParameters parameters) {
  for (const Shared& shared : sharedOf(parameters)) {
    const auto fitted = std::ranges::find(fingerprint.coefficients, shared.name, &FittedCoefficient::name);
    if (fitted != fingerprint.coefficients.end() && fitted->determined) shared.set(parameters, fitted->value);
  }
  return parameters;
}

std::vector<std::string> undetermined(const Fingerprint& fingerprint) {
  std::vector<std::string> names;
  for (const FittedCoefficient& c : fingerprint.coefficients) {
    if (!c.determined) names.push_back(c.name);
  }
  return names;
}

}  // namespace ferrule
