// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <functional>
#include <optional>

#include "core/record/record.h"

namespace ferrule {

enum class WhenMissing {
  Make,    ///< the file, and its folder
  Refuse,  ///< FileMissing
};

/// A record on a keeper's thread, opened when it is first needed and open from then on.
class KeptRecord {
 public:
  /// From now on work is about this record.
  void setPath(const QString& path);
  [[nodiscard]] const QString& path() const { return path_; }
  /// Never null. Errors: those of Record::open, each time it is tried.
  [[nodiscard]] Result<Record*> toWrite(WhenMissing missing);
  /// The same for one that may only be read, where it cannot be written.
  [[nodiscard]] Result<Record*> toRead(WhenMissing missing);

 private:
  [[nodiscard]] Result<Record*> open(WhenMissing missing, bool readingWillDo);

  QString path_;
  std::optional<Record> record_;
};

/// Keeps a record open on a thread of its own, so that the window never waits for the disk. Work is carried out in the
/// order in which it was asked for, and all of it before the keeper is gone: whoever owns one declares it last. Signals
/// that work emits reach objects of other threads through their queues.
class RecordKeeper {
 public:
  using Work = std::function<void(KeptRecord&)>;

  /// thread: its name, for whoever looks at the program from outside.
  explicit RecordKeeper(const QString& thread);
  ~RecordKeeper();
  RecordKeeper(const RecordKeeper&) = delete;
  RecordKeeper& operator=(const RecordKeeper&) = delete;

  /// work copies what it needs and runs on the keeper's thread.
  void ask(Work work);

 private:
  class Desk;
  QThread thread_;
  Desk* desk_;  ///< lives on the thread
};

}  // namespace ferrule
