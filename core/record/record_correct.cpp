// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <nlohmann/json.hpp>

#include "core/record/record_impl.h"
#include "core/table/shot_explanation.h"

namespace ferrule {

namespace {

/// A value of a shot that corrections may touch: a column of shots, or the ruling or explanation beside it. The name is
/// also the field's name in corrections.
struct ShotColumn {
  std::string_view name;
  bool mayBeAbsent = false;
  enum class Kind { Word, Truth, Real, Player, Ruling, Explanation } kind = Kind::Word;
};

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
};

const ShotColumn* columnNamed(std::string_view name) {
  for (const ShotColumn& column : kShotColumns) {
    if (column.name == name) return &column;
  }
  return nullptr;
}

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

/// Whether a value is one of the words that a field takes.
bool isKnown(ShotField field, const std::string& value) {
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
  }
  return false;
}

QString quoted(std::string_view name) {
  return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

/// The value that stands in a column, as text. Nothing inside for an absent value; nothing at all for an unknown shot.
Result<std::optional<std::optional<std::string>>> standing(Connection& connection, std::int64_t shot,
                                                           const ShotColumn& column) {
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
  const auto row = connection.row(QStringLiteral("SELECT %1 FROM shots WHERE id = ?").arg(expression), {bound(shot)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return std::optional<std::optional<std::string>>();
  return std::optional<std::optional<std::string>>(optionalTextOf((**row)[0]));
}

Result<void> put(Connection& connection, std::int64_t shot, const ShotColumn& column,
                 const std::optional<std::string>& value) {
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
    case ShotColumn::Kind::Word:
      break;
  }
  return connection.run(QStringLiteral("UPDATE shots SET %1 = ? WHERE id = ?").arg(quoted(column.name)),
                        {bound(value), bound(shot)});
}

Result<std::int64_t> keep(Connection& connection, std::int64_t shot, const ShotColumn& column,
                          const std::optional<std::string>& before, const std::optional<std::string>& after,
                          const std::string& who, UtcMilliseconds when, const std::optional<std::int64_t>& cause) {
  return connection.insert(
      QStringLiteral("INSERT INTO corrections(entity, entity_id, field, measured, corrected, who, when_ms, cause_id) "
                     "VALUES('shot', ?, ?, ?, ?, ?, ?, ?)"),
      {bound(shot), bound(column.name), bound(before), bound(after), bound(std::string_view(who)), bound(when),
       bound(cause)});
}

using OptionalText = std::optional<std::string>;

/// What becomes of another field when one is corrected.
struct Consequence {
  std::string_view field;
  OptionalText (*after)(const OptionalText& before) = nullptr;
};

OptionalText becomesCertain(const OptionalText&) {
  return std::string(toText(Verdict::Certain));
}
OptionalText falls(const OptionalText&) {
  return std::nullopt;
}
OptionalText losesTarget(const OptionalText& before) {
  return before ? explanationWithoutTarget(*before) : std::nullopt;
}

/// What a correction of a field takes with it.
std::vector<Consequence> consequences(ShotField field) {
  switch (field) {
    case ShotField::Outcome:
      return {{"verdict", becomesCertain}};
    case ShotField::TargetBall:
    case ShotField::TargetPocket:
      return {{"target_cut_rad", falls},
              {"target_line_error_rad", falls},
              {"target_miss_side", falls},
              {"explanation", losesTarget}};
    default:
      return {};
  }
}

}  // namespace

Result<CorrectionId> Record::correctShot(ShotId shot, ShotField field, const std::optional<std::string>& value,
                                         const std::string& who, UtcMilliseconds when) {
  Connection& connection = impl_->connection;
  const ShotColumn& column = *columnNamed(toText(field));
  if (value ? !isKnown(field, *value) : !column.mayBeAbsent) {
    return failure(ErrorCode::FieldInvalid, value.value_or("nothing"), std::string(toText(field)));
  }
  return connection.transaction([&]() -> Result<CorrectionId> {
    const auto before = standing(connection, shot.value, column);
    if (!before) return tl::make_unexpected(before.error());
    if (!*before) return impl_->notFound("shot", shot.value);
    if (auto done = put(connection, shot.value, column, value); !done) return tl::make_unexpected(done.error());
    const auto id = keep(connection, shot.value, column, **before, value, who, when, std::nullopt);
    if (!id) return tl::make_unexpected(id.error());
    for (const Consequence& consequence : consequences(field)) {
      const ShotColumn& other = *columnNamed(consequence.field);
      const auto otherBefore = standing(connection, shot.value, other);
      if (!otherBefore) return tl::make_unexpected(otherBefore.error());
      const OptionalText after = consequence.after(**otherBefore);
      if (**otherBefore == after) continue;
      if (auto done = put(connection, shot.value, other, after); !done) return tl::make_unexpected(done.error());
      const auto kept = keep(connection, shot.value, other, **otherBefore, after, who, when, *id);
      if (!kept) return tl::make_unexpected(kept.error());
    }
    return CorrectionId{*id};
  });
}

Result<void> Record::withdrawCorrection(CorrectionId correction) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    // The correction and what fell with it; each must be the last word on its field.
    const auto rows = connection.rows(
        QStringLiteral("SELECT entity_id, field, measured, EXISTS(SELECT 1 FROM corrections later WHERE "
                       "later.entity = c.entity AND later.entity_id = c.entity_id AND later.field = c.field AND "
                       "later.id > c.id), cause_id IS NOT NULL FROM corrections c "
                       "WHERE entity = 'shot' AND (id = ? OR cause_id = ?) ORDER BY id"),
        {bound(correction.value), bound(correction.value)});
    if (!rows) return tl::make_unexpected(rows.error());
    if (rows->empty() || rows->front()[4].toBool()) return impl_->notFound("correction", correction.value);
    for (const Row& row : *rows) {
      const ShotColumn* column = columnNamed(textOf(row[1]));
      if (column == nullptr) return impl_->senseless("corrections.field");
      if (row[3].toBool()) return impl_->notFound("correction", correction.value);
      auto done = put(connection, row[0].toLongLong(), *column, optionalTextOf(row[2]));
      if (!done) return done;
    }
    return connection.run(QStringLiteral("DELETE FROM corrections WHERE id = ?"), {bound(correction.value)});
  });
}

Result<std::vector<ValueCorrection>> correctionsOf(Connection& connection, ShotId shot) {
  const auto rows = connection.rows(
      QStringLiteral(
          "SELECT id, entity, entity_id, field, measured, corrected, who, when_ms, cause_id FROM corrections "
          "WHERE entity = 'shot' AND entity_id = ? ORDER BY id"),
      {bound(shot.value)});
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<ValueCorrection> corrections;
  for (const Row& row : *rows) {
    ValueCorrection correction;
    correction.id = CorrectionId{row[0].toLongLong()};
    correction.entity = textOf(row[1]);
    correction.entityId = row[2].toLongLong();
    correction.field = textOf(row[3]);
    correction.measured = optionalTextOf(row[4]);
    correction.corrected = optionalTextOf(row[5]);
    correction.who = textOf(row[6]);
    correction.when = row[7].toLongLong();
    if (const auto cause = optionalIntegerOf(row[8])) correction.cause = CorrectionId{*cause};
    corrections.push_back(std::move(correction));
  }
  return corrections;
}

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

}  // namespace ferrule
