// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/line_survey.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/camera/error_map.h"
#include "core/camera/rig_file.h"
#include "core/camera/rig_from_lines.h"
#include "core/vision/film_rig.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Lines of the small film's picture, found and placed by hand.
class LineSurveyTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void everyNoseIsFoundInTheFilm();
  void aPlacedLineStandsInForAllThatWasFoundOfItsCushion();
  void linesPlacedByHandGiveARigToThreeMillimetres();
  void aCushionThatIsNotFoundCanBePlaced();

 private:
  /// A nose as a person with a loupe sets it: five places on the true line, off by no more than half a pixel.
  [[nodiscard]] LineTrace placed(CushionName name) const;
  [[nodiscard]] double worst_m(const Rig& rig) const;

  Rig rig_;
  RigWanted wanted_;
  std::vector<LineTrace> found_;
};

namespace {

const std::string kFolder = FERRULE_SOURCE_DIR "/tests/data/clip/";

}  // namespace

void LineSurveyTest::initTestCase() {
  rig_ = readRigFile(kFolder + "rig.json").value();
  wanted_.lensFile = kFolder + "lens.json";
  wanted_.table = "table.json";
  wanted_.measured = readMeasuredTable(kFolder + "table.json").value();
  wanted_.film = kFolder + "stop-shot.mp4";
  wanted_.withoutTags = true;
  const auto seen = linesOfFilm(wanted_);
  QVERIFY(seen.has_value());
  QCOMPARE(seen->picture.cols, rig_.lens.size.width);
  found_ = seen->lines;
}

LineTrace LineSurveyTest::placed(CushionName name) const {
  const auto all = cushions(wanted_.measured.table);
  const auto cushion = std::ranges::find(all, name, &Cushion::name);
  const TableVector whole = cushion->nose.end - cushion->nose.start;
  LineTrace line{LineTrace::Kind::Nose, name, {}, 0.5};
  for (int i = 0; i < 5; ++i) {
    const TablePoint p = cushion->nose.start + (0.08 + 0.21 * i) * whole;
    ImagePoint pixel = imageFromTable(rig_, {p.x, p.y, wanted_.measured.table.noseHeight_m}).value();
    // An unsteady hand.
    pixel.x += 0.4 * std::sin(3.0 * i + static_cast<int>(name));
    pixel.y += 0.4 * std::cos(5.0 * i + static_cast<int>(name));
    line.places.push_back(pixel);
  }
  return line;
}

double LineSurveyTest::worst_m(const Rig& rig) const {
  const double radius_m = wanted_.measured.balls.radius_m();
  double worst_m = 0.0;
  for (const double x : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
    for (const double y : {-0.45, 0.0, 0.45}) {
      const ImagePoint pixel = imageFromTable(rig_, {x, y, radius_m}).value();
      worst_m = std::max(worst_m, distance(tableFromImage(rig, pixel, radius_m).value(), TablePoint{x, y}));
    }
  }
  return worst_m;
}

void LineSurveyTest::everyNoseIsFoundInTheFilm() {
  for (const CushionName name : kCushionNames) {
    QVERIFY(std::ranges::any_of(
        found_, [&](const LineTrace& line) { return line.kind == LineTrace::Kind::Nose && line.cushion == name; }));
  }
}

void LineSurveyTest::aPlacedLineStandsInForAllThatWasFoundOfItsCushion() {
  const LineTrace line = placed(CushionName::Head);
  const auto both = withHandLines(found_, {line});
  const auto ofHead = std::ranges::count(both, CushionName::Head, &LineTrace::cushion);
  QCOMPARE(ofHead, 1);
  QVERIFY(*std::ranges::find(both, CushionName::Head, &LineTrace::cushion) == line);
  const auto elsewhere = [](const std::vector<LineTrace>& lines) {
    return std::ranges::count_if(lines, [](const LineTrace& l) { return l.cushion != CushionName::Head; });
  };
  QCOMPARE(elsewhere(both), elsewhere(found_));
}

/// Half a pixel is about 1 mm here, twenty places on each direction: well within 3 mm, and the map knows it is wider.
void LineSurveyTest::linesPlacedByHandGiveARigToThreeMillimetres() {
  RigWanted wanted = wanted_;
  for (const CushionName name : kCushionNames)
    wanted.handLines.push_back(placed(name));
  const auto rig = rigFromFilm(wanted);
  QVERIFY2(rig.has_value(), rig ? "" : qPrintable(QString::fromStdString(rig.error().detail)));
  QVERIFY(isFromCushions(*rig));
  QVERIFY2(worst_m(*rig) < 0.003, qPrintable(QString::number(1000.0 * worst_m(*rig))));
  const auto byHand = ErrorMap(*rig, wanted.measured).at({0.9, 0.4});
  const auto byTags = ErrorMap(rig_, wanted.measured).at({0.9, 0.4});
  QVERIFY(byHand && byTags && byHand->u_m() > byTags->u_m());
}

/// A film whose foot cushion is hidden: without a hand there is no rig, with one there is.
void LineSurveyTest::aCushionThatIsNotFoundCanBePlaced() {
  auto lines = found_;
  std::erase_if(lines, [](const LineTrace& line) { return line.cushion == CushionName::Foot; });
  RigEvidence evidence;
  evidence.lens = rig_.lens;
  evidence.film = "film";
  evidence.filmSize = rig_.lens.size;
  const auto without = rigFromLines(evidence, wanted_.measured, lines);
  QVERIFY(!without);
  QCOMPARE(without.error().code, ErrorCode::TagsTooFew);
  const auto with = rigFromLines(evidence, wanted_.measured, withHandLines(lines, {placed(CushionName::Foot)}));
  QVERIFY(with.has_value());
  QVERIFY2(worst_m(*with) < 0.003, qPrintable(QString::number(1000.0 * worst_m(*with))));
}

FERRULE_TEST(LineSurveyTest)
#include "line_survey_test.moc"
