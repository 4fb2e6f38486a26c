// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_sheet.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <cmath>
#include <vector>

#include "app/report/chart_words.h"

namespace ferrule {

namespace {

constexpr double kChartGap_pt = 16.0;
constexpr double kRow_pt = 14.0;
constexpr double kTableGap_pt = 8.0;
constexpr double kBoxPadding_pt = 7.0;
constexpr double kBlankLine_pt = 20.0;
constexpr double kItemIndent_pt = 10.0;
/// Dots in a point at which axes are laid out for paper.
constexpr double kPaperGrain = 4.0;

struct TextStyle {
  PartKind part;
  double size_pt;
  bool bold;
  double above_pt;
  double below_pt;
};

TextStyle styleOf(TextKind kind) {
  switch (kind) {
    case TextKind::Title:
      return {PartKind::Heading1, 20.0, true, 0.0, 2.0};
    case TextKind::Subtitle:
      return {PartKind::Paragraph, 9.0, false, 0.0, 8.0};
    case TextKind::Heading:
      return {PartKind::Heading2, 12.0, true, 6.0, 4.0};
    case TextKind::Lead:
      return {PartKind::Heading3, 10.0, true, 2.0, 2.0};
    case TextKind::Paragraph:
      return {PartKind::Paragraph, 10.0, false, 0.0, 6.0};
    case TextKind::Item:
      return {PartKind::Paragraph, 10.0, false, 0.0, 5.0};
    case TextKind::Small:
      return {PartKind::Paragraph, 8.0, false, 0.0, 6.0};
  }
  return {PartKind::Paragraph, 10.0, false, 0.0, 6.0};
}

constexpr int kWrap = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

/// Measures, and draws where a painter is given: one piece of code, so that the two cannot disagree.
class Setting {
 public:
  Setting(QPainter* painter, QPointF at, double width, const ChartStyle& style, ReadingOrder* order = nullptr)
      : painter_(painter), at_(at), width_(width), style_(style), order_(order) {}

  double set(const ReportText& text) const {
    const TextStyle how = styleOf(text.kind);
    const double indent = text.kind == TextKind::Item ? pt(kItemIndent_pt) : 0.0;
    const bool quiet = text.kind == TextKind::Small || text.kind == TextKind::Subtitle;
    const QFont font = sizedFont(style_, how.size_pt, how.bold);
    const double height = textHeight(text.words, font, width_ - indent);
    if (painter_ != nullptr) {
      if (indent > 0.0) {
        const Part bar(order_, PartKind::Decoration);
        painter_->setPen(Qt::NoPen);
        painter_->setBrush(style_.inks.accent);
        painter_->drawRect(QRectF(at_.x(), at_.y() + pt(how.above_pt) + pt(2.0), pt(2.5), height - pt(4.0)));
      }
      const Part part(order_, how.part, text.words);
      drawText(QRectF(at_.x() + indent, at_.y() + pt(how.above_pt), width_ - indent, height), text.words, font,
               quiet ? style_.inks.quiet : style_.inks.text);
    }
    return pt(how.above_pt) + height + pt(how.below_pt);
  }

  double set(const ReportCharts& row) const {
    const double count = static_cast<double>(std::max<std::size_t>(1, row.charts.size()));
    const double each = (width_ - pt(kChartGap_pt) * (count - 1.0)) / count;
    double height = 0.0;
    for (const Chart& chart : row.charts)
      height = std::max(height, chartHeight(chart, each, style_));
    double x = at_.x();
    for (const Chart& chart : row.charts) {
      if (painter_ != nullptr) {
        const Part part(order_, PartKind::Figure, spokenChart(chart));
        drawChart(*painter_, QRectF(x, at_.y(), each, chartHeight(chart, each, style_)), chart, style_);
      }
      x += each + pt(kChartGap_pt);
    }
    return height + pt(kTableGap_pt);
  }

  double set(const ReportTable& table) const {
    const std::size_t columns = static_cast<std::size_t>(std::max<qsizetype>(1, table.header.size()));
    const QFont font = sizedFont(style_, 8.5);
    const QFont bold = sizedFont(style_, 8.5, true);
    // Three columns of numbers need room for their headings in every language.
    const double first = columns > 3 ? 0.40 * width_ : columns > 1 ? 0.46 * width_ : width_;
    const double each = columns > 1 ? (width_ - first) / static_cast<double>(columns - 1) : 0.0;
    double y = at_.y();
    std::vector<double> ends;  // of the rows
    const auto rules = [&] {
      if (painter_ == nullptr) return;
      const Part drawn(order_, PartKind::Decoration);
      painter_->setPen(QPen(style_.inks.line, pt(0.5)));
      for (const double end : ends)
        painter_->drawLine(QPointF(at_.x(), end), QPointF(at_.x() + width_, end));
    };
    const auto line = [&](const QStringList& cells, const QFont& face, PartKind kind) {
      // A row of a name and a reason alone lets the reason run over the empty cells.
      const bool reason =
          cells.size() > 2 && !cells[1].isEmpty() &&
          std::all_of(cells.begin() + 2, cells.end(), [](const QString& cell) { return cell.isEmpty(); });
      const double room = reason ? width_ - first - pt(4) : 0.0;
      const double height = std::max({pt(kRow_pt), textHeight(cells.value(0), face, first - pt(4)) + pt(3),
                                      reason ? textHeight(cells[1], face, room) + pt(3) : 0.0});
      if (painter_ != nullptr) {
        const Part row(order_, PartKind::Row);
        {
          const Part cell(order_, kind, cells.value(0));
          drawText(QRectF(at_.x(), y + pt(1.5), first - pt(4), height), cells.value(0), face, style_.inks.text);
        }
        for (qsizetype c = 1; c < cells.size(); ++c) {
          const double x = at_.x() + first + each * static_cast<double>(c - 1);
          const QRectF box(x, y + pt(1.5), reason ? room : each, height);
          const Part cell(order_, kind, cells[c]);
          painter_->setFont(face);
          painter_->setPen(reason ? style_.inks.quiet : style_.inks.text);
          painter_->drawText(box, (reason ? Qt::AlignLeft | Qt::TextWordWrap : Qt::AlignRight) | Qt::AlignTop,
                             cells[c]);
          if (reason) break;
        }
      }
      y += height;
      ends.push_back(y);
    };
    {
      const Part whole(order_, PartKind::Table);
      line(table.header, bold, PartKind::HeaderCell);
      for (const QStringList& row : table.rows)
        line(row, font, PartKind::Cell);
    }
    rules();
    return y - at_.y() + pt(kTableGap_pt);
  }

