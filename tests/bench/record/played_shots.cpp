// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/record/played_shots.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "core/base/random.h"

namespace ferrule::bench {

std::vector<Track> playedTracks(int number) {
  constexpr int kBalls = 8;
  constexpr int kImages = 240;
  constexpr double kNoise_m = 0.0001;
  Random random(static_cast<std::uint64_t>(number) + 1);
  std::vector<Track> tracks;
  for (int ball = 0; ball < kBalls; ++ball) {
    Track track{BallName(ball), {}};
    const TablePoint start{-0.9 + 1.8 * random.uniform(), -0.5 + random.uniform()};
    const double speed_mps = ball < 2 ? 0.5 * random.uniform() : 0.0;
    for (int i = 0; i < kImages; ++i) {
      const double time_s = i / 60.0;
      const double way_m = speed_mps * std::min(time_s, 2.0);
      track.samples.push_back({10.0 * number + time_s,
                               {start.x + way_m + kNoise_m * random.normal(), start.y + kNoise_m * random.normal()},
                               0.0003 + 0.00001 * random.normal(),
                               i % 40 != 7});
    }
    tracks.push_back(std::move(track));
  }
  return tracks;
}

void must(Result<void>&& result) {
  if (!result) giveUp(result.error());
}

void giveUp(const Error& error) {
  std::fprintf(stderr, "bench_record: code %d, %s: %s\n", static_cast<int>(error.code), error.subject.c_str(),
               error.detail.c_str());
  std::_Exit(1);
}

}  // namespace ferrule::bench
