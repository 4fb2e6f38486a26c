// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/asked_sentence.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/words/joining.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct AskedSentence {
  Q_DECLARE_TR_FUNCTIONS(AskedSentence)
};

/// A fault stands out from this many standard uncertainties on: 95 % of a normal distribution.
constexpr double kStandsOut = 1.96;
/// Offsets below these are of no use to anyone, however sure.
constexpr double kWorthSaying_deg = 0.05;
constexpr double kWorthSaying_mps = 0.01;
constexpr double kWorthSaying_radii = 0.01;
constexpr double kWorthSayingScale = 0.01;

bool standsOut(const Measured& value, double from) {
  return std::abs(value.value - from) > kStandsOut * value.standardUncertainty;
}

bool isAngle(StrikeQuantity quantity) {
  return quantity == StrikeQuantity::Aim || quantity == StrikeQuantity::Elevation;
}

double worthSaying(StrikeQuantity quantity) {
  if (isAngle(quantity)) return radiansFromDegrees(kWorthSaying_deg);
  return quantity == StrikeQuantity::Speed ? kWorthSaying_mps : kWorthSaying_radii;
}

QString nameOf(StrikeQuantity quantity) {
  switch (quantity) {
    case StrikeQuantity::Aim:
      return AskedSentence::tr("Aim");
    case StrikeQuantity::Speed:
      return AskedSentence::tr("Speed");
    case StrikeQuantity::Side:
      return AskedSentence::tr("Side");
    case StrikeQuantity::Height:
      return AskedSentence::tr("Height");
    case StrikeQuantity::Elevation:
      break;
  }
  return AskedSentence::tr("Elevation");
}

/// Without a sign, with its unit.
QString amount(StrikeQuantity quantity, double value, const Numbers& numbers) {
  const double size = std::abs(value);
  if (isAngle(quantity)) return numbers.degrees(size, 2);
  if (quantity == StrikeQuantity::Speed) return numbers.speed(size);
  return numbers.fixed(size, 2) + QStringLiteral(" R");
}

QString offsetWords(StrikeQuantity quantity, double offset, const Numbers& numbers) {
  const QString size = amount(quantity, offset, numbers);
  const bool more = offset > 0.0;
  switch (quantity) {
    case StrikeQuantity::Aim:
      return more ? AskedSentence::tr("the cue ball leaves %1 to the left of what was asked").arg(size)
                  : AskedSentence::tr("the cue ball leaves %1 to the right of what was asked").arg(size);
    case StrikeQuantity::Speed:
      return more ? AskedSentence::tr("shots come out %1 too fast").arg(size)
                  : AskedSentence::tr("shots come out %1 too slow").arg(size);
    case StrikeQuantity::Side:
      return more ? AskedSentence::tr("the tip meets the ball %1 too far right").arg(size)
                  : AskedSentence::tr("the tip meets the ball %1 too far left").arg(size);
    case StrikeQuantity::Height:
      return more ? AskedSentence::tr("the tip meets the ball %1 too high").arg(size)
                  : AskedSentence::tr("the tip meets the ball %1 too low").arg(size);
    case StrikeQuantity::Elevation:
      break;
  }
  return more ? AskedSentence::tr("the cue is %1 too steep").arg(size)
              : AskedSentence::tr("the cue is %1 too flat").arg(size);
}

QString scaleWords(StrikeQuantity quantity, double scale, const Numbers& numbers) {
  const QString percent = numbers.percent(std::abs(scale - 1.0));
  const bool less = scale < 1.0;
  switch (quantity) {
    case StrikeQuantity::Speed:
      return less ? AskedSentence::tr("the harder the shot, the more falls short: %1 of what is asked").arg(percent)
                  : AskedSentence::tr("the harder the shot, the more it overshoots: %1 of what is asked").arg(percent);
    case StrikeQuantity::Aim:
      return less ? AskedSentence::tr("turns of the aim come out %1 too small").arg(percent)
                  : AskedSentence::tr("turns of the aim come out %1 too large").arg(percent);
    default:
      return less ? AskedSentence::tr("the more is asked, the more is missing: %1 of it").arg(percent)
                  : AskedSentence::tr("the more is asked, the more is too much: %1 of it").arg(percent);
  }
}

