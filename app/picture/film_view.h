// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "app/film/film_pictures.h"
#include "app/picture/film_projection.h"
#include "app/picture/picture_view.h"
#include "app/review/moment.h"
#include "core/camera/rig.h"
#include "core/table/ball_set.h"

namespace ferrule {

/// One image of the film with the ways of the shot projected onto it. What is drawn over the picture belongs to the
/// picture's own time.
class FilmView : public PictureView {
  Q_OBJECT
 public:
  explicit FilmView(QWidget* parent = nullptr);

  void setShot(std::shared_ptr<const StoredShot> shot);
  /// Without a rig nothing is drawn over the film.
  void setRig(const std::optional<Rig>& rig);
  void setBallSet(const BallSet& balls);
  void setPicture(const FilmPicture& picture);
  /// A picture while it is measured, with the balls that were found in this very image: each gets a ring and its name.
  void setSeen(const FilmPicture& picture, std::vector<BallNow> found);
  void clearPicture();
  [[nodiscard]] bool hasPicture() const { return !picture_.picture.isNull(); }
  [[nodiscard]] const FilmPicture& picture() const { return picture_; }
  /// Where a ball's centre at a table point is drawn.
  [[nodiscard]] std::optional<QPointF> screenFromTable(TablePoint point) const;

  /// The picture as it is shown, for a file; in the units of the widget.
  void drawFor(QPainter& painter) const;

 protected:
  QSizeF contentSize() const override;
  std::optional<BallName> ballUnder(const QPointF& place) const override;
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] double scaleAt(TablePoint point) const;
  [[nodiscard]] FilmProjection projection() const;  ///< only with a rig and a picture
  void paintFound(QPainter& painter) const;

  std::shared_ptr<const StoredShot> shot_;
  std::optional<Rig> rig_;
  BallSet balls_ = poolBalls();
  FilmPicture picture_;
  std::vector<BallNow> ballsNow_;  ///< at the picture's time
  bool ringsAll_ = false;          ///< they were found in this image, and no shot is shown
};

}  // namespace ferrule
