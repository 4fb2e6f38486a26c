// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/search.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ferrule {

namespace {

constexpr std::size_t kMostSamples = 512;
constexpr std::size_t kFreshSamples = 400;
/// Of the budget, at most, so that small budgets still search.
constexpr long kFreshShare = 4;
/// Below this budget speeds and tip points are tried coarsely.
constexpr long kFullGridFrom = 5000;
/// A trial costs about this many whole shots.
constexpr long kTrialCost = 2;
/// The best is clear of the second when they differ by this many standard errors of the difference.
constexpr double kClear = 2.5;
constexpr std::size_t kDeepLeaves = 12;
constexpr std::size_t kDeepSamples = 12;
/// How much of what a few deeper looks found is believed.
constexpr double kDeepTrust = 0.7;

template <class Work>
void inParallel(std::size_t count, const Work& work) {
  tbb::parallel_for(std::size_t{0}, count, work);
}

}  // namespace

Search::Search(const PlanningTable& table, const Situation& situation, const std::array<Scatter, 2>& players,
               const SearchBudget& budget, const std::function<void(const Suggestion&)>& onBetter)
    : table_(table),
      situation_(situation),
      players_(players),
      budget_(budget),
      onBetter_(onBetter),
      value_(table.simulator, table.windows, players),
      context_{table_, value_, players_[0]},
      deviates_(commonDeviates(budget.seed, kMostSamples + kFreshSamples)),
      keptBack_(std::min(static_cast<long>(budget.mostPlans * kFreshSamples), budget.mostSimulations / kFreshShare)),
      started_(std::chrono::steady_clock::now()) {
  const Situation missed = passedOn(situation, situation.balls, CueBallFreedom::AsItLies);
  context_.failed = FrameValue::toOther(missed, value_.glance(missed, 1).value);
}

bool Search::goesOn(long cost) {
  if (budget_.stop.stop_requested()) {
    end_ = SearchEnd::Stopped;
    return false;
  }
  const double spent_s = std::chrono::duration<double>(std::chrono::steady_clock::now() - started_).count();
  if (simulations_ + cost > budget_.mostSimulations - keptBack_ ||
      (budget_.most_s && sampled_ && spent_s > *budget_.most_s)) {
    end_ = SearchEnd::Budget;
    return false;
  }
  return true;
}

void Search::tryAll() {
  const TrialGrid fine = budget_.mostSimulations >= kFullGridFrom ? TrialGrid::Full : TrialGrid::Coarse;
  const bool inHand = situation_.cueBall != CueBallFreedom::AsItLies;
  const auto candidates =
      candidatesOf(table_, situation_, players_[0], fine == TrialGrid::Full ? (inHand ? 60 : 24) : (inHand ? 24 : 12));
  const auto openShots = openShotsOf(table_, situation_, players_[0]);
  const auto solve = [&](const std::vector<Trial>& trials) {
    std::vector<std::optional<Entry>> solved(trials.size());
    inParallel(trials.size(), [&](std::size_t i) { solved[i] = solveTrial(context_, trials[i]); });
    simulations_ += kTrialCost * static_cast<long>(trials.size());
    for (auto& entry : solved) {
      if (entry) entries_.push_back(std::move(*entry));
    }
  };
  // Coarsely for all, finely for those that came out best.
  std::vector<Trial> coarse;
  for (const auto& candidate : candidates) {
    const auto trials = trialsOf(candidate, TrialGrid::Coarse);
    coarse.insert(coarse.end(), trials.begin(), trials.end());
  }
  solve(coarse);
  if (fine == TrialGrid::Full) {
    std::ranges::stable_sort(entries_, std::greater(), &Entry::score);
    std::vector<std::shared_ptr<const Candidate>> best;
    constexpr std::size_t kFine = 12;
    for (const Entry& entry : entries_) {
      if (best.size() < kFine && std::ranges::find(best, entry.candidate) == best.end())
        best.push_back(entry.candidate);
    }
    std::vector<Trial> trials;
    for (const auto& candidate : best) {
      const auto more = trialsOf(candidate, TrialGrid::Full);
      trials.insert(trials.end(), more.begin(), more.end());
    }
    if (goesOn(kTrialCost * static_cast<long>(trials.size()))) solve(trials);
  }
  const auto tryOpen = [&](bool evenFouls) {
    std::vector<std::optional<Entry>> tried(openShots.size());
    inParallel(openShots.size(), [&](std::size_t i) { tried[i] = tryOpenShot(context_, openShots[i], evenFouls); });
    simulations_ += static_cast<long>(openShots.size());
    for (auto& entry : tried) {
      if (entry) entries_.push_back(std::move(*entry));
    }
  };
  tryOpen(false);
  // Where no faultless play is legal, the player's own scatter may still find the ball now and then.
  if (entries_.empty()) tryOpen(true);
  for (const Entry& entry : entries_) {
    if (entry.candidate && entry.shot.plan.kind == PlanKind::Direct)
      directChance_ = std::max(directChance_, entry.candidate->chance);
  }
  std::ranges::stable_sort(entries_, std::greater(), &Entry::score);
}

