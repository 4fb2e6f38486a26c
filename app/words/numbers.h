// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>

#include "core/table/shot.h"

namespace ferrule {

/// The unit in which speeds are shown. Files and core keep m/s.
enum class SpeedUnit { MetresPerSecond, KilometresPerHour, MilesPerHour };

/// A number and, smaller beside it, its standard uncertainty.
struct ShownValue {
  QString value;        ///< with its unit
  QString uncertainty;  ///< "±0.05", in the same unit; empty when unknown
};

/// Turns core's SI values into the user's digits and units. One per window; a value.
class Numbers {
 public:
  explicit Numbers(QLocale locale = QLocale(), SpeedUnit speedUnit = SpeedUnit::MetresPerSecond);

  [[nodiscard]] const QLocale& locale() const { return locale_; }
  [[nodiscard]] SpeedUnit speedUnit() const { return speedUnit_; }

  /// With the locale's digits and separators and a true minus sign. decimals: 0 or more.
  [[nodiscard]] QString fixed(double value, int decimals) const;
  /// As fixed, with a plus sign for values that do not round to zero.
  [[nodiscard]] QString withSign(double value, int decimals) const;
  [[nodiscard]] QString whole(long long value) const;

  /// "62 %": with the blank, or none, that the language puts before the sign.
  [[nodiscard]] QString percent(double share, int decimals = 0) const;
  /// "+8 %", "−3 %".
  [[nodiscard]] QString signedPercent(double share, int decimals = 0) const;
  /// "58–66 %".
  [[nodiscard]] QString percents(double least, double most, int decimals = 0) const;
  [[nodiscard]] QString seconds(double time_s, int decimals = 2) const;
  /// 1:02:03 or 2:03, for positions in a film.
  [[nodiscard]] QString clock(double time_s) const;
  [[nodiscard]] QString millimetres(double length_m, int decimals = 0) const;
  [[nodiscard]] QString metres(double length_m, int decimals = 2) const;
  [[nodiscard]] QString degrees(double angle_rad, int decimals = 1) const;
  [[nodiscard]] QString speed(double speed_mps) const;
  [[nodiscard]] QString speedUnitName() const;
  /// A speed in the shown unit, without it: for axes.
  [[nodiscard]] double speedShown(double speed_mps) const;
  /// One of the shown unit, m/s: for editors.
  [[nodiscard]] double mpsPerUnit() const;

  [[nodiscard]] ShownValue degrees(const Measured& angle_rad, bool sign = false) const;
  [[nodiscard]] ShownValue speed(const Measured& speed_mps) const;
  /// A tip offset as a share of the ball's radius: "+0.13 R".
  [[nodiscard]] ShownValue radii(const Measured& offset) const;

 private:
  [[nodiscard]] ShownValue shown(double value, double uncertainty, const QString& unit, bool sign,
                                 int mostDecimals) const;

  QLocale locale_;
  SpeedUnit speedUnit_;
};

/// How many decimals a value deserves beside its standard uncertainty: one significant digit of it, two when that digit
/// is a 1. Source: JCGM 100:2008, 7.2.6 (at most two significant digits).
[[nodiscard]] int decimalsFor(double uncertainty, int mostDecimals);

/// "m/s", "km/h", "mph": the words of the settings, not for the screen.
[[nodiscard]] QString toSetting(SpeedUnit unit);
[[nodiscard]] SpeedUnit speedUnitFromSetting(const QString& text);

}  // namespace ferrule
