// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record_impl.h"

namespace ferrule {

Result<NoteId> Record::addNote(ShotId shot, const std::string& text, const std::string& who, UtcMilliseconds when) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<NoteId> {
    const auto id = connection.insert(
        QStringLiteral("INSERT INTO notes(entity, entity_id, note, who, when_ms) "
                       "SELECT 'shot', id, ?, ?, ? FROM shots WHERE id = ?"),
        {bound(std::string_view(text)), bound(std::string_view(who)), bound(when), bound(shot.value)});
    if (!id) return tl::make_unexpected(id.error());
    if (connection.changedRows() == 0) return impl_->notFound("shot", shot.value);
    return NoteId{*id};
  });
}

Result<void> Record::addTag(ShotId shot, const std::string& tag) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    const auto known = connection.row(QStringLiteral("SELECT 1 FROM shots WHERE id = ?"), {bound(shot.value)});
    if (!known) return tl::make_unexpected(known.error());
    if (!*known) return impl_->notFound("shot", shot.value);
    return connection.run(QStringLiteral("INSERT OR IGNORE INTO tags(entity, entity_id, tag) VALUES('shot', ?, ?)"),
                          {bound(shot.value), bound(std::string_view(tag))});
  });
}

Result<void> Record::removeTag(ShotId shot, const std::string& tag) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    return connection.run(QStringLiteral("DELETE FROM tags WHERE entity = 'shot' AND entity_id = ? AND tag = ?"),
                          {bound(shot.value), bound(std::string_view(tag))});
  });
}

Result<void> Record::removeNote(NoteId note) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done =
        connection.run(QStringLiteral("DELETE FROM notes WHERE id = ? AND entity = 'shot'"), {bound(note.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("note", note.value);
    return done;
  });
}

Result<std::vector<std::string>> Record::tags() {
  const auto rows =
      impl_->connection.rows(QStringLiteral("SELECT DISTINCT tag FROM tags WHERE entity = 'shot' ORDER BY tag"), {});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<std::string> tags;
  for (const Row& row : *rows)
    tags.push_back(textOf(row[0]));
  return tags;
}

}  // namespace ferrule
