// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/read_shaft.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/geometry/units.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr double kDelivery_s = 1.5;
constexpr double kAddress_s = 4.0;
constexpr double kSteady_s = 1.0;
constexpr std::size_t kFewest = 3;
constexpr std::size_t kFewestSteady = 5;
/// Squirt and swerve of a playable shot turn a ball by less. Common practice, no source.
constexpr double kMostBetween_rad = 0.12;
/// Lines that point elsewhere than most are misread.
constexpr double kLeastOutlier_rad = 0.02;

}  // namespace

std::optional<CueReading> readShaft(std::span<const ShaftLine> lines, const StruckBall& ball) {
  const auto between = [&](double from_s) {
    std::vector<ShaftLine> chosen;
    for (const ShaftLine& line : lines) {
      const double before_s = ball.strike_s - line.time_s;
      if (before_s >= 0.0 && before_s <= from_s) chosen.push_back(line);
    }
    return chosen;
  };
  std::vector<ShaftLine> last = between(kDelivery_s);
  if (last.size() < kFewest) return std::nullopt;
  const double near_rad = last.back().aim_rad.value;
  const auto middleOf = [&](const auto& value) {
    std::vector<double> values;
    for (const ShaftLine& line : last)
      values.push_back(value(line));
    return median(std::move(values));
  };
  const auto turned = [&](const ShaftLine& line) { return wrapAngle(line.aim_rad.value - near_rad); };
  const double middle_rad = middleOf(turned);
  std::vector<double> misses;
  for (const ShaftLine& line : last)
    misses.push_back(std::abs(turned(line) - middle_rad));
  last = withoutOutliers(last, misses, kLeastOutlier_rad);
  if (last.size() < kFewest) return std::nullopt;

  CueReading reading;
  reading.source = CueSource::Shaft;
  reading.ballRadius_m = ball.radius_m;
  reading.images = static_cast<int>(last.size());
  // The cue that strikes is one of these lines, not their mean: their spread is part of the uncertainty.
  const auto spreadOf = [&](const auto& value, double middle) {
    double squares = 0.0;
    for (const ShaftLine& line : last)
      squares += (value(line) - middle) * (value(line) - middle);
    return std::sqrt(squares / static_cast<double>(last.size() - 1));
  };
  const auto side = [](const ShaftLine& line) { return line.side_m.value; };
  const double aim_rad = middleOf(turned);
  const double side_m = middleOf(side);
  const double aim_u = middleOf([](const ShaftLine& line) { return line.aim_rad.standardUncertainty; });
  const double side_u = middleOf([](const ShaftLine& line) { return line.side_m.standardUncertainty; });
  reading.aim_rad = Measured{wrapAngle(near_rad + aim_rad), std::hypot(aim_u, spreadOf(turned, aim_rad))};
  reading.tipSide_m = Measured{side_m, std::hypot(side_u, spreadOf(side, side_m), ball.place_u_m)};
  if (ball.aim_rad) {
    const double between_rad = wrapAngle(reading.aim_rad->value - ball.aim_rad->value);
    if (std::abs(between_rad) > kMostBetween_rad) return std::nullopt;
    reading.aimBeforeMinusAfter_rad =
        Measured{between_rad, std::hypot(reading.aim_rad->standardUncertainty, ball.aim_rad->standardUncertainty)};
  }
  last = between(kSteady_s);
  if (last.size() >= kFewestSteady) {
    const double spread = spreadOf(turned, middleOf(turned));
    const double noise = middleOf([](const ShaftLine& line) { return line.noise_rad; });
    reading.steadiness_rad = Measured{std::sqrt(std::max(0.0, spread * spread - noise * noise)),
                                      spread / std::sqrt(2.0 * static_cast<double>(last.size() - 1))};
  }
  for (const ShaftLine& line : between(kAddress_s))
    reading.course.push_back({line.time_s, line.aim_rad, std::nullopt});
  return reading;
}

}  // namespace ferrule
