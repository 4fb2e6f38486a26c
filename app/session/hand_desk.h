// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "app/session/hand_service.h"
#include "app/session/judge_service.h"
#include "app/session/measured_shots.h"
#include "app/session/suggestion_desk.h"
#include "app/window/background_job.h"
#include "core/measure/photo_position.h"

namespace ferrule {

/// What a session by hand works on: the frame, the ball that is moved, the ball and pocket that are played for. Joins
/// the frame and its record; knows no widgets.
class HandDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<UtcMilliseconds()>;

  explicit HandDesk(Clock clock, QObject* parent = nullptr);

  void openRecord(const QString& path);
  void begin(const HandTerms& terms, SessionKind kind);
  /// Goes on with what was broken off; nothing happens where nothing was.
  void resume();
  void nextFrame();
  void end();

  // Edits; nothing happens without a session.
  /// Where a person lets go of a ball: drawn to spots, cushions and balls within reach_m.
  void put(BallName ball, TablePoint near, double reach_m);
  /// A ball that is not on the table, onto it: the cue ball to the head spot, others to the foot spot, or as near as
  /// there is room.
  void bring(BallName ball);
  void take(BallName ball);
  /// It fell with the last shot too.
  void fell(BallName ball, PocketName pocket);
  /// The chosen ball, in its pocket. False when none is chosen, or no shot was put in that could have sent it there.
  bool chosenFell();
  void rack();
  /// Puts the balls where a photo shows them, as one step of undo; those that the game does not use stay away. Long
  /// work: photoTaken() or failed() follows.
  void putFromPhoto(const PhotoFiles& files);
  void choose(std::optional<BallName> ball);
  void aimAt(PocketName pocket);
  /// Shows what would be suggested here, or hides it. A suggestion that was shown is kept with the shot.
  /// level: of the player at the table; nothing: as the record knows that player.
  void showSuggestion(bool shown, std::optional<PlayerLevel> level);
  /// False where the shot lacks something: a pot needs its ball and pocket.
  bool log(Outcome outcome, std::optional<MissSide> missSide = {}, std::optional<FoulKind> foul = {});
  /// What the rules let somebody choose after the last shot, until it was said; nothing where they leave no choice.
  [[nodiscard]] std::optional<RefereeQuestion> question() const;
  /// Of its options the one at this place, from 0.
  void answer(std::size_t place);
  void undo();
  void redo();

  [[nodiscard]] const QString& recordPath() const { return recordPath_; }
  /// Null while there is no session.
  [[nodiscard]] const KeptHand* hand() const { return hand_.get(); }
  /// What was broken off; null when nothing was.
  [[nodiscard]] const KeptHand* broken() const { return broken_.get(); }
  [[nodiscard]] std::optional<BallName> chosen() const { return chosen_; }
  /// The object ball that is played for, and its pocket.
  [[nodiscard]] std::optional<BallName> target() const;
  [[nodiscard]] std::optional<PocketName> pocket() const { return pocket_; }
  /// The name of who is at the table; empty where nobody knows.
  [[nodiscard]] std::string shooter() const;
  /// What is suggested, and which plan of it is drawn.
  [[nodiscard]] SuggestionDesk& suggestions() { return suggestions_; }
  /// Null until something was found.
  [[nodiscard]] const SuggestionAnswer* suggestion() const { return suggestions_.found(); }
  [[nodiscard]] const PlayedPlan* shownPlan() const { return suggestions_.shownPlan(); }
  [[nodiscard]] bool triedInVain() const { return suggestions_.triedInVain(); }
  /// Names of the game that are not on the table.
  [[nodiscard]] std::vector<BallName> ballsOff() const;

 signals:
  void changed();
  void failed(const ferrule::Error& error);
  /// A session stands in the record to its end.
  void sessionEnded(ferrule::SessionId session);
  /// The shots of a session that ended were set beside what would have been suggested.
  void judged(int shots);
  /// That many balls were put where a photo shows them.
  void photoTaken(int balls);

 private:
  void takePhoto(const Position& balls);
  void edited();
  void think();
  void adopt(std::shared_ptr<const KeptHand> hand);

  Clock clock_;
  HandService service_;
  QString recordPath_;
  std::unique_ptr<KeptHand> hand_;
  std::unique_ptr<KeptHand> broken_;
  std::optional<BallName> chosen_;
  std::optional<PocketName> pocket_;
  SuggestionDesk suggestions_;
  JudgeService judge_;
  BackgroundJob photo_;
  SessionId ending_;  ///< to be judged once it stands in the record
};

}  // namespace ferrule
