// SPDX-License-Identifier: GPL-3.0-or-later
// Two people who turned out to be one, and back.
#include <algorithm>
#include <map>

#include "core/base/contract.h"
#include "core/record/record_people.h"

namespace ferrule {

namespace {

Result<std::vector<std::int64_t>> numbers(Connection& connection, const QString& sql,
                                          const std::vector<QVariant>& values) {
  const auto rows = connection.rows(sql, values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<std::int64_t> all;
  for (const Row& row : *rows)
    all.push_back(row[0].toLongLong());
  return all;
}

Result<void> forEach(Connection& connection, const QString& sql, const std::vector<std::int64_t>& ids,
                     PlayerId player) {
  for (const std::int64_t id : ids) {
    if (auto done = connection.run(sql, {bound(player.value), bound(id)}); !done) return done;
  }
  return {};
}

/// A session in which both sit; empty when there is none.
Result<std::string> sessionOfBoth(Connection& connection, PlayerId from, PlayerId to) {
  const auto row = connection.row(
      QStringLiteral("SELECT sessions.name FROM session_players a JOIN session_players b ON b.session_id = "
                     "a.session_id JOIN sessions ON sessions.id = a.session_id WHERE a.player_id = ? AND "
                     "b.player_id = ? ORDER BY sessions.started_ms, sessions.id LIMIT 1"),
      {bound(from.value), bound(to.value)});
  if (!row) return tl::make_unexpected(row.error());
  return *row ? textOf((**row)[0]) : std::string();
}

constexpr const char* kShots = "UPDATE shots SET player_id = ? WHERE id = ?";
constexpr const char* kCorrections = "UPDATE corrections SET entity_id = ? WHERE id = ?";
constexpr const char* kNotes = "UPDATE notes SET entity_id = ? WHERE id = ?";

constexpr const char* kNamed = "SELECT id FROM corrections WHERE field = 'player' AND %1 = ?";

/// Corrections are withdrawn by the names in them, so they follow.
Result<void> nameInCorrections(Connection& connection, const JoinedPeople& joined, PlayerId player) {
  constexpr const char* kName = "UPDATE corrections SET %1 = (SELECT name FROM players WHERE id = ?) WHERE id = ?";
  auto done =
      forEach(connection, QString::fromLatin1(kName).arg(QStringLiteral("measured")), joined.namesMeasured, player);
  if (!done) return done;
  return forEach(connection, QString::fromLatin1(kName).arg(QStringLiteral("corrected")), joined.namesCorrected,
                 player);
}

/// Hands over what is counted by its rows, and notes which.
Result<void> handOver(Connection& connection, JoinedPeople& joined) {
  const PlayerId from = joined.from.details.player.id;
  const std::vector<QVariant> id{bound(from.value)};
  auto shots = numbers(connection, QStringLiteral("SELECT id FROM shots WHERE player_id = ?"), id);
  if (!shots) return tl::make_unexpected(shots.error());
  joined.shots = std::move(*shots);
  auto sessions = numbers(connection, QStringLiteral("SELECT session_id FROM session_players WHERE player_id = ?"), id);
  if (!sessions) return tl::make_unexpected(sessions.error());
  joined.sessions = std::move(*sessions);
  auto corrections =
      numbers(connection, QStringLiteral("SELECT id FROM corrections WHERE entity = 'player' AND entity_id = ?"), id);
  if (!corrections) return tl::make_unexpected(corrections.error());
  joined.corrections = std::move(*corrections);
  auto runs = numbers(connection, QStringLiteral("SELECT id FROM drill_runs WHERE player_id = ?"), id);
  if (!runs) return tl::make_unexpected(runs.error());
  joined.drillRuns = std::move(*runs);
  for (const Note& note : joined.from.notes)
    joined.notes.push_back(note.id);
  const QVariant name = bound(std::string_view(joined.from.details.player.name));
  auto measured = numbers(connection, QString::fromLatin1(kNamed).arg(QStringLiteral("measured")), {name});
  if (!measured) return tl::make_unexpected(measured.error());
  joined.namesMeasured = std::move(*measured);
  auto corrected = numbers(connection, QString::fromLatin1(kNamed).arg(QStringLiteral("corrected")), {name});
  if (!corrected) return tl::make_unexpected(corrected.error());
  joined.namesCorrected = std::move(*corrected);
  if (auto done = nameInCorrections(connection, joined, joined.to); !done) return done;
  for (const char* statement : {"UPDATE shots SET player_id = ? WHERE player_id = ?",
                                "UPDATE session_players SET player_id = ? WHERE player_id = ?",
                                "UPDATE corrections SET entity_id = ? WHERE entity = 'player' AND entity_id = ?",
                                "UPDATE notes SET entity_id = ? WHERE entity = 'player' AND entity_id = ?",
                                "UPDATE joined_players SET player_id = ? WHERE player_id = ?",
                                "UPDATE drill_runs SET player_id = ? WHERE player_id = ?"}) {
    if (auto done = connection.run(QString::fromLatin1(statement), {bound(joined.to.value), bound(from.value)});
        !done) {
      return done;
    }
  }
  return {};
}

/// What both may have once only: groups and tags.
Result<void> share(Connection& connection, JoinedPeople& joined, const Person& to) {
  for (const std::string& group : joined.from.details.groups) {
    if (std::ranges::find(to.details.groups, group) == to.details.groups.end()) joined.addedGroups.push_back(group);
  }
  for (const std::string& tag : joined.from.tags) {
    if (std::ranges::find(to.tags, tag) == to.tags.end()) joined.addedTags.push_back(tag);
  }
  for (const std::string& group : joined.addedGroups) {
    if (auto done = connection.run(QStringLiteral("INSERT INTO player_groups(player_id, name) VALUES(?, ?)"),
                                   {bound(joined.to.value), bound(std::string_view(group))});
        !done) {
      return done;
    }
  }
  for (const std::string& tag : joined.addedTags) {
    if (auto done = connection.run(QStringLiteral("INSERT INTO tags(entity, entity_id, tag) VALUES('player', ?, ?)"),
                                   {bound(joined.to.value), bound(std::string_view(tag))});
        !done) {
      return done;
    }
  }
  return {};
}

/// The ledger as copies with uids of their own, so that parting can strike them out.
Result<void> copyConsents(Connection& connection, JoinedPeople& joined) {
  std::map<std::string, std::string> copies;
  for (ConsentEntry entry : joined.from.consents) {
    const std::string uid = freshUid();
    copies[entry.uid] = uid;
    entry.uid = uid;
    entry.player = joined.to;
    if (entry.event == ConsentEvent::Struck && copies.contains(entry.struckUid))
      entry.struckUid = copies[entry.struckUid];
    if (auto done = insertConsent(connection, entry); !done) return done;
    joined.copiedConsents.push_back(uid);
  }
  return {};
}

Result<Person> knownPerson(RecordInside::Impl& inside, PlayerId player) {
  auto found = personRow(inside.connection, player);
  if (!found) return tl::make_unexpected(found.error());
  if (!*found) return inside.notFound("player", player.value);
  return std::move(**found);
}

}  // namespace

Result<JoinReport> joinPeople(Record& record, PlayerId from, PlayerId to) {
  FERRULE_REQUIRE(from != to);
  RecordInside::Impl& inside = RecordInside::of(record);
  Connection& connection = inside.connection;
  return connection.transaction([&]() -> Result<JoinReport> {
    auto first = knownPerson(inside, from);
    if (!first) return tl::make_unexpected(first.error());
    const auto second = knownPerson(inside, to);
    if (!second) return tl::make_unexpected(second.error());
    JoinReport report;
    auto session = sessionOfBoth(connection, from, to);
    if (!session) return tl::make_unexpected(session.error());
    if (!session->empty()) {
      report.ending = JoinReport::Ending::PlayedTogether;
      report.session = std::move(*session);
      return report;
    }
    const auto underWay = isInDraft(connection, first->details.player);
    if (!underWay) return tl::make_unexpected(underWay.error());
    if (*underWay) {
      report.ending = JoinReport::Ending::UnderWay;
      return report;
    }
    report.joined.from = std::move(*first);
    report.joined.to = to;
    if (auto done = handOver(connection, report.joined); !done) return tl::make_unexpected(done.error());
    if (auto done = share(connection, report.joined, *second); !done) return tl::make_unexpected(done.error());
    if (auto done = copyConsents(connection, report.joined); !done) return tl::make_unexpected(done.error());
    if (auto done = connection.run(QStringLiteral("DELETE FROM players WHERE id = ?"), {bound(from.value)}); !done) {
      return tl::make_unexpected(done.error());
    }
    auto done = connection.run(QStringLiteral("INSERT INTO joined_players(uid, player_id) VALUES(?, ?)"),
                               {bound(std::string_view(report.joined.from.uid)), bound(to.value)});
    if (!done) return tl::make_unexpected(done.error());
    return report;
  });
}

Result<void> partPeople(Record& record, const JoinedPeople& joined, const std::string& who, UtcMilliseconds when) {
  Connection& connection = RecordInside::of(record).connection;
  return connection.transaction([&]() -> Result<void> {
    const PlayerId from = joined.from.details.player.id;
    std::vector<std::string> uids = joined.from.joinedUids;
    uids.push_back(joined.from.uid);
    for (const std::string& uid : uids) {
      auto done =
          connection.run(QStringLiteral("DELETE FROM joined_players WHERE uid = ?"), {bound(std::string_view(uid))});
      if (!done) return done;
    }
    // Notes and tags are handed back as they are now, so none is put in twice.
    Person bare = joined.from;
    bare.notes.clear();
    if (auto done = insertPerson(connection, bare); !done) return done;
    if (auto done = forEach(connection, QString::fromLatin1(kShots), joined.shots, from); !done) return done;
    if (auto done = nameInCorrections(connection, joined, from); !done) return done;
    auto runs =
        forEach(connection, QStringLiteral("UPDATE drill_runs SET player_id = ? WHERE id = ?"), joined.drillRuns, from);
    if (!runs) return runs;
    for (const std::int64_t session : joined.sessions) {
      auto done = connection.run(
          QStringLiteral("UPDATE session_players SET player_id = ? WHERE session_id = ? AND player_id = ?"),
          {bound(from.value), bound(session), bound(joined.to.value)});
      if (!done) return done;
    }
    if (auto done = forEach(connection, QString::fromLatin1(kCorrections), joined.corrections, from); !done)
      return done;
    std::vector<std::int64_t> notes;
    for (const NoteId note : joined.notes)
      notes.push_back(note.value);
    if (auto done = forEach(connection, QString::fromLatin1(kNotes), notes, from); !done) return done;
    for (const std::string& group : joined.addedGroups) {
      auto done = connection.run(QStringLiteral("DELETE FROM player_groups WHERE player_id = ? AND name = ?"),
                                 {bound(joined.to.value), bound(std::string_view(group))});
      if (!done) return done;
    }
    for (const std::string& tag : joined.addedTags) {
      auto done =
          connection.run(QStringLiteral("DELETE FROM tags WHERE entity = 'player' AND entity_id = ? AND tag = ?"),
                         {bound(joined.to.value), bound(std::string_view(tag))});
      if (!done) return done;
    }
    for (const std::string& uid : joined.copiedConsents) {
      auto copies = consentRows(connection, QStringLiteral("WHERE uid = ?"), {bound(std::string_view(uid))});
      if (!copies) return tl::make_unexpected(copies.error());
      for (ConsentEntry& copy : *copies) {
        if (copy.event == ConsentEvent::Struck) continue;  // about a copy that is struck out itself
        if (auto done = insertConsent(connection, strikeOf(copy, who, when)); !done) return done;
      }
    }
    return {};
  });
}

}  // namespace ferrule
