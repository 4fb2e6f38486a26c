// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <memory>

#include "app/review/review_source.h"

namespace ferrule {

class RecordReader;

/// Reads a record on a thread of its own, so that the window never waits for the disk. Answers come as signals on the
/// caller's thread, in the order of the requests.
class RecordService : public QObject {
  Q_OBJECT
 public:
  explicit RecordService(ReviewSourceOpener opener, QObject* parent = nullptr);
  ~RecordService() override;

  void open(const QString& path);
  void readSession(const SessionSummary& session);
  void readShot(ShotId shot);

 signals:
  void opened(const QString& path, const std::vector<ferrule::SessionSummary>& sessions);
  void sessionRead(std::shared_ptr<const ferrule::SessionContent> content);
  void shotRead(std::shared_ptr<const ferrule::StoredShot> shot);
  /// opening: the record itself could not be opened.
  void failed(const ferrule::Error& error, bool opening);

 private:
  QThread thread_;
  RecordReader* reader_;
};

}  // namespace ferrule
