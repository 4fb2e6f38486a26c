// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <memory>
#include <stop_token>

#include "core/planner/planner.h"
#include "core/table/measured_table.h"

namespace ferrule {

class SuggestionSearcher;

/// A position to be thought about.
struct SuggestionQuestion {
  MeasuredTable table;
  PhysicsParameters parameters;
  Situation situation;
  PlayerLevel level = PlayerLevel::Club;
};

/// What was found so far, with the ways that the balls take when the first plan comes out as asked.
struct SuggestionAnswer {
  Suggestion suggestion;
  Scatter scatter;
  Position placed;  ///< with a cue ball in hand where the first plan puts it
  std::vector<std::pair<BallName, std::vector<TablePoint>>> ways;
  bool final = false;  ///< the search is over
};

/// Searches on a thread of its own. A new question stops the search before it; answers come as signals on the caller's
/// thread, each better than the one before.
class SuggestionService : public QObject {
  Q_OBJECT
 public:
  explicit SuggestionService(QObject* parent = nullptr);
  ~SuggestionService() override;

  void ask(const SuggestionQuestion& question);
  /// Nothing is answered any more until the next question.
  void stop();

 signals:
  void answered(std::shared_ptr<const ferrule::SuggestionAnswer> answer);
  void failed(const ferrule::Error& error);

 private:
  QThread thread_;
  SuggestionSearcher* searcher_;
  std::stop_source stop_;
  int question_ = 0;
};

}  // namespace ferrule
