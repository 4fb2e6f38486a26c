// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/shot_comparison.h"

#include <QCoreApplication>
#include <cmath>
#include <functional>
#include <numbers>

#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct ShotComparison {
  Q_DECLARE_TR_FUNCTIONS(ShotComparison)
};

const QString kUnseen = QStringLiteral("\u2013");

using Shown = std::function<ShownValue(const Measured&)>;

QString words(const ShownValue& shown) {
  return shown.uncertainty.isEmpty() ? shown.value : shown.value + QLatin1Char(' ') + shown.uncertainty;
}

QString wordsOf(const std::optional<Measured>& value, const Shown& shown) {
  return value ? words(shown(*value)) : kUnseen;
}

std::optional<Measured> minus(const std::optional<Measured>& second, const std::optional<Measured>& first) {
  if (!first || !second) return std::nullopt;
  return Measured{second->value - first->value, std::hypot(first->standardUncertainty, second->standardUncertainty)};
}

ComparedValue line(const QString& name, const std::optional<Measured>& first, const std::optional<Measured>& second,
                   const Shown& shown, const Shown& signedShown) {
  return {name, wordsOf(first, shown), wordsOf(second, shown), wordsOf(minus(second, first), signedShown)};
}

/// Aims of almost a whole turn apart are close to each other.
ComparedValue aimLine(const std::optional<Measured>& first, std::optional<Measured> second, const Shown& shown,
                      const Shown& signedShown) {
  ComparedValue compared = line(ShotComparison::tr("Aim"), first, second, shown, signedShown);
  if (first && second) {
    second->value = first->value + std::remainder(second->value - first->value, 2.0 * std::numbers::pi);
    compared.difference = wordsOf(minus(second, first), signedShown);
  }
  return compared;
}

std::optional<Measured> cutOf(const ShotReading& reading) {
  if (!reading.target || !reading.target->cut_rad) return std::nullopt;
  return Measured{*reading.target->cut_rad, 0.0};
}

std::optional<Measured> lineErrorOf(const ShotReading& reading) {
  if (!reading.target || !reading.target->lineError_rad) return std::nullopt;
  return Measured{*reading.target->lineError_rad, reading.target->lineErrorUncertainty_rad.value_or(0.0)};
}

}  // namespace

std::vector<ComparedValue> comparedValues(const StoredShot& first, const StoredShot& second, const Numbers& numbers) {
  const Delivery& a = first.reading.delivery;
  const Delivery& b = second.reading.delivery;
  const auto shownDegrees = [&numbers](bool sign) {
    return [&numbers, sign](const Measured& angle) {
      return angle.standardUncertainty > 0.0 ? numbers.degrees(angle, sign)
                                             : ShownValue{numbers.degrees(angle.value), {}};
    };
  };
  const auto speed = [&numbers](const Measured& value) { return numbers.speed(value); };
  const auto radii = [&numbers](const Measured& value) { return numbers.radii(value); };
  std::vector<ComparedValue> lines;
  lines.push_back(aimLine(a.aim_rad, b.aim_rad, shownDegrees(false), shownDegrees(true)));
  lines.push_back(line(ShotComparison::tr("Speed"), a.speed_mps, b.speed_mps, speed, speed));
  lines.push_back(line(ShotComparison::tr("Tip side"), a.side, b.side, radii, radii));
  lines.push_back(line(ShotComparison::tr("Tip height"), a.height, b.height, radii, radii));
  lines.push_back(
      line(ShotComparison::tr("Elevation"), a.elevation_rad, b.elevation_rad, shownDegrees(false), shownDegrees(true)));
  lines.push_back(line(ShotComparison::tr("Cut"), cutOf(first.reading), cutOf(second.reading), shownDegrees(false),
                       shownDegrees(true)));
  lines.push_back(line(ShotComparison::tr("Line error"), lineErrorOf(first.reading), lineErrorOf(second.reading),
                       shownDegrees(true), shownDegrees(true)));
  const BallAt* restA = ballIn(first.reading.after, kCueBall);
  const BallAt* restB = ballIn(second.reading.after, kCueBall);
  const auto place = [&numbers](const BallAt* at) {
    return at != nullptr ? QStringLiteral("%1 / %2").arg(numbers.fixed(at->position.x * 1000.0, 0),
                                                         numbers.millimetres(at->position.y))
                         : kUnseen;
  };
  lines.push_back(
      {ShotComparison::tr("Cue ball at rest"), place(restA), place(restB),
       restA != nullptr && restB != nullptr
           ? ShotComparison::tr("%1 apart").arg(numbers.millimetres(distance(restA->position, restB->position)))
           : kUnseen});
  lines.push_back({ShotComparison::tr("Result"), atStart(outcomeWords(first.reading.outcome)),
                   atStart(outcomeWords(second.reading.outcome)), QString()});
  return lines;
}

}  // namespace ferrule
