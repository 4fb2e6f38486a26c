// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/people.h"
#include "core/record/record_impl.h"

/// Rows about people. For this folder's .cpp files only; within the caller's transaction.
namespace ferrule {

[[nodiscard]] Result<void> insertConsent(Connection& connection, const ConsentEntry& entry);
/// The line that strikes an entry out, to be inserted. Never noted before what it strikes, whatever a clock says.
[[nodiscard]] ConsentEntry strikeOf(ConsentEntry entry, const std::string& who, UtcMilliseconds when);
/// condition: "WHERE ..." on consents; oldest first.
[[nodiscard]] Result<std::vector<ConsentEntry>> consentRows(Connection& connection, const QString& condition,
                                                            const std::vector<QVariant>& values);

/// Everything but counts. Nothing for an unknown player.
[[nodiscard]] Result<std::optional<Person>> personRow(Connection& connection, PlayerId player);
/// The person with all of it, under its old id and uid. Errors: AlreadyRecorded for a name or id that is taken.
[[nodiscard]] Result<void> insertPerson(Connection& connection, const Person& person);
[[nodiscard]] Result<void> replaceGroups(Connection& connection, PlayerId player,
                                         const std::vector<std::string>& groups);
/// Whether something under way knows the player.
[[nodiscard]] Result<bool> isInDraft(Connection& connection, const Player& player);

}  // namespace ferrule
