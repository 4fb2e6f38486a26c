// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/erase_player.h"

#include <QFile>
#include <algorithm>

#include "core/record/byte_search.h"
#include "core/record/draft_players.h"
#include "core/record/erase_rows.h"

namespace ferrule {

namespace {

/// The work inside the transaction.
class Erasing {
 public:
  Erasing(Connection& connection, const ErasePreview& preview)
      : connection_(connection), preview_(preview), rows_(preview.player.id), name_(preview.player.name) {}

  Result<void> run(const EraseOptions& options, UtcMilliseconds now) {
    // What stays first, while it can still be told from what goes.
    if (options.blankMentions) {
      if (auto done = blankMentions(); !done) return done;
    }
    if (auto done = blankNames(); !done) return done;
    if (auto done = blankRulings(); !done) return done;
    // A session that was counted as a match, because two played, stays one.
    if (auto done = run("UPDATE sessions SET kind = 'match' WHERE kind = 'unknown' AND id NOT IN (%S) "
                        "AND id IN (SELECT session_id FROM session_players WHERE player_id = %P) "
                        "AND (SELECT count(*) FROM session_players p WHERE p.session_id = sessions.id) > 1");
        !done) {
      return done;
    }
    if (auto done = removeDrafts(); !done) return done;
    if (auto done = keepUids(now); !done) return done;
    return removeRows();
  }

 private:
  Result<void> run(const char* sql, const std::vector<QVariant>& values = {}) {
    return connection_.run(rows_.filled(sql), values);
  }

  Result<void> blankMentions() {
    for (const Mention& mention : preview_.mentions) {
      const QVariant without = bound(std::string_view(mention.withoutName));
      Result<void> done;
      switch (mention.where) {
        case Mention::Where::Session:
          done = run("UPDATE sessions SET name = ? WHERE id = ?", {without, bound(mention.row)});
          break;
        case Mention::Where::Table:
          done = run("UPDATE OR IGNORE tables SET name = ? WHERE id = ?", {without, bound(mention.row)});
          break;
        case Mention::Where::Note:
          done = run("UPDATE notes SET note = ? WHERE id = ?", {without, bound(mention.row)});
          break;
        case Mention::Where::Tag:
          done =
              run("UPDATE OR REPLACE tags SET tag = ? WHERE tag = ?", {without, bound(std::string_view(mention.text))});
          break;
      }
      if (!done) return done;
    }
    return {};
  }

  Result<void> blankNames() {
    const QVariant name = bound(std::string_view(name_));
    for (const char* sql :
         {"UPDATE notes SET who = '' WHERE who = ? AND NOT (%G)",
          "UPDATE corrections SET who = '' WHERE who = ? AND NOT (%G)",
          "UPDATE corrections SET measured = NULL WHERE field = 'player' AND measured = ? AND NOT (%G)",
          "UPDATE corrections SET corrected = NULL WHERE field = 'player' AND corrected = ? AND NOT (%G)"}) {
      if (auto done = run(sql, {name}); !done) return done;
    }
    return {};
  }

  /// Rewrites the texts of one column that hold the name as the one who overruled.
  Result<void> blankRulingsOf(const char* select, const char* update) {
    const auto found = connection_.rows(rows_.filled(select), {bound(std::string_view(name_))});
    if (!found) return tl::make_unexpected(found.error());
    for (const Row& row : *found) {
      const auto without = withoutOverruler(textOf(row[1]), name_);
      if (!without) continue;
      if (auto done = run(update, {bound(std::string_view(*without)), row[0]}); !done) return done;
    }
    return {};
  }

  Result<void> blankRulings() {
    auto done =
        blankRulingsOf("SELECT shot_id, content FROM rulings WHERE shot_id NOT IN (%H) AND instr(content, ?) > 0",
                       "UPDATE rulings SET content = ? WHERE shot_id = ?");
    if (!done) return done;
    done = blankRulingsOf(
        "SELECT id, measured FROM corrections WHERE field = 'ruling' AND NOT (%G) AND instr(measured, ?) > 0",
        "UPDATE corrections SET measured = ? WHERE id = ?");
    if (!done) return done;
    return blankRulingsOf(
        "SELECT id, corrected FROM corrections WHERE field = 'ruling' AND NOT (%G) AND instr(corrected, ?) > 0",
        "UPDATE corrections SET corrected = ? WHERE id = ?");
  }

  Result<void> removeDrafts() {
    const auto drafts = connection_.rows(QStringLiteral("SELECT kind, content FROM drafts"));
    if (!drafts) return tl::make_unexpected(drafts.error());
    for (const Row& draft : *drafts) {
      if (!draftKnows(textOf(draft[1]), preview_.player.id, name_)) continue;
      if (auto done = run("DELETE FROM drafts WHERE kind = ?", {draft[0]}); !done) return done;
    }
    return {};
  }

