// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/measuring_pictures.h"

#include <QVBoxLayout>

#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/review/picture_splitter.h"
#include "app/window/card.h"

namespace ferrule {

MeasuringPictures::MeasuringPictures(QWidget* parent) : QWidget(parent) {
  film_ = new FilmView;
  film_->setObjectName(QStringLiteral("measuredFilm"));
  film_->setAccessibleName(tr("Picture of the film with the balls that were found"));
  plan_ = new PlanView;
  plan_->setObjectName(QStringLiteral("measuredPlan"));
  auto* pictures = new PictureSplitter;
  pictures->setHandleWidth(5);
  pictures->setChildrenCollapsible(false);
  pictures->addWidget(film_);
  pictures->addWidget(plan_);
  pictures->setSizes({500, 500});
  auto* card = new Card;
  auto* cardColumn = new QVBoxLayout(card);
  cardColumn->setContentsMargins(1, 1, 1, 1);
  cardColumn->addWidget(pictures);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(card);
  const auto light = [this](std::optional<BallName> ball) {
    film_->setLit(ball);
    plan_->setLit(ball);
  };
  connect(film_, &PictureView::pointed, this, light);
  connect(plan_, &PictureView::pointed, this, light);
}

void MeasuringPictures::setTable(const MeasuredTable& measured) {
  plan_->setTable(measured);
  film_->setBallSet(measured.balls);
}

void MeasuringPictures::setImage(const SeenImage& image) {
  if (rig_ != image.rig) {
    rig_ = image.rig;
    film_->setRig(rig_ ? std::optional(*rig_) : std::nullopt);
  }
  film_->setSeen(image.picture, image.balls);
  plan_->setBalls(image.balls);
}

void MeasuringPictures::clear() {
  film_->clearPicture();
  plan_->setBalls({});
}

bool MeasuringPictures::act(ActionId action) {
  PictureView& view = film_->underMouse() ? static_cast<PictureView&>(*film_) : *plan_;
  switch (action) {
    case ActionId::ZoomIn:
      view.zoomIn();
      return true;
    case ActionId::ZoomOut:
      view.zoomOut();
      return true;
    case ActionId::ZoomFit:
      film_->fit();
      plan_->fit();
      return true;
    default:
      return false;
  }
}

}  // namespace ferrule
