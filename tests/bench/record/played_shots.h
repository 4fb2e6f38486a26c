// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/record/record.h"

namespace ferrule::bench {

/// A shot as a film gives it: eight balls over four seconds at 60 images a second, two of them moving, every place with
/// the noise of finding it. The same number gives the same shot.
[[nodiscard]] std::vector<Track> playedTracks(int number);

/// What a bench cannot go on without: ends the program with the error's code and words.
template <class T>
T must(Result<T>&& result);
void must(Result<void>&& result);
[[noreturn]] void giveUp(const Error& error);

template <class T>
T must(Result<T>&& result) {
  if (!result) giveUp(result.error());
  return std::move(*result);
}

}  // namespace ferrule::bench
