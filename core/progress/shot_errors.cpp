// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/shot_errors.h"

#include "core/progress/difficulty.h"

namespace ferrule {

namespace {

std::optional<double> difference(const std::optional<double>& value, const std::optional<double>& meant) {
  if (!value || !meant) return std::nullopt;
  return *value - *meant;
}

}  // namespace

std::optional<double> aimError_rad(const PlayedShot& shot, const PlayedTable& table) {
  if (!shot.lineError_rad || !isPotAttempt(shot)) return std::nullopt;
  return -*shot.lineError_rad / reach(shot, table);
}

std::optional<double> thinError_rad(const PlayedShot& shot, const PlayedTable& table) {
  const auto aim = aimError_rad(shot, table);
  if (!aim || !shot.cutSide) return std::nullopt;
  // A ball that is sent to the left is cut thinner by a contact further to the right.
  return *shot.cutSide == CutSide::Left ? -*aim : *aim;
}

std::optional<double> speedError(const PlayedShot& shot) {
  if (!shot.speed_mps || !shot.meant.speed_mps || !(*shot.meant.speed_mps > 0.0)) return std::nullopt;
  return *shot.speed_mps / *shot.meant.speed_mps - 1.0;
}

std::optional<double> sideError(const PlayedShot& shot) {
  return difference(shot.side, shot.meant.side);
}

std::optional<double> heightError(const PlayedShot& shot) {
  return difference(shot.height, shot.meant.height);
}

std::optional<TableVector> positionError_m(const PlayedShot& shot) {
  if (!shot.rest || !shot.meant.rest) return std::nullopt;
  return *shot.rest - *shot.meant.rest;
}

}  // namespace ferrule
