// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/chain_text.h"

#include <nlohmann/json.hpp>

namespace ferrule {

std::string chainText(const CorrectionChain& chain) {
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  for (const Correction& correction : chain.corrections()) {
    all.push_back({{"kind", toText(correction.kind)},
                   {"source", correction.source},
                   {"purpose", correction.purpose},
                   {"date", correction.date}});
  }
  return all.dump();
}

}  // namespace ferrule
