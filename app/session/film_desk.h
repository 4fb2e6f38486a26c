// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QObject>

#include "app/session/answer_service.h"
#include "app/session/judge_service.h"
#include "app/session/measured_shots.h"
#include "app/session/measuring_feed.h"
#include "app/window/background_job.h"
#include "app/window/shot_list.h"
#include "core/camera/check_file.h"
#include "core/measure/film_in_record.h"
#include "core/vision/film_check.h"

namespace ferrule {

/// How a session from a film stands.
enum class FilmState { None, Measuring, Done, Stopped };

/// A session that is measured from a film: starts and stops the work, and holds what came of it. Knows no widgets.
class FilmDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<UtcMilliseconds()>;

  explicit FilmDesk(Clock clock, QObject* parent = nullptr);

  /// Begins to measure; an earlier session of this desk is put aside. Answered by changed(), or by refused() when
  /// nothing could be begun.
  /// The rig is first checked against the film: where they do not belong together nothing is begun, answered by
  /// doubted(), unless despiteCheck.
  void start(const MeasureOptions& options, bool despiteCheck = false);
  /// Ends it soon. What was committed stays.
  void stop();
  /// Puts the session aside, so that another one can be begun.
  void close();

  /// Asks for the shots of a session of a record; answered by listed().
  void list(const QString& record, SessionId session);

  [[nodiscard]] FilmState state() const { return state_; }
  [[nodiscard]] const MeasureOptions& options() const { return options_; }
  [[nodiscard]] const MeasuredTable& table() const { return table_; }
  [[nodiscard]] const QString& sessionName() const { return sessionName_; }
  [[nodiscard]] std::optional<SessionId> session() const { return session_; }
  [[nodiscard]] MeasuredShots& shots() { return shots_; }
  [[nodiscard]] const MeasuredShots& shots() const { return shots_; }
  /// Null until the first one.
  [[nodiscard]] const SeenImage* image() const { return image_.get(); }
  /// 0 to 1, negative when unknown; of the step that is under way.
  [[nodiscard]] double share() const { return share_; }
  /// "measuring", "judging".
  [[nodiscard]] const QString& step() const { return step_; }
  [[nodiscard]] double elapsed_s() const;
  /// How the rig's check against the film came out; null before, and where it could not be made.
  [[nodiscard]] const SelfCheck* check() const { return check_ ? &check_->check : nullptr; }
  [[nodiscard]] CheckNames checkNames() const;
  /// Once it is done.
  [[nodiscard]] const std::optional<MeasureReport>& report() const { return report_; }

 signals:
  void changed();
  void progressed();
  void imageSeen();
  /// Film and rig do not belong together, as check() says.
  void doubted();
  /// known: where the film was measured before, when that is why.
  void refused(const ferrule::Error& error, const std::optional<ferrule::FilmInRecord>& known);
  /// A session stands in the record to its end.
  void sessionEnded(ferrule::SessionId session);
  void listed(const ferrule::ShotList& shots);
  /// Shots of a film that was measured before, whose suggestions had been broken off.
  void judged(int shots);
  void failed(const ferrule::Error& error);

 private:
  struct Outcome {
    Result<MeasureReport> report;
    std::optional<FilmInRecord> known;
    bool doubted = false;  ///< nothing was begun
  };

  void finish(const Outcome& outcome);

  MeasureOptions options_;
  MeasuredTable table_;
  FilmState state_ = FilmState::None;
  QString sessionName_;
  std::optional<SessionId> session_;
  MeasuredShots shots_;
  AnswerService answers_;
  std::shared_ptr<LiveInbox> inbox_;
  std::shared_ptr<const SeenImage> image_;
  double share_ = -1.0;
  QString step_;
  QElapsedTimer sinceStep_;
  std::optional<MeasureReport> report_;
  std::optional<FilmCheck> check_;
  MeasuringFeed feed_;
  JudgeService judge_;
  BackgroundJob lister_;
  BackgroundJob job_;  ///< last: its thread ends before what it tells is gone
};

}  // namespace ferrule
