// SPDX-License-Identifier: GPL-3.0-or-later
// bench_check [FOLDER]: plants every fault in every film of FOLDER and prints which verdict the self-check reaches. It
// checks nothing: the figures are for people.
#include <CLI/CLI.hpp>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <map>
#include <opencv2/imgproc.hpp>
#include <string>
#include <vector>

#include "core/camera/error_map.h"
#include "core/camera/lens_fitting.h"
#include "core/camera/pose_fit.h"
#include "core/camera/rig_from_lines.h"
#include "core/geometry/units.h"
#include "core/vision/cloth_outline.h"
#include "core/vision/edge_strip.h"
#include "core/vision/film_check.h"
#include "core/vision/film_source.h"
#include "core/vision/line_survey.h"
#include "core/vision/mark_survey.h"
#include "tests/bench/accuracy/clip_rig.h"
#include "tests/bench/accuracy/truth.h"
#include "tests/bench/check/faults.h"

namespace {

namespace fs = std::filesystem;
using namespace ferrule;
using namespace ferrule::bench;

/// Looks as checkFilm does: every tenth of a second, for three seconds.
std::vector<cv::Mat> picturesOf(const std::string& film) {
  std::vector<cv::Mat> pictures;
  auto source = FilmSource::open(film);
  if (!source) return pictures;
  FilmImage image;
  double next_s = 0.0;
  while (image.time_s < 3.0 && source->next(image)) {
    if (image.time_s < next_s) continue;
    pictures.push_back(image.picture.clone());
    next_s = image.time_s + 0.1;
  }
  return pictures;
}

/// The pose that an owner gets from these tags with this lens and this table file, however badly they agree.
std::optional<CameraFromTable> poseMade(const Lens& lens, const MeasuredTable& measured,
                                        const std::vector<AveragedTag>& tags) {
  std::vector<Sighting> sightings;
  for (const AveragedTag& seen : tags) {
    const auto tag = std::ranges::find(measured.tags, seen.tag.id, &RailTag::id);
    if (tag == measured.tags.end()) continue;
    const double u_px = cornerUncertainty_px(seen, tag->corners);
    for (std::size_t i = 0; i < 4; ++i)
      sightings.push_back({tag->corners[i], seen.tag.corners[i], u_px});
  }
  const auto fit = fitPose(lens, sightings);
  return fit ? std::optional(fit->pose) : std::nullopt;
}

/// Tags painted over with the rail's own colour.
cv::Mat withoutTags(const cv::Mat& picture, const SoundClip& clip) {
  cv::Mat result = picture.clone();
  for (const RailTag& tag : clip.measured.tags) {
    std::vector<cv::Point> quad;
    TablePoint middle;
    for (const TablePoint3& corner : tag.corners)
      middle = middle + TableVector{corner.x / 4.0, corner.y / 4.0};
    for (const TablePoint3& corner : tag.corners) {
      const TablePoint wider = middle + 1.4 * (TablePoint{corner.x, corner.y} - middle);
      const auto pixel = imageFromTable(clip.rig, {wider.x, wider.y, corner.z});
      if (pixel) quad.emplace_back(cv::Point(static_cast<int>(pixel->x), static_cast<int>(pixel->y)));
    }
    const auto beside = imageFromTable(clip.rig, {middle.x + 0.12, middle.y, tag.corners[0].z});
    if (!beside || quad.size() < 4) continue;
    const cv::Vec3b wood = picture.at<cv::Vec3b>(static_cast<int>(beside->y), static_cast<int>(beside->x));
    cv::fillConvexPoly(result, quad, cv::Scalar(wood[0], wood[1], wood[2]));
  }
  return result;
}

/// What rigs without tags and without a board come to over all films.
struct Untagged {
  double squares = 0.0;  ///< of the films' rms, m^2
  int films = 0;
  int held = 0;
  int places = 0;
};

/// Share of places whose truth lies in the 95 % region about what the rig says, and the map's own rms.
void printMap(const char* what, const Rig& rig, const Rig& truth, const MeasuredTable& measured,
              Untagged* all = nullptr) {
  const RigDifference difference = differenceOf(rig, truth, measured);
  const ErrorMap map(rig, measured, {0.0, 0.0005, 0.0, 0.0, 0.0});
  int held = 0;
  double sum = 0.0;
  for (const auto& [really, said] : difference.places) {
    auto at = map.at(said);
    if (!at) continue;
    held += at->holds95(really) ? 1 : 0;
    sum += at->u_m() * at->u_m();
  }
  std::printf(
      "  %-34s off by rms %5.2f mm, max %5.2f; map says rms %5.2f mm; 95 %% region holds %3.0f %% of %d places\n", what,
      millimetresFromMetres(difference.rms_m), millimetresFromMetres(difference.max_m),
      millimetresFromMetres(std::sqrt(sum / std::max(1, difference.points))),
      100.0 * held / std::max(1, difference.points), difference.points);
  std::fflush(stdout);
  if (all == nullptr) return;
  all->squares += difference.rms_m * difference.rms_m;
  ++all->films;
  all->held += held;
  all->places += difference.points;
}

void printUntagged(const SoundClip& clip, const Truth& truth, const std::vector<cv::Mat>& pictures, Untagged& all) {
  std::vector<cv::Mat> painted;
  for (std::size_t i = 0; i < pictures.size() && painted.size() < 7; i += 4)
    painted.push_back(withoutTags(pictures[i], clip));
  const cv::Mat median = medianPicture(painted);
  const auto outline = ClothOutline::find(median);
  if (!outline) return void(std::printf("  no cloth found\n"));
  MeasuredTable bare = clip.measured;
  bare.tags.clear();
  const auto lines = traceLines(median, *outline, wayWithHead(*outline, PictureSide::Left), bare.table);
  RigEvidence evidence;
  evidence.film = "film";
  evidence.filmSize = clip.rig.lens.size;
  for (const bool withLens : {true, false}) {
    evidence.lens = withLens ? clip.rig.lens : Lens{};
    evidence.lensUncertainty = withLens ? clip.rig.lensUncertainty : LensUncertainty{};
    const auto rig = rigFromLines(evidence, bare, lines);
    if (!rig) {
      std::printf("  no rig from %zu lines\n", lines.size());
      continue;
    }
    printMap(withLens ? "cushions, lens from the board" : "cushions alone", *rig, truth.rig, bare);
    const auto marks = marksByLines(median, evidence, bare, lines);
    const auto sighted = fitRigFromLines(evidence, bare, lines, marks);
    if (!sighted) {
      std::printf("  no rig from %zu lines and %zu marks\n", lines.size(), marks.size());
      continue;
    }
    const auto sights = std::ranges::count_if(marks, [](const auto& m) { return m.mark.kind == MarkKind::Sight; });
    std::printf("  %zu lines, %td sights and %td pockets found; misfit %.2f\n", lines.size(), sights,
                static_cast<std::ptrdiff_t>(marks.size()) - sights, sighted->misfit);
    printMap(withLens ? "with marks, lens from the board" : "with marks, no board and no tags", sighted->rig, truth.rig,
             bare, withLens ? nullptr : &all);
  }
}

/// Balls at rest against the truth, by the error map.
void printBalls(const SoundClip& clip, const Truth& truth, const std::vector<cv::Mat>& pictures, int& held, int& all) {
  auto survey = CheckSurvey::of(clip.measured, "table.json");
  if (!survey) return;
  for (const cv::Mat& picture : pictures)
    survey->add(picture);
  const ErrorMap map(clip.rig, clip.measured);
  const double radius_m = clip.measured.balls.radius_m();
  double most_m = 0.0;
  int here = 0;
  int heldHere = 0;
  for (const BallSighting& ball : survey->restingBalls(clip.rig)) {
    const auto said = tableFromImage(clip.rig, ball.centre, radius_m);
    const auto at = said ? map.at(*said) : std::nullopt;
    if (!at || truth.images.empty()) continue;
    const TrueBall* nearest = nullptr;
    for (const TrueImage& image : truth.images) {
      if (image.time_s > 3.0) break;
      for (const TrueBall& really : image.balls) {
        if (really.speed_mps > 0.0 || !really.onCloth) continue;
        const auto apart = [&](const TrueBall& b) { return distance({b.position.x, b.position.y}, *said); };
        if (nearest == nullptr || apart(really) < apart(*nearest)) nearest = &really;
      }
    }
    if (nearest == nullptr) continue;
    const TablePoint really{nearest->position.x, nearest->position.y};
    ++here;
    heldHere += at->holds95(really) ? 1 : 0;
    most_m = std::max(most_m, distance(really, *said));
  }
  std::printf("  resting balls: %d of %d within their 95 %% region, the furthest %.2f mm off\n", heldHere, here,
              millimetresFromMetres(most_m));
  held += heldHere;
  all += here;
}

std::string verdictOf(const PlantedFault& fault, SoundClip clip, const std::vector<cv::Mat>& pictures,
                      RigFault& verdict) {
  auto survey = CheckSurvey::of(clip.measured, "table.json");
  if (!survey) return "no survey";
  for (const cv::Mat& picture : pictures)
    survey->add(fault.picture ? fault.picture(picture, clip) : picture);
  if (fault.files) fault.files(clip);
  if (fault.rigMadeAfter) {
    const auto evidence = survey->result(clip.rig, "film");
    const auto pose = evidence ? poseMade(clip.rig.lens, clip.measured, evidence->tags) : std::nullopt;
    if (!pose) return "no rig";
    clip.rig.pose = *pose;
  }
  const auto film = checkPictures(*survey, "film", clip.rig, clip.measured);
  if (!film) return "refused";
  verdict = film->check.verdict;
  char text[200];
  std::snprintf(text, sizeof text, "%-17s %3.0f %%  cost %7.2f mm  misfit %5.2f  balls %zu", toText(verdict).data(),
                100.0 * film->check.confidence, millimetresFromMetres(film->check.costMax_m),
                film->check.explanations.empty() ? 0.0 : film->check.explanations.front().misfit,
                film->evidence.balls.size());
  return text;
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Plants faults in films and prints what the self-check says.", "bench_check");
  std::string folder = FERRULE_SOURCE_DIR "/../shared/clips";
  std::vector<std::string> chosen;
  std::string only;
  app.add_option("FOLDER", folder, "Folder with a sub-folder for every film, and calibration/CAMERA stills")
      ->capture_default_str();
  app.add_option("--clip", chosen, "Only the film of this name; may be repeated");
  app.add_option("--fault", only, "Only faults whose name holds this");
  bool mapsOnly = false;
  app.add_flag("--maps", mapsOnly, "Only the error maps and the rigs without tags, no faults");
  CLI11_PARSE(app, argc, argv);

  std::vector<fs::path> clips;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    const std::string name = entry.path().filename().string();
    const bool wanted = chosen.empty() || std::ranges::find(chosen, name) != chosen.end();
    if (wanted && fs::exists(entry.path() / "truth.json") && fs::exists(entry.path() / (name + ".mp4"))) {
      clips.push_back(entry.path());
    }
  }
  std::ranges::sort(clips);

