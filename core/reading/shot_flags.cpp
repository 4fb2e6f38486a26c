// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/shot_flags.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ferrule {

namespace {

/// Balls this near to each other, in diameters, may be taken for each other when both are hidden at once.
constexpr double kClose = 1.3;
/// Hidden for this many images, both.
constexpr double kHiddenImages = 4.5;
/// A ball that starts by itself is told from noise from this way on, m. Rules of play, touched balls: 3 mm.
constexpr double kMoved_m = 0.01;
/// A contact explains a start within this many images.
constexpr double kExplains = 3.0;
/// Balls of a rack push each other at once, and not every push is told apart.
constexpr double kRackGap_m = 0.006;

bool movesAtFilmStart(const CutShot& cut, const std::vector<BallMotion>& motions) {
  if (cut.readings.front().image != 0) return false;
  return std::ranges::any_of(motions, [&](const BallMotion& motion) {
    const MotionPiece& first = motion.pieces.front();
    return !first.resting && first.end_s < cut.strike_s && first.count() >= 3;
  });
}

bool pickedUp(const CutShot& cut) {
  return std::ranges::any_of(cut.readings, [&](const ImageReading& reading) {
    return reading.time_s > cut.strike_s && std::ranges::any_of(reading.balls, &BallSample::inHand);
  });
}

/// When a ball left the place where it lay, if it did.
std::optional<double> start_s(const BallMotion& motion) {
  if (!motion.pieces.front().resting) return std::nullopt;
  for (std::size_t i = 1; i < motion.pieces.size(); ++i) {
    if (motion.pieces[i].resting) continue;
    const MotionPiece& piece = motion.pieces[i];
    if (distance(piece.at(piece.end_s), motion.pieces.front().position) < kMoved_m) continue;
    return 0.5 * (motion.pieces[i - 1].end_s + piece.start_s);
  }
  return std::nullopt;
}

bool laysInRack(const std::vector<BallMotion>& motions, std::size_t ball, double radius_m) {
  return std::ranges::any_of(motions, [&](const BallMotion& other) {
    return &other != &motions[ball] && other.pieces.front().resting && !other.ball.isCueBall() &&
           distance(other.pieces.front().position, motions[ball].pieces.front().position) < 2.0 * radius_m + kRackGap_m;
  });
}

bool movedByHand(const std::vector<BallMotion>& motions, const std::vector<Contact>& contacts, double radius_m,
                 double interval_s) {
  for (std::size_t b = 0; b < motions.size(); ++b) {
    if (motions[b].ball.isCueBall()) continue;
    const auto started_s = start_s(motions[b]);
    if (!started_s || laysInRack(motions, b, radius_m)) continue;
    const bool explained = std::ranges::any_of(contacts, [&](const Contact& contact) {
      return (contact.first == b || contact.second == b) &&
             contact.time_s < *started_s + kExplains * interval_s + 2.0 * contact.timeUncertainty_s;
    });
    if (!explained) return true;
  }
  return false;
}

struct Gap {
  double from_s = 0.0;
  double to_s = 0.0;
  TablePoint from;
  TablePoint to;
};

std::vector<Gap> gapsOf(const MeasuredPath& path, double since_s, double interval_s) {
  std::vector<Gap> gaps;
  for (std::size_t i = 1; i < path.size(); ++i) {
    const PathPoint& a = path[i - 1];
    const PathPoint& b = path[i];
    if (b.time_s < since_s || b.time_s - a.time_s < kHiddenImages * interval_s) continue;
    gaps.push_back({a.time_s, b.time_s, a.position, b.position});
  }
  return gaps;
}

/// Two balls that were hidden at once, close together, one of them moving.
bool identityLost(const CutShot& cut, const std::vector<BallMotion>& motions, double radius_m, double interval_s) {
  for (std::size_t a = 0; a < motions.size(); ++a) {
    for (const Gap& one : gapsOf(motions[a].path, cut.strike_s, interval_s)) {
      for (std::size_t b = a + 1; b < motions.size(); ++b) {
        for (const Gap& other : gapsOf(motions[b].path, cut.strike_s, interval_s)) {
          if (one.from_s > other.to_s || other.from_s > one.to_s) continue;
          // What they moved by while hidden is how far apart they may have been before they met.
          const double travel_m = std::max(distance(one.from, one.to), distance(other.from, other.to));
          const double reach_m = 2.0 * radius_m * kClose + 0.5 * travel_m;
          const bool close = distance(one.from, other.from) < reach_m || distance(one.to, other.to) < reach_m;
          const bool moved = distance(one.from, one.to) > kMoved_m || distance(other.from, other.to) > kMoved_m;
          if (close && moved) return true;
        }
      }
    }
  }
  return false;
}

}  // namespace

std::vector<ShotFlag> shotFlags(const CutShot& cut, const std::vector<BallMotion>& motions,
                                const std::vector<Contact>& contacts, const Doubts& doubts, double radius_m,
                                double imageInterval_s) {
  std::vector<ShotFlag> flags;
  const auto add = [&](ShotFlag flag, bool holds) {
    if (holds) flags.push_back(flag);
  };
  add(ShotFlag::CutOffAtStart, cut.begunBefore || movesAtFilmStart(cut, motions));
  add(ShotFlag::CutOffAtEnd, !cut.atRest && cut.filmEnded);
  add(ShotFlag::NextStrikeCame, !cut.atRest && !cut.filmEnded);
  add(ShotFlag::PickedUp, pickedUp(cut));
  add(ShotFlag::MovedByHand, movedByHand(motions, contacts, radius_m, imageInterval_s));
  add(ShotFlag::IdentityLost, identityLost(cut, motions, radius_m, imageInterval_s));
  add(ShotFlag::LostFromView, doubts.lostBall);
  add(ShotFlag::SplitHit, doubts.splitHit);
  add(ShotFlag::UnsurePocket, doubts.unsurePocket);
  return flags;
}

bool leavesOutcomeOpen(ShotFlag flag) {
  // A pocket that is merely likely is proposed; the others leave open what happened at all.
  return flag != ShotFlag::UnsurePocket;
}

}  // namespace ferrule
