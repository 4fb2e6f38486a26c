// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/correction_chain.h"

#include <algorithm>
#include <array>
#include <utility>

namespace ferrule {

namespace {

constexpr std::array<std::pair<CorrectionKind, std::string_view>, 4> kWords{{
    {CorrectionKind::Rotation, "rotation"},
    {CorrectionKind::ImageScale, "image-scale"},
    {CorrectionKind::Lens, "lens"},
    {CorrectionKind::Pose, "pose"},
}};

}  // namespace

Result<void> CorrectionChain::add(Correction correction) {
  const auto place = std::ranges::lower_bound(corrections_, correction.kind, {}, &Correction::kind);
  if (place != corrections_.end() && place->kind == correction.kind) {
    return failure(ErrorCode::CorrectionTwice, correction.source, std::string(toText(correction.kind)));
  }
  corrections_.insert(place, std::move(correction));
  return {};
}

std::string_view toText(CorrectionKind kind) {
  for (const auto& [known, word] : kWords) {
    if (known == kind) return word;
  }
  return {};
}

std::optional<CorrectionKind> correctionKindFromText(std::string_view text) {
  for (const auto& [kind, word] : kWords) {
    if (word == text) return kind;
  }
  return std::nullopt;
}

}  // namespace ferrule
