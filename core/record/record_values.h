// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"
#include "core/table/track.h"

/// What goes into the record and what comes out of it, as values.
namespace ferrule {

/// Milliseconds since 1970-01-01 00:00 UTC, without leap seconds. Never local time, so an hour that the clocks repeat
/// in autumn stays in order.
using UtcMilliseconds = std::int64_t;

enum class Handedness { Unknown, Right, Left, Both };

/// A person. Names are unique in one record.
struct Player {
  PlayerId id;
  std::string name;
  Handedness handedness = Handedness::Unknown;
  bool minor = false;  ///< consent must then come from a parent or guardian (people_values.h)
  bool guest = false;  ///< stands in for somebody who is not known yet

  bool operator==(const Player&) const = default;
};

/// One film file, known by its content.
struct FilmEntry {
  FilmId id;
  std::string path;    ///< where it was when it was measured
  std::string sha256;  ///< of the whole file, lower-case hex
  ImageSize size;
  long images = 0;                            ///< read, not claimed
  double duration_s = 0.0;                    ///< time of the last image
  std::optional<UtcMilliseconds> firstImage;  ///< when the first image was taken: turns film time into UTC

  bool operator==(const FilmEntry&) const = default;
};

/// What a session was for: shots under match pressure and shots of practice are not one sample.
enum class SessionKind { Unknown, Practice, Match, Lesson };

/// A session to be added.
struct NewSession {
  std::string name;
  UtcMilliseconds started = 0;
  std::string tableName;  ///< the owner's name for the table, a preset or a file's name
  MeasuredTable table;
  std::vector<PlayerId> players;  ///< in playing order
  SessionKind kind = SessionKind::Unknown;

  bool operator==(const NewSession&) const = default;
};

/// A frame to be added; its number follows from the session. One film is one frame; the rig belongs to the film, since
/// a camera may be moved within one session.
struct NewFrame {
  SessionId session;
  std::string game;            ///< "eight-ball", ...; empty when unknown
  std::optional<FilmId> film;  ///< nothing when the frame is put in by hand
  std::optional<Rig> rig;      ///< the one the film was measured with

  bool operator==(const NewFrame&) const = default;
};

struct SessionSummary {
  SessionId id;
  std::string name;
  UtcMilliseconds started = 0;
  std::string tableName;
  std::vector<std::string> players;  ///< in playing order
  int frames = 0;
  int shots = 0;
  SessionKind kind = SessionKind::Unknown;

  bool operator==(const SessionSummary&) const = default;
};

struct FrameSummary {
  FrameId id;
  SessionId session;
  int number = 0;  ///< within the session, from 1
  std::string game;
  std::optional<FilmEntry> film;
  int shots = 0;
  bool complete = false;  ///< false: still running, or measuring was interrupted

  bool operator==(const FrameSummary&) const = default;
};

/// One row of a shot list. Values are the corrected ones where a person corrected them.
struct ShotSummary {
  ShotId id;
  FrameId frame;
  int number = 0;  ///< within the frame, from 1
  std::optional<PlayerId> player;
  std::string playerName;  ///< empty when the player is unknown
  double strike_s = 0.0;   ///< film time
  double rest_s = 0.0;
  std::optional<UtcMilliseconds> struckAt;
  Outcome outcome = Outcome::Miss;
  Verdict verdict = Verdict::Proposed;
  std::optional<BallName> firstContact;
  bool scratch = false;
  std::optional<Target> target;
  std::vector<PocketedBall> pocketed;
  Delivery delivery;
  bool corrected = false;  ///< a person changed at least one value of this shot

  bool operator==(const ShotSummary&) const = default;
};

/// The values of a shot that a person may correct.
enum class ShotField {
  Player,
  Outcome,
  FirstContact,
  Scratch,
  TargetBall,
  TargetPocket,
  Ruling,
  Reading,     ///< all that was read of the shot (core/table/reading_text.h)
  BallNames,   ///< two balls that are each other: "5 8", or "5 8 12.345" from that film time in s on
  BallBefore,  ///< told, see ShotChange: where a ball lay, "5 0.1000 -0.2000" in m
  BallAfter,   ///< told: where it came to rest
  Times,       ///< told: strike and rest, film time in s, "12.345 15.250"
  Split,       ///< told: another shot begins, and which it became, "12.345 77" (told_values.h, ShotBoundary)
  Joined,      ///< told: the shot behind belongs to this one, "15.250 78": until when it was this one, and which it was
  Placement,   ///< a ball that was put down before the shot, "5 9.250 0.1 -0.2"; none: nobody put it down
  Suggestion,  ///< the plans beside the shot, worked out anew: never said, it follows from what was
};

/// One value of a shot as it is to be.
struct ShotChange {
  ShotId shot;
  ShotField field = ShotField::Outcome;
  std::optional<std::string> value;  ///< in the words of the files; nothing clears it
  /// What stood there, for a field that is told: the record keeps what a person said of it, and what follows is in the
  /// reading that is changed with it.
  std::optional<std::string> before = {};

