// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/window/actions.h"
#include "app/window/shot_list.h"
#include "app/words/numbers.h"

class QSettings;

namespace ferrule {

/// One place of the window. Opens alone in a test.
class Place : public QWidget {
  Q_OBJECT
 public:
  using QWidget::QWidget;

  /// Carries out an action that belongs to the place; false when it means nothing here.
  virtual bool act(ActionId action) = 0;
  /// Opens a record, for the places that show one.
  virtual void openRecord(const QString&) {}
  /// A film that somebody dropped on the window; false for the places that do nothing with one.
  virtual bool openFilm(const QString&) { return false; }
  /// The folder of the demo's film, to be measured; false for the places that measure nothing.
  virtual bool measureDemo(const QString&) { return false; }
  /// Lists shots, for the place that shows them one by one.
  virtual void showShots(const ShotList&) {}
  /// Somebody was erased: the name is to be forgotten, in settings too.
  virtual void forgetPlayer(const QString&) {}
  virtual void setNumbers(const Numbers& numbers) = 0;
  /// Work that would break off with the window: a film or a camera that is being measured.
  [[nodiscard]] virtual bool isBusy() const { return false; }
  /// Whether something is under way that the same place of a new window takes up again, by goOn().
  [[nodiscard]] virtual bool isUnderWay() const { return false; }
  virtual void goOn() {}
  /// Selection, sizes, modes and zoom.
  virtual void save(QSettings& settings) const = 0;
  virtual void restore(const QSettings& settings) = 0;

 signals:
  /// Something the place wants the actions to show changed.
  void actionsChanged();
  /// Shots to be looked at in Review.
  void shotsWanted(const ferrule::ShotList& shots);
  /// A player is gone for good: nothing should remember the name.
  void playerErased(const QString& name);
  /// A record that every place should show.
  void recordWanted(const QString& path);
  /// The demo's film, in this folder, should be measured.
  void demoWanted(const QString& folder);
  /// Another place, by its name in placeRows().
  void placeWanted(const QString& name);
};

}  // namespace ferrule