double Search::meanValue(const Entry& entry) const {
  if (entry.samples.empty()) return entry.score;
  double sum = 0.0;
  for (const Sample& sample : entry.samples)
    sum += sample.value;
  return sum / static_cast<double>(entry.samples.size()) + entry.correction;
}

void Search::thin(std::size_t most, std::size_t mostOfIdea) {
  std::vector<Entry> kept;
  for (Entry& entry : entries_) {
    if (kept.size() == most) break;
    const auto same =
        std::ranges::count_if(kept, [&](const Entry& k) { return sameIdea(k.shot.plan, entry.shot.plan); });
    if (static_cast<std::size_t>(same) < mostOfIdea) kept.push_back(std::move(entry));
  }
  entries_ = std::move(kept);
}

bool Search::sampleUpTo(std::size_t entries, std::size_t samples) {
  entries = std::min(entries, entries_.size());
  struct Task {
    std::size_t entry;
    std::size_t sample;
  };
  std::vector<Task> tasks;
  for (std::size_t e = 0; e < entries; ++e) {
    for (std::size_t k = entries_[e].samples.size(); k < samples; ++k)
      tasks.push_back({e, k});
  }
  if (!goesOn(static_cast<long>(tasks.size()))) return false;
  for (std::size_t e = 0; e < entries; ++e)
    entries_[e].samples.resize(std::max(samples, entries_[e].samples.size()));
  inParallel(tasks.size(), [&](std::size_t i) {
    Entry& entry = entries_[tasks[i].entry];
    entry.samples[tasks[i].sample] =
        playSample(table_.simulator, value_, entry.shot, entry.scatter, deviates_[tasks[i].sample]);
  });
  simulations_ += static_cast<long>(tasks.size());
  sampled_ = true;
  return true;
}

void Search::rankByValue() {
  std::ranges::stable_sort(entries_, std::greater(), [&](const Entry& entry) { return meanValue(entry); });
}

std::vector<std::size_t> Search::bestOfIdeas(std::size_t most) const {
  std::vector<std::size_t> best;
  for (std::size_t i = 0; i < entries_.size() && best.size() < most; ++i) {
    const bool known = std::ranges::any_of(
        best, [&](std::size_t k) { return sameIdea(entries_[k].shot.plan, entries_[i].shot.plan); });
    if (!known) best.push_back(i);
  }
  return best;
}

bool Search::isClear() const {
  const auto best = bestOfIdeas(2);
  if (best.size() < 2) return true;
  const Entry& a = entries_[best[0]];
  const Entry& b = entries_[best[1]];
  const std::size_t n = std::min(a.samples.size(), b.samples.size());
  if (n < 2) return false;
  double sum = 0.0;
  double squares = 0.0;
  for (std::size_t k = 0; k < n; ++k) {
    const double difference = a.samples[k].value - b.samples[k].value;
    sum += difference;
    squares += difference * difference;
  }
  const auto count = static_cast<double>(n);
  const double mean = sum / count;
  const double error = std::sqrt(std::max(0.0, squares / count - mean * mean) / count);
  return mean > kClear * error && mean > 0.02;
}

