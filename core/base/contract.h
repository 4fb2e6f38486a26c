// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {

/// Ends the program with the broken promise and its place. For our own bugs only, never for bad input.
[[noreturn]] void contractBroken(const char* promise, const char* file, int line);

}  // namespace ferrule

/// A promise between two pieces of this program; checked in every build.
#define FERRULE_REQUIRE(promise) \
  ((promise) ? static_cast<void>(0) : ::ferrule::contractBroken(#promise, __FILE__, __LINE__))
