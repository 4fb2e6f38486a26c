// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/camera/camera_move.h"
#include "core/measure/film_referee.h"
#include "core/measure/judge_session.h"
#include "core/measure/measured_file.h"
#include "core/measure/reading_source.h"
#include "core/measure/table_fingerprint.h"
#include "core/reading/shot_reader.h"
#include "core/record/record.h"

namespace ferrule {

/// The main job: film in, recorded session out.
struct MeasureOptions {
  std::string film;    ///< path
  std::string rig;     ///< path of the rig file
  std::string table;   ///< path of table.json, or a preset's name
  std::string game;    ///< kept with the frame; a game that core/rules knows is ruled; empty when unknown
  std::string output;  ///< path of measured.json; empty for none

  /// Path of cue.json: the cue carries tags. Empty: what table.json says of a cue, if it does.
  std::string cue;
  std::string pitchLog;  ///< path of the log of a pitch sensor on the cue; empty for none

  std::string record;                ///< path; empty for none
  std::string session;               ///< empty: the film's name without its ending
  std::vector<std::string> players;  ///< names, in playing order; new names become new players
  bool again = false;                ///< measure a film that is in the record once more, as a session beside the first
  /// Then set the planner's suggestion beside each shot (judge_session.h), where there is a game and a record.
  bool judge = true;
  SessionKind kind = SessionKind::Unknown;  ///< of a session that is begun

  bool operator==(const MeasureOptions&) const = default;
};

/// What a person said of the ruling of a shot that stands in the record.
struct SaidOfRecorded {
  ShotId shot;
  SaidOfRuling said;  ///< in place of what was said of it before
  std::string who;
  UtcMilliseconds when = 0;

  bool operator==(const SaidOfRecorded&) const = default;
};

/// A shot of the record as it is ruled since a person said something.
struct RuledAgain {
  ShotId shot;
  FilmRuling ruling;
  /// With what was answered in it; nothing where the reading stands as it was told before.
  std::optional<ShotReading> reading = {};

  bool operator==(const RuledAgain&) const = default;
};

/// What is told while measuring, on the measuring thread. Any may be empty.
struct MeasureObserver {
  std::function<void(SessionId, const std::string& name)> opened;  ///< a frame of that session waits for its shots
  std::function<void(const ImageReading&)> image;
  /// After image, for some images a second: what the reading was made from. Shared with nobody who writes to it.
  std::function<void(const ImageReading&, const KeptPicture&)> picture;
  std::function<void(const ReadShot&)> shot;
  std::function<void(const ReadShot&, const FilmRuling&)> ruling;  ///< after shot, when there is a referee
  std::function<void(const ReadShot&, ShotId)> recorded;           ///< after both, once the shot stands in the record
  std::function<void(const Placement&)> placement;
  std::function<void(const JudgedShot&)> judged;                ///< after the film's end
  std::function<void(const ReadShot&, const CueReading&)> cue;  ///< after shot, when the cue was seen
  /// Asked between images, where there are a record and a referee: what people said meanwhile. It becomes a correction
  /// of the record, and the referee goes on from it.
  std::function<std::vector<SaidOfRecorded>()> said;
  std::function<void(const std::vector<RuledAgain>&)> ruledAgain;  ///< after said: every shot so far, in order
};

struct MeasureReport {
  long images = 0;
  double duration_s = 0.0;
  int shots = 0;
  int placements = 0;
  bool endedEarly = false;        ///< the film is shorter than its header says
  std::vector<CameraMove> moves;  ///< of the camera, in order; shots during one are doubtful
  std::optional<SessionId> session;
  std::string sessionName;
  std::vector<std::string> earlierSessions;  ///< that hold the same film, when measured again
  std::optional<KnownFingerprint> table;     ///< with which the shots were read; nothing: with the literature's values
  std::optional<JudgeReport> judged;         ///< nothing where it was not asked for, or stopped before its end
};

/// Measures a film. With a record, each shot is committed as soon as it is read: cancelled or stopped, what was
/// committed stays and its frame counts as incomplete. The output appears only when it is whole. Stopped while judging,
/// the film stays measured and judgeSession() goes on where it stopped.
///
/// A frame is added to the session of that name on the same table, or a new session is begun. With exactly one player
/// every shot is that player's. With two, in playing order, the referee says whose turn it was, as long as the film
/// shows the frame from its break on and no ruling waits for a person; otherwise the player stays open.
///
/// Needs a QCoreApplication when there is a record.
/// Errors: those of the film, rig, table, cue, pitch log and record; FieldMissing (subject: the table) for a pitch log
/// without a cue; FieldInvalid (subject: the cue's file) for an unknown dictionary
/// or an id that a rail's tag has; ImageSizeMismatch (subject: the
/// film; detail: the rig file); AlreadyRecorded (subject: the film; detail: the session) unless again; FileNotWritable;
/// Cancelled.
[[nodiscard]] Result<MeasureReport> measureFilm(const MeasureOptions& options, const JobControl& job,
                                                const MeasureObserver& observer = {});

/// Where measured shots go. Any may be null.
struct MeasureSinks {
  Record* record = nullptr;  ///< with frame
  FrameId frame;
  std::optional<PlayerId> player;  ///< of every shot
  MeasuredFile* file = nullptr;
  FilmReferee* referee = nullptr;
  std::vector<PlayerId> seats{};       ///< with a referee: who sits where; empty where nobody knows
  const Fingerprint* table = nullptr;  ///< what earlier shots told of the table; no sink, but as the shots are read
};

/// The middle of measureFilm, from readings to sinks; neither opens nor completes anything.
/// Errors: those of Record; Cancelled.
[[nodiscard]] Result<MeasureReport> measureReadings(ReadingSource& source, const MeasuredTable& measured,
                                                    const MeasureSinks& sinks, const JobControl& job,
                                                    const MeasureObserver& observer = {});

}  // namespace ferrule
