// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_from_lines.h"

#include <QtTest>
#include <cmath>

#include "core/camera/error_map.h"
#include "core/camera/self_check.h"
#include "tests/camera/camera_support.h"
#include "tests/camera/line_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class RigFromLinesTest : public QObject {
  Q_OBJECT
 private slots:
  void theCushionsAloneGiveARigToThreeMillimetres();
  void aKnownLensIsKept();
  void theErrorMapHoldsWhatTheCushionsGet();
  void pixelsThatAreNotSquareAreAllowedFor();
  void sightsMakeTheRigSurerAndTheMapHoldsIt();
  void aSightThatWasMistakenStandsOff();
  void tagsThatAreLaidLaterAreNoFault();
  void aMovedCameraIsStillNamed();
  void aMissingSideIsRefused();
  void linesOfAnotherTableAreRefused();
  void aLensOfAnotherSizeIsRefused();
};

namespace {

/// Cushions that were glued by hand: each nose a little off, each back edge a little more.
std::vector<LineTrace> linesOf(const Rig& rig, const Table& table, unsigned seed) {
  Random random(seed);
  std::vector<LineTrace> lines;
  for (const Cushion& cushion : cushions(table)) {
    lines.push_back(traceOf(rig, table, cushion, LineTrace::Kind::Nose, 0.0008 * random.normal(), random));
    lines.push_back(traceOf(rig, table, cushion, LineTrace::Kind::Back, 0.0020 * random.normal(), random));
  }
  return lines;
}

RigEvidence filmOnly(const Rig& rig) {
  RigEvidence evidence;
  evidence.film = "film.mp4";
  evidence.filmSize = rig.lens.size;
  return evidence;
}

MeasuredTable bareTable() {
  MeasuredTable measured;
  measured.tags.clear();
  return measured;
}

struct Miss {
  double rms_m = 0.0;
  int held = 0;
  int places = 0;
};

Miss missOf(const Rig& made, const Rig& truth, const MeasuredTable& measured) {
  const ErrorMap map(made, measured, {0.0, 0.0, 0.0, 0.0, 0.0});
  const double radius_m = measured.balls.radius_m();
  Miss miss;
  double sum = 0.0;
  for (double x = -1.2; x <= 1.21; x += 0.3) {
    for (double y = -0.6; y <= 0.61; y += 0.3) {
      const ImagePoint pixel = imageFromTable(truth, {x, y, radius_m}).value();
      const TablePoint said = tableFromImage(made, pixel, radius_m).value();
      sum += std::pow(distance(said, TablePoint{x, y}), 2);
      miss.held += map.at(said).value().holds95({x, y}) ? 1 : 0;
      ++miss.places;
    }
  }
  miss.rms_m = std::sqrt(sum / miss.places);
  return miss;
}

}  // namespace

void RigFromLinesTest::theCushionsAloneGiveARigToThreeMillimetres() {
  const MeasuredTable measured = bareTable();
  const Rig truth = invented9ftRig();
  for (unsigned seed = 1; seed <= 5; ++seed) {
    const auto rig = rigFromLines(filmOnly(truth), measured, linesOf(truth, measured.table, seed));
    QVERIFY(rig.has_value());
    const Miss miss = missOf(*rig, truth, measured);
    QVERIFY2(miss.rms_m < 0.003, qPrintable(QString::number(miss.rms_m)));
    QCOMPARE(rig->chain.corrections().size(), std::size_t{2});
    QCOMPARE(rig->chain.corrections().front().source, std::string("film.mp4"));
    QVERIFY(rig->tags.empty());
  }
}

void RigFromLinesTest::aKnownLensIsKept() {
  const MeasuredTable measured = bareTable();
  const Rig truth = invented9ftRig();
  RigEvidence evidence = filmOnly(truth);
  evidence.lens = truth.lens;
  evidence.lensSource = "lens.json";
  const auto rig = rigFromLines(evidence, measured, linesOf(truth, measured.table, 3));
  QVERIFY(rig.has_value());
  QVERIFY(rig->lens == truth.lens);
  QVERIFY(missOf(*rig, truth, measured).rms_m < 0.002);
}

