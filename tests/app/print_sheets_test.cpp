// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/print_sheets.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>
#include <cmath>
#include <opencv2/imgcodecs.hpp>

#include "core/vision/board_finder.h"
#include "core/vision/tag_finder.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Sheets as another program reads and draws them.
class PrintSheetsTest : public QObject {
  Q_OBJECT
 private slots:
  void aBoardPrintsTrueToScale();
  void tagsPrintTrueToScale();
  void noWordRunsOffTheSheet();
  void whatDoesNotFitIsRefused();

 private:
  /// Drawn by poppler with so many pixels a millimetre.
  static constexpr double kPerMm_px = 8.0;
  [[nodiscard]] cv::Mat drawn(const QString& pdf) const;
  [[nodiscard]] QString said(const QString& program, const QStringList& arguments) const;

  QTemporaryDir folder_;
};

namespace {

/// Where dark strokes begin along a line of a picture, px, each at its middle.
std::vector<double> strokes(const cv::Mat& line) {
  std::vector<double> middles;
  int start = -1;
  const int length = static_cast<int>(line.total());
  for (int i = 0; i <= length; ++i) {
    const bool dark = i < length && line.at<uchar>(i) < 128;
    if (dark && start < 0) start = i;
    if (!dark && start >= 0) {
      middles.push_back(0.5 * (start + i - 1));
      start = -1;
    }
  }
  return middles;
}

}  // namespace

