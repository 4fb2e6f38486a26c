// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_csv.h"

#include <QDateTime>
#include <cmath>

#include "core/base/csv.h"
#include "core/geometry/units.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

struct Unit {
  const char* name;
  double scale;
  double step;
};

const Unit kDegrees{"deg", degreesFromRadians(1.0), 1e-4};
const Unit kPercent{"percent", 100.0, 1e-3};
const Unit kMillimetres{"mm", 1000.0, 1e-2};
const Unit kSeconds{"s", 1.0, 1e-3};
const Unit kRadii{"ball radii", 1.0, 1e-4};
const Unit kBalls{"balls", 1.0, 1e-4};
const Unit kInnings{"innings", 1.0, 1e-4};
const Unit kBrier{"squared chance", 1.0, 1e-5};
const Unit kCount{"count", 1.0, 1.0};

std::string reasonOf(const Shortage& shortage) {
  const std::string counts =
      std::string(" ").append(std::to_string(shortage.have)).append(" of ").append(std::to_string(shortage.need));
  switch (shortage.kind) {
    case ShortageKind::Shots:
      return "shots" + counts;
    case ShortageKind::Sessions:
      return "sessions" + counts;
    case ShortageKind::NoPlan:
      return "no plan";
    case ShortageKind::NoRepeats:
      return "no plan and no repeats";
    case ShortageKind::NoTimes:
      return "no times";
    case ShortageKind::NoValues:
      return "not recorded";
  }
  return {};
}

const char* nameOf(FindingKind kind) {
  static constexpr const char* kNames[] = {"aim trend",   "speed trend", "make trend",    "late aim",      "late makes",
                                           "match makes", "aim side",    "left cut side", "right cut side"};
  return kNames[static_cast<std::size_t>(kind)];
}

const char* nameOf(WorkKind kind) {
  static constexpr const char* kNames[] = {"aim side",  "left cut side", "right cut side", "late aim", "long shots",
                                           "thin cuts", "short shots",   "speed control",  "tip point"};
  return kNames[static_cast<std::size_t>(kind)];
}

class Rows {
 public:
  Rows() { row({"measure", "group", "unit", "value", "least", "most", "count", "sessions", "reason"}); }

  void add(const std::string& measure, const std::string& group, const Unit& unit, const Answer<Estimate>& answer) {
    if (!answer) return row({measure, group, unit.name, "", "", "", "", "", reasonOf(answer.error())});
    row({measure, group, unit.name, text(answer->value, unit), text(answer->interval.least, unit),
         text(answer->interval.most, unit), std::to_string(answer->shots), std::to_string(answer->sessions), ""});
  }
  void add(const std::string& measure, const std::string& group, const MakeCell& cell) {
    if (!cell.wilson) return;
    row({measure, group, kPercent.name, text(cell.share(), kPercent), text(cell.wilson->least, kPercent),
         text(cell.wilson->most, kPercent), std::to_string(cell.tried), "", ""});
    row({measure + ", drawn to the mean", group, kPercent.name, text(cell.shrunken, kPercent),
         text(cell.shrunkenInterval.least, kPercent), text(cell.shrunkenInterval.most, kPercent),
         std::to_string(cell.tried), "", ""});
  }
  void add(const std::string& measure, const std::string& group, const MissCell& cell) {
    if (!cell.thickShare) return;
    row({measure, group, kPercent.name, text(static_cast<double>(cell.thick) / cell.total(), kPercent),
         text(cell.thickShare->least, kPercent), text(cell.thickShare->most, kPercent), std::to_string(cell.total()),
         "", ""});
  }
  /// A share of a count.
  void add(const std::string& measure, const std::string& group, double share, const Interval& interval, int tried) {
    row({measure, group, kPercent.name, text(share, kPercent), text(interval.least, kPercent),
         text(interval.most, kPercent), std::to_string(tried), "", ""});
  }
  void count(const std::string& measure, int value) {
    row({measure, "", kCount.name, std::to_string(value), "", "", "", "", ""});
  }
  void add(const Finding& finding) {
    const bool share = finding.kind == FindingKind::SpeedTrend || finding.kind == FindingKind::MakeTrend ||
                       finding.kind == FindingKind::LateMakes || finding.kind == FindingKind::MatchMakes;
    const Unit& unit = share ? kPercent : kDegrees;
    const std::string measure = std::string("finding: ") + nameOf(finding.kind);
    if (finding.shortage) return row({measure, "", unit.name, "", "", "", "", "", reasonOf(*finding.shortage)});
    const std::string shots = std::to_string(finding.shots);
    const std::string sessions = std::to_string(finding.sessions);
    row({measure, "from", unit.name, text(finding.from, unit), "", "", shots, sessions, ""});
    row({measure, "to", unit.name, text(finding.to, unit), "", "", shots, sessions, ""});
    row({measure, "change", unit.name, text(finding.to - finding.from, unit),
         finding.change ? text(finding.change->least, unit) : "",
         finding.change ? text(finding.change->most, unit) : "", shots, sessions,
         finding.stands ? "stands" : "no more than chance"});
    row({measure, "chance", kPercent.name, text(finding.chance, kPercent), "", "", shots, sessions, ""});
  }
  void add(const WorkItem& item) {
    const auto gain = [&](const char* unit, double value, const Interval& interval) {
      row({std::string("work: ") + nameOf(item.kind), "gain", unit, numberText(value, 1e-3),
           numberText(interval.least, 1e-3), numberText(interval.most, 1e-3), std::to_string(item.tried), "", ""});
    };
    if (isOfPots(item.kind)) gain("balls of 100", item.gain, item.gainInterval);
    if (item.frames) gain("frames of 100", *item.frames, item.framesInterval);
  }
  [[nodiscard]] std::string text() const { return text_; }

