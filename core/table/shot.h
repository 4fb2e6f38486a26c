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

/// Why a part of a strike could not be measured.
enum class NotShown {
  NotFollowed,       ///< the cue ball was not seen well enough before something else happened to it
  NotFitted,         ///< no strike that can be simulated goes the way that the film shows
  NoCushionNoCurve,  ///< side: the cue ball met nothing that side spin acts on, and its way was straight
  TooFaint,          ///< side: it acted, but by less than the film can tell
  SlideNotSeen,      ///< height: the way shows too little of how the ball came from sliding to rolling
  NoHopNoCurve,      ///< elevation: the cue ball neither hopped nor swerved
};

/// The strike as it was measured. What the film does not show is absent, never 0.
struct Delivery {
  std::optional<Measured> aim_rad;        ///< the cue ball's direction of travel just after the strike
  std::optional<Measured> speed_mps;      ///< just after the strike
  std::optional<Measured> side;           ///< tip point, in ball radii, + right of centre seen along the shot
  std::optional<Measured> height;         ///< tip point, in ball radii, + above centre
  std::optional<Measured> elevation_rad;  ///< of the cue, butt up
  /// Why what is absent is absent; nothing where nobody looked for it (a shot put in by hand).
  std::optional<NotShown> whyNoStrike;  ///< of aim and speed
  std::optional<NotShown> whyNoSide;
  std::optional<NotShown> whyNoHeight;
  std::optional<NotShown> whyNoElevation;

  bool operator==(const Delivery&) const = default;
};

/// How sure an automatic verdict is: Certain stands, Proposed can be undone, Ask waits for a person.
enum class Verdict { Certain, Proposed, Ask };

enum class EventKind { Ball, Cushion, Pocket, OffTable };

/// Something that happened to a ball during a shot.
struct ShotEvent {
  double time_s = 0.0;
  EventKind kind = EventKind::Ball;
  BallName ball;
  std::optional<BallName> other;        ///< kind Ball
  std::optional<CushionName> cushion;   ///< kind Cushion
  std::optional<PocketName> pocket;     ///< kind Pocket
  TablePoint position;                  ///< of ball's centre
  double timeUncertainty_s = 0.0;       ///< standard; 0 where nobody said
  std::optional<Verdict> verdict = {};  ///< absent where nobody judged it

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

  bool called = false;                                  ///< a person named ball and pocket; else read from the tracks
  std::optional<double> fullness = {};                  ///< share of the object ball that was hit: 1 - sin(cut)
  std::optional<double> lineErrorUncertainty_rad = {};  ///< standard
  std::optional<double> missAtMouth_m = {};             ///< of the line where it passes the mouth, + as the angle
  std::optional<double> contactError_m = {};            ///< along the object ball's surface, + as the angle
  std::optional<double> opening_m = {};                 ///< what the pocket takes across this line at this speed
  bool rattled = false;                                 ///< met both jaws, or a jaw and came out

  bool operator==(const Target&) const = default;
};

/// Where an object ball's line error came from: each part is what the line would have changed by with that effect put
/// right; they add up to the total. All + counter-clockwise, as Target::lineError_rad.
struct MissAccount {
  Measured total_rad;
  Measured aim_rad;             ///< the cue pointed elsewhere than at the right contact for a plain stroke
  Measured squirt_rad;          ///< side spin turned the cue ball off the cue's line at the tip
  Measured swerve_rad;          ///< and curved it back on the way
  Measured collisionThrow_rad;  ///< friction of the cut itself dragged the object ball
  Measured spinThrow_rad;       ///< side spin dragged it further, or back
  Measured speed_rad;           ///< the same stroke at the speed that the shot needed would have thrown otherwise
  Measured remainder_rad;       ///< what the re-played shot does not explain: balls, cloth, reading

  bool operator==(const MissAccount&) const = default;
};

/// What makes a shot's reading less than clean.
enum class ShotFlag {
  CutOffAtStart,   ///< the film begins with balls in motion
  CutOffAtEnd,     ///< the film ends before every ball rests
  NextStrikeCame,  ///< the next strike came before every ball rested
  PickedUp,        ///< a ball was taken up while the shot ran
  MovedByHand,     ///< a ball that nothing hit started to move
  IdentityLost,    ///< balls that touched may have changed names
  LostFromView,    ///< a ball was lost while it moved
  SplitHit,        ///< two balls were hit too close together to tell which came first
  UnsurePocket,    ///< a ball was lost on its way to a pocket
};

enum class Outcome { Pot, Miss, Safety, Scratch, Foul, Break };
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
  std::optional<MissAccount> missAccount = {};
  std::vector<ShotFlag> flags = {};  ///< in the order of the enum, each once

  bool operator==(const ShotReading&) const = default;
};

/// The words used in files: "ball", "cushion", "pocket", "off-table".
[[nodiscard]] std::string_view toText(EventKind kind);
/// "pot", "miss", "safety", "scratch", "foul", "break".
[[nodiscard]] std::string_view toText(Outcome outcome);
/// "over", "under".
[[nodiscard]] std::string_view toText(MissSide side);
/// "not-followed", "not-fitted", "no-cushion-no-curve", "too-faint", "slide-not-seen", "no-hop-no-curve".
[[nodiscard]] std::string_view toText(NotShown reason);
/// "cut-off-at-start", "cut-off-at-end", "next-strike-came", "picked-up", "moved-by-hand", "identity-lost",
/// "lost-from-view", "split-hit", "unsure-pocket".
[[nodiscard]] std::string_view toText(ShotFlag flag);
/// "certain", "proposed", "ask".
[[nodiscard]] std::string_view toText(Verdict verdict);
[[nodiscard]] std::optional<EventKind> eventKindFromText(std::string_view text);
[[nodiscard]] std::optional<Outcome> outcomeFromText(std::string_view text);
[[nodiscard]] std::optional<MissSide> missSideFromText(std::string_view text);
[[nodiscard]] std::optional<Verdict> verdictFromText(std::string_view text);

}  // namespace ferrule
