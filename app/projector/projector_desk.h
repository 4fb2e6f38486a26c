// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <QTimer>
#include <optional>

#include "app/projector/projector_screen.h"
#include "app/window/background_job.h"
#include "core/camera/projector_file.h"
#include "core/measure/table_light.h"

class QScreen;

namespace ferrule {

/// The one projector of the window: whichever place wants to show something on the cloth asks here, and what was shown
/// before gives way in a slow fade. While somebody leans over the table it is black.
class ProjectorDesk : public QObject {
  Q_OBJECT
 public:
  explicit ProjectorDesk(QObject* parent = nullptr);
  ~ProjectorDesk() override;

  /// Of the set-up in use; nothing where it has none.
  [[nodiscard]] static std::optional<Projector> projectorInUse();

  /// The table of the set-up in use, on which light must lie true.
  [[nodiscard]] static std::optional<MeasuredTable> tableInUse();

  /// Shows lines of light on the cloth by the projector of the set-up in use, or says what is missing.
  /// what: names it, so that whoever asked can tell whether it still shows.
  void show(const QString& what, const LightDrawing& drawing);
  /// The same by a projector that is being set up.
  void show(const QString& what, const LightDrawing& drawing, const Projector& projector);
  /// A position file's balls, and their ways where it asks for a strike.
  void showPosition(const QString& path, const Projector& projector);
  /// Any picture, pixel for pixel.
  void showPicture(const QString& what, const QImage& picture);
  /// Black; the screen stays open.
  void dark();
  /// The screen closes.
  void close();

  /// What shows; empty: black, or closed.
  [[nodiscard]] const QString& shown() const { return shown_; }
  [[nodiscard]] bool isBusy() const { return job_.isRunning(); }
  [[nodiscard]] bool isOpen() const;
  /// Null while it is closed.
  [[nodiscard]] ProjectorScreen* screen() const { return screen_; }

  /// The screen that a person chose as the projector's.
  void chooseScreen(const QScreen* screen);
  [[nodiscard]] static QScreen* chosenScreen();

  /// Somebody leans over the table, or no longer does: black at once, light again when nobody did for a while.
  void setSomebodyLeans(bool leans);
  [[nodiscard]] bool isHeldBack() const { return heldBack_; }

 signals:
  void changed();
  /// One sentence; empty: nothing to say any more.
  void said(const QString& sentence);

 private:
  ProjectorScreen* open(QScreen* screen);
  void light();

  QPointer<ProjectorScreen> screen_;
  QString shown_;
  QImage picture_;  ///< that is wanted, shown or held back
  bool heldBack_ = false;
  QTimer clear_;
  BackgroundJob job_;
};

/// The caution that stands wherever light is sent onto a table.
[[nodiscard]] QString beamCaution();

}  // namespace ferrule
