// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/sample.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "core/base/random.h"

namespace ferrule {

namespace {

/// Measures of one report rest on few different numbers of sessions; each table is some megabytes where they are many.
constexpr std::size_t kMostKept = 6;

/// Linear between the two nearest; sorted is not empty.
double percentile(const std::vector<double>& sorted, double share) {
  const double place = share * static_cast<double>(sorted.size() - 1);
  const auto low = static_cast<std::size_t>(place);
  const std::size_t high = std::min(low + 1, sorted.size() - 1);
  return sorted[low] + (place - static_cast<double>(low)) * (sorted[high] - sorted[low]);
}

SessionSum drawn(std::span<const SessionSum> sums, std::span<const DrawnSession> chosen) {
  SessionSum all;
  for (const DrawnSession i : chosen) {
    all.count += sums[i].count;
    all.sum += sums[i].sum;
    all.squares += sums[i].squares;
  }
  return all;
}

Estimate counted(std::span<const SessionSum> sums, double value) {
  Estimate estimate;
  estimate.value = value;
  estimate.shots = static_cast<int>(std::lround(total(sums).count));
  estimate.sessions = static_cast<int>(sums.size());
  return estimate;
}

}  // namespace

double SessionSum::spread() const {
  return std::sqrt(std::max(0.0, squares - sum * sum / count) / (count - 1.0));
}

std::vector<SessionSum> bySession(std::span<const Observation> observations) {
  std::vector<SessionSum> sums;
  for (const Observation& seen : observations) {
    if (sums.empty() || sums.back().session != seen.session) sums.push_back({seen.session, 0.0, 0.0, 0.0});
    SessionSum& sum = sums.back();
    sum.count += 1.0;
    sum.sum += seen.value;
    sum.squares += seen.value * seen.value;
  }
  return sums;
}

SessionSum total(std::span<const SessionSum> sums) {
  SessionSum all;
  for (const SessionSum& sum : sums) {
    all.count += sum.count;
    all.sum += sum.sum;
    all.squares += sum.squares;
  }
  return all;
}

std::span<const DrawnSession> SessionDraws::of(std::size_t sessions, std::uint64_t seed, int draws) {
  const auto known = std::ranges::find_if(
      kept_, [&](const Kept& one) { return one.sessions == sessions && one.seed == seed && one.draws == draws; });
  if (known != kept_.end()) return known->places;
  if (kept_.size() == kMostKept) kept_.erase(kept_.begin());
  kept_.push_back({sessions, seed, draws, std::vector<DrawnSession>(sessions * static_cast<std::size_t>(draws))});
  Random random(seed);
  for (DrawnSession& place : kept_.back().places)
    place = static_cast<DrawnSession>(random.uniform() * static_cast<double>(sessions));
  return kept_.back().places;
}

std::vector<Interval> sessionIntervals(
    std::size_t sessions, std::size_t statistics,
    const std::function<bool(std::span<const DrawnSession> chosen, std::span<double> values)>& write,
    const Resampling& resampling) {
  if (sessions < static_cast<std::size_t>(kFewestSessions)) return {};
  SessionDraws once;
  const auto places = (resampling.kept ? *resampling.kept : once).of(sessions, resampling.seed, resampling.draws);
  std::vector<std::vector<double>> values(statistics);
  std::vector<double> ofDraw(statistics);
  for (std::size_t first = 0; first < places.size(); first += sessions) {
    if (!write(places.subspan(first, sessions), ofDraw)) continue;
    for (std::size_t i = 0; i < statistics; ++i)
      values[i].push_back(ofDraw[i]);
  }
  if (values.empty() || values.front().empty()) return {};
  const double count = static_cast<double>(sessions);
  const double wide = std::sqrt(count / (count - 1.0)) * studentQuantile(0.5 + kConfidence / 2.0, count - 1.0);
  const double tail = boost::math::cdf(boost::math::normal(), -wide);
  std::vector<Interval> intervals;
  for (std::vector<double>& drawn : values) {
    std::ranges::sort(drawn);
    intervals.push_back({percentile(drawn, tail), percentile(drawn, 1.0 - tail)});
  }
  return intervals;
}

std::optional<Interval> sessionInterval(
    std::size_t sessions, const std::function<std::optional<double>(std::span<const DrawnSession>)>& statistic,
    const Resampling& resampling) {
  const auto intervals = sessionIntervals(
      sessions, 1,
      [&](std::span<const DrawnSession> chosen, std::span<double> values) {
        const auto value = statistic(chosen);
        if (value) values[0] = *value;
        return value.has_value();
      },
      resampling);
  return intervals.empty() ? std::nullopt : std::optional(intervals.front());
}

Answer<Estimate> meanOf(std::span<const SessionSum> sums, const Resampling& resampling) {
  const SessionSum all = total(sums);
  const int shots = static_cast<int>(all.count);
  if (shots < kFewestForShare) return shortOf(ShortageKind::Shots, shots, kFewestForShare);
  Estimate estimate = counted(sums, all.mean());
  const auto clustered = sessionInterval(
      sums.size(), [&](std::span<const DrawnSession> chosen) { return std::optional(drawn(sums, chosen).mean()); },
      resampling);
  estimate.clustered = clustered.has_value();
  estimate.interval = clustered ? *clustered : meanInterval(all.mean(), all.spread(), shots);
  return estimate;
}

Answer<Estimate> spreadOf(std::span<const SessionSum> sums, const Resampling& resampling) {
  const SessionSum all = total(sums);
  const int shots = static_cast<int>(all.count);
  if (shots < kFewestForSpread) return shortOf(ShortageKind::Shots, shots, kFewestForSpread);
  Estimate estimate = counted(sums, all.spread());
  const auto clustered = sessionInterval(
      sums.size(),
      [&](std::span<const DrawnSession> chosen) {
        const SessionSum some = drawn(sums, chosen);
        return some.count < 2.0 ? std::nullopt : std::optional(some.spread());
      },
      resampling);
  estimate.clustered = clustered.has_value();
  estimate.interval = clustered ? *clustered : spreadInterval(all.spread(), shots);
  return estimate;
}

Answer<Estimate> shareOf(std::span<const SessionSum> sums) {
  const SessionSum all = total(sums);
  const int shots = static_cast<int>(all.count);
  if (shots < kFewestForShare) return shortOf(ShortageKind::Shots, shots, kFewestForShare);
  const double share = all.mean();
  Estimate estimate = counted(sums, share);
  double effect = 1.0;
  const double apart = share * (1.0 - share);
  if (sums.size() >= static_cast<std::size_t>(kFewestSessions) && apart > 0.0) {
    double deviations = 0.0;
    for (const SessionSum& sum : sums)
      deviations += std::pow(sum.sum - share * sum.count, 2.0);
    const double sessions = static_cast<double>(sums.size());
    effect = std::max(1.0, sessions / (sessions - 1.0) * deviations / (all.count * apart));
    estimate.clustered = true;
  }
  estimate.interval = wilsonInterval(all.sum / effect, all.count / effect);
  return estimate;
}

}  // namespace ferrule
