// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/measure/correct_shot.h"

namespace ferrule {

namespace {

/// A correction that stood after the one that is taken back.
struct LaterCorrection {
  ValueCorrection correction;
  ShotSaying saying;
  ShotId made;  ///< by a split; 0 for none
};

ShotId madeBy(const ValueCorrection& correction) {
  if (correction.field != toText(ShotField::Split) || !correction.corrected) return {};
  const auto boundary = shotBoundaryFromText(*correction.corrected);
  return boundary ? ShotId{boundary->shot} : ShotId{};
}

/// Withdraws all corrections of a frame down to one, the last first. Nothing where one of them cannot be said again.
/// taken: what the one itself said.
Result<std::optional<std::vector<LaterCorrection>>> withdrawDownTo(Record& record, std::vector<ValueCorrection> all,
                                                                   CorrectionId correction,
                                                                   std::optional<ShotSaying>& taken) {
  std::vector<LaterCorrection> later;
  while (all.back().id != correction) {
    const ValueCorrection last = std::move(all.back());
    all.pop_back();
    const auto shot = record.shot(ShotId{last.entityId});
    if (!shot) return tl::make_unexpected(shot.error());
    auto saying = sayingOf(*shot, last);
    if (!saying) return std::optional<std::vector<LaterCorrection>>();
    if (auto done = record.withdrawCorrection(last.id); !done) return tl::make_unexpected(done.error());
    later.push_back({last, std::move(*saying), madeBy(last)});
  }
  const auto shot = record.shot(ShotId{all.back().entityId});
  if (!shot) return tl::make_unexpected(shot.error());
  taken = sayingOf(*shot, all.back());
  if (auto done = record.withdrawCorrection(correction); !done) return tl::make_unexpected(done.error());
  std::ranges::reverse(later);
  return std::optional(std::move(later));
}

ShotId nowOf(const TakeBackReport& report, ShotId shot) {
  const auto remade = std::ranges::find(report.remade, shot, &std::pair<ShotId, ShotId>::first);
  return remade == report.remade.end() ? shot : remade->second;
}

}  // namespace

Result<TakeBackReport> takeBackCorrection(Record& record, FrameId frame, CorrectionId correction) {
  const auto all = record.correctionsIn(frame);
  if (!all) return tl::make_unexpected(all.error());
  if (std::ranges::find(*all, correction, &ValueCorrection::id) == all->end()) {
    return failure(ErrorCode::NotFound, "correction " + std::to_string(correction.value), record.path());
  }
  TakeBackReport report;
  const auto done = record.together([&]() -> Result<void> {
    const auto later = withdrawDownTo(record, *all, correction, report.saying);
    if (!later) return tl::make_unexpected(later.error());
    bool saidAgain = later->has_value();
    for (std::size_t i = 0; saidAgain && i < (*later)->size(); ++i) {
      const LaterCorrection& other = (**later)[i];
      const auto again = sayOfShot(record, nowOf(report, ShotId{other.correction.entityId}), other.saying,
                                   other.correction.who, other.correction.when);
      if (!again && again.error().code != ErrorCode::NotFound) return tl::make_unexpected(again.error());
      saidAgain = again && again->correction;
      if (!saidAgain) break;
      report.renewed.emplace_back(other.correction.id, *again->correction);
      if (other.made.value != 0) report.remade.emplace_back(other.made, again->made);
    }
    if (saidAgain) return {};
    report = {NotSaid::LaterStands, {}, {}, {}};
    return failure(ErrorCode::Cancelled);  // rolls everything back
  });
  if (!done && !report.why) return tl::make_unexpected(done.error());
  return report;
}

}  // namespace ferrule
