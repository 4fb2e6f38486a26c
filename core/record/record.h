// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/record/record_values.h"
#include "core/table/told_values.h"

namespace ferrule {

struct DrillEntry;
struct DrillRunEntry;
struct NewDrillRun;
struct RecordedShot;
struct SessionPeriod;
struct TrialEntry;

using DrillRunId = Id<struct DrillRunTag>;

enum class RecordMode {
  ReadWrite,  ///< makes the file where there is none
  ReadOnly,   ///< for looking only; the file must exist
};

struct RecordOptions {
  RecordMode mode = RecordMode::ReadWrite;
  /// How long to wait for another program's write, ms.
  int busyTimeout_ms = 5000;
  /// Largest size in pages of 4096 bytes; 0 for none. For tests of a full disk.
  long mostPages = 0;

  bool operator==(const RecordOptions&) const = default;
};

/// The schema's version that this program writes. Older files are brought forward on opening, after a copy named
/// FILE.version-N.backup was made beside them; newer ones are refused.
inline constexpr int kRecordVersion = 7;

/// The store of everything that was measured or put in by hand: one SQLite file (DEVELOPERS.md, the record).
///
/// A Record belongs to the thread that opened it: open another one on the same path for another thread. Many may read
/// while one writes. Every public function that writes is one transaction: after it returned a value, the data survive
/// loss of power; after an error nothing of it is there.
///
/// Errors of every function: RecordLocked (another program writes), RecordReadOnly, RecordFull, RecordBroken, and
/// NotFound for an id that is not there.
class Record {
 public:
  /// Opens or makes a record. An empty file counts as a new one: it is what remains when the program was stopped
  /// between making the file and its first write. Needs a QCoreApplication. Errors: FileMissing (ReadOnly),
  /// FileNotWritable (no such folder), RecordNotADatabase (another kind of file or another program's database),
  /// RecordTooNew, RecordLocked, RecordReadOnly (an old file that cannot be brought forward), RecordFull, RecordBroken.
  [[nodiscard]] static Result<Record> open(const std::string& path, const RecordOptions& options = {});
  ~Record();
  Record(Record&&) noexcept;
  Record& operator=(Record&&) noexcept;

  [[nodiscard]] const std::string& path() const;
  /// The engine's own check of the whole file; reads all of it. Errors: RecordBroken (detail: what is wrong).
  [[nodiscard]] Result<void> check();

  // Reading, newest session first, frames and shots by number.
  [[nodiscard]] Result<std::vector<Player>> players();
  [[nodiscard]] Result<std::optional<Player>> playerNamed(const std::string& name);
  [[nodiscard]] Result<std::vector<SessionSummary>> sessions();
  [[nodiscard]] Result<std::vector<FrameSummary>> frames(SessionId session);
  [[nodiscard]] Result<std::vector<ShotSummary>> shots(FrameId frame);
  /// Those that became parts of others (ShotField::Joined); their numbers are negative.
  [[nodiscard]] Result<std::vector<ShotSummary>> shotsPutAside(FrameId frame);
  [[nodiscard]] Result<StoredShot> shot(ShotId shot);
  [[nodiscard]] Result<std::vector<Placement>> placements(FrameId frame);
  [[nodiscard]] Result<MeasuredTable> tableOf(SessionId session);
  /// Nothing for a frame put in by hand.
  [[nodiscard]] Result<std::optional<Rig>> rigOf(FrameId frame);
  [[nodiscard]] Result<std::optional<FilmEntry>> filmWithHash(const std::string& sha256);
  /// The sessions in which a film was measured, oldest first.
  [[nodiscard]] Result<std::vector<SessionSummary>> sessionsOfFilm(FilmId film);

  /// Every shot of one player in a period for statistics, oldest session first (recorded_shot.h).
  [[nodiscard]] Result<std::vector<RecordedShot>> shotsOf(PlayerId player, const SessionPeriod& period);

  /// Of the session itself; nothing when none was fitted.
  [[nodiscard]] Result<std::optional<FingerprintEntry>> fingerprintOf(SessionId session);
  /// Of every session on the same table, in the order in which the sessions were played.
  [[nodiscard]] Result<std::vector<FingerprintEntry>> fingerprintsOfTable(SessionId session);

  /// The random names by which a session or a player is known in every record.
  [[nodiscard]] Result<std::string> uidOf(SessionId session);
  [[nodiscard]] Result<std::string> uidOf(PlayerId player);

  /// Every tag that a shot of the record bears, each once, in the order of their bytes.
  [[nodiscard]] Result<std::vector<std::string>> tags();

  // Writing.
  /// id is ignored. Errors: AlreadyRecorded (subject: the name) for a name that is taken.
  [[nodiscard]] Result<PlayerId> addPlayer(const Player& player);
  [[nodiscard]] Result<void> updatePlayer(const Player& player);
  [[nodiscard]] Result<SessionId> addSession(const NewSession& session);
  /// The film of this content: the row that is there, its path brought up to date, or a new one.
  [[nodiscard]] Result<FilmId> addFilm(const FilmEntry& film);
  [[nodiscard]] Result<FrameId> addFrame(const NewFrame& frame);
  /// The shot's number within the frame is reading.number. Errors: AlreadyRecorded when the frame has that number.
  [[nodiscard]] Result<ShotId> appendShot(FrameId frame, const ShotReading& reading, std::span<const Track> tracks,
                                          std::optional<PlayerId> player = std::nullopt,
                                          const std::optional<RulingEntry>& ruling = std::nullopt);
  [[nodiscard]] Result<void> addPlacement(FrameId frame, const Placement& placement);
  /// Marks a frame as measured to its end.
  [[nodiscard]] Result<void> completeFrame(FrameId frame);
  /// In place of what the session's shots had told before.
  [[nodiscard]] Result<void> keepFingerprint(const FingerprintEntry& fingerprint);
  /// In place of what was kept for the shot before.
  [[nodiscard]] Result<void> keepSuggestion(ShotId shot, const SuggestionEntry& suggestion);
  /// In place of what was kept for the shot before.
  [[nodiscard]] Result<void> keepExplanation(ShotId shot, const std::string& content);
  /// Takes the last shot of a frame out of the record, for the undo of a shot that was put in by hand.
  /// Errors: NotFound for a frame without shots, or of a film: what a film showed is corrected, not removed.
  [[nodiscard]] Result<void> removeLastShot(FrameId frame);
  /// Something under way of one kind, in place of what was kept of that kind; nothing removes it.
  [[nodiscard]] Result<void> keepDraft(const std::string& kind, const std::optional<std::string>& content);
  [[nodiscard]] Result<std::optional<std::string>> draft(const std::string& kind);

