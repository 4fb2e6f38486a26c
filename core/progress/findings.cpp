// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/findings.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/contract.h"
#include "core/progress/chance.h"
#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

constexpr double kWeek_ms = 7.0 * 24.0 * 3600.0 * 1000.0;
/// A part of a session needs this many shots to be compared with another.
constexpr double kFewestInPart = 5.0;
/// Mean absolute deviation of a normal law in standard deviations, upside down.
const double kSpreadOfMeanAway = std::sqrt(std::numbers::pi / 2.0);

class Search {
 public:
  Search(const PlayerHistory& history, const std::optional<Difficulty>& difficulty, const Resampling& resampling)
      : history_(history), difficulty_(difficulty), resampling_(resampling) {}

  [[nodiscard]] Finding spreadTrend(FindingKind kind, const ErrorMeasure& measure) const {
    if (!measure.spread && measure.spread.error().kind == ShortageKind::NoRepeats)
      return none(kind, measure.spread.error());
    std::vector<SeriesPoint> points;
    int shots = 0;
    for (const SessionEstimate& session : measure.series) {
      points.push_back({week(session.session), session.estimate.value, session.estimate.shots - 1.0});
      shots += session.estimate.shots;
    }
    return trend(kind, points, shots);
  }

  [[nodiscard]] Finding makeTrend() const {
    if (!difficulty_) return none(FindingKind::MakeTrend, noDifficulty());
    std::vector<SeriesPoint> points;
    double made = 0.0;
    int shots = 0;
    for (const SessionSum& sum : bySession(residuals())) {
      shots += static_cast<int>(sum.count);
      if (sum.count >= kFewestInSession) points.push_back({week(sum.session), sum.mean(), sum.count});
    }
    for (const PlayedShot& shot : history_.shots)
      made += isPotAttempt(shot) && shot.made ? 1.0 : 0.0;
    Finding finding = trend(FindingKind::MakeTrend, points, shots);
    if (!finding.shortage) {
      finding.from += made / shots;
      finding.to += made / shots;
    }
    return finding;
  }

  /// values: larger is a larger error; scale turns their means into what is shown.
  [[nodiscard]] Finding late(FindingKind kind, const std::vector<Observation>& values, double level,
                             double scale) const {
    struct Parts {
      SessionSum early;
      SessionSum late;
    };
    std::vector<Parts> parts;
    bool timed = false;
    for (const Observation& value : values) {
      if (!value.minutes || *value.minutes < 0.0) continue;
      timed = true;
      if (parts.empty() || parts.back().early.session != value.session) {
        parts.push_back({{value.session, 0.0, 0.0, 0.0}, {value.session, 0.0, 0.0, 0.0}});
      }
      SessionSum& sum = *value.minutes < kLate_min ? parts.back().early : parts.back().late;
      sum.count += 1.0;
      sum.sum += value.value;
    }
    if (!timed) return none(kind, {values.empty() ? ShortageKind::Shots : ShortageKind::NoTimes, 0, kFewestForSpread});
    std::erase_if(parts, [](const Parts& p) { return std::min(p.early.count, p.late.count) < kFewestInPart; });
    std::vector<Difference> differences;
    SessionSum early;
    int shots = 0;
    for (const Parts& p : parts) {
      const double weight = p.early.count * p.late.count / (p.early.count + p.late.count);
      differences.push_back({p.late.mean() - p.early.mean(), weight});
      early.count += p.early.count;
      early.sum += p.early.sum;
      shots += static_cast<int>(p.early.count + p.late.count);
    }
    Finding finding = difference(kind, differences, shots, scale);
    if (!finding.shortage) {
      finding.from = level + scale * early.mean();
      finding.to += finding.from;
    }
    return finding;
  }

  [[nodiscard]] Finding lateMakes() const {
    if (!difficulty_) return none(FindingKind::LateMakes, noDifficulty());
    double made = 0.0;
    double tried = 0.0;
    for (const PlayedShot& shot : history_.shots) {
      if (!isPotAttempt(shot)) continue;
      made += shot.made ? 1.0 : 0.0;
      tried += 1.0;
    }
    return late(FindingKind::LateMakes, residuals(), made / tried, 1.0);
  }

