// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "app/drills/drill_service.h"
#include "core/drills/drill_score.h"

namespace ferrule {

/// What the place of drills works on: the library, the drill that is looked at, the run that goes on, the drill that is
/// edited. Joins them and the record; knows no widgets.
class DrillDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<UtcMilliseconds()>;

  explicit DrillDesk(Clock clock, QObject* parent = nullptr);

  void openRecord(const QString& path);
  [[nodiscard]] const QString& recordPath() const { return recordPath_; }
  [[nodiscard]] bool wasRead() const { return shelf_ != nullptr; }

  // The library.
  /// The built-in ones and then a person's own.
  [[nodiscard]] std::vector<Drill> library() const;
  [[nodiscard]] bool isOwn(const std::string& key) const;
  [[nodiscard]] const DrillShelf& shelf() const;
  /// Looks at a drill; nothing happens while a run goes on or a drill is edited.
  void choose(const std::string& key);
  void mirror(Mirroring mirroring);
  void showStation(std::size_t station);
  void setTable(const std::string& name, const MeasuredTable& table);

  /// The drill that is looked at, as it is listed; of an edited one the draft.
  [[nodiscard]] const Drill& drill() const { return drill_; }
  /// As it is played.
  [[nodiscard]] Drill played() const { return mirrored(drill_, mirroring_); }
  [[nodiscard]] Mirroring mirroring() const { return mirroring_; }
  [[nodiscard]] std::size_t station() const { return station_; }
  [[nodiscard]] const MeasuredTable& table() const { return table_; }
  /// What loose balls and a rack's order are thrown with.
  [[nodiscard]] std::uint64_t seed() const { return seed_; }
  void throwAnew();
  /// The runs of the drill that is looked at, oldest first.
  [[nodiscard]] std::vector<const KeptRun*> runsHere() const;

  // A run by hand.
  void beginRun(const std::string& player);
  /// The last run of the drill that is looked at, where it was broken off; nothing else.
  [[nodiscard]] const KeptRun* brokenRun() const;
  /// Goes on with it.
  void resumeRun();
  /// How far the set-up was off, as a camera saw it, for the try that comes; nothing where none looked.
  void setSetUpError(std::optional<double> error_m) { setUpError_m_ = error_m; }
  /// Null while none goes on.
  [[nodiscard]] const KeptRun* run() const { return run_.get(); }
  void putLeave(std::optional<TablePoint> leave);
  [[nodiscard]] const std::optional<TablePoint>& leave() const { return leave_; }
  /// What was said of the goals after the first.
  void say(std::size_t goal, std::optional<bool> met);
  [[nodiscard]] const std::vector<std::optional<bool>>& said() const { return said_; }
  /// The try ended; of the first goal met, unless the leave decides it.
  void log(std::optional<bool> met, std::optional<MissSide> missSide = {}, bool fouled = false);
  void endRun();

  // A drill of one's own.
  /// A copy of the drill that is looked at, or a new one with two balls; then it is edited.
  void copy(const QString& title);
  void make(const QString& title);
  void edit();
  [[nodiscard]] bool isEditing() const { return editing_; }
  /// Replaces the draft; one step of undo.
  void change(const Drill& draft);
  /// Keeps the draft and ends the editing. False while it cannot be played (faultsOf).
  bool keepDraft();
  void dropDraft();
  void removeDrill();
  void add(const std::vector<Drill>& drills);

  void countSession(SessionId session);
  /// The same, where the session has other shots than when it was counted last: while it is played.
  void countGrowingSession(SessionId session);

  /// Of the try, of the draft, or of the library, whichever goes on.
  void undo();
  void redo();

 signals:
  void changed();
  void counted(std::shared_ptr<const ferrule::KeptRun> run);
  void failed(const ferrule::Error& error);

 private:
  /// One change of the library: the drill of a key before and after.
  struct LibraryStep {
    std::string key;
    std::optional<Drill> before;
    std::optional<Drill> after;
  };

  void put(const std::string& key, const std::optional<Drill>& drill);
  void startEditing(const Drill& draft);
  void lookAt(const Drill& drill);
  void nextTry();
  [[nodiscard]] std::string freshKey();

  Clock clock_;
  DrillService service_;
  QString recordPath_;
  std::shared_ptr<const DrillShelf> shelf_;
  Drill drill_;
  Mirroring mirroring_;
  std::size_t station_ = 0;
  std::string tableName_ = "9ft";
  MeasuredTable table_;
  std::uint64_t seed_ = 1;
  std::int64_t lastKey_ = 0;

  std::unique_ptr<KeptRun> run_;
  std::vector<DrillTrial> takenBack_;
  std::optional<TablePoint> leave_;
  std::optional<double> setUpError_m_;
  std::vector<std::optional<bool>> said_;

  bool editing_ = false;
  std::optional<Drill> beforeEditing_;  ///< as it was kept; nothing for a new one
  std::string chosenBeforeEditing_;
  std::vector<Drill> draftsBack_;
  std::vector<Drill> draftsOn_;

  std::vector<LibraryStep> stepsBack_;
  std::vector<LibraryStep> stepsOn_;
};

}  // namespace ferrule
