// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/reading/shot_reader.h"
#include "core/rules/match.h"
#include "core/rules/ruling_text.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// A shot as it was ruled while measuring.
struct FilmRuling {
  RuledShot ruled;
  /// Who struck, where the film shows the frame from its break on and nothing was left open since; nothing otherwise.
  std::optional<Seat> shooter;

  bool operator==(const FilmRuling&) const = default;
};

/// What people said of a shot that was filmed.
struct SaidOfShot {
  std::vector<Testimony> testimonies;
  std::optional<Overrule> overrule;
  std::optional<OptionKind> chosen = {};

  bool operator==(const SaidOfShot&) const = default;
};

/// Follows the shots of one film with a referee: a break begins a frame, a film that begins in the middle of one is
/// joined there. Nobody calls, declares or chooses anything on a film: what hangs on that is asked, and until it is
/// answered the first option is taken. What people said afterwards is heeded, and is in force for what comes after. The
/// first seat is who breaks first. Its shots are remembered without their tracks, so that they can be ruled again.
class FilmReferee {
 public:
  FilmReferee(const RuleSet& rules, const MeasuredTable& measured);

  /// The next shot of the film, in order.
  [[nodiscard]] FilmRuling judge(const ReadShot& shot, const SaidOfShot& said = {});
  /// What people say of the shot that was judged so manyth, from 0, in place of what they had said of it: all are ruled
  /// again. Their rulings, in order.
  [[nodiscard]] std::vector<FilmRuling> say(std::size_t shot, const SaidOfShot& said);
  /// How many shots were judged.
  [[nodiscard]] std::size_t shots() const { return judged_.size(); }

  /// How the frame stands now.
  [[nodiscard]] const GameState& state() const { return match_.frames().back().state(); }
  /// Frames won, by seat.
  [[nodiscard]] std::array<int, 2> score() const { return match_.score(); }

 private:
  struct Judged {
    ShotReading reading;
    ShotEvents events;
    SaidOfShot said;
  };

  [[nodiscard]] FilmRuling judgeNext(const Judged& shot);
  void placeFrame(const ShotReading& reading);
  [[nodiscard]] GameState joined(const ShotReading& reading) const;

  MeasuredTable measured_;
  Match match_;
  std::vector<Judged> judged_;
  bool begun_ = false;
  bool knowsTurn_ = false;  ///< who is at the table
};

}  // namespace ferrule
