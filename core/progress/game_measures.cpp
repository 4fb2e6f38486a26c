// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/game_measures.h"

#include <algorithm>
#include <map>

#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

using Value = std::optional<double>;

template <class ValueOf>
std::vector<SessionSum> sumsOf(const PlayerHistory& history, ValueOf&& valueOf) {
  return bySession(
      observed(history, [&](const PlayedShot& shot, const PlayedTable&) -> Value { return valueOf(shot); }));
}

double truth(bool value) {
  return value ? 1.0 : 0.0;
}

/// The answer, or NoValues where there is not one value; else Shots.
Answer<Estimate> orNoValues(Answer<Estimate> answer) {
  if (!answer && answer.error().have == 0) return shortOf(ShortageKind::NoValues);
  return answer;
}

Answer<Estimate> orNoTimes(Answer<Estimate> answer) {
  if (!answer && answer.error().have == 0) return shortOf(ShortageKind::NoTimes);
  return answer;
}

Value ownChoice(const PlayedShot& shot) {
  return shot.suggestionShown ? std::nullopt : shot.choiceLoss;
}

bool potsOn(const PlayedShot& shot) {
  return !shot.foul && shot.potted > 0;
}

}  // namespace

BreakMeasure breakMeasure(const PlayerHistory& history, const Resampling& resampling) {
  const auto ofBreaks = [&](auto&& valueOf) {
    return sumsOf(history, [&](const PlayedShot& shot) -> Value {
      return shot.outcome == Outcome::Break ? valueOf(shot) : std::nullopt;
    });
  };
  BreakMeasure measure;
  const auto success = ofBreaks([](const PlayedShot& shot) -> Value { return truth(potsOn(shot)); });
  measure.breaks = static_cast<int>(total(success).count);
  measure.success = shareOf(success);
  measure.balls = meanOf(ofBreaks([](const PlayedShot& shot) -> Value { return shot.potted; }), resampling);
  measure.fouls = shareOf(ofBreaks([](const PlayedShot& shot) -> Value { return truth(shot.foul); }));
  measure.cueBallFromMiddle_m = meanOf(ofBreaks([](const PlayedShot& shot) -> Value {
                                         return shot.rest ? Value(distance(*shot.rest, TablePoint{})) : std::nullopt;
                                       }),
                                       resampling);
  return measure;
}

InningMeasure inningMeasure(const PlayerHistory& history, const Resampling& resampling) {
  InningMeasure measure;
  std::vector<Observation> balls;
  std::vector<Observation> runOuts;  // one for each frame won
  std::vector<Observation> frames;   // innings in each frame of a game
  const PlayedShot* before = nullptr;
  for (const PlayedShot& shot : history.shots) {
    const bool goesOn =
        before != nullptr && before->frame == shot.frame && before->number + 1 == shot.number && potsOn(*before);
    if (!goesOn) balls.push_back({shot.session, 0.0, {}});
    if (!goesOn && !shot.game.empty()) {
      if (before == nullptr || before->frame != shot.frame || frames.empty()) frames.push_back({shot.session, 0.0, {}});
      frames.back().value += 1.0;
    }
    if (!shot.foul) balls.back().value += shot.potted;
    if (shot.wonFrame) runOuts.push_back({shot.session, truth(balls.back().value >= kRunOutBalls), {}});
    before = &shot;
  }
  measure.innings = static_cast<int>(balls.size());
  measure.balls = meanOf(bySession(balls), resampling);
  measure.inFrame = orNoValues(meanOf(bySession(frames), resampling));
  measure.runOuts = orNoValues(shareOf(bySession(runOuts)));
  return measure;
}

ReplyKind replyOf(const Reply& reply) {
  if (reply.foul || reply.outcome == Outcome::Foul || reply.outcome == Outcome::Scratch) return ReplyKind::Fouled;
  if (reply.outcome == Outcome::Pot) return ReplyKind::Potted;
  return reply.outcome == Outcome::Safety ? ReplyKind::Safety : ReplyKind::Missed;
}

