// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <vector>

#include "app/window/record_keeper.h"
#include "core/record/people.h"

namespace ferrule {

/// Reads and writes the people of a record on a thread of its own. Requests are carried out in their order, those that
/// wait when the service ends too; answers come as signals on the caller's thread.
class PeopleService : public QObject {
  Q_OBJECT
 public:
  /// One change, carried out on the service's thread: copies what it needs. Returns a sentence why it was refused,
  /// empty when it was done.
  using Edit = std::function<Result<QString>(Record&)>;

  explicit PeopleService(QObject* parent = nullptr);

  /// Reads who is in a record; one that is not there yet has nobody in it and is made by the first edit.
  void open(const QString& record);
  /// Whose notes, consents and counts are to be told, from now on after each edit.
  void look(PlayerId player);
  /// number comes back with how it ended.
  void edit(Edit edit, int number);

 signals:
  void read(const QString& record, std::shared_ptr<const std::vector<ferrule::PersonRow>> people);
  /// Null when the person is not there any more.
  void looked(std::shared_ptr<const ferrule::Person> person);
  /// After what was read following it. refusal: a sentence; empty when it was done.
  void edited(int number, const QString& refusal);
  void failed(const ferrule::Error& error);

 private:
  // On the keeper's thread.
  /// Null where there is no record yet, or none that opens; that was told then.
  [[nodiscard]] Record* recordOf(KeptRecord& kept);
  void tell(KeptRecord& kept);
  void tellPerson(Record* record);

  PlayerId looked_;  ///< for the keeper's thread alone
  RecordKeeper keeper_;
};

}  // namespace ferrule
