// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/migrate.h"

#include <filesystem>

#include "core/record/owner_file.h"
#include "core/record/record.h"
#include "core/record/schema.h"

namespace ferrule {

namespace {

Result<int> pragmaNumber(Connection& connection, const QString& sql) {
  const auto row = connection.row(sql);
  if (!row) return tl::make_unexpected(row.error());
  return *row ? (**row)[0].toInt() : 0;
}

Result<void> checkWhole(Connection& connection) {
  const auto row = connection.row(QStringLiteral("PRAGMA quick_check(1)"));
  if (!row) return tl::make_unexpected(row.error());
  const std::string answer = *row ? textOf((**row)[0]) : std::string();
  if (answer != "ok") return failure(ErrorCode::RecordBroken, connection.path(), answer);
  return {};
}

/// A whole, compact copy of what is committed, readable by its owner only; the copy's path. An older copy stays.
Result<std::string> backUp(Connection& connection, int version) {
  const std::string wanted = backupPath(connection.path(), version);
  std::string target = wanted;
  std::error_code ignored;
  for (int copy = 2; std::filesystem::exists(target, ignored); ++copy)
    target = wanted + '.' + std::to_string(copy);
  const std::string beside = target + ".part";
  std::filesystem::remove(beside, ignored);
  if (auto made = makeOwnerFile(beside); !made) return tl::make_unexpected(made.error());
  // VACUUM INTO takes an empty file that is there, and with it the file's permissions.
  if (auto copied = connection.run(QStringLiteral("VACUUM INTO ?"), {bound(std::string_view(beside))}); !copied) {
    std::filesystem::remove(beside, ignored);
    return tl::make_unexpected(copied.error());
  }
  std::error_code error;
  std::filesystem::rename(beside, target, error);
  if (error) return failure(ErrorCode::FileNotWritable, target, error.message());
  return target;
}

Result<void> applyStep(Connection& connection, const Migration& step) {
  return connection.transaction([&]() -> Result<void> {
    // Another program may have brought the record forward while this one waited for the lock.
    const auto version = pragmaNumber(connection, QStringLiteral("PRAGMA user_version"));
    if (!version) return tl::make_unexpected(version.error());
    if (*version >= step.version) return {};
    for (const char* statement : step.statements) {
      if (auto done = connection.run(QString::fromUtf8(statement)); !done) return done;
    }
    if (auto done = connection.run(QStringLiteral("PRAGMA application_id = %1").arg(kRecordApplicationId)); !done) {
      return done;
    }
    return connection.run(QStringLiteral("PRAGMA user_version = %1").arg(step.version));
  });
}

}  // namespace

std::string backupPath(const std::string& path, int version) {
  return path + ".version-" + std::to_string(version) + ".backup";
}

Result<int> recordVersion(Connection& connection) {
  // The first statement that touches the file: a file of another kind shows here.
  const auto tables = pragmaNumber(connection, QStringLiteral("SELECT count(*) FROM sqlite_schema"));
  if (!tables) return tables;
  const auto application = pragmaNumber(connection, QStringLiteral("PRAGMA application_id"));
  if (!application) return application;
  const auto version = pragmaNumber(connection, QStringLiteral("PRAGMA user_version"));
  if (!version) return version;
  if (*application != kRecordApplicationId && (*tables > 0 || *version != 0)) {
    return failure(ErrorCode::RecordNotADatabase, connection.path(), "another program's database");
  }
  if (*version > kRecordVersion) {
    return failure(ErrorCode::RecordTooNew, connection.path(), {},
                   {static_cast<double>(*version), static_cast<double>(kRecordVersion)});
  }
  return version;
}

Result<void> migrate(Connection& connection) {
  const auto version = recordVersion(connection);
  if (!version) return tl::make_unexpected(version.error());
  if (*version == kRecordVersion) return {};
  std::string backup;
  if (*version > 0) {
    if (auto whole = checkWhole(connection); !whole) return whole;
    const auto copied = backUp(connection, *version);
    if (!copied) return tl::make_unexpected(copied.error());
    backup = *copied;
  }
  int reached = *version;
  for (const Migration& step : migrations()) {
    if (step.version <= reached) continue;
    if (auto done = applyStep(connection, step); !done) {
      // The record is still what the copy holds: do not pile up a copy for every try.
      std::error_code ignored;
      if (reached == *version && !backup.empty()) std::filesystem::remove(backup, ignored);
      return done;
    }
    reached = step.version;
  }
  return {};
}

}  // namespace ferrule
