// SPDX-License-Identifier: GPL-3.0-or-later
// Review's table on which balls are moved to where they lay before a shot, or came to rest after it.
#include <QStackedWidget>
#include <algorithm>

#include "app/picture/plan_view.h"
#include "app/review/review_place.h"
#include "app/session/table_editor.h"

namespace ferrule {

namespace {

/// A ball that is moved by the arrow keys is put where it is when no key came for so long, ms.
constexpr int kNudgesEnd_ms = 700;

}  // namespace

void ReviewPlace::connectPlaces() {
  nudges_.setSingleShot(true);
  nudges_.setInterval(kNudgesEnd_ms);
  connect(&nudges_, &QTimer::timeout, this, &ReviewPlace::putNudged);
  connect(editor_, &TableEditor::ballChosen, this, [this](std::optional<BallName> ball) {
    putNudged();
    editor_->setAim(ball, std::nullopt);
  });
  connect(editor_, &TableEditor::ballPut, this, [this](BallName ball, TablePoint near, double reach_m) {
    if (!moving_) return;
    editor_->setAim(ball, std::nullopt);
    nudged_ = BallAt{ball, near};
    nudgedAt_ = shownShot();
    nudgeIsSaid_ = false;
    // Dragging ends when the ball is let go; keys go on.
    if (reach_m > 0.0) return putNudged();
    showMoving();
    nudges_.start();
  });
  const auto keepIt = [this] {
    showMoving();
    tell(tr("A ball cannot be taken away here; correct the result when it fell."));
  };
  connect(editor_, &TableEditor::ballTaken, this, keepIt);
  connect(editor_, &TableEditor::ballFell, this, keepIt);
  connect(editor_, &PictureView::pointed, editor_, &PictureView::setLit);
}

void ReviewPlace::movePlaces() {
  if (!desk_.shot()) return;
  putNudged();
  nudged_.reset();
  if (!moving_) {
    moving_ = ShotEnd::Before;
    tell(
        tr("Drag a ball to where it lay before the shot, or choose it with the tab key and move it with the arrow "
           "keys. D goes on to where the balls came to rest."));
  } else if (*moving_ == ShotEnd::Before) {
    moving_ = ShotEnd::After;
    tell(tr("Drag a ball to where it came to rest. D ends."));
  } else {
    moving_.reset();
    tell({});
  }
  planStack_->setCurrentWidget(moving_ ? static_cast<QWidget*>(editor_) : plan_);
  if (!moving_) return;
  if (mode_ == PictureMode::Film) setMode(PictureMode::Both);
  // The film shows the same moment.
  const ShotReading& reading = desk_.shot()->reading;
  desk_.playhead().pause();
  desk_.playhead().seek(*moving_ == ShotEnd::Before ? reading.strike_s : reading.rest_s);
  showMoving();
  editor_->setFocus();
}

void ReviewPlace::forgetNudged() {
  nudged_.reset();
  showMoving();
}

void ReviewPlace::putNudged() {
  nudges_.stop();
  if (!nudged_ || !nudgedAt_ || !moving_ || nudgeIsSaid_) return;
  // It stays there in the picture until the shot is read again.
  nudgeIsSaid_ = true;
  tell({});
  corrections_.say(*nudgedAt_, PlaceSaid{*moving_, *nudged_});
}

void ReviewPlace::showMoving() {
  const auto shot = desk_.shot();
  if (!moving_ || !shot) return;
  Position balls = *moving_ == ShotEnd::Before ? shot->reading.before : shot->reading.after;
  if (nudged_ && nudgedAt_ && nudgedAt_->shot == shot->id) {
    const auto at = std::ranges::find(balls, nudged_->ball, &BallAt::ball);
    if (at != balls.end()) *at = *nudged_;
  }
  editor_->setBalls(balls);
}

}  // namespace ferrule
