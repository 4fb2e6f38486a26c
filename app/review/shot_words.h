// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "app/review/review_source.h"
#include "app/words/numbers.h"

/// A shot in words and numbers, as the detail panel shows it.
namespace ferrule {

/// One value of the delivery: measured, or why it is not.
struct ValueLine {
  QString name;
  ShownValue shown;  ///< empty value when not observable
  QString whyNot;    ///< the reason, after "not observable"
};

[[nodiscard]] std::vector<ValueLine> deliveryLines(const Delivery& delivery, const Numbers& numbers);
/// "cut 24.0°, 1.05 m to the ball, 0.86 m to the pocket"; empty without a target.
[[nodiscard]] QString geometryWords(const ShotReading& shot, const MeasuredTable& measured, const Numbers& numbers);
/// How far the object ball ran off the pocket's middle, in degrees and at the pocket in mm; empty when unknown.
[[nodiscard]] QString lineErrorWords(const ShotReading& shot, const MeasuredTable& measured, const Numbers& numbers);
/// One line for each ball that came to rest somewhere else, and one for those that did not move.
[[nodiscard]] QStringList restWords(const ShotReading& shot, const MeasuredTable& measured, const Numbers& numbers);
/// "Missed, certain", and what makes the reading less than clean.
[[nodiscard]] QStringList outcomeLines(const StoredShot& shot);
/// The referee's sentence with how sure it is, what it rests on and what it asks; empty where no referee watched.
/// players: of the session, in playing order; with any other number than two the seats stay nameless.
[[nodiscard]] QStringList rulingLines(const StoredShot& shot, const std::vector<std::string>& players);

}  // namespace ferrule
