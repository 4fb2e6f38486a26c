// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/board.h"

#include <QtTest>
#include <cmath>

#include "tests/support/test_registry.h"

using namespace ferrule;

class BoardTest : public QObject {
  Q_OBJECT
 private slots:
  void aChessboardCountsInnerCorners();
  void aCharucoBoardCountsSquares();
  void aPrintThatCameOutSmallerHasSmallerSquares();
  void aRulerThatCannotBeIsRefused();
  void badBoardsAreNamed_data();
  void badBoardsAreNamed();
};

void BoardTest::aChessboardCountsInnerCorners() {
  const auto board = parseBoard("chessboard:9x6:25");
  QVERIFY(board.has_value());
  QCOMPARE(board->cornerCount(), 54);
  QVERIFY(board->corner(10) == (TablePoint3{0.025, 0.025, 0.0}));
}

void BoardTest::aCharucoBoardCountsSquares() {
  const auto board = parseBoard("charuco:8x6:40:30:DICT_5X5_100");
  QVERIFY(board.has_value());
  QCOMPARE(board->columns, 7);
  QCOMPARE(board->rows, 5);
  QCOMPARE(board->marker_m, 0.030);
  QCOMPARE(board->dictionary, std::string("DICT_5X5_100"));
}

/// 97 mm where 100 were drawn: 40 mm squares are 38.8 mm, 30 mm markers 29.1 mm.
void BoardTest::aPrintThatCameOutSmallerHasSmallerSquares() {
  const Board drawn = parseBoard("charuco:8x6:40:30:DICT_5X5_100").value();
  const auto printed = boardAsPrinted(drawn, {0.097, 0.097});
  QVERIFY(printed.has_value());
  QVERIFY(std::abs(printed->square_m - 0.0388) < 1e-12 && std::abs(printed->marker_m - 0.0291) < 1e-12);
  QCOMPARE(printed->text, std::string("charuco:8x6:38.8:29.1:DICT_5X5_100"));
  QVERIFY(parseBoard(printed->text).has_value());
  QVERIFY(boardAsPrinted(drawn, {}).value() == drawn);
  QCOMPARE(boardText(parseBoard("chessboard:9x6:25.5").value()), std::string("chessboard:9x6:25.5"));
}

void BoardTest::aRulerThatCannotBeIsRefused() {
  const Board drawn = parseBoard("chessboard:9x6:25").value();
  const auto other = boardAsPrinted(drawn, {0.025, 0.025});
  QVERIFY(!other && other.error().code == ErrorCode::FieldInvalid);
  QCOMPARE(other.error().numbers.at(0), 25.0);
  const auto stretched = boardAsPrinted(drawn, {0.100, 0.098});
  QVERIFY(!stretched && stretched.error().detail == "stretched");
}

void BoardTest::badBoardsAreNamed_data() {
  QTest::addColumn<QString>("text");
  QTest::addColumn<QString>("detail");
  QTest::newRow("empty") << ""
                         << "form";
  QTest::newRow("unknown kind") << "dots:9x6:25"
                                << "form";
  QTest::newRow("no square") << "chessboard:9x6"
                             << "form";
  QTest::newRow("one count") << "chessboard:9:25"
                             << "count";
  QTest::newRow("too small") << "chessboard:2x6:25"
                             << "count";
  QTest::newRow("letters") << "chessboard:9xsix:25"
                           << "count";
  QTest::newRow("negative") << "chessboard:9x6:-25"
                            << "square";
  QTest::newRow("comma") << "chessboard:9x6:2,5"
                         << "square";
  QTest::newRow("marker too large") << "charuco:8x6:30:40:DICT_5X5_100"
                                    << "marker";
  QTest::newRow("no dictionary") << "charuco:8x6:40:30"
                                 << "form";
}

void BoardTest::badBoardsAreNamed() {
  QFETCH(QString, text);
  QFETCH(QString, detail);
  const auto board = parseBoard(text.toStdString());
  QVERIFY(!board.has_value());
  QVERIFY(board.error().code == ErrorCode::BoardMalformed);
  QCOMPARE(board.error().subject, text.toStdString());
  QCOMPARE(QString::fromStdString(board.error().detail), detail);
}

FERRULE_TEST(BoardTest)
#include "board_test.moc"