 private:
  static std::string text(double value, const Unit& unit) { return numberText(unit.scale * value, unit.step); }

  void row(std::initializer_list<std::string> fields) {
    bool first = true;
    for (const std::string& field : fields) {
      if (!first) text_ += ',';
      text_ += csvField(field);
      first = false;
    }
    text_ += "\r\n";
  }

  std::string text_;
};

std::string bandText(double from, double to, double scale, bool last) {
  const std::string least = numberText(from * scale, 0.1);
  return last ? "over " + least : least + " to " + numberText(to * scale, 0.1);
}

void addMakes(Rows& rows, const std::string& intent, const Makes& makes) {
  rows.add("made", intent, kPercent, makes.share);
  const auto grid = [&](const std::string& measure, const MakeGrid& cells) {
    for (std::size_t d = 0; d < kDistanceBandCount; ++d) {
      const bool last = d == kDistanceBands_widths.size();
      const std::string distance =
          bandText(d == 0 ? 0.0 : kDistanceBands_widths[d - 1], last ? 0.0 : kDistanceBands_widths[d], 1.0, last);
      for (std::size_t c = 0; c < kCutBands_rad.size(); ++c) {
        const std::string cut =
            bandText(c == 0 ? 0.0 : kCutBands_rad[c - 1], kCutBands_rad[c], degreesFromRadians(1.0), false);
        rows.add(measure, intent + "; " + distance + " widths; cut " + cut + " deg", cells.cells[d][c]);
      }
    }
  };
  grid("made by cut and way of the cue ball", makes.byCueBall);
  grid("made by cut and way of the object ball", makes.byObjectBall);
  for (std::size_t i = 0; i < kPocketNames.size(); ++i)
    rows.add("made by pocket", intent + "; " + std::string(toText(kPocketNames[i])), makes.byPocket[i]);
  for (std::size_t kind = 0; kind < makes.byEntry.size(); ++kind) {
    for (std::size_t band = 0; band < kEntryBands_rad.size(); ++band) {
      const std::string to = std::to_string(std::lround(degreesFromRadians(kEntryBands_rad[band])));
      rows.add("made by the way into the pocket",
               intent + "; " + (kind == 0 ? "corner" : "side") + "; less than " + to + " deg",
               makes.byEntry[kind][band]);
    }
  }
}

void addMeasure(Rows& rows, const PlayerHistory& history, const std::string& name, const Unit& unit,
                const ErrorMeasure& measure) {
  const std::string group = measure.fromRepeats ? "repeated set-ups" : "all";
  rows.add(name + ": mean", group, unit, measure.bias);
  rows.add(name + ": scatter", group, unit, measure.spread);
  for (const SessionEstimate& session : measure.series) {
    const auto started = QDateTime::fromMSecsSinceEpoch(history.sessions[session.session].started_ms, Qt::UTC);
    rows.add(name + ": scatter", "session of " + started.toString(Qt::ISODate).toStdString(), unit, session.estimate);
  }
}

}  // namespace

