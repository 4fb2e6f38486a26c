// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/pitch_log.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <string_view>

#include "core/base/csv.h"
#include "core/base/text_file.h"
#include "core/geometry/units.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr double kMostPitch_deg = 90.0;
/// Half the time that one pitch is read from: shorter than any part of a stroke.
constexpr double kReach_s = 0.03;
constexpr double kReachSteps = 1.5;
/// Written with two decimals of a degree: half of the last one, rectangular.
constexpr double kLeastNoise_deg = 0.003;

/// Second differences of white noise have sqrt(6) times its deviation; a slow motion has next to none.
double noiseOf(const PitchLog& log) {
  std::vector<double> bends;
  for (std::size_t i = 1; i + 1 < log.samples.size(); ++i) {
    if (log.samples[i + 1].time_s - log.samples[i - 1].time_s > 3.0 * log.step_s) continue;
    bends.push_back(
        std::abs(log.samples[i - 1].pitch_rad - 2.0 * log.samples[i].pitch_rad + log.samples[i + 1].pitch_rad));
  }
  const double least_rad = radiansFromDegrees(kLeastNoise_deg);
  if (bends.empty()) return least_rad;
  return std::max(least_rad, kDeviationFromMedian * median(std::move(bends)) / std::sqrt(6.0));
}

void describe(PitchLog& log) {
  std::vector<double> steps_s;
  for (std::size_t i = 1; i < log.samples.size(); ++i)
    steps_s.push_back(log.samples[i].time_s - log.samples[i - 1].time_s);
  log.step_s = median(steps_s);
  const double gap_s = std::max(PitchLog::kLeastGap_s, PitchLog::kGapSteps * log.step_s);
  for (std::size_t i = 0; i < steps_s.size(); ++i) {
    if (steps_s[i] > gap_s) log.gaps.push_back({log.samples[i].time_s, log.samples[i + 1].time_s});
  }
  log.noise_rad = noiseOf(log);
}

}  // namespace

Result<PitchLog> parsePitchLog(const std::string& text, const std::string& name) {
  const CsvText csv = parseCsv(text);
  if (csv.rows.empty()) return failure(ErrorCode::FileEmpty, name);
  const auto columnOf = [&](std::string_view wanted) {
    const std::vector<std::string>& header = csv.rows.front().fields;
    const auto found = std::ranges::find_if(header, [&](std::string field) {
      std::erase(field, ' ');
      return field == wanted;
    });
    return static_cast<std::size_t>(found - header.begin());
  };
  const std::size_t timeColumn = columnOf("time_s");
  const std::size_t pitchColumn = columnOf("pitch_deg");
  const std::size_t columns = csv.rows.front().fields.size();
  if (timeColumn == columns) return failure(ErrorCode::FieldMissing, name, "time_s");
  if (pitchColumn == columns) return failure(ErrorCode::FieldMissing, name, "pitch_deg");
  PitchLog log;
  for (const CsvRow& row : std::span(csv.rows).subspan(1)) {
    const std::string place = "line " + std::to_string(row.line);
    const bool whole = row.fields.size() > std::max(timeColumn, pitchColumn);
    const auto time_s = whole ? csv.number(row.fields[timeColumn]) : std::nullopt;
    const auto pitch_deg = whole ? csv.number(row.fields[pitchColumn]) : std::nullopt;
    if (!time_s || !pitch_deg) return failure(ErrorCode::FileMalformed, name, place);
    if (!log.samples.empty() && !(*time_s > log.samples.back().time_s)) {
      return failure(ErrorCode::FileMalformed, name, place + ": time_s");
    }
    if (std::abs(*pitch_deg) > kMostPitch_deg) {
      return failure(ErrorCode::FieldInvalid, name, "pitch_deg", {*pitch_deg, -kMostPitch_deg, kMostPitch_deg});
    }
    log.samples.push_back({*time_s, radiansFromDegrees(*pitch_deg)});
  }
  if (log.samples.size() < 2) return failure(ErrorCode::FileEmpty, name);
  describe(log);
  return log;
}

Result<PitchLog> readPitchLog(const std::string& path) {
  const auto text = readTextFile(path);
  if (!text) return tl::make_unexpected(text.error());
  return parsePitchLog(*text, path);
}

std::optional<Measured> pitchAt(const PitchLog& log, double time_s) {
  const double reach_s = std::max(kReach_s, kReachSteps * log.step_s);
  const auto first = std::ranges::lower_bound(log.samples, time_s - reach_s, {}, &PitchSample::time_s);
  const auto end = std::ranges::upper_bound(log.samples, time_s + reach_s, {}, &PitchSample::time_s);
  if (end - first < 2) return std::nullopt;
  // On the edge of a gap there is no line on the other side.
  if (time_s < first->time_s - log.step_s || time_s > (end - 1)->time_s + log.step_s) return std::nullopt;
  const bool inGap =
      std::ranges::any_of(log.gaps, [&](const LogGap& gap) { return time_s > gap.from_s && time_s < gap.until_s; });
  if (inGap) return std::nullopt;
  double n = 0.0, t = 0.0, p = 0.0;
  for (auto sample = first; sample != end; ++sample) {
    n += 1.0;
    t += sample->time_s - time_s;
    p += sample->pitch_rad;
  }
  t /= n;
  p /= n;
  double tt = 0.0, tp = 0.0;
  for (auto sample = first; sample != end; ++sample) {
    const double off_s = sample->time_s - time_s - t;
    tt += off_s * off_s;
    tp += off_s * (sample->pitch_rad - p);
  }
  const double slope = tt > 0.0 ? tp / tt : 0.0;
  const double variance = 1.0 / n + (tt > 0.0 ? t * t / tt : 0.0);
  return Measured{p - slope * t, log.noise_rad * std::sqrt(variance)};
}

}  // namespace ferrule
