// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/base/contract.h"
#include "core/record/record_fields.h"
#include "core/record/suggestion_entry_text.h"
#include "core/table/shot_explanation.h"
#include "core/table/told_values.h"

namespace ferrule {

namespace {

Result<std::int64_t> keep(Connection& connection, std::int64_t shot, const ShotColumn& column,
                          const std::optional<std::string>& before, const std::optional<std::string>& after,
                          const std::string& who, UtcMilliseconds when, const std::optional<std::int64_t>& cause) {
  return connection.insert(
      QStringLiteral("INSERT INTO corrections(entity, entity_id, field, measured, corrected, who, when_ms, cause_id) "
                     "VALUES('shot', ?, ?, ?, ?, ?, ?, ?)"),
      {bound(shot), bound(column.name), bound(before), bound(after), bound(std::string_view(who)), bound(when),
       bound(cause)});
}

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

/// What stood before a change; errors as standing(), NotFound for an unknown shot.
Result<OptionalText> stoodBefore(Connection& connection, const ShotChange& change) {
  const ShotColumn& column = *columnNamed(toText(change.field));
  const auto stood = standing(connection, change.shot.value, column);
  if (!stood) return tl::make_unexpected(stood.error());
  if (!*stood) return failure(ErrorCode::NotFound, "shot " + std::to_string(change.shot.value), connection.path());
  if (column.kind != ShotColumn::Kind::Names && isTold(column.kind)) return change.before;
  if (column.kind != ShotColumn::Kind::Names) return **stood;
  SwappedNames back = *swappedNamesFromText(*change.value);
  std::swap(back.one, back.other);
  return OptionalText(toText(back));
}

/// Writes corrections, the first by itself and the others as what it took with it.
class CorrectionWriter {
 public:
  CorrectionWriter(Connection& connection, const std::string& who, UtcMilliseconds when)
      : connection_(connection), who_(who), when_(when) {}

  /// Left out where it changes nothing, unless it is the first.
  [[nodiscard]] Result<void> write(std::int64_t shot, const ShotColumn& column, const OptionalText& before,
                                   const OptionalText& after) {
    if (first_ && before == after) return {};
    if (auto done = put(connection_, shot, column, after, before); !done) return done;
    const auto kept = keep(connection_, shot, column, before, after, who_, when_, first_);
    if (!kept) return tl::make_unexpected(kept.error());
    if (!first_) first_ = *kept;
    return {};
  }

  [[nodiscard]] Result<void> write(const ShotChange& change) {
    const auto stood = stoodBefore(connection_, change);
    if (!stood) return tl::make_unexpected(stood.error());
    return write(change.shot.value, *columnNamed(toText(change.field)), *stood, change.value);
  }

  [[nodiscard]] CorrectionId correction() const { return CorrectionId{first_.value_or(0)}; }

