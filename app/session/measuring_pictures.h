// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/session/measured_values.h"
#include "app/window/actions.h"
#include "core/table/measured_table.h"

namespace ferrule {

class FilmView;
class PlanView;

/// What a camera sees and the plan of the same image beside it, while a session is measured.
class MeasuringPictures : public QWidget {
  Q_OBJECT
 public:
  explicit MeasuringPictures(QWidget* parent = nullptr);

  void setTable(const MeasuredTable& measured);
  void setImage(const SeenImage& image);
  /// Neither picture nor balls.
  void clear();
  /// Zoom; false for any other action.
  bool act(ActionId action);

  [[nodiscard]] FilmView& film() { return *film_; }
  [[nodiscard]] PlanView& plan() { return *plan_; }

 private:
  FilmView* film_;
  PlanView* plan_;
  std::shared_ptr<const Rig> rig_;  ///< of the picture
};

}  // namespace ferrule
