// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/record.h"

#include <QCoreApplication>
#include <QThread>
#include <filesystem>

#include "core/base/contract.h"
#include "core/record/migrate.h"
#include "core/record/owner_file.h"
#include "core/record/record_impl.h"

namespace ferrule {

namespace {

Result<void> setUp(Connection& connection, const RecordOptions& options) {
  // Outside any transaction, since inside one it does nothing.
  if (auto done = connection.run(QStringLiteral("PRAGMA foreign_keys = ON")); !done) return done;
  // In WAL mode FULL syncs the log at every commit: a committed shot survives loss of power.
  if (auto done = connection.run(QStringLiteral("PRAGMA synchronous = FULL")); !done) return done;
  if (options.mostPages > 0) {
    const auto limited = connection.rows(QStringLiteral("PRAGMA max_page_count = %1").arg(options.mostPages));
    if (!limited) return tl::make_unexpected(limited.error());
  }
  return {};
}

/// The journal mode is kept in the file. Changing it needs the file alone for a moment, and the engine does not wait
/// for that by itself.
Result<void> useWriteAheadLog(Connection& connection, int patience_ms) {
  constexpr int kPause_ms = 10;
  for (int waited_ms = 0;; waited_ms += kPause_ms) {
    const auto mode = connection.row(QStringLiteral("PRAGMA journal_mode = WAL"));
    if (mode && *mode && textOf((**mode)[0]) == "wal") return {};
    const Error error =
        mode ? Error{ErrorCode::RecordBroken, connection.path(), "no write-ahead log here (a network drive?)", {}}
             : mode.error();
    if (error.code != ErrorCode::RecordLocked || waited_ms >= patience_ms) return tl::make_unexpected(error);
    QThread::msleep(kPause_ms);
  }
}

Result<Connection> openForWriting(const std::string& path, const RecordOptions& options) {
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored)) return failure(ErrorCode::FileNotWritable, path, "a folder");
  if (auto made = makeOwnerFile(path); !made) return tl::make_unexpected(made.error());
  if (!mayWrite(path)) return failure(ErrorCode::RecordReadOnly, path);
  auto connection = Connection::open(path, {.busyTimeout_ms = options.busyTimeout_ms});
  if (!connection) return connection;
  if (auto done = setUp(*connection, options); !done) return tl::make_unexpected(done.error());
  // Before anything is written: a file of another kind stays untouched.
  const auto version = recordVersion(*connection);
  if (!version) return tl::make_unexpected(version.error());
  if (auto done = useWriteAheadLog(*connection, options.busyTimeout_ms); !done) {
    return tl::make_unexpected(done.error());
  }
  if (auto done = migrate(*connection); !done) return tl::make_unexpected(done.error());
  return connection;
}

Result<Connection> openForReading(const std::string& path, const RecordOptions& options) {
  std::error_code ignored;
  if (!std::filesystem::exists(path, ignored)) return failure(ErrorCode::FileMissing, path);
  auto connection = Connection::open(
      path, {.readOnly = true, .immutable = lastsUnchanged(path), .busyTimeout_ms = options.busyTimeout_ms});
  if (!connection) return connection;
  if (auto done = setUp(*connection, options); !done) return tl::make_unexpected(done.error());
  const auto version = recordVersion(*connection);
  if (!version) return tl::make_unexpected(version.error());
  if (*version == kRecordVersion) return connection;
  // Of an earlier version: brought forward like any other opening would, where that may be.
  connection = failure(ErrorCode::RecordReadOnly, path, "made by an earlier version, and may not be brought forward");
  if (!mayWrite(path)) return connection;
  if (auto forward = openForWriting(path, options); !forward) return forward;
  return openForReading(path, options);
}

}  // namespace

Record::Record(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Record::~Record() = default;
Record::Record(Record&&) noexcept = default;
Record& Record::operator=(Record&&) noexcept = default;

Result<Record> Record::open(const std::string& path, const RecordOptions& options) {
  // Without it Qt cannot find its database drivers.
  FERRULE_REQUIRE(QCoreApplication::instance() != nullptr);
  auto connection =
      options.mode == RecordMode::ReadOnly ? openForReading(path, options) : openForWriting(path, options);
  if (!connection) return tl::make_unexpected(connection.error());
  return Record(std::make_unique<Impl>(std::move(*connection)));
}

const std::string& Record::path() const {
  return impl_->connection.path();
}

Result<void> Record::check() {
  const auto row = impl_->connection.row(QStringLiteral("PRAGMA quick_check(1)"));
  if (!row) return tl::make_unexpected(row.error());
  const std::string answer = *row ? textOf((**row)[0]) : std::string();
  if (answer != "ok") return failure(ErrorCode::RecordBroken, path(), answer);
  return {};
}

}  // namespace ferrule
