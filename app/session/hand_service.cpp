// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/hand_service.h"

#include <QDir>
#include <QFileInfo>
#include <utility>

namespace ferrule {

/// Lives on the service's thread and owns the record there.
class HandKeeper : public QObject {
  Q_OBJECT
 public:
  void open(const QString& path) {
    QDir().mkpath(QFileInfo(path).absolutePath());
    auto record = Record::open(path.toStdString());
    if (!record) {
      emit failed(record.error());
      return;
    }
    record_.emplace(std::move(*record));
    auto hand = resumeHandSession(*record_);
    if (!hand) {
      emit failed(hand.error());
      return;
    }
    emit opened(path, *hand ? std::make_shared<const KeptHand>(std::move(**hand)) : nullptr);
  }

  void begin(const HandTerms& terms, SessionKind kind, UtcMilliseconds now) {
    if (record_) tell(beginHandSession(*record_, terms, kind, now));
  }
  void nextFrame(const KeptHand& hand) {
    if (record_) tell(nextHandFrame(*record_, hand));
  }
  void keep(const KeptHand& hand) {
    if (!record_) return;
    if (auto done = keepHandSession(*record_, hand); !done) emit failed(done.error());
  }
  void end(const KeptHand& hand) {
    if (!record_) return;
    if (auto done = endHandSession(*record_, hand); !done) {
      emit failed(done.error());
    } else {
      emit ended();
    }
  }

 signals:
  void opened(const QString& record, std::shared_ptr<const ferrule::KeptHand> hand);
  void begun(std::shared_ptr<const ferrule::KeptHand> hand);
  void ended();
  void failed(const ferrule::Error& error);

 private:
  void tell(Result<KeptHand> hand) {
    if (!hand) {
      emit failed(hand.error());
    } else {
      emit begun(std::make_shared<const KeptHand>(std::move(*hand)));
    }
  }

  std::optional<Record> record_;
};

HandService::HandService(QObject* parent) : QObject(parent), keeper_(new HandKeeper) {
  thread_.setObjectName(QStringLiteral("hand keeper"));
  keeper_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, keeper_, &QObject::deleteLater);
  connect(keeper_, &HandKeeper::opened, this, &HandService::opened, Qt::QueuedConnection);
  connect(keeper_, &HandKeeper::begun, this, &HandService::begun, Qt::QueuedConnection);
  connect(keeper_, &HandKeeper::ended, this, &HandService::ended, Qt::QueuedConnection);
  connect(keeper_, &HandKeeper::failed, this, &HandService::failed, Qt::QueuedConnection);
  thread_.start();
}

HandService::~HandService() {
  // Behind all that waits in the queue.
  QMetaObject::invokeMethod(
      keeper_, [thread = &thread_] { thread->quit(); }, Qt::QueuedConnection);
  thread_.wait();
}

void HandService::open(const QString& record) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, record] { keeper->open(record); }, Qt::QueuedConnection);
}

void HandService::begin(const HandTerms& terms, SessionKind kind, UtcMilliseconds now) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, terms, kind, now] { keeper->begin(terms, kind, now); }, Qt::QueuedConnection);
}

void HandService::keep(const KeptHand& hand) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, hand] { keeper->keep(hand); }, Qt::QueuedConnection);
}

void HandService::nextFrame(const KeptHand& hand) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, hand] { keeper->nextFrame(hand); }, Qt::QueuedConnection);
}

void HandService::end(const KeptHand& hand) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, hand] { keeper->end(hand); }, Qt::QueuedConnection);
}

}  // namespace ferrule

#include "hand_service.moc"
