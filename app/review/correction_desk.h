// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <deque>
#include <functional>
#include <vector>

#include "app/review/correction_service.h"

namespace ferrule {

/// A shot as far as corrections need to find it.
struct ShotAddress {
  ShotId shot;
  FrameId frame;
  SessionId session;
  int number = 0;

  bool operator==(const ShotAddress&) const = default;
};

/// A correction or a remark as one step of undo.
struct CorrectionStep {
  ShotAddress at;
  std::variant<ShotSaying, Remark> what;
  CorrectionId correction;  ///< of what was said, while it stands
  ShotId made;              ///< by a split, as it was made last; 0 for none
};

/// Corrections and remarks in the record that is reviewed, with undo and redo; knows no widgets. Steps are carried out
/// one after the other, and what was asked for while one is under way waits for it.
class CorrectionDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<UtcMilliseconds()>;

  /// clock: when a correction was made. Nothing: the computer's.
  explicit CorrectionDesk(Clock clock = {}, QObject* parent = nullptr);

  /// Another record: what was corrected in the one before is no step of undo any more.
  void setRecord(const QString& path);
  /// The person, as the record names who corrected.
  void setWho(const QString& who) { who_ = who; }
  [[nodiscard]] const QString& who() const { return who_; }

  void say(const ShotAddress& at, const ShotSaying& saying);
  /// A note gets its author and time here.
  void remark(const ShotAddress& at, Remark remark);
  /// Takes a correction back that stands with a shot, whenever it was made.
  void takeBack(const ShotAddress& at, CorrectionId correction);
  /// Nothing happens where there is nothing to undo or redo.
  void undo();
  void redo();

  /// The step that undo would take back; null without one.
  [[nodiscard]] const CorrectionStep* undoable() const { return done_.empty() ? nullptr : &done_.back(); }
  [[nodiscard]] const CorrectionStep* redoable() const { return undone_.empty() ? nullptr : &undone_.back(); }
  [[nodiscard]] bool isBusy() const { return !waiting_.empty(); }

 signals:
  /// The record holds something else of a shot, and perhaps of those after it in its frame.
  void corrected(const ferrule::CorrectionStep& step);
  /// What a correction had replaced stands again, or a remark is as it was.
  void takenBack(const ferrule::ShotAddress& at);
  void refused(ferrule::NotSaid why);
  void failed(const ferrule::Error& error);

 private:
  enum class Kind { Say, Redo, Undo, TakeBack };
  struct Request {
    Kind kind = Kind::Say;
    CorrectionStep step;
    bool isOfAnotherRecord = false;  ///< that was open when it was asked for
  };

  void ask(Request request);
  void begin();
  void finish();
  void takeSaid(CorrectionId correction, ShotId made);
  void takeTakenBack(const TakeBackReport& report);
  /// A shot that was made again is another one, by which every step must know it.
  void readdress(ShotId before, ShotId now);
  void takeRemarked(NoteId note);
  void renumber(NoteId before, NoteId now);

  CorrectionService service_;
  Clock clock_;
  QString record_;
  QString who_;
  std::vector<CorrectionStep> done_;
  std::vector<CorrectionStep> undone_;
  std::deque<Request> waiting_;  ///< the first is under way
};

}  // namespace ferrule
