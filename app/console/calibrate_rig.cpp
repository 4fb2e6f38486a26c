// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "app/console/calibrate_command.h"
#include "app/console/console_output.h"
#include "core/camera/error_map.h"
#include "core/camera/lens_file.h"
#include "core/camera/rig_calibration.h"
#include "core/camera/rig_file.h"
#include "core/camera/rig_from_lines.h"
#include "core/geometry/units.h"
#include "core/table/measured_table.h"
#include "core/vision/cloth_outline.h"
#include "core/vision/edge_strip.h"
#include "core/vision/film_source.h"
#include "core/vision/line_survey.h"
#include "core/vision/nose_survey.h"
#include "core/vision/tag_survey.h"

namespace ferrule {

namespace {

struct Call {
  std::string lens;
  std::string table;
  std::string film;
  std::string output;
  bool noTags = false;
  std::string head = "left";
};

/// Every so many images one is looked at: neighbours show the same noise of the film's coding.
constexpr long kStride = 3;
/// A film whose tags stay hidden so long will not show them later.
constexpr long kMostImages = 900;
/// The noses are looked at in the median of a few images, a tenth of a second or more apart.
constexpr long kNoseStride = 12;
constexpr long kMostNoseImages = 7;

QString mm(double length_m) {
  return QString::number(millimetresFromMetres(length_m), 'f', 2);
}

/// What a doubtful rig means, in one sentence.
void printDoubts(const Call& call, const Rig& rig) {
  const auto worst = std::ranges::max_element(rig.noses, {}, &NoseStraightness::rms_m);
  if (rig.verdict == kNosesBent) {
    printNote(QStringLiteral("%1 leaves the straight noses of %2 bent by up to %3 mm; it belongs to another camera, or "
                             "the film was corrected before: calibrate a lens for this film.")
                  .arg(QString::fromStdString(call.lens), QString::fromStdString(call.film), mm(worst->max_m)));
  } else if (rig.verdict == kTagsDisagree) {
    printNote(
        QStringLiteral("The noses come out straight but the tags of %1 disagree by %2 mm; measure the tags' places "
                       "and heights again.")
            .arg(QString::fromStdString(call.table), mm(rig.tagRms_m)));
  }
}

void printSummary(const Rig& rig) {
  const TablePoint3 eye = cameraPosition(rig);
  printResult(QStringLiteral("camera at x %1 y %2 z %3 mm").arg(mm(eye.x), mm(eye.y), mm(eye.z)));
  if (!rig.tags.empty()) {
    printResult(QStringLiteral("tags: rms %1 px, %2 mm").arg(rig.poseRms_px, 0, 'f', 3).arg(mm(rig.tagRms_m)));
  }
  for (const TagResidual& tag : rig.tags) {
    printResult(QStringLiteral("  tag %1: %2 px, %3 mm; left out: %4 mm")
                    .arg(tag.id)
                    .arg(tag.rms_px, 0, 'f', 3)
                    .arg(mm(tag.rms_m), mm(tag.leaveOneOut_m)));
  }
  for (const NoseStraightness& nose : rig.noses) {
    printResult(QStringLiteral("  nose %1: straight to rms %2 mm, max %3 mm over %4 places")
                    .arg(QString::fromUtf8(toText(nose.cushion).data()), mm(nose.rms_m), mm(nose.max_m))
                    .arg(nose.places));
  }
  for (const Correction& correction : rig.chain.corrections()) {
    printResult(QStringLiteral("chain: %1 from %2: %3")
                    .arg(QString::fromUtf8(toText(correction.kind).data()), QString::fromStdString(correction.source),
                         QString::fromStdString(correction.purpose)));
  }
  printResult(QStringLiteral("verdict: %1").arg(QString::fromStdString(rig.verdict)));
}

const std::map<std::string, PictureSide> kSides{{"left", PictureSide::Left},
                                                {"right", PictureSide::Right},
                                                {"top", PictureSide::Top},
                                                {"bottom", PictureSide::Bottom}};

Result<void> readLens(const Call& call, RigEvidence& evidence) {
  const auto lens = readLensFile(call.lens);
  if (!lens) return tl::make_unexpected(lens.error());
  const auto uncertainty = readLensUncertainty(call.lens);
  if (!uncertainty) return tl::make_unexpected(uncertainty.error());
  evidence.lens = *lens;
  evidence.lensUncertainty = *uncertainty;
  evidence.lensSource = call.lens;
  return {};
}

void noteFilm(const Call& call, const FilmInfo& film, RigEvidence& evidence) {
  evidence.film = call.film;
  evidence.date = today();
  evidence.filmSize = film.size;
  evidence.filmRotation_deg = film.rotation_deg;
}

/// From the cushions; without a lens file the lens too.
Result<Rig> rigWithoutTags(const Call& call, const JobControl& job) {
  RigEvidence evidence;
  if (!call.lens.empty()) {
    if (auto done = readLens(call, evidence); !done) return tl::make_unexpected(done.error());
  }
  const auto measured = measuredTableFrom(call.table);
  if (!measured) return tl::make_unexpected(measured.error());
  auto film = FilmSource::open(call.film);
  if (!film) return tl::make_unexpected(film.error());
  noteFilm(call, film->info(), evidence);
  std::vector<cv::Mat> pictures;
  NoseSurvey noses;
  FilmImage image;
  while (image.number < kMostNoseImages * kNoseStride && film->next(image)) {
    if (image.number % kNoseStride != 0) continue;
    pictures.push_back(image.picture.clone());
    noses.add(image.picture);
    job.reportShare(-1.0, "looking for cushions");
  }
  std::vector<LineTrace> lines;
  if (!pictures.empty()) {
    const cv::Mat median = medianPicture(pictures);
    if (const auto outline = ClothOutline::find(median)) {
      lines = traceLines(median, *outline, wayWithHead(*outline, kSides.at(call.head)), measured->table);
    }
  }
  auto rig = rigFromLines(evidence, *measured, lines);
  if (rig) addNoses(*rig, noses.result(*rig, measured->table));
  return rig;
}

/// What tags and a board would gain, in mm.
void printGain(const Call& call, const Rig& rig) {
  const auto measured = measuredTableFrom(call.table);
  if (!measured) return;
  MeasuredTable bare = *measured;
  bare.tags.clear();
  const ErrorMap map(rig, bare);
  const TablePoint corner{0.45 * bare.table.length_m, 0.45 * bare.table.width_m};
  const auto middle = map.at({0.0, 0.0});
  const auto far = map.at(corner);
  if (!middle || !far) return;
  printResult(QStringLiteral("a ball lies within %1 mm at the middle, %2 mm near a corner (95 %)")
                  .arg(mm(middle->reach95_m()), mm(far->reach95_m())));
  printNote(
      QStringLiteral("The head is taken to be at the %1 of the picture (--head says otherwise). Four tags and a lens "
                     "from a board bring this to about 1 mm: see --lens and the table file's tags.")
          .arg(QString::fromStdString(call.head)));
}

Result<Rig> rigOf(const Call& call, const JobControl& job) {
  if (call.noTags) return rigWithoutTags(call, job);
  RigEvidence evidence;
  if (auto done = readLens(call, evidence); !done) return tl::make_unexpected(done.error());
  const auto measured = measuredTableFrom(call.table);
  if (!measured) return tl::make_unexpected(measured.error());
  auto survey = TagSurvey::of(*measured, call.table);
  if (!survey) return tl::make_unexpected(survey.error());
  auto film = FilmSource::open(call.film);
  if (!film) return tl::make_unexpected(film.error());

  noteFilm(call, film->info(), evidence);
  // A lens for another picture is refused before the long look.
  if (const auto fitting = rigWithoutPose(evidence); !fitting) return tl::make_unexpected(fitting.error());
  NoseSurvey noses;
  FilmImage image;
  while (image.number < kMostImages && !survey->enough() && film->next(image)) {
    if (image.number % kStride == 0) survey->add(image.picture);
    if (image.number % kNoseStride == 0 && image.number < kMostNoseImages * kNoseStride) noses.add(image.picture);
    job.reportShare(-1.0, "looking for tags");
  }
  auto tags = survey->result(call.film);
  if (!tags) return tl::make_unexpected(tags.error());
  evidence.tags = std::move(*tags);
  auto rig = calibrateRig(evidence, *measured);
  if (rig) addNoses(*rig, noses.result(*rig, measured->table));
  return rig;
}

int run(const Call& call) {
  const auto rig = rigOf(call, consoleJob());
  if (!rig) return reportError(rig.error());
  if (const auto written = writeRigFile(call.output, *rig); !written) return reportError(written.error());
  printSummary(*rig);
  if (!call.lens.empty()) printDoubts(call, *rig);
  if (call.noTags) printGain(call, *rig);
  return 0;
}

}  // namespace

void addCalibrateRigCommand(CLI::App& calibrate, int& status) {
  CLI::App* command = calibrate.add_subcommand("rig", "Find where the camera sits, from the table's tags or cushions");
  const auto call = std::make_shared<Call>();
  auto* lens = command->add_option("--lens", call->lens, "Lens file; with --no-tags it may be left out");
  auto* noTags = command->add_flag("--no-tags", call->noTags, "Use the cushions instead of tags");
  std::set<std::string> sides;
  for (const auto& [name, side] : kSides)
    sides.insert(name);
  command->add_option("--head", call->head, "Where the picture has the table's head, with --no-tags")
      ->check(CLI::IsMember(sides))
      ->needs(noTags)
      ->capture_default_str();
  command->add_option("--table", call->table, "table.json, or a preset such as 9ft")->required();
  command->add_option("--film", call->film, "A film of the table")->required();
  command->add_option("-o,--output", call->output, "The rig file to write")->required();
  command->callback([call, lens, noTags, &status] {
    if (lens->count() == 0 && noTags->count() == 0) throw CLI::RequiredError("--lens");
    status = run(*call);
  });
}

}  // namespace ferrule
