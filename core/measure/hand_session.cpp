// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/hand_session.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/contract.h"
#include "core/table/ghost_ball.h"
#include "core/table/pocket_entry.h"
#include "core/table/rack.h"

namespace ferrule {

namespace {

void put(Position& balls, BallName ball, TablePoint place) {
  const auto at = std::ranges::lower_bound(balls, ball, {}, &BallAt::ball);
  if (at != balls.end() && at->ball == ball) {
    at->position = place;
  } else {
    balls.insert(at, {ball, place});
  }
}

void take(Position& balls, BallName ball) {
  std::erase_if(balls, [ball](const BallAt& at) { return at.ball == ball; });
}

/// Every ball that fell, the one that was played for first.
std::vector<PocketedBall> fallenIn(const HandShot& said) {
  std::vector<PocketedBall> fallen;
  if (said.outcome == Outcome::Pot && said.ball && said.pocket) fallen.push_back({*said.ball, *said.pocket});
  fallen.insert(fallen.end(), said.others.begin(), said.others.end());
  return fallen;
}

bool isScratch(const HandShot& said) {
  return said.outcome == Outcome::Scratch ||
         std::ranges::any_of(said.others, [](const PocketedBall& ball) { return ball.ball.isCueBall(); });
}

/// The foremost ball of a rack: what a break meets.
std::optional<BallName> apexOf(const Position& before, const Table& table) {
  std::optional<BallName> apex;
  double least_m = 0.0;
  for (const BallAt& at : before) {
    const double away_m = distance(at.position, footSpot(table));
    if (at.ball.isCueBall() || (apex && away_m >= least_m)) continue;
    apex = at.ball;
    least_m = away_m;
  }
  return apex;
}

}  // namespace

ShotEvents handEvents(const ShotReading& reading, const HandShot& said) {
  ShotEvents shot;
  shot.witness = Witness::Person;
  shot.before = reading.before;
  shot.after = reading.after;
  shot.events = reading.events;
  shot.firstContact = reading.firstContact;
  shot.call = Call{said.ball, said.pocket, said.outcome == Outcome::Safety};
  if (said.outcome == Outcome::Foul) shot.calledFouls.push_back({said.foul.value_or(FoulKind::TouchedBall), {}});
  if (said.outcome == Outcome::Scratch) shot.calledFouls.push_back({FoulKind::Scratch, kCueBall});
  if (said.outcome == Outcome::Break && !said.foul) {
    // A break that nobody complained of drove four balls to a rail.
    for (const int number : {1, 2, 3, 4}) {
      shot.events.push_back({reading.strike_s, EventKind::Cushion, BallName{number}, {}, CushionName::Foot, {}, {}});
    }
  }
  // Not mentioned: not so.
  if (said.foul != FoulKind::NoRail) shot.deniedFouls.push_back(FoulKind::NoRail);
  shot.deniedFouls.push_back(FoulKind::BreakRequirement);
  if (!said.ball && said.foul != FoulKind::NoContact) shot.deniedFouls.push_back(FoulKind::NoContact);
  shot.settled = {DoubtKind::CallUnknown, DoubtKind::PushOutUnknown, DoubtKind::PastString, DoubtKind::Placement};
  return shot;
}

HandSession::HandSession(HandTerms terms) : terms_(std::move(terms)) {
  state_.balls = rackedBalls();
  rule();
}

HandSession::HandSession(HandTerms terms, HandState state) : terms_(std::move(terms)), state_(std::move(state)) {
  rule();
}

void HandSession::change(HandState next) {
  if (next == state_) return;
  undone_.push_back(std::exchange(state_, std::move(next)));
  redone_.clear();
  rule();
}

void HandSession::setBalls(Position balls) {
  std::ranges::sort(balls, {}, &BallAt::ball);
  HandState next = state_;
  next.balls = std::move(balls);
  change(std::move(next));
}

void HandSession::putBall(BallName ball, TablePoint place) {
  HandState next = state_;
  put(next.balls, ball, place);
  if (!next.shots.empty() && ballIn(next.shots.back().after, ball) != nullptr) {
    put(next.shots.back().after, ball, place);
  }
  change(std::move(next));
}

void HandSession::takeBall(BallName ball) {
  HandState next = state_;
  take(next.balls, ball);
  change(std::move(next));
}

void HandSession::ballFell(BallName ball, PocketName pocket) {
  HandState next = state_;
  take(next.balls, ball);
  if (!next.shots.empty() && ballIn(next.shots.back().after, ball) != nullptr) {
    LoggedShot& last = next.shots.back();
    last.said.others.push_back({ball, pocket});
    take(last.after, ball);
  }
  change(std::move(next));
}

void HandSession::log(const HandShot& said, double time_s, std::string suggestion) {
  HandState next = state_;
  LoggedShot shot{said, time_s, state_.balls, state_.balls, std::move(suggestion)};
  for (const PocketedBall& ball : fallenIn(said))
    take(shot.after, ball.ball);
  if (isScratch(said)) take(shot.after, kCueBall);
  next.balls = shot.after;
  next.shots.push_back(std::move(shot));
  change(std::move(next));
}

void HandSession::choose(OptionKind option) {
  if (state_.shots.empty()) return;
  HandState next = state_;
  next.shots.back().said.chosen = option;
  change(std::move(next));
}

void HandSession::undo() {
  if (undone_.empty()) return;
  redone_.push_back(std::exchange(state_, undone_.back()));
  undone_.pop_back();
  rule();
}

void HandSession::redo() {
  if (redone_.empty()) return;
  undone_.push_back(std::exchange(state_, redone_.back()));
  redone_.pop_back();
  rule();
}

Position HandSession::rackedBalls() const {
  Random random(static_cast<std::uint64_t>(terms_.frame));
  Position balls =
      racked(rackOf(terms_.game.value_or(Game::EightBall)), terms_.table.table, terms_.table.balls, random);
  // On the string itself it would not be behind it.
  put(balls, kCueBall, headSpot(terms_.table.table) - TableVector{2.0 * terms_.table.balls.radius_m(), 0.0});
  return balls;
}

ShotReading HandSession::readingOf(std::size_t number) const {
  FERRULE_REQUIRE(number < state_.shots.size());
  const LoggedShot& shot = state_.shots[number];
  const HandShot& said = shot.said;
  ShotReading reading;
  reading.number = static_cast<int>(number) + 1;
  reading.strike_s = shot.time_s;
  reading.rest_s = shot.time_s;
  reading.before = shot.before;
  reading.after = shot.after;
  reading.outcome = said.outcome;
  reading.outcomeVerdict = Verdict::Certain;
  reading.scratch = isScratch(said);
  reading.pocketed = fallenIn(said);
  const auto placeOf = [&](BallName ball) {
    const BallAt* at = ballIn(shot.before, ball);
    return at == nullptr ? TablePoint{} : at->position;
  };
  const auto met = said.outcome == Outcome::Break ? apexOf(shot.before, terms_.table.table) : said.ball;
  if (met && said.foul != FoulKind::NoContact && said.foul != FoulKind::WrongBallFirst) {
    reading.firstContact = met;
    reading.events.push_back({shot.time_s, EventKind::Ball, kCueBall, met, {}, {}, placeOf(kCueBall)});
  }
  for (const PocketedBall& ball : reading.pocketed)
    reading.events.push_back({shot.time_s, EventKind::Pocket, ball.ball, {}, {}, ball.pocket, placeOf(ball.ball)});
  if (said.ball && said.pocket && said.outcome != Outcome::Break) {
    reading.target =
        Target{*said.ball, *said.pocket, neededCut_rad(shot.before, terms_.table, *said.ball, *said.pocket),
               std::nullopt, said.missSide};
  }
  return reading;
}

void HandSession::rule() {
  if (!terms_.game) return;
  referee_.emplace(
      newFrame(worldRules(*terms_.game), terms_.breaker, surfaceLines(terms_.table.table, terms_.table.balls)));
  for (std::size_t i = 0; i < state_.shots.size(); ++i) {
    referee_->add(handEvents(readingOf(i), state_.shots[i].said));
    if (state_.shots[i].said.chosen) referee_->choose(i, state_.shots[i].said.chosen);
  }
}

std::optional<Seat> HandSession::shooterOf(std::size_t shot) const {
  FERRULE_REQUIRE(shot < state_.shots.size());
  if (terms_.players.size() == 1) return Seat::First;
  if (!referee_) return std::nullopt;
  return referee_->stateBefore(shot).atTable;
}

std::optional<RuledShot> HandSession::rulingOf(std::size_t shot) const {
  FERRULE_REQUIRE(shot < state_.shots.size());
  if (!referee_) return std::nullopt;
  RuledShot ruled;
  ruled.game = *terms_.game;
  ruled.edition = referee_->start().rules.edition;
  ruled.frame = terms_.frame;
  const FrameEntry& entry = referee_->entries()[shot];
  ruled.points = entry.after.points;
  ruled.ruling = entry.ruling;
  ruled.said.chosen = state_.shots[shot].said.chosen;
  if (entry.after.result) ruled.framesWon[indexOf(entry.after.result->winner)] = 1;
  return ruled;
}

std::optional<double> neededCut_rad(const Position& before, const MeasuredTable& table, BallName ball,
                                    PocketName pocket) {
  const BallAt* cue = ballIn(before, kCueBall);
  const BallAt* object = ballIn(before, ball);
  if (cue == nullptr || object == nullptr || ball.isCueBall()) return std::nullopt;
  const TableVector way = pockets(table.table)[static_cast<std::size_t>(pocket)].mouth - object->position;
  if (length(way) == 0.0) return std::nullopt;
  const TableVector aim = ghostBall(object->position, way, table.balls.radius_m()) - cue->position;
  if (length(aim) < table.balls.radius_m() / 10.0) return std::nullopt;
  return std::acos(std::clamp(dot(unit(aim), unit(way)), -1.0, 1.0));
}

std::optional<PocketName> likeliestPocket(const Position& before, const MeasuredTable& table, BallName ball) {
  const BallAt* object = ballIn(before, ball);
  std::optional<PocketName> best;
  double least_rad = std::numbers::pi / 2.0;
  for (const Pocket& pocket : pockets(table.table)) {
    const auto cut_rad = neededCut_rad(before, table, ball, pocket.name);
    if (!cut_rad || object == nullptr) continue;
    const double entry_rad = pocketEntry_rad(pocket, object->position);
    if (*cut_rad + entry_rad / 2.0 >= least_rad) continue;
    least_rad = *cut_rad + entry_rad / 2.0;
    best = pocket.name;
  }
  return best;
}

}  // namespace ferrule
