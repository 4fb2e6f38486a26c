// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/consent.h"

#include <algorithm>
#include <ranges>
#include <set>

namespace ferrule {

namespace {

Consent judged(const ConsentEntry& given, bool minor, UtcMilliseconds at) {
  if (given.until && *given.until <= at) return Consent::Expired;
  if (minor && !given.byGuardian) return Consent::NotByGuardian;
  return Consent::Given;
}

/// Whether a holds longer than b.
bool holdsLonger(const ConsentEntry& a, const ConsentEntry& b) {
  if (!b.until) return false;
  return !a.until || *a.until > *b.until;
}

}  // namespace

std::vector<ConsentEntry> countingConsents(std::span<const ConsentEntry> ledger) {
  // A strike is noted after what it strikes, so its own fate is known before.
  std::set<std::string> struck;
  std::vector<ConsentEntry> counting;
  for (const ConsentEntry& entry : std::views::reverse(ledger)) {
    if (struck.contains(entry.uid)) continue;
    if (entry.event == ConsentEvent::Struck) {
      struck.insert(entry.struckUid);
    } else {
      counting.push_back(entry);
    }
  }
  std::ranges::reverse(counting);
  std::ranges::stable_sort(counting, {}, &ConsentEntry::from);
  return counting;
}

ConsentState consentState(std::span<const ConsentEntry> ledger, bool minor, ConsentScope scope, UtcMilliseconds at) {
  ConsentState state;
  for (ConsentEntry& entry : countingConsents(ledger)) {
    if (entry.scope != scope || entry.from > at) continue;
    if (entry.event == ConsentEvent::Withdrawn) {
      if (state.entry) state = {Consent::Withdrawn, std::move(entry)};
      continue;
    }
    const Consent consent = judged(entry, minor, at);
    const bool holds = consent == Consent::Given;
    const bool replaces = holds ? !state.holds() || holdsLonger(entry, *state.entry) : !state.holds();
    if (replaces) state = {consent, std::move(entry)};
  }
  return state;
}

}  // namespace ferrule