  [[nodiscard]] Finding matchMakes() const {
    if (!difficulty_) return none(FindingKind::MatchMakes, noDifficulty());
    std::vector<Difference> practice;
    std::vector<Difference> match;
    double made = 0.0;
    double tried = 0.0;
    for (const SessionSum& sum : bySession(residuals())) {
      tried += sum.count;
      const Occasion occasion = history_.sessions[sum.session].occasion;
      if (occasion == Occasion::Lesson) continue;
      (occasion == Occasion::Match ? match : practice).push_back({sum.mean(), sum.count});
    }
    for (const PlayedShot& shot : history_.shots)
      made += isPotAttempt(shot) && shot.made ? 1.0 : 0.0;
    const auto fewer = static_cast<int>(std::min(practice.size(), match.size()));
    if (fewer < kFewestSessions) return none(FindingKind::MatchMakes, {ShortageKind::Sessions, fewer, kFewestSessions});
    Finding finding;
    finding.kind = FindingKind::MatchMakes;
    finding.from = made / tried + weightedMean(practice);
    finding.to = made / tried + weightedMean(match);
    finding.chance = chanceOfGap(practice, match, resampling_);
    finding.shots = static_cast<int>(tried);
    finding.sessions = static_cast<int>(practice.size() + match.size());
    finding.change = sessionInterval(
        static_cast<std::size_t>(finding.sessions),
        [&](std::span<const DrawnSession> chosen) -> std::optional<double> {
          std::vector<Difference> some;
          std::vector<Difference> others;
          for (const DrawnSession i : chosen) {
            if (i < practice.size()) {
              some.push_back(practice[i]);
            } else {
              others.push_back(match[i - practice.size()]);
            }
          }
          if (some.empty() || others.empty()) return std::nullopt;
          return weightedMean(others) - weightedMean(some);
        },
        resampling_);
    return finding;
  }

  /// The mean of errors, session by session.
  [[nodiscard]] Finding habit(FindingKind kind, const std::vector<Observation>& errors) const {
    std::vector<Difference> means;
    int shots = 0;
    for (const SessionSum& sum : bySession(errors)) {
      means.push_back({sum.mean(), sum.count});
      shots += static_cast<int>(sum.count);
    }
    if (shots < kFewestForSpread) return none(kind, {ShortageKind::Shots, shots, kFewestForSpread});
    return difference(kind, means, shots, 1.0);
  }

 private:
  static Finding none(FindingKind kind, const Shortage& shortage) {
    Finding finding;
    finding.kind = kind;
    finding.shortage = shortage;
    return finding;
  }

  [[nodiscard]] Shortage noDifficulty() const {
    return {ShortageKind::Shots, static_cast<int>(std::ranges::count_if(history_.shots, isPotAttempt)),
            kFewestForDifficulty};
  }

  [[nodiscard]] double week(std::size_t session) const {
    return static_cast<double>(history_.sessions[session].started_ms - history_.sessions.front().started_ms) / kWeek_ms;
  }

  /// Made less what this player makes of such shots.
  [[nodiscard]] std::vector<Observation> residuals() const {
    return observed(history_, [this](const PlayedShot& shot, const PlayedTable& table) -> std::optional<double> {
      if (!isPotAttempt(shot)) return std::nullopt;
      return (shot.made ? 1.0 : 0.0) - difficulty_->chance(shot, table);
    });
  }

  [[nodiscard]] Finding trend(FindingKind kind, const std::vector<SeriesPoint>& points, int shots) const {
    const auto sessions = static_cast<int>(points.size());
    if (sessions < kFewestForTrend) return none(kind, {ShortageKind::Sessions, sessions, kFewestForTrend});
    Finding finding;
    finding.kind = kind;
    const Line line = lineThrough(points);
    const double first = points.front().when;
    const double last = points.back().when;
    finding.from = line.at(first);
    finding.to = line.at(last);
    finding.chance = chanceOfSlope(points, resampling_);
    finding.shots = shots;
    finding.sessions = sessions;
    finding.change = sessionInterval(
        points.size(),
        [&, chosenPoints =
                std::vector<SeriesPoint>()](std::span<const DrawnSession> chosen) mutable -> std::optional<double> {
          chosenPoints.clear();
          for (const DrawnSession i : chosen)
            chosenPoints.push_back(points[i]);
          return lineThrough(chosenPoints).slope * (last - first);
        },
        resampling_);
    return finding;
  }