  /// Replaces one value of a shot, keeping what stood there. value is in the words of the files ("pot", "cue", "12",
  /// "foot-left", "true", a player's name, a ruling's JSON with "sureness" and "fouls"; ShotField); nothing clears it.
  /// An outcome set by a person is certain; a target set by a person loses what was measured against the old one,
  /// account of the miss included. Errors: FieldInvalid (subject: the value; detail: the field), NotFound for an
  /// unknown player.
  [[nodiscard]] Result<CorrectionId> correctShot(ShotId shot, ShotField field, const std::optional<std::string>& value,
                                                 const std::string& who, UtcMilliseconds when);
  /// One correction with what follows from it, in this shot and in others: the first change is what the person said,
  /// the others fall with it and are left out where they change nothing. changes is not empty. Errors: as
  /// correctShot().
  [[nodiscard]] Result<CorrectionId> correctShots(std::span<const ShotChange> changes, const std::string& who,
                                                  UtcMilliseconds when);
  /// Undo: puts back what a correction replaced, with all that fell with it, and forgets it. Only the latest correction
  /// of a value can be withdrawn. Errors: NotFound for one that is gone or has a later one on top.
  [[nodiscard]] Result<void> withdrawCorrection(CorrectionId correction);
  /// Everything that people corrected in a frame, oldest first, of shots that are put aside too; what fell with a
  /// correction is left out.
  [[nodiscard]] Result<std::vector<ValueCorrection>> correctionsIn(FrameId frame);
  /// Part of a correction (ShotField::Split): cuts a shot's tracks, and what follows becomes a new shot behind it, with
  /// what was read of it; secondTracks may begin a little earlier. second.number is ignored: it is the next one, and
  /// later shots move on. Errors: NotFound.
  [[nodiscard]] Result<ShotId> splitShot(ShotId shot, double from_s, const ShotReading& second,
                                         const std::vector<Track>& secondTracks);
  /// Part of a correction (ShotField::Joined): gives a shot the tracks of the one behind it, which is put aside, out of
  /// every list and statistic, with all that hangs on it. Nothing where no shot is behind it. Errors: NotFound.
  [[nodiscard]] Result<std::optional<ShotBoundary>> joinNextShot(ShotId shot);
  /// What stands beside a shot since something before it was corrected: kept in place of what stood there, which stays
  /// in the corrections and comes back when the frame's latest one is withdrawn. As keepSuggestion() where nothing in
  /// the frame was corrected.
  [[nodiscard]] Result<void> replaceSuggestion(ShotId shot, const SuggestionEntry& suggestion, const std::string& who,
                                               UtcMilliseconds when);
  /// Several calls as one transaction: after an error nothing of it is there.
  [[nodiscard]] Result<void> together(const std::function<Result<void>()>& work);
  [[nodiscard]] Result<NoteId> addNote(ShotId shot, const std::string& text, const std::string& who,
                                       UtcMilliseconds when);
  [[nodiscard]] Result<void> removeNote(NoteId note);
  [[nodiscard]] Result<void> addTag(ShotId shot, const std::string& tag);
  [[nodiscard]] Result<void> removeTag(ShotId shot, const std::string& tag);

  // Drills (drill_rows.h).
  /// A person's own, in the order in which they were made.
  [[nodiscard]] Result<std::vector<DrillEntry>> drills();
  /// A new one, or in place of what was kept under its key.
  [[nodiscard]] Result<void> keepDrill(const DrillEntry& drill, UtcMilliseconds when);
  /// Its runs stay.
  [[nodiscard]] Result<void> removeDrill(const std::string& key);
  [[nodiscard]] Result<DrillRunId> addDrillRun(const NewDrillRun& run);
  [[nodiscard]] Result<void> appendTrial(DrillRunId run, const TrialEntry& trial);
  /// Errors: NotFound for a run without a try.
  [[nodiscard]] Result<void> removeLastTrial(DrillRunId run);
  [[nodiscard]] Result<void> endDrillRun(DrillRunId run, UtcMilliseconds when);
  /// With its tries.
  [[nodiscard]] Result<void> removeDrillRun(DrillRunId run);
  /// Of one drill, or of all; oldest first.
  [[nodiscard]] Result<std::vector<DrillRunEntry>> drillRuns(const std::optional<std::string>& key);
  /// Of one player, of all drills; oldest first.
  [[nodiscard]] Result<std::vector<DrillRunEntry>> drillRunsOf(PlayerId player);

 private:
  class Impl;
  friend struct RecordInside;  ///< for people.h and its neighbours in this folder
  explicit Record(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

/// SHA-256 of a whole file, lower-case hex. Errors: FileMissing, FileUnreadable.
[[nodiscard]] Result<std::string> fileSha256(const std::string& path);

}  // namespace ferrule
