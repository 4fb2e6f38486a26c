// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <set>

#include "app/session/measured_values.h"
#include "core/measure/measure.h"
#include "core/rules/answers.h"

namespace ferrule {

/// What a referee waits for: the answer to a doubt, or the choice between options.
struct RefereeQuestion {
  std::shared_ptr<const MeasuredShot> shot;
  std::optional<Doubt> doubt;        ///< nothing: one of the options is to be chosen
  std::vector<DoubtAnswer> answers;  ///< to the doubt
  std::vector<Option> options{};     ///< without a doubt
  int waiting = 0;                   ///< further shots of which something is asked

  [[nodiscard]] std::size_t choices() const { return doubt ? answers.size() : options.size(); }
};

/// The shots of a session that is or was just measured, and what its referee asks of them: one question at a time, of
/// the earliest shot first. Knows no widgets.
class MeasuredShots : public QObject {
  Q_OBJECT
 public:
  /// Takes what a person said to where it comes into the record; ruleAgain() follows from there.
  using Way = std::function<void(const SaidOfRecorded&)>;

  MeasuredShots(std::function<UtcMilliseconds()> clock, Way way, QObject* parent = nullptr);

  void clear();
  void add(std::shared_ptr<const MeasuredShot> shot);
  void ruleAgain(const std::vector<RuledAgain>& ruled);
  /// Who answers, for the record.
  void setWho(const QString& who) { who_ = who; }

  [[nodiscard]] const std::vector<std::shared_ptr<const MeasuredShot>>& all() const { return shots_; }
  [[nodiscard]] std::optional<RefereeQuestion> question() const;
  /// Of the question's answers or options the one at this place, from 0. False where there is none.
  bool answer(std::size_t place);
  /// The question waits until the session is looked at in Review.
  void putOff();
  [[nodiscard]] bool canUndo() const { return !before_.empty(); }
  /// Takes back the last answer.
  void undo();

 signals:
  void changed();

 private:
  struct Said {
    ShotId shot;
    SaidOfRuling said;
  };

  void say(ShotId shot, const SaidOfRuling& said);

  std::function<UtcMilliseconds()> clock_;
  Way way_;
  QString who_;
  std::vector<std::shared_ptr<const MeasuredShot>> shots_;
  std::set<std::int64_t> onTheWay_;  ///< shots whose answer was not ruled yet
  std::set<std::int64_t> putOff_;
  std::vector<Said> before_;  ///< what had been said before each answer
};

}  // namespace ferrule
