// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/erase_rows.h"

#include <QRegularExpression>
#include <array>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/record/byte_search.h"
#include "core/record/draft_players.h"

namespace ferrule {

namespace {

/// Sessions in which the person took part and nobody else did.
constexpr const char* kSessions =
    "SELECT s.id FROM sessions s WHERE s.id IN (SELECT session_id FROM session_players WHERE player_id = %P "
    "UNION SELECT f.session_id FROM shots h JOIN frames f ON f.id = h.frame_id WHERE h.player_id = %P) "
    "AND NOT EXISTS(SELECT 1 FROM session_players o WHERE o.session_id = s.id AND o.player_id <> %P) "
    "AND NOT EXISTS(SELECT 1 FROM frames f JOIN shots h ON h.frame_id = f.id "
    "WHERE f.session_id = s.id AND h.player_id <> %P)";

/// Sessions in which the person took part beside others.
constexpr const char* kShared =
    "(SELECT session_id FROM session_players WHERE player_id = %P UNION SELECT f.session_id FROM shots h "
    "JOIN frames f ON f.id = h.frame_id WHERE h.player_id = %P EXCEPT %S)";

struct Counted {
  ErasedKind kind;
  const char* from;
};

constexpr std::array kCounted{
    Counted{ErasedKind::Sessions, "sessions WHERE id IN (%S)"},
    Counted{ErasedKind::Frames, "frames WHERE id IN (%F)"},
    Counted{ErasedKind::Placements, "placements WHERE frame_id IN (%F)"},
    Counted{ErasedKind::Fingerprints, "fingerprints WHERE session_id IN (%S)"},
    Counted{ErasedKind::Seats, "session_players WHERE player_id = %P AND session_id NOT IN (%S)"},
    Counted{ErasedKind::Shots, "shots WHERE id IN (%H)"},
    Counted{ErasedKind::Positions, "positions WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Deliveries, "deliveries WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Events, "events WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Pocketed, "pocketed WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Tracks, "tracks WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Rulings, "rulings WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Suggestions, "suggestions WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Explanations, "explanations WHERE shot_id IN (%H)"},
    Counted{ErasedKind::Corrections, "corrections WHERE %G"},
    Counted{ErasedKind::Notes, "notes WHERE %G"},
    Counted{ErasedKind::Tags, "tags WHERE %G"},
    Counted{ErasedKind::Consents, "consents WHERE player_id = %P"},
    Counted{ErasedKind::Groups, "player_groups WHERE player_id = %P"},
    Counted{ErasedKind::DrillRuns, "drill_runs WHERE player_id = %P OR session_id IN (%S)"},
    Counted{ErasedKind::DrillTries,
            "trials WHERE run_id IN (SELECT id FROM drill_runs WHERE player_id = %P OR session_id IN (%S))"},
    Counted{ErasedKind::NotesWithoutAuthor, "notes WHERE who = ? AND NOT (%G)"},
    Counted{ErasedKind::CorrectionsWithoutAuthor, "corrections WHERE who = ? AND NOT (%G)"},
    Counted{ErasedKind::NamesInCorrections,
            "corrections WHERE field = 'player' AND ? IN (measured, corrected) AND NOT (%G)"},
};

QString nameIn(const char* column) {
  return QStringLiteral("instr(%1, ?) > 0").arg(QLatin1String(column));
}

Result<std::vector<ErasedFilm>> filmsOf(Connection& connection, const PersonsRows& rows) {
  const auto found = connection.rows(
      rows.filled("SELECT path, sha256, EXISTS(SELECT 1 FROM frames WHERE film_id = films.id AND id NOT IN (%F)) "
                  "FROM films WHERE id IN (SELECT film_id FROM frames WHERE id IN (%F) OR session_id IN "
                  "(SELECT session_id FROM session_players WHERE player_id = %P) OR id IN "
                  "(SELECT frame_id FROM shots WHERE player_id = %P)) ORDER BY path"));
  if (!found) return tl::make_unexpected(found.error());
  std::vector<ErasedFilm> films;
  for (const Row& row : *found)
    films.push_back({textOf(row[0]), textOf(row[1]), row[2].toBool()});
  return films;
}

Result<void> addMentions(Connection& connection, const PersonsRows& rows, const std::string& name,
                         std::vector<Mention>& mentions) {
  struct Source {
    Mention::Where where;
    const char* sql;
  };
  constexpr std::array kSources{
      Source{Mention::Where::Session,
             "SELECT id, name FROM sessions WHERE instr(name, ?) > 0 AND id NOT IN (%S) "
             "ORDER BY id"},
      Source{Mention::Where::Table, "SELECT id, name FROM tables WHERE instr(name, ?) > 0 ORDER BY id"},
      Source{Mention::Where::Note, "SELECT id, note FROM notes WHERE instr(note, ?) > 0 AND NOT (%G) ORDER BY id"},
      Source{Mention::Where::Tag, "SELECT DISTINCT 0, tag FROM tags WHERE instr(tag, ?) > 0 AND NOT (%G) ORDER BY tag"},
  };
  for (const Source& source : kSources) {
    const auto found = connection.rows(rows.filled(source.sql), {bound(std::string_view(name))});
    if (!found) return tl::make_unexpected(found.error());
    for (const Row& row : *found) {
      std::string text = textOf(row[1]);
      if (auto without = withoutName(text, name)) {
        mentions.push_back({source.where, row[0].toLongLong(), std::move(text), std::move(*without)});
      }
    }
  }
  return {};
}

/// Rulings of others' shots, and what was corrected of them, in which the person overruled the referee.
Result<long> rulingsByPerson(Connection& connection, const PersonsRows& rows, const std::string& name) {
  const auto found = connection.rows(
      rows.filled("SELECT content FROM rulings WHERE shot_id NOT IN (%H) AND ") + nameIn("content") +
          rows.filled(" UNION ALL SELECT measured FROM corrections WHERE field = 'ruling' AND NOT (%G) AND ") +
          nameIn("measured") +
          rows.filled(" UNION ALL SELECT corrected FROM corrections WHERE field = 'ruling' AND NOT (%G) AND ") +
          nameIn("corrected"),
      {bound(std::string_view(name)), bound(std::string_view(name)), bound(std::string_view(name))});
  if (!found) return tl::make_unexpected(found.error());
  long count = 0;
  for (const Row& row : *found)
    count += withoutOverruler(textOf(row[0]), name) ? 1 : 0;
  return count;
}

/// Copies of the record from before a migration that hold the name or the uid.
std::vector<std::string> backupsOf(const std::string& path, const std::string& name, const std::string& uid) {
  namespace fs = std::filesystem;
  std::vector<std::string> backups;
  std::error_code ignored;
  const fs::path record = fs::absolute(path, ignored);
  const std::string start = record.filename().string() + ".version-";
  for (const fs::directory_entry& entry : fs::directory_iterator(record.parent_path(), ignored)) {
    const std::string file = entry.path().filename().string();
    if (!file.starts_with(start) || file.find(".backup", start.size()) == std::string::npos) continue;
    // What cannot be read may hold anything.
    const auto names = timesInFile(entry.path().string(), name);
    const auto uids = timesInFile(entry.path().string(), uid);
    if (!names || !uids || *names + *uids > 0) backups.push_back(entry.path().string());
  }
  std::ranges::sort(backups);
  return backups;
}

Result<long> draftsOf(Connection& connection, const Player& player) {
  const auto drafts = connection.rows(QStringLiteral("SELECT content FROM drafts"));
  if (!drafts) return tl::make_unexpected(drafts.error());
  return std::ranges::count_if(*drafts,
                               [&](const Row& draft) { return draftKnows(textOf(draft[0]), player.id, player.name); });
}

Result<int> countOf(Connection& connection, const QString& sql, const std::vector<QVariant>& values = {}) {
  const auto row = connection.row(sql, values);
  if (!row) return tl::make_unexpected(row.error());
  return (**row)[0].toInt();
}

}  // namespace

PersonsRows::PersonsRows(PlayerId player) : player_(QString::number(player.value)) {
  sessions_ = QString::fromLatin1(kSessions).replace(QStringLiteral("%P"), player_);
  frames_ = QStringLiteral("SELECT id FROM frames WHERE session_id IN (%1)").arg(sessions_);
  shots_ = QStringLiteral("SELECT id FROM shots WHERE player_id = %1 OR frame_id IN (%2)").arg(player_, frames_);
  going_ = QStringLiteral(
               "entity = 'player' AND entity_id = %1 OR entity = 'session' AND entity_id IN (%2) OR "
               "entity = 'frame' AND entity_id IN (%3) OR entity = 'shot' AND entity_id IN (%4)")
               .arg(player_, sessions_, frames_, shots_);
}

QString PersonsRows::filled(const char* sql) const {
  return QString::fromLatin1(sql)
      .replace(QStringLiteral("%S"), sessions_)
      .replace(QStringLiteral("%F"), frames_)
      .replace(QStringLiteral("%H"), shots_)
      .replace(QStringLiteral("%G"), going_)
      .replace(QStringLiteral("%P"), player_);
}

std::optional<std::string> withoutName(const std::string& text, const std::string& name) {
  const QRegularExpression word(QStringLiteral("(?<![\\p{L}\\p{N}])%1(?![\\p{L}\\p{N}])")
                                    .arg(QRegularExpression::escape(QString::fromStdString(name))),
                                QRegularExpression::UseUnicodePropertiesOption);
  QString without = QString::fromStdString(text);
  if (!without.contains(word)) return std::nullopt;
  return without.replace(word, QString(QChar(0x2026))).toStdString();
}

std::optional<std::string> withoutOverruler(const std::string& json, const std::string& name) {
  auto ruling = nlohmann::ordered_json::parse(json, nullptr, false);
  if (!ruling.is_object() || !ruling.contains("overruled_by") || ruling["overruled_by"] != name) return std::nullopt;
  ruling["overruled_by"] = "";
  return ruling.dump();
}

Result<std::optional<ErasePreview>> erasePreview(Connection& connection, PlayerId player) {
  const auto person = personRow(connection, player);
  if (!person) return tl::make_unexpected(person.error());
  if (!*person) return std::optional<ErasePreview>();
  ErasePreview preview;
  preview.player = (*person)->details.player;
  const std::string& name = preview.player.name;
  const std::vector<QVariant> named{bound(std::string_view(name))};
  const PersonsRows rows(player);
  const auto add = [&](ErasedKind kind, long count) {
    if (count > 0) preview.rows.push_back({kind, count});
  };
  for (const Counted& counted : kCounted) {
    const QString sql = QStringLiteral("SELECT count(*) FROM ") + rows.filled(counted.from);
    const auto count = countOf(connection, sql, sql.contains(QLatin1Char('?')) ? named : std::vector<QVariant>());
    if (!count) return tl::make_unexpected(count.error());
    add(counted.kind, *count);
  }
  const auto drafts = draftsOf(connection, preview.player);
  if (!drafts) return tl::make_unexpected(drafts.error());
  add(ErasedKind::Drafts, *drafts);
  const auto rulings = rulingsByPerson(connection, rows, name);
  if (!rulings) return tl::make_unexpected(rulings.error());
  add(ErasedKind::NamesInRulings, *rulings);
  std::ranges::sort(preview.rows, {}, &ErasedRows::kind);
  auto films = filmsOf(connection, rows);
  if (!films) return tl::make_unexpected(films.error());
  preview.films = std::move(*films);
  if (auto done = addMentions(connection, rows, name, preview.mentions); !done) {
    return tl::make_unexpected(done.error());
  }
  preview.backups = backupsOf(connection.path(), name, (*person)->uid);
  const QString others =
      rows.filled((std::string("FROM shots WHERE frame_id IN (SELECT id FROM frames WHERE session_id IN ") + kShared +
                   ") AND player_id IS NOT %P")
                      .c_str());
  const auto shots = countOf(connection, QStringLiteral("SELECT count(*) ") + others);
  if (!shots) return tl::make_unexpected(shots.error());
  preview.othersShots = *shots;
  const auto positions =
      countOf(connection, QStringLiteral("SELECT count(*) FROM positions WHERE shot_id IN (SELECT id %1)").arg(others));
  if (!positions) return tl::make_unexpected(positions.error());
  preview.othersPositions = *positions;
  const auto lines = countOf(connection,
                             rows.filled("SELECT count(*) FROM consents WHERE player_id <> %P AND ? IN (by_whom, "
                                         "noted_by)"),
                             named);
  if (!lines) return tl::make_unexpected(lines.error());
  preview.guardianLines = *lines;
  return std::optional<ErasePreview>(std::move(preview));
}

}  // namespace ferrule
