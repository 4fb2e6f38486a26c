// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/hand_desk.h"

#include <algorithm>

#include "core/measure/plan_situation.h"
#include "core/table/snapping.h"

namespace ferrule {

HandDesk::HandDesk(Clock clock, QObject* parent) : QObject(parent), clock_(std::move(clock)) {
  connect(&service_, &HandService::opened, this,
          [this](const QString& record, const std::shared_ptr<const KeptHand>& hand) {
            recordPath_ = record;
            broken_ = hand ? std::make_unique<KeptHand>(*hand) : nullptr;
            emit changed();
          });
  connect(&service_, &HandService::begun, this, &HandDesk::adopt);
  connect(&service_, &HandService::failed, this, &HandDesk::failed);
  connect(&service_, &HandService::ended, this, [this] {
    judge_.judge(recordPath_, ending_);
    emit sessionEnded(ending_);
  });
  connect(&judge_, &JudgeService::judged, this, &HandDesk::judged);
  connect(&judge_, &JudgeService::failed, this, &HandDesk::failed);
  connect(&suggestions_, &SuggestionDesk::changed, this, &HandDesk::changed);
  connect(&suggestions_, &SuggestionDesk::failed, this, &HandDesk::failed);
}

void HandDesk::openRecord(const QString& path) {
  // A session that runs stays in its own record.
  if (hand_ == nullptr) service_.open(path);
}

void HandDesk::begin(const HandTerms& terms, SessionKind kind) {
  broken_.reset();
  service_.begin(terms, kind, clock_());
}

void HandDesk::resume() {
  if (broken_ == nullptr) return;
  hand_ = std::move(broken_);
  emit changed();
}

void HandDesk::adopt(std::shared_ptr<const KeptHand> hand) {
  hand_ = std::make_unique<KeptHand>(*hand);
  chosen_.reset();
  pocket_.reset();
  suggestions_.want(false);
  think();
  emit changed();
}

void HandDesk::nextFrame() {
  if (hand_ != nullptr) service_.nextFrame(*hand_);
}

void HandDesk::end() {
  if (hand_ == nullptr) return;
  ending_ = hand_->place.session;
  service_.end(*hand_);
  hand_.reset();
  emit changed();
}

void HandDesk::edited() {
  const Position& balls = hand_->session.state().balls;
  if (chosen_ && ballIn(balls, *chosen_) == nullptr) chosen_.reset();
  if (!target()) pocket_.reset();
  service_.keep(*hand_);
  think();
  emit changed();
}

void HandDesk::think() {
  const bool played =
      hand_ != nullptr && hand_->session.referee() && hand_->session.referee()->state().phase != Phase::Over;
  if (!suggestions_.isWanted() || !played) {
    suggestions_.think(std::nullopt);
    return;
  }
  const MeasuredTable& table = hand_->session.terms().table;
  const GameState& state = hand_->session.referee()->state();
  ForWhom whom;
  whom.record = recordPath_.toStdString();
  whom.player = shooter();
  suggestions_.think(SuggestionQuestion{table, parametersFor(table.balls),
                                        situationFrom(state, hand_->session.state().balls, table.table), whom});
}

std::string HandDesk::shooter() const {
  if (hand_ == nullptr || !hand_->session.referee()) return {};
  const auto& players = hand_->session.terms().players;
  const std::size_t seat = indexOf(hand_->session.referee()->state().atTable);
  return seat < players.size() ? players[seat] : std::string();
}

void HandDesk::showSuggestion(bool shown, std::optional<PlayerLevel> level) {
  suggestions_.want(shown, level);
  think();
  emit changed();
}

std::optional<BallName> HandDesk::target() const {
  return chosen_ && !chosen_->isCueBall() ? chosen_ : std::nullopt;
}

std::vector<BallName> HandDesk::ballsOff() const {
  std::vector<BallName> off;
  if (hand_ == nullptr) return off;
  const auto game = hand_->session.terms().game;
  std::vector<BallName> all{kCueBall};
  const std::vector<BallName> others = ballsOfGame(game.value_or(Game::EightBall));
  all.insert(all.end(), others.begin(), others.end());
  for (const BallName ball : all) {
    if (ballIn(hand_->session.state().balls, ball) == nullptr) off.push_back(ball);
  }
  return off;
}

void HandDesk::put(BallName ball, TablePoint near, double reach_m) {
  if (hand_ == nullptr) return;
  Position others = hand_->session.state().balls;
  std::erase_if(others, [ball](const BallAt& at) { return at.ball == ball; });
  const MeasuredTable& table = hand_->session.terms().table;
  const auto place = snapped(table.table, table.balls.radius_m(), others, near, reach_m);
  if (!place) return;
  hand_->session.putBall(ball, place->place);
  edited();
}

void HandDesk::bring(BallName ball) {
  if (hand_ == nullptr) return;
  const Table& table = hand_->session.terms().table.table;
  put(ball, ball.isCueBall() ? headSpot(table) : footSpot(table), 0.0);
  choose(ball);
}

void HandDesk::take(BallName ball) {
  if (hand_ == nullptr) return;
  hand_->session.takeBall(ball);
  edited();
}

void HandDesk::fell(BallName ball, PocketName pocket) {
  if (hand_ == nullptr) return;
  hand_->session.ballFell(ball, pocket);
  edited();
}

bool HandDesk::chosenFell() {
  if (hand_ == nullptr || !chosen_ || !pocket_) return false;
  const auto& shots = hand_->session.state().shots;
  if (shots.empty() || ballIn(shots.back().after, *chosen_) == nullptr) return false;
  fell(*chosen_, *pocket_);
  return true;
}

void HandDesk::rack() {
  if (hand_ == nullptr) return;
  hand_->session.setBalls(hand_->session.rackedBalls());
  edited();
}

void HandDesk::putFromPhoto(const PhotoFiles& files) {
  if (hand_ == nullptr) return;
  photo_.start<Result<PhotoPosition>>([files](const JobControl& job) { return positionInPhoto(files, job); },
                                      [this](const Result<PhotoPosition>& found) {
                                        if (!found) {
                                          emit failed(found.error());
                                        } else if (hand_ != nullptr) {
                                          takePhoto(found->balls);
                                        }
                                      });
}

void HandDesk::takePhoto(const Position& balls) {
  const HandTerms& terms = hand_->session.terms();
  const std::vector<BallName> used = ballsOfGame(terms.game.value_or(Game::EightBall));
  Position placed;
  for (const BallAt& ball : balls) {
    if (!ball.ball.isCueBall() && std::ranges::find(used, ball.ball) == used.end()) continue;
    // Balls that touch are found a hair too near each other.
    const auto place = snapped(terms.table.table, terms.table.balls.radius_m(), placed, ball.position, 0.0);
    if (place) placed.push_back({ball.ball, place->place});
  }
  hand_->session.setBalls(placed);
  edited();
  emit photoTaken(static_cast<int>(placed.size()));
}

void HandDesk::choose(std::optional<BallName> ball) {
  chosen_ = ball;
  pocket_.reset();
  if (hand_ != nullptr && target()) {
    pocket_ = likeliestPocket(hand_->session.state().balls, hand_->session.terms().table, *target());
  }
  emit changed();
}

void HandDesk::aimAt(PocketName pocket) {
  if (!chosen_) return;
  pocket_ = pocket;
  emit changed();
}

bool HandDesk::log(Outcome outcome, std::optional<MissSide> missSide, std::optional<FoulKind> foul) {
  if (hand_ == nullptr) return false;
  if (outcome == Outcome::Pot && (!target() || !pocket_)) return false;
  HandShot said;
  said.outcome = outcome;
  said.ball = outcome == Outcome::Break ? std::nullopt : target();
  // A safety is played to no pocket.
  if (said.ball && outcome != Outcome::Safety) said.pocket = pocket_;
  said.missSide = missSide;
  said.foul = foul;
  hand_->session.log(said, static_cast<double>(clock_() - hand_->place.started) / 1000.0, suggestions_.text());
  // Asked for anew before each shot: a shown suggestion changes the choice.
  suggestions_.want(false);
  chosen_.reset();
  pocket_.reset();
  edited();
  return true;
}

std::optional<RefereeQuestion> HandDesk::question() const {
  if (hand_ == nullptr || hand_->session.state().shots.empty()) return std::nullopt;
  const std::size_t last = hand_->session.state().shots.size() - 1;
  const auto ruled = hand_->session.rulingOf(last);
  if (!ruled || ruled->ruling.options.empty() || ruled->said.chosen) return std::nullopt;
  RefereeQuestion question;
  question.options = ruled->ruling.options;
  question.shot = std::make_shared<const MeasuredShot>(
      MeasuredShot{hand_->session.readingOf(last), FilmRuling{*ruled, std::nullopt}, {}});
  return question;
}

void HandDesk::answer(std::size_t place) {
  const auto asked = question();
  if (!asked || place >= asked->options.size()) return;
  hand_->session.choose(asked->options[place].kind);
  edited();
}

void HandDesk::undo() {
  if (hand_ == nullptr || !hand_->session.canUndo()) return;
  hand_->session.undo();
  edited();
}

void HandDesk::redo() {
  if (hand_ == nullptr || !hand_->session.canRedo()) return;
  hand_->session.redo();
  edited();
}

}  // namespace ferrule
