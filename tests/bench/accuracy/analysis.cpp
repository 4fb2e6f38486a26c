// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/analysis.h"

#include <chrono>
#include <fstream>
#include <iterator>

#include "core/vision/ball_tracker.h"
#include "core/vision/film_source.h"
#ifdef FERRULE_BENCH_READING
#include "core/reading/shot_reader.h"
#endif

namespace ferrule::bench {

namespace {

using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point start) { return std::chrono::duration<double>(Clock::now() - start).count(); }

/// Lets the kernel's high-water mark start anew. Source: proc(5), clear_refs.
void resetPeakMemory() { std::ofstream("/proc/self/clear_refs") << "5"; }

double peakMemory_MB() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;) {
    double kilobytes = 0.0;
    if (word == "VmHWM:" && status >> kilobytes) return kilobytes / 1024.0;
  }
  return 0.0;
}

Result<double> timeDecoding(const std::string& film) {
  const auto start = Clock::now();
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  FilmImage image;
  while (source->next(image)) {
  }
  return secondsSince(start);
}

}  // namespace

Result<Analysis> analyse(const std::string& film, const Rig& rig, const MeasuredTable& measured) {
  Analysis analysis;
  const auto decode_s = timeDecoding(film);
  if (!decode_s) return tl::unexpected(decode_s.error());
  analysis.decode_s = *decode_s;

  resetPeakMemory();
  const auto start = Clock::now();
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  BallTracker tracker(rig, measured);
#ifdef FERRULE_BENCH_READING
  ShotReader reader(measured);
#endif
  const auto takeAll = [&] {
    for (ImageReading& reading : tracker.take()) {
#ifdef FERRULE_BENCH_READING
      reader.feed(reading);
#endif
      analysis.readings.push_back(std::move(reading));
    }
#ifdef FERRULE_BENCH_READING
    for (ReadShot& shot : reader.takeShots()) analysis.shots.push_back(std::move(shot.reading));
    (void)reader.takePlacements();
#endif
  };
  FilmImage image;
  while (source->next(image)) {
    tracker.feed(image.picture, image.number, image.time_s);
    ++analysis.images;
    takeAll();
  }
  tracker.finish();
  takeAll();
#ifdef FERRULE_BENCH_READING
  reader.finish();
  takeAll();
#endif
  analysis.analysis_s = secondsSince(start);
  analysis.peakMemory_MB = peakMemory_MB();
  return analysis;
}

}  // namespace ferrule::bench
