// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>

namespace ferrule {

struct PdfInformation {
  QString title;
  QString author;
  QString creator;
  QDateTime created;
};

/// A PDF with this information in place of its own, by an incremental update: the writer of Qt 6.4 names no author. A
/// file that has no plain trailer stays as it is. Source: ISO 32000-1:2008, 7.5.6 and 14.3.3.
[[nodiscard]] QByteArray withInformation(const QByteArray& pdf, const PdfInformation& information);

}  // namespace ferrule