QString PrintSheetsTest::said(const QString& program, const QStringList& arguments) const {
  QProcess process;
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(program, arguments);
  process.waitForFinished(120'000);
  return QString::fromUtf8(process.readAll());
}

cv::Mat PrintSheetsTest::drawn(const QString& pdf) const {
  const QString picture = folder_.filePath("page");
  const QString complaint =
      said("pdftoppm", {"-r", QString::number(25.4 * kPerMm_px), "-gray", "-singlefile", pdf, picture});
  if (!complaint.isEmpty()) qWarning("%s", qPrintable(complaint));
  return cv::imread((picture + ".pgm").toStdString(), cv::IMREAD_GRAYSCALE);
}

void PrintSheetsTest::aBoardPrintsTrueToScale() {
  const Board board = parseBoard("charuco:8x6:30:22:DICT_5X5_100").value();
  const QString pdf = folder_.filePath("board.pdf");
  QVERIFY(writeBoardSheet(board, QPageSize::A4, pdf.toStdString()).has_value());
  QVERIFY2(said("qpdf", {"--check", pdf}).contains("No syntax or stream encoding errors"),
           qPrintable(said("qpdf", {"--check", pdf})));
  QVERIFY2(said("pdfinfo", {pdf}).contains("A4"), qPrintable(said("pdfinfo", {pdf})));
  const cv::Mat page = drawn(pdf);
  // A PDF names paper in whole points, a third of a millimetre each.
  QVERIFY(std::abs(page.cols / kPerMm_px - 297.0) < 0.4);
  const BoardSight sight = findBoard(board, page);
  QVERIFY(sight.kind == BoardSight::Kind::Found);
  QCOMPARE(static_cast<int>(sight.corners.size()), board.cornerCount());
  const auto at = [&](int index) { return std::ranges::find(sight.corners, index, &BoardCorner::index)->pixel; };
  // Across six squares of 30 mm and down four: to a twentieth of a millimetre.
  QVERIFY2(std::abs(distance(at(0), at(6)) / kPerMm_px - 180.0) < 0.05,
           qPrintable(QString::number(distance(at(0), at(6)) / kPerMm_px)));
  QVERIFY(std::abs(distance(at(0), at(28)) / kPerMm_px - 120.0) < 0.05);
  // The lines: only their ends reach 2.2 mm from them.
  const int below = static_cast<int>((210.0 - 7.0 - 5.0 - 3.0 + 2.2) * kPerMm_px);
  const auto across = strokes(page.row(below));
  QVERIFY(across.size() >= 2);
  QVERIFY2(std::abs((across[1] - across[0]) / kPerMm_px - 100.0) < 0.1,
           qPrintable(QString::number((across[1] - across[0]) / kPerMm_px)));
  const int beside = static_cast<int>((7.0 + 5.0 - 2.2) * kPerMm_px);
  const auto down = strokes(page.col(beside).clone());
  QCOMPARE(down.size(), std::size_t{2});
  QVERIFY(std::abs((down[1] - down[0]) / kPerMm_px - 100.0) < 0.1);
}

void PrintSheetsTest::tagsPrintTrueToScale() {
  const QString pdf = folder_.filePath("tags.pdf");
  QVERIFY(writeTagSheets("DICT_4X4_50", {0, 1, 2, 3}, 0.080, QPageSize::A4, pdf.toStdString()).has_value());
  QVERIFY(said("qpdf", {"--check", pdf}).contains("No syntax or stream encoding errors"));
  const auto tags = TagFinder::forDictionary("DICT_4X4_50")->find(drawn(pdf));
  QVERIFY(!tags.empty());
  for (const TagObservation& tag : tags) {
    for (std::size_t i = 0; i < 4; ++i) {
      const double side_mm = distance(tag.corners[i], tag.corners[(i + 1) % 4]) / kPerMm_px;
      QVERIFY2(std::abs(side_mm - 80.0) < 0.1, qPrintable(QString::number(side_mm)));
    }
  }
  // All four, on as many sheets as they need.
  const QString pages = said("pdfinfo", {pdf});
  QVERIFY2(pages.contains(QRegularExpression("Pages: +[1-4]\\b")), qPrintable(pages));
  const QString text = said("pdftotext", {pdf, "-"});
  for (int id = 0; id < 4; ++id)
    QVERIFY2(text.contains(QStringLiteral("Tag %1:").arg(id)), qPrintable(text));
}

/// Every word's box as another program sees it, points.
void PrintSheetsTest::noWordRunsOffTheSheet() {
  const QString board = folder_.filePath("words-board.pdf");
  const QString tags = folder_.filePath("words-tags.pdf");
  QVERIFY(writeBoardSheet(parseBoard("charuco:5x7:30:22:DICT_5X5_100").value(), QPageSize::A4, board.toStdString()));
  QVERIFY(writeTagSheets("DICT_4X4_50", {0, 1, 2, 3}, 0.060, QPageSize::A4, tags.toStdString()));
  for (const QString& pdf : {board, tags}) {
    static const QRegularExpression kRight("xMax=\"([0-9.]+)\"");
    double most_pt = 0.0;
    auto boxes = kRight.globalMatch(said("pdftotext", {"-bbox", pdf, "-"}));
    QVERIFY(boxes.hasNext());
    while (boxes.hasNext())
      most_pt = std::max(most_pt, boxes.next().captured(1).toDouble());
    QVERIFY2(most_pt <= (210.0 - 6.5) / 25.4 * 72.0, qPrintable(QString::number(most_pt)));
  }
}

void PrintSheetsTest::whatDoesNotFitIsRefused() {
  const auto large = writeBoardSheet(parseBoard("charuco:8x6:40:30:DICT_5X5_100").value(), QPageSize::A4,
                                     folder_.filePath("large.pdf").toStdString());
  QVERIFY(!large && large.error().detail == "paper");
  QVERIFY(!QFile::exists(folder_.filePath("large.pdf")));
  QVERIFY(writeBoardSheet(parseBoard("charuco:8x6:40:30:DICT_5X5_100").value(), QPageSize::A3,
                          folder_.filePath("large.pdf").toStdString())
              .has_value());
  QVERIFY(!writeTagSheets("DICT_4X4_50", {0}, 0.300, QPageSize::A4, folder_.filePath("t.pdf").toStdString()));
  const auto nowhere =
      writeTagSheets("DICT_4X4_50", {0}, 0.080, QPageSize::A4, folder_.filePath("no/t.pdf").toStdString());
  QVERIFY(!nowhere && nowhere.error().code == ErrorCode::FileNotWritable);
}

FERRULE_TEST(PrintSheetsTest)
#include "print_sheets_test.moc"
