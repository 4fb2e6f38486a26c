// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/analysis.h"

#include <chrono>
#include <ctime>
#include <fstream>
#include <iterator>

#include "core/vision/ball_tracker.h"
#include "core/vision/film_reader_ahead.h"
#include "core/vision/film_source.h"
#ifdef FERRULE_BENCH_READING
#include "core/reading/shot_reader.h"
#endif

namespace ferrule::bench {

namespace {

/// Wall and processor time since it was made.
class Stopwatch {
 public:
  double wall_s() const { return std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count(); }
  double work_s() const { return static_cast<double>(std::clock() - startWork_) / CLOCKS_PER_SEC; }

 private:
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
  std::clock_t startWork_ = std::clock();
};

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

Result<void> timeDecoding(const std::string& film, Analysis& analysis) {
  const Stopwatch watch;
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  FilmImage image;
  while (source->next(image)) {
  }
  analysis.decode_s = watch.wall_s();
  analysis.decodeWork_s = watch.work_s();
  return {};
}

}  // namespace

Result<Analysis> analyse(const std::string& film, const Rig& rig, const MeasuredTable& measured) {
  Analysis analysis;
  if (const auto timed = timeDecoding(film, analysis); !timed) return tl::unexpected(timed.error());

  resetPeakMemory();
  const Stopwatch watch;
  auto opened = FilmSource::open(film);
  if (!opened) return tl::unexpected(opened.error());
  FilmReaderAhead source(std::move(*opened));
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
  while (source.next(image)) {
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
  analysis.analysis_s = watch.wall_s();
  analysis.analysisWork_s = watch.work_s();
  analysis.peakMemory_MB = peakMemory_MB();
  return analysis;
}

}  // namespace ferrule::bench
