// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>

#include "app/setup/made_rig.h"
#include "app/setup/rig_in_use.h"
#include "app/setup/setup_contents.h"
#include "app/window/background_job.h"
#include "core/vision/film_rig.h"

namespace ferrule {

/// Owns a set-up while it is made: what was chosen, what came out of it, and the long work. Whatever is chosen anew
/// makes what rested on it void; every edit can be undone, and brings back what it had made void. Everything is kept in
/// a folder of the program's own until it is saved where a person says.
class SetupDesk : public QObject {
  Q_OBJECT
 public:
  using Edit = std::function<void(SetupState&)>;

  /// folder: where the set-up under way is kept; it is made when it is needed.
  explicit SetupDesk(QString folder, QObject* parent = nullptr);

  [[nodiscard]] const SetupState& state() const { return now_.state; }
  /// The only way to change what was chosen. name: of the step, as undo calls it ("the table's size").
  void change(const QString& name, const Edit& edit);
  /// Looks at another step of the path; nothing that could be undone.
  void go(SetupStep step);
  void undo();
  void redo();
  /// The name of the step that undo would take back; empty when there is none.
  [[nodiscard]] QString undoName() const { return done_.empty() ? QString() : done_.back().name; }
  [[nodiscard]] QString redoName() const { return undone_.empty() ? QString() : undone_.back().name; }
  /// Reads what was kept; files that are gone are forgotten.
  void reopen();
  void startAgain();

  void openTable(const QString& path);
  void look(const QString& film);
  void addStills(const QStringList& paths);
  /// A still from a camera that runs: it becomes a file of the set-up, and counts as it was looked at. picture: 8-bit
  /// BGR.
  void takeStill(const cv::Mat& picture, BoardStill still);
  void removeStills(const std::vector<int>& rows);
  void calibrateLens();
  /// In place of the lens that was chosen before; the rig is void then.
  void useLensFile(const QString& path);
  /// On top of what the rig's chain holds: refused with core's own error when it holds a lens already.
  void addLensToChain(const QString& path);
  /// Looks for the cushions' lines and the marks in the film, so that they can be adjusted by hand; answered by
  /// linesFound().
  void findLines();
  void makeRig();
  /// What a rig would be made of as things stand. Errors: those of tableOf.
  [[nodiscard]] Result<RigWanted> rigWanted() const;
  void check(const QString& film);
  /// The grid that is sent to the projector; false when it could not be kept.
  bool keepGrid(const ProjectorGrid& grid);
  /// Where the projector's light falls, from a still of that grid on the empty table.
  void findProjector(const QString& still);
  /// table.json, lens.json and rig.json, and projector.json where there is one; the rig becomes the one in use.
  void save(const QString& folder);
  /// Opens the set-up in use, as one step of undo, and checks it against another film. Says what is missing where there
  /// is none.
  void checkAgain(const QString& film);
  void cancel() { job_.cancel(); }

  [[nodiscard]] const std::optional<FilmLook>& filmLook() const { return now_.look; }
  [[nodiscard]] const std::vector<BoardStill>& stills() const { return now_.stills; }
  [[nodiscard]] const std::optional<LensCalibration>& calibration() const { return now_.calibration; }
  /// Of the chosen lens file, made here or brought along.
  [[nodiscard]] const std::optional<Lens>& lens() const { return now_.lens; }
  [[nodiscard]] const std::optional<Rig>& rig() const { return now_.rig; }
  /// The table that the rig was made over.
  [[nodiscard]] const MeasuredTable& rigTable() const { return now_.rigTable; }
  [[nodiscard]] const std::optional<FilmCheck>& filmCheck() const { return now_.check; }
  [[nodiscard]] const CheckNames& checkNames() const { return now_.checkNames; }
  [[nodiscard]] const std::shared_ptr<const ErrorMap>& errorMap() const { return now_.map; }
  [[nodiscard]] const std::optional<Projector>& projector() const { return now_.projector; }
  [[nodiscard]] BackgroundJob& job() { return job_; }
  [[nodiscard]] const BackgroundJob& job() const { return job_; }
  [[nodiscard]] bool isDone(SetupStep step) const;

 signals:
  void changed();
  /// One sentence; empty: nothing to say any more.
  void said(const QString& sentence);
  /// The film's picture without what moves, and the lines and marks that were found in it.
  void linesFound(const QImage& picture, const std::vector<ferrule::LineTrace>& lines,
                  const std::vector<ferrule::MarkSighting>& marks);

 private:
  struct Step {
    QString name;
    SetupStep page = SetupStep::Table;  ///< that it was made on
    SetupContents other;                ///< before it, or after it, whichever is not now
  };

  [[nodiscard]] QString own(const char* name) const;
  void keep();
  /// Files of the program's own as these contents have them; a later set-up may have overwritten them.
  void keepFiles();
  /// The set-up as it is becomes a step of undo.
  void note(const QString& name);
  void swapWith(std::vector<Step>& from, std::vector<Step>& to);
  /// Says so where there is none.
  bool lacksRig();
  /// Whether contents that long work began with still hold when it ends; says so where not.
  bool stillHolds(long inputs);
  void takeRig(const MadeRig& made);
  /// The whole of a set-up that was saved, in place of what is here.
  void open(const RigInUse& used, const MadeRig& made);
  void survey(const QStringList& paths, const QString& name);
  void fail(const Error& error);
  bool keepText(const QString& path, const std::string& text);

  QString folder_;
  SetupContents now_;
  std::vector<Step> done_;
  std::vector<Step> undone_;
  long inputs_ = 0;  ///< counts what lens and rig rest on
  BackgroundJob job_;
};

}  // namespace ferrule
