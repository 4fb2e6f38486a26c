// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/measured_shots.h"

#include <algorithm>

namespace ferrule {

namespace {

/// The first of a shot's questions that a person can answer by a key; nothing when there is none.
std::optional<RefereeQuestion> questionOf(const std::shared_ptr<const MeasuredShot>& shot) {
  if (!shot->ruling) return std::nullopt;
  const RuledShot& ruled = shot->ruling->ruled;
  if (!ruled.ruling.overruledBy.empty()) return std::nullopt;
  for (const Question& question : ruled.ruling.questions) {
    auto answers = answersTo(question.doubt, shot->reading.events);
    if (!answers.empty()) return RefereeQuestion{shot, question.doubt, std::move(answers)};
  }
  if (ruled.ruling.options.empty() || ruled.said.chosen) return std::nullopt;
  return RefereeQuestion{shot, std::nullopt, {}, ruled.ruling.options};
}

}  // namespace

MeasuredShots::MeasuredShots(std::function<UtcMilliseconds()> clock, Way way, QObject* parent)
    : QObject(parent), clock_(std::move(clock)), way_(std::move(way)) {}

void MeasuredShots::clear() {
  shots_.clear();
  onTheWay_.clear();
  putOff_.clear();
  before_.clear();
}

void MeasuredShots::add(std::shared_ptr<const MeasuredShot> shot) {
  shots_.push_back(std::move(shot));
  emit changed();
}

void MeasuredShots::ruleAgain(const std::vector<RuledAgain>& ruled) {
  for (const RuledAgain& again : ruled) {
    onTheWay_.erase(again.shot.value);
    const auto shot = std::ranges::find(shots_, again.shot, [](const auto& each) { return each->id; });
    if (shot == shots_.end()) continue;
    auto changed = std::make_shared<MeasuredShot>(**shot);
    changed->ruling = again.ruling;
    if (again.reading) changed->reading = *again.reading;
    *shot = std::move(changed);
  }
  emit changed();
}

std::optional<RefereeQuestion> MeasuredShots::question() const {
  std::optional<RefereeQuestion> first;
  for (const auto& shot : shots_) {
    if (onTheWay_.contains(shot->id.value) || putOff_.contains(shot->id.value)) continue;
    auto question = questionOf(shot);
    if (!question) continue;
    if (first) {
      ++first->waiting;
    } else {
      first = std::move(question);
    }
  }
  return first;
}

bool MeasuredShots::answer(std::size_t place) {
  const auto asked = question();
  if (!asked || place >= asked->choices()) return false;
  SaidOfRuling said = asked->shot->ruling->ruled.said;
  before_.push_back({asked->shot->id, said});
  if (asked->doubt) {
    said.answers.push_back(asked->answers[place].says);
  } else {
    said.chosen = asked->options[place].kind;
  }
  say(asked->shot->id, said);
  return true;
}

void MeasuredShots::putOff() {
  const auto asked = question();
  if (!asked) return;
  putOff_.insert(asked->shot->id.value);
  emit changed();
}

void MeasuredShots::undo() {
  if (before_.empty()) return;
  const Said last = std::move(before_.back());
  before_.pop_back();
  say(last.shot, last.said);
}

void MeasuredShots::say(ShotId shot, const SaidOfRuling& said) {
  onTheWay_.insert(shot.value);
  way_({shot, said, who_.toStdString(), clock_()});
  emit changed();
}

}  // namespace ferrule
