// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/asked_delivered.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <sstream>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// What was asked must spread by this share of its size, or by this much in its unit, to tell a scale.
constexpr double kLeastSpread = 0.05;
constexpr int kScatterRounds = 30;
constexpr int kLimitSteps = 200;

struct Pair {
  double asked = 0.0;
  double delivered = 0.0;
  double uncertainty = 0.0;
};

struct Line {
  double offset = 0.0;  ///< at the middle
  double slope = 1.0;
  double middle = 0.0;
  double offsetVariance = 0.0;
  double slopeVariance = 0.0;

  [[nodiscard]] double at(double asked) const { return offset + slope * (asked - middle); }
};

/// Straight line through the pairs; slope 1 when it is not free.
Line lineThrough(const std::vector<Pair>& pairs, double scatter, bool withSlope) {
  Line line;
  double weights = 0.0;
  double asked = 0.0;
  double delivered = 0.0;
  const auto weightOf = [&](const Pair& pair) {
    return 1.0 / (pair.uncertainty * pair.uncertainty + scatter * scatter + 1e-18);
  };
  for (const Pair& pair : pairs) {
    const double weight = weightOf(pair);
    weights += weight;
    asked += weight * pair.asked;
    delivered += weight * pair.delivered;
  }
  line.middle = asked / weights;
  line.offset = delivered / weights;
  line.offsetVariance = 1.0 / weights;
  if (!withSlope) return line;
  double squares = 0.0;
  double products = 0.0;
  for (const Pair& pair : pairs) {
    const double weight = weightOf(pair);
    squares += weight * (pair.asked - line.middle) * (pair.asked - line.middle);
    products += weight * (pair.asked - line.middle) * (pair.delivered - line.offset);
  }
  line.slope = products / squares;
  line.slopeVariance = 1.0 / squares;
  return line;
}

/// The scatter with which chi-square per degree of freedom is 1 (Mandel and Paule), found by halving.
template <class Misfit>
double scatterOf(const std::vector<Pair>& pairs, double freedom, Misfit&& misfit) {
  double low = 0.0;
  double high = 0.0;
  for (const Pair& pair : pairs)
    high = std::max(high, std::abs(misfit(pair, 0.0)));
  high = 2.0 * high + 1e-12;
  const auto chiSquare = [&](double scatter) {
    double sum = 0.0;
    for (const Pair& pair : pairs) {
      const double off = misfit(pair, scatter);
      sum += off * off / (pair.uncertainty * pair.uncertainty + scatter * scatter + 1e-18);
    }
    return sum;
  };
  if (chiSquare(0.0) <= freedom) return 0.0;
  for (int i = 0; i < kScatterRounds; ++i) {
    const double middle = 0.5 * (low + high);
    (chiSquare(middle) > freedom ? low : high) = middle;
  }
  return high;
}

struct Cut {
  Line line;
  std::optional<double> limit;
  double limitUncertainty = 0.0;
  double scatter = 0.0;
  double minusTwoLogLikelihood = 0.0;
  int beyond = 0;
};

Cut fitWith(const std::vector<Pair>& pairs, std::optional<double> limit, bool withSlope) {
  Cut cut;
  std::vector<Pair> inside;
  std::vector<Pair> outside;
  for (const Pair& pair : pairs)
    (limit && std::abs(pair.asked) > *limit ? outside : inside).push_back(pair);
  cut.beyond = static_cast<int>(outside.size());
  const int numbers = (withSlope ? 2 : 1) + (limit ? 1 : 0);
  const double freedom = std::max(1.0, static_cast<double>(pairs.size()) - numbers);
  const auto misfit = [&](const Pair& pair, double scatter) {
    const Line line = lineThrough(inside, scatter, withSlope);
    return pair.delivered - line.at(limit ? std::clamp(pair.asked, -*limit, *limit) : pair.asked);
  };
  cut.scatter = scatterOf(pairs, freedom, misfit);
  cut.line = lineThrough(inside, cut.scatter, withSlope);
  cut.limit = limit;
  double outsideWeights = 0.0;
  for (const Pair& pair : pairs) {
    const double variance = pair.uncertainty * pair.uncertainty + cut.scatter * cut.scatter + 1e-18;
    const double off = misfit(pair, cut.scatter);
    cut.minusTwoLogLikelihood += off * off / variance + std::log(variance);
    if (limit && std::abs(pair.asked) > *limit) outsideWeights += 1.0 / variance;
  }
  if (outsideWeights > 0.0) {
    cut.limitUncertainty =
        std::sqrt(1.0 / outsideWeights + cut.line.offsetVariance) / std::max(0.1, std::abs(cut.line.slope));
  }
  return cut;
}

