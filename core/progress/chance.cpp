// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/chance.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/base/random.h"

namespace ferrule {

namespace {

/// Shuffles that come out equal to the observed one must count as such, whatever the last digit.
constexpr double kSlack = 1.0 - 1e-9;

/// Durstenfeld 1964.
template <class T>
void shuffle(std::vector<T>& values, Random& random) {
  for (std::size_t i = values.size(); i > 1; --i)
    std::swap(values[i - 1], values[static_cast<std::size_t>(random.uniform() * static_cast<double>(i))]);
}

double chanceFrom(int asFar, int draws) {
  return (1.0 + asFar) / (1.0 + draws);
}

}  // namespace

Line lineThrough(std::span<const SeriesPoint> points) {
  double weights = 0.0;
  Line line;
  for (const SeriesPoint& point : points) {
    weights += point.weight;
    line.middle += point.weight * point.when;
    line.level += point.weight * point.value;
  }
  line.middle /= weights;
  line.level /= weights;
  double squares = 0.0;
  double products = 0.0;
  for (const SeriesPoint& point : points) {
    const double away = point.when - line.middle;
    squares += point.weight * away * away;
    products += point.weight * away * (point.value - line.level);
  }
  line.slope = squares > 0.0 ? products / squares : 0.0;
  return line;
}

double chanceOfSlope(std::span<const SeriesPoint> points, const Resampling& shuffling) {
  if (points.empty()) return 1.0;
  const double observed = std::abs(lineThrough(points).slope);
  Random random(shuffling.seed);
  std::vector<SeriesPoint> shuffled(points.begin(), points.end());
  int asFar = 0;
  for (int draw = 0; draw < shuffling.draws; ++draw) {
    shuffle(shuffled, random);
    for (std::size_t i = 0; i < points.size(); ++i)
      shuffled[i].when = points[i].when;
    if (std::abs(lineThrough(shuffled).slope) >= observed * kSlack) ++asFar;
  }
  return chanceFrom(asFar, shuffling.draws);
}

double weightedMean(std::span<const Difference> differences) {
  double weights = 0.0;
  double sum = 0.0;
  for (const Difference& difference : differences) {
    weights += difference.weight;
    sum += difference.weight * difference.value;
  }
  return weights > 0.0 ? sum / weights : 0.0;
}

double chanceOfMean(std::span<const Difference> differences, const Resampling& shuffling) {
  const auto sumWith = [&](auto&& sign) {
    double sum = 0.0;
    for (const Difference& difference : differences)
      sum += sign() * difference.weight * difference.value;
    return std::abs(sum);
  };
  const double observed = sumWith([] { return 1.0; });
  Random random(shuffling.seed);
  int asFar = 0;
  for (int draw = 0; draw < shuffling.draws; ++draw) {
    if (sumWith([&] { return random.uniform() < 0.5 ? -1.0 : 1.0; }) >= observed * kSlack) ++asFar;
  }
  return chanceFrom(asFar, shuffling.draws);
}

double chanceOfGap(std::span<const Difference> some, std::span<const Difference> others, const Resampling& shuffling) {
  std::vector<Difference> all(some.begin(), some.end());
  all.insert(all.end(), others.begin(), others.end());
  const auto gap = [&] {
    const std::span<const Difference> whole(all);
    return std::abs(weightedMean(whole.first(some.size())) - weightedMean(whole.subspan(some.size())));
  };
  const double observed = gap();
  Random random(shuffling.seed);
  int asFar = 0;
  for (int draw = 0; draw < shuffling.draws; ++draw) {
    shuffle(all, random);
    if (gap() >= observed * kSlack) ++asFar;
  }
  return chanceFrom(asFar, shuffling.draws);
}

std::vector<bool> standing(std::span<const double> chances, double level) {
  std::vector<std::size_t> order(chances.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return chances[i]; });
  std::vector<bool> stands(chances.size(), false);
  for (std::size_t i = 0; i < order.size(); ++i) {
    if (chances[order[i]] > level / static_cast<double>(order.size() - i)) break;
    stands[order[i]] = true;
  }
  return stands;
}

}  // namespace ferrule
