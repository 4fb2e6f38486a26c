// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/judging_anew.h"

#include <QDateTime>
#include <algorithm>

#include "core/measure/judge_session.h"

namespace ferrule {

namespace {

/// What one round did: shots that got other plans, also where it was broken off.
struct Round {
  int shots = 0;
  std::optional<Error> error;
};

}  // namespace

JudgingAnew::JudgingAnew(QObject* parent) : QObject(parent) {}

void JudgingAnew::judge(const QString& record, const ShotAddress& at) {
  const Frame frame{record, at.session, at.frame};
  if (!waiting_.empty() && waiting_.front() == frame) {
    again_ = true;
    job_.cancel();
    return;
  }
  if (std::ranges::find(waiting_, frame) != waiting_.end()) return;
  waiting_.push_back(frame);
  if (waiting_.size() == 1) begin();
}

void JudgingAnew::stop() {
  if (waiting_.empty()) return;
  waiting_.resize(1);
  again_ = false;
  job_.cancel();
}

void JudgingAnew::begin() {
  again_ = false;
  const Frame frame = waiting_.front();
  job_.start<Round>(
      [frame, now = QDateTime::currentMSecsSinceEpoch()](const JobControl& control) {
        Round round;
        auto record = Record::open(frame.record.toStdString());
        if (!record) return Round{0, record.error()};
        JudgeOptions options;
        options.now = now;
        const auto count = [&round](const JudgedShot& shot) { round.shots += shot.why ? 0 : 1; };
        const auto report = judgeAnew(*record, frame.session, frame.frame, options, control, count);
        if (!report && report.error().code != ErrorCode::Cancelled) round.error = report.error();
        return round;
      },
      [this](Round round) {
        if (!again_) waiting_.erase(waiting_.begin());
        if (!waiting_.empty()) begin();
        if (round.error) emit failed(*round.error);
        emit judged(round.shots);
      });
}

}  // namespace ferrule
