// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/connection.h"

#include <QSqlError>
#include <QSqlRecord>
#include <QThread>
#include <QUrl>
#include <atomic>
#include <cmath>
#include <utility>

#include "core/base/contract.h"

namespace ferrule {

namespace {

/// Primary result codes. Source: SQLite documentation, "Result and Error Codes"; the low byte of an extended code.
enum SqliteCode {
  kBusy = 5,
  kLocked = 6,
  kReadOnly = 8,
  kFull = 13,
  kCannotOpen = 14,
  kNotADatabase = 26,
};

QString freshConnectionName() {
  static std::atomic<unsigned long long> count{0};
  return QStringLiteral("ferrule-record-%1").arg(++count);
}

}  // namespace

Error recordError(const QSqlError& error, const std::string& path) {
  const std::string words = error.databaseText().toStdString();
  switch (error.nativeErrorCode().toInt() & 0xff) {
    case kBusy:
    case kLocked:
      return {ErrorCode::RecordLocked, path, words, {}};
    case kReadOnly:
      return {ErrorCode::RecordReadOnly, path, words, {}};
    case kFull:
      return {ErrorCode::RecordFull, path, words, {}};
    case kCannotOpen:
      return {ErrorCode::FileUnreadable, path, words, {}};
    case kNotADatabase:
      return {ErrorCode::RecordNotADatabase, path, words, {}};
    default:
      return {ErrorCode::RecordBroken, path, words.empty() ? error.text().toStdString() : words, {}};
  }
}

QVariant bound(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
QVariant bound(const std::optional<std::string>& text) {
  return text ? bound(std::string_view(*text)) : QVariant();
}
QVariant bound(std::int64_t number) {
  return QVariant::fromValue<qlonglong>(number);
}
QVariant bound(int number) {
  return QVariant::fromValue<qlonglong>(number);
}
QVariant bound(double number) {
  FERRULE_REQUIRE(std::isfinite(number));
  return number;
}
QVariant bound(bool truth) {
  return QVariant::fromValue<qlonglong>(truth ? 1 : 0);
}

std::string textOf(const QVariant& value) {
  return value.toString().toStdString();
}
std::optional<std::string> optionalTextOf(const QVariant& value) {
  if (value.isNull()) return std::nullopt;
  return textOf(value);
}
std::optional<std::int64_t> optionalIntegerOf(const QVariant& value) {
  if (value.isNull()) return std::nullopt;
  return value.toLongLong();
}
std::optional<double> optionalRealOf(const QVariant& value) {
  if (value.isNull()) return std::nullopt;
  return value.toDouble();
}

Connection::Connection(QSqlDatabase database, std::string path)
    : database_(std::move(database)), path_(std::move(path)), thread_(QThread::currentThreadId()) {}

Connection::Connection(Connection&& other) noexcept
    : database_(std::exchange(other.database_, QSqlDatabase())),
      path_(std::move(other.path_)),
      statements_(std::move(other.statements_)),
      thread_(other.thread_),
      changedRows_(other.changedRows_),
      depth_(other.depth_) {
  other.statements_.clear();
}

Connection& Connection::operator=(Connection&& other) noexcept {
  if (this == &other) return *this;
  close();
  database_ = std::exchange(other.database_, QSqlDatabase());
  path_ = std::move(other.path_);
  statements_ = std::move(other.statements_);
  other.statements_.clear();
  thread_ = other.thread_;
  changedRows_ = other.changedRows_;
  depth_ = other.depth_;
  return *this;
}

Connection::~Connection() {
  close();
}

void Connection::close() {
  if (!database_.isValid()) return;
  statements_.clear();
  const QString name = database_.connectionName();
  database_.close();
  database_ = QSqlDatabase();
  QSqlDatabase::removeDatabase(name);
}

Result<Connection> Connection::open(const std::string& path, const Settings& settings) {
  QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), freshConnectionName());
  QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(settings.busyTimeout_ms);
  if (settings.readOnly) options += QStringLiteral(";QSQLITE_OPEN_READONLY");
  QString name = QString::fromStdString(path);
  if (settings.immutable) {
    options += QStringLiteral(";QSQLITE_OPEN_URI");
    name = QStringLiteral("file:%1?immutable=1").arg(QString::fromLatin1(QUrl::toPercentEncoding(name, "/")));
  }
  database.setConnectOptions(options);
  database.setDatabaseName(name);
  const bool opened = database.open();
  const QSqlError error = database.lastError();
  Connection connection(std::move(database), path);
  if (!opened) return tl::make_unexpected(recordError(error, path));
  return connection;
}

Result<QSqlQuery*> Connection::execute(const QString& sql, const std::vector<QVariant>& values) {
  FERRULE_REQUIRE(thread_ == QThread::currentThreadId());
  auto found = statements_.find(sql);
  if (found == statements_.end()) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.prepare(sql)) return tl::make_unexpected(recordError(query.lastError(), path_));
    found = statements_.emplace(sql, std::move(query)).first;
  }
  QSqlQuery& query = found->second;
  for (std::size_t i = 0; i < values.size(); ++i)
    query.bindValue(static_cast<int>(i), values[i]);
  if (!query.exec()) {
    const Error error = recordError(query.lastError(), path_);
    query.finish();
    return tl::make_unexpected(error);
  }
  return &query;
}

Result<void> Connection::run(const QString& sql, const std::vector<QVariant>& values) {
  const auto query = execute(sql, values);
  if (!query) return tl::make_unexpected(query.error());
  changedRows_ = (*query)->numRowsAffected();
  (*query)->finish();
  return {};
}

Result<std::int64_t> Connection::insert(const QString& sql, const std::vector<QVariant>& values) {
  const auto query = execute(sql, values);
  if (!query) return tl::make_unexpected(query.error());
  changedRows_ = (*query)->numRowsAffected();
  const std::int64_t id = (*query)->lastInsertId().toLongLong();
  (*query)->finish();
  return id;
}

Result<std::vector<Row>> Connection::rows(const QString& sql, const std::vector<QVariant>& values) {
  const auto query = execute(sql, values);
  if (!query) return tl::make_unexpected(query.error());
  std::vector<Row> all;
  const int columns = (*query)->record().count();
  while ((*query)->next()) {
    Row& row = all.emplace_back();
    row.reserve(static_cast<std::size_t>(columns));
    for (int column = 0; column < columns; ++column)
      row.push_back((*query)->value(column));
  }
  // next() stops at an error as it does at the end.
  const QSqlError error = (*query)->lastError();
  (*query)->finish();
  if (error.isValid()) return tl::make_unexpected(recordError(error, path_));
  return all;
}

Result<std::optional<Row>> Connection::row(const QString& sql, const std::vector<QVariant>& values) {
  auto all = rows(sql, values);
  if (!all) return tl::make_unexpected(all.error());
  if (all->empty()) return std::optional<Row>();
  return std::optional<Row>(std::move(all->front()));
}

Result<void> Connection::begin() {
  return run(depth_ == 0 ? QStringLiteral("BEGIN IMMEDIATE") : QStringLiteral("SAVEPOINT part"));
}

Result<void> Connection::commit() {
  return run(depth_ == 0 ? QStringLiteral("COMMIT") : QStringLiteral("RELEASE part"));
}

void Connection::rollBack() {
  // After a full disk the engine has rolled back on its own and refuses; either way nothing is left open.
  QSqlQuery query(database_);
  if (depth_ == 0) {
    query.exec(QStringLiteral("ROLLBACK"));
    return;
  }
  query.exec(QStringLiteral("ROLLBACK TO part"));
  query.exec(QStringLiteral("RELEASE part"));
}

}  // namespace ferrule
