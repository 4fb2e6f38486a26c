// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/print_sheets.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDateTime>
#include <QFont>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <algorithm>
#include <cmath>
#include <functional>

#include "app/report/pdf_structure.h"
#include "core/base/text_file.h"
#include "core/geometry/units.h"
#include "core/vision/printed_pattern.h"

namespace ferrule {

namespace {

struct PrintSheets {
  Q_DECLARE_TR_FUNCTIONS(PrintSheets)
};

/// Lengths on the sheet are millimetres; this many dots make a length exact to a hundredth of one.
constexpr int kDotsPerInch = 2400;
constexpr double kMargin_mm = 7.0;  ///< that most printers cannot print on
constexpr double kRulerRoom_mm = 10.0;
constexpr double kWords_mm = 5.0;
/// A font is laid out at this many units and then scaled to millimetres.
constexpr int kFontUnits = 100;
constexpr double kRuler_mm = 1000.0 * kRuler_m;
/// White around a tag, which its finder needs: one module of six.
constexpr double kRim = 1.0 / 6.0;

/// Draws in millimetres from the sheet's top left corner.
class Sheet {
 public:
  Sheet(QPdfWriter& writer, QPainter& painter) : painter_(painter) {
    const double dots_per_mm = kDotsPerInch / 25.4;
    painter_.setTransform(QTransform::fromScale(dots_per_mm, dots_per_mm));
    size_mm_ = writer.pageLayout().fullRect(QPageLayout::Millimeter).size();
  }

  [[nodiscard]] QSizeF size_mm() const { return size_mm_; }

  /// All in one path, so that no renderer leaves hairlines between neighbours.
  void fill(const std::vector<PrintedRectangle>& dark, QPointF at_mm) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (const PrintedRectangle& r : dark) {
      path.addRect(at_mm.x() + millimetresFromMetres(r.x_m), at_mm.y() + millimetresFromMetres(r.y_m),
                   millimetresFromMetres(r.width_m), millimetresFromMetres(r.height_m));
    }
    painter_.fillPath(path, Qt::black);
  }

  /// Smaller than asked for where it would run into the right margin.
  void words(const QString& text, QPointF at_mm, double height_mm, const QColor& ink = Qt::black) {
    painter_.save();
    QFont font = painter_.font();
    font.setPixelSize(kFontUnits);
    painter_.setFont(font);
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    const double room_mm = size_mm_.width() - kMargin_mm - at_mm.x();
    const double scale = std::min(height_mm / kFontUnits, room_mm / std::max(width, 1.0));
    painter_.translate(at_mm);
    painter_.scale(scale, scale);
    painter_.setPen(ink);
    painter_.drawText(QPointF(0.0, 0.0), text);
    painter_.restore();
  }

  /// A line of 100 mm with a stroke at every 10: its ends are the middles of the outer strokes.
  void ruler(QPointF from_mm, QPointF way) {
    painter_.setPen(QPen(Qt::black, 0.15));
    const QPointF across(-way.y(), way.x());
    painter_.drawLine(from_mm, from_mm + kRuler_mm * way);
    for (int tick = 0; tick <= 10; ++tick) {
      const QPointF at = from_mm + tick * 10.0 * way;
      const double half_mm = tick % 10 == 0 ? 2.5 : tick % 5 == 0 ? 1.8 : 1.2;
      painter_.drawLine(at - half_mm * across, at + half_mm * across);
    }
  }

  /// Both lines and what to do with them, in the margins to the left and below.
  void rulers() {
    ruler({kMargin_mm + 0.5 * kRulerRoom_mm, kMargin_mm + kRulerRoom_mm}, {0.0, 1.0});
    const double y_mm = size_mm_.height() - kMargin_mm - kWords_mm - 3.0;
    ruler({kMargin_mm + kRulerRoom_mm, y_mm}, {1.0, 0.0});
    words(PrintSheets::tr(
              "Print at 100\u00a0%, not fitted to the page. Both lines must measure 100 mm with a steel rule; if "
              "not, tell the program what they measure."),
          {kMargin_mm + kRulerRoom_mm, size_mm_.height() - kMargin_mm}, 3.0);
  }

 private:
  QPainter& painter_;
  QSizeF size_mm_;
};

Result<void> written(const QString& title, const std::string& path, QPageSize::PageSizeId paper, bool lies,
                     const std::function<void(QPdfWriter&, QPainter&)>& draw) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(kDotsPerInch);
    writer.setPageSize(QPageSize(paper));
    writer.setPageOrientation(lies ? QPageLayout::Landscape : QPageLayout::Portrait);
    writer.setPageMargins(QMarginsF());
    writer.setTitle(title);
    QPainter painter(&writer);
    draw(writer, painter);
  }
  const auto pdf = withInformation(buffer.data(), {title, QStringLiteral("Ferrule"), QStringLiteral("Ferrule"),
                                                   QString(), QDateTime::currentDateTimeUtc()});
  if (!pdf) return failure(ErrorCode::FileNotWritable, path, pdf.error().detail);
  return writeTextFile(path, std::string_view(pdf->constData(), static_cast<std::size_t>(pdf->size())));
}

