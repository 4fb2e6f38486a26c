// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/work_items.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

constexpr std::size_t kMostItems = 3;

/// A straight pot whose line was read.
struct Line {
  const PlayedShot* shot = nullptr;
  const PlayedTable* table = nullptr;
  double aim_rad = 0.0;
  double reach = 1.0;
  double margin_rad = 0.0;

  [[nodiscard]] bool isInWith(double otherAim_rad) const { return std::abs(otherAim_rad * reach) <= margin_rad; }
};

std::vector<Line> linesOf(const PlayerHistory& history) {
  std::vector<Line> lines;
  for (const PlayedShot& shot : history.shots) {
    const PlayedTable& table = history.tableOf(shot);
    const auto aim = aimError_rad(shot, table);
    if (aim) lines.push_back({&shot, &table, *aim, reach(shot, table), pocketMargin_rad(shot, table)});
  }
  return lines;
}

bool isLong(const Line& line) {
  return *line.shot->cueToGhost_m + *line.shot->objectToPocket_m > kLongWay_widths * line.table->table.width_m;
}

bool isThin(const Line& line) {
  return *line.shot->cut_rad > kThinCut_rad;
}

/// One cause: which lines it concerns and what they would be without it.
struct Cause {
  WorkKind kind = WorkKind::LongShots;
  Drill drill = Drill::StopLadder;
  double effect_rad = 0.0;
  std::function<bool(const Line&)> concerns;
  std::function<double(const Line&)> without;
};

class Causes {
 public:
  Causes(const std::vector<Line>& lines, const std::vector<Finding>& findings) : lines_(lines), findings_(findings) {}

  [[nodiscard]] std::vector<Cause> all() const {
    std::vector<Cause> causes;
    const Finding& side = findingOf(findings_, FindingKind::AimSide);
    if (side.stands) {
      causes.push_back({WorkKind::AimSide, Drill::CentreLine, side.to, [](const Line&) { return true; },
                        [mean = side.to](const Line& line) { return line.aim_rad - mean; }});
    }
    addCutSide(causes, FindingKind::LeftCutSide, WorkKind::LeftCutSide, Drill::CutFanLeft, CutSide::Left);
    addCutSide(causes, FindingKind::RightCutSide, WorkKind::RightCutSide, Drill::CutFanRight, CutSide::Right);
    const Finding& late = findingOf(findings_, FindingKind::LateAim);
    if (late.stands && late.to > late.from) {
      causes.push_back({WorkKind::LateAim, Drill::CutFanTired, late.to,
                        [](const Line& line) { return line.shot->minutes && *line.shot->minutes >= kLate_min; },
                        [share = late.from / late.to](const Line& line) { return line.aim_rad * share; }});
    }
    addRegion(causes, WorkKind::ThinCuts, Drill::ThinCut, isThin);
    addRegion(causes, WorkKind::LongShots, Drill::LongCut,
              [](const Line& line) { return !isThin(line) && isLong(line); });
    addRegion(causes, WorkKind::ShortShots, Drill::StopLadder,
              [](const Line& line) { return !isThin(line) && !isLong(line); });
    return causes;
  }

 private:
  void addCutSide(std::vector<Cause>& causes, FindingKind kind, WorkKind work, Drill drill, CutSide side) const {
    const Finding& finding = findingOf(findings_, kind);
    if (!finding.stands) return;
    // Thin is to the right of a ball that is sent to the left.
    const double mean = side == CutSide::Left ? -finding.to : finding.to;
    causes.push_back({work, drill, finding.to, [side](const Line& line) { return line.shot->cutSide == side; },
                      [mean](const Line& line) { return line.aim_rad - mean; }});
  }

  void addRegion(std::vector<Cause>& causes, WorkKind work, Drill drill,
                 const std::function<bool(const Line&)>& concerns) const {
    double sum = 0.0;
    double squares = 0.0;
    int count = 0;
    for (const Line& line : lines_) {
      if (!concerns(line)) continue;
      ++count;
      sum += line.aim_rad;
      squares += line.aim_rad * line.aim_rad;
    }
    if (count < kFewestForWork) return;
    const double mean = sum / count;
    const double spread = std::sqrt(std::max(0.0, squares / count - mean * mean));
    causes.push_back({work, drill, spread, concerns,
                      [mean](const Line& line) { return mean + (1.0 - kDrawnIn) * (line.aim_rad - mean); }});
  }

  const std::vector<Line>& lines_;
  const std::vector<Finding>& findings_;
};

/// tried and gained of one session.
struct SessionGain {
  double tried = 0.0;
  double gained = 0.0;
};

std::optional<WorkItem> itemOf(const Cause& cause, const std::vector<Line>& lines, std::size_t sessions,
                               const Resampling& resampling) {
  WorkItem item;
  item.kind = cause.kind;
  item.drill = cause.drill;
  item.effect_rad = cause.effect_rad;
  std::vector<SessionGain> gains(sessions);
  double made = 0.0;
  double gained = 0.0;
  for (const Line& line : lines) {
    SessionGain& session = gains[line.shot->session];
    session.tried += 1.0;
    if (!cause.concerns(line)) continue;
    ++item.tried;
    made += line.shot->made ? 1.0 : 0.0;
    const double gain = (line.isInWith(cause.without(line)) ? 1.0 : 0.0) - (line.isInWith(line.aim_rad) ? 1.0 : 0.0);
    session.gained += gain;
    gained += gain;
  }
  if (item.tried < kFewestForWork) return std::nullopt;
  item.share = made / item.tried;
  item.gain = 100.0 * gained / static_cast<double>(lines.size());
  const auto interval = sessionInterval(
      sessions,
      [&](std::span<const std::size_t> chosen) -> std::optional<double> {
        SessionGain all;
        for (const std::size_t i : chosen) {
          all.tried += gains[i].tried;
          all.gained += gains[i].gained;
        }
        return all.tried > 0.0 ? std::optional(100.0 * all.gained / all.tried) : std::nullopt;
      },
      resampling);
  if (!interval || !(interval->least > 0.0)) return std::nullopt;
  item.gainInterval = *interval;
  const double reached = std::clamp(item.share + gained / item.tried, 0.0, 1.0);
  item.target = std::min(item.trials, static_cast<int>(std::ceil(item.trials * reached - 1e-9)));
  item.convincing = fewestConvincing(item.trials, item.share);
  return item;
}

}  // namespace

std::vector<WorkItem> workItems(const PlayerHistory& history, const std::vector<Finding>& findings,
                                const Resampling& resampling) {
  const std::vector<Line> lines = linesOf(history);
  std::vector<WorkItem> items;
  for (const Cause& cause : Causes(lines, findings).all()) {
    if (auto item = itemOf(cause, lines, history.sessions.size(), resampling)) items.push_back(*item);
  }
  std::ranges::stable_sort(items, std::ranges::greater{}, &WorkItem::gain);
  if (items.size() > kMostItems) items.resize(kMostItems);
  for (std::size_t i = 0; i + 1 < items.size(); ++i)
    items[i].tiesWithNext = items[i].gainInterval.holds(items[i + 1].gain);
  return items;
}

}  // namespace ferrule
