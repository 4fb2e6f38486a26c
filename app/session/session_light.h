// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/projector/projector_row.h"
#include "app/session/suggestion_service.h"
#include "app/words/numbers.h"
#include "core/measure/table_light.h"

namespace ferrule {

class ProjectorDesk;

/// What a session shows on the cloth: the suggestion, or where balls must be put back after an interruption, each with
/// its name and how far it is off; the same stands in words below the buttons. The light changes only when what it
/// shows does: balls that tremble by a hair are no reason.
class SessionLight : public ProjectorRow {
  Q_OBJECT
 public:
  explicit SessionLight(ProjectorDesk& projector, QWidget* parent = nullptr);

  enum Choice { Suggestion, PutBack };

  /// Null: nothing is suggested now.
  void setSuggestion(const PlayedPlan* plan, const MeasuredTable& table);
  /// before: as the balls must lie; now: as they lie, nothing where nobody sees them: then all are shown.
  void setBalls(const Position& before, const std::optional<Position>& now, const MeasuredTable& table);
  void setNumbers(const Numbers& numbers) { numbers_ = numbers; }

 private:
  [[nodiscard]] bool wants(Choice choice) const { return chosen() == static_cast<int>(choice); }
  void project(const LightDrawing& drawing, const std::vector<TablePoint>& sign);

  ProjectorDesk& projector_;
  Numbers numbers_;
  QLabel* displaced_;             ///< balls that are not where they belong, in words
  std::vector<TablePoint> sign_;  ///< of what shows, to tell whether it would change
};

}  // namespace ferrule
