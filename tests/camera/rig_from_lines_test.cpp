// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/rig_from_lines.h"

#include <QtTest>
#include <cmath>

#include "core/camera/error_map.h"
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
