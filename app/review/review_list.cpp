// SPDX-License-Identifier: GPL-3.0-or-later
// Review's list of the shots that were asked for.
#include <QStackedWidget>
#include <QTimer>
#include <QTreeView>

#include "app/progress/progress_service.h"
#include "app/review/review_place.h"
#include "app/review/shot_filter.h"

namespace ferrule {

namespace {

/// How long a shot without a picture in time stands while a list is played, ms.
constexpr int kStillTime_ms = 1200;
/// After the balls rest, before the next shot.
constexpr double kAfterRest_s = 0.5;

}  // namespace

void ReviewPlace::connectFilter() {
  query_ = new ProgressService([] { return std::int64_t{0}; }, this);
  connect(query_, &ProgressService::opened, this, [this](const QString&, const std::vector<Player>& players) {
    filter_->setPlayers(players);
    recordPlayers_.clear();
    for (const Player& player : players)
      recordPlayers_.push_back(player.name);
  });
  connect(query_, &ProgressService::listed, this, [this](const ShotList& list) { filter_->setList(list); });
  connect(filter_, &ShotFilter::changed, this, &ReviewPlace::askForList);
  connect(filter_, &ShotFilter::chosen, this, &ReviewPlace::showListed);
  connect(filter_, &ShotFilter::closed, this, [this] {
    playsList_ = false;
    lists_->setCurrentWidget(tree_);
    tree_->setFocus();
  });
  Playhead& playhead = desk_.playhead();
  connect(&playhead, &Playhead::moved, this, [this](double time_s) {
    const auto shot = desk_.shot();
    if (playsList_ && shot && desk_.playhead().isPlaying() && time_s > shot->reading.rest_s + kAfterRest_s)
      playNextListed();
  });
  connect(&playhead, &Playhead::playingChanged, this, [this](bool playing) {
    // At the end of a shot without a film.
    if (playsList_ && !playing && desk_.playhead().index() + 1 == static_cast<int>(desk_.playhead().times().size()))
      playNextListed();
  });
  connect(&desk_, &ReviewDesk::shotChanged, this, [this] {
    if (!playsList_ || !desk_.shot()) return;
    if (!desk_.playhead().isEmpty()) {
      desk_.playhead().play();
      return;
    }
    QTimer::singleShot(kStillTime_ms, this, [this, id = desk_.shot()->id] {
      if (playsList_ && desk_.shot() && desk_.shot()->id == id) playNextListed();
    });
  });
}

void ReviewPlace::askForList() {
  if (lists_->currentWidget() != filter_) return;
  query_->list(desk_.recordPath(), {filter_->player(), filter_->filter()}, numbers_.locale());
}

void ReviewPlace::showShots(const ShotList& shots) {
  if (shots.record != desk_.recordPath()) {
    wantedList_ = shots;
    desk_.openRecord(shots.record);
    return;
  }
  playsList_ = false;
  lists_->setCurrentWidget(filter_);
  filter_->setList(shots);
}

void ReviewPlace::showListed(const ListedShot& shot) {
  desk_.showShot(shot.session, shot.shot);
}

void ReviewPlace::playList() {
  if (playsList_) {
    playsList_ = false;
    desk_.playhead().pause();
    return;
  }
  if (lists_->currentWidget() != filter_ || filter_->list().shots.empty()) {
    tell(tr("Filter the shots first; the list is then played from the chosen shot on."));
    return;
  }
  tell({});
  playsList_ = true;
  if (desk_.playhead().isEmpty()) {
    playNextListed();
  } else {
    if (desk_.shot()) desk_.playhead().seek(desk_.shot()->reading.strike_s);
    desk_.playhead().play();
  }
}

void ReviewPlace::playNextListed() {
  desk_.playhead().pause();
  if (!filter_->step(1)) playsList_ = false;
}

}  // namespace ferrule
