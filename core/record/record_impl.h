// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/record/connection.h"
#include "core/record/record.h"

namespace ferrule {

class Record::Impl {
 public:
  explicit Impl(Connection open) : connection(std::move(open)) {}

  /// NotFound for a row of this record.
  [[nodiscard]] tl::unexpected<Error> notFound(const char* kind, std::int64_t id) const {
    return failure(ErrorCode::NotFound, std::string(kind) + ' ' + std::to_string(id), connection.path());
  }
  /// RecordBroken for a stored value that makes no sense.
  [[nodiscard]] tl::unexpected<Error> senseless(const char* what) const {
    return failure(ErrorCode::RecordBroken, connection.path(), what);
  }

  Connection connection;
};

/// For functions of this folder that work on a record beside its class.
struct RecordInside {
  using Impl = Record::Impl;
  [[nodiscard]] static Record::Impl& of(Record& record) { return *record.impl_; }
};

/// Of a text, lower-case hex.
[[nodiscard]] std::string sha256Of(const std::string& content);

/// A random name, unique over all machines.
[[nodiscard]] std::string freshUid();

/// A player's row and the name in corrections; false for an unknown player. The name must be free.
[[nodiscard]] Result<bool> updatePlayerRow(Connection& connection, const Player& player);

/// A shot's list row and the columns that only the whole shot needs.
struct ShotRow {
  ShotSummary summary;
  SessionId session;
};

/// The list rows selected by a condition on shots s and frames f ("s.frame_id = ?"), in the order of frames and
/// numbers.
[[nodiscard]] Result<std::vector<ShotRow>> shotRows(Connection& connection, const QString& condition,
                                                    const std::vector<QVariant>& values);

/// The id of a table: the row that is there, or a new one.
[[nodiscard]] Result<std::int64_t> tableRow(Connection& connection, const std::string& name,
                                            const MeasuredTable& table);

/// The shot must not have a ruling yet.
[[nodiscard]] Result<void> insertRuling(Connection& connection, std::int64_t shot, const RulingEntry& ruling);

/// The shot must not have an explanation yet.
[[nodiscard]] Result<void> insertExplanation(Connection& connection, std::int64_t shot, const std::string& content);

/// A shot's reading as it stands. summary: its list row.
[[nodiscard]] Result<ShotReading> readingOf(Connection& connection, const ShotSummary& summary);
/// All that was read of a shot, in place of what stood there; its number and tracks stay.
[[nodiscard]] Result<void> replaceReading(Connection& connection, std::int64_t shot, const ShotReading& reading);

/// In the order of the balls' names.
[[nodiscard]] Result<std::vector<Track>> tracksOf(Connection& connection, std::int64_t shot);
[[nodiscard]] Result<void> replaceTracks(Connection& connection, std::int64_t shot, std::span<const Track> tracks);

/// The shot must have none yet.
[[nodiscard]] Result<void> insertSuggestion(Connection& connection, std::int64_t shot,
                                            const SuggestionEntry& suggestion);
[[nodiscard]] Result<std::optional<SuggestionEntry>> suggestionOf(Connection& connection, ShotId shot);
[[nodiscard]] Result<std::optional<std::string>> explanationOf(Connection& connection, ShotId shot);

[[nodiscard]] Result<std::vector<ValueCorrection>> correctionsOf(Connection& connection, ShotId shot);

/// The columns of films, in the order of filmOf.
inline constexpr const char* kFilmColumns =
    "films.id, films.path, films.sha256, films.width_px, films.height_px, films.images, films.duration_s, "
    "films.first_image_ms";
[[nodiscard]] FilmEntry filmOf(const Row& row, std::size_t first);

}  // namespace ferrule
