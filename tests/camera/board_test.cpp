// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/board.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

class BoardTest : public QObject {
  Q_OBJECT
 private slots:
  void aChessboardCountsInnerCorners();
  void aCharucoBoardCountsSquares();
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
