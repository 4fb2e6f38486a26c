// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QString>

#include "app/words/numbers.h"
#include "core/progress/player_progress.h"

namespace ferrule {

/// The sentences of a report, for readers who know nothing of statistics.
class ReportWords {
  Q_DECLARE_TR_FUNCTIONS(ReportWords)

 public:
  explicit ReportWords(const QLocale& locale, SpeedUnit unit = SpeedUnit::MetresPerSecond) : numbers_(locale, unit) {}
  explicit ReportWords(Numbers numbers) : numbers_(std::move(numbers)) {}

  [[nodiscard]] const Numbers& numbers() const { return numbers_; }

  /// "62 %".
  [[nodiscard]] QString percent(double share, int decimals = 0) const;
  /// "58–66 %".
  [[nodiscard]] QString percents(const Interval& interval, int decimals = 0) const;
  /// "0.21°".
  [[nodiscard]] QString degrees(double angle_rad) const;
  /// "0.19–0.24°".
  [[nodiscard]] QString degrees(const Interval& interval_rad) const;
  [[nodiscard]] QString date(std::int64_t utc_ms) const;
  [[nodiscard]] QString shortDate(std::int64_t utc_ms) const;
  [[nodiscard]] static QString shortDate(std::int64_t utc_ms, const Numbers& numbers);
  [[nodiscard]] QString shots(int count) const;
  [[nodiscard]] QString sessions(int count) const;

  /// Why there is no number: "not enough yet: 9 of 20 shots".
  [[nodiscard]] QString shortage(const Shortage& shortage) const;

  /// What was looked at: "steadiness of the aim over the weeks".
  [[nodiscard]] QString name(FindingKind kind) const;
  /// A finding that stands, in one or two sentences.
  [[nodiscard]] QString sentence(const Finding& finding) const;

  [[nodiscard]] QString name(WorkDrill drill) const;
  /// How to set it up and play it.
  [[nodiscard]] QString how(WorkDrill drill) const;
  [[nodiscard]] QString name(WorkKind kind) const;
  /// The evidence of an item.
  [[nodiscard]] QString evidence(const WorkItem& item) const;
  /// Its target and the day of the next test.
  [[nodiscard]] QString target(const WorkItem& item, std::int64_t retest_ms) const;

 private:
  [[nodiscard]] QString perHundred(double share) const;
  [[nodiscard]] QString made(const WorkItem& item) const;

  Numbers numbers_;
};

}  // namespace ferrule