/// Hard shots are long ones: when the line goes through nothing asked, nothing delivered, it is a share of each shot.
bool isShare(const AskedFit& fit) {
  if (!fit.scale) return false;
  const Measured atNothing{fit.offset.value + (1.0 - fit.scale->value) * fit.offsetAt,
                           std::hypot(fit.offset.standardUncertainty, fit.scale->standardUncertainty * fit.offsetAt)};
  return !standsOut(atNothing, 0.0);
}

QStringList faults(StrikeQuantity quantity, const AskedFit& fit, const Numbers& numbers) {
  QStringList words;
  const bool scaled = fit.scale && standsOut(*fit.scale, 1.0) && std::abs(fit.scale->value - 1.0) > kWorthSayingScale;
  const bool share = scaled && isShare(fit);
  if (share && quantity == StrikeQuantity::Speed) {
    const QString percent = numbers.percent(std::abs(fit.scale->value - 1.0));
    words << (fit.scale->value < 1.0 ? AskedSentence::tr("long shots fall %1 short").arg(percent)
                                     : AskedSentence::tr("long shots go %1 too far").arg(percent));
  } else if (scaled) {
    words << scaleWords(quantity, fit.scale->value, numbers);
  }
  // A share of each shot is an offset at the average, too: said once.
  if (!share && standsOut(fit.offset, 0.0) && std::abs(fit.offset.value) > worthSaying(quantity)) {
    words << offsetWords(quantity, fit.offset.value, numbers);
  }
  if (fit.limit) {
    words << AskedSentence::tr("clipped at %1: more was asked and did not arrive")
                 .arg(amount(quantity, fit.limit->value, numbers));
  }
  return words;
}

QString cell(StrikeQuantity quantity, const std::optional<Measured>& value, bool bare) {
  if (!value) return QStringLiteral("-");
  const double unit = !bare && isAngle(quantity) ? degreesFromRadians(1.0) : 1.0;
  return QStringLiteral("%1 ±%2")
      .arg(unit * value->value, 0, 'f', 3)
      .arg(kStandsOut * unit * value->standardUncertainty, 0, 'f', 3);
}

QString columnName(StrikeQuantity quantity) {
  constexpr std::array kNames{"aim_deg", "speed_m_s", "side", "height", "elevation_deg"};
  return QString::fromLatin1(kNames[static_cast<std::size_t>(quantity)]);
}

}  // namespace

QString askedSentence(StrikeQuantity quantity, const AskedFit& fit, const Numbers& numbers) {
  QStringList words = faults(quantity, fit, numbers);
  if (words.isEmpty()) {
    words << AskedSentence::tr("comes as asked, to within %1")
                 .arg(amount(quantity, std::abs(fit.offset.value) + kStandsOut * fit.offset.standardUncertainty,
                             numbers));
  }
  if (fit.scatter.value > 0.0) {
    words << AskedSentence::tr("single shots scatter by %1").arg(amount(quantity, fit.scatter.value, numbers));
  } else {
    words << AskedSentence::tr("single shots scatter by less than the film can tell");
  }
  return AskedSentence::tr("%1: %2.", "quantity, findings").arg(nameOf(quantity), listApart(words));
}

QStringList askedLines(const AskedDelivered& result, const Numbers& numbers) {
  const std::array fits{&result.aim_rad, &result.speed_mps, &result.side, &result.height, &result.elevation_rad};
  QStringList rows;
  QStringList sentences;
  for (std::size_t i = 0; i < fits.size(); ++i) {
    const std::optional<AskedFit>& fit = *fits[i];
    if (!fit) continue;
    const auto quantity = static_cast<StrikeQuantity>(i);
    rows << columnName(quantity).leftJustified(15) + QString::number(fit->shots).leftJustified(7) +
                cell(quantity, fit->offset, false).leftJustified(18) +
                cell(quantity, fit->scale, true).leftJustified(18) +
                cell(quantity, fit->limit, false).leftJustified(18) + cell(quantity, fit->scatter, false);
    sentences << askedSentence(quantity, *fit, numbers);
  }
  if (rows.isEmpty()) return {};
  rows.prepend(QStringLiteral("quantity       shots  offset            scale             limit             scatter"));
  return rows + sentences;
}

}  // namespace ferrule
