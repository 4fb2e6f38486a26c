// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/error.h"

class QSqlError;

namespace ferrule {

/// Translates the engine's error. Never called for success.
[[nodiscard]] Error recordError(const QSqlError& error, const std::string& path);

/// What can be bound to a statement; absent values are stored as NULL.
[[nodiscard]] QVariant bound(std::string_view text);
[[nodiscard]] QVariant bound(const std::optional<std::string>& text);
[[nodiscard]] QVariant bound(std::int64_t number);
[[nodiscard]] QVariant bound(int number);
[[nodiscard]] QVariant bound(double number);  ///< must be finite
[[nodiscard]] QVariant bound(bool truth);
[[nodiscard]] inline QVariant bound(std::nullopt_t) {
  return {};
}
template <class T>
[[nodiscard]] QVariant bound(const std::optional<T>& value) {
  return value ? bound(*value) : QVariant();
}

/// One row of an answer.
using Row = std::vector<QVariant>;

[[nodiscard]] std::string textOf(const QVariant& value);
[[nodiscard]] std::optional<std::string> optionalTextOf(const QVariant& value);
[[nodiscard]] std::optional<std::int64_t> optionalIntegerOf(const QVariant& value);
[[nodiscard]] std::optional<double> optionalRealOf(const QVariant& value);

/// One SQLite connection. Belongs to the thread that made it; using it from another is our own bug.
class Connection {
 public:
  struct Settings {
    bool readOnly = false;
    bool immutable = false;  ///< the file cannot change while it is open (a folder without write permission)
    int busyTimeout_ms = 5000;
  };

  /// Errors: as the engine has them; a file of another kind shows at the first statement only.
  [[nodiscard]] static Result<Connection> open(const std::string& path, const Settings& settings);
  ~Connection();
  Connection(Connection&& other) noexcept;
  Connection& operator=(Connection&& other) noexcept;

  [[nodiscard]] const std::string& path() const { return path_; }

  /// Runs one statement. Statements are prepared once and kept.
  [[nodiscard]] Result<void> run(const QString& sql, const std::vector<QVariant>& values = {});
  /// Runs one INSERT; the new row's id.
  [[nodiscard]] Result<std::int64_t> insert(const QString& sql, const std::vector<QVariant>& values);
  /// All rows of one SELECT or PRAGMA.
  [[nodiscard]] Result<std::vector<Row>> rows(const QString& sql, const std::vector<QVariant>& values = {});
  /// The first row, or nothing.
  [[nodiscard]] Result<std::optional<Row>> row(const QString& sql, const std::vector<QVariant>& values = {});
  /// Rows changed by the last statement.
  [[nodiscard]] int changedRows() const { return changedRows_; }

  /// Runs work inside BEGIN IMMEDIATE ... COMMIT; rolled back when work or the commit fails. work: () -> Result<T>.
  /// IMMEDIATE takes the write lock at the start, where waiting for it works: a transaction that read first and wants
  /// to write later is refused at once when another program wrote in between. Inside another one it is a part of that:
  /// what it did is rolled back alone when it fails, and with the other one when that does.
  template <class Work>
  [[nodiscard]] auto transaction(Work&& work) -> decltype(work()) {
    if (auto begun = begin(); !begun) return tl::make_unexpected(begun.error());
    ++depth_;
    auto result = work();
    --depth_;
    if (!result) {
      rollBack();
      return result;
    }
    if (auto committed = commit(); !committed) {
      rollBack();
      return tl::make_unexpected(committed.error());
    }
    return result;
  }

 private:
  Connection(QSqlDatabase database, std::string path);
  [[nodiscard]] Result<QSqlQuery*> execute(const QString& sql, const std::vector<QVariant>& values);
  [[nodiscard]] Result<void> begin();
  [[nodiscard]] Result<void> commit();
  void rollBack();
  void close();

  QSqlDatabase database_;
  std::string path_;
  std::map<QString, QSqlQuery> statements_;
  const void* thread_ = nullptr;
  int changedRows_ = 0;
  int depth_ = 0;  ///< of the transactions that are open
};

}  // namespace ferrule
