// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/mark_survey.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/camera/error_map.h"
#include "core/camera/rig_file.h"
#include "core/vision/film_rig.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Sights and pockets in the small film's picture, its tags painted over, and in drawn pictures.
class MarkSurveyTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void everySightAndPocketIsFoundInTheFilm();
  void aRoughRigIsEnough();
  void sightsAreFoundWhereTheyWereDrawn_data();
  void sightsAreFoundWhereTheyWereDrawn();
  void whatCouldBeOneOfTwoIsLeftOut();
  void anOpeningOfTheRailsOwnDarknessIsLeftOut();
  void aPersonsWordStands();
  void withoutTagsAndBoardPlacesAreRightToThreeMillimetres();
  void marksMakeTheRigSurer();
  void aNoseThatAPersonPlacedLetsMarksBeFound();

 private:
  /// Nothing but sights on a rail that fills the picture.
  [[nodiscard]] cv::Mat drawn(double sightSize_m, cv::Scalar sight, cv::Scalar rail) const;
  [[nodiscard]] double off_px(const MarkSighting& seen) const;

  Rig rig_;
  MeasuredTable bare_;
  SeenLines seen_;  ///< in the film's picture without tags
  RigEvidence nothing_;
};

namespace {

const std::string kFolder = FERRULE_SOURCE_DIR "/tests/data/clip/";

const MarkSighting* ofMark(const std::vector<MarkSighting>& marks, TableMark mark) {
  const auto found = std::ranges::find(marks, mark, &MarkSighting::mark);
  return found == marks.end() ? nullptr : &*found;
}

double worst_m(const Rig& rig, const Rig& truth, const MeasuredTable& measured) {
  const double radius_m = measured.balls.radius_m();
  double worst_m = 0.0;
  for (const double x : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
    for (const double y : {-0.45, 0.0, 0.45}) {
      const ImagePoint pixel = imageFromTable(truth, {x, y, radius_m}).value();
      worst_m = std::max(worst_m, distance(tableFromImage(rig, pixel, radius_m).value(), TablePoint{x, y}));
    }
  }
  return worst_m;
}

/// The tags with their white borders painted over, as an owner without tags would film the table.
cv::Mat withoutTags(const cv::Mat& picture, const Rig& rig, const MeasuredTable& measured) {
  cv::Mat result = picture.clone();
  for (const RailTag& tag : measured.tags) {
    TablePoint middle;
    for (const TablePoint3& corner : tag.corners)
      middle = middle + TableVector{corner.x / 4.0, corner.y / 4.0};
    std::vector<cv::Point> quad;
    for (const TablePoint3& corner : tag.corners) {
      const TablePoint wider = middle + 1.4 * (TablePoint{corner.x, corner.y} - middle);
      const ImagePoint pixel = imageFromTable(rig, {wider.x, wider.y, corner.z}).value();
      quad.emplace_back(static_cast<int>(pixel.x), static_cast<int>(pixel.y));
    }
    const TableVector toMiddle = middle.x > 0.0 ? TableVector{-0.09, 0.0} : TableVector{0.09, 0.0};
    const TablePoint beside = middle + toMiddle;
    const ImagePoint pixel = imageFromTable(rig, {beside.x, beside.y, tag.corners[0].z}).value();
    const auto wood = picture.at<cv::Vec3b>(static_cast<int>(pixel.y), static_cast<int>(pixel.x));
    cv::fillConvexPoly(result, quad, cv::Scalar(wood[0], wood[1], wood[2]));
  }
  return result;
}

}  // namespace

void MarkSurveyTest::initTestCase() {
  rig_ = readRigFile(kFolder + "rig.json").value();
  const MeasuredTable measured = readMeasuredTable(kFolder + "table.json").value();
  RigWanted wanted;
  wanted.measured = measured;
  wanted.film = kFolder + "stop-shot.mp4";
  wanted.withoutTags = true;
  const auto seen = linesOfFilm(wanted);
  QVERIFY(seen.has_value());
  bare_ = measured;
  bare_.tags.clear();
  nothing_.film = "film";
  nothing_.filmSize = rig_.lens.size;
  seen_.picture = withoutTags(seen->picture, rig_, measured);
  const auto outline = ClothOutline::find(seen_.picture);
  QVERIFY(outline.has_value());
  seen_.lines = traceLines(seen_.picture, *outline, wayWithHead(*outline, PictureSide::Left), bare_.table);
  seen_.marks = marksByLines(seen_.picture, nothing_, bare_, seen_.lines);
}

