// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_referee.h"

#include <algorithm>

#include "core/base/contract.h"
#include "core/rules/filmed_shot.h"

namespace ferrule {

namespace {

MatchTerms termsOf(const RuleSet& rules, const MeasuredTable& measured) {
  MatchTerms terms;
  terms.rules = rules;
  terms.lines = surfaceLines(measured.table, measured.balls);
  return terms;
}

std::vector<BallName> ballsOn(const Position& position) {
  std::vector<BallName> balls;
  for (const BallAt& at : position)
    balls.push_back(at.ball);
  return balls;
}

/// Whether a ruling left it open who breaks a new rack.
std::optional<OptionKind> rackOffered(const Ruling& ruling) {
  const auto offered = std::ranges::find_if(ruling.options, [](const Option& option) { return option.rack; });
  if (offered == ruling.options.end()) return std::nullopt;
  return offered->kind;
}

/// Balls lie there that the frame had not left on the table.
bool wasSetUpAgain(const GameState& state, const Position& before) {
  return std::ranges::any_of(before,
                             [&](const BallAt& at) { return !at.ball.isCueBall() && !isOnTable(state, at.ball); });
}

}  // namespace

FilmReferee::FilmReferee(const RuleSet& rules, const MeasuredTable& measured)
    : measured_(measured), match_(termsOf(rules, measured)) {}

GameState FilmReferee::joined(const ShotReading& reading) const {
  GameState state = joinedFrame(match_.terms().rules, ballsOn(reading.before), Seat::First, match_.terms().lines);
  state.unsettled = true;
  return state;
}

void FilmReferee::placeFrame(const ShotReading& reading) {
  const bool breaks = reading.outcome == Outcome::Break;
  FrameLog& frame = match_.current();
  if (!begun_) {
    begun_ = true;
    if (!breaks) frame = FrameLog(joined(reading));
    return;
  }
  const GameState& state = frame.state();
  if (!breaks) {
    if (state.phase == Phase::Over && wasSetUpAgain(state, reading.before)) match_.nextFrame(joined(reading));
    return;
  }
  if (state.phase == Phase::Break) return;
  if (!frame.entries().empty() && state.phase != Phase::Over) {
    if (const auto rack = rackOffered(frame.entries().back().ruling)) {
      // One of those who may have chosen it; nobody told which.
      frame.choose(frame.entries().size() - 1, *rack);
      GameState again = frame.state();
      again.unsettled = true;
      match_.nextFrame(again);
      return;
    }
  }
  // An end that the film does not show leaves open who breaks.
  const bool ended = state.phase == Phase::Over && !state.unsettled;
  match_.nextFrame();
  if (ended) return;
  GameState start = match_.current().start();
  start.unsettled = true;
  match_.current() = FrameLog(start);
}

FilmRuling FilmReferee::judge(const ReadShot& shot, const SaidOfShot& said) {
  judged_.push_back(
      {shot.reading, filmedShot(shot.reading, shot.tracks, measured_.table, measured_.balls.radius_m()), said});
  return judgeNext(judged_.back());
}

std::vector<FilmRuling> FilmReferee::say(std::size_t shot, const SaidOfShot& said) {
  FERRULE_REQUIRE(shot < judged_.size());
  judged_[shot].said = said;
  match_ = Match(match_.terms());
  begun_ = false;
  knowsTurn_ = false;
  std::vector<FilmRuling> rulings;
  for (const Judged& each : judged_)
    rulings.push_back(judgeNext(each));
  return rulings;
}

FilmRuling FilmReferee::judgeNext(const Judged& shot) {
  const SaidOfShot& said = shot.said;
  placeFrame(shot.reading);
  FrameLog& frame = match_.current();
  const GameState before = frame.state();
  if (frame.entries().empty()) knowsTurn_ = !before.unsettled;
  const std::size_t entry = frame.entries().size();
  frame.add(shot.events);
  for (const Testimony& testimony : said.testimonies) {
    frame.testify(entry, testimony);
    // Whoever saw who struck knows whose turn it was, even where the film does not.
    knowsTurn_ = knowsTurn_ || testimony.kind == TestimonyKind::Shooter;
  }
  if (said.overrule) frame.overrule(entry, said.overrule);
  if (said.chosen) frame.choose(entry, said.chosen);
  FilmRuling ruling;
  ruling.ruled.game = match_.terms().rules.game;
  ruling.ruled.edition = match_.terms().rules.edition;
  ruling.ruled.frame = static_cast<int>(match_.frames().size());
  ruling.ruled.framesWon = match_.score();
  ruling.ruled.points = frame.state().points;
  ruling.ruled.ruling = frame.entries().back().ruling;
  if (knowsTurn_) ruling.shooter = ruling.ruled.ruling.shooter;
  const bool open = ruling.ruled.ruling.sureness == Verdict::Ask && ruling.ruled.ruling.overruledBy.empty();
  knowsTurn_ = knowsTurn_ && !open;
  return ruling;
}

}  // namespace ferrule
