// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/pocket.h"

#include "core/base/word_list.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr WordList<6> kTexts{"head-left", "head-right", "side-left", "side-right", "foot-left", "foot-right"};

}  // namespace

std::string_view toText(PocketName pocket) {
  return wordOf(kTexts, pocket);
}

std::optional<PocketName> pocketFromText(std::string_view text) {
  return valueOf<PocketName>(kTexts, text);
}

bool isSidePocket(PocketName pocket) {
  return pocket == PocketName::SideLeft || pocket == PocketName::SideRight;
}

PocketShape cornerPocketShape() {
  return {metresFromMillimetres(115.9), radiansFromDegrees(142.0), metresFromMillimetres(41.3),
          metresFromMillimetres(62.0)};
}

PocketShape sidePocketShape() {
  return {metresFromMillimetres(128.6), radiansFromDegrees(104.0), metresFromMillimetres(4.8),
          metresFromMillimetres(62.0)};
}

}  // namespace ferrule