SafetyMeasure safetyMeasure(const PlayerHistory& history) {
  SafetyMeasure measure;
  measure.tried = static_cast<int>(std::ranges::count(history.shots, Outcome::Safety, &PlayedShot::outcome));
  measure.success = orNoValues(shareOf(sumsOf(history, [](const PlayedShot& shot) -> Value {
    return shot.outcome == Outcome::Safety && shot.safeLeave ? Value(truth(*shot.safeLeave)) : std::nullopt;
  })));
  for (const PlayedShot& shot : history.shots) {
    if (shot.outcome != Outcome::Safety || !shot.reply) continue;
    ++measure.answered;
    switch (replyOf(*shot.reply)) {
      case ReplyKind::Potted:
        ++measure.potted;
        break;
      case ReplyKind::Missed:
        ++measure.missed;
        break;
      case ReplyKind::Safety:
        ++measure.safeties;
        break;
      case ReplyKind::Fouled:
        ++measure.fouled;
        break;
    }
  }
  return measure;
}

Answer<Estimate> foulShare(const PlayerHistory& history) {
  return shareOf(sumsOf(history, [](const PlayedShot& shot) -> Value { return truth(shot.foul); }));
}

Answer<Estimate> unforcedShare(const PlayerHistory& history, const std::optional<Difficulty>& difficulty) {
  if (!difficulty) {
    const auto attempts = static_cast<int>(std::ranges::count_if(history.shots, isPotAttempt));
    return shortOf(ShortageKind::Shots, attempts, kFewestForDifficulty);
  }
  return shareOf(bySession(observed(history, [&](const PlayedShot& shot, const PlayedTable& table) -> Value {
    if (!isPotAttempt(shot) || difficulty->chance(shot, table) < kUnforced) return std::nullopt;
    return truth(!shot.made || shot.foul);
  })));
}

TimeMeasure timeMeasure(const PlayerHistory& history, const Resampling& resampling) {
  const auto mean = [&](auto&& counts) {
    return orNoTimes(meanOf(sumsOf(history,
                                   [&](const PlayedShot& shot) -> Value {
                                     if (!counts(shot) || !shot.preparation_s) return std::nullopt;
                                     if (*shot.preparation_s < 0.0) return std::nullopt;
                                     if (*shot.preparation_s > kLongestPreparation_s) return std::nullopt;
                                     return shot.preparation_s;
                                   }),
                            resampling));
  };
  return {mean([](const PlayedShot&) { return true; }),
          mean([](const PlayedShot& shot) { return isPotAttempt(shot) && shot.made; }),
          mean([](const PlayedShot& shot) { return isPotAttempt(shot) && !shot.made; })};
}

ChoiceMeasure choiceMeasure(const PlayerHistory& history, const Resampling& resampling) {
  ChoiceMeasure measure;
  measure.choiceLoss = orNoValues(meanOf(sumsOf(history, ownChoice), resampling));
  measure.deliveryLoss =
      orNoValues(meanOf(sumsOf(history, [](const PlayedShot& shot) { return shot.deliveryLoss; }), resampling));
  for (const PlayedShot& shot : history.shots) {
    if (ownChoice(shot) && shot.deliveryLoss) ++measure.boxes[*shot.choiceLoss > kTie][*shot.deliveryLoss > kTie];
  }
  return measure;
}

void markLostByChoice(PlayerHistory& history) {
  struct Frame {
    bool won = false;
    double choices = 0.0;
    double deliveries = 0.0;
    PlayedShot* dearest = nullptr;
  };
  std::map<std::int64_t, Frame> frames;
  for (PlayedShot& shot : history.shots) {
    shot.lostByChoice = false;
    Frame& frame = frames[shot.frame];
    frame.won |= shot.wonFrame;
    if (!shot.choiceLoss || shot.suggestionShown) continue;
    frame.choices += *shot.choiceLoss;
    frame.deliveries += std::max(0.0, shot.deliveryLoss.value_or(0.0));
    if (frame.dearest == nullptr || *shot.choiceLoss > *frame.dearest->choiceLoss) frame.dearest = &shot;
  }
  for (const auto& [id, frame] : frames) {
    if (id == 0 || frame.won || frame.dearest == nullptr) continue;
    frame.dearest->lostByChoice = frame.choices > frame.deliveries && *frame.dearest->choiceLoss >= kTie;
  }
}

}  // namespace ferrule
