// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/console/call.h"

#include "app/console/console.h"

namespace ferrule {

int call(std::vector<std::string> words) {
  words.insert(words.begin(), "ferrule");
  std::vector<char*> pointers;
  for (std::string& word : words)
    pointers.push_back(word.data());
  return runConsole(static_cast<int>(pointers.size()), pointers.data());
}

}  // namespace ferrule
