// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/picture/plan_picture.h"
#include "app/session/suggestion_service.h"
#include "core/table/track.h"

namespace ferrule {

/// The table from above with balls that can be moved: dragged with the mouse, or chosen with the tab key and moved with
/// the arrow keys (1 mm, with Shift 10 mm). A click, or the page keys, choose its pocket; Delete, or letting go of a
/// ball beside the table, takes it away; in a pocket, it fell.
class TableEditor : public PlanPicture {
  Q_OBJECT
 public:
  explicit TableEditor(QWidget* parent = nullptr);

  void setBalls(const Position& balls);
  /// The chosen ball, and the pocket that it is played for.
  void setAim(std::optional<BallName> ball, std::optional<PocketName> pocket);

  /// A plan, drawn dashed with its leave; null for nothing.
  void setPlan(const PlayedPlan* plan);

 signals:
  /// Let go near a place, m; reach_m: how far it may be drawn from there.
  void ballPut(ferrule::BallName ball, ferrule::TablePoint near, double reach_m);
  void ballTaken(ferrule::BallName ball);
  /// Let go in a pocket.
  void ballFell(ferrule::BallName ball, ferrule::PocketName pocket);
  void ballChosen(std::optional<ferrule::BallName> ball);
  void pocketChosen(ferrule::PocketName pocket);

 protected:
  /// Drawn on the cloth, under plans and balls.
  virtual void paintUnder(QPainter&) {}
  std::optional<BallName> ballUnder(const QPointF& place) const override;
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Drag {
    BallName ball;
    QPointF from;      ///< where it was pressed, px
    TablePoint place;  ///< where the ball is shown now
    bool moved = false;
  };

  [[nodiscard]] std::optional<PocketName> pocketUnder(const QPointF& place) const;
  /// Whose mouth a ball with its centre there is a radius past: none hangs so deep in the jaws.
  [[nodiscard]] std::optional<PocketName> pocketTaking(const QPointF& place) const;
  /// Where nobody asks for a pocket, the page keys stay the window's.
  [[nodiscard]] bool choosesPockets() const;
  void choosePocket(int step);
  void chooseNext(int step);
  void paintAim(QPainter& painter) const;
  void paintPlan(QPainter& painter) const;

  Position balls_;
  std::optional<BallName> chosen_;
  std::optional<PocketName> pocket_;
  std::optional<Drag> drag_;
  std::optional<PlayedPlan> plan_;
};

}  // namespace ferrule
