// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/selfplay/played_frame.h"

#include <algorithm>

#include "core/measure/plan_situation.h"
#include "core/planner/judge.h"
#include "core/table/rack.h"

namespace ferrule::bench {

namespace {

constexpr int kMostShots = 200;
constexpr double kRackGap_m = 0.0002;

Position looseRack(Game game, Random& random) {
  Position balls = racked(rackOf(game), Table{}, poolBalls(), random);
  for (BallAt& ball : balls) {
    // Away from the apex, so that no two overlap.
    const TableVector out = ball.position - footSpot(Table{});
    ball.position = ball.position + (kRackGap_m / 0.05 * (0.3 + 0.2 * random.uniform())) * out;
  }
  return balls;
}

void spotBall(Position& balls, const Spotting& spotting) {
  std::erase_if(balls, [&](const BallAt& ball) { return ball.ball == spotting.ball; });
  TablePoint place = spotting.place == SpotPlace::HeadSpot     ? headSpot(Table{})
                     : spotting.place == SpotPlace::CentreSpot ? centreSpot(Table{})
                                                               : footSpot(Table{});
  const auto taken = [&] {
    return std::ranges::any_of(balls, [&](const BallAt& b) { return distance(b.position, place) < 0.0573; });
  };
  for (int step = 0; step < 100 && taken(); ++step)
    place.x += 0.005;
  balls.push_back({spotting.ball, place});
  std::ranges::sort(balls, {}, &BallAt::ball);
}

ShotEnding endingOf(const Ruling& ruling) {
  if (ruling.result) return ruling.result->value.winner == ruling.shooter ? ShotEnding::Win : ShotEnding::Loss;
  if (!ruling.fouls.empty()) return ShotEnding::Foul;
  return ruling.next.value == ruling.shooter ? ShotEnding::KeepsTurn : ShotEnding::PassesTurn;
}

}  // namespace

PlayedFrame playFrame(const Planner& planner, const RuleSet& rules, const std::array<Chooser, 2>& choosers,
                      const Scatter& scatter, Seat breaker, std::uint64_t seed) {
  Random random(seed);
  PlayedFrame frame;
  frame.breaker = breaker;
  GameState state = newFrame(rules, breaker, surfaceLines(Table{}, poolBalls()));
  Position balls = looseRack(rules.game, random);
  bool turned = false;
  for (int shot = 0; shot < kMostShots; ++shot) {
    const Situation situation = situationFrom(state, balls, Table{});
    const std::size_t seat = indexOf(state.atTable);
    const auto plan = choose(choosers.at(seat), planner, situation, scatter, seed * 1000 + static_cast<unsigned>(shot));
    if (!plan) return frame;
    ReadyShot ready{*plan, plan->cueBall ? withCueBallAt(situation, *plan->cueBall) : situation, 0.0};
    if (const BallAt* first = ballIn(ready.situation.balls, plan->first)) {
      const TablePoint cueBall = ballIn(ready.situation.balls, kCueBall)->position;
      ready.way_m = std::max(0.0, distance(first->position, cueBall) - 0.05715);
    }
    const Scatter wide = scatterOfShot(planner.simulator(), ready, scatter);
    const Strike strike = delivered(plan->strike, wide, drawDeviates(random), planner.simulator().parameters());
    const auto played = planner.simulator().shoot(ready.situation.balls, strike);
    if (!played) return frame;
    ++frame.shots.at(seat);
    ShotEvents events;
    events.witness = Witness::Person;
    events.before = ready.situation.balls;
    events.events = played->events;
    if (state.phase != Phase::Break) {
      Call call;
      if (plan->pocket) {
        call.ball = plan->ball;
        call.pocket = plan->pocket;
      } else {
        call.safety = true;
      }
      events.call = call;
    }
    for (const auto& last : played->after) {
      if (last.fate == BallFate::OnTable) events.after.push_back({last.ball, last.position});
    }
    const Ruling ruling = rule(state, events);
    const Judgement own = judge(ready.situation, callOf(*plan), *played);
    if (own.ending != endingOf(ruling) && ruling.options.empty()) ++frame.disagreements;
    if (plan->pocket) {
      ++frame.potsTried.at(seat);
      if (own.potted) ++frame.pots.at(seat);
    }
    if (!ruling.fouls.empty()) ++frame.fouls.at(seat);
    const GameState next = apply(state, ruling);
    if (state.phase == Phase::Break) frame.brokeAndKept = next.atTable == breaker && next.phase == Phase::Play;
    turned = turned || next.atTable != breaker;
    balls = events.after;
    if (ruling.racking != Racking::None || next.phase == Phase::Break) balls = looseRack(rules.game, random);
    for (const auto& spotting : ruling.spotted)
      spotBall(balls, spotting.value);
    state = next;
    if (state.result) {
      frame.winner = state.result->winner;
      frame.clearedFromBreak = frame.winner == breaker && !turned;
      return frame;
    }
  }
  return frame;
}

}  // namespace ferrule::bench
