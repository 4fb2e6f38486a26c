// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/record_values.h"

/// What the record knows of people beside their play, as values.
namespace ferrule {

/// What somebody may consent to. Film of a minor is its own: a guardian's word for a child does not go on when the
/// child has grown up.
enum class ConsentScope { Measuring, Film, FilmOfMinor, Sharing };
inline constexpr std::array kConsentScopes{ConsentScope::Measuring, ConsentScope::Film, ConsentScope::FilmOfMinor,
                                           ConsentScope::Sharing};

/// Struck: noted by mistake; the entry that it names counts no more.
enum class ConsentEvent { Given, Withdrawn, Struck };

/// One line of a person's ledger of consents. Lines are added and never changed: withdrawal and renewal are lines too.
struct ConsentEntry {
  std::string uid;  ///< known by it in every record; empty for an entry to be added
  PlayerId player;
  ConsentEvent event = ConsentEvent::Given;
  ConsentScope scope = ConsentScope::Measuring;
  std::string struckUid;                 ///< Struck: of the entry that counts no more
  UtcMilliseconds from = 0;              ///< Given: holds from then on; Withdrawn: ends all that was given before
  std::optional<UtcMilliseconds> until;  ///< Given: from then on no longer; nothing: until it is withdrawn
  std::string by;                        ///< who gave or withdrew it
  bool byGuardian = false;               ///< a parent or guardian, not the person
  std::string notedBy;                   ///< who wrote it down
  UtcMilliseconds noted = 0;             ///< when

  bool operator==(const ConsentEntry&) const = default;
};

/// What can be edited of a person at one time. Names are unique in one record.
struct PersonDetails {
  Player player;
  std::vector<std::string> groups;  ///< sorted; a person may be in several

  bool operator==(const PersonDetails&) const = default;
};

/// A row of the list of people.
struct PersonRow {
  PersonDetails details;
  std::vector<ConsentEntry> consents;  ///< as they were noted, oldest first

  bool operator==(const PersonRow&) const = default;
};

/// All that is kept about a person, without the shots themselves.
struct Person {
  PersonDetails details;
  std::string uid;
  std::vector<ConsentEntry> consents;  ///< as they were noted, oldest first
  std::vector<Note> notes;             ///< about the person, oldest first
  std::vector<std::string> tags;
  std::vector<std::string> joinedUids;  ///< others by which the person is known
  int sessions = 0;                     ///< with a seat or a shot of the person
  int shots = 0;
  std::optional<UtcMilliseconds> lastPlayed;  ///< start of the last of these sessions

  bool operator==(const Person&) const = default;
};

/// "measuring", "film", "film-of-minor", "sharing".
[[nodiscard]] std::string_view toText(ConsentScope scope);
[[nodiscard]] std::optional<ConsentScope> consentScopeFromText(std::string_view text);
/// "given", "withdrawn", "struck".
[[nodiscard]] std::string_view toText(ConsentEvent event);
[[nodiscard]] std::optional<ConsentEvent> consentEventFromText(std::string_view text);

}  // namespace ferrule
