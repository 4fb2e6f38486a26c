// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/setup_desk.h"

#include <QFile>
#include <QFileInfo>
#include <utility>

#include "core/base/text_file.h"
#include "core/camera/lens_file.h"

namespace ferrule {

namespace {

/// What a person can reach for; a step holds little more than a rig and some corners of a board.
constexpr std::size_t kMostSteps = 100;

bool sameTable(const SetupState& a, const SetupState& b) {
  return a.measured == b.measured && a.tags == b.tags && a.tagSide_mm == b.tagSide_mm &&
         a.tagHeight_mm == b.tagHeight_mm;
}

bool sameWays(const SetupState& a, const SetupState& b) {
  return a.withoutTags == b.withoutTags && a.withoutBoard == b.withoutBoard && a.head == b.head && a.lens == b.lens &&
         a.handLines == b.handLines && a.handMarks == b.handMarks;
}

/// What was read of a set-up that was left.
struct Reopened {
  std::optional<Lens> lens;
  std::string madeLens;
  std::optional<MadeRig> rig;
  std::optional<Projector> projector;
};

}  // namespace

SetupDesk::SetupDesk(QString folder, QObject* parent) : QObject(parent), folder_(std::move(folder)) {}

void SetupDesk::keep() {
  keepText(own("setup.json"), setupText(now_.state));
}

bool SetupDesk::lacksRig() {
  if (!now_.rig) emit said(tr("There is no rig yet; make one in the step Rig."));
  return !now_.rig;
}

bool SetupDesk::stillHolds(long inputs) {
  if (inputs == inputs_) return true;
  emit said(tr("Something was changed meanwhile, so what came out no longer holds; make it again."));
  return false;
}

void SetupDesk::note(const QString& name) {
  done_.push_back({name, now_.state.step, now_});
  if (done_.size() > kMostSteps) done_.erase(done_.begin());
  undone_.clear();
  ++inputs_;
}

void SetupDesk::change(const QString& name, const Edit& edit) {
  SetupState after = now_.state;
  edit(after);
  if (after == now_.state) return;
  note(name);
  const SetupState before = std::exchange(now_.state, std::move(after));
  const SetupState& state = now_.state;
  const bool boardChanged = state.board != before.board;
  const bool rulerChanged = state.rulerAcross_mm != before.rulerAcross_mm || state.rulerDown_mm != before.rulerDown_mm;
  if (boardChanged || rulerChanged) now_.calibration.reset();
  if (!sameTable(state, before) || !sameWays(state, before)) now_.forgetRig();
  keep();
  if (boardChanged && !state.stills.isEmpty()) {
    // They are looked through for the other board, as part of this step.
    const QStringList again = std::exchange(now_.state.stills, {});
    now_.stills.clear();
    survey(again, {});
  }
  emit changed();
}

void SetupDesk::go(SetupStep step) {
  if (now_.state.step == step) return;
  now_.state.step = step;
  keep();
  emit changed();
}

void SetupDesk::swapWith(std::vector<Step>& from, std::vector<Step>& to) {
  if (from.empty()) return;
  if (job_.isRunning()) {
    emit said(tr("Work goes on; stop it, or let it end, before a step is undone."));
    return;
  }
  Step step = std::move(from.back());
  from.pop_back();
  // Where the edit was made is where its undoing shows, and its redoing too.
  const SetupStep page = step.page;
  std::swap(now_, step.other);
  now_.state.step = page;
  to.push_back(std::move(step));
  ++inputs_;
  keepFiles();
  emit said({});
  emit changed();
}

void SetupDesk::undo() {
  swapWith(done_, undone_);
}

void SetupDesk::redo() {
  swapWith(undone_, done_);
}

void SetupDesk::reopen() {
  const auto text = readTextFile(own("setup.json").toStdString());
  if (!text) return;
  const auto kept = setupFromText(*text);
  if (!kept) {
    emit said(tr("What was kept of a set-up in %1 cannot be read; it begins anew.").arg(own("setup.json")));
    return;
  }
  now_.state = *kept;
  const QStringList stills = std::exchange(now_.state.stills, {});
  emit changed();
  const std::string lens = now_.state.lens.toStdString();
  const bool madeHere = now_.state.lens == own("lens.json");
  job_.start<Reopened>(
      [lens, madeHere, rig = now_.state.rig.toStdString(), table = own("table.json").toStdString(),
       projector = own("projector.json").toStdString()](const JobControl&) {
        Reopened read;
        if (auto found = readLensFile(lens)) {
          read.lens = std::move(*found);
          if (auto whole = madeHere ? readTextFile(lens) : tl::make_unexpected(Error{})) read.madeLens = *whole;
        }
        if (auto made = readMadeRig(rig, table)) read.rig = std::move(*made);
        if (auto found = readProjectorFile(projector)) read.projector = std::move(*found);
        return read;
      },
      [this, stills, inputs = inputs_](Reopened read) {
        // Whoever was quicker than the disk keeps what they put in.
        if (inputs == inputs_) {
          now_.lens = std::move(read.lens);
          now_.madeLens = std::move(read.madeLens);
          if (!now_.lens) now_.state.lens.clear();
          if (read.rig) {
            takeRig(*read.rig);
          } else {
            now_.state.rig.clear();
          }
          now_.projector = std::move(read.projector);
        }
        emit changed();
        QStringList there;
        for (const QString& still : stills) {
          if (QFileInfo::exists(still)) there << still;
        }
        if (!there.isEmpty()) {
          survey(there, {});
        } else if (!now_.look && QFileInfo::exists(now_.state.film)) {
          look(now_.state.film);
        }
      });
}

void SetupDesk::startAgain() {
  job_.cancel();
  note(tr("start a new set-up"));
  now_ = {};
  keepFiles();
  emit said({});
  emit changed();
}

bool SetupDesk::isDone(SetupStep step) const {
  const SetupState& state = now_.state;
  switch (step) {
    case SetupStep::Table:
    case SetupStep::Balls:
      return static_cast<int>(state.step) > static_cast<int>(step) && tableOf(state).has_value();
    case SetupStep::Camera:
      return !state.film.isEmpty();
    case SetupStep::Lens:
      return now_.lens.has_value() || state.withoutBoard;
    case SetupStep::Tags: {
      const auto measured = tableOf(state);
      return state.withoutTags || (measured && measured->tags.size() >= 3);
    }
    case SetupStep::Rig:
      return now_.rig.has_value();
    case SetupStep::Check:
      return now_.check && now_.check->check.verdict == RigFault::None;
    case SetupStep::Map:
      return now_.map != nullptr && static_cast<int>(state.step) > static_cast<int>(step);
    case SetupStep::Projector:
      return now_.projector.has_value();
    case SetupStep::Done:
      return !state.folder.isEmpty();
  }
  return false;
}

}  // namespace ferrule
