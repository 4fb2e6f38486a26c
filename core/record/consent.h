// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/base/error.h"
#include "core/record/people_values.h"

namespace ferrule {

class Record;

/// How a person's consent to one thing stands on a date. All but Given mean: not without asking.
enum class Consent {
  Given,
  Missing,        ///< never given, or not yet in force
  NotByGuardian,  ///< given, but by a minor
  Expired,
  Withdrawn,
};

struct ConsentState {
  Consent consent = Consent::Missing;
  std::optional<ConsentEntry> entry;  ///< the one that decides; nothing when missing

  [[nodiscard]] bool holds() const { return consent == Consent::Given; }
  bool operator==(const ConsentState&) const = default;
};

/// What a film of a person needs consent to.
[[nodiscard]] inline ConsentScope filmScopeOf(const Player& player) {
  return player.minor ? ConsentScope::FilmOfMinor : ConsentScope::Film;
}

/// The entries of a ledger (as consents gives it) that count: neither struck out nor a strike, in the order in which
/// they take effect.
[[nodiscard]] std::vector<ConsentEntry> countingConsents(std::span<const ConsentEntry> ledger);

/// How consent to a scope stands at a moment by a person's ledger. A withdrawal ends what was given up to it; what is
/// given after it counts again. For a minor only a guardian's word holds, whatever the scope. Of several that hold the
/// one that holds longest decides, of several that do not the latest.
[[nodiscard]] ConsentState consentState(std::span<const ConsentEntry> ledger, bool minor, ConsentScope scope,
                                        UtcMilliseconds at);

/// Why a person must not be filmed, or only measured: for whoever starts a film.
struct FilmObstacle {
  Player player;
  ConsentState state;

  bool operator==(const FilmObstacle&) const = default;
};

/// Who of these people has not consented to being filmed at that moment, in their order; empty: film. Guests count like
/// everybody. Ask before the camera runs; without consent the shots may be measured only if consent to measuring is
/// there, and no film is kept. Errors: NotFound (a player), those of Record.
[[nodiscard]] Result<std::vector<FilmObstacle>> filmObstacles(Record& record, std::span<const PlayerId> players,
                                                              UtcMilliseconds at);
/// The same for another scope.
[[nodiscard]] Result<ConsentState> consentOf(Record& record, PlayerId player, ConsentScope scope, UtcMilliseconds at);

/// Adds a line to a person's ledger and returns its uid; entry's own is ignored. entry.event: Given or Withdrawn.
/// Errors: NotFound (the player), FieldInvalid (detail "until") for an end before the beginning, those of Record.
[[nodiscard]] Result<std::string> addConsent(Record& record, const ConsentEntry& entry);
/// A line was noted by mistake: a further line says so, and the first counts no more. A strike may be struck out in its
/// turn. The new line's uid. Errors: NotFound, those of Record.
[[nodiscard]] Result<std::string> strikeConsent(Record& record, const std::string& uid, const std::string& who,
                                                UtcMilliseconds when);
/// A person's ledger as it was noted, oldest first. Errors: those of Record.
[[nodiscard]] Result<std::vector<ConsentEntry>> consents(Record& record, PlayerId player);

}  // namespace ferrule
