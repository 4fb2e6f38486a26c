// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_press.h"

#include <QPainter>
#include <cmath>
#include <memory>
#include <optional>

#include "app/report/report_sheet.h"

namespace ferrule {

namespace {

constexpr double kPointsPerInch = 72.0;
constexpr double kPointsPerMillimetre = kPointsPerInch / 25.4;
constexpr double kSide_mm = 18.0;
constexpr double kTop_mm = 16.0;
constexpr double kFoot_mm = 18.0;
constexpr double kFootText_pt = 8.0;

/// Puts blocks on sheets.
class Press {
 public:
  Press(const Report& report, QPageSize::PageSizeId paper, const std::function<QPainter&()>& next, ReadingOrder* order)
      : next_(next), order_(order), report_(report), style_(paperStyle(kSheetDotsPerInch / kPointsPerInch)) {
    const double unit = kPointsPerMillimetre * style_.unit;
    left_ = kSide_mm * unit;
    top_ = kTop_mm * unit;
    const QSizeF size = sheetSize(paper);
    width_ = size.width() - 2.0 * left_;
    bottom_ = size.height() - kFoot_mm * unit;
  }

  void print() {
    for (const ReportPage& page : report_.pages) {
      beginSheet();
      const Part section(order_, PartKind::Section);
      print(page);
    }
  }

 private:
  void print(const ReportPage& page) {
    for (std::size_t i = 0; i < page.blocks.size(); ++i) {
      const std::optional<ReportBlock> block = fitting(page.blocks[i]);
      if (!block) continue;
      const double height = blockHeight(*block, width_, style_);
      const bool holds = holdsNext(*block) && i + 1 < page.blocks.size();
      const double needed =
          holds ? height + inkHeight(page.blocks[i + 1], width_, style_) : inkHeight(*block, width_, style_);
      if (y_ > top_ && y_ + needed > bottom_) beginSheet();
      drawBlock(*painter_, {left_, y_}, *block, width_, style_, order_);
      y_ += height;
    }
  }

  /// Lines to write on are worth no sheet of their own: fewer where the rest of the sheet is short, and none where not
  /// one has room.
  [[nodiscard]] std::optional<ReportBlock> fitting(const ReportBlock& block) const {
    const auto* box = std::get_if<ReportBox>(&block);
    if (box == nullptr || !box->lines.isEmpty()) return block;
    ReportBox shorter = *box;
    while (shorter.blankLines > 0 && y_ + inkHeight(shorter, width_, style_) > bottom_)
      --shorter.blankLines;
    return shorter.blankLines > 0 ? std::optional<ReportBlock>(shorter) : std::nullopt;
  }

  void beginSheet() {
    painter_ = &next_();
    ++sheet_;
    y_ = top_;
    const Part decoration(order_, PartKind::Decoration);
    painter_->setFont(sizedFont(style_, kFootText_pt));
    painter_->setPen(style_.inks.quiet);
    const QRectF foot(left_, bottom_ + 4.0 * style_.unit, width_, 14.0 * style_.unit);
    painter_->drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, report_.foot);
    painter_->drawText(foot, Qt::AlignRight | Qt::AlignVCenter, report_.locale.toString(sheet_));
  }

  const std::function<QPainter&()>& next_;
  ReadingOrder* order_;
  QPainter* painter_ = nullptr;
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

QSizeF sheetSize(QPageSize::PageSizeId paper) {
  return QPageSize(paper).sizePixels(kSheetDotsPerInch).toSizeF();
}

void printReport(const Report& report, QPageSize::PageSizeId paper, const std::function<QPainter&()>& next,
                 ReadingOrder* order) {
  Press(report, paper, next, order).print();
}

std::vector<QImage> reportSheets(const Report& report, QPageSize::PageSizeId paper, int width_px) {
  const QSizeF size = sheetSize(paper);
  const double scale = width_px / size.width();
  std::vector<std::unique_ptr<QImage>> sheets;
  std::unique_ptr<QPainter> painter;
  printReport(report, paper, [&]() -> QPainter& {
    painter.reset();  // before its picture is left
    sheets.push_back(
        std::make_unique<QImage>(width_px, static_cast<int>(std::lround(scale * size.height())), QImage::Format_RGB32));
    sheets.back()->fill(Qt::white);
    painter = std::make_unique<QPainter>(sheets.back().get());
    painter->setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    painter->scale(scale, scale);
    return *painter;
  });
  painter.reset();
  std::vector<QImage> pictures;
  for (const auto& sheet : sheets)
    pictures.push_back(*sheet);
  return pictures;
}

}  // namespace ferrule
