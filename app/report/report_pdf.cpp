// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_pdf.h"

#include <QBuffer>
#include <QGlyphRun>
#include <QPainter>
#include <QPdfWriter>
#include <QTextLayout>

#include "app/report/pdf_information.h"
#include "app/report/report_press.h"
#include "app/report/report_sheet.h"
#include "core/base/text_file.h"

namespace ferrule {

Result<void> writeReportPdf(const Report& report, QPageSize::PageSizeId paper, const std::string& path) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(kSheetDotsPerInch);
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(report.title);
    writer.setCreator(QStringLiteral("Ferrule"));
    QPainter painter(&writer);
    bool first = true;
    printReport(report, paper, [&]() -> QPainter& {
      if (!first) writer.newPage();
      first = false;
      return painter;
    });
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
