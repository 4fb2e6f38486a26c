// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/contract.h"

#include <cstdio>
#include <cstdlib>

namespace ferrule {

void contractBroken(const char* promise, const char* file, int line) {
  std::fprintf(stderr, "ferrule: broken contract: %s (%s:%d)\n", promise, file, line);
  std::abort();
}

}  // namespace ferrule
