// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/work_items.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <set>

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
  WorkDrill drill = WorkDrill::StopLadder;
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
      causes.push_back({WorkKind::AimSide, WorkDrill::CentreLine, side.to, [](const Line&) { return true; },
                        [mean = side.to](const Line& line) { return line.aim_rad - mean; }});
    }
    addCutSide(causes, FindingKind::LeftCutSide, WorkKind::LeftCutSide, WorkDrill::CutFanLeft, CutSide::Left);
    addCutSide(causes, FindingKind::RightCutSide, WorkKind::RightCutSide, WorkDrill::CutFanRight, CutSide::Right);
    const Finding& late = findingOf(findings_, FindingKind::LateAim);
    if (late.stands && late.to > late.from) {
      causes.push_back({WorkKind::LateAim, WorkDrill::CutFanTired, late.to,
                        [](const Line& line) { return line.shot->minutes && *line.shot->minutes >= kLate_min; },
                        [share = late.from / late.to](const Line& line) { return line.aim_rad * share; }});
    }
    addRegion(causes, WorkKind::ThinCuts, WorkDrill::ThinCut, isThin);
    addRegion(causes, WorkKind::LongShots, WorkDrill::LongCut,
              [](const Line& line) { return !isThin(line) && isLong(line); });
    addRegion(causes, WorkKind::ShortShots, WorkDrill::StopLadder,
              [](const Line& line) { return !isThin(line) && !isLong(line); });
    return causes;
  }

 private:
  void addCutSide(std::vector<Cause>& causes, FindingKind kind, WorkKind work, WorkDrill drill, CutSide side) const {
    const Finding& finding = findingOf(findings_, kind);
    if (!finding.stands) return;
    // Thin is to the right of a ball that is sent to the left.
    const double mean = side == CutSide::Left ? -finding.to : finding.to;
    causes.push_back({work, drill, finding.to, [side](const Line& line) { return line.shot->cutSide == side; },
                      [mean](const Line& line) { return line.aim_rad - mean; }});
  }

  void addRegion(std::vector<Cause>& causes, WorkKind work, WorkDrill drill,
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

/// Of what is gained for each that was tried, times a factor.
std::optional<Interval> gainInterval(const std::vector<SessionGain>& gains, double factor,
                                     const Resampling& resampling) {
  return sessionInterval(
      gains.size(),
      [&](std::span<const DrawnSession> chosen) -> std::optional<double> {
        SessionGain all;
        for (const DrawnSession i : chosen) {
          all.tried += gains[i].tried;
          all.gained += gains[i].gained;
        }
        return all.tried > 0.0 ? std::optional(factor * all.gained / all.tried) : std::nullopt;
      },
      resampling);
}

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
  const auto interval = gainInterval(gains, 100.0, resampling);
  if (!interval || !(interval->least > 0.0)) return std::nullopt;
  item.gainInterval = *interval;
  const double reached = std::clamp(item.share + gained / item.tried, 0.0, 1.0);
  item.target = std::min(item.trials, static_cast<int>(std::ceil(item.trials * reached - 1e-9)));
  item.convincing = fewestConvincing(item.trials, item.share);
  return item;
}

bool isScatterOfAim(WorkKind kind) {
  return kind == WorkKind::LongShots || kind == WorkKind::ThinCuts || kind == WorkKind::ShortShots;
}

/// The gain in frames of 100 of what gainOf counts of each shot that was played again. Nothing where they are too few.
struct FrameGain {
  double frames = 0.0;
  Interval interval;
  int shots = 0;
};

std::optional<FrameGain> framesWon(const PlayerHistory& history, const std::function<double(const PlayedShot&)>& gainOf,
                                   const Resampling& resampling) {
  std::set<std::int64_t> frames;
  int inFrames = 0;
  std::vector<SessionGain> gains(history.sessions.size());
  FrameGain all;
  double gained = 0.0;
  for (const PlayedShot& shot : history.shots) {
    if (!shot.game.empty()) {
      frames.insert(shot.frame);
      ++inFrames;
    }
    if (!shot.steadier) continue;
    ++all.shots;
    const double gain = gainOf(shot);
    gained += gain;
    gains[shot.session].tried += 1.0;
    gains[shot.session].gained += gain;
  }
  if (all.shots < kFewestPlayedAgain || frames.empty()) return std::nullopt;
  const double each = 100.0 * inFrames / static_cast<double>(frames.size());
  all.frames = each * gained / all.shots;
  const auto interval = gainInterval(gains, each, resampling);
  if (!interval) return std::nullopt;
  all.interval = *interval;
  return all;
}

