// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/film_file.h"

#include "core/record/record_impl.h"

namespace ferrule {

Result<void> keepFilmFile(Record& record, FrameId frame, const std::string& path, const std::string& sha256) {
  RecordInside::Impl& inside = RecordInside::of(record);
  Connection& connection = inside.connection;
  return connection.transaction([&]() -> Result<void> {
    auto done = connection.run(QStringLiteral("UPDATE films SET path = ?, sha256 = ? WHERE id = (SELECT film_id FROM "
                                              "frames WHERE id = ?)"),
                               {bound(std::string_view(path)), bound(std::string_view(sha256)), bound(frame.value)});
    if (done && connection.changedRows() == 0) return inside.notFound("frame", frame.value);
    return done;
  });
}

}  // namespace ferrule
