// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/rules/testimony.h"

/// Rulings in the form of the files.
namespace ferrule {

/// What a person said of a ruling: with it the shot is ruled again whenever something before it changes.
struct SaidOfRuling {
  std::vector<FoulKind> fouls;    ///< were committed
  std::vector<FoulKind> noFouls;  ///< were none
  std::optional<Overrule> overrule;
  std::vector<Testimony> answers = {};    ///< to what the referee asked, one for each question
  std::optional<OptionKind> chosen = {};  ///< of the options that were offered

  bool operator==(const SaidOfRuling&) const = default;
};

/// A ruling as it is kept beside its shot.
struct RuledShot {
  Game game = Game::EightBall;
  Edition edition = Edition::World2016;
  int frame = 1;                   ///< of the film or session, from 1: a new rack begins a new one
  std::array<int, 2> framesWon{};  ///< by seat, after the shot
  std::array<int, 2> points{};     ///< by seat, after the shot; straight pool
  Ruling ruling;
  SaidOfRuling said = {};  ///< the ruling heeds it

  bool operator==(const RuledShot&) const = default;
};

/// One line of JSON (DEVELOPERS.md, file formats): {"game", "edition", "frame", "frames_won", "points", "sureness",
/// "shooter", "fouls", "pot", ...}. A decision carries its "edition", "section", "events" (places in the shot's events,
/// from 0) and "sureness". "said" is there where a person said something of it.
[[nodiscard]] std::string rulingText(const RuledShot& ruled);
/// Nothing for anything that rulingText did not write.
[[nodiscard]] std::optional<RuledShot> rulingFromText(std::string_view text);

}  // namespace ferrule
