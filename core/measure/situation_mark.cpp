// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/situation_mark.h"

#include <array>
#include <cstdio>
#include <string_view>

#include "core/table/reading_text.h"

namespace ferrule {

namespace {

std::uint64_t added(std::uint64_t sum, std::string_view text) {
  for (const char letter : text) {
    sum ^= static_cast<unsigned char>(letter);
    sum *= 0x100000001b3u;
  }
  return sum;
}

/// The reading as if the shot began with the film.
ShotReading fromTheStrike(ShotReading reading) {
  for (ShotEvent& event : reading.events)
    event.time_s -= reading.strike_s;
  reading.rest_s -= reading.strike_s;
  reading.strike_s = 0.0;
  return reading;
}

}  // namespace

std::string SituationMark::of(const StoredShot& shot) {
  rulings_ = added(rulings_, shot.ruling ? shot.ruling->content : std::string("none"));
  const std::uint64_t sum = added(rulings_, readingText(fromTheStrike(shot.reading)));
  std::array<char, 17> digits{};
  std::snprintf(digits.data(), digits.size(), "%016llx", static_cast<unsigned long long>(sum));
  return digits.data();
}

}  // namespace ferrule
