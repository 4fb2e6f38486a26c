// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/rules/frame_log.h"
#include "core/rules/ruling_text.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule {

/// What a person says of a shot. Everything but the outcome may be left out.
struct HandShot {
  Outcome outcome = Outcome::Pot;
  std::optional<BallName> ball;      ///< that was played for
  std::optional<PocketName> pocket;  ///< that it was meant for
  std::optional<MissSide> missSide;
  std::vector<PocketedBall> others;  ///< that fell beside it; the cue ball too
  std::optional<FoulKind> foul;      ///< outcome Foul
  /// What was chosen after the shot, where the rules leave a choice; nothing: not said yet.
  std::optional<OptionKind> chosen = {};

  bool operator==(const HandShot&) const = default;
};

/// A shot as a person put it in.
struct LoggedShot {
  HandShot said;
  double time_s = 0.0;  ///< from the session's start
  Position before;
  Position after;
  std::string suggestion;  ///< that was shown before it, as core/planner/suggestion_text.h has it; empty: none was

  bool operator==(const LoggedShot&) const = default;
};

/// One frame as it stands.
struct HandState {
  Position balls;  ///< as they lie
  std::vector<LoggedShot> shots;

  bool operator==(const HandState&) const = default;
};

/// What a session without a camera is about.
struct HandTerms {
  std::string name;
  std::string tableName;
  MeasuredTable table;
  std::optional<Game> game;          ///< nothing: practice without a referee
  std::vector<std::string> players;  ///< in playing order, two at most take turns
  int frame = 1;                     ///< of the session, from 1
  Seat breaker = Seat::First;

  bool operator==(const HandTerms&) const = default;
};

/// A frame that is put in by hand: where the balls lie, what was tried, what happened; a referee keeps turn and score.
/// A value without clock, record or window. Every edit is one step of undo.
///
/// The balls that a person moves after a shot are where that shot left them, until the next one is put in. A ball that
/// is put down although the shot took it away (the cue ball after a scratch, a spotted ball) was placed by hand.
/// What a person does not mention did not happen: a shot without a foul met its ball first and drove one to a rail.
class HandSession {
 public:
  explicit HandSession(HandTerms terms);
  HandSession(HandTerms terms, HandState state);

  [[nodiscard]] const HandTerms& terms() const { return terms_; }
  [[nodiscard]] const HandState& state() const { return state_; }

  // Edits.
  void setBalls(Position balls);
  /// Puts a ball down, whether it lay on the table or not.
  void putBall(BallName ball, TablePoint place);
  void takeBall(BallName ball);
  /// A ball fell with the last shot too: of a break, off another ball, or into a pocket that was not meant; the cue
  /// ball is a scratch. Without a shot that had the ball on the table it is taken away alone.
  void ballFell(BallName ball, PocketName pocket);
  /// The shot that was just played from where the balls lie. suggestion: see LoggedShot.
  void log(const HandShot& said, double time_s, std::string suggestion = {});

  /// Of the options that the last shot left. Nothing happens without a shot.
  void choose(OptionKind option);

  [[nodiscard]] bool canUndo() const { return !undone_.empty(); }
  [[nodiscard]] bool canRedo() const { return !redone_.empty(); }
  void undo();
  void redo();

  /// The racked table of the game, the cue ball just behind the head spot; 15 balls without a game.
  [[nodiscard]] Position rackedBalls() const;
  /// The frame by its shots so far. Nothing without a game.
  [[nodiscard]] const std::optional<FrameLog>& referee() const { return referee_; }
  /// Who struck a shot, by the referee; the only player without one; nothing where nobody knows.
  [[nodiscard]] std::optional<Seat> shooterOf(std::size_t shot) const;
  /// A shot as the record keeps it. shot: index of state().shots.
  [[nodiscard]] ShotReading readingOf(std::size_t shot) const;
  /// Nothing without a game.
  [[nodiscard]] std::optional<RuledShot> rulingOf(std::size_t shot) const;

 private:
  void change(HandState next);
  /// Rules the frame anew, after its state became another.
  void rule();

  HandTerms terms_;
  HandState state_;
  std::optional<FrameLog> referee_;
  std::vector<HandState> undone_;
  std::vector<HandState> redone_;
};

/// A shot as a referee who stood by would have seen it. reading: of what was said.
[[nodiscard]] ShotEvents handEvents(const ShotReading& reading, const HandShot& said);

/// The cut that a pot needs, unsigned: from the way cue ball to ghost ball to the way ball to pocket. Nothing when a
/// ball is missing, or when the cue ball lies too near to be aimed.
[[nodiscard]] std::optional<double> neededCut_rad(const Position& before, const MeasuredTable& table, BallName ball,
                                                  PocketName pocket);
/// The pocket that is easiest for a ball: the least cut plus turn out of the pocket's own direction.
[[nodiscard]] std::optional<PocketName> likeliestPocket(const Position& before, const MeasuredTable& table,
                                                        BallName ball);

/// The form in which an unfinished frame is kept: one line of JSON, and back. Nothing for anything that handText did
/// not write.
[[nodiscard]] std::string handText(const HandSession& session);
[[nodiscard]] std::optional<HandSession> handFromText(const std::string& text);

}  // namespace ferrule
