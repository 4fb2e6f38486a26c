// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/record_service.h"

#include <utility>

namespace ferrule {

/// Lives on the service's thread and owns the source there.
class RecordReader : public QObject {
  Q_OBJECT
 public:
  explicit RecordReader(ReviewSourceOpener opener) : opener_(std::move(opener)) {}

  void open(const QString& path) {
    auto source = opener_(path.toStdString());
    if (!source) {
      emit failed(source.error(), true);
      return;
    }
    auto sessions = (*source)->sessions();
    if (!sessions) {
      emit failed(sessions.error(), true);
      return;
    }
    source_ = std::move(*source);
    emit opened(path, *sessions);
  }

  void readSession(const SessionSummary& session) {
    if (!source_) return;
    auto content = source_->content(session);
    if (!content) {
      emit failed(content.error(), false);
      return;
    }
    emit sessionRead(std::make_shared<const SessionContent>(std::move(*content)));
  }

  void readShot(ShotId id) {
    if (!source_) return;
    auto shot = source_->shot(id);
    if (!shot) {
      emit failed(shot.error(), false);
      return;
    }
    emit shotRead(std::make_shared<const StoredShot>(std::move(*shot)));
  }

 signals:
  void opened(const QString& path, const std::vector<ferrule::SessionSummary>& sessions);
  void sessionRead(std::shared_ptr<const ferrule::SessionContent> content);
  void shotRead(std::shared_ptr<const ferrule::StoredShot> shot);
  void failed(const ferrule::Error& error, bool opening);

 private:
  ReviewSourceOpener opener_;
  std::unique_ptr<ReviewSource> source_;
};

RecordService::RecordService(ReviewSourceOpener opener, QObject* parent)
    : QObject(parent), reader_(new RecordReader(std::move(opener))) {
  thread_.setObjectName(QStringLiteral("record reader"));
  reader_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, reader_, &QObject::deleteLater);
  connect(reader_, &RecordReader::opened, this, &RecordService::opened, Qt::QueuedConnection);
  connect(reader_, &RecordReader::sessionRead, this, &RecordService::sessionRead, Qt::QueuedConnection);
  connect(reader_, &RecordReader::shotRead, this, &RecordService::shotRead, Qt::QueuedConnection);
  connect(reader_, &RecordReader::failed, this, &RecordService::failed, Qt::QueuedConnection);
  thread_.start();
}

RecordService::~RecordService() {
  thread_.quit();
  thread_.wait();
}

void RecordService::open(const QString& path) {
  QMetaObject::invokeMethod(
      reader_, [reader = reader_, path] { reader->open(path); }, Qt::QueuedConnection);
}

void RecordService::readSession(const SessionSummary& session) {
  QMetaObject::invokeMethod(
      reader_, [reader = reader_, session] { reader->readSession(session); }, Qt::QueuedConnection);
}

void RecordService::readShot(ShotId shot) {
  QMetaObject::invokeMethod(
      reader_, [reader = reader_, shot] { reader->readShot(shot); }, Qt::QueuedConnection);
}

}  // namespace ferrule

#include "record_service.moc"
