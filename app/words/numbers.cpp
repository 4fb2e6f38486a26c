// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct NumberWords {
  Q_DECLARE_TR_FUNCTIONS(NumberWords)
};

constexpr double kKilometresPerHour = 3.6;
/// One mile is 1609.344 m. Source: the international mile of 1959.
constexpr double kMilesPerHour = 3600.0 / 1609.344;

constexpr QChar kMinus{0x2212};
constexpr QChar kNarrowSpace{0x202F};

double speedFactor(SpeedUnit unit) {
  switch (unit) {
    case SpeedUnit::KilometresPerHour:
      return kKilometresPerHour;
    case SpeedUnit::MilesPerHour:
      return kMilesPerHour;
    case SpeedUnit::MetresPerSecond:
      break;
  }
  return 1.0;
}

}  // namespace

int decimalsFor(double uncertainty, int mostDecimals) {
  if (!(uncertainty > 0.0) || !std::isfinite(uncertainty)) return mostDecimals;
  const double exponent = std::floor(std::log10(uncertainty));
  const double lead = uncertainty / std::pow(10.0, exponent);
  const int decimals = static_cast<int>(-exponent) + (lead < 1.95 ? 1 : 0);
  return std::clamp(decimals, 0, mostDecimals);
}

Numbers::Numbers(QLocale locale, SpeedUnit speedUnit) : locale_(std::move(locale)), speedUnit_(speedUnit) {}

QString Numbers::fixed(double value, int decimals) const {
  const double step = std::pow(10.0, -decimals);
  if (std::abs(value) < step / 2.0) value = 0.0;  // never "-0.0"
  QString text = locale_.toString(std::abs(value), 'f', decimals);
  return value < 0.0 ? kMinus + text : text;
}

QString Numbers::withSign(double value, int decimals) const {
  const double step = std::pow(10.0, -decimals);
  return value >= step / 2.0 ? QLatin1Char('+') + fixed(value, decimals) : fixed(value, decimals);
}

QString Numbers::whole(long long value) const {
  return locale_.toString(value);
}

QString Numbers::percent(double share, int decimals) const {
  return NumberWords::tr("%1\u00a0%", "per cent").arg(fixed(100.0 * share, decimals));
}

QString Numbers::signedPercent(double share, int decimals) const {
  return NumberWords::tr("%1\u00a0%", "per cent").arg(withSign(100.0 * share, decimals));
}

QString Numbers::percents(double least, double most, int decimals) const {
  return NumberWords::tr("%1\u2013%2\u00a0%", "from, to, per cent")
      .arg(fixed(100.0 * least, decimals), fixed(100.0 * most, decimals));
}

QString Numbers::seconds(double time_s, int decimals) const {
  return NumberWords::tr("%1 s").arg(fixed(time_s, decimals));
}

QString Numbers::clock(double time_s) const {
  const auto all = static_cast<long long>(std::floor(std::max(time_s, 0.0)));
  const auto two = [](long long n) { return QStringLiteral("%1").arg(n, 2, 10, QLatin1Char('0')); };
  const QString rest = two(all % 60);
  if (all < 3600) return QStringLiteral("%1:%2").arg(all / 60).arg(rest);
  return QStringLiteral("%1:%2:%3").arg(all / 3600).arg(two(all / 60 % 60), rest);
}

QString Numbers::millimetres(double length_m, int decimals) const {
  return NumberWords::tr("%1 mm").arg(fixed(millimetresFromMetres(length_m), decimals));
}

QString Numbers::metres(double length_m, int decimals) const {
  return NumberWords::tr("%1 m").arg(fixed(length_m, decimals));
}

QString Numbers::degrees(double angle_rad, int decimals) const {
  return fixed(degreesFromRadians(angle_rad), decimals) + QChar(0x00B0);
}

QString Numbers::speedUnitName() const {
  switch (speedUnit_) {
    case SpeedUnit::KilometresPerHour:
      return NumberWords::tr("km/h");
    case SpeedUnit::MilesPerHour:
      return NumberWords::tr("mph");
    case SpeedUnit::MetresPerSecond:
      break;
  }
  return NumberWords::tr("m/s");
}

double Numbers::speedShown(double speed_mps) const {
  return speed_mps * speedFactor(speedUnit_);
}

double Numbers::mpsPerUnit() const {
  return 1.0 / speedFactor(speedUnit_);
}

QString Numbers::speed(double speed_mps) const {
  return fixed(speed_mps * speedFactor(speedUnit_), speedUnit_ == SpeedUnit::MetresPerSecond ? 2 : 1) + kNarrowSpace +
         speedUnitName();
}

ShownValue Numbers::shown(double value, double uncertainty, const QString& unit, bool sign, int mostDecimals) const {
  const int decimals = decimalsFor(uncertainty, mostDecimals);
  ShownValue result;
  result.value = (sign ? withSign(value, decimals) : fixed(value, decimals)) + unit;
  if (uncertainty > 0.0) result.uncertainty = QChar(0x00B1) + fixed(uncertainty, decimals);
  return result;
}

ShownValue Numbers::degrees(const Measured& angle_rad, bool sign) const {
  return shown(degreesFromRadians(angle_rad.value), degreesFromRadians(angle_rad.standardUncertainty), QChar(0x00B0),
               sign, 2);
}

ShownValue Numbers::speed(const Measured& speed_mps) const {
  const double factor = speedFactor(speedUnit_);
  return shown(speed_mps.value * factor, speed_mps.standardUncertainty * factor, kNarrowSpace + speedUnitName(), false,
               2);
}

ShownValue Numbers::radii(const Measured& offset) const {
  return shown(offset.value, offset.standardUncertainty, kNarrowSpace + QStringLiteral("R"), true, 2);
}

QString toSetting(SpeedUnit unit) {
  switch (unit) {
    case SpeedUnit::KilometresPerHour:
      return QStringLiteral("km/h");
    case SpeedUnit::MilesPerHour:
      return QStringLiteral("mph");
    case SpeedUnit::MetresPerSecond:
      break;
  }
  return QStringLiteral("m/s");
}

SpeedUnit speedUnitFromSetting(const QString& text) {
  for (const SpeedUnit unit : {SpeedUnit::KilometresPerHour, SpeedUnit::MilesPerHour}) {
    if (toSetting(unit) == text) return unit;
  }
  return SpeedUnit::MetresPerSecond;
}

}  // namespace ferrule