std::optional<AskedFit> fitOf(const std::vector<Pair>& pairs) {
  const auto count = static_cast<int>(pairs.size());
  if (count < kFewestAsked) return std::nullopt;
  const auto [least, most] = std::ranges::minmax_element(pairs, {}, &Pair::asked);
  double largest = 0.0;
  for (const Pair& pair : pairs)
    largest = std::max(largest, std::abs(pair.asked));
  const bool withSlope = most->asked - least->asked > kLeastSpread * std::max(largest, 0.2);

  Cut best = fitWith(pairs, std::nullopt, withSlope);
  if (withSlope) {
    const double plain = best.minusTwoLogLikelihood;
    std::optional<Cut> limited;
    for (int i = 1; i < kLimitSteps; ++i) {
      const double limit = largest * i / kLimitSteps;
      const auto inside = std::ranges::count_if(pairs, [&](const Pair& p) { return std::abs(p.asked) <= limit; });
      if (inside < 3 || count - inside < 2) continue;
      const Cut cut = fitWith(pairs, limit, withSlope);
      if (!limited || cut.minusTwoLogLikelihood < limited->minusTwoLogLikelihood) limited = cut;
    }
    // A line that is cut off must also rise before it.
    if (limited && limited->minusTwoLogLikelihood < plain - kLimitGain && limited->line.slope > 0.0) best = *limited;
  }

  AskedFit fit;
  fit.shots = count;
  fit.offsetAt = best.line.middle;
  fit.offset = {best.line.offset - best.line.middle, std::sqrt(best.line.offsetVariance)};
  if (withSlope) fit.scale = Measured{best.line.slope, std::sqrt(best.line.slopeVariance)};
  // What arrives at most, not what was asked there.
  if (best.limit) {
    fit.limit = Measured{std::abs(best.line.at(*best.limit)), best.limitUncertainty * std::abs(best.line.slope)};
  }
  // Of a standard deviation from so many shots: sigma / sqrt(2 (n - 1)). Source: JCGM 100:2008, E.4.3.
  double own = 0.0;
  for (const Pair& pair : pairs)
    own += pair.uncertainty * pair.uncertainty / count;
  fit.scatter = {best.scatter, std::sqrt((best.scatter * best.scatter + own) / (2.0 * (count - 1)))};
  return fit;
}

template <class Asked, class Delivered>
std::vector<Pair> pairsOf(std::span<const AskedShot> shots, Asked asked, Delivered delivered, bool angle = false) {
  std::vector<Pair> pairs;
  for (const AskedShot& shot : shots) {
    const std::optional<double>& wanted = shot.asked.*asked;
    const std::optional<Measured>& came = shot.delivered.*delivered;
    if (!wanted || !came) continue;
    const double value = angle ? *wanted + wrapAngle(came->value - *wanted) : came->value;
    pairs.push_back({*wanted, value, came->standardUncertainty});
  }
  return pairs;
}

std::vector<std::string> cellsOf(std::string line) {
  if (!line.empty() && line.back() == '\r') line.pop_back();
  std::vector<std::string> cells(1);
  for (const char c : line) {
    if (c == ',') {
      cells.emplace_back();
    } else if (c != ' ') {
      cells.back().push_back(c);
    }
  }
  return cells;
}

}  // namespace

AskedDelivered askedDelivered(std::span<const AskedShot> shots) {
  AskedDelivered all;
  all.aim_rad = fitOf(pairsOf(shots, &AskedStrike::aim_rad, &Delivery::aim_rad, true));
  all.speed_mps = fitOf(pairsOf(shots, &AskedStrike::speed_mps, &Delivery::speed_mps));
  all.side = fitOf(pairsOf(shots, &AskedStrike::side, &Delivery::side));
  all.height = fitOf(pairsOf(shots, &AskedStrike::height, &Delivery::height));
  all.elevation_rad = fitOf(pairsOf(shots, &AskedStrike::elevation_rad, &Delivery::elevation_rad));
  return all;
}

Result<std::vector<AskedLine>> parseAskedCsv(const std::string& text, const std::string& name) {
  std::istringstream lines(text);
  std::string line;
  if (!std::getline(lines, line)) return failure(ErrorCode::FileEmpty, name);
  if (line.starts_with("\xEF\xBB\xBF")) line.erase(0, 3);
  const std::vector<std::string> header = cellsOf(line);
  const bool known = std::ranges::any_of(header, [](const std::string& cell) {
    return cell == "aim_deg" || cell == "speed_m_s" || cell == "side" || cell == "height" || cell == "elevation_deg";
  });
  if (!known) return failure(ErrorCode::FieldMissing, name, "aim_deg, speed_m_s, side, height, elevation_deg");
  std::vector<AskedLine> all;
  for (int number = 2; std::getline(lines, line); ++number) {
    const std::vector<std::string> cells = cellsOf(line);
    if (cells.size() == 1 && cells.front().empty()) continue;
    AskedLine asked;
    asked.shot = all.empty() ? 1 : all.back().shot + 1;
    for (std::size_t i = 0; i < std::min(cells.size(), header.size()); ++i) {
      if (cells[i].empty()) continue;
      double value = 0.0;
      const char* end = cells[i].data() + cells[i].size();
      const auto [stopped, error] = std::from_chars(cells[i].data(), end, value);
      const bool sound = error == std::errc() && stopped == end && std::isfinite(value);
      const bool ours = header[i] == "shot" || header[i] == "aim_deg" || header[i] == "speed_m_s" ||
                        header[i] == "side" || header[i] == "height" || header[i] == "elevation_deg";
      if (!ours) continue;
      if (!sound) return failure(ErrorCode::FileMalformed, name, std::to_string(number) + ": " + header[i]);
      if (header[i] == "shot") asked.shot = static_cast<int>(value);
      if (header[i] == "aim_deg") asked.asked.aim_rad = radiansFromDegrees(value);
      if (header[i] == "speed_m_s") asked.asked.speed_mps = value;
      if (header[i] == "side") asked.asked.side = value;
      if (header[i] == "height") asked.asked.height = value;
      if (header[i] == "elevation_deg") asked.asked.elevation_rad = radiansFromDegrees(value);
    }
    all.push_back(asked);
  }
  return all;
}

}  // namespace ferrule
