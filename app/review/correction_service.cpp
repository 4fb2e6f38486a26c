// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/correction_service.h"

#include <utility>

namespace ferrule {

namespace {

/// Answers the note that stands since then.
Result<NoteId> putRemark(Record& record, ShotId shot, const Remark& remark, bool back) {
  using Kind = Remark::Kind;
  const bool note = remark.kind == Kind::WriteNote || remark.kind == Kind::TakeNote;
  const bool put = (remark.kind == Kind::WriteNote || remark.kind == Kind::GiveTag) != back;
  if (note && put) return record.addNote(shot, remark.note.text, remark.note.who, remark.note.when);
  Result<void> done;
  if (note) {
    done = record.removeNote(remark.note.id);
  } else {
    done = put ? record.addTag(shot, remark.tag) : record.removeTag(shot, remark.tag);
  }
  if (!done) return tl::make_unexpected(done.error());
  return NoteId();
}

}  // namespace

CorrectionService::CorrectionService(QObject* parent) : QObject(parent), keeper_(QStringLiteral("correction keeper")) {}

void CorrectionService::ask(std::function<Result<void>(Record&)> work) {
  keeper_.ask([this, work = std::move(work)](KeptRecord& kept) {
    // Opening for writing makes a file where there is none.
    const auto record = kept.toWrite(WhenMissing::Refuse);
    const Result<void> done = record ? work(**record) : tl::make_unexpected(record.error());
    if (!done) emit failed(done.error());
  });
}

void CorrectionService::setRecord(const QString& path) {
  keeper_.ask([path](KeptRecord& kept) { kept.setPath(path); });
}

void CorrectionService::say(ShotId shot, const ShotSaying& saying, const QString& who, UtcMilliseconds when) {
  ask([this, shot, saying, name = who.toStdString(), when](Record& record) -> Result<void> {
    const auto report = sayOfShot(record, shot, saying, name, when);
    if (!report) return tl::make_unexpected(report.error());
    if (report->why) {
      emit refused(*report->why);
    } else {
      emit said(*report->correction, report->made);
    }
    return {};
  });
}

void CorrectionService::takeBack(FrameId frame, CorrectionId correction) {
  ask([this, frame, correction](Record& record) -> Result<void> {
    const auto report = takeBackCorrection(record, frame, correction);
    if (!report) return tl::make_unexpected(report.error());
    if (report->why) {
      emit refused(*report->why);
    } else {
      emit takenBack(*report);
    }
    return {};
  });
}

void CorrectionService::remark(ShotId shot, const Remark& remark, bool back) {
  ask([this, shot, remark, back](Record& record) -> Result<void> {
    const auto note = putRemark(record, shot, remark, back);
    if (!note) return tl::make_unexpected(note.error());
    emit remarked(*note);
    return {};
  });
}

}  // namespace ferrule
