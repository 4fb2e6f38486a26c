// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/people_service.h"

#include <QDir>
#include <QFileInfo>
#include <optional>
#include <utility>

#include "app/words/error_sentence.h"

namespace ferrule {

/// Lives on the service's thread and owns the record there.
class PeopleKeeper : public QObject {
  Q_OBJECT
 public:
  void open(const QString& path) {
    record_.reset();
    path_ = path;
    looked_ = {};
    if (QFileInfo::exists(path) && !reopen()) return;
    tell();
  }

  void look(PlayerId player) {
    looked_ = player;
    tellPerson();
  }

  void edit(const PeopleService::Edit& edit, int number) {
    QDir().mkpath(QFileInfo(path_).absolutePath());
    QString refusal;
    if (!record_ && !reopen()) {
      emit edited(number, sentence_);
      return;
    }
    const auto done = edit(*record_);
    refusal = done ? *done : errorSentence(done.error());
    tell();
    emit edited(number, refusal);
  }

 signals:
  void read(const QString& record, std::shared_ptr<const std::vector<ferrule::PersonRow>> people);
  void looked(std::shared_ptr<const ferrule::Person> person);
  void edited(int number, const QString& refusal);
  void failed(const ferrule::Error& error);

 private:
  /// For writing, which also brings an old record forward; a record that may only be read is shown all the same.
  bool reopen() {
    auto record = Record::open(path_.toStdString());
    if (!record && record.error().code == ErrorCode::RecordReadOnly)
      record = Record::open(path_.toStdString(), {.mode = RecordMode::ReadOnly});
    if (!record) {
      sentence_ = errorSentence(record.error());
      emit failed(record.error());
      return false;
    }
    record_.emplace(std::move(*record));
    return true;
  }

  void tell() {
    auto all = std::make_shared<std::vector<PersonRow>>();
    if (record_) {
      auto found = people(*record_);
      if (!found) {
        emit failed(found.error());
        return;
      }
      *all = std::move(*found);
    }
    emit read(path_, all);
    tellPerson();
  }

  void tellPerson() {
    if (!record_ || !looked_) {
      emit looked(nullptr);
      return;
    }
    auto found = person(*record_, looked_);
    if (!found && found.error().code != ErrorCode::NotFound) emit failed(found.error());
    emit looked(found ? std::make_shared<const Person>(std::move(*found)) : nullptr);
  }

  QString path_;
  std::optional<Record> record_;
  QString sentence_;  ///< why the record did not open
  PlayerId looked_;
};

PeopleService::PeopleService(QObject* parent) : QObject(parent), keeper_(new PeopleKeeper) {
  thread_.setObjectName(QStringLiteral("people keeper"));
  keeper_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, keeper_, &QObject::deleteLater);
  connect(keeper_, &PeopleKeeper::read, this, &PeopleService::read, Qt::QueuedConnection);
  connect(keeper_, &PeopleKeeper::looked, this, &PeopleService::looked, Qt::QueuedConnection);
  connect(keeper_, &PeopleKeeper::edited, this, &PeopleService::edited, Qt::QueuedConnection);
  connect(keeper_, &PeopleKeeper::failed, this, &PeopleService::failed, Qt::QueuedConnection);
  thread_.start();
}

PeopleService::~PeopleService() {
  // Behind everything that was asked for.
  QMetaObject::invokeMethod(
      keeper_, [thread = &thread_] { thread->quit(); }, Qt::QueuedConnection);
  thread_.wait();
}

void PeopleService::open(const QString& record) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, record] { keeper->open(record); }, Qt::QueuedConnection);
}

void PeopleService::look(PlayerId player) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, player] { keeper->look(player); }, Qt::QueuedConnection);
}

void PeopleService::edit(Edit edit, int number) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, edit = std::move(edit), number] { keeper->edit(edit, number); },
      Qt::QueuedConnection);
}

}  // namespace ferrule

#include "people_service.moc"
