// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/pdf_information.h"

#include <QRegularExpression>

namespace ferrule {

namespace {

/// A text string, UTF-16 with its mark, in hexadecimal.
QByteArray pdfText(const QString& text) {
  QByteArray bytes("\xfe\xff", 2);
  for (const QChar letter : text) {
    bytes += static_cast<char>(letter.unicode() >> 8);
    bytes += static_cast<char>(letter.unicode() & 0xff);
  }
  return '<' + bytes.toHex() + '>';
}

QByteArray numberAfter(const QByteArray& trailer, const char* key) {
  const QRegularExpression pattern(QStringLiteral("/%1\\s+(\\d+)").arg(QLatin1String(key)));
  return pattern.match(QString::fromLatin1(trailer)).captured(1).toLatin1();
}

}  // namespace

QByteArray withInformation(const QByteArray& pdf, const PdfInformation& information) {
  const qsizetype at = pdf.lastIndexOf("trailer");
  const qsizetype startAt = pdf.lastIndexOf("startxref");
  if (at < 0 || startAt < at) return pdf;
  const QByteArray trailer = pdf.mid(at, startAt - at);
  const QByteArray size = numberAfter(trailer, "Size");
  const QByteArray root = numberAfter(trailer, "Root");
  const QByteArray info = numberAfter(trailer, "Info");
  const QByteArray before = pdf.mid(startAt + 9).trimmed().split('\n').first().trimmed();
  if (size.isEmpty() || root.isEmpty() || info.isEmpty() || before.isEmpty()) return pdf;
  QByteArray whole = pdf;
  if (!whole.endsWith('\n')) whole += '\n';
  const QByteArray offset = QByteArray::number(whole.size()).rightJustified(10, '0');
  whole += info + " 0 obj\n<<\n/Title " + pdfText(information.title) + "\n/Author " + pdfText(information.author) +
           "\n/Creator " + pdfText(information.creator) + "\n/Producer " +
           pdfText(QStringLiteral("Qt ") + QLatin1String(qVersion())) +
           "\n/CreationDate (D:" + information.created.toUTC().toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1() +
           "Z)\n>>\nendobj\n";
  const QByteArray table = QByteArray::number(whole.size());
  whole += "xref\n" + info + " 1\n" + offset + " 00000 n \ntrailer\n<<\n/Size " + size + "\n/Info " + info +
           " 0 R\n/Root " + root + " 0 R\n/Prev " + before + "\n>>\nstartxref\n" + table + "\n%%EOF\n";
  return whole;
}

}  // namespace ferrule
