// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

#include "app/report/chart.h"

/// A report as a value: pages of blocks, which paper, HTML and a preview share.
namespace ferrule {

enum class TextKind { Title, Subtitle, Heading, Lead, Paragraph, Item, Small };

struct ReportText {
  TextKind kind = TextKind::Paragraph;
  QString words;
};

/// One or two charts side by side.
struct ReportCharts {
  std::vector<Chart> charts;
};

/// The first column is left-aligned, the others right-aligned.
struct ReportTable {
  QStringList header;
  std::vector<QStringList> rows;
};

/// A framed box. blankLines: ruled lines to write on.
struct ReportBox {
  QString heading;
  QStringList lines;
  int blankLines = 0;
};

using ReportBlock = std::variant<ReportText, ReportCharts, ReportTable, ReportBox>;

/// Begins on a sheet of its own; goes on to the next one where it is too long.
struct ReportPage {
  std::vector<ReportBlock> blocks;
};

struct Report {
  QString title;
  QString foot;  ///< at the foot of every sheet, beside the page's number
  QLocale locale;
  std::vector<ReportPage> pages;
};

}  // namespace ferrule
