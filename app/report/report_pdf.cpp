// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_pdf.h"

#include <QBuffer>
#include <QGlyphRun>
#include <QPainter>
#include <QPdfWriter>
#include <QTextLayout>

#include "app/report/pdf_structure.h"
#include "app/report/report_press.h"
#include "app/report/report_sheet.h"
#include "core/base/text_file.h"

namespace ferrule {

Result<void> writeReportPdf(const Report& report, QPageSize::PageSizeId paper, const std::string& path) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  std::vector<PdfReadingOrder::Node> parts;
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(kSheetDotsPerInch);
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(report.title);
    writer.setCreator(QStringLiteral("Ferrule"));
    QPainter painter(&writer);
    PdfReadingOrder order(painter);
    bool first = true;
    const auto next = [&]() -> QPainter& {
      if (!first) writer.newPage();
      first = false;
      return painter;
    };
    printReport(report, paper, next, &order);
    parts = order.nodes();
  }
  const auto pdf = withStructure(buffer.data(), parts,
                                 {report.title, QStringLiteral("Ferrule"), QStringLiteral("Ferrule"),
                                  report.locale.bcp47Name(), QDateTime::currentDateTimeUtc()});
  if (!pdf) return failure(ErrorCode::FileNotWritable, path, pdf.error().detail);
  return writeTextFile(path, std::string_view(pdf->constData(), static_cast<std::size_t>(pdf->size())));
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
