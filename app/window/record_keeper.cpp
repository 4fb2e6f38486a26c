// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/record_keeper.h"

#include <QDir>
#include <QFileInfo>
#include <utility>

namespace ferrule {

/// Owns the record where it is used.
class RecordKeeper::Desk : public QObject {
 public:
  KeptRecord record;
};

void KeptRecord::setPath(const QString& path) {
  record_.reset();
  path_ = path;
}

Result<Record*> KeptRecord::toWrite(WhenMissing missing) {
  return open(missing, false);
}

Result<Record*> KeptRecord::toRead(WhenMissing missing) {
  return open(missing, true);
}

Result<Record*> KeptRecord::open(WhenMissing missing, bool readingWillDo) {
  if (record_) return &*record_;
  const QFileInfo file(path_);
  if (missing == WhenMissing::Make) {
    QDir().mkpath(file.absolutePath());
  } else if (!file.exists()) {
    return failure(ErrorCode::FileMissing, path_.toStdString());
  }
  // For writing first, which also brings an old record forward.
  auto record = Record::open(path_.toStdString());
  if (!record && readingWillDo && record.error().code == ErrorCode::RecordReadOnly)
    record = Record::open(path_.toStdString(), {.mode = RecordMode::ReadOnly});
  if (!record) return tl::make_unexpected(record.error());
  record_.emplace(std::move(*record));
  return &*record_;
}

RecordKeeper::RecordKeeper(const QString& thread) : desk_(new Desk) {
  thread_.setObjectName(thread);
  desk_->moveToThread(&thread_);
  QObject::connect(&thread_, &QThread::finished, desk_, &QObject::deleteLater);
  thread_.start();
}

RecordKeeper::~RecordKeeper() {
  // Behind all that waits in the queue.
  QMetaObject::invokeMethod(
      desk_, [thread = &thread_] { thread->quit(); }, Qt::QueuedConnection);
  thread_.wait();
}

void RecordKeeper::ask(Work work) {
  QMetaObject::invokeMethod(
      desk_, [desk = desk_, work = std::move(work)] { work(desk->record); }, Qt::QueuedConnection);
}

}  // namespace ferrule