/// Adds what each item brings in frames.
void addFrames(std::vector<WorkItem>& items, const std::vector<Cause>& causes, const std::vector<Line>& lines,
               const PlayerHistory& history, const Resampling& resampling) {
  std::map<const PlayedShot*, const Line*> lineOf;
  for (const Line& line : lines)
    lineOf[line.shot] = &line;
  double frames = 0.0;
  double balls = 0.0;
  for (WorkItem& item : items) {
    if (!isScatterOfAim(item.kind)) continue;
    const Cause& cause = *std::ranges::find(causes, item.kind, &Cause::kind);
    const auto won = framesWon(
        history,
        [&](const PlayedShot& shot) {
          const auto line = lineOf.find(&shot);
          return line != lineOf.end() && cause.concerns(*line->second) ? shot.steadier->aim : 0.0;
        },
        resampling);
    if (!won) return;
    item.frames = won->frames;
    item.framesInterval = won->interval;
    frames += won->frames;
    balls += item.gain;
  }
  if (!(balls > 0.0) || !(frames > 0.0)) return;
  const double rate = frames / balls;
  for (WorkItem& item : items) {
    if (item.frames) continue;
    item.frames = rate * item.gain;
    item.framesInterval = {rate * item.gainInterval.least, rate * item.gainInterval.most};
  }
}

/// What steadier speed or a steadier tip point brings.
void addStrokeItem(std::vector<WorkItem>& items, WorkKind kind, WorkDrill drill, double SteadierGain::*gain,
                   double SteadierGain::*spread, const PlayerHistory& history, const Resampling& resampling) {
  const auto won = framesWon(
      history, [gain](const PlayedShot& shot) { return (*shot.steadier).*gain; }, resampling);
  if (!won || !(won->interval.least > 0.0)) return;
  WorkItem item;
  item.kind = kind;
  item.drill = drill;
  item.tried = won->shots;
  double squares = 0.0;
  for (const PlayedShot& shot : history.shots)
    squares += shot.steadier ? (*shot.steadier).*spread * (*shot.steadier).*spread : 0.0;
  item.share = std::sqrt(squares / won->shots);
  item.frames = won->frames;
  item.framesInterval = won->interval;
  items.push_back(item);
}

/// Frames before balls: what is known in balls alone comes after what is known in frames.
bool bringsMore(const WorkItem& a, const WorkItem& b) {
  if (a.frames.has_value() != b.frames.has_value()) return a.frames.has_value();
  return a.frames ? *a.frames > *b.frames : a.gain > b.gain;
}

bool ties(const WorkItem& item, const WorkItem& next) {
  if (item.frames && next.frames) return item.framesInterval.holds(*next.frames);
  return !item.frames && !next.frames && item.gainInterval.holds(next.gain);
}

}  // namespace

std::vector<WorkItem> workItems(const PlayerHistory& history, const std::vector<Finding>& findings,
                                const Resampling& resampling) {
  const std::vector<Line> lines = linesOf(history);
  const std::vector<Cause> causes = Causes(lines, findings).all();
  std::vector<WorkItem> items;
  for (const Cause& cause : causes) {
    if (auto item = itemOf(cause, lines, history.sessions.size(), resampling)) items.push_back(*item);
  }
  addFrames(items, causes, lines, history, resampling);
  addStrokeItem(items, WorkKind::SpeedControl, WorkDrill::Lag, &SteadierGain::speed, &SteadierGain::speedSpread,
                history, resampling);
  addStrokeItem(items, WorkKind::TipPoint, WorkDrill::DrawBands, &SteadierGain::tip, &SteadierGain::tipSpread, history,
                resampling);
  std::ranges::stable_sort(items, bringsMore);
  if (items.size() > kMostItems) items.resize(kMostItems);
  for (std::size_t i = 0; i + 1 < items.size(); ++i)
    items[i].tiesWithNext = ties(items[i], items[i + 1]);
  return items;
}

}  // namespace ferrule