double MarkSurveyTest::off_px(const MarkSighting& seen) const {
  const TablePoint p = markPlace(bare_.table, seen.mark).place;
  return distance(seen.place, imageFromTable(rig_, {p.x, p.y, bare_.table.noseHeight_m}).value());
}

cv::Mat MarkSurveyTest::drawn(double sightSize_m, cv::Scalar sight, cv::Scalar rail) const {
  // Four times as fine and then averaged, as a sensor does.
  constexpr int kFiner = 4;
  cv::Mat fine(rig_.lens.size.height * kFiner, rig_.lens.size.width * kFiner, CV_8UC3, rail);
  const auto draw = [&](TablePoint p, double size_m, const cv::Scalar& colour) {
    std::vector<cv::Point> corners;
    for (const TableVector off : {TableVector{size_m, 0.0}, {0.0, size_m}, {-size_m, 0.0}, {0.0, -size_m}}) {
      const TablePoint corner = p + off;
      const ImagePoint pixel = imageFromTable(rig_, {corner.x, corner.y, bare_.table.noseHeight_m}).value();
      corners.emplace_back(static_cast<int>(std::lround((pixel.x + 0.5) * kFiner - 0.5)),
                           static_cast<int>(std::lround((pixel.y + 0.5) * kFiner - 0.5)));
    }
    cv::fillConvexPoly(fine, corners, colour);
  };
  for (const TableMark& mark : tableMarks()) {
    if (mark.kind == MarkKind::Sight) draw(markPlace(bare_.table, mark).place, sightSize_m, sight);
  }
  cv::Mat picture;
  cv::resize(fine, picture, {rig_.lens.size.width, rig_.lens.size.height}, 0, 0, cv::INTER_AREA);
  return picture;
}

/// 18 sights: world rules, definitions, strings and sights.
void MarkSurveyTest::everySightAndPocketIsFoundInTheFilm() {
  for (const TableMark& mark : tableMarks()) {
    const MarkSighting* seen = ofMark(seen_.marks, mark);
    QVERIFY2(seen != nullptr, qPrintable(QStringLiteral("%1 %2").arg(static_cast<int>(mark.kind)).arg(mark.number)));
    // A pixel is 2 mm here, and where a sight lies behind the nose is known to 3 mm.
    if (mark.kind == MarkKind::Sight) QVERIFY2(off_px(*seen) < 2.5, qPrintable(QString::number(off_px(*seen))));
  }
}

/// A centimetre off, as the cushions alone may be: the same marks, at the same places.
void MarkSurveyTest::aRoughRigIsEnough() {
  Rig rough = rig_;
  rough.pose.translation_m += Eigen::Vector3d(0.007, -0.007, 0.0);
  const auto exact = findMarks(seen_.picture, rig_, bare_.table);
  const auto found = findMarks(seen_.picture, rough, bare_.table);
  for (const MarkSighting& each : exact) {
    const MarkSighting* same = ofMark(found, each.mark);
    QVERIFY(same != nullptr);
    // Of an opening, what is sure of it: square to the pocket's own axis.
    const auto place = [&](const MarkSighting& mark) { return tableFromImage(rig_, mark.place, 0.036).value(); };
    const TableVector off = place(*same) - place(each);
    const double off_m =
        each.mark.kind == MarkKind::Sight ? length(off) : std::abs(dot(off, markPlace(bare_.table, each.mark).sure));
    QVERIFY2(off_m < (each.mark.kind == MarkKind::Sight ? 0.0003 : 0.0015),
             qPrintable(QString::number(1000.0 * off_m)));
  }
}

void MarkSurveyTest::sightsAreFoundWhereTheyWereDrawn_data() {
  QTest::addColumn<double>("size_m");
  QTest::addColumn<int>("sight");
  QTest::addColumn<int>("rail");
  QTest::newRow("white on dark wood") << 0.012 << 220 << 50;
  QTest::newRow("black on light wood") << 0.012 << 25 << 190;
  QTest::newRow("small and faint") << 0.007 << 110 << 60;
}

void MarkSurveyTest::sightsAreFoundWhereTheyWereDrawn() {
  QFETCH(double, size_m);
  QFETCH(int, sight);
  QFETCH(int, rail);
  const auto found = findMarks(drawn(size_m, cv::Scalar::all(sight), cv::Scalar::all(rail)), rig_, bare_.table);
  QCOMPARE(std::ranges::count_if(found, [](const MarkSighting& m) { return m.mark.kind == MarkKind::Sight; }), 18);
  for (const MarkSighting& each : found) {
    if (each.mark.kind == MarkKind::Sight) QVERIFY2(off_px(each) < 0.2, qPrintable(QString::number(off_px(each))));
  }
}

