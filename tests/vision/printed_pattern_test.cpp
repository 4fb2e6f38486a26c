// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/printed_pattern.h"

#include <QtTest>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/vision/board_finder.h"
#include "core/vision/tag_finder.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PrintedPatternTest : public QObject {
  Q_OBJECT
 private slots:
  void aPrintedBoardIsFoundWithItsCornersInPlace_data();
  void aPrintedBoardIsFoundWithItsCornersInPlace();
  void aPrintedTagIsFoundAtItsSize();
  void whatCannotBePrintedIsNamed();
};

namespace {

constexpr double kPerMetre_px = 2000.0;
constexpr double kWhite_m = 0.020;

/// Dark rectangles on white paper, lengths that are whole pixels.
cv::Mat drawn(const std::vector<PrintedRectangle>& dark, double width_m, double height_m) {
  const auto px = [](double length_m) { return static_cast<int>(std::lround(length_m * kPerMetre_px)); };
  cv::Mat picture(px(height_m + 2.0 * kWhite_m), px(width_m + 2.0 * kWhite_m), CV_8U, cv::Scalar(255));
  for (const PrintedRectangle& r : dark) {
    const cv::Point from(px(r.x_m + kWhite_m), px(r.y_m + kWhite_m));
    const cv::Point to(px(r.x_m + r.width_m + kWhite_m), px(r.y_m + r.height_m + kWhite_m));
    picture(cv::Rect(from, to)).setTo(0);
  }
  return picture;
}

}  // namespace

void PrintedPatternTest::aPrintedBoardIsFoundWithItsCornersInPlace_data() {
  QTest::addColumn<QString>("text");
  QTest::newRow("ChArUco, even rows") << "charuco:8x6:40:28:DICT_5X5_100";
  QTest::newRow("ChArUco, odd rows") << "charuco:7x5:30:21:DICT_5X5_100";
  QTest::newRow("chessboard") << "chessboard:9x6:25";
}

/// Inner corners lie a square's side apart, the first a square from both edges.
void PrintedPatternTest::aPrintedBoardIsFoundWithItsCornersInPlace() {
  QFETCH(QString, text);
  const Board board = parseBoard(text.toStdString()).value();
  const PrintedSize size = printedSize(board);
  const cv::Mat picture = drawn(printedBoard(board).value(), size.width_m, size.height_m);
  const BoardSight sight = findBoard(board, picture);
  QVERIFY(sight.kind == BoardSight::Kind::Found);
  QCOMPARE(static_cast<int>(sight.corners.size()), board.cornerCount());
  if (board.kind == Board::Kind::Chessboard) return;  // whose print may be read from its other end
  for (const BoardCorner& corner : sight.corners) {
    const TablePoint3 place = board.corner(corner.index);
    const ImagePoint expected{(kWhite_m + board.square_m + place.x) * kPerMetre_px - 0.5,
                              (kWhite_m + board.square_m + place.y) * kPerMetre_px - 0.5};
    QVERIFY2(distance(corner.pixel, expected) < 0.1, qPrintable(QString::number(distance(corner.pixel, expected))));
  }
}

void PrintedPatternTest::aPrintedTagIsFoundAtItsSize() {
  constexpr double kSide_m = 0.060;
  for (const int id : {0, 3, 49}) {
    const cv::Mat picture = drawn(printedTag("DICT_4X4_50", id, kSide_m).value(), kSide_m, kSide_m);
    const auto found = TagFinder::forDictionary("DICT_4X4_50")->find(picture);
    QCOMPARE(found.size(), std::size_t{1});
    QCOMPARE(found.front().id, id);
    const double side_px = distance(found.front().corners[0], found.front().corners[1]);
    QVERIFY2(std::abs(side_px - kSide_m * kPerMetre_px) < 0.5, qPrintable(QString::number(side_px)));
  }
}

void PrintedPatternTest::whatCannotBePrintedIsNamed() {
  QCOMPARE(printedTag("DICT_9X9_9", 0, 0.08).error().detail, std::string("dictionary"));
  QCOMPARE(printedTag("DICT_4X4_50", 50, 0.08).error().detail, std::string("markers"));
  QCOMPARE(printedBoard(parseBoard("charuco:20x20:40:30:DICT_4X4_50").value()).error().detail, std::string("markers"));
}

FERRULE_TEST(PrintedPatternTest)
#include "printed_pattern_test.moc"
