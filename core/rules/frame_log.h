// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/rules/referee.h"
#include "core/rules/testimony.h"

namespace ferrule {

/// One step of a frame: what happened, what people said about it, and what follows.
struct FrameEntry {
  std::variant<ShotEvents, Announcement> what;
  // Put in by people; everything below is computed from these and the entries before.
  std::vector<Testimony> testimonies;
  std::optional<Overrule> overrule;
  Choices choices;
  bool voided = false;  ///< interference: put back and replayed, so it counts for nothing (1.9)

  Ruling automatic;  ///< from what was seen and what was said before, without this entry's testimonies and overrule
  Ruling ruling;     ///< in force
  GameState after;

  bool operator==(const FrameEntry&) const = default;
};

/// The sequence of a frame. Whatever is changed in the middle, all that follows is ruled anew; every change can be
/// undone and redone. Entries are counted from 0; a number that is not there is our bug (contract).
class FrameLog {
 public:
  explicit FrameLog(GameState start);

  [[nodiscard]] const GameState& start() const { return start_; }
  /// As it stands after the last entry.
  [[nodiscard]] const GameState& state() const;
  [[nodiscard]] const GameState& stateBefore(std::size_t entry) const;
  [[nodiscard]] const std::vector<FrameEntry>& entries() const { return entries_; }

  // Edits. Each is one step of undo.
  void add(ShotEvents shot);
  void add(Announcement announcement);
  void testify(std::size_t entry, Testimony testimony);
  /// Takes back all that was said about an entry.
  void clearTestimonies(std::size_t entry);
  void overrule(std::size_t entry, std::optional<Overrule> overrule);
  void choose(std::size_t entry, std::optional<OptionKind> option);
  void setVoided(std::size_t entry, bool voided);
  /// Another beginning, such as another side at the table.
  void restart(GameState start);

  [[nodiscard]] bool canUndo() const { return !undone_.empty(); }
  [[nodiscard]] bool canRedo() const { return !redone_.empty(); }
  /// Nothing happens where there is nothing to undo or redo.
  void undo();
  void redo();

  /// Entries whose ruling waits for a person.
  [[nodiscard]] std::vector<std::size_t> open() const;

  bool operator==(const FrameLog& other) const { return start_ == other.start_ && entries_ == other.entries_; }

 private:
  /// What people put in, in one entry or as the start; nothing for an entry that is not there.
  struct Edit {
    std::size_t entry = 0;
    std::optional<FrameEntry> entryThen;
    std::optional<GameState> startThen;
  };

  /// Puts an entry (nothing: takes the last one away) and remembers what was there.
  void put(std::size_t entry, std::optional<FrameEntry> wanted);
  [[nodiscard]] Edit swapIn(Edit edit);
  void ruleFrom(std::size_t entry);

  GameState start_;
  std::vector<FrameEntry> entries_;
  std::vector<Edit> undone_;
  std::vector<Edit> redone_;
};

}  // namespace ferrule
