// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/correction_service.h"

#include <QFileInfo>
#include <utility>

namespace ferrule {

/// Lives on the service's thread and owns the record there.
class CorrectionKeeper : public QObject {
  Q_OBJECT
 public:
  void setRecord(const QString& path) {
    path_ = path;
    record_.reset();
  }

  void say(ShotId shot, const ShotSaying& saying, const std::string& who, UtcMilliseconds when) {
    if (!open()) return;
    const auto report = sayOfShot(*record_, shot, saying, who, when);
    if (!report) {
      emit failed(report.error());
    } else if (report->why) {
      emit refused(*report->why);
    } else {
      emit said(*report->correction, report->made);
    }
  }

  void takeBack(FrameId frame, CorrectionId correction) {
    if (!open()) return;
    const auto report = takeBackCorrection(*record_, frame, correction);
    if (!report) {
      emit failed(report.error());
    } else if (report->why) {
      emit refused(*report->why);
    } else {
      emit takenBack(*report);
    }
  }

  void remark(ShotId shot, const Remark& remark, bool back) {
    if (!open()) return;
    using Kind = Remark::Kind;
    NoteId stands;
    Result<void> done;
    const bool note = remark.kind == Kind::WriteNote || remark.kind == Kind::TakeNote;
    const bool put = (remark.kind == Kind::WriteNote || remark.kind == Kind::GiveTag) != back;
    if (note && put) {
      const auto written = record_->addNote(shot, remark.note.text, remark.note.who, remark.note.when);
      if (written) stands = *written;
      if (!written) done = tl::make_unexpected(written.error());
    } else if (note) {
      done = record_->removeNote(remark.note.id);
    } else {
      done = put ? record_->addTag(shot, remark.tag) : record_->removeTag(shot, remark.tag);
    }
    if (!done) {
      emit failed(done.error());
    } else {
      emit remarked(stands);
    }
  }

 signals:
  void said(ferrule::CorrectionId correction, ferrule::ShotId made);
  void takenBack(const ferrule::TakeBackReport& report);
  void remarked(ferrule::NoteId note);
  void refused(ferrule::NotSaid why);
  void failed(const ferrule::Error& error);

 private:
  bool open() {
    if (record_) return true;
    // Opening for writing makes a file where there is none.
    if (!QFileInfo::exists(path_)) {
      emit failed(Error{ErrorCode::FileMissing, path_.toStdString(), {}, {}});
      return false;
    }
    auto record = Record::open(path_.toStdString());
    if (!record) {
      emit failed(record.error());
      return false;
    }
    record_.emplace(std::move(*record));
    return true;
  }

  QString path_;
  std::optional<Record> record_;
};

CorrectionService::CorrectionService(QObject* parent) : QObject(parent), keeper_(new CorrectionKeeper) {
  thread_.setObjectName(QStringLiteral("correction keeper"));
  keeper_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, keeper_, &QObject::deleteLater);
  connect(keeper_, &CorrectionKeeper::said, this, &CorrectionService::said, Qt::QueuedConnection);
  connect(keeper_, &CorrectionKeeper::takenBack, this, &CorrectionService::takenBack, Qt::QueuedConnection);
  connect(keeper_, &CorrectionKeeper::remarked, this, &CorrectionService::remarked, Qt::QueuedConnection);
  connect(keeper_, &CorrectionKeeper::refused, this, &CorrectionService::refused, Qt::QueuedConnection);
  connect(keeper_, &CorrectionKeeper::failed, this, &CorrectionService::failed, Qt::QueuedConnection);
  thread_.start();
}

CorrectionService::~CorrectionService() {
  // Behind all that waits in the queue.
  QMetaObject::invokeMethod(
      keeper_, [thread = &thread_] { thread->quit(); }, Qt::QueuedConnection);
  thread_.wait();
}

void CorrectionService::setRecord(const QString& path) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, path] { keeper->setRecord(path); }, Qt::QueuedConnection);
}

void CorrectionService::say(ShotId shot, const ShotSaying& saying, const QString& who, UtcMilliseconds when) {
  QMetaObject::invokeMethod(
      keeper_,
      [keeper = keeper_, shot, saying, name = who.toStdString(), when] { keeper->say(shot, saying, name, when); },
      Qt::QueuedConnection);
}

void CorrectionService::takeBack(FrameId frame, CorrectionId correction) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, frame, correction] { keeper->takeBack(frame, correction); }, Qt::QueuedConnection);
}

void CorrectionService::remark(ShotId shot, const Remark& remark, bool back) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, shot, remark, back] { keeper->remark(shot, remark, back); }, Qt::QueuedConnection);
}

}  // namespace ferrule

#include "correction_service.moc"
