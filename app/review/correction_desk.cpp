// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/correction_desk.h"

#include <QDateTime>
#include <algorithm>
#include <utility>

namespace ferrule {

CorrectionDesk::CorrectionDesk(Clock clock, QObject* parent) : QObject(parent), clock_(std::move(clock)) {
  if (!clock_) clock_ = [] { return QDateTime::currentMSecsSinceEpoch(); };
  connect(&service_, &CorrectionService::said, this, &CorrectionDesk::takeSaid);
  connect(&service_, &CorrectionService::takenBack, this, &CorrectionDesk::takeTakenBack);
  connect(&service_, &CorrectionService::remarked, this, &CorrectionDesk::takeRemarked);
  connect(&service_, &CorrectionService::refused, this, [this](NotSaid why) {
    finish();
    emit refused(why);
  });
  connect(&service_, &CorrectionService::failed, this, [this](const Error& error) {
    finish();
    emit failed(error);
  });
}

void CorrectionDesk::setRecord(const QString& path) {
  if (record_ == path) return;
  record_ = path;
  service_.setRecord(path);
  done_.clear();
  undone_.clear();
  while (waiting_.size() > 1)
    waiting_.pop_back();
  // It is under way and will be answered.
  if (!waiting_.empty()) waiting_.front().isOfAnotherRecord = true;
}

void CorrectionDesk::say(const ShotAddress& at, const ShotSaying& saying) {
  ask({Kind::Say, {at, saying, {}, {}}});
}

void CorrectionDesk::remark(const ShotAddress& at, Remark remark) {
  if (remark.kind == Remark::Kind::WriteNote) {
    remark.note.who = who_.toStdString();
    remark.note.when = clock_();
  }
  ask({Kind::Say, {at, std::move(remark), {}, {}}});
}

void CorrectionDesk::takeBack(const ShotAddress& at, CorrectionId correction) {
  ask({Kind::TakeBack, {at, {}, correction, {}}});
}

void CorrectionDesk::undo() {
  ask({Kind::Undo, {}});
}

void CorrectionDesk::redo() {
  ask({Kind::Redo, {}});
}

void CorrectionDesk::ask(Request request) {
  waiting_.push_back(std::move(request));
  if (waiting_.size() == 1) begin();
}

void CorrectionDesk::begin() {
  while (!waiting_.empty()) {
    Request& request = waiting_.front();
    CorrectionStep& step = request.step;
    // Which step undo and redo mean is known only when it is their turn.
    const bool nothing =
        (request.kind == Kind::Undo && done_.empty()) || (request.kind == Kind::Redo && undone_.empty());
    if (nothing) {
      waiting_.pop_front();
      continue;
    }
    if (request.kind == Kind::Undo) step = done_.back();
    if (request.kind == Kind::Redo) step = undone_.back();
    const bool forward = request.kind == Kind::Say || request.kind == Kind::Redo;
    if (const auto* remark = std::get_if<Remark>(&step.what); remark != nullptr && request.kind != Kind::TakeBack) {
      service_.remark(step.at.shot, *remark, !forward);
    } else if (forward) {
      service_.say(step.at.shot, std::get<ShotSaying>(step.what), who_, clock_());
    } else {
      service_.takeBack(step.at.frame, step.correction);
    }
    return;
  }
}

void CorrectionDesk::finish() {
  if (!waiting_.empty()) waiting_.pop_front();
  begin();
}

void CorrectionDesk::takeSaid(CorrectionId correction, ShotId made) {
  Request request = waiting_.front();
  if (request.isOfAnotherRecord) return finish();
  request.step.correction = correction;
  if (request.kind == Kind::Redo) {
    if (!undone_.empty()) undone_.pop_back();
    readdress(request.step.made, made);
  } else {
    undone_.clear();
  }
  request.step.made = made;
  done_.push_back(request.step);
  finish();
  emit corrected(request.step);
}

void CorrectionDesk::takeTakenBack(const TakeBackReport& report) {
  const Request request = waiting_.front();
  if (request.isOfAnotherRecord) return finish();
  const auto step = std::ranges::find_if(done_, [&](const CorrectionStep& done) {
    return std::holds_alternative<ShotSaying>(done.what) && done.correction == request.step.correction;
  });
  if (step != done_.end()) {
    undone_.push_back(*step);
    done_.erase(step);
  } else if (report.saying) {
    // Made before the record was opened: it can be said again all the same.
    undone_.push_back({request.step.at, *report.saying, {}, {}});
  }
  // At once: a number that one correction had is another one's now.
  for (CorrectionStep& done : done_) {
    const auto now = std::ranges::find(report.renewed, done.correction, &std::pair<CorrectionId, CorrectionId>::first);
    if (done.correction && now != report.renewed.end()) done.correction = now->second;
  }
  for (const auto& [before, now] : report.remade)
    readdress(before, now);
  finish();
  emit takenBack(request.step.at);
}

void CorrectionDesk::readdress(ShotId before, ShotId now) {
  if (!before || !now) return;
  for (auto* steps : {&done_, &undone_}) {
    for (CorrectionStep& step : *steps) {
      if (step.at.shot == before) step.at.shot = now;
      if (step.made == before) step.made = now;
    }
  }
}

/// A note that is written again has another number, by which every step must know it.
void CorrectionDesk::renumber(NoteId before, NoteId now) {
  if (!before) return;
  for (auto* steps : {&done_, &undone_}) {
    for (CorrectionStep& step : *steps) {
      auto* remark = std::get_if<Remark>(&step.what);
      if (remark != nullptr && remark->note.id == before) remark->note.id = now;
    }
  }
}

void CorrectionDesk::takeRemarked(NoteId note) {
  Request request = waiting_.front();
  if (request.isOfAnotherRecord) return finish();
  if (note) renumber(std::get<Remark>(request.step.what).note.id, note);
  if (note) std::get<Remark>(request.step.what).note.id = note;
  if (request.kind == Kind::Undo) {
    done_.pop_back();
    undone_.push_back(request.step);
    finish();
    emit takenBack(request.step.at);
    return;
  }
  if (request.kind == Kind::Redo) {
    undone_.pop_back();
  } else {
    undone_.clear();
  }
  done_.push_back(request.step);
  finish();
  emit corrected(request.step);
}

}  // namespace ferrule