  double set(const ReportBox& box) const {
    const QFont font = sizedFont(style_, 9.0);
    const QFont bold = sizedFont(style_, 9.0, true);
    const double inner = width_ - 2.0 * pt(kBoxPadding_pt);
    double y = at_.y() + pt(kBoxPadding_pt);
    const auto line = [&](const QString& words, const QFont& face, PartKind kind) {
      const double height = textHeight(words, face, inner);
      if (painter_ != nullptr) {
        const Part part(order_, kind, words);
        drawText(QRectF(at_.x() + pt(kBoxPadding_pt), y, inner, height), words, face, style_.inks.text);
      }
      y += height + pt(2.0);
    };
    {
      const Part whole(order_, PartKind::Section);
      line(box.heading, bold, PartKind::Heading3);
      for (const QString& words : box.lines)
        line(words, font, PartKind::Paragraph);
    }
    const Part frame(order_, PartKind::Decoration);
    for (int i = 0; i < box.blankLines; ++i) {
      y += pt(kBlankLine_pt);
      if (painter_ == nullptr) continue;
      painter_->setPen(QPen(style_.inks.quiet, pt(0.5)));
      painter_->drawLine(QPointF(at_.x() + pt(kBoxPadding_pt), y), QPointF(at_.x() + pt(kBoxPadding_pt) + inner, y));
    }
    y += pt(kBoxPadding_pt);
    if (painter_ != nullptr) {
      painter_->setPen(QPen(style_.inks.quiet, pt(0.7)));
      painter_->setBrush(Qt::NoBrush);
      painter_->drawRect(QRectF(at_.x(), at_.y(), width_, y - at_.y()));
    }
    return y - at_.y() + pt(kTableGap_pt);
  }

 private:
  [[nodiscard]] double pt(double points) const { return points * style_.unit; }

  static double textHeight(const QString& words, const QFont& font, double width) {
    return QFontMetricsF(font).boundingRect(QRectF(0.0, 0.0, width, 1e6), kWrap, words).height();
  }

  /// Line by line, as the painter breaks them, but with the blank at the end of a broken line: who reads the page
  /// through another program hears two words there, not one.
  void drawText(const QRectF& box, const QString& words, const QFont& font, const QColor& colour) const {
    painter_->setFont(font);
    painter_->setPen(colour);
    const QFontMetricsF metrics(font);
    QString text = words;
    text.replace(QLatin1Char('\n'), QChar::LineSeparator);
    QTextLayout layout(text, font, painter_->device());
    QTextOption option;
    option.setWrapMode(QTextOption::WordWrap);
    option.setTextDirection(Qt::LeftToRight);  // of the report's languages, whatever a name's is
    layout.setTextOption(option);
    layout.beginLayout();
    double height = -metrics.leading();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
      line.setLineWidth(box.width());
      height = std::ceil(height + metrics.leading());
      line.setPosition({0.0, height});
      height += line.height();
    }
    layout.endLayout();
    for (int i = 0; i < layout.lineCount(); ++i) {
      const QTextLine line = layout.lineAt(i);
      line.draw(painter_, box.topLeft());
      const bool broken = i + 1 < layout.lineCount() && text.at(line.textStart() + line.textLength() - 1).isSpace();
      if (!broken) continue;
      painter_->drawText(box.topLeft() + QPointF(line.naturalTextRect().right(), line.y() + line.ascent()),
                         QStringLiteral(" "));
    }
  }

  QPainter* painter_;
  QPointF at_;
  double width_;
  const ChartStyle& style_;
  ReadingOrder* order_;  ///< null where nothing is drawn
};

}  // namespace

ChartStyle paperStyle(double unit) {
  ChartStyle style;
  style.unit = unit;
  style.grain = kPaperGrain;
  style.font.setFamilies({QStringLiteral("DejaVu Sans")});
  style.font.setHintingPreference(QFont::PreferNoHinting);
  style.inks = inksFor(lightPalette());
  return style;
}

double blockHeight(const ReportBlock& block, double width, const ChartStyle& style) {
  return std::visit([&](const auto& one) { return Setting(nullptr, {}, width, style).set(one); }, block);
}

double inkHeight(const ReportBlock& block, double width, const ChartStyle& style) {
  const double height = blockHeight(block, width, style);
  return std::holds_alternative<ReportText>(block) ? height : height - kTableGap_pt * style.unit;
}

void drawBlock(QPainter& painter, QPointF at, const ReportBlock& block, double width, const ChartStyle& style,
               ReadingOrder* order) {
  std::visit([&](const auto& one) { Setting(&painter, at, width, style, order).set(one); }, block);
}

bool holdsNext(const ReportBlock& block) {
  const auto* text = std::get_if<ReportText>(&block);
  return text != nullptr && (text->kind == TextKind::Heading || text->kind == TextKind::Lead);
}

}  // namespace ferrule
