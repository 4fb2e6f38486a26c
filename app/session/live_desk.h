// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>

#include "app/live/live_source.h"
#include "app/session/answer_service.h"
#include "app/session/judge_service.h"
#include "app/session/measured_shots.h"
#include "app/session/measuring_feed.h"
#include "app/session/suggestion_desk.h"
#include "app/window/background_job.h"
#include "core/camera/check_file.h"
#include "core/measure/live_check.h"
#include "core/measure/measure_live.h"

namespace ferrule {

/// How a live session stands.
enum class LiveState {
  None,
  Waiting,  ///< for the first image
  Running,
  Ending,  ///< what was seen is measured to its end
  Done,
};

/// A session that is measured while it is played: joins the camera, the measuring thread and the suggestion, and holds
/// what came of it. Knows no widgets.
class LiveDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<UtcMilliseconds()>;

  explicit LiveDesk(Clock clock, QObject* parent = nullptr);
  /// Measures what was seen to its end, so that the session is whole.
  ~LiveDesk() override;

  /// Begins a session with a camera, or a film that stands in for one; an earlier one is put aside. options.film: is
  /// the source's name. keepsFilm: keep what is seen in a film beside the record, as far as those who play agreed to
  /// it.
  void start(const MeasureOptions& options, std::shared_ptr<LiveSource> source, bool keepsFilm = false);
  /// Ends the session; its shots are then set beside what would have been suggested.
  void stop();
  /// Puts an ended session aside, so that another one can be begun.
  void close();

  /// Shows what would be suggested for the balls as they lie now, or hides it. One that was shown is kept with the next
  /// shot. level: of the player at the table; nothing: as the record knows that player.
  void showSuggestion(bool shown, std::optional<PlayerLevel> level);

  [[nodiscard]] LiveState state() const { return state_; }
  [[nodiscard]] const MeasureOptions& options() const { return options_; }
  [[nodiscard]] const MeasuredTable& table() const { return table_; }
  [[nodiscard]] std::optional<SessionId> session() const { return session_; }
  [[nodiscard]] MeasuredShots& shots() { return shots_; }
  [[nodiscard]] const MeasuredShots& shots() const { return shots_; }
  /// Null until the first one.
  [[nodiscard]] const SeenImage* image() const { return image_.get(); }
  /// Where the balls must lie: as they came to rest after the last shot, before the first as they were first seen.
  [[nodiscard]] Position lastRest() const;
  /// As the newest image shows them; balls that it does not show are left out.
  [[nodiscard]] Position ballsNow() const;
  /// Nothing before the first shot, and without a referee.
  [[nodiscard]] const std::optional<LiveStanding>& standing() const { return standing_; }
  [[nodiscard]] ImageQueue::Counts counts() const { return images_ ? images_->counts() : ImageQueue::Counts{}; }
  /// Images between the one that is shown and the newest; 0 before the first is shown.
  [[nodiscard]] long imagesBehind() const;
  /// The last self-check of the rig in this session; null before the first.
  [[nodiscard]] const LiveCheckReport* lastCheck() const { return lastCheck_ ? &*lastCheck_ : nullptr; }
  [[nodiscard]] CheckNames checkNames() const;
  /// Checks the rig with the next pictures, whenever the last check was.
  void checkNow();
  /// Whether the pictures are to be asked who leans over the table; answered by somebodyLeans().
  void watchForPeople(bool watches) { *watchesPeople_ = watches; }
  /// The name of who is at the table; empty where nobody knows.
  [[nodiscard]] std::string shooter() const;
  /// Why no film is kept that was wanted; empty where one is, or none was wanted.
  [[nodiscard]] const QString& filmRefusal() const { return filmRefusal_; }
  /// Nothing where no film is kept.
  [[nodiscard]] std::optional<FilmKeeper::Counts> filmCounts() const;
  [[nodiscard]] SuggestionDesk& suggestion() { return suggestion_; }

 signals:
  void changed();
  void imageSeen();
  /// The session could not be begun.
  void refused(const ferrule::Error& error);
  void failed(const ferrule::Error& error);
  /// lastCheck() is a new one.
  void checked();
  void somebodyLeans(bool leans);
  /// A session stands in the record to its end.
  void sessionEnded(ferrule::SessionId session);
  /// One sentence of the camera.
  void said(const QString& sentence);
  /// The shots of a session that ended were set beside what would have been suggested.
  void judged(int shots);

 private:
  void begin(const QString& film);
  void finish(const Result<MeasureReport>& report);
  void startChecks(MeasureObserver& observer);
  void watchPeople(LiveObserver& observer);
  void think();
  void noteShown();
  [[nodiscard]] std::optional<GameState> stateNow(const Position& balls) const;

  Clock clock_;
  MeasureOptions options_;
  MeasuredTable table_;
  LiveState state_ = LiveState::None;
  std::optional<SessionId> session_;
  MeasuredShots shots_;
  AnswerService answers_;
  std::shared_ptr<const SeenImage> image_;
  std::optional<LiveStanding> standing_;
  double askedAt_s_ = 0.0;  ///< film time of the image that the suggestion is for
  SuggestionDesk suggestion_;
  JudgeService judge_;
  std::shared_ptr<ImageQueue> images_;
  std::shared_ptr<LiveInbox> inbox_;
  std::shared_ptr<FilmKeeper> film_;
  QString filmRefusal_;
  std::shared_ptr<LiveSource> source_;
  std::shared_ptr<LiveCheck> checks_;
  std::optional<LiveCheckReport> lastCheck_;
  Position firstRest_;
  std::shared_ptr<std::atomic<bool>> watchesPeople_ = std::make_shared<std::atomic<bool>>(false);
  MeasuringFeed feed_;
  /// Of this session and of those before whose last check still goes on: nobody waits for one.
  std::vector<std::unique_ptr<BackgroundJob>> checking_;
  BackgroundJob asking_;
  BackgroundJob job_;  ///< last: its thread ends before what it tells is gone
};

}  // namespace ferrule
