// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/sample.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "core/base/random.h"

namespace ferrule {

namespace {

/// Linear between the two nearest; sorted is not empty.
double percentile(const std::vector<double>& sorted, double share) {
  const double place = share * static_cast<double>(sorted.size() - 1);
  const auto low = static_cast<std::size_t>(place);
  const std::size_t high = std::min(low + 1, sorted.size() - 1);
  return sorted[low] + (place - static_cast<double>(low)) * (sorted[high] - sorted[low]);
}

SessionSum drawn(std::span<const SessionSum> sums, std::span<const std::size_t> chosen) {
  SessionSum all;
  for (const std::size_t i : chosen) {
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

std::optional<Interval> sessionInterval(
    std::size_t sessions, const std::function<std::optional<double>(std::span<const std::size_t>)>& statistic,
    const Resampling& resampling) {
  if (sessions < static_cast<std::size_t>(kFewestSessions)) return std::nullopt;
  Random random(resampling.seed);
  std::vector<std::size_t> chosen(sessions);
  std::vector<double> values;
  values.reserve(static_cast<std::size_t>(resampling.draws));
  for (int draw = 0; draw < resampling.draws; ++draw) {
    for (std::size_t& place : chosen)
      place = static_cast<std::size_t>(random.uniform() * static_cast<double>(sessions));
    if (const auto value = statistic(chosen)) values.push_back(*value);
  }
  if (values.empty()) return std::nullopt;
  std::ranges::sort(values);
  const double count = static_cast<double>(sessions);
  const double wide = std::sqrt(count / (count - 1.0)) * studentQuantile(0.5 + kConfidence / 2.0, count - 1.0);
  const double tail = boost::math::cdf(boost::math::normal(), -wide);
  return Interval{percentile(values, tail), percentile(values, 1.0 - tail)};
}

Answer<Estimate> meanOf(std::span<const SessionSum> sums, const Resampling& resampling) {
  const SessionSum all = total(sums);
  const int shots = static_cast<int>(all.count);
  if (shots < kFewestForShare) return shortOf(ShortageKind::Shots, shots, kFewestForShare);
  Estimate estimate = counted(sums, all.mean());
  const auto clustered = sessionInterval(
      sums.size(), [&](std::span<const std::size_t> chosen) { return std::optional(drawn(sums, chosen).mean()); },
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
      [&](std::span<const std::size_t> chosen) {
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
