// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/picture/plan_picture.h"

namespace ferrule {

/// The table from above with what is to be measured on it.
class MeasurePicture : public PlanPicture {
  Q_OBJECT
 public:
  enum class Shows { Sides, Tags };
  explicit MeasurePicture(Shows shows, QWidget* parent = nullptr);

  /// Tags as they are put in; where there are none yet, examples are drawn at the usual places.
  void setTags(const std::vector<RailTag>& tags);

 protected:
  std::optional<BallName> ballUnder(const QPointF&) const override { return std::nullopt; }
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintSides(QPainter& painter) const;
  void paintTags(QPainter& painter) const;

  Shows shows_;
  std::vector<RailTag> tags_;
};

}  // namespace ferrule
