// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record_fields.h"

#include <array>
#include <nlohmann/json.hpp>

#include "core/record/shot_boundaries.h"
#include "core/record/suggestion_entry_text.h"
#include "core/table/reading_text.h"
#include "core/table/told_values.h"

namespace ferrule {

namespace {

constexpr std::array kShotColumns{
    ShotColumn{"player", true, ShotColumn::Kind::Player},
    ShotColumn{"outcome"},
    ShotColumn{"verdict"},
    ShotColumn{"first_contact", true},
    ShotColumn{"scratch", false, ShotColumn::Kind::Truth},
    ShotColumn{"target_ball", true},
    ShotColumn{"target_pocket", true},
    ShotColumn{"target_cut_rad", true, ShotColumn::Kind::Real},
    ShotColumn{"target_line_error_rad", true, ShotColumn::Kind::Real},
    ShotColumn{"target_miss_side", true},
    ShotColumn{"ruling", false, ShotColumn::Kind::Ruling},
    ShotColumn{"explanation", true, ShotColumn::Kind::Explanation},
    ShotColumn{"reading", false, ShotColumn::Kind::Reading},
    ShotColumn{"ball_names", false, ShotColumn::Kind::Names},
    ShotColumn{"ball_before", false, ShotColumn::Kind::Told},
    ShotColumn{"ball_after", false, ShotColumn::Kind::Told},
    ShotColumn{"times", false, ShotColumn::Kind::Told},
    ShotColumn{"split", false, ShotColumn::Kind::Split},
    ShotColumn{"joined", false, ShotColumn::Kind::Joined},
    ShotColumn{"placement", true, ShotColumn::Kind::Placement},
    ShotColumn{"suggestion", true, ShotColumn::Kind::Suggestion},
};

/// What the record keeps apart from a ruling's text; nothing where it is no ruling.
std::optional<RulingEntry> rulingIn(const std::string& content) {
  const auto json = nlohmann::json::parse(content, nullptr, false);
  if (!json.is_object() || !json.contains("sureness") || !json.contains("fouls")) return std::nullopt;
  if (!json["sureness"].is_string() || !json["fouls"].is_array()) return std::nullopt;
  const auto sureness = verdictFromText(json["sureness"].get<std::string>());
  if (!sureness) return std::nullopt;
  RulingEntry ruling{*sureness, {}, content};
  for (const auto& foul : json["fouls"]) {
    if (!foul.is_object() || !foul.contains("kind") || !foul["kind"].is_string()) return std::nullopt;
    ruling.fouls.push_back(foul["kind"].get<std::string>());
  }
  return ruling;
}

QString quoted(std::string_view name) {
  return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

/// The whole reading as it stands; nothing at all for an unknown shot.
Result<std::optional<OptionalText>> standingReading(Connection& connection, std::int64_t shot) {
  const auto rows = shotRows(connection, QStringLiteral("shots.id = ?"), {bound(shot)});
  if (!rows) return tl::make_unexpected(rows.error());
  if (rows->empty()) return std::optional<OptionalText>();
  const auto reading = readingOf(connection, rows->front().summary);
  if (!reading) return tl::make_unexpected(reading.error());
  return std::optional<OptionalText>(readingText(*reading));
}

Result<void> swapTracks(Connection& connection, std::int64_t shot, const std::string& text) {
  const auto names = swappedNamesFromText(text);
  if (!names) return failure(ErrorCode::RecordBroken, connection.path(), "ball_names");
  auto tracks = tracksOf(connection, shot);
  if (!tracks) return tl::make_unexpected(tracks.error());
  swapNames(*tracks, *names);
  return replaceTracks(connection, shot, *tracks);
}

}  // namespace

bool isTold(ShotColumn::Kind kind) {
  using Kind = ShotColumn::Kind;
  return kind == Kind::Names || kind == Kind::Told || kind == Kind::Split || kind == Kind::Joined ||
         kind == Kind::Placement;
}

const ShotColumn* columnNamed(std::string_view name) {
  for (const ShotColumn& column : kShotColumns) {
    if (column.name == name) return &column;
  }
  return nullptr;
}

bool isKnownValue(ShotField field, const std::string& value) {
  switch (field) {
    case ShotField::Player:
      return !value.empty();
    case ShotField::Outcome:
      return outcomeFromText(value).has_value();
    case ShotField::FirstContact:
    case ShotField::TargetBall:
      return ballFromText(value).has_value();
    case ShotField::Scratch:
      return value == "true" || value == "false";
    case ShotField::TargetPocket:
      return pocketFromText(value).has_value();
    case ShotField::Ruling:
      return rulingIn(value).has_value();
    case ShotField::Reading:
      return readingFromText(value, 1).has_value();
    case ShotField::BallNames:
      return swappedNamesFromText(value).has_value();
    case ShotField::BallBefore:
    case ShotField::BallAfter:
      return ballPlaceFromText(value).has_value();
    case ShotField::Times:
      return shotTimesFromText(value).has_value();
    case ShotField::Split:
    case ShotField::Joined:
      return shotBoundaryFromText(value).has_value();
    case ShotField::Placement:
      return toldPlacementFromText(value).has_value();
    case ShotField::Suggestion:
      return keptSuggestionFromText(value).has_value();
  }
  return false;
}

bool touchEachOther(std::string_view field, std::string_view other) {
  if (field == other) return true;
  // A whole reading holds all but these.
  const auto apart = [](std::string_view name) {
    using Kind = ShotColumn::Kind;
    const Kind kind = columnNamed(name)->kind;
    return kind == Kind::Player || kind == Kind::Ruling || kind == Kind::Told || kind == Kind::Names ||
           kind == Kind::Split || kind == Kind::Joined || kind == Kind::Placement || kind == Kind::Suggestion;
  };
  const std::string_view whole = toText(ShotField::Reading);
  return (field == whole && !apart(other)) || (other == whole && !apart(field));
}

Result<std::optional<OptionalText>> standing(Connection& connection, std::int64_t shot, const ShotColumn& column) {
  if (column.kind == ShotColumn::Kind::Reading) return standingReading(connection, shot);
  QString expression = QStringLiteral("CAST(%1 AS TEXT)").arg(quoted(column.name));
  // 17 digits give the same double again.
  if (column.kind == ShotColumn::Kind::Real)
    expression = QStringLiteral("printf('%!.17g', %1)").arg(quoted(column.name));
  if (column.kind == ShotColumn::Kind::Real) {
    expression = QStringLiteral("CASE WHEN %1 IS NOT NULL THEN %2 END").arg(quoted(column.name), expression);
  }
  if (column.kind == ShotColumn::Kind::Truth) {
    expression = QStringLiteral("CASE %1 WHEN 0 THEN 'false' ELSE 'true' END").arg(quoted(column.name));
  }
  if (column.kind == ShotColumn::Kind::Player) {
    expression = QStringLiteral("(SELECT name FROM players WHERE players.id = shots.player_id)");
  }
  if (column.kind == ShotColumn::Kind::Ruling) {
    expression = QStringLiteral("(SELECT content FROM rulings WHERE shot_id = shots.id)");
  }
  if (column.kind == ShotColumn::Kind::Explanation) {
    expression = QStringLiteral("(SELECT content FROM explanations WHERE shot_id = shots.id)");
  }
  // What was told of a shot stands nowhere but in its corrections.
  if (isTold(column.kind)) expression = QStringLiteral("NULL");
  if (column.kind == ShotColumn::Kind::Suggestion) {
    const auto suggestion = suggestionOf(connection, ShotId{shot});
    if (!suggestion) return tl::make_unexpected(suggestion.error());
    return std::optional<OptionalText>(*suggestion ? OptionalText(keptSuggestionText(**suggestion)) : std::nullopt);
  }
  const auto row = connection.row(QStringLiteral("SELECT %1 FROM shots WHERE id = ?").arg(expression), {bound(shot)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<OptionalText>();
  return std::optional<OptionalText>(optionalTextOf((**row)[0]));
}

Result<void> put(Connection& connection, std::int64_t shot, const ShotColumn& column, const OptionalText& value,
                 const OptionalText& replaced) {
  switch (column.kind) {
    case ShotColumn::Kind::Player: {
      std::optional<std::int64_t> player;
      if (value) {
        const auto row =
            connection.row(QStringLiteral("SELECT id FROM players WHERE name = ?"), {bound(std::string_view(*value))});
        if (!row) return tl::make_unexpected(row.error());
        if (!*row) return failure(ErrorCode::NotFound, *value, connection.path());
        player = (**row)[0].toLongLong();
      }
      return connection.run(QStringLiteral("UPDATE shots SET player_id = ? WHERE id = ?"),
                            {bound(player), bound(shot)});
    }
    case ShotColumn::Kind::Ruling: {
      auto done = connection.run(QStringLiteral("DELETE FROM rulings WHERE shot_id = ?"), {bound(shot)});
      if (!done || !value) return done;
      const auto ruling = rulingIn(*value);
      if (!ruling) return failure(ErrorCode::RecordBroken, connection.path(), "ruling");
      return insertRuling(connection, shot, *ruling);
    }
    case ShotColumn::Kind::Explanation: {
      auto done = connection.run(QStringLiteral("DELETE FROM explanations WHERE shot_id = ?"), {bound(shot)});
      if (!done || !value) return done;
      return insertExplanation(connection, shot, *value);
    }
    case ShotColumn::Kind::Truth:
      return connection.run(QStringLiteral("UPDATE shots SET %1 = ? WHERE id = ?").arg(quoted(column.name)),
                            {bound(value == "true"), bound(shot)});
    case ShotColumn::Kind::Real:
      return connection.run(
          QStringLiteral("UPDATE shots SET %1 = CAST(? AS REAL) WHERE id = ?").arg(quoted(column.name)),
          {bound(value), bound(shot)});
    case ShotColumn::Kind::Reading: {
      const auto reading = value ? readingFromText(*value, 1) : std::nullopt;
      if (!reading) return failure(ErrorCode::RecordBroken, connection.path(), "reading");
      return replaceReading(connection, shot, *reading);
    }
    case ShotColumn::Kind::Names:
      return swapTracks(connection, shot, value.value_or(std::string()));
    case ShotColumn::Kind::Told:
      return {};
    case ShotColumn::Kind::Split:
    case ShotColumn::Kind::Joined: {
      // Said together with what it did; only taking back is done here.
      if (value) return {};
      const auto boundary = shotBoundaryFromText(replaced.value_or(std::string()));
      if (!boundary) return failure(ErrorCode::RecordBroken, connection.path(), std::string(column.name));
      return column.kind == ShotColumn::Kind::Split ? undoSplit(connection, shot, *boundary)
                                                    : undoJoin(connection, shot, *boundary);
    }
    case ShotColumn::Kind::Placement:
      return replacePlacement(connection, shot, replaced, value);
    case ShotColumn::Kind::Suggestion: {
      auto done = connection.run(QStringLiteral("DELETE FROM suggestions WHERE shot_id = ?"), {bound(shot)});
      if (!done || !value) return done;
      const auto suggestion = keptSuggestionFromText(*value);
      if (!suggestion) return failure(ErrorCode::RecordBroken, connection.path(), "suggestion");
      return insertSuggestion(connection, shot, *suggestion);
    }
    case ShotColumn::Kind::Word:
      break;
  }
  return connection.run(QStringLiteral("UPDATE shots SET %1 = ? WHERE id = ?").arg(quoted(column.name)),
                        {bound(value), bound(shot)});
}

}  // namespace ferrule
