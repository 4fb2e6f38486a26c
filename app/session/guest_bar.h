// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "app/session/guest_service.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace ferrule {

/// Asks across the top of Session who the guest of a session that ended was. Nobody has to answer: it goes with the
/// next session.
class GuestBar : public QWidget {
  Q_OBJECT
 public:
  explicit GuestBar(std::function<UtcMilliseconds()> clock, QWidget* parent = nullptr);

  /// Once a session has ended.
  void ask(const QString& record, SessionId session);
  /// Nothing is asked any more.
  void close();

 signals:
  /// Somebody has another name now.
  void peopleChanged();
  void failed(const ferrule::Error& error);

 private:
  void showGuest(const GuestOfSession& guest);
  void name();

  std::function<UtcMilliseconds()> clock_;
  GuestService service_;
  QString record_;
  SessionId session_;
  std::optional<GuestOfSession> guest_;
  QLabel* words_;
  QComboBox* who_;
  QPushButton* name_;
  QPushButton* stays_;
  QPushButton* back_;
};

}  // namespace ferrule