void Search::refine(std::size_t ideas) {
  const auto best = bestOfIdeas(ideas);
  std::vector<std::vector<Entry>> found(best.size());
  inParallel(best.size(), [&](std::size_t i) { found[i] = neighboursOf(context_, entries_[best[i]]); });
  std::vector<Entry> all;
  for (auto& neighbours : found) {
    simulations_ += kTrialCost * static_cast<long>(neighbours.size());
    for (Entry& entry : neighbours)
      all.push_back(std::move(entry));
  }
  // New ones first, so that they are the ones that are played.
  const std::size_t fresh = all.size();
  for (Entry& entry : entries_)
    all.push_back(std::move(entry));
  entries_ = std::move(all);
  const std::size_t samples = 64;
  if (!sampleUpTo(fresh, samples)) entries_.erase(entries_.begin(), entries_.begin() + static_cast<long>(fresh));
  rankByValue();
}

double Search::deeperValue(const Situation& next) const {
  const Glance glance = value_.glance(next, 0);
  const auto candidates = candidatesOf(table_, next, players_[0], 3);
  std::vector<Entry> entries;
  TrialContext context = context_;
  const Situation missed = passedOn(next, next.balls, CueBallFreedom::AsItLies);
  context.failed = FrameValue::toOther(missed, value_.glance(missed, 1).value);
  for (const auto& candidate : candidates) {
    for (const Trial& trial : trialsOf(candidate, TrialGrid::Coarse)) {
      if (auto entry = solveTrial(context, trial)) entries.push_back(std::move(*entry));
    }
  }
  std::ranges::stable_sort(entries, std::greater(), &Entry::score);
  if (entries.size() > 4) entries.resize(4);
  double best = glance.safety ? glance.value : -1e9;
  for (Entry& entry : entries) {
    double sum = 0.0;
    for (std::size_t k = 0; k < kDeepSamples; ++k) {
      const std::size_t error = (k * 37 + 11) % kMostSamples;
      sum += playSample(table_.simulator, value_, entry.shot, entry.scatter, deviates_[error]).value;
    }
    best = std::max(best, sum / static_cast<double>(kDeepSamples));
  }
  // Nothing to pot: what the glance says stands.
  return best < -1e8 ? glance.value : best;
}

void Search::lookDeeper(std::size_t ideas) {
  const auto best = bestOfIdeas(ideas);
  struct Leaf {
    std::size_t entry;
    std::size_t sample;
    double difference = 0.0;
    bool counts = false;
  };
  std::vector<Leaf> leaves;
  for (const std::size_t e : best) {
    std::size_t taken = 0;
    for (std::size_t k = 0; k < entries_[e].samples.size() && taken < kDeepLeaves; ++k) {
      if (!entries_[e].samples[k].keeps || entries_[e].samples[k].value >= 1.0) continue;
      leaves.push_back({e, k});
      ++taken;
    }
  }
  const long cost = static_cast<long>(leaves.size() * (3 * 15 * kTrialCost + 4 * kDeepSamples));
  if (leaves.empty() || !goesOn(cost)) return;
  inParallel(leaves.size(), [&](std::size_t i) {
    Leaf& leaf = leaves[i];
    const Entry& entry = entries_[leaf.entry];
    SimulationOptions options;
    options.keepPaths = false;
    const Strike strike =
        delivered(entry.shot.plan.strike, entry.scatter, deviates_[leaf.sample], table_.simulator.parameters());
    const auto played = table_.simulator.shoot(entry.shot.situation.balls, strike, options);
    if (!played) return;
    const Judgement judged = judge(entry.shot.situation, callOf(entry.shot.plan), *played);
    if (judged.ending != ShotEnding::KeepsTurn) return;
    leaf.difference = deeperValue(judged.next) - value_.glance(judged.next, 0).value;
    leaf.counts = true;
  });
  simulations_ += cost;
  for (const std::size_t e : best) {
    double sum = 0.0;
    int count = 0;
    for (const Leaf& leaf : leaves) {
      if (leaf.entry != e || !leaf.counts) continue;
      sum += leaf.difference;
      ++count;
    }
    if (count == 0) continue;
    const double keeps = chancesFrom(entries_[e].samples).keeps;
    entries_[e].correction = kDeepTrust * keeps * sum / count;
  }
  // Those that were not looked at may not profit from it.
  const auto looked = [&](std::size_t i) { return std::ranges::find(best, i) != best.end(); };
  std::vector<Entry> kept;
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    const bool rival = std::ranges::any_of(
        best, [&](std::size_t k) { return sameIdea(entries_[k].shot.plan, entries_[i].shot.plan); });
    if (looked(i) || !rival) kept.push_back(std::move(entries_[i]));
  }
  entries_ = std::move(kept);
  rankByValue();
}