  Result<void> keepUids(UtcMilliseconds now) {
    return run(
        "INSERT OR REPLACE INTO erased_players(uid, erased_ms) "
        "SELECT uid, ? FROM players WHERE id = %P "
        "UNION ALL SELECT uid, ? FROM joined_players WHERE player_id = %P",
        {bound(now), bound(now)});
  }

  /// The rest follows from foreign keys and triggers.
  Result<void> removeRows() {
    if (auto done = run("DELETE FROM sessions WHERE id IN (%S)"); !done) return done;
    if (auto done = run("DELETE FROM players WHERE id = %P"); !done) return done;
    for (const ErasedFilm& film : preview_.films) {
      if (film.shared) continue;
      auto done = run("DELETE FROM films WHERE sha256 = ?", {bound(std::string_view(film.sha256))});
      if (!done) return done;
    }
    return {};
  }

  Connection& connection_;
  const ErasePreview& preview_;
  PersonsRows rows_;
  std::string name_;
};

/// Whether the log was emptied. The engine itself waits for other programs that read, as long as the record was opened
/// to wait.
bool emptyLog(Connection& connection) {
  const auto row = connection.row(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
  return row && *row && (**row)[0].toInt() == 0;
}

FileFate removed(const std::string& path) {
  QFile file(QString::fromStdString(path));
  if (!file.exists()) return {FileFate::Fate::Gone, path, {}};
  if (!file.remove()) return {FileFate::Fate::Failed, path, file.errorString().toStdString()};
  return {FileFate::Fate::Deleted, path, {}};
}

/// Only the very film: its place may hold another file by now.
FileFate removedFilm(const ErasedFilm& film) {
  if (!QFile::exists(QString::fromStdString(film.path))) return {FileFate::Fate::Gone, film.path, {}};
  const auto hash = fileSha256(film.path);
  if (!hash) return {FileFate::Fate::Failed, film.path, hash.error().detail};
  if (*hash != film.sha256) return {FileFate::Fate::Another, film.path, {}};
  return removed(film.path);
}

}  // namespace

long ErasePreview::rowsOf(ErasedKind kind) const {
  const auto found = std::ranges::find(rows, kind, &ErasedRows::kind);
  return found == rows.end() ? 0 : found->rows;
}

Result<ErasePreview> previewErase(Record& record, PlayerId player) {
  auto& inside = RecordInside::of(record);
  auto preview = erasePreview(inside.connection, player);
  if (!preview) return tl::make_unexpected(preview.error());
  if (!*preview) return inside.notFound("player", player.value);
  return std::move(**preview);
}

Result<EraseReport> erasePlayer(Record& record, PlayerId player, const EraseOptions& options, UtcMilliseconds now) {
  auto& inside = RecordInside::of(record);
  Connection& connection = inside.connection;
  // Overwrites what is deleted at once, before the file is made compact.
  if (auto done = connection.run(QStringLiteral("PRAGMA secure_delete = ON")); !done) {
    return tl::make_unexpected(done.error());
  }
  EraseReport report;
  const auto done = connection.transaction([&]() -> Result<void> {
    auto preview = erasePreview(connection, player);
    if (!preview) return tl::make_unexpected(preview.error());
    if (!*preview) return inside.notFound("player", player.value);
    report.erased = std::move(**preview);
    return Erasing(connection, report.erased).run(options, now);
  });
  if (!done) return tl::make_unexpected(done.error());
  for (const ErasedFilm& film : report.erased.films) {
    if (options.deleteFilms && !film.shared) report.files.push_back(removedFilm(film));
  }
  if (options.deleteBackups) {
    for (const std::string& backup : report.erased.backups)
      report.files.push_back(removed(backup));
  }
  report.namesLeft = compactAndCount(record, report.erased.player.name);
  return report;
}

std::optional<long> compactAndCount(Record& record, const std::string& name) {
  Connection& connection = RecordInside::of(record).connection;
  // Twice: what lies in the log goes into the file first, then the new file's pages do.
  if (!emptyLog(connection)) return std::nullopt;
  if (!connection.run(QStringLiteral("VACUUM"))) return std::nullopt;
  if (!emptyLog(connection)) return std::nullopt;
  const auto inFile = timesInFile(record.path(), name);
  if (!inFile) return std::nullopt;
  const std::string log = record.path() + "-wal";
  const auto inLog = QFile::exists(QString::fromStdString(log)) ? timesInFile(log, name) : std::optional<long>(0);
  if (!inLog) return std::nullopt;
  return *inFile + *inLog;
}

}  // namespace ferrule
