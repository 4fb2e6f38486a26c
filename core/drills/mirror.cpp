// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/mirror.h"

#include <algorithm>

#include "core/base/contract.h"

namespace ferrule {

namespace {

SurfacePlace mirroredPlace(SurfacePlace place, Mirroring mirroring) {
  return {mirroring.ends ? 2.0 - place.along : place.along, mirroring.sides ? 1.0 - place.across : place.across};
}

/// The pocket at the mirrored mouth of the one table that all of them share.
PocketName mirroredPocket(PocketName pocket, Mirroring mirroring) {
  const auto all = pockets(Table{});
  const TablePoint mouth = all[static_cast<std::size_t>(pocket)].mouth;
  const TablePoint wanted{mirroring.ends ? -mouth.x : mouth.x, mirroring.sides ? -mouth.y : mouth.y};
  const auto nearest =
      std::ranges::min_element(all, {}, [&](const Pocket& candidate) { return distance(candidate.mouth, wanted); });
  return nearest->name;
}

CushionName mirroredCushion(CushionName cushion, Mirroring mirroring) {
  const auto middle = [](const Cushion& c) { return c.nose.start + 0.5 * (c.nose.end - c.nose.start); };
  const auto all = cushions(Table{});
  const TablePoint at = middle(all[static_cast<std::size_t>(cushion)]);
  const TablePoint wanted{mirroring.ends ? -at.x : at.x, mirroring.sides ? -at.y : at.y};
  const auto nearest =
      std::ranges::min_element(all, {}, [&](const Cushion& candidate) { return distance(middle(candidate), wanted); });
  return nearest->name;
}

class Mirror {
 public:
  explicit Mirror(Mirroring mirroring) : mirroring_(mirroring) {}

  void apply(DrillStation& station) const {
    for (DrillBall& ball : station.balls)
      apply(ball);
    if (station.cueBall) apply(*station.cueBall);
    if (station.cueBallZone) apply(*station.cueBallZone);
    for (DrillGoal& goal : station.goals)
      apply(goal);
    // One mirror turns right into left as seen along the shot, two turn it back.
    if (station.asked.side && mirroring_.sides != mirroring_.ends) station.asked.side = -*station.asked.side;
  }

 private:
  void apply(DrillBall& ball) const {
    ball.place = mirroredPlace(ball.place, mirroring_);
    if (ball.frozen) ball.frozen = mirroredCushion(*ball.frozen, mirroring_);
  }
  void apply(Zone& zone) const {
    for (SurfacePlace& corner : zone.corners)
      corner = mirroredPlace(corner, mirroring_);
  }
  void apply(DrillGoal& goal) const {
    if (goal.pocket) goal.pocket = mirroredPocket(*goal.pocket, mirroring_);
    for (CushionName& cushion : goal.cushions)
      cushion = mirroredCushion(cushion, mirroring_);
    if (goal.zone) apply(*goal.zone);
  }

  Mirroring mirroring_;
};

}  // namespace

Drill mirrored(const Drill& drill, Mirroring mirroring) {
  FERRULE_REQUIRE(drill.turnsRound || !mirroring.ends);
  if (mirroring == Mirroring{}) return drill;
  Drill image = drill;
  const Mirror mirror(mirroring);
  for (DrillStation& station : image.stations)
    mirror.apply(station);
  return image;
}

std::string_view toText(Mirroring mirroring) {
  if (mirroring.sides && mirroring.ends) return "both";
  if (mirroring.sides) return "sides";
  return mirroring.ends ? "ends" : "";
}

std::optional<Mirroring> mirroringFromText(std::string_view text) {
  for (const bool sides : {false, true}) {
    for (const bool ends : {false, true}) {
      if (toText(Mirroring{sides, ends}) == text) return Mirroring{sides, ends};
    }
  }
  return std::nullopt;
}

}  // namespace ferrule
