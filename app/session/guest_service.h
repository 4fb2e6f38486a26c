// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "app/window/record_keeper.h"
#include "core/record/people.h"

namespace ferrule {

/// A guest of a session that ended, and who it may have been.
struct GuestOfSession {
  PlayerId guest;
  QString name;
  QStringList others;  ///< people of the record who did not sit in the session
};

/// Finds the guests of a session and, once somebody says who they were, gives them their names, on a thread of its own.
class GuestService : public QObject {
  Q_OBJECT
 public:
  explicit GuestService(QObject* parent = nullptr);

  /// Followed by found, with the first guest, unless there is none.
  void look(const QString& record, SessionId session);
  /// The guest is the person of that name, or a new one. Followed by named or refused.
  void name(const QString& record, PlayerId guest, const QString& name);
  /// Undo of the last name. Followed by takenBack.
  void takeBack(const QString& record, UtcMilliseconds now);

 signals:
  void found(const ferrule::GuestOfSession& guest);
  void named(const QString& guest, const QString& name);
  /// The two played together, or a session that is not ended knows the guest: they are not joined.
  void refused(ferrule::JoinReport::Ending why, const QString& name);
  void takenBack(const QString& guest);
  void failed(const ferrule::Error& error);

 private:
  void ask(const QString& record, std::function<Result<void>(Record&)> work);

  /// How the last guest was named; for the keeper's thread alone.
  struct Named {
    PersonDetails before;                ///< of the guest
    std::optional<JoinedPeople> joined;  ///< nothing: renamed
  };

  std::optional<Named> last_;
  RecordKeeper keeper_;
};

}  // namespace ferrule