/// Chalk beside a sight, as large and as light as it.
void MarkSurveyTest::whatCouldBeOneOfTwoIsLeftOut() {
  cv::Mat picture = drawn(0.007, cv::Scalar::all(200), cv::Scalar::all(50));
  const TableMark mark{MarkKind::Sight, 3};
  const TablePoint p = markPlace(bare_.table, mark).place;
  const ImagePoint pixel = imageFromTable(rig_, {p.x + 0.016, p.y, bare_.table.noseHeight_m}).value();
  cv::circle(picture, {static_cast<int>(pixel.x), static_cast<int>(pixel.y)}, 3, cv::Scalar::all(200), -1);
  const auto found = findMarks(picture, rig_, bare_.table);
  QVERIFY(ofMark(found, mark) == nullptr);
  QVERIFY(ofMark(found, {MarkKind::Sight, 4}) != nullptr);
}

/// Nothing dark stands out where no pocket was drawn.
void MarkSurveyTest::anOpeningOfTheRailsOwnDarknessIsLeftOut() {
  for (const MarkSighting& each :
       findMarks(drawn(0.010, cv::Scalar::all(200), cv::Scalar::all(20)), rig_, bare_.table)) {
    QVERIFY(each.mark.kind == MarkKind::Sight);
  }
}

void MarkSurveyTest::aPersonsWordStands() {
  const TableMark moved{MarkKind::Sight, 0};
  const TableMark gone{MarkKind::Pocket, 2};
  const auto both = withHandMarks(seen_.marks, {{moved, true, {100.0, 50.0}}, {gone, false, {}}});
  QCOMPARE(both.size(), seen_.marks.size() - 1);
  QVERIFY(ofMark(both, gone) == nullptr);
  const MarkSighting* placed = ofMark(both, moved);
  QVERIFY(placed != nullptr);
  QVERIFY(placed->place == (ImagePoint{100.0, 50.0}));
  QCOMPARE(placed->u_px, kHandPlaced_px);
}

void MarkSurveyTest::withoutTagsAndBoardPlacesAreRightToThreeMillimetres() {
  const auto rig = rigFromLines(nothing_, bare_, seen_.lines, seen_.marks);
  QVERIFY(rig.has_value());
  QVERIFY(isFromCushions(*rig));
  QVERIFY(isFromSights(*rig));
  QVERIFY2(worst_m(*rig, rig_, bare_) < 0.003, qPrintable(QString::number(1000.0 * worst_m(*rig, rig_, bare_))));
  const double radius_m = bare_.balls.radius_m();
  const ImagePoint pixel = imageFromTable(rig_, {0.9, 0.4, radius_m}).value();
  const TablePoint said = tableFromImage(*rig, pixel, radius_m).value();
  QVERIFY(ErrorMap(*rig, bare_).at(said)->holds95({0.9, 0.4}));
}

void MarkSurveyTest::marksMakeTheRigSurer() {
  const auto with = rigFromLines(nothing_, bare_, seen_.lines, seen_.marks);
  const auto without = rigFromLines(nothing_, bare_, seen_.lines);
  QVERIFY(with.has_value() && without.has_value());
  QVERIFY(ErrorMap(*with, bare_).at({0.9, 0.4})->u_m() < ErrorMap(*without, bare_).at({0.9, 0.4})->u_m());
}

/// Without a rig from the lines nothing says where marks may be.
void MarkSurveyTest::aNoseThatAPersonPlacedLetsMarksBeFound() {
  auto lines = seen_.lines;
  std::erase_if(lines, [](const LineTrace& line) { return line.cushion == CushionName::Foot; });
  QVERIFY(marksByLines(seen_.picture, nothing_, bare_, lines).empty());
  const auto isFoot = [](const LineTrace& line) {
    return line.cushion == CushionName::Foot && line.kind == LineTrace::Kind::Nose;
  };
  const LineTrace& whole = *std::ranges::find_if(seen_.lines, isFoot);
  LineTrace placed{LineTrace::Kind::Nose, CushionName::Foot, {}, kHandPlaced_px};
  for (const std::size_t at : {0U, 6U, 12U, 17U, 23U})
    placed.places.push_back(whole.places.at(at));
  const auto found = marksByLines(seen_.picture, nothing_, bare_, withHandLines(lines, {placed}));
  QVERIFY2(found.size() >= 20, qPrintable(QString::number(found.size())));
}

FERRULE_TEST(MarkSurveyTest)
#include "mark_survey_test.moc"
