// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/made_rig.h"

#include <utility>

#include "core/camera/rig_file.h"

namespace ferrule {

MadeRig withMap(Rig rig, MeasuredTable measured) {
  auto map = std::make_shared<const ErrorMap>(rig, measured);
  return {std::move(rig), std::move(measured), std::move(map)};
}

Result<MadeRig> readMadeRig(const std::string& rigPath, const std::string& tablePath) {
  auto rig = readRigFile(rigPath);
  if (!rig) return tl::make_unexpected(rig.error());
  auto measured = readMeasuredTable(tablePath);
  if (!measured) return tl::make_unexpected(measured.error());
  return withMap(std::move(*rig), std::move(*measured));
}

Rig withSource(const Rig& rig, const std::string& before, const std::string& after) {
  Rig result = rig;
  result.chain = {};
  for (Correction correction : rig.chain.corrections()) {
    if (correction.source == before) correction.source = after;
    // The same kinds once each, as they were.
    if (const auto added = result.chain.add(std::move(correction)); !added) return rig;
  }
  return result;
}

}  // namespace ferrule
