// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/setup/setup_desk.h"
#include "app/setup/still_watch.h"
#include "app/words/numbers.h"

class QLabel;
class QPushButton;

namespace ferrule {

class CameraChoice;
class StillView;

/// Stills of the board from a camera that runs, or a film in its place: whether this image would count, how sharp it
/// is and what it adds is said while the board is held; a press takes it. What would not count is refused with a
/// sentence. Taken stills are files of the set-up like those that a person brings.
class StillCamera : public QWidget {
  Q_OBJECT
 public:
  explicit StillCamera(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh(const Numbers& numbers);
  /// Looks through this in place of the chosen camera.
  void begin(std::shared_ptr<LiveSource> source);

 protected:
  /// Whoever goes to another step lets go of the camera.
  void hideEvent(QHideEvent* event) override;

 private:
  /// Shows the choice of cameras: looking for them costs time and may start one, so nobody does unasked.
  void unfold();
  void startOrStop();
  void showRunning();
  void show(const std::shared_ptr<const LiveStill>& image);
  void take();
  /// Why an image would not count; empty where it would.
  [[nodiscard]] QString faultOf(const BoardStill& still) const;
  [[nodiscard]] QString wordsOf(const BoardStill& still) const;

  SetupDesk& desk_;
  Numbers numbers_;
  QPushButton* unfold_;
  QWidget* panel_;
  CameraChoice* camera_;
  QPushButton* start_;
  QPushButton* take_;
  QLabel* words_;
  StillView* view_;
  std::shared_ptr<const LiveStill> last_;  ///< null before the first image
  QString watched_;                        ///< the board that is looked for
  StillWatch watch_;
};

}  // namespace ferrule
