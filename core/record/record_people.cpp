// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record_people.h"

#include <algorithm>
#include <map>

#include "core/record/draft_players.h"

namespace ferrule {

namespace {

std::vector<std::string> sortedOnce(std::vector<std::string> groups) {
  std::ranges::sort(groups);
  groups.erase(std::unique(groups.begin(), groups.end()), groups.end());
  return groups;
}

Result<bool> isThere(Connection& connection, const QString& sql, const std::vector<QVariant>& values) {
  const auto row = connection.row(sql, values);
  if (!row) return tl::make_unexpected(row.error());
  return row->has_value();
}

Result<std::vector<std::string>> texts(Connection& connection, const QString& sql,
                                       const std::vector<QVariant>& values) {
  const auto rows = connection.rows(sql, values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<std::string> all;
  for (const Row& row : *rows)
    all.push_back(textOf(row[0]));
  return all;
}

Result<void> requireFree(Connection& connection, const Player& player) {
  const auto taken = isThere(connection, QStringLiteral("SELECT 1 FROM players WHERE name = ? AND id <> ?"),
                             {bound(std::string_view(player.name)), bound(player.id.value)});
  if (!taken) return tl::make_unexpected(taken.error());
  if (*taken) return failure(ErrorCode::AlreadyRecorded, player.name);
  return {};
}

}  // namespace

Result<void> replaceGroups(Connection& connection, PlayerId player, const std::vector<std::string>& groups) {
  auto done = connection.run(QStringLiteral("DELETE FROM player_groups WHERE player_id = ?"), {bound(player.value)});
  for (const std::string& group : sortedOnce(groups)) {
    if (!done) return done;
    done = connection.run(QStringLiteral("INSERT INTO player_groups(player_id, name) VALUES(?, ?)"),
                          {bound(player.value), bound(std::string_view(group))});
  }
  return done;
}

Result<std::optional<Person>> personRow(Connection& connection, PlayerId player) {
  const std::vector<QVariant> id{bound(player.value)};
  const auto row =
      connection.row(QStringLiteral("SELECT name, handedness, minor, guest, uid FROM players WHERE id = ?"), id);
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<Person>();
  Person person;
  Player& known = person.details.player;
  known = {player, textOf((**row)[0]), handednessFromText(textOf((**row)[1])).value_or(Handedness::Unknown),
           (**row)[2].toBool(), (**row)[3].toBool()};
  person.uid = textOf((**row)[4]);
  auto groups =
      texts(connection, QStringLiteral("SELECT name FROM player_groups WHERE player_id = ? ORDER BY name"), id);
  if (!groups) return tl::make_unexpected(groups.error());
  person.details.groups = std::move(*groups);
  auto ledger = consentRows(connection, QStringLiteral("WHERE player_id = ?"), id);
  if (!ledger) return tl::make_unexpected(ledger.error());
  person.consents = std::move(*ledger);
  const auto notes = connection.rows(QStringLiteral("SELECT id, note, who, when_ms FROM notes "
                                                    "WHERE entity = 'player' AND entity_id = ? ORDER BY id"),
                                     id);
  if (!notes) return tl::make_unexpected(notes.error());
  for (const Row& note : *notes) {
    person.notes.push_back({NoteId{note[0].toLongLong()}, textOf(note[1]), textOf(note[2]), note[3].toLongLong()});
  }
  auto tags = texts(connection,
                    QStringLiteral("SELECT tag FROM tags WHERE entity = 'player' AND entity_id = ? ORDER BY tag"), id);
  if (!tags) return tl::make_unexpected(tags.error());
  person.tags = std::move(*tags);
  auto joined =
      texts(connection, QStringLiteral("SELECT uid FROM joined_players WHERE player_id = ? ORDER BY uid"), id);
  if (!joined) return tl::make_unexpected(joined.error());
  person.joinedUids = std::move(*joined);
  return person;
}

Result<void> insertPerson(Connection& connection, const Person& person) {
  const Player& player = person.details.player;
  if (auto free = requireFree(connection, player); !free) return free;
  const auto taken =
      isThere(connection, QStringLiteral("SELECT 1 FROM players WHERE id = ?"), {bound(player.id.value)});
  if (!taken) return tl::make_unexpected(taken.error());
  if (*taken) return failure(ErrorCode::AlreadyRecorded, player.name);
  const std::int64_t id = player.id.value;
  if (auto done = connection.run(
          QStringLiteral("INSERT INTO players(id, uid, name, handedness, minor, guest) VALUES(?, ?, ?, ?, ?, ?)"),
          {bound(id), bound(std::string_view(person.uid)), bound(std::string_view(player.name)),
           bound(toText(player.handedness)), bound(player.minor), bound(player.guest)});
      !done) {
    return done;
  }
  if (auto done = replaceGroups(connection, player.id, person.details.groups); !done) return done;
  for (const ConsentEntry& entry : person.consents) {
    if (auto done = insertConsent(connection, entry); !done) return done;
  }
  for (const Note& note : person.notes) {
    if (auto done = connection.run(
            QStringLiteral("INSERT INTO notes(entity, entity_id, note, who, when_ms) VALUES('player', ?, ?, ?, ?)"),
            {bound(id), bound(std::string_view(note.text)), bound(std::string_view(note.who)), bound(note.when)});
        !done) {
      return done;
    }
  }
  for (const std::string& tag : person.tags) {
    if (auto done = connection.run(QStringLiteral("INSERT INTO tags(entity, entity_id, tag) VALUES('player', ?, ?)"),
                                   {bound(id), bound(std::string_view(tag))});
        !done) {
      return done;
    }
  }
  for (const std::string& uid : person.joinedUids) {
    if (auto done = connection.run(QStringLiteral("INSERT INTO joined_players(uid, player_id) VALUES(?, ?)"),
                                   {bound(std::string_view(uid)), bound(id)});
        !done) {
      return done;
    }
  }
  return {};
}

Result<std::vector<PersonRow>> people(Record& record) {
  const auto players = record.players();
  if (!players) return tl::make_unexpected(players.error());
  Connection& connection = RecordInside::of(record).connection;
  const auto groups =
      connection.rows(QStringLiteral("SELECT player_id, name FROM player_groups ORDER BY player_id, name"));
  if (!groups) return tl::make_unexpected(groups.error());
  const auto ledger = consentRows(connection, QString(), {});
  if (!ledger) return tl::make_unexpected(ledger.error());
  std::vector<PersonRow> rows;
  std::map<PlayerId, std::size_t> at;
  for (const Player& player : *players) {
    at[player.id] = rows.size();
    rows.push_back({{player, {}}, {}});
  }
  for (const Row& group : *groups)
    rows[at.at(PlayerId{group[0].toLongLong()})].details.groups.push_back(textOf(group[1]));
  for (const ConsentEntry& entry : *ledger)
    rows[at.at(entry.player)].consents.push_back(entry);
  return rows;
}

Result<Person> person(Record& record, PlayerId player) {
  RecordInside::Impl& inside = RecordInside::of(record);
  auto found = personRow(inside.connection, player);
  if (!found) return tl::make_unexpected(found.error());
  if (!*found) return inside.notFound("player", player.value);
  const auto counts = inside.connection.row(
      QStringLiteral("SELECT count(*), max(nullif(started_ms, 0)), (SELECT count(*) FROM shots WHERE player_id = ? AND "
                     "number > 0) "
                     "FROM sessions WHERE id IN (SELECT session_id FROM session_players WHERE player_id = ? "
                     "UNION SELECT frames.session_id FROM shots JOIN frames ON frames.id = shots.frame_id "
                     "WHERE shots.player_id = ?)"),
      {bound(player.value), bound(player.value), bound(player.value)});
  if (!counts) return tl::make_unexpected(counts.error());
  Person person = std::move(**found);
  person.sessions = (**counts)[0].toInt();
  person.lastPlayed = optionalIntegerOf((**counts)[1]);
  person.shots = (**counts)[2].toInt();
  return person;
}

Result<PlayerId> addPerson(Record& record, const PersonDetails& details) {
  Connection& connection = RecordInside::of(record).connection;
  return connection.transaction([&]() -> Result<PlayerId> {
    Player player = details.player;
    player.id = {};
    if (auto free = requireFree(connection, player); !free) return tl::make_unexpected(free.error());
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO players(uid, name, handedness, minor, guest) VALUES(?, ?, ?, ?, ?)"),
        {bound(std::string_view(freshUid())), bound(std::string_view(player.name)), bound(toText(player.handedness)),
         bound(player.minor), bound(player.guest)});
    if (!id) return tl::make_unexpected(id.error());
    if (auto done = replaceGroups(connection, PlayerId{*id}, details.groups); !done) {
      return tl::make_unexpected(done.error());
    }
    return PlayerId{*id};
  });
}

Result<void> updatePerson(Record& record, const PersonDetails& details) {
  RecordInside::Impl& inside = RecordInside::of(record);
  return inside.connection.transaction([&]() -> Result<void> {
    const Player& player = details.player;
    if (auto free = requireFree(inside.connection, player); !free) return free;
    const auto updated = updatePlayerRow(inside.connection, player);
    if (!updated) return tl::make_unexpected(updated.error());
    if (!*updated) return inside.notFound("player", player.id.value);
    return replaceGroups(inside.connection, player.id, details.groups);
  });
}

Result<bool> isInDraft(Connection& connection, const Player& player) {
  const auto drafts = texts(connection, QStringLiteral("SELECT content FROM drafts"), {});
  if (!drafts) return tl::make_unexpected(drafts.error());
  return std::ranges::any_of(*drafts,
                             [&](const std::string& draft) { return draftKnows(draft, player.id, player.name); });
}

Result<std::optional<Person>> removeUnplayed(Record& record, PlayerId player) {
  RecordInside::Impl& inside = RecordInside::of(record);
  Connection& connection = inside.connection;
  return connection.transaction([&]() -> Result<std::optional<Person>> {
    auto found = personRow(connection, player);
    if (!found) return found;
    if (!*found) return inside.notFound("player", player.value);
    const auto played = isThere(connection,
                                QStringLiteral("SELECT 1 FROM shots WHERE player_id = ? "
                                               "UNION ALL SELECT 1 FROM session_players WHERE player_id = ? "
                                               "UNION ALL SELECT 1 FROM drill_runs WHERE player_id = ? LIMIT 1"),
                                {bound(player.value), bound(player.value), bound(player.value)});
    if (!played) return tl::make_unexpected(played.error());
    const auto underWay = isInDraft(connection, (*found)->details.player);
    if (!underWay) return tl::make_unexpected(underWay.error());
    if (*played || *underWay) return std::optional<Person>();
    if (auto done = connection.run(QStringLiteral("DELETE FROM players WHERE id = ?"), {bound(player.value)}); !done) {
      return tl::make_unexpected(done.error());
    }
    return found;
  });
}

Result<void> restorePerson(Record& record, const Person& person) {
  Connection& connection = RecordInside::of(record).connection;
  return connection.transaction([&] { return insertPerson(connection, person); });
}

Result<NoteId> addPlayerNote(Record& record, PlayerId player, const std::string& text, const std::string& who,
                             UtcMilliseconds when) {
  RecordInside::Impl& inside = RecordInside::of(record);
  return inside.connection.transaction([&]() -> Result<NoteId> {
    const auto id = inside.connection.insert(
        QStringLiteral("INSERT INTO notes(entity, entity_id, note, who, when_ms) "
                       "SELECT 'player', id, ?, ?, ? FROM players WHERE id = ?"),
        {bound(std::string_view(text)), bound(std::string_view(who)), bound(when), bound(player.value)});
    if (!id) return tl::make_unexpected(id.error());
    if (inside.connection.changedRows() == 0) return inside.notFound("player", player.value);
    return NoteId{*id};
  });
}

Result<Note> removePlayerNote(Record& record, PlayerId player, NoteId note) {
  RecordInside::Impl& inside = RecordInside::of(record);
  return inside.connection.transaction([&]() -> Result<Note> {
    const auto row = inside.connection.row(
        QStringLiteral("SELECT note, who, when_ms FROM notes WHERE id = ? AND entity = 'player' AND entity_id = ?"),
        {bound(note.value), bound(player.value)});
    if (!row) return tl::make_unexpected(row.error());
    if (!*row) return inside.notFound("note", note.value);
    if (auto done = inside.connection.run(QStringLiteral("DELETE FROM notes WHERE id = ?"), {bound(note.value)});
        !done) {
      return tl::make_unexpected(done.error());
    }
    return Note{note, textOf((**row)[0]), textOf((**row)[1]), (**row)[2].toLongLong()};
  });
}

Result<std::string> freeGuestName(Record& record, const std::string& word) {
  const auto players = record.players();
  if (!players) return tl::make_unexpected(players.error());
  for (int number = 1;; ++number) {
    const std::string name = word + ' ' + std::to_string(number);
    if (std::ranges::find(*players, name, &Player::name) == players->end()) return name;
  }
}

}  // namespace ferrule
