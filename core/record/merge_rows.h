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

/// Steps of mergeShots(). Makes the tables of frames (m) "updated": known, and the other record has more of them while
/// ours has nothing of its own; "theirs" and "ours": that have more there and here, in both where they went apart; and
/// "parted": where shots were split or joined in one of the two records alone, so that the numbers of shots do not say
/// which shot is which.
[[nodiscard]] Result<void> compareFrames(Connection& connection);
/// Parted frames that the other record has more of take its shots whole: takes ours away. From then on "parted" holds
/// these alone.
[[nodiscard]] Result<void> clearParted(Connection& connection);
/// Gives the notes and tags that were taken away so to the shots that begin with the same strike.
[[nodiscard]] Result<void> giveBackRemarks(Connection& connection);
/// Finds shots that both records put aside: each is known by the correction that did it, on a shot that is known.
[[nodiscard]] Result<void> mapPutAside(Connection& connection);
/// Names shots in boundaries that came as these shots are called here.
[[nodiscard]] Result<void> renameBoundaries(Connection& connection);

/// Own drills, and runs with their tries.
[[nodiscard]] Result<void> mergeDrills(Connection& connection, MergeReport& report);

/// SQL: a value of a correction c of the other's, where it names a player by the name that the player has here.
[[nodiscard]] QString namedHere(const QString& value);
/// Runs statements one after another, up to the first that fails.
[[nodiscard]] Result<void> runAll(Connection& connection, std::initializer_list<QString> statements);
/// The columns of a table of ours without those of skip, with a comma between, prefix before each.
[[nodiscard]] Result<QString> columnsOf(Connection& connection, const QString& table, const QStringList& skip,
                                        const QString& prefix = {});
[[nodiscard]] Result<int> countOf(Connection& connection, const QString& select);

}  // namespace ferrule
