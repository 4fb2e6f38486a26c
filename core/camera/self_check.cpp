// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/self_check.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/word_list.h"
#include "core/camera/check_findings.h"
#include "core/camera/check_hypotheses.h"
#include "core/camera/error_map.h"
#include "core/camera/rig_from_lines.h"

namespace ferrule {

namespace {

constexpr WordList<12> kFaultTexts{"fits",          "camera moved",     "wrong lens",       "corrected twice",
                                   "not corrected", "wrong image size", "tag height wrong", "tag misplaced",
                                   "tags swapped",  "tag turned",       "table size wrong", "does not fit"};
constexpr WordList<8> kFindingTexts{"tag",    "nose-straight", "nose-place", "parallel",
                                    "length", "width",         "ball-size",  "ball-place"};

/// Natural logarithm of the odds that a fault must have over "fits". "Decisive" in Kass and Raftery 1995 is 5; more,
/// since the weights of the evidence are themselves estimates.
constexpr double kDecisive = 10.0;
/// A fault that moves no ball by more is no fault: a table's own tolerances do as much.
constexpr double kLeastMove_m = 0.0015;
constexpr double kLeastBend_m = 0.0020;  ///< a lens; board calibrations reach a millimetre in the corners
constexpr double kLeastTagHeight_m = 0.004;
constexpr double kLeastTagPlace_m = 0.003;
constexpr double kLeastTableSize_m = 0.004;
/// Residuals of so many standard deviations are no noise: then no hypothesis that was tried is right.
constexpr double kUnexplained = 3.0;
/// Swapped and turned tags are tried where a moved camera leaves the tags so far off: their corners lie 80 mm apart.
constexpr double kGross = 8.0;

struct Trial {
  Hypothesis hypothesis;
  FittedHypothesis fit;
  double score = 0.0;  ///< minus twice the logarithm of the likelihood, with the price of its unknowns
};

double misfitOf(const FittedHypothesis& fit, Eigen::Index values) {
  return std::sqrt(fit.sumOfSquares / std::max(1.0, static_cast<double>(values) - fit.parameters));
}

std::vector<double> amountsOf(const Trial& trial, const Rig& rig) {
  const Eigen::VectorXd& further = trial.fit.further;
  switch (trial.hypothesis.fault) {
    case RigFault::CameraMoved: {
      Rig now = rig;
      now.pose = trial.fit.setting.pose;
      const TablePoint3 a = cameraPosition(rig);
      const TablePoint3 b = cameraPosition(now);
      const Eigen::AngleAxisd turn(now.pose.rotation * rig.pose.rotation.transpose());
      return {std::hypot(a.x - b.x, a.y - b.y, a.z - b.z), turn.angle()};
    }
    case RigFault::WrongImageSize:
      return {std::exp(further[0])};
    case RigFault::TagHeight:
      return {further[0]};
    case RigFault::TagMisplaced:
      return {std::hypot(further[0], further[1])};
    case RigFault::TagTurned:
      return {trial.hypothesis.tags[1] * 0.5 * std::numbers::pi};
    case RigFault::TableSize:
      return {further[0], further[1]};
    default:
      return {};
  }
}

std::vector<int> tagsOf(const Hypothesis& hypothesis) {
  if (hypothesis.fault == RigFault::TagTurned) return {hypothesis.tags[0]};
  return hypothesis.tags;
}

/// What it costs to go on with the rig as it is when another one is true.
void addCost(SelfCheck& check, const Rig& used, const Rig& truth, const Table& table, double height_m) {
  constexpr int kSteps = 8;
  double sum = 0.0;
  int places = 0;
  check.costMax_m = 0.0;
  for (int i = 0; i <= kSteps; ++i) {
    for (int j = 0; j <= kSteps; ++j) {
      const double inset_m = height_m;  // a ball's centre stays a radius off the noses
      const TablePoint place{(table.length_m - 2.0 * inset_m) * (static_cast<double>(i) / kSteps - 0.5),
                             (table.width_m - 2.0 * inset_m) * (static_cast<double>(j) / kSteps - 0.5)};
      const auto seen = imageFromTable(truth, {place.x, place.y, height_m});
      const auto taken = seen ? tableFromImage(used, *seen, height_m) : std::nullopt;
      if (!taken) continue;
      const double off_m = distance(*taken, place);
      sum += off_m * off_m;
      ++places;
      if (off_m > check.costMax_m) {
        check.costMax_m = off_m;
        check.costliest = place;
      }
    }
  }
  check.costRms_m = places > 0 ? std::sqrt(sum / places) : 0.0;
}

/// What a rig from the cushions says itself that it does not know, over the whole table (95 %): less than that is no
/// fault of anything. Rigs from tags know better than what is too small to matter.
double ownReach_m(const Rig& rig, const MeasuredTable& measured) {
  if (!isFromCushions(rig)) return 0.0;
  const ErrorMap map(rig, measured, {0.0, 0.0, 0.0, 0.0, 0.0});
  double reach_m = 0.0;
  for (const double x : {-0.5, 0.0, 0.5}) {
    for (const double y : {-0.5, 0.0, 0.5}) {
      const auto at = map.at({x * measured.table.length_m, y * measured.table.width_m});
      if (at) reach_m = std::max(reach_m, at->reach95_m());
    }
  }
  return reach_m;
}

/// Whether a fault is large enough to be one. own_m: what is below the rig's own knowledge.
bool matters(const Explanation& explanation, double costMax_m, double own_m) {
  const auto& amounts = explanation.amounts;
  switch (explanation.fault) {
    case RigFault::TagHeight:
      return std::abs(amounts[0]) > std::max(kLeastTagHeight_m, own_m);
    case RigFault::TagMisplaced:
      return amounts[0] > std::max(kLeastTagPlace_m, own_m);
    case RigFault::TableSize:
      return std::max(std::abs(amounts[0]), std::abs(amounts[1])) > std::max(kLeastTableSize_m, own_m);
    case RigFault::TagsSwapped:
    case RigFault::TagTurned:
      return true;
    case RigFault::CameraMoved:
      return costMax_m > std::max(kLeastMove_m, own_m);
    default:
      return costMax_m > std::max(kLeastBend_m, own_m);
  }
}

std::vector<Trial> trialsOf(const Rig& rig, const MeasuredTable& measured, const CheckEvidence& evidence,
                            const EvidenceFit& fit) {
  std::vector<Trial> trials;
  bool gross = false;
  for (Hypothesis& hypothesis : hypothesesFor(rig, measured, evidence, false)) {
    Trial trial{std::move(hypothesis), {}, 0.0};
    trial.fit = fitted(trial.hypothesis, fit);
    if (trial.hypothesis.fault == RigFault::CameraMoved) gross = misfitOf(trial.fit, fit.size()) > kGross;
    trials.push_back(std::move(trial));
  }
  if (!gross) return trials;
  for (Hypothesis& hypothesis : hypothesesFor(rig, measured, evidence, true)) {
    if (hypothesis.fault != RigFault::TagsSwapped && hypothesis.fault != RigFault::TagTurned) continue;
    Trial trial{std::move(hypothesis), {}, 0.0};
    trial.fit = fitted(trial.hypothesis, fit);
    trials.push_back(std::move(trial));
  }
  return trials;
}

}  // namespace

std::string_view toText(RigFault fault) {
  return wordOf(kFaultTexts, fault);
}

std::string_view toText(CheckFinding::Kind kind) {
  return wordOf(kFindingTexts, kind);
}

SelfCheck checkRig(const Rig& rig, const MeasuredTable& measured, const CheckEvidence& evidence) {
  SelfCheck check;
  if (evidence.filmSize != rig.lens.size) {
    check.verdict = RigFault::WrongImageSize;
    check.amounts = {static_cast<double>(evidence.filmSize.width) / rig.lens.size.width};
    check.confidence = 1.0;
    return check;
  }
  check.findings = findingsOf(rig, measured, evidence);
  constexpr std::size_t kEnough = 3;
  if (evidence.tags.size() < kEnough && evidence.lines.size() < kEnough) {
    check.verdict = RigFault::Unexplained;
    return check;
  }
  const EvidenceFit fit(evidence, measured);
  std::vector<Trial> trials = trialsOf(rig, measured, evidence, fit);

  double least = INFINITY;
  for (const Trial& trial : trials)
    least = std::min(least, misfitOf(trial.fit, fit.size()));
  const double widening = std::max(1.0, least * least);
  const double price = std::log(static_cast<double>(fit.size()));
  for (Trial& trial : trials)
    trial.score = trial.fit.sumOfSquares / widening + trial.fit.parameters * price;
  std::ranges::stable_sort(trials, {}, &Trial::score);

  double total = 0.0;
  for (const Trial& trial : trials)
    total += std::exp(-0.5 * (trial.score - trials.front().score));
  for (const Trial& trial : trials) {
    const double probability = std::exp(-0.5 * (trial.score - trials.front().score)) / total;
    // The same fault told in two ways counts once, as its likelier one says.
    const auto same = std::ranges::find_if(check.explanations, [&](const Explanation& known) {
      return known.fault == trial.hypothesis.fault && known.tags == tagsOf(trial.hypothesis);
    });
    if (same != check.explanations.end() && trial.hypothesis.fault != RigFault::TagTurned) {
      same->probability += probability;
      continue;
    }
    Explanation explanation;
    explanation.fault = trial.hypothesis.fault;
    explanation.tags = tagsOf(trial.hypothesis);
    explanation.amounts = amountsOf(trial, rig);
    explanation.misfit = misfitOf(trial.fit, fit.size());
    explanation.parameters = trial.fit.parameters;
    explanation.probability = probability;
    explanation.rig = trial.fit.setting.rig();
    check.explanations.push_back(std::move(explanation));
  }

  const double height_m = measured.balls.radius_m();
  const double own_m = ownReach_m(rig, measured);
  const auto fits = std::ranges::find(trials, RigFault::None, [](const Trial& t) { return t.hypothesis.fault; });
  const auto isDecisive = [&](const Explanation& each) {
    const auto trial = std::ranges::find_if(
        trials, [&](const Trial& t) { return t.hypothesis.fault == each.fault && tagsOf(t.hypothesis) == each.tags; });
    return fits->score - trial->score > 2.0 * kDecisive;
  };
  const auto isLarge = [&](const Explanation& each) {
    SelfCheck cost;
    addCost(cost, rig, each.rig, measured.table, height_m);
    return matters(each, cost.costMax_m, own_m);
  };
  // What the cushions leave open of the lens may look like a small fault that does not matter; behind it may stand one
  // that does.
  std::size_t chosen = 0;
  for (std::size_t i = 0; own_m > 0.0 && i < check.explanations.size(); ++i) {
    const Explanation& each = check.explanations[i];
    if (each.fault == RigFault::None || !isDecisive(each)) break;
    if (!isLarge(each)) continue;
    chosen = i;
    break;
  }
  const Explanation& best = check.explanations[chosen];
  addCost(check, rig, best.rig, measured.table, height_m);
  if (best.fault == RigFault::None || !isDecisive(best) || !matters(best, check.costMax_m, own_m)) {
    check.verdict = RigFault::None;
    // Everything that would not matter speaks for the rig.
    for (const Explanation& each : check.explanations) {
      if (each.fault == RigFault::None || !isLarge(each)) check.confidence += each.probability;
    }
    check.confidence = std::min(1.0, check.confidence);
    if (best.fault == RigFault::None) {
      check.costRms_m = check.costMax_m = 0.0;
      check.costliest = {};
    }
    const auto asItIs = std::ranges::find(check.explanations, RigFault::None, &Explanation::fault);
    if (asItIs->misfit > kUnexplained) check.verdict = RigFault::Unexplained;
  } else {
    check.verdict = best.misfit > kUnexplained ? RigFault::Unexplained : best.fault;
    check.tags = best.tags;
    check.amounts = best.amounts;
    check.confidence = best.probability;
  }
  return check;
}

}  // namespace ferrule
