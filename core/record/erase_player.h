// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/record/record.h"

/// Erasing a person wholly, and saying beforehand what goes and what stays.
namespace ferrule {

/// What goes with a person, or is changed. In the order in which it is told.
enum class ErasedKind {
  Sessions,      ///< in which nobody else took part, whole
  Frames,        ///< of these sessions
  Placements,    ///< of these sessions
  Fingerprints,  ///< of these sessions
  Seats,         ///< in sessions of others, which stay
  Shots,
  Positions,
  Deliveries,
  Events,
  Pocketed,
  Tracks,
  Rulings,
  Suggestions,
  Explanations,
  Corrections,  ///< of all that goes
  Notes,        ///< on all that goes
  Tags,         ///< on all that goes
  Consents,
  Groups,
  DrillRuns,           ///< of the person, and of these sessions
  DrillTries,          ///< of these runs, with what their goals came to
  Drafts,              ///< sessions under way in which the person plays
  NotesWithoutAuthor,  ///< written by the person about others: the text stays, the author's name goes
  CorrectionsWithoutAuthor,
  NamesInCorrections,  ///< of others' shots that were this person's before
  NamesInRulings,      ///< others' shots that this person ruled anew: the ruling stays, the name goes
};
inline constexpr int kErasedKinds = 26;

struct ErasedRows {
  ErasedKind kind = ErasedKind::Shots;
  long rows = 0;

  bool operator==(const ErasedRows&) const = default;
};

/// A film file that the person's play was measured from. The file is the user's.
struct ErasedFilm {
  std::string path;  ///< where it was when it was measured
  std::string sha256;
  bool shared = false;  ///< others play in it, so the record goes on naming it

  bool operator==(const ErasedFilm&) const = default;
};

/// A text of somebody else with the name in it as a word of its own.
struct Mention {
  enum class Where { Session, Table, Note, Tag } where = Where::Note;
  std::int64_t row = 0;  ///< its number; for a tag of its row in the list of tags
  std::string text;      ///< as it is
  std::string withoutName;

  bool operator==(const Mention&) const = default;
};

/// What erasing a person means. The window and the command line show this and nothing else.
struct ErasePreview {
  Player player;
  std::vector<ErasedRows> rows;  ///< those that are not 0
  std::vector<ErasedFilm> films;
  std::vector<Mention> mentions;
  std::vector<std::string> backups;  ///< copies beside the record, made when it was brought forward, that hold the name
  int othersShots = 0;               ///< in sessions with the person; they stay
  int othersPositions = 0;           ///< of those shots: places of balls, without a name
  int guardianLines = 0;  ///< consents of others that name the person as giver or writer; they stay as evidence

  [[nodiscard]] long rowsOf(ErasedKind kind) const;
  bool operator==(const ErasePreview&) const = default;
};

/// Errors: NotFound, those of Record.
[[nodiscard]] Result<ErasePreview> previewErase(Record& record, PlayerId player);

struct EraseOptions {
  bool blankMentions = true;   ///< take the name out of the texts of others
  bool deleteFilms = false;    ///< the files of films in which nobody else plays, where they still are those films
  bool deleteBackups = false;  ///< the copies that hold the name

  bool operator==(const EraseOptions&) const = default;
};

/// What became of a file that was to be deleted.
struct FileFate {
  enum class Fate { Deleted, Gone, Another, Failed } fate = Fate::Deleted;
  std::string path;
  std::string detail;  ///< Failed: the system's words

  bool operator==(const FileFate&) const = default;
};

struct EraseReport {
  ErasePreview erased;  ///< as it stood in the moment of erasing
  std::vector<FileFate> files;
  /// How often the name still stands in the record's file and its log, as bytes, part of other words included.
  /// Nothing when the file could not be made compact, because another program reads it or the disk is full: then old
  /// pages may hold the name until the next try.
  std::optional<long> namesLeft;
};

/// Erases a person: all that previewErase tells, in one transaction; then the file is written anew without its free
/// pages and the log is emptied. Only the person's random uids stay, so that a merge does not bring the person back.
/// Not undone by anything. Errors: NotFound, those of Record; after an error everything is there.
[[nodiscard]] Result<EraseReport> erasePlayer(Record& record, PlayerId player, const EraseOptions& options,
                                              UtcMilliseconds now);
/// Makes a record compact and counts a name in it, as erasePlayer does at its end.
[[nodiscard]] std::optional<long> compactAndCount(Record& record, const std::string& name);

}  // namespace ferrule