/// Places of one rig err together, so many rigs are asked. 95 % expected; what the trade's priors add makes it more.
void RigFromLinesTest::theErrorMapHoldsWhatTheCushionsGet() {
  const MeasuredTable measured = bareTable();
  const Rig truth = invented9ftRig();
  int held = 0;
  int places = 0;
  for (unsigned seed = 11; seed <= 25; ++seed) {
    const auto rig = rigFromLines(filmOnly(truth), measured, linesOf(truth, measured.table, seed));
    QVERIFY(rig.has_value());
    const Miss miss = missOf(*rig, truth, measured);
    held += miss.held;
    places += miss.places;
  }
  const double share = static_cast<double>(held) / places;
  QVERIFY2(share > 0.88, qPrintable(QString::number(share)));
}

/// Focal lengths that differ by three parts in a thousand move the ends of a long cushion by 2 mm; the map says so.
void RigFromLinesTest::pixelsThatAreNotSquareAreAllowedFor() {
  const MeasuredTable measured = bareTable();
  Rig truth = invented9ftRig();
  truth.lens.focalY_px = 1.003 * truth.lens.focalX_px;
  int held = 0;
  int places = 0;
  for (unsigned seed = 31; seed <= 40; ++seed) {
    const auto rig = rigFromLines(filmOnly(truth), measured, linesOf(truth, measured.table, seed));
    QVERIFY(rig.has_value());
    QVERIFY(rig->lens.focalY_px > rig->lens.focalX_px);
    const Miss miss = missOf(*rig, truth, measured);
    held += miss.held;
    places += miss.places;
  }
  const double share = static_cast<double>(held) / places;
  QVERIFY2(share > 0.90, qPrintable(QString::number(share)));
}

void RigFromLinesTest::sightsMakeTheRigSurerAndTheMapHoldsIt() {
  const MeasuredTable measured = bareTable();
  const Rig truth = invented9ftRig();
  double withSights = 0.0;
  double without = 0.0;
  int held = 0;
  int places = 0;
  for (unsigned seed = 51; seed <= 65; ++seed) {
    const auto lines = linesOf(truth, measured.table, seed);
    Random random(1000 + seed);
    const auto marks = sightsOf(truth, measured.table, random);
    const auto rig = rigFromLines(filmOnly(truth), measured, lines, marks);
    const auto bare = rigFromLines(filmOnly(truth), measured, lines);
    QVERIFY(rig.has_value() && bare.has_value());
    QVERIFY(isFromCushions(*rig) && isFromSights(*rig) && !isFromSights(*bare));
    const Miss miss = missOf(*rig, truth, measured);
    withSights += std::pow(miss.rms_m, 2) / 15.0;
    without += std::pow(missOf(*bare, truth, measured).rms_m, 2) / 15.0;
    held += miss.held;
    places += miss.places;
  }
  const double share = static_cast<double>(held) / places;
  QVERIFY2(withSights < without,
           qPrintable(QStringLiteral("%1 %2").arg(std::sqrt(withSights)).arg(std::sqrt(without))));
  QVERIFY2(std::sqrt(withSights) < 0.003, qPrintable(QString::number(std::sqrt(withSights))));
  QVERIFY2(share > 0.90, qPrintable(QString::number(share)));
}

/// Something else 20 mm along the rail: its own miss is by far the largest, and says about as much.
void RigFromLinesTest::aSightThatWasMistakenStandsOff() {
  const MeasuredTable measured = bareTable();
  const Rig truth = invented9ftRig();
  Random random(7);
  auto marks = sightsOf(truth, measured.table, random);
  const TablePoint wrong = markPlace(measured.table, marks[4].mark).place + TableVector{0.020, 0.0};
  marks[4].place = imageFromTable(truth, {wrong.x, wrong.y, measured.table.noseHeight_m}).value();
  const auto fit = fitRigFromLines(filmOnly(truth), measured, linesOf(truth, measured.table, 2), marks);
  QVERIFY(fit.has_value());
  QCOMPARE(fit->markOff_m.size(), marks.size());
  QVERIFY2(*fit->markOff_m[4] > 0.010, qPrintable(QString::number(*fit->markOff_m[4])));
  for (std::size_t i = 0; i < marks.size(); ++i)
    QVERIFY(i == 4 || std::abs(*fit->markOff_m[i]) < 0.5 * *fit->markOff_m[4]);
}