  [[nodiscard]] Finding difference(FindingKind kind, const std::vector<Difference>& differences, int shots,
                                   double scale) const {
    const auto sessions = static_cast<int>(differences.size());
    if (sessions < kFewestForTrend) return none(kind, {ShortageKind::Sessions, sessions, kFewestForTrend});
    Finding finding;
    finding.kind = kind;
    finding.to = scale * weightedMean(differences);
    finding.chance = chanceOfMean(differences, resampling_);
    finding.shots = shots;
    finding.sessions = sessions;
    finding.change = sessionInterval(
        differences.size(),
        [&](std::span<const DrawnSession> chosen) -> std::optional<double> {
          double weights = 0.0;
          double sum = 0.0;
          for (const DrawnSession i : chosen) {
            weights += differences[i].weight;
            sum += differences[i].weight * differences[i].value;
          }
          return scale * sum / weights;
        },
        resampling_);
    return finding;
  }

  const PlayerHistory& history_;
  const std::optional<Difficulty>& difficulty_;
  const Resampling& resampling_;
};

std::vector<Observation> awayFromMean(std::vector<Observation> values) {
  double sum = 0.0;
  for (const Observation& value : values)
    sum += value.value;
  const double mean = values.empty() ? 0.0 : sum / static_cast<double>(values.size());
  for (Observation& value : values)
    value.value = std::abs(value.value - mean);
  return values;
}

/// A pull to one side is there only where it shows on cuts to both sides: else one side's habit would be taken for it.
/// Both must be beyond chance, so the larger chance counts. Source: Berger 1982, Technometrics 24, 295
/// (intersection-union tests).
void bindSide(std::vector<Finding>& all) {
  const Finding left = findingOf(all, FindingKind::LeftCutSide);
  const Finding right = findingOf(all, FindingKind::RightCutSide);
  Finding& side = *std::ranges::find(all, FindingKind::AimSide, &Finding::kind);
  if (side.shortage) return;
  if (left.shortage || right.shortage) {
    const Shortage shortage = left.shortage ? *left.shortage : *right.shortage;
    side = Finding{};
    side.kind = FindingKind::AimSide;
    side.shortage = shortage;
    return;
  }
  // Thin is to the right of a ball that is sent to the left, and to the left of one that is sent to the right.
  const bool agree = -left.to * right.to > 0.0;
  side.chance = agree ? std::max({side.chance, left.chance, right.chance}) : 1.0;
}

std::vector<Observation> thinErrors(const PlayerHistory& history, CutSide side) {
  return observed(history, [side](const PlayedShot& shot, const PlayedTable& table) {
    return shot.cutSide == side ? thinError_rad(shot, table) : std::nullopt;
  });
}

}  // namespace

std::vector<Finding> findings(const PlayerHistory& history, const std::optional<Difficulty>& difficulty,
                              const StrikeMeasures& strikes, const AimMeasure& aim, const Resampling& resampling) {
  const Search search(history, difficulty, resampling);
  const std::vector<Observation> aims = observed(history, aimError_rad);
  std::vector<Finding> all{search.spreadTrend(FindingKind::AimTrend, aim.all),
                           search.spreadTrend(FindingKind::SpeedTrend, strikes.speed),
                           search.makeTrend(),
                           search.late(FindingKind::LateAim, awayFromMean(aims), 0.0, kSpreadOfMeanAway),
                           search.lateMakes(),
                           search.matchMakes(),
                           search.habit(FindingKind::AimSide, aims),
                           search.habit(FindingKind::LeftCutSide, thinErrors(history, CutSide::Left)),
                           search.habit(FindingKind::RightCutSide, thinErrors(history, CutSide::Right))};
  bindSide(all);
  std::vector<double> chances;
  for (const Finding& finding : all) {
    if (!finding.shortage) chances.push_back(finding.chance);
  }
  const std::vector<bool> stands = standing(chances);
  std::size_t next = 0;
  for (Finding& finding : all) {
    if (!finding.shortage) finding.stands = stands[next++];
  }
  // One fact is said once.
  if (findingOf(all, FindingKind::AimSide).stands) {
    for (Finding& finding : all) {
      if (finding.kind == FindingKind::LeftCutSide || finding.kind == FindingKind::RightCutSide) finding.stands = false;
    }
  }
  return all;
}

const Finding& findingOf(const std::vector<Finding>& all, FindingKind kind) {
  const auto found = std::ranges::find(all, kind, &Finding::kind);
  FERRULE_REQUIRE(found != all.end());
  return *found;
}

}  // namespace ferrule
