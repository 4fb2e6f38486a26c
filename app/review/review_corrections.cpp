// SPDX-License-Identifier: GPL-3.0-or-later
// Corrections in Review: what was read wrongly of a shot is put right, by menus and keys.
#include <QMenu>
#include <QTreeView>
#include <algorithm>
#include <iterator>

#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/progress/progress_service.h"
#include "app/review/correction_menu.h"
#include "app/review/correction_words.h"
#include "app/review/remarks_section.h"
#include "app/review/review_place.h"
#include "app/review/shot_panel.h"
#include "app/review/shot_tree_model.h"
#include "app/window/message_bar.h"
#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

/// What a step changed: "result", "tag".
QString stepWords(const CorrectionStep& step) {
  const auto* remark = std::get_if<Remark>(&step.what);
  return remark != nullptr ? remarkWords(*remark) : sayingWords(std::get<ShotSaying>(step.what));
}

}  // namespace

void ReviewPlace::connectCorrections() {
  connect(&desk_, &ReviewDesk::recordOpened, this, [this] { corrections_.setRecord(desk_.recordPath()); });
  connect(&corrections_, &CorrectionDesk::corrected, this, [this](const CorrectionStep& step) {
    showCorrected(tr("Changed: %1 of shot %2. Undo takes it back.").arg(stepWords(step)).arg(step.at.number));
    if (std::holds_alternative<ShotSaying>(step.what)) judging_.judge(desk_.recordPath(), step.at);
  });
  connect(&corrections_, &CorrectionDesk::takenBack, this, [this](const ShotAddress& at) {
    showCorrected(tr("Taken back: a change of shot %1.").arg(at.number));
    judging_.judge(desk_.recordPath(), at);
  });
  connect(&judging_, &JudgingAnew::judged, this, [this](int shots) {
    if (shots == 0) return;
    // Behind what was said of the correction, which still holds.
    const QString words = tr("Suggestions worked out anew: %n shot(s).", nullptr, shots);
    tell(message_->text().isEmpty() ? words : message_->text() + QLatin1Char(' ') + words);
    desk_.refresh();
  });
  connect(&judging_, &JudgingAnew::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  connect(&corrections_, &CorrectionDesk::refused, this, [this](NotSaid why) {
    forgetNudged();
    tell(notSaidSentence(why));
  });
  connect(&corrections_, &CorrectionDesk::failed, this, [this](const Error& error) {
    forgetNudged();
    tell(errorSentence(error));
  });
  connect(panel_, &ShotPanel::takeBackWanted, this, [this](CorrectionId correction) {
    if (const auto at = shownShot()) corrections_.takeBack(*at, correction);
  });

  for (PictureView* picture : {static_cast<PictureView*>(plan_), static_cast<PictureView*>(film_)}) {
    picture->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(picture, &QWidget::customContextMenuRequested, this, [this, picture](const QPoint& place) {
      popUp(&fillCorrections, picture->mapToGlobal(place), picture->lit());
    });
  }
  panel_->setContextMenuPolicy(Qt::CustomContextMenu);
  connect(panel_, &QWidget::customContextMenuRequested, this,
          [this](const QPoint& place) { popUp(&fillCorrections, panel_->mapToGlobal(place)); });
  tree_->setContextMenuPolicy(Qt::CustomContextMenu);
  connect(tree_, &QWidget::customContextMenuRequested, this, [this](const QPoint& place) {
    const auto row = model_->shotAt(tree_->indexAt(place));
    if (!row) return;
    const QPoint at = tree_->viewport()->mapToGlobal(place);
    if (desk_.shot() && desk_.shot()->id == row->id) return popUp(&fillCorrections, at);
    // The row was just chosen: its shot is on the way.
    connect(
        &desk_, &ReviewDesk::shotChanged, this, [this, at] { popUp(&fillCorrections, at); }, Qt::SingleShotConnection);
  });
}

void ReviewPlace::connectRemarks() {
  const auto put = [this](Remark remark) {
    if (const auto at = shownShot()) corrections_.remark(*at, std::move(remark));
  };
  connect(remarks_, &RemarksSection::noteWritten, this, [put](const QString& text) {
    put({Remark::Kind::WriteNote, {{}, text.toStdString(), {}, 0}, {}});
  });
  connect(remarks_, &RemarksSection::noteTaken, this, [put](const Note& note) {
    put({Remark::Kind::TakeNote, note, {}});
  });
  connect(remarks_, &RemarksSection::tagGiven, this, [put](const QString& tag) {
    put({Remark::Kind::GiveTag, {}, tag.toStdString()});
  });
  connect(remarks_, &RemarksSection::tagTaken, this, [put](const QString& tag) {
    put({Remark::Kind::TakeTag, {}, tag.toStdString()});
  });
  connect(remarks_, &RemarksSection::whoChanged, &corrections_, &CorrectionDesk::setWho);
}

std::optional<ShotAddress> ReviewPlace::shownShot() {
  const auto shot = desk_.shot();
  if (!shot) return std::nullopt;
  return ShotAddress{shot->id, shot->frame, shot->session, shot->reading.number};
}

void ReviewPlace::say(const ShotSaying& saying) {
  const auto at = shownShot();
  if (!at) return;
  tell({});
  corrections_.say(*at, saying);
}

void ReviewPlace::showCorrected(const QString& sentence) {
  tell(sentence);
  desk_.refresh();
  // A list stays as it was asked for; the next one is read from what the record holds now.
  query_->open(desk_.recordPath());
}

bool ReviewPlace::correct(ActionId action) {
  const auto outcome = [this](Outcome wanted) { say(OutcomeSaid{wanted, std::nullopt}); };
  switch (action) {
    case ActionId::Undo:
      corrections_.undo();
      return true;
    case ActionId::Redo:
      corrections_.redo();
      return true;
    case ActionId::LogMade:
      outcome(Outcome::Pot);
      return true;
    case ActionId::LogMissed:
      outcome(Outcome::Miss);
      return true;
    case ActionId::LogSafety:
      outcome(Outcome::Safety);
      return true;
    case ActionId::LogScratch:
      outcome(Outcome::Scratch);
      return true;
    case ActionId::LogBreak:
      outcome(Outcome::Break);
      return true;
    case ActionId::LogFoul:
      popUp(&fillFouls, placeOfMenu());
      return true;
    case ActionId::CorrectShot:
      popUp(&fillCorrections, placeOfMenu(), plan_->lit());
      return true;
    case ActionId::CorrectTarget:
      popUp(&fillTargets, placeOfMenu(), plan_->lit());
      return true;
    case ActionId::CorrectPlayer:
      popUp(&fillPlayers, placeOfMenu());
      return true;
    case ActionId::CorrectRuling:
      if (desk_.shot() && !desk_.shot()->ruling) tell(notSaidSentence(NotSaid::NoReferee));
      popUp(&fillRulings, placeOfMenu());
      return true;
    case ActionId::CorrectNames:
      if (desk_.shot() && desk_.shot()->tracks.empty()) tell(notSaidSentence(NotSaid::NoTrack));
      popUp(&fillNames, placeOfMenu(), plan_->lit());
      return true;
    case ActionId::MovePlaces:
      movePlaces();
      return true;
    case ActionId::CorrectParts:
      if (desk_.shot() && !desk_.shot()->film) tell(notSaidSentence(NotSaid::NotFilmed));
      popUp(&fillParts, placeOfMenu());
      return true;
    case ActionId::CorrectPlacements:
      if (desk_.shot() && !desk_.shot()->film) tell(notSaidSentence(NotSaid::NotFilmed));
      popUp(&fillPlacements, placeOfMenu());
      return true;
    case ActionId::StopWork:
      judging_.stop();
      clips_.stop();
      return true;
    case ActionId::SaveClip:
      chooseClipFile();
      return true;
    case ActionId::CompareShots:
      compareShots();
      return true;
    case ActionId::SavePicture:
      choosePictureFile();
      return true;
    case ActionId::Mute:
      sound_.setMuted(!sound_.isMuted());
      if (sound_.isMuted()) sound_.stop();
      tell(sound_.isMuted() ? tr("Films are played without sound.") : tr("Films are played with sound."));
      return true;
    case ActionId::WriteNote:
      remarks_->focusNote();
      return true;
    case ActionId::GiveTag:
      remarks_->focusTag();
      return true;
    default:
      return false;
  }
}

void ReviewPlace::fillSurroundings(CorrectionSubject& subject) {
  const FrameContent* frame = desk_.frame();
  if (frame == nullptr) return;
  const auto at = std::ranges::find(frame->shots, subject.shot->id, &ShotSummary::id);
  if (at == frame->shots.end()) return;
  subject.hasNext = at + 1 != frame->shots.end();
  const double since_s = at == frame->shots.begin() ? 0.0 : (at - 1)->rest_s;
  std::ranges::copy_if(frame->placements, std::back_inserter(subject.placements), [&](const Placement& placement) {
    return placement.time_s >= since_s && placement.time_s <= at->strike_s;
  });
}

QPoint ReviewPlace::placeOfMenu() const {
  return panel_->mapToGlobal(QPoint(0, 0));
}

void ReviewPlace::popUp(FillMenu fill, const QPoint& place, std::optional<BallName> ball) {
  const auto content = desk_.content();
  if (!desk_.shot() || !content) return;
  CorrectionSubject subject;
  subject.shot = desk_.shot();
  subject.players = content->session.players;
  for (const std::string& name : recordPlayers_) {
    if (std::ranges::find(subject.players, name) == subject.players.end()) subject.others.push_back(name);
  }
  subject.time_s = desk_.playhead().time_s();
  subject.ball = ball;
  subject.who = corrections_.who();
  subject.numbers = numbers_;
  fillSurroundings(subject);
  auto* menu = new QMenu(this);
  menu->setObjectName(QStringLiteral("correctionMenu"));
  menu->setAttribute(Qt::WA_DeleteOnClose);
  fill(*menu, subject, [this](const ShotSaying& saying) { say(saying); });
  if (menu->isEmpty()) {
    delete menu;
    return;
  }
  menu->popup(place);
  menu->setActiveAction(menu->actions().first());
}

}  // namespace ferrule
