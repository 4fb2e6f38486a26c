// SPDX-License-Identifier: GPL-3.0-or-later
// What only people do: taking back a shot that they put in, and leaving something unfinished.
#include "core/record/record_impl.h"

namespace ferrule {

Result<void> Record::removeLastShot(FrameId frame) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(
        QStringLiteral("DELETE FROM shots WHERE frame_id = (SELECT id FROM frames WHERE id = ? AND film_id IS NULL) "
                       "AND number = (SELECT max(number) FROM shots WHERE frame_id = ?)"),
        {bound(frame.value), bound(frame.value)});
    if (done && connection.changedRows() == 0) return impl_->notFound("shot of frame", frame.value);
    return done;
  });
}

Result<void> Record::keepDraft(const std::string& kind, const std::optional<std::string>& content) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    if (!content) {
      return connection.run(QStringLiteral("DELETE FROM drafts WHERE kind = ?"), {bound(std::string_view(kind))});
    }
    return connection.run(QStringLiteral("INSERT OR REPLACE INTO drafts(kind, content) VALUES(?, ?)"),
                          {bound(std::string_view(kind)), bound(std::string_view(*content))});
  });
}

Result<std::optional<std::string>> Record::draft(const std::string& kind) {
  const auto row = impl_->connection.row(QStringLiteral("SELECT content FROM drafts WHERE kind = ?"),
                                         {bound(std::string_view(kind))});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<std::string>();
  return std::optional(textOf((**row)[0]));
}

}  // namespace ferrule
