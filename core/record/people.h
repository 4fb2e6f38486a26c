// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/people_values.h"
#include "core/record/record.h"

namespace ferrule {

/// Everybody of the record by name. Errors: those of Record.
[[nodiscard]] Result<std::vector<PersonRow>> people(Record& record);
/// Errors: NotFound, those of Record.
[[nodiscard]] Result<Person> person(Record& record, PlayerId player);

/// details.player.id is ignored; groups are sorted and kept once. Errors: AlreadyRecorded (subject: the name) for a
/// name that is taken, those of Record.
[[nodiscard]] Result<PlayerId> addPerson(Record& record, const PersonDetails& details);
/// Shots, sessions, consents and notes stay as they are, whatever the new name. Errors: as addPerson, NotFound.
[[nodiscard]] Result<void> updatePerson(Record& record, const PersonDetails& details);

/// For the undo of adding somebody: takes a person away who has not played, and returns what was kept of them so that
/// restorePerson brings it back. Nothing, and nothing is taken away, when a shot, a session or a draft knows the
/// person. Errors: NotFound, those of Record.
[[nodiscard]] Result<std::optional<Person>> removeUnplayed(Record& record, PlayerId player);
/// With the same id and uid. Errors: AlreadyRecorded (subject: the name) when name or id were taken meanwhile, those of
/// Record.
[[nodiscard]] Result<void> restorePerson(Record& record, const Person& person);

/// A note about a person. Errors: NotFound, those of Record.
[[nodiscard]] Result<NoteId> addPlayerNote(Record& record, PlayerId player, const std::string& text,
                                           const std::string& who, UtcMilliseconds when);
/// The note as it was. Author and date come back when it is added again. Errors: NotFound, those of Record.
[[nodiscard]] Result<Note> removePlayerNote(Record& record, PlayerId player, NoteId note);

/// The first of "Guest 1", "Guest 2", ... that nobody has. word: in the user's language. Errors: those of Record.
[[nodiscard]] Result<std::string> freeGuestName(Record& record, const std::string& word);

/// How two people became one, enough to part them again.
struct JoinedPeople {
  Person from;  ///< who is gone
  PlayerId to;
  std::vector<std::int64_t> shots;  ///< rows that changed hands
  std::vector<std::int64_t> drillRuns;
  std::vector<std::int64_t> sessions;        ///< where the seat changed hands
  std::vector<NoteId> notes;                 ///< about the person
  std::vector<std::string> addedGroups;      ///< that to was not in before
  std::vector<std::string> addedTags;        ///< that to did not have before
  std::vector<std::int64_t> corrections;     ///< of the person's own values
  std::vector<std::int64_t> namesMeasured;   ///< corrections of shots that named the person before them
  std::vector<std::int64_t> namesCorrected;  ///< and after them
  std::vector<std::string> copiedConsents;   ///< uids of the copies in to's ledger
};

struct JoinReport {
  enum class Ending {
    Joined,
    PlayedTogether,  ///< both sat in one session, so they are two
    UnderWay,        ///< a session that is not ended knows the first
  };
  Ending ending = Ending::Joined;
  std::string session;  ///< PlayedTogether: its name
  JoinedPeople joined;  ///< Joined
};

/// Gives everything of one person to another and ends the first: a guest who turned out to be a player, or one person
/// who was put in twice. Consents come along as copies, and the first's uid stays known, so that a merge does not bring
/// the person back. Errors: NotFound, those of Record.
[[nodiscard]] Result<JoinReport> joinPeople(Record& record, PlayerId from, PlayerId to);
/// The undo. Copies of consents are struck out. Errors: AlreadyRecorded as restorePerson, those of Record.
[[nodiscard]] Result<void> partPeople(Record& record, const JoinedPeople& joined, const std::string& who,
                                      UtcMilliseconds when);

}  // namespace ferrule
