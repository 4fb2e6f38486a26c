// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/answers.h"

#include <algorithm>

namespace ferrule {

namespace {

/// The three-point break asks for so many.
constexpr int kBreakPoints = 3;
constexpr int kPockets = 6;

Testimony about(TestimonyKind kind, BallName ball, bool holds = true) {
  Testimony said;
  said.kind = kind;
  said.ball = ball;
  said.holds = holds;
  return said;
}

DoubtAnswer answer(AnswerKind kind, Testimony says) {
  DoubtAnswer made;
  made.kind = kind;
  made.ball = says.ball;
  made.pocket = says.pocket;
  made.group = says.group;
  made.number = says.number;
  made.says = std::move(says);
  return made;
}

std::vector<DoubtAnswer> yesOrNo(const Testimony& holding) {
  Testimony not_ = holding;
  not_.holds = !holding.holds;
  return {answer(AnswerKind::Yes, holding), answer(AnswerKind::No, not_)};
}

std::vector<DoubtAnswer> foulOrNot(FoulKind foul, BallName ball = kCueBall) {
  Testimony said = about(TestimonyKind::Foul, ball);
  said.foul = foul;
  return yesOrNo(said);
}

DoubtAnswer asRead(DoubtKind doubt) {
  Testimony said;
  said.kind = TestimonyKind::Settled;
  said.doubt = doubt;
  return answer(AnswerKind::AsRead, said);
}

std::optional<PocketName> pocketOf(std::span<const ShotEvent> events, BallName ball) {
  for (const ShotEvent& event : events) {
    if (event.kind == EventKind::Pocket && event.ball == ball) return event.pocket;
  }
  return std::nullopt;
}

void addPockets(std::vector<DoubtAnswer>& answers, BallName ball) {
  for (int number = 0; number < kPockets; ++number) {
    Testimony said = about(TestimonyKind::Fell, ball);
    said.pocket = static_cast<PocketName>(number);
    answers.push_back(answer(AnswerKind::InPocket, said));
  }
}

std::vector<DoubtAnswer> callAnswers(BallName ball, std::span<const ShotEvent> events) {
  const auto called = [&](AnswerKind kind, const Call& call) {
    Testimony said = about(TestimonyKind::Called, ball);
    said.call = call;
    return answer(kind, said);
  };
  return {called(AnswerKind::Yes, {ball, pocketOf(events, ball), false}), called(AnswerKind::No, {}),
          called(AnswerKind::SafetyCall, {std::nullopt, std::nullopt, true})};
}

std::vector<DoubtAnswer> pastStringAnswers() {
  std::vector<DoubtAnswer> answers;
  for (int number = 0; number <= kBreakPoints; ++number) {
    Testimony said = about(TestimonyKind::PastString, kCueBall);
    said.number = number;
    answers.push_back(answer(number < kBreakPoints ? AnswerKind::Count : AnswerKind::CountUp, said));
  }
  return answers;
}

}  // namespace

std::vector<DoubtAnswer> answersTo(const Doubt& doubt, std::span<const ShotEvent> events) {
  const BallName ball = doubt.ball.value_or(kCueBall);
  std::vector<DoubtAnswer> answers;
  switch (doubt.kind) {
    case DoubtKind::SplitHit:
      for (const auto& met : {doubt.ball, doubt.other}) {
        if (met) answers.push_back(answer(AnswerKind::Ball, about(TestimonyKind::FirstContact, *met)));
      }
      return answers;
    case DoubtKind::NearRail:
      return yesOrNo(about(TestimonyKind::RailContact, ball));
    case DoubtKind::PocketUnsure:
      answers.push_back(answer(AnswerKind::No, about(TestimonyKind::Fell, ball, false)));
      addPockets(answers, ball);
      return answers;
    case DoubtKind::BallLost:
      answers.push_back(answer(AnswerKind::OnTable, about(TestimonyKind::LeftTable, ball, false)));
      answers.push_back(answer(AnswerKind::LeftTable, about(TestimonyKind::LeftTable, ball)));
      addPockets(answers, ball);
      return answers;
    case DoubtKind::JumpedBack:
      return yesOrNo(about(TestimonyKind::LeftTable, ball));
    case DoubtKind::MovedByHand:
      return foulOrNot(FoulKind::TouchedBall, ball);
    case DoubtKind::SmallGap:
      return foulOrNot(FoulKind::DoubleHit);
    case DoubtKind::BallsMoving:
      return foulOrNot(FoulKind::BallsMoving);
    case DoubtKind::Placement:
      // Asked the other way round: whether it lay where it may.
      answers = foulOrNot(FoulKind::BadPlacement);
      std::swap(answers[0].says, answers[1].says);
      return answers;
    case DoubtKind::TargetAtString:
      return foulOrNot(FoulKind::BadPlayFromBehind, ball);
    case DoubtKind::FrozenToRail: {
      const auto met = std::ranges::find_if(
          events, [&](const ShotEvent& event) { return event.kind == EventKind::Cushion && event.ball == ball; });
      if (met == events.end() || !met->cushion) return {asRead(doubt.kind)};
      Testimony said = about(TestimonyKind::Frozen, ball);
      said.cushion = *met->cushion;
      return yesOrNo(said);
    }
    case DoubtKind::CallUnknown:
      return callAnswers(ball, events);
    case DoubtKind::GroupsUnknown:
      for (const Group group : {Group::Solids, Group::Stripes}) {
        Testimony said = about(TestimonyKind::ShooterGroup, kCueBall);
        said.group = group;
        answers.push_back(answer(AnswerKind::Group, said));
      }
      return answers;
    case DoubtKind::PastString:
      return pastStringAnswers();
    case DoubtKind::PushOutUnknown:
      return yesOrNo(about(TestimonyKind::PushOut, kCueBall));
    case DoubtKind::Warned:
      return yesOrNo(about(TestimonyKind::ToldOfFouls, kCueBall));
    case DoubtKind::NameUnsure:
    case DoubtKind::Unfinished:
    case DoubtKind::BallsDiffer:
    case DoubtKind::NotSpelledOut:
      return {asRead(doubt.kind)};
    case DoubtKind::FrameOver:
      break;
  }
  return {};
}

}  // namespace ferrule
