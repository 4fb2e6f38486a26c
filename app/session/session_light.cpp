// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_light.h"

#include <QLabel>
#include <QLayout>
#include <algorithm>
#include <cmath>

#include "app/projector/projector_desk.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Less than this nobody sees on the cloth.
constexpr double kSame_m = 0.004;
/// Distances are shown in such steps, so that the words stay while a hand is at work on the last millimetres.
constexpr double kStep_m = 0.005;

double shownDistance_m(double apart_m) {
  return std::max(kStep_m, kStep_m * std::round(apart_m / kStep_m));
}

bool same(const std::vector<TablePoint>& a, const std::vector<TablePoint>& b) {
  return std::ranges::equal(a, b, [](TablePoint p, TablePoint q) { return distance(p, q) <= kSame_m; });
}

}  // namespace

SessionLight::SessionLight(ProjectorDesk& projector, QWidget* parent)
    : ProjectorRow(projector,
                   {{"projectSuggestion", tr("Project the suggestion"),
                     tr("Show the suggested shot on the cloth: its line, and where the cue ball is to rest")},
                    {"projectPutBack", tr("Project where balls belong"),
                     tr("After an interruption: show where balls must be put back")}},
                   parent),
      projector_(projector) {
  displaced_ = new QLabel;
  displaced_->setObjectName(QStringLiteral("displacedBalls"));
  displaced_->setWordWrap(true);
  displaced_->hide();
  layout()->addWidget(displaced_);
  connect(this, &ProjectorRow::chosenChanged, this, [this] { sign_.clear(); });
}

void SessionLight::project(const LightDrawing& drawing, const std::vector<TablePoint>& sign) {
  if (projector_.isBusy() || (projector_.shown() == lightName(*chosen()) && same(sign, sign_))) return;
  sign_ = sign;
  projector_.show(lightName(*chosen()), drawing);
}

void SessionLight::setSuggestion(const PlayedPlan* plan, const MeasuredTable& table) {
  if (!wants(Suggestion)) return;
  if (plan == nullptr) return project({}, {});
  std::vector<TablePoint> sign;
  for (const auto& [ball, way] : plan->ways) {
    if (!way.empty()) sign.insert(sign.end(), {way.front(), way.back()});
  }
  project(lightOfPlan(plan->ways, plan->ranked.chances.leave, table), sign);
}

void SessionLight::setBalls(const Position& before, const std::optional<Position>& now, const MeasuredTable& table) {
  const bool wanted = wants(PutBack);
  displaced_->setVisible(wanted && now.has_value());
  if (!wanted) return;
  if (!now) {
    const LightDrawing drawing = lightOf(before, table);
    std::vector<TablePoint> sign;
    for (const LightLine& line : drawing.lines)
      sign.push_back(line.places.front());
    return project(drawing, sign);
  }
  const auto balls = displacedBalls(before, *now);
  LightDrawing drawing = lightOfPuttingBack(balls, table);
  std::vector<TablePoint> sign;
  QStringList told;
  for (const DisplacedBall& ball : balls) {
    const double shown_m = shownDistance_m(ball.apart_m);
    const QString off = tr("%1 mm").arg(numbers_.fixed(millimetresFromMetres(shown_m), 0));
    const QString words = toldOf(ballWords(ball.ball), ball.lies ? off : tr("not seen", "a ball"));
    drawing.labels.push_back({besideRing(ball.belongs, table), words.toStdString()});
    told << words;
    sign.insert(sign.end(), {ball.belongs, {shown_m, 0.0}});
  }
  displaced_->setText(told.isEmpty() ? tr("Every ball lies where it belongs.")
                                     : tr("To be put back: %1.", "balls").arg(listOf(told)));
  project(drawing, sign);
}

}  // namespace ferrule
