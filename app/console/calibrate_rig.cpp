// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>
#include <set>
#include <string>

#include "app/console/calibrate_command.h"
#include "app/console/console_output.h"
#include "app/words/today.h"
#include "core/camera/error_map.h"
#include "core/camera/rig_calibration.h"
#include "core/camera/rig_file.h"
#include "core/geometry/units.h"
#include "core/table/measured_table.h"
#include "core/vision/film_rig.h"

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
  const auto measured = measuredTableFrom(call.table);
  if (!measured) return tl::make_unexpected(measured.error());
  RigWanted wanted;
  wanted.lensFile = call.lens;
  wanted.table = call.table;
  wanted.measured = *measured;
  wanted.film = call.film;
  wanted.withoutTags = call.noTags;
  wanted.head = kSides.at(call.head);
  wanted.date = today();
  return rigFromFilm(wanted, job);
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
