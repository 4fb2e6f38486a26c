// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

#include "app/window/record_keeper.h"
#include "core/measure/drill_keeping.h"

namespace ferrule {

/// What a record holds of drills, and whom and what a run may belong to.
struct DrillShelf {
  std::vector<Drill> own;
  std::vector<KeptRun> runs;             ///< of all drills, oldest first
  std::vector<SessionSummary> sessions;  ///< newest first
  std::vector<std::string> players;
};

/// Reads and writes drills and their runs on a thread of its own. Requests are carried out in their order, those that
/// wait when the service ends too; answers come as signals on the caller's thread.
class DrillService : public QObject {
  Q_OBJECT
 public:
  explicit DrillService(QObject* parent = nullptr);

  /// Opens a record, or makes it.
  void open(const QString& record);
  /// Each is followed by shelved.
  void keepDrills(const std::vector<Drill>& drills, UtcMilliseconds now);
  void removeDrill(const std::string& key);
  void endRun(const KeptRun& run, UtcMilliseconds now);
  /// Followed by counted and shelved. grown: only where the session has other shots than when it was counted last.
  void countSession(SessionId session, const Drill& drill, bool grown);

  /// Followed by begun.
  void beginRun(const RunTerms& terms, UtcMilliseconds now);
  void keepTrial(DrillRunId run, const DrillTrial& trial);
  void takeBackTrial(DrillRunId run);

 signals:
  void opened(const QString& record);
  void shelved(std::shared_ptr<const ferrule::DrillShelf> shelf);
  void begun(std::shared_ptr<const ferrule::KeptRun> run);
  /// run: without tries where none was found.
  void counted(std::shared_ptr<const ferrule::KeptRun> run);
  void failed(const ferrule::Error& error);

 private:
  /// Answers Result<void>; with shelved afterwards where that is wished.
  void ask(std::function<Result<void>(Record&)> work, bool shelves);

  void shelve(Record& record);

  /// What was counted last; for the keeper's thread alone.
  struct Counted {
    SessionId session;
    std::string drill;
    std::size_t shots = 0;

    bool operator==(const Counted&) const = default;
  };

  std::optional<Counted> counted_;
  RecordKeeper keeper_;
};

}  // namespace ferrule
