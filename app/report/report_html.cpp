// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_html.h"

#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

#include "app/report/report_sheet.h"
#include "core/base/text_file.h"

namespace ferrule {

namespace {

constexpr double kWidth_pt = 500.0;

constexpr const char* kStyle =
    "body{font:16px/1.45 'DejaVu Sans',sans-serif;color:#1f2321;background:#fff;max-width:52em;margin:2em auto;"
    "padding:0 1em}h1{font-size:1.9em;margin:0}h2{font-size:1.2em;margin:1.6em 0 .4em}.sub,.small{color:#5c615e}"
    ".small{font-size:.85em}.lead{font-weight:bold;margin:.8em 0 .2em}.item{white-space:pre-line;border-left:3px solid "
    "#1f6f61;padding-left:.7em}"
    "table{border-collapse:collapse;width:100%;font-size:.9em;margin:.6em 0}"
    "td,th{border-bottom:1px solid #dcddda;padding:.25em .4em;text-align:right}"
    "td{white-space:nowrap}td:first-child,th:first-child,td.why{text-align:left;white-space:normal}td.why{color:#"
    "5c615e}"
    ".box{border:1px solid #5c615e;padding:.6em .8em;margin:.8em 0}.box b{display:block}.box p{margin:.3em 0}"
    ".charts{display:flex;flex-wrap:wrap;align-items:flex-start;gap:1em;margin:1.2em 0;overflow-x:auto}"
    ".charts svg{flex:1 1 20em;min-width:20em;height:auto}"
    "@media print{section{break-after:page}}";

QString escaped(const QString& text) {
  return text.toHtmlEscaped();
}

/// A page has room below a chart, a picture in a page has not: the tails of its last letters.
constexpr double kBelowChart_pt = 3.0;

QString picture(const Chart& chart, double width) {
  const ChartStyle style = paperStyle(1.0);
  const double height = std::ceil(chartHeight(chart, width, style)) + kBelowChart_pt;
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(72);
    generator.setTitle(std::visit([](const auto& one) { return one.title; }, chart));
    generator.setSize(QSize(static_cast<int>(width), static_cast<int>(height)));
    generator.setViewBox(QRectF(0.0, 0.0, width, height));
    QPainter painter(&generator);
    drawChart(painter, QRectF(0.0, 0.0, width, height), chart, style);
  }
  QString svg = QString::fromUtf8(buffer.data());
  svg.remove(0, std::max<qsizetype>(0, svg.indexOf(QLatin1String("<svg"))));
  const QString title = std::visit([](const auto& one) { return one.title; }, chart);
  svg.replace(svg.indexOf(QLatin1String("<svg")), 4,
              QStringLiteral("<svg role=\"img\" aria-label=\"%1\"").arg(escaped(title)));
  return svg;
}

QString html(const ReportText& text) {
  const QString words = escaped(text.words);
  switch (text.kind) {
    case TextKind::Title:
      return QStringLiteral("<h1 dir=\"auto\">%1</h1>\n").arg(words);
    case TextKind::Subtitle:
      return QStringLiteral("<p class=\"sub\">%1</p>\n").arg(words);
    case TextKind::Heading:
      return QStringLiteral("<h2>%1</h2>\n").arg(words);
    case TextKind::Lead:
      return QStringLiteral("<p class=\"lead\">%1</p>\n").arg(words);
    case TextKind::Paragraph:
      return QStringLiteral("<p>%1</p>\n").arg(words);
    case TextKind::Item:
      return QStringLiteral("<p class=\"item\">%1</p>\n").arg(words);
    case TextKind::Small:
      return QStringLiteral("<p class=\"small\">%1</p>\n").arg(words);
  }
  return {};
}

QString html(const ReportCharts& row) {
  QString all = QStringLiteral("<div class=\"charts\">\n");
  const double width = kWidth_pt / static_cast<double>(std::max<std::size_t>(1, row.charts.size()));
  for (const Chart& chart : row.charts)
    all += picture(chart, width);
  return all + QStringLiteral("</div>\n");
}

QString html(const ReportTable& table) {
  QString all = QStringLiteral("<table>\n<tr>");
  for (const QString& cell : table.header)
    all += QStringLiteral("<th>%1</th>").arg(escaped(cell));
  all += QStringLiteral("</tr>\n");
  for (const QStringList& row : table.rows) {
    const bool reason =
        row.size() > 2 && std::all_of(row.begin() + 2, row.end(), [](const QString& cell) { return cell.isEmpty(); });
    all += QStringLiteral("<tr><td>%1</td>").arg(escaped(row.value(0)));
    if (reason) {
      all += QStringLiteral("<td class=\"why\" colspan=\"%1\">%2</td>").arg(row.size() - 1).arg(escaped(row[1]));
    } else {
      for (qsizetype i = 1; i < row.size(); ++i)
        all += QStringLiteral("<td>%1</td>").arg(escaped(row[i]));
    }
    all += QStringLiteral("</tr>\n");
  }
  return all + QStringLiteral("</table>\n");
}

QString html(const ReportBox& box) {
  QString all = QStringLiteral("<div class=\"box\"><b>%1</b>\n").arg(escaped(box.heading));
  for (const QString& line : box.lines)
    all += QStringLiteral("<p>%1</p>\n").arg(escaped(line));
  for (int i = 0; i < box.blankLines; ++i)
    all += QStringLiteral("<p>&nbsp;</p>\n");
  return all + QStringLiteral("</div>\n");
}

}  // namespace

QString reportHtml(const Report& report) {
  QString all = QStringLiteral(
                    "<!DOCTYPE html>\n<html lang=\"%1\">\n<head>\n<meta charset=\"utf-8\">\n"
                    "<meta name=\"author\" content=\"Ferrule\">\n<meta name=\"generator\" content=\"Ferrule\">\n"
                    "<meta name=\"viewport\" content=\"width=device-width\">\n<title>%2</title>\n"
                    "<style>%3</style>\n</head>\n<body>\n")
                    .arg(report.locale.bcp47Name(), escaped(report.title), QString::fromLatin1(kStyle));
  for (const ReportPage& page : report.pages) {
    all += QStringLiteral("<section>\n");
    for (const ReportBlock& block : page.blocks)
      all += std::visit([](const auto& one) { return html(one); }, block);
    all += QStringLiteral("</section>\n");
  }
  return all + QStringLiteral("<p class=\"small\">%1</p>\n</body>\n</html>\n").arg(escaped(report.foot));
}

Result<void> writeReportHtml(const Report& report, const std::string& path) {
  return writeTextFile(path, reportHtml(report).toStdString());
}

}  // namespace ferrule
