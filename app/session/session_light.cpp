// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_light.h"

#include <algorithm>

#include "app/projector/projector_desk.h"

namespace ferrule {

namespace {

/// Less than this nobody sees on the cloth.
constexpr double kSame_m = 0.004;

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
  if (!wants(PutBack)) return;
  const LightDrawing drawing = now ? lightOfPuttingBack(before, *now, table) : lightOf(before, table);
  std::vector<TablePoint> sign;
  for (const LightLine& line : drawing.lines) {
    if (line.closed) sign.push_back(line.places.front());
  }
  project(drawing, sign);
}

}  // namespace ferrule
