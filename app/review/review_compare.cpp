// SPDX-License-Identifier: GPL-3.0-or-later
// Review's two shots side by side, and the sound of the film.
#include <QStackedWidget>

#include "app/review/compare_view.h"
#include "app/review/review_place.h"

namespace ferrule {

void ReviewPlace::compareShots() {
  const auto content = desk_.content();
  if (compare_->held()) {
    compare_->hold(nullptr, content ? content->table : MeasuredTable{});
    tell({});
  } else if (desk_.shot() && content) {
    compare_->hold(desk_.shot(), content->table);
    tell(tr("Shot %1 is held: choose another one to see both side by side. Q ends it.")
             .arg(desk_.shot()->reading.number));
  }
  pictureStack_->setCurrentIndex(compare_->held() ? 1 : 0);
}

void ReviewPlace::showCompared() {
  const auto content = desk_.content();
  if (compare_->held() && desk_.shot() && content) compare_->setOther(desk_.shot(), content->table);
}

void ReviewPlace::connectSound() {
  Playhead& playhead = desk_.playhead();
  connect(&playhead, &Playhead::playingChanged, this, [this](bool playing) {
    if (playing && desk_.countsFilmImages()) {
      sound_.play(desk_.film().path(), desk_.playhead().time_s());
    } else {
      sound_.stop();
    }
  });
  connect(&playhead, &Playhead::moved, this, [this](double time_s) { sound_.follow(time_s); });
}

}  // namespace ferrule
