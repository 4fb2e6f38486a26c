// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/asked_delivered.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/csv.h"
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

/// The columns of a list of commands besides the shot's number, as they stand in the file.
struct AskedColumn {
  const char* name;
  std::optional<double> AskedStrike::*value;
  bool degrees;
};
constexpr std::array kColumns{
    AskedColumn{"aim_deg", &AskedStrike::aim_rad, true},
    AskedColumn{"speed_m_s", &AskedStrike::speed_mps, false},
    AskedColumn{"side", &AskedStrike::side, false},
    AskedColumn{"height", &AskedStrike::height, false},
    AskedColumn{"elevation_deg", &AskedStrike::elevation_rad, true},
};

std::string withoutSpaces(std::string text) {
  std::erase(text, ' ');
  return text;
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
  CsvText csv = parseCsv(text);
  if (csv.rows.empty()) return failure(ErrorCode::FileEmpty, name);
  std::vector<std::string>& header = csv.rows.front().fields;
  std::ranges::transform(header, header.begin(), withoutSpaces);
  const auto columnOf = [&](std::size_t i) { return std::ranges::find(kColumns, header[i], &AskedColumn::name); };
  const bool known = std::ranges::any_of(
      kColumns, [&](const AskedColumn& column) { return std::ranges::find(header, column.name) != header.end(); });
  if (!known) return failure(ErrorCode::FieldMissing, name, "aim_deg, speed_m_s, side, height, elevation_deg");
  std::vector<AskedLine> all;
  for (const CsvRow& row : std::span(csv.rows).subspan(1)) {
    AskedLine line;
    line.shot = all.empty() ? 1 : all.back().shot + 1;
    for (std::size_t i = 0; i < std::min(row.fields.size(), header.size()); ++i) {
      const auto* column = columnOf(i);
      const bool isShot = header[i] == "shot";
      if ((!isShot && column == kColumns.end()) || withoutSpaces(row.fields[i]).empty()) continue;
      const auto value = csv.number(row.fields[i]);
      if (!value) return failure(ErrorCode::FileMalformed, name, std::to_string(row.line) + ": " + header[i]);
      if (isShot) {
        line.shot = static_cast<int>(*value);
      } else {
        line.asked.*(column->value) = column->degrees ? radiansFromDegrees(*value) : *value;
      }
    }
    all.push_back(line);
  }
  return all;
}

}  // namespace ferrule
