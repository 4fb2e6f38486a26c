// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/merge_record.h"

#include <QTemporaryDir>
#include <filesystem>

#include "core/record/merge_rows.h"
#include "core/record/migrate.h"
#include "core/record/owner_file.h"
#include "core/record/record.h"

namespace ferrule {

namespace {

/// A copy of the other record in our schema's version; the other one is not touched.
Result<std::string> copied(const std::string& other, const QTemporaryDir& folder) {
  std::error_code ignored;
  if (!std::filesystem::exists(other, ignored)) return failure(ErrorCode::FileMissing, other);
  const std::string copy = folder.filePath(QStringLiteral("other.sqlite")).toStdString();
  {
    auto connection = Connection::open(other, {.readOnly = true, .immutable = lastsUnchanged(other)});
    if (!connection) return tl::make_unexpected(connection.error());
    const auto version = recordVersion(*connection);
    if (!version) return tl::make_unexpected(version.error());
    auto done = connection->run(QStringLiteral("VACUUM INTO ?"), {bound(std::string_view(copy))});
    if (!done) return tl::make_unexpected(done.error());
  }
  const auto forward = Record::open(copy);
  if (!forward) return tl::make_unexpected(forward.error());
  return copy;
}

Result<MergeReport> mergeAttached(Connection& connection) {
  return connection.transaction([&]() -> Result<MergeReport> {
    MergeReport report;
    if (auto done = mergePeople(connection, report); !done) return tl::make_unexpected(done.error());
    if (auto done = mergeThings(connection); !done) return tl::make_unexpected(done.error());
    if (auto done = mergeFrames(connection, report); !done) return tl::make_unexpected(done.error());
    if (auto done = mergeShots(connection, report); !done) return tl::make_unexpected(done.error());
    if (auto done = mergeDrills(connection, report); !done) return tl::make_unexpected(done.error());
    return report;
  });
}

}  // namespace

Result<MergeReport> mergeRecord(const std::string& path, const std::string& other) {
  std::error_code ignored;
  if (std::filesystem::equivalent(path, other, ignored)) return MergeReport{};
  const QTemporaryDir folder;
  if (!folder.isValid()) return failure(ErrorCode::FileNotWritable, folder.path().toStdString());
  const auto copy = copied(other, folder);
  if (!copy) return tl::make_unexpected(copy.error());
  // Makes it, or brings it forward.
  if (const auto ours = Record::open(path); !ours) return tl::make_unexpected(ours.error());
  auto connection = Connection::open(path, {});
  if (!connection) return tl::make_unexpected(connection.error());
  auto attached = runAll(*connection, {QStringLiteral("PRAGMA foreign_keys = ON")});
  if (attached) attached = connection->run(QStringLiteral("ATTACH ? AS other"), {bound(std::string_view(*copy))});
  if (!attached) return tl::make_unexpected(attached.error());
  return mergeAttached(*connection);
}

}  // namespace ferrule