/// The rig claims no more than it knows, so tags that lie within that are no fault, however well they are seen.
void RigFromLinesTest::tagsThatAreLaidLaterAreNoFault() {
  const Rig truth = invented9ftRig();
  const MeasuredTable tagged = taggedTable();
  for (unsigned seed = 1; seed <= 8; ++seed) {
    CheckEvidence evidence;
    evidence.filmSize = truth.lens.size;
    evidence.lines = linesOf(truth, tagged.table, seed);
    const auto rig = rigFromLines(filmOnly(truth), bareTable(), evidence.lines);
    QVERIFY(rig.has_value());
    evidence.tags = seenTags(truth, tagged, 0.1);
    const SelfCheck check = checkRig(*rig, tagged, evidence);
    QVERIFY2(check.verdict == RigFault::None,
             qPrintable(QStringLiteral("%1: %2").arg(seed).arg(QString::fromUtf8(toText(check.verdict).data()))));
  }
}

/// By 40 mm, an hour later.
void RigFromLinesTest::aMovedCameraIsStillNamed() {
  const Rig truth = invented9ftRig();
  const MeasuredTable tagged = taggedTable();
  const auto rig = rigFromLines(filmOnly(truth), bareTable(), linesOf(truth, tagged.table, 1));
  QVERIFY(rig.has_value());
  Rig moved = truth;
  moved.pose = poseAbove({0.09, -0.08, 2.1}, 0.04, -0.02);
  CheckEvidence evidence;
  evidence.filmSize = truth.lens.size;
  evidence.lines = linesOf(moved, tagged.table, 1);
  evidence.tags = seenTags(moved, tagged, 0.1);
  const SelfCheck check = checkRig(*rig, tagged, evidence);
  QString said;
  for (const Explanation& each : check.explanations) {
    said += QStringLiteral("%1 misfit %2 p %3; ")
                .arg(QString::fromUtf8(toText(each.fault).data()))
                .arg(each.misfit)
                .arg(each.probability);
  }
  QVERIFY2(check.verdict == RigFault::CameraMoved, qPrintable(said));
}

void RigFromLinesTest::aMissingSideIsRefused() {
  const MeasuredTable measured = bareTable();
  const Rig truth = invented9ftRig();
  auto lines = linesOf(truth, measured.table, 1);
  std::erase_if(lines, [](const LineTrace& line) { return line.cushion == CushionName::Foot; });
  const auto rig = rigFromLines(filmOnly(truth), measured, lines);
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::TagsTooFew);
  QCOMPARE(rig.error().detail, std::string("cushions"));
}

/// A square table is no table of ours.
void RigFromLinesTest::linesOfAnotherTableAreRefused() {
  const Rig truth = invented9ftRig();
  Table square;
  square.width_m = 1.0;
  RigEvidence evidence = filmOnly(truth);
  evidence.lens = truth.lens;
  const auto rig = rigFromLines(evidence, bareTable(), linesOf(truth, square, 1));
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::LensNotUsable);
}

void RigFromLinesTest::aLensOfAnotherSizeIsRefused() {
  const Rig truth = invented9ftRig();
  RigEvidence evidence = filmOnly(truth);
  evidence.lens = truth.lens;
  evidence.filmSize = {1440, 1080};
  const auto rig = rigFromLines(evidence, bareTable(), linesOf(truth, bareTable().table, 1));
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::ImageSizeMismatch);
}

FERRULE_TEST(RigFromLinesTest)
#include "rig_from_lines_test.moc"
