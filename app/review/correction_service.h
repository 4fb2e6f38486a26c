// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "app/window/record_keeper.h"
#include "core/measure/correct_shot.h"

namespace ferrule {

/// What a person writes beside a shot, or takes away.
struct Remark {
  enum class Kind { WriteNote, TakeNote, GiveTag, TakeTag };
  Kind kind = Kind::WriteNote;
  Note note{};      ///< of a note; its id while it stands
  std::string tag;  ///< of a tag

  bool operator==(const Remark&) const = default;
};

/// Writes corrections into a record, and what follows from them, on a thread of its own: shots are read and ruled again
/// there. Requests are carried out in their order, those that wait when the service ends too; each is answered by one
/// signal on the caller's thread.
class CorrectionService : public QObject {
  Q_OBJECT
 public:
  explicit CorrectionService(QObject* parent = nullptr);

  /// From now on requests are about this record. Opened with the first of them: a record that is only looked at may be
  /// one that cannot be written.
  void setRecord(const QString& path);
  void say(ShotId shot, const ShotSaying& saying, const QString& who, UtcMilliseconds when);
  void takeBack(FrameId frame, CorrectionId correction);
  /// Puts a remark beside a shot, or takes it back (undo).
  void remark(ShotId shot, const Remark& remark, bool back);

 signals:
  /// made: the shot that a split made; 0 for none.
  void said(ferrule::CorrectionId correction, ferrule::ShotId made);
  void takenBack(const ferrule::TakeBackReport& report);
  /// note: that stands since then; none when the remark was no note or took one away.
  void remarked(ferrule::NoteId note);
  void refused(ferrule::NotSaid why);
  void failed(const ferrule::Error& error);

 private:
  /// Answers Result<void> where that alone can go wrong; otherwise work told how it ended.
  void ask(std::function<Result<void>(Record&)> work);

  RecordKeeper keeper_;
};

}  // namespace ferrule
