// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "core/table/cushion.h"
#include "core/table/pocket.h"
#include "core/table/track.h"

namespace ferrule {

/// A value with its standard uncertainty, both in the unit of the name that holds it.
struct Measured {
  double value = 0.0;
  double standardUncertainty = 0.0;

  bool operator==(const Measured&) const = default;
};

/// The strike as it was measured. What the film does not show is absent, never 0.
struct Delivery {
  std::optional<Measured> aim_rad;        ///< the cue ball's direction of travel just after the strike
  std::optional<Measured> speed_mps;      ///< just after the strike
  std::optional<Measured> side;           ///< tip point, in ball radii, + right of centre seen along the shot
  std::optional<Measured> height;         ///< tip point, in ball radii, + above centre
  std::optional<Measured> elevation_rad;  ///< of the cue, butt up

  bool operator==(const Delivery&) const = default;
};

enum class EventKind { Ball, Cushion, Pocket, OffTable };

/// Something that happened to a ball during a shot.
struct ShotEvent {
  double time_s = 0.0;
  EventKind kind = EventKind::Ball;
  BallName ball;
  std::optional<BallName> other;       ///< kind Ball
  std::optional<CushionName> cushion;  ///< kind Cushion
  std::optional<PocketName> pocket;    ///< kind Pocket
  TablePoint position;                 ///< of ball's centre

  bool operator==(const ShotEvent&) const = default;
};

struct PocketedBall {
  BallName ball;
  PocketName pocket = PocketName::HeadLeft;

  bool operator==(const PocketedBall&) const = default;
};

/// A ball that a person put down between shots.
struct Placement {
  BallName ball;
  double time_s = 0.0;  ///< when it lay still
  TablePoint position;

  bool operator==(const Placement&) const = default;
};

enum class MissSide { Over, Under };  ///< cut too much, cut too little

/// The pot that was tried, as far as the tracks tell.
struct Target {
  BallName ball;
  PocketName pocket = PocketName::HeadLeft;
  std::optional<double> cut_rad;        ///< unsigned
  std::optional<double> lineError_rad;  ///< of the object ball against the pocket's middle; + counter-clockwise
  std::optional<MissSide> missSide;

  bool operator==(const Target&) const = default;
};

enum class Outcome { Pot, Miss, Safety, Scratch, Foul, Break };
/// How sure an automatic verdict is: Certain stands, Proposed can be undone, Ask waits for a person.
enum class Verdict { Certain, Proposed, Ask };

/// One shot as read from the film: from the strike until every ball rests.
struct ShotReading {
  int number = 0;  ///< within the film, from 1
  double strike_s = 0.0;
  double rest_s = 0.0;
  Position before;
  Position after;
  Delivery delivery;
  std::vector<ShotEvent> events;  ///< in time order
  std::optional<BallName> firstContact;
  std::vector<PocketedBall> pocketed;  ///< in time order; the cue ball is among them when it was a scratch
  bool scratch = false;
  std::optional<Target> target;
  Outcome outcome = Outcome::Miss;
  Verdict outcomeVerdict = Verdict::Proposed;

  bool operator==(const ShotReading&) const = default;
};

/// The words used in files: "ball", "cushion", "pocket", "off-table".
[[nodiscard]] std::string_view toText(EventKind kind);
/// "pot", "miss", "safety", "scratch", "foul", "break".
[[nodiscard]] std::string_view toText(Outcome outcome);
/// "over", "under".
[[nodiscard]] std::string_view toText(MissSide side);
/// "certain", "proposed", "ask".
[[nodiscard]] std::string_view toText(Verdict verdict);
[[nodiscard]] std::optional<EventKind> eventKindFromText(std::string_view text);
[[nodiscard]] std::optional<Outcome> outcomeFromText(std::string_view text);
[[nodiscard]] std::optional<MissSide> missSideFromText(std::string_view text);
[[nodiscard]] std::optional<Verdict> verdictFromText(std::string_view text);

}  // namespace ferrule
