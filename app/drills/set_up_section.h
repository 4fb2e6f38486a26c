// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/drills/set_up_watch.h"
#include "app/words/numbers.h"
#include "core/drills/set_up_check.h"

class QLabel;
class QPushButton;

namespace ferrule {

class CameraChoice;

/// Whether the balls stand as the drill wants them, by the camera of the rig in use: how far each is off, in mm.
class SetUpSection : public QWidget {
  Q_OBJECT
 public:
  explicit SetUpSection(QWidget* parent = nullptr);

  /// What is to be set up.
  void setStation(const DrillStation& station, const MeasuredTable& table);
  void setNumbers(const Numbers& numbers);
  /// Nothing while nobody looks.
  [[nodiscard]] const std::optional<SetUpCheck>& check() const { return check_; }
  [[nodiscard]] SetUpWatch& watch() { return watch_; }
  /// Watches with this in place of the chosen camera.
  void begin(const std::shared_ptr<LiveSource>& source);

 signals:
  /// Another check, or none any more.
  void checked();
  /// The table of the rig in use, on which the balls are looked for.
  void tableFound(const QString& path);
  void said(const QString& sentence);
  void failed(const ferrule::Error& error);

 private:
  void showCheck();

  SetUpWatch watch_;
  DrillStation station_;
  MeasuredTable table_;
  Numbers numbers_;
  Position balls_;
  std::optional<SetUpCheck> check_;
  CameraChoice* camera_;
  QPushButton* begin_;
  QLabel* words_;
};

}  // namespace ferrule
