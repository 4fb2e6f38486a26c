// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/analysis.h"

#include <chrono>
#include <ctime>
#include <fstream>
#include <iterator>

#include "core/reading/shot_reader.h"
#include "core/vision/ball_tracker.h"
#include "core/vision/film_reader_ahead.h"
#include "core/vision/film_source.h"

namespace ferrule::bench {

namespace {

/// Wall and processor time since it was made.
class Stopwatch {
 public:
  Cost read() const {
    return {std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count(),
            static_cast<double>(std::clock() - startWork_) / CLOCKS_PER_SEC};
  }

 private:
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
  std::clock_t startWork_ = std::clock();
};

/// Lets the kernel's high-water mark start anew. Source: proc(5), clear_refs.
void resetPeakMemory() {
  std::ofstream("/proc/self/clear_refs") << "5";
}

double peakMemory_MB() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;) {
    double kilobytes = 0.0;
    if (word == "VmHWM:" && status >> kilobytes) return kilobytes / 1024.0;
  }
  return 0.0;
}

}  // namespace

Result<Analysis> analyse(const std::string& film, const Rig& rig, const MeasuredTable& measured) {
  Analysis analysis;
  resetPeakMemory();
  const Stopwatch watch;
  auto opened = FilmSource::open(film);
  if (!opened) return tl::unexpected(opened.error());
  FilmReaderAhead source(std::move(*opened));
  BallTracker tracker(rig, measured);
  ShotReader reader(measured, cameraPosition(rig));
  const auto takeAll = [&] {
    for (ImageReading& reading : tracker.take()) {
      reader.feed(reading);
      analysis.readings.push_back(std::move(reading));
    }
    for (ReadShot& shot : reader.takeShots())
      analysis.shots.push_back(std::move(shot.reading));
    (void)reader.takePlacements();
  };
  FilmImage image;
  while (source.next(image)) {
    tracker.feed(image.picture, image.number, image.time_s);
    takeAll();
  }
  tracker.finish();
  takeAll();
  reader.finish();
  takeAll();
  analysis.cost = watch.read();
  analysis.peakMemory_MB = peakMemory_MB();
  return analysis;
}

Result<Cost> decodingCost(const std::string& film) {
  const Stopwatch watch;
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  FilmImage image;
  while (source->next(image)) {
  }
  return watch.read();
}

}  // namespace ferrule::bench
