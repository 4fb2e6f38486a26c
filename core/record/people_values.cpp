// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/people_values.h"

#include "core/base/word_list.h"

namespace ferrule {

namespace {

constexpr WordList<4> kScopes{"measuring", "film", "film-of-minor", "sharing"};
constexpr WordList<3> kEvents{"given", "withdrawn", "struck"};

}  // namespace

std::string_view toText(ConsentScope scope) {
  return wordOf(kScopes, scope);
}
std::optional<ConsentScope> consentScopeFromText(std::string_view text) {
  return valueOf<ConsentScope>(kScopes, text);
}

std::string_view toText(ConsentEvent event) {
  return wordOf(kEvents, event);
}
std::optional<ConsentEvent> consentEventFromText(std::string_view text) {
  return valueOf<ConsentEvent>(kEvents, text);
}

}  // namespace ferrule