  RigMaker rigs(folder, false);
  std::map<std::string, std::map<RigFault, int>> confusion;
  std::vector<std::string> order;
  int right = 0;
  int all = 0;
  int held = 0;
  int balls = 0;
  Untagged untagged;
  for (const fs::path& path : clips) {
    const std::string name = path.filename().string();
    const auto truth = readTruth((path / "truth.json").string());
    const auto measured = readMeasuredTable((path / "table.json").string());
    const std::string film = (path / (name + ".mp4")).string();
    if (!truth || !measured) continue;
    const auto rig = rigs.make(film, *truth, *measured);
    const auto other = rigs.lensOf(truth->camera == "cam-a" ? "cam-b" : "cam-a");
    if (!rig || !other) continue;
    const auto fitting = scaledLens(*other, rig->lens.size, film, "other");
    const SoundClip clip{*rig, *measured, fitting ? *fitting : *other};
    const std::vector<cv::Mat> pictures = picturesOf(film);
    std::printf("%s\n", name.c_str());
    printMap("tags, lens from the board", *rig, truth->rig, *measured);
    printBalls(clip, *truth, pictures, held, balls);
    printUntagged(clip, *truth, pictures, untagged);
    for (const PlantedFault& fault : plantedFaults()) {
      if (mapsOnly) break;
      if (!only.empty() && fault.name.find(only) == std::string::npos) continue;
      RigFault verdict = RigFault::Unexplained;
      const auto start = std::chrono::steady_clock::now();
      const std::string text = verdictOf(fault, clip, pictures, verdict);
      const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
      const bool named = std::ranges::find(fault.expected, verdict) != fault.expected.end();
      std::printf("%-16s %-38s %s %s  %.1f s\n", name.c_str(), fault.name.c_str(), named ? "  " : "X ", text.c_str(),
                  took.count());
      std::fflush(stdout);
      if (!confusion.contains(fault.name)) order.push_back(fault.name);
      ++confusion[fault.name][verdict];
      right += named ? 1 : 0;
      ++all;
    }
  }
  std::printf("\nresting balls within their 95 %% region: %d of %d\n", held, balls);
  std::printf("no tags, no board, with sights and pockets: rms %.2f mm over %d films, 95 %% region holds %.0f %%\n",
              millimetresFromMetres(std::sqrt(untagged.squares / std::max(1, untagged.films))), untagged.films,
              100.0 * untagged.held / std::max(1, untagged.places));
  if (mapsOnly) return clips.empty() ? 1 : 0;
  std::printf("\nplanted -> named, over %zu films\n", clips.size());
  for (const std::string& name : order) {
    std::printf("%-38s", name.c_str());
    for (const auto& [verdict, count] : confusion[name])
      std::printf("  %s: %d", toText(verdict).data(), count);
    std::printf("\n");
  }
  std::printf("%d of %d named rightly\n", right, all);
  return clips.empty() ? 1 : 0;
}
