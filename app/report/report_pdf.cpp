// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_pdf.h"

#include <QBuffer>
#include <QGlyphRun>
#include <QPainter>
#include <QPdfWriter>
#include <QTextLayout>

#include "app/report/pdf_information.h"
#include "app/report/report_sheet.h"
#include "core/base/text_file.h"

namespace ferrule {

namespace {

constexpr int kDotsPerInch = 1200;
constexpr double kPointsPerInch = 72.0;
constexpr double kPointsPerMillimetre = kPointsPerInch / 25.4;
constexpr double kSide_mm = 18.0;
constexpr double kTop_mm = 16.0;
constexpr double kFoot_mm = 18.0;
constexpr double kFootText_pt = 8.0;

/// Puts blocks on sheets.
class Press {
 public:
  Press(QPdfWriter& writer, QPainter& painter, const Report& report)
      : writer_(writer), painter_(painter), report_(report), style_(paperStyle(kDotsPerInch / kPointsPerInch)) {
    const double unit = kPointsPerMillimetre * style_.unit;
    left_ = kSide_mm * unit;
    top_ = kTop_mm * unit;
    width_ = writer.width() - 2.0 * left_;
    bottom_ = writer.height() - kFoot_mm * unit;
  }

  void print() {
    for (std::size_t i = 0; i < report_.pages.size(); ++i) {
      if (i > 0) newSheet();
      beginSheet();
      print(report_.pages[i]);
    }
  }

 private:
  void print(const ReportPage& page) {
    for (std::size_t i = 0; i < page.blocks.size(); ++i) {
      const ReportBlock& block = page.blocks[i];
      const double height = blockHeight(block, width_, style_);
      double needed = height;
      if (holdsNext(block) && i + 1 < page.blocks.size()) needed += blockHeight(page.blocks[i + 1], width_, style_);
      if (y_ > top_ && y_ + needed > bottom_) {
        newSheet();
        beginSheet();
      }
      drawBlock(painter_, {left_, y_}, block, width_, style_);
      y_ += height;
    }
  }

  void newSheet() { writer_.newPage(); }

  void beginSheet() {
    ++sheet_;
    y_ = top_;
    painter_.setFont(sizedFont(style_, kFootText_pt));
    painter_.setPen(style_.inks.quiet);
    const QRectF foot(left_, bottom_ + 4.0 * style_.unit, width_, 14.0 * style_.unit);
    painter_.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, report_.foot);
    painter_.drawText(foot, Qt::AlignRight | Qt::AlignVCenter, report_.locale.toString(sheet_));
  }

  QPdfWriter& writer_;
  QPainter& painter_;
  const Report& report_;
  ChartStyle style_;
  double left_ = 0.0;
  double top_ = 0.0;
  double width_ = 0.0;
  double bottom_ = 0.0;
  double y_ = 0.0;
  int sheet_ = 0;
};

}  // namespace

Result<void> writeReportPdf(const Report& report, QPageSize::PageSizeId paper, const std::string& path) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(kDotsPerInch);
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(report.title);
    writer.setCreator(QStringLiteral("Ferrule"));
    QPainter painter(&writer);
    Press(writer, painter, report).print();
  }
  const QByteArray pdf = withInformation(buffer.data(), {report.title, QStringLiteral("Ferrule"),
                                                         QStringLiteral("Ferrule"), QDateTime::currentDateTimeUtc()});
  return writeTextFile(path, std::string_view(pdf.constData(), static_cast<std::size_t>(pdf.size())));
}

QString lettersWithoutFont(const QString& text) {
  QString missing;
  for (const char32_t code : text.toStdU32String()) {
    const QString letter = QString::fromUcs4(&code, 1);
    if (letter.trimmed().isEmpty() || missing.contains(letter)) continue;
    QTextLayout layout(letter, paperStyle(10.0).font);
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    for (const QGlyphRun& run : layout.glyphRuns()) {
      if (run.glyphIndexes().contains(0U)) missing += letter;
    }
  }
  return missing;
}

}  // namespace ferrule