  bool operator==(const ShotChange&) const = default;
};

/// A value that was measured and what a person made of it. Both are kept for good.
struct ValueCorrection {
  CorrectionId id;
  std::string entity;  ///< "shot", "frame", ...
  std::int64_t entityId = 0;
  std::string field;                    ///< "outcome", ...
  std::optional<std::string> measured;  ///< the value that stood before, in the words of the files; nothing: none
  std::optional<std::string> corrected;
  std::string who;
  UtcMilliseconds when = 0;
  std::optional<CorrectionId> cause;  ///< fell with that correction

  bool operator==(const ValueCorrection&) const = default;
};

struct Note {
  NoteId id;
  std::string text;
  std::string who;
  UtcMilliseconds when = 0;

  bool operator==(const Note&) const = default;
};

/// A referee's ruling on a shot. The record keeps its text as it is and reads no more of it than these two.
struct RulingEntry {
  Verdict sureness = Verdict::Ask;
  std::vector<std::string> fouls;  ///< in the words of the files, such as "wrong-ball-first"
  std::string content;             ///< one JSON object (DEVELOPERS.md, file formats)

  bool operator==(const RulingEntry&) const = default;
};

/// What a session's shots told about its table. The record keeps the text as it is (core/physics/fingerprint.h).
struct FingerprintEntry {
  SessionId session;
  UtcMilliseconds fitted = 0;  ///< when the fit was made; the table was like this when the session was played
  int shots = 0;               ///< that took part
  std::string content;

  bool operator==(const FingerprintEntry&) const = default;
};

/// The plans as they stood before a shot, and what the shot was worth beside the best of them.
struct SuggestionEntry {
  std::string planner;  ///< name and version of what ranked the plans
  bool shown = false;   ///< the player or coach saw them before the shot: then the choice was not the player's alone
  /// value(suggested) - value(taken) and value(taken) - value(what came out): chances of winning the frame, or points
  /// in straight pool. Nothing when the shot could not be matched to a plan.
  std::optional<double> choiceLoss;
  std::optional<double> deliveryLoss;
  std::string content;  ///< one JSON object (DEVELOPERS.md, file formats)

  bool operator==(const SuggestionEntry&) const = default;
};

/// One shot whole, as the review shows it.
struct StoredShot {
  ShotId id;
  FrameId frame;
  SessionId session;
  std::optional<PlayerId> player;
  std::string playerName;
  std::optional<FilmEntry> film;
  ShotReading reading;                       ///< corrected where a person corrected; number within the frame
  std::vector<Track> tracks;                 ///< quantised to 0.01 mm and 1 us
  std::vector<ValueCorrection> corrections;  ///< oldest first
  std::vector<Note> notes;                   ///< oldest first
  std::vector<std::string> tags;
  std::optional<RulingEntry> ruling;  ///< nothing where no referee watched
  std::optional<SuggestionEntry> suggestion;
  std::optional<std::string> explanation;  ///< what the reading was made whole from (core/table/shot_explanation.h)

  bool operator==(const StoredShot&) const = default;
};

/// "right", "left", "both", "unknown".
[[nodiscard]] std::string_view toText(Handedness handedness);
[[nodiscard]] std::optional<Handedness> handednessFromText(std::string_view text);
/// "unknown", "practice", "match", "lesson".
[[nodiscard]] std::string_view toText(SessionKind kind);
[[nodiscard]] std::optional<SessionKind> sessionKindFromText(std::string_view text);
/// "player", "outcome", "first_contact", "scratch", "target_ball", "target_pocket", "ruling", "reading", "ball_names",
/// "ball_before", "ball_after", "times", "split", "joined", "placement", "suggestion".
[[nodiscard]] std::string_view toText(ShotField field);
[[nodiscard]] std::optional<ShotField> shotFieldFromText(std::string_view text);

}  // namespace ferrule
