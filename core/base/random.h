// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>

namespace ferrule {

/// Seeded random numbers that are the same on every machine: the standard's engine with our own distributions,
/// since the standard leaves its distributions' algorithms open.
class Random {
 public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}

  /// Uniform in [0, 1).
  double uniform();
  /// Normal with mean 0 and standard deviation 1 (Box and Muller 1958).
  double normal();

 private:
  std::mt19937_64 engine_;
  double spare_ = 0.0;
  bool hasSpare_ = false;
};

}  // namespace ferrule
