// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/window/actions.h"

class QToolButton;

namespace ferrule {

/// Two flat buttons, undo and redo, that say which step they would take back or do again.
class UndoRow : public QWidget {
  Q_OBJECT
 public:
  /// place: ends the buttons' object names ("undoPlayers").
  UndoRow(const ActionSet& actions, const QString& place, QWidget* parent = nullptr);

  /// Names of the steps; empty: there is none.
  void setSteps(const QString& undo, const QString& redo);

 private:
  QToolButton* undo_;
  QToolButton* redo_;
};

/// Whether somebody typed into this field what was not taken over yet: then undo is the field's own.
[[nodiscard]] bool isBeingTyped(const QWidget& field);

}  // namespace ferrule