std::string reportCsv(const PlayerProgress& progress) {
  Rows rows;
  const DataQuality& quality = progress.quality;
  rows.count("shots", quality.shots);
  rows.count("sessions", quality.sessions);
  rows.count("straight pots tried", quality.attempts);
  rows.count("shots without a measured stroke", quality.untracked);
  rows.count("shots corrected by a person", quality.corrected);
  rows.count("shots that wait for a person", quality.asked);
  rows.count("pots named by a person", quality.called);
  int leftOut = 0;
  for (const TableLeftOut& table : quality.leftOut)
    leftOut += table.shots;
  rows.count("shots left out on tables of another pocket width", leftOut);
  addMakes(rows, "inferred", progress.inferred);
  addMakes(rows, "called", progress.called);
  const PlayerHistory& history = progress.history;
  addMeasure(rows, history, "aim, + left", kDegrees, progress.aim.all);
  addMeasure(rows, history, "aim on cuts to the left, + thin", kDegrees, progress.aim.leftCuts);
  addMeasure(rows, history, "aim on cuts to the right, + thin", kDegrees, progress.aim.rightCuts);
  addMeasure(rows, history, "speed", kPercent, progress.strikes.speed);
  addMeasure(rows, history, "tip point, side", kRadii, progress.strikes.side);
  addMeasure(rows, history, "tip point, height", kRadii, progress.strikes.height);
  addMeasure(rows, history, "rest of the cue ball", kMillimetres, progress.strikes.position);
  rows.add("missed too thick", "cuts to the left", progress.misses.leftCuts);
  rows.add("missed too thick", "cuts to the right", progress.misses.rightCuts);
  for (std::size_t i = 0; i < kPocketNames.size(); ++i)
    rows.add("missed too thick", std::string(toText(kPocketNames[i])), progress.misses.pockets[i]);
  for (std::size_t i = 0; i < progress.misses.speeds.size(); ++i) {
    const bool last = i == kSpeedBands_mps.size();
    rows.add("missed too thick",
             bandText(i == 0 ? 0.0 : kSpeedBands_mps[i - 1], last ? 0.0 : kSpeedBands_mps[i], 1.0, last) + " m/s",
             progress.misses.speeds[i]);
  }
  rows.add("break: a ball and no foul", "", kPercent, progress.breaks.success);
  rows.add("break: balls", "", kBalls, progress.breaks.balls);
  rows.add("break: fouls", "", kPercent, progress.breaks.fouls);
  rows.add("break: cue ball from the middle", "", kMillimetres, progress.breaks.cueBallFromMiddle_m);
  rows.add("balls in an inning", "", kBalls, progress.innings.balls);
  rows.add("innings in a frame", "", kInnings, progress.innings.inFrame);
  rows.add("frames won that were run out", "", kPercent, progress.innings.runOuts);
  rows.add("safeties that left no direct shot", "", kPercent, progress.safeties.success);
  rows.add("wrong side of the next ball", "", kPercent, progress.position.wrongSide);
  rows.add("delivery loss of pots", "right side of the next ball", kPercent, progress.position.lossRight);
  rows.add("delivery loss of pots", "wrong side of the next ball", kPercent, progress.position.lossWrong);
  rows.add("rest of the cue ball, + longer than meant", "", kMillimetres, progress.position.longBy_m);
  rows.add("made less stated chance", "", kPercent, progress.reliability.gap);
  rows.add("Brier score of stated chances", "", kBrier, progress.reliability.brier);
  for (std::size_t i = 0; i < progress.reliability.bands.size(); ++i) {
    const ChanceBand& band = progress.reliability.bands[i];
    if (band.tried == 0) continue;
    rows.add("made by stated chance", std::to_string(10 * i) + " to " + std::to_string(10 * (i + 1)) + " percent",
             band.share(), *band.wilson, band.tried);
  }
  rows.count("safeties that were answered", progress.safeties.answered);
  rows.count("safeties answered by a made ball", progress.safeties.potted);
  rows.count("safeties answered by a miss", progress.safeties.missed);
  rows.count("safeties answered by a safety", progress.safeties.safeties);
  rows.count("safeties answered by a foul", progress.safeties.fouled);
  for (const PlayedRun& run : progress.history.runs) {
    if (run.known == 0) continue;
    const auto started = QDateTime::fromMSecsSinceEpoch(run.started_ms, Qt::UTC);
    rows.add("drill: " + run.drill, "run of " + started.toString(Qt::ISODate).toStdString(),
             static_cast<double>(run.met) / run.known, wilsonInterval(run.met, run.known), run.known);
  }
  rows.add("fouls", "", kPercent, progress.fouls);
  rows.add("easy pots missed", "", kPercent, progress.unforced);
  rows.add("time for a shot", "all", kSeconds, progress.times.all);
  rows.add("time for a shot", "made", kSeconds, progress.times.beforeMakes);
  rows.add("time for a shot", "missed", kSeconds, progress.times.beforeMisses);
  rows.add("choice loss", "", kPercent, progress.choices.choiceLoss);
  rows.add("delivery loss", "", kPercent, progress.choices.deliveryLoss);
  for (const Finding& finding : progress.findings)
    rows.add(finding);
  for (const WorkItem& item : progress.work)
    rows.add(item);
  return rows.text();
}

}  // namespace ferrule
