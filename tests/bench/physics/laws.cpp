// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/physics/laws.h"

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <map>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

#include "tests/physics/random_shots.h"

namespace ferrule::bench {

namespace {

constexpr long kBatch = 500;

struct Broken {
  long count = 0;
  std::string example;
};

/// "energy rises at 1.2 s by ..." -> "energy rises".
std::string lawOf(const std::string& complaint) {
  return complaint.substr(0, complaint.find(" at "));
}

}  // namespace

long printLaws(long shots) {
  const auto table = Simulator::create(Table{}, PhysicsParameters{});
  std::map<std::string, Broken> broken;
  std::mutex mutex;
  std::atomic<long> next{0};
  const auto work = [&] {
    // Each batch has its own seed, so the shots are the same on any number of cores.
    for (long batch = next++; batch * kBatch < shots; batch = next++) {
      Random random(static_cast<std::uint64_t>(batch) + 1);
      const long count = std::min(kBatch, shots - batch * kBatch);
      for (long i = 0; i < count; ++i) {
        const std::string complaint = testing::lawBrokenBy(*table, testing::randomShot(*table, random));
        if (complaint.empty()) continue;
        const std::scoped_lock lock(mutex);
        Broken& law = broken[lawOf(complaint)];
        if (law.count++ == 0) {
          law.example = "batch " + std::to_string(batch) + ", shot " + std::to_string(i) + ": " + complaint;
        }
      }
    }
  };
  std::vector<std::jthread> workers;
  for (unsigned i = 0; i < std::max(1U, std::thread::hardware_concurrency()); ++i)
    workers.emplace_back(work);
  workers.clear();

  std::printf(
      "\nLaws over %ld random shots of 1 to 16 balls: energy never rises, no overlap above 1 um, no ball beyond a\n"
      "cushion, every shot ends, a second run gives the same bits, mirrored and turned input mirrored and turned\n"
      "output.\n",
      shots);
  long total = 0;
  for (const auto& [law, found] : broken) {
    total += found.count;
    std::printf("  broken %ld times: %s (%s)\n", found.count, law.c_str(), found.example.c_str());
  }
  std::printf("  shots that broke a law: %ld\n", total);
  return total;
}

}  // namespace ferrule::bench
