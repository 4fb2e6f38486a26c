// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <optional>

#include "app/setup/setup_state.h"
#include "app/window/background_job.h"
#include "core/camera/check_file.h"
#include "core/camera/error_map.h"
#include "core/camera/lens_calibration.h"
#include "core/camera/projector_file.h"
#include "core/vision/board_stills.h"
#include "core/vision/film_check.h"

namespace ferrule {

/// What a film or still says of itself, with its first picture.
struct FilmLook {
  QString path;
  ImageSize size;
  int rotation_deg = 0;
  double rate_hz = 0.0;
  QImage picture;
};

/// Owns a set-up while it is made: what was chosen, what came out of it, and the long work. Whatever is chosen anew
/// makes what rested on it void. Everything is kept in a folder of the program's own until it is saved where a person
/// says.
class SetupDesk : public QObject {
  Q_OBJECT
 public:
  /// folder: where the set-up under way is kept; it is made when it is needed.
  explicit SetupDesk(QString folder, QObject* parent = nullptr);

  [[nodiscard]] const SetupState& state() const { return state_; }
  /// The only way to change what was chosen.
  void change(const std::function<void(SetupState&)>& edit);
  /// Reads what was kept; files that are gone are forgotten.
  void reopen();
  void startAgain();

  void openTable(const QString& path);
  void look(const QString& film);
  void addStills(const QStringList& paths);
  void removeStills(const std::vector<int>& rows);
  void calibrateLens();
  /// In place of the lens that was chosen before; the rig is void then.
  void useLensFile(const QString& path);
  /// On top of what the rig's chain holds: refused with core's own error when it holds a lens already.
  void addLensToChain(const QString& path);
  void makeRig();
  void check(const QString& film);
  /// The grid that is sent to the projector; false when it could not be kept.
  bool keepGrid(const ProjectorGrid& grid);
  /// Where the projector's light falls, from a still of that grid on the empty table.
  void findProjector(const QString& still);
  /// table.json, lens.json and rig.json, and projector.json where there is one; the rig becomes the one in use.
  void save(const QString& folder);
  /// Checks the rig in use against another film. Says what is missing where there is none.
  void checkAgain(const QString& film);
  void cancel() { job_.cancel(); }

  [[nodiscard]] const std::optional<FilmLook>& filmLook() const { return look_; }
  [[nodiscard]] const std::vector<BoardStill>& stills() const { return stills_; }
  [[nodiscard]] const std::optional<LensCalibration>& calibration() const { return calibration_; }
  /// Of the chosen lens file, made here or brought along.
  [[nodiscard]] const std::optional<Lens>& lens() const { return lens_; }
  [[nodiscard]] const std::optional<Rig>& rig() const { return rig_; }
  /// The table that the rig was made over.
  [[nodiscard]] const MeasuredTable& rigTable() const { return rigTable_; }
  [[nodiscard]] const std::optional<FilmCheck>& filmCheck() const { return check_; }
  [[nodiscard]] const CheckNames& checkNames() const { return checkNames_; }
  [[nodiscard]] const std::shared_ptr<const ErrorMap>& errorMap() const { return map_; }
  [[nodiscard]] const std::optional<Projector>& projector() const { return projector_; }
  [[nodiscard]] BackgroundJob& job() { return job_; }
  [[nodiscard]] const BackgroundJob& job() const { return job_; }
  [[nodiscard]] bool isDone(SetupStep step) const;

 signals:
  void changed();
  /// One sentence; empty: nothing to say any more.
  void said(const QString& sentence);

 private:
  [[nodiscard]] QString own(const char* name) const;
  void keep();
  /// Says so where there is none.
  bool lacksRig();
  void forgetRig();
  void forgetLens();
  void takeRig(const Rig& rig, const MeasuredTable& measured);
  void fail(const Error& error);
  bool keepText(const QString& path, const std::string& text);

  QString folder_;
  SetupState state_;
  std::optional<FilmLook> look_;
  std::vector<BoardStill> stills_;
  std::optional<LensCalibration> calibration_;
  std::optional<Lens> lens_;
  std::optional<Rig> rig_;
  MeasuredTable rigTable_;
  std::optional<FilmCheck> check_;
  CheckNames checkNames_;
  std::shared_ptr<const ErrorMap> map_;
  std::optional<Projector> projector_;
  BackgroundJob job_;
};

}  // namespace ferrule