/// What is left of a sheet beside the margins and the lines.
QSizeF roomOn(QPageSize::PageSizeId paper, bool lies) {
  QSizeF sheet_mm = QPageSize(paper).size(QPageSize::Millimeter);
  if (lies) sheet_mm.transpose();
  return {sheet_mm.width() - 2.0 * kMargin_mm - kRulerRoom_mm,
          sheet_mm.height() - 2.0 * kMargin_mm - kRulerRoom_mm - kWords_mm};
}

}  // namespace

Result<void> writeBoardSheet(const Board& board, QPageSize::PageSizeId paper, const std::string& path) {
  const auto dark = printedBoard(board);
  if (!dark) return tl::make_unexpected(dark.error());
  const PrintedSize size = printedSize(board);
  const double width_mm = millimetresFromMetres(size.width_m);
  const double height_mm = millimetresFromMetres(size.height_m);
  const bool lies = width_mm > height_mm;
  const QSizeF room_mm = roomOn(paper, lies);
  if (width_mm > room_mm.width() || height_mm > room_mm.height()) {
    return failure(ErrorCode::BoardMalformed, board.text, "paper");
  }
  const QString title = PrintSheets::tr("Calibration board %1").arg(QString::fromStdString(board.text));
  return written(title, path, paper, lies, [&](QPdfWriter& writer, QPainter& painter) {
    Sheet sheet(writer, painter);
    const QPointF at_mm(kMargin_mm + kRulerRoom_mm + 0.5 * (room_mm.width() - width_mm),
                        kMargin_mm + 0.5 * (room_mm.height() - height_mm));
    sheet.fill(*dark, at_mm);
    sheet.rulers();
    sheet.words(QString::fromStdString(board.text),
                {kMargin_mm + kRulerRoom_mm + kRuler_mm + 6.0, sheet.size_mm().height() - kMargin_mm - kWords_mm - 2.0},
                3.0);
  });
}

Result<void> writeTagSheets(const std::string& dictionary, const std::vector<int>& ids, double side_m,
                            QPageSize::PageSizeId paper, const std::string& path) {
  std::vector<std::vector<PrintedRectangle>> tags;
  for (const int id : ids) {
    auto tag = printedTag(dictionary, id, side_m);
    if (!tag) return tl::make_unexpected(tag.error());
    tags.push_back(std::move(*tag));
  }
  const double side_mm = millimetresFromMetres(side_m);
  const double rim_mm = kRim * side_mm;
  const double cell_mm = side_mm + 2.0 * rim_mm;
  const double cellHeight_mm = cell_mm + kWords_mm;
  const QSizeF room_mm = roomOn(paper, false);
  const int columns = static_cast<int>(room_mm.width() / cell_mm);
  const int rows = static_cast<int>(room_mm.height() / cellHeight_mm);
  if (columns < 1 || rows < 1) return failure(ErrorCode::BoardMalformed, dictionary, "paper");
  return written(PrintSheets::tr("Tags for the rails"), path, paper, false, [&](QPdfWriter& writer, QPainter& painter) {
    const int perSheet = columns * rows;
    for (std::size_t i = 0; i < tags.size(); ++i) {
      const int place = static_cast<int>(i) % perSheet;
      if (i > 0 && place == 0) writer.newPage();
      Sheet sheet(writer, painter);
      if (place == 0) sheet.rulers();
      const QPointF cell(kMargin_mm + kRulerRoom_mm + place % columns * cell_mm,
                         kMargin_mm + place / columns * cellHeight_mm);
      sheet.fill(tags[i], cell + QPointF(rim_mm, rim_mm));
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(QColor(170, 170, 170), 0.1, Qt::DashLine));
      painter.drawRect(QRectF(cell, QSizeF(cell_mm, cell_mm)));
      sheet.words(PrintSheets::tr("Tag %1: black side %2 mm; cut along the dashes, top is up")
                      .arg(ids[i])
                      .arg(QLocale().toString(side_mm, 'g', 6)),
                  cell + QPointF(rim_mm, cell_mm + 3.2), std::min(2.6, side_mm / 34.0), QColor(70, 70, 70));
    }
  });
}

}  // namespace ferrule
