// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <memory>
#include <stop_token>

#include "app/progress/figures.h"
#include "app/report/report_builder.h"
#include "app/window/shot_list.h"
#include "app/words/numbers.h"
#include "core/base/error.h"
#include "core/drills/drill.h"
#include "core/progress/history_filter.h"
#include "core/record/record_values.h"

namespace ferrule {

class ProgressReader;

/// Whose shots, and which.
struct ProgressWanted {
  std::string player;
  HistoryFilter filter;

  bool operator==(const ProgressWanted&) const = default;
};

/// One or two columns of figures.
struct ProgressQuestion {
  std::vector<ProgressWanted> wanted;
  Numbers numbers;     ///< in whose digits and units the figures are
  bool goals = false;  ///< also what became of the targets that the time before had set
};

struct ProgressColumn {
  ProgressWanted wanted;
  PlayerProgress progress;
  ReportConsent consent;
  std::vector<Figure> figures;
  std::vector<std::string> tables;  ///< of the player, whatever the filter
  std::vector<std::string> games;
  std::vector<std::string> opponents;
  std::vector<Drill> drills;  ///< that the player has run: key and own title alone
};

struct ProgressAnswer {
  std::vector<ProgressColumn> columns;
};

/// Works out progress on a thread of its own; the window never waits for it. Of questions that come faster than they
/// are answered only the last one is answered. A question is answered again when what to work on has become known in
/// frames won, for which the player's shots are played again.
class ProgressService : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<std::int64_t()>;

  /// now: ms since 1970, UTC.
  explicit ProgressService(Clock now, QObject* parent = nullptr);
  ~ProgressService() override;

  /// Reads who is in a record. Shots that were read from another one, or from this one before, are forgotten.
  void open(const QString& path);
  void ask(const ProgressQuestion& question);
  /// The shots of a record that pass, of everybody where the player is empty. record must be the one that is open.
  void list(const QString& record, const ProgressWanted& wanted, const QLocale& locale);

 signals:
  void opened(const QString& path, const std::vector<ferrule::Player>& players);
  void answered(std::shared_ptr<const ferrule::ProgressAnswer> answer);
  void listed(const ferrule::ShotList& shots);
  void failed(const ferrule::Error& error);

 private:
  /// Ends work on older questions; the number of the next one.
  int next();

  QThread thread_;
  ProgressReader* reader_;
  std::stop_source stop_;
};

}  // namespace ferrule
