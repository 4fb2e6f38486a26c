// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/reliability.h"

#include <algorithm>

#include "core/progress/shot_errors.h"

namespace ferrule {

std::size_t chanceBand(double chance) {
  const double tenths = std::clamp(chance, 0.0, 1.0) * static_cast<double>(kChanceBandCount);
  return std::min(static_cast<std::size_t>(tenths), kChanceBandCount - 1);
}

Reliability reliability(const PlayerHistory& history, const Resampling& resampling) {
  Reliability all;
  for (const PlayedShot& shot : history.shots) {
    if (!hasPrediction(shot)) continue;
    ChanceBand& band = all.bands[chanceBand(*shot.potChance)];
    ++all.shots;
    ++band.tried;
    if (shot.made) ++band.made;
    band.predicted += *shot.potChance;
  }
  for (ChanceBand& band : all.bands) {
    if (band.tried == 0) continue;
    band.predicted /= band.tried;
    band.wilson = wilsonInterval(band.made, band.tried);
  }
  if (all.shots == 0) return all;
  const auto mean = [&](auto&& valueOf) {
    return meanOf(bySession(observed(history,
                                     [&](const PlayedShot& shot, const PlayedTable&) -> std::optional<double> {
                                       if (!hasPrediction(shot)) return std::nullopt;
                                       return valueOf((shot.made ? 1.0 : 0.0) - *shot.potChance);
                                     })),
                  resampling);
  };
  all.gap = mean([](double off) { return off; });
  all.brier = mean([](double off) { return off * off; });
  return all;
}

}  // namespace ferrule