 private:
  Connection& connection_;
  const std::string& who_;
  UtcMilliseconds when_;
  std::optional<std::int64_t> first_;
};

Result<void> checkChange(const ShotChange& change) {
  const ShotColumn& column = *columnNamed(toText(change.field));
  if (change.value ? isKnownValue(change.field, *change.value) : column.mayBeAbsent) return {};
  return failure(ErrorCode::FieldInvalid, change.value.value_or("nothing"), std::string(toText(change.field)));
}

/// Whether the first of changes brings the shot's new reading with it, so that nothing has to fall by itself.
bool isReadAnew(std::span<const ShotChange> changes) {
  return std::ranges::any_of(changes, [&](const ShotChange& change) {
    return change.field == ShotField::Reading && change.shot == changes.front().shot;
  });
}

/// Corrections of shots that meet a condition with one value, oldest first.
Result<std::vector<ValueCorrection>> correctionsWhere(Connection& connection, const QString& condition,
                                                      std::int64_t value) {
  const auto rows = connection.rows(
      QStringLiteral(
          "SELECT id, entity, entity_id, field, measured, corrected, who, when_ms, cause_id FROM corrections "
          "WHERE entity = 'shot' AND %1 ORDER BY id")
          .arg(condition),
      {bound(value)});
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

}  // namespace

Result<CorrectionId> Record::correctShot(ShotId shot, ShotField field, const std::optional<std::string>& value,
                                         const std::string& who, UtcMilliseconds when) {
  const ShotChange change{shot, field, value};
  return correctShots({&change, 1}, who, when);
}

Result<CorrectionId> Record::correctShots(std::span<const ShotChange> changes, const std::string& who,
                                          UtcMilliseconds when) {
  FERRULE_REQUIRE(!changes.empty());
  Connection& connection = impl_->connection;
  for (const ShotChange& change : changes) {
    if (auto sound = checkChange(change); !sound) return tl::make_unexpected(sound.error());
  }
  return connection.transaction([&]() -> Result<CorrectionId> {
    CorrectionWriter writer(connection, who, when);
    const ShotChange& first = changes.front();
    if (auto done = writer.write(first); !done) return tl::make_unexpected(done.error());
    if (!isReadAnew(changes)) {
      for (const Consequence& consequence : consequences(first.field)) {
        const ShotColumn& other = *columnNamed(consequence.field);
        const auto stood = standing(connection, first.shot.value, other);
        if (!stood) return tl::make_unexpected(stood.error());
        auto done = writer.write(first.shot.value, other, **stood, consequence.after(**stood));
        if (!done) return tl::make_unexpected(done.error());
      }
    }
    for (const ShotChange& change : changes.subspan(1)) {
      if (auto done = writer.write(change); !done) return tl::make_unexpected(done.error());
    }
    return writer.correction();
  });
}

Result<void> Record::withdrawCorrection(CorrectionId correction) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    // The correction and what fell with it, the last first; each must be the last word on its value.
    const auto rows =
        connection.rows(QStringLiteral("SELECT id, entity_id, field, measured, corrected FROM corrections "
                                       "WHERE entity = 'shot' AND (id = ? OR cause_id = ?) ORDER BY id DESC"),
                        {bound(correction.value), bound(correction.value)});
    if (!rows) return tl::make_unexpected(rows.error());
    if (rows->empty() || rows->back()[0].toLongLong() != correction.value) {
      return impl_->notFound("correction", correction.value);
    }
    for (const Row& row : *rows) {
      const std::string field = textOf(row[2]);
      const ShotColumn* column = columnNamed(field);
      if (column == nullptr) return impl_->senseless("corrections.field");
      const auto later = connection.rows(
          QStringLiteral("SELECT field FROM corrections WHERE entity = 'shot' AND entity_id = ? AND id > ? "
                         "AND id <> ? AND cause_id IS NOT ?"),
          {row[1], row[0], bound(correction.value), bound(correction.value)});
      if (!later) return tl::make_unexpected(later.error());
      for (const Row& other : *later) {
        if (columnNamed(textOf(other[0])) == nullptr) return impl_->senseless("corrections.field");
        if (touchEachOther(field, textOf(other[0]))) return impl_->notFound("correction", correction.value);
      }
      auto done = put(connection, row[1].toLongLong(), *column, optionalTextOf(row[3]), optionalTextOf(row[4]));
      if (!done) return done;
    }
    return connection.run(QStringLiteral("DELETE FROM corrections WHERE id = ?"), {bound(correction.value)});
  });
}

Result<void> Record::replaceSuggestion(ShotId shot, const SuggestionEntry& suggestion, const std::string& who,
                                       UtcMilliseconds when) {
  Connection& connection = impl_->connection;
  return connection.transaction([&]() -> Result<void> {
    const auto cause = connection.row(
        QStringLiteral("SELECT max(corrections.id) FROM corrections JOIN shots ON shots.id = corrections.entity_id "
                       "WHERE corrections.entity = 'shot' AND corrections.cause_id IS NULL AND shots.frame_id = "
                       "(SELECT frame_id FROM shots WHERE id = ?)"),
        {bound(shot.value)});
    if (!cause) return tl::make_unexpected(cause.error());
    const auto latest = *cause ? optionalIntegerOf((**cause)[0]) : std::nullopt;
    if (!latest) return keepSuggestion(shot, suggestion);
    const ShotColumn& column = *columnNamed(toText(ShotField::Suggestion));
    const auto stood = standing(connection, shot.value, column);
    if (!stood) return tl::make_unexpected(stood.error());
    const OptionalText now = keptSuggestionText(suggestion);
    if (auto done = put(connection, shot.value, column, now, **stood); !done) return done;
    const auto kept = keep(connection, shot.value, column, **stood, now, who, when, latest);
    if (!kept) return tl::make_unexpected(kept.error());
    return {};
  });
}

Result<void> Record::together(const std::function<Result<void>()>& work) {
  return impl_->connection.transaction(work);
}

Result<std::vector<ValueCorrection>> Record::correctionsIn(FrameId frame) {
  return correctionsWhere(impl_->connection,
                          QStringLiteral("cause_id IS NULL AND entity_id IN (SELECT id FROM shots WHERE frame_id = ?)"),
                          frame.value);
}

Result<std::vector<ValueCorrection>> correctionsOf(Connection& connection, ShotId shot) {
  return correctionsWhere(connection, QStringLiteral("entity_id = ?"), shot.value);
}

}  // namespace ferrule