void Search::playAfresh() {
  const auto best = bestOfIdeas(budget_.mostPlans);
  std::vector<Entry> kept;
  for (const std::size_t i : best)
    kept.push_back(std::move(entries_[i]));
  entries_ = std::move(kept);
  const std::size_t samples =
      std::min(kFreshSamples, static_cast<std::size_t>(keptBack_) / std::max<std::size_t>(1, entries_.size()));
  if (samples == 0 || budget_.stop.stop_requested()) return;
  std::vector<std::vector<Sample>> fresh(entries_.size(), std::vector<Sample>(samples));
  inParallel(entries_.size() * samples, [&](std::size_t i) {
    const Entry& entry = entries_[i / samples];
    const std::size_t k = i % samples;
    fresh[i / samples][k] =
        playSample(table_.simulator, value_, entry.shot, entry.scatter, deviates_[kMostSamples + k]);
  });
  simulations_ += static_cast<long>(entries_.size() * samples);
  for (std::size_t e = 0; e < entries_.size(); ++e)
    entries_[e].samples = std::move(fresh[e]);
  rankByValue();
  publish();
}

Suggestion Search::listed() const {
  Suggestion suggestion;
  suggestion.simulations = simulations_;
  suggestion.end = end_;
  suggestion.directChance = directChance_;
  for (const std::size_t i : bestOfIdeas(budget_.mostPlans)) {
    const Entry& entry = entries_[i];
    RankedPlan plan;
    plan.rank = static_cast<int>(suggestion.plans.size()) + 1;
    plan.plan = entry.shot.plan;
    plan.chances = chancesFrom(entry.samples, entry.correction);
    if (entry.samples.empty()) plan.chances.value = entry.score;
    suggestion.plans.push_back(plan);
  }
  return suggestion;
}

void Search::publish() {
  if (onBetter_) onBetter_(listed());
}

bool Search::narrow(std::size_t width) {
  struct Stage {
    std::size_t entries;
    std::size_t samples;
  };
  const Stage stages[] = {{width, 12}, {width / 2, 40}, {width / 4, 96}};
  for (const Stage& stage : stages) {
    if (!sampleUpTo(stage.entries, stage.samples)) return false;
    entries_.resize(std::min(entries_.size(), stage.entries));
    rankByValue();
    publish();
  }
  return true;
}

Suggestion Search::run() {
  tryAll();
  const auto width = static_cast<std::size_t>(std::clamp(budget_.mostSimulations / 200, 10L, 40L));
  thin(width, 5);
  if (narrow(width)) {
    thin(width / 4, 3);
    if (!isClear() || budget_.mostSimulations >= kFullGridFrom) {
      refine(3);
      sampleUpTo(6, 128);
      rankByValue();
      publish();
    }
    if (budget_.deeper && !situation_.breakShot && !isClear()) {
      lookDeeper(4);
      publish();
    }
  }
  playAfresh();
  return listed();
}

}  // namespace ferrule
