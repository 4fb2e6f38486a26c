// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/progress/played_shot.h"
#include "core/table/measured_table.h"

/// People who do not exist and what they played: a seeded generator of deliveries and outcomes with planted facts.
/// Everything it makes is invented, and says so in its names.
namespace ferrule::invented {

/// How somebody plays. A shot's aim is off by a normal error whose spread follows from these; the object ball's line
/// follows from the aim to first order, and it falls when its line is within the pocket's margin.
struct Habits {
  std::string name;
  double aimSpread_rad = 0.0035;
  double aimSpreadAtEnd_rad = 0.0035;  ///< in the last week; in between along a straight line
  double aimMean_rad = 0.0;            ///< + to the left
  double leftCutMean_rad = 0.0;        ///< + thin, added on balls cut to the left
  double lateFactor = 1.0;             ///< of the aim's spread after 40 minutes
  double speedSpread = 0.08;
  double speedSpreadAtEnd = 0.08;
  double dayToDay = 0.10;  ///< standard deviation of the logarithm of a day's own factor on both spreads
};

struct Plan {
  int weeks = 10;
  int practiceShots = 60;  ///< one practice alone each week, in order of the players; the first 20 repeat two set-ups
  int matchShots = 40;     ///< of each of two players, one match each week in pairs; 0 for none
  std::int64_t firstDay_ms = 1'756'800'000'000;  ///< 2025-09-02 08:00 UTC
  std::uint64_t seed = 1;
};

/// What a planner would have said of a shot in a match: the chance is the player's own (from the habits of the day, so
/// that stated chances are kept), the leave that of the meant speed.
struct Judged {
  double potChance = 0.0;
  double choiceLoss = 0.0;
  double deliveryLoss = 0.0;
  TablePoint leave;
  BallName nextBall{1};  ///< stands in the reading, too
  bool shown = false;    ///< the suggestion, before the shot
  double direct = 0.0;   ///< the best chance of a direct pot before the shot; 0: none

  bool operator==(const Judged&) const = default;
};

/// One run of a drill by hand.
struct Run {
  std::size_t player = 0;
  std::int64_t started_ms = 0;
  std::vector<bool> met;
};

struct Shot {
  std::size_t player = 0;
  int frame = 1;  ///< within the session
  double minutes = 0.0;
  ShotReading reading;  ///< number within the frame; times from the session's start, s
  bool wonFrame = false;
  std::optional<Judged> judged;  ///< of pots in matches
};

struct Session {
  std::string name;
  std::int64_t started_ms = 0;
  std::vector<std::size_t> players;
  std::vector<Shot> shots;
};

struct Squad {
  MeasuredTable table;
  std::vector<Habits> players;
  std::vector<Session> sessions;
  std::vector<Run> runs;  ///< of the cut fan, one each week; the fifth player's get better
};

/// Six juniors. Planted: the first one's speed gets steadier over the weeks, the second one's aim goes after 40
/// minutes, the third one shows nothing but noise, the fourth one cuts balls to the left too thick, the fifth one's aim
/// gets steadier, the sixth one is noise at a higher level.
[[nodiscard]] std::vector<Habits> juniorSquad();

[[nodiscard]] Squad squad(const std::vector<Habits>& players, const Plan& plan);

/// The drill of the runs.
inline constexpr const char* kSquadDrill = "cut-fan";

/// One player's shots as the measures take them.
[[nodiscard]] PlayerHistory historyOf(const Squad& squad, std::size_t player);

/// A player alone.
[[nodiscard]] PlayerHistory history(const Habits& habits, const Plan& plan);

}  // namespace ferrule::invented
