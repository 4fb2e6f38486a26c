// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/connection.h"
#include "core/record/merge_record.h"

/// The steps of a merge: the other record is attached as "other", and temporary tables map_X(o, m) tell which row of
/// ours (m) a row of the other's (o) is. For this folder's .cpp files only; within the caller's transaction, in this
/// order.
namespace ferrule {

[[nodiscard]] Result<void> mergePeople(Connection& connection, MergeReport& report);
/// Tables, lenses, rigs, films.
[[nodiscard]] Result<void> mergeThings(Connection& connection);
/// Sessions and frames, with who sat there.
[[nodiscard]] Result<void> mergeFrames(Connection& connection, MergeReport& report);
/// Shots of new frames, and of known ones that the other record has more of; with all that hangs on shots.
[[nodiscard]] Result<void> mergeShots(Connection& connection, MergeReport& report);
/// Own drills, and runs with their tries.
[[nodiscard]] Result<void> mergeDrills(Connection& connection, MergeReport& report);

/// Runs statements one after another, up to the first that fails.
[[nodiscard]] Result<void> runAll(Connection& connection, std::initializer_list<QString> statements);
/// The columns of a table of ours without those of skip, with a comma between, prefix before each.
[[nodiscard]] Result<QString> columnsOf(Connection& connection, const QString& table, const QStringList& skip,
                                        const QString& prefix = {});
[[nodiscard]] Result<int> countOf(Connection& connection, const QString& select);

}  // namespace ferrule
