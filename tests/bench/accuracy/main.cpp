// SPDX-License-Identifier: GPL-3.0-or-later
// bench_accuracy --simulated N: the same of N simulated shots.
// bench_accuracy --worse WORD [FOLDER]: the same of the films as a worse camera would have made them ("all": a line
// each). bench_accuracy [FOLDER]: measures every film of FOLDER that has a truth.json beside it and prints how far the
// product is from the truth. It checks nothing: the figures are for people.
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/table/measured_table.h"
#include "tests/bench/accuracy/analysis.h"
#include "tests/bench/accuracy/clip_rig.h"
#include "tests/bench/accuracy/image_comparison.h"
#include "tests/bench/accuracy/shot_comparison.h"
#include "tests/bench/accuracy/simulated_score.h"
#include "tests/bench/accuracy/table_printer.h"
#include "tests/bench/accuracy/truth.h"
#include "tests/bench/accuracy/worse_film.h"

namespace {

namespace fs = std::filesystem;
using namespace ferrule;
using namespace ferrule::bench;

/// Folders with NAME/NAME.mp4 and a truth, by name.
std::vector<fs::path> clipFolders(const fs::path& folder, const std::vector<std::string>& chosen) {
  std::vector<fs::path> clips;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    const std::string name = entry.path().filename().string();
    const bool wanted = chosen.empty() || std::find(chosen.begin(), chosen.end(), name) != chosen.end();
    if (wanted && fs::exists(entry.path() / "truth.json") && fs::exists(entry.path() / (name + ".mp4"))) {
      clips.push_back(entry.path());
    }
  }
  std::sort(clips.begin(), clips.end());
  return clips;
}

/// Gone with its films when it ends.
class SpareFolder {
 public:
  SpareFolder() : path_(fs::temp_directory_path() / ("ferrule-worse-" + std::to_string(getpid()))) {
    fs::create_directories(path_);
  }
  ~SpareFolder() {
    std::error_code error;
    fs::remove_all(path_, error);
  }
  SpareFolder(const SpareFolder&) = delete;
  SpareFolder& operator=(const SpareFolder&) = delete;
  [[nodiscard]] std::string film(const std::string& name) const { return (path_ / (name + ".mkv")).string(); }

 private:
  fs::path path_;
};

Result<ClipScore> scoreClip(const fs::path& clip, std::optional<Worsening> worse, RigMaker& rigs, ImageLog& log) {
  auto truth = readTruth((clip / "truth.json").string());
  if (!truth) return tl::unexpected(truth.error());
  const auto measured = readMeasuredTable((clip / "table.json").string());
  if (!measured) return tl::unexpected(measured.error());
  ClipScore score;
  score.name = clip.filename().string();
  std::string film = (clip / (score.name + ".mp4")).string();
  const SpareFolder spare;
  if (worse) {
    const std::string made = spare.film(score.name);
    if (const auto done = worsenFilm(film, *worse, made); !done) return tl::unexpected(done.error());
    film = made;
    truth = worsenTruth(std::move(*truth), *worse);
  }
  const auto rig = rigs.make(film, *truth, *measured, worse);
  if (!rig) return tl::unexpected(rig.error());
  const auto decoding = decodingCost(film);
  if (!decoding) return tl::unexpected(decoding.error());
  const auto analysis = analyse(film, *rig, *measured);
  if (!analysis) return tl::unexpected(analysis.error());
  score.images = compareImages(score.name, *truth, analysis->readings, log);
  score.shots = compareShots(*truth, analysis->shots);
  score.analysis = analysis->cost;
  score.decoding = *decoding;
  score.imageCount = static_cast<long>(truth->images.size());
  score.peakMemory_MB = analysis->peakMemory_MB;
  return score;
}

/// 0 when every film was measured.
int scoreFilms(const std::vector<fs::path>& clips, std::optional<Worsening> worse, RigMaker& rigs, ImageLog& log) {
  std::vector<ClipScore> scores;
  int failures = 0;
  for (const fs::path& clip : clips) {
    std::fprintf(stderr, "%s\n", clip.filename().c_str());
    auto score = scoreClip(clip, worse, rigs, log);
    if (score) {
      for (const std::string& events : score->shots.otherEvents)
        std::fprintf(stderr, "  events differ\n%s\n", events.c_str());
      scores.push_back(std::move(*score));
      continue;
    }
    const Error& error = score.error();
    std::fprintf(stderr, "  code %d: %s %s\n", static_cast<int>(error.code), error.subject.c_str(),
                 error.detail.c_str());
    ++failures;
  }
  if (scores.empty()) std::fprintf(stderr, "no film with a truth could be measured\n");
  if (!scores.empty()) printTables(scores);
  return failures > 0 || scores.empty() ? 1 : 0;
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Measures films with known truth and prints the errors.", "bench_accuracy");
  std::string folder = FERRULE_SOURCE_DIR "/../shared/clips";
  std::vector<std::string> chosen;
  std::string imagesCsv;
  bool trueRig = false;
  app.add_option("FOLDER", folder, "Folder with a sub-folder for every film, and calibration/CAMERA stills")
      ->capture_default_str();
  app.add_option("--clip", chosen, "Only the film of this name; may be repeated");
  app.add_option("--images", imagesCsv, "Write one line for every ball of every image here, as CSV");
  app.add_flag("--true-rig", trueRig, "Take lens and pose from the truth, to judge the following steps alone");
  long simulated = 0;
  app.add_option("--simulated", simulated, "Read this many simulated shots instead of films");
  std::string worse;
  app.add_option("--worse", worse, "Make the films worse first: noise, dim, ... or all");
  CLI11_PARSE(app, argc, argv);

  if (simulated > 0) {
    printSimulatedTables(scoreSimulatedShots(simulated));
    return 0;
  }
  ImageLog log(imagesCsv);
  RigMaker rigs(folder, trueRig);
  if (worse.empty()) return scoreFilms(clipFolders(folder, chosen), std::nullopt, rigs, log);
  const auto one = worseningFromWord(worse);
  if (worse != "all" && !one) {
    std::fprintf(stderr, "no such worsening: %s\n", worse.c_str());
    return 2;
  }
  int status = 0;
  for (const Worsening worsening : one ? std::vector{*one} : allWorsenings()) {
    std::printf("\n=== %s ===\n", std::string(wordOf(worsening)).c_str());
    std::fflush(stdout);
    status = std::max(status, scoreFilms(clipFolders(folder, chosen), worsening, rigs, log));
  }
  return status;
}
