// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/lines_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/window/inks.h"
#include "app/words/trade_words.h"
#include "core/table/cushion.h"

namespace ferrule {

namespace {

constexpr double kHandleRadius_px = 5.0;
constexpr double kGrab_px = 14.0;
constexpr double kStep_px = 0.25;  ///< of the picture, by an arrow key
constexpr double kLargeStep_px = 4.0;
constexpr double kLoupe_px = 190.0;
constexpr double kMagnified = 8.0;
/// Where a guess begins: most tables leave so much of the picture free around them.
constexpr double kFree = 0.12;
constexpr double kEndLeftOut_m = 0.06;

/// Where the picture would have a place if the table filled it, the head at that side.
ImagePoint guessOf(TablePoint place, const Table& table, PictureSide head, QSize size) {
  const double along = 0.5 + place.x / table.length_m;  // 0 at the head
  const double across = 0.5 - place.y / table.width_m;  // 0 at the left, seen from the head
  double u = along;
  double v = across;
  switch (head) {
    case PictureSide::Left:
      break;
    case PictureSide::Right:
      u = 1.0 - along;
      v = 1.0 - across;
      break;
    case PictureSide::Top:
      u = 1.0 - across;
      v = along;
      break;
    case PictureSide::Bottom:
      u = across;
      v = 1.0 - along;
      break;
  }
  const double room = 1.0 - 2.0 * kFree;
  return {(kFree + room * u) * size.width(), (kFree + room * v) * size.height()};
}

/// So many of the places, spread over them all.
std::vector<ImagePoint> spread(const std::vector<ImagePoint>& places, int count) {
  std::vector<ImagePoint> result;
  for (int i = 0; i < count; ++i) {
    const double at = static_cast<double>(i) * static_cast<double>(places.size() - 1) / (count - 1);
    result.push_back(places[static_cast<std::size_t>(std::lround(at))]);
  }
  return result;
}

}  // namespace

LinesView::LinesView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("linesView"));
  setAccessibleName(tr("The cushions' noses in the film's picture"));
  setFocusPolicy(Qt::StrongFocus);
  setMinimumHeight(420);
  setCursor(Qt::CrossCursor);
}

void LinesView::setLines(const QImage& picture, const std::vector<LineTrace>& lines, const Table& table,
                         PictureSide head) {
  picture_ = picture;
  noses_.clear();
  guessed_.clear();
  for (const Cushion& cushion : cushions(table)) {
    LineTrace nose{LineTrace::Kind::Nose, cushion.name, {}, kHandPlaced_px};
    const auto found = std::ranges::find_if(lines, [&](const LineTrace& line) {
      return line.kind == LineTrace::Kind::Nose && line.cushion == cushion.name && line.places.size() >= 2;
    });
    if (found != lines.end()) {
      nose.places = spread(found->places, kHandles);
    } else {
      const TableVector whole = cushion.nose.end - cushion.nose.start;
      const TableVector along = unit(whole);
      for (int i = 0; i < kHandles; ++i) {
        const double at_m = kEndLeftOut_m + (length(whole) - 2.0 * kEndLeftOut_m) * i / (kHandles - 1);
        nose.places.push_back(guessOf(cushion.nose.start + at_m * along, table, head, picture.size()));
      }
    }
    guessed_.push_back(found == lines.end());
    noses_.push_back(std::move(nose));
  }
  nose_ = std::min(nose_, noses_.size() - 1);
  update();
}

void LinesView::clear() {
  picture_ = QImage();
  noses_.clear();
  guessed_.clear();
  nose_ = handle_ = 0;
  update();
}

int LinesView::guesses() const {
  return static_cast<int>(std::ranges::count(guessed_, true));
}

QString LinesView::handleWords() const {
  if (isEmpty()) return {};
  return tr("%1, place %2 of %3", "a cushion")
      .arg(atStart(cushionWords(noses_[nose_].cushion)))
      .arg(handle_ + 1)
      .arg(kHandles);
}

double LinesView::scale() const {
  if (picture_.isNull()) return 1.0;
  return std::min(1.0 * width() / picture_.width(), 1.0 * height() / picture_.height());
}

QPointF LinesView::screenFromImage(ImagePoint pixel) const {
  // Whole numbers are the middles of pixels.
  return {(pixel.x + 0.5) * scale(), (pixel.y + 0.5) * scale()};
}

ImagePoint LinesView::imageFromScreen(QPointF place) const {
  return {std::clamp(place.x() / scale() - 0.5, 0.0, picture_.width() - 1.0),
          std::clamp(place.y() / scale() - 0.5, 0.0, picture_.height() - 1.0)};
}

ImagePoint& LinesView::chosen() {
  return noses_[nose_].places[handle_];
}

void LinesView::choose(std::size_t nose, std::size_t handle) {
  nose_ = nose;
  handle_ = handle;
  setAccessibleDescription(handleWords());
  update();
  emit handleChosen();
}

void LinesView::mousePressEvent(QMouseEvent* event) {
  if (isEmpty() || event->button() != Qt::LeftButton) return;
  double nearest = kGrab_px;
  for (std::size_t nose = 0; nose < noses_.size(); ++nose) {
    for (std::size_t handle = 0; handle < noses_[nose].places.size(); ++handle) {
      const QPointF apart = screenFromImage(noses_[nose].places[handle]) - event->position();
      const double px = std::hypot(apart.x(), apart.y());
      if (px >= nearest) continue;
      nearest = px;
      dragging_ = true;
      moved_ = false;
      choose(nose, handle);
    }
  }
}

void LinesView::mouseMoveEvent(QMouseEvent* event) {
  if (!dragging_) return;
  chosen() = imageFromScreen(event->position());
  moved_ = true;
  update();
}

void LinesView::mouseReleaseEvent(QMouseEvent*) {
  if (std::exchange(dragging_, false) && moved_) emit placed(noses_[nose_]);
  update();
}

void LinesView::keyPressEvent(QKeyEvent* event) {
  if (isEmpty()) return QWidget::keyPressEvent(event);
  const std::size_t all = noses_.size() * kHandles;
  const std::size_t at = nose_ * kHandles + handle_;
  const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? kLargeStep_px : kStep_px;
  ImageVector by;
  switch (event->key()) {
    case Qt::Key_PageDown:
      return choose((at + 1) % all / kHandles, (at + 1) % kHandles);
    case Qt::Key_PageUp:
      return choose((at + all - 1) % all / kHandles, (at + all - 1) % kHandles);
    case Qt::Key_Left:
      by = {-step, 0.0};
      break;
    case Qt::Key_Right:
      by = {step, 0.0};
      break;
    case Qt::Key_Up:
      by = {0.0, -step};
      break;
    case Qt::Key_Down:
      by = {0.0, step};
      break;
    default:
      return QWidget::keyPressEvent(event);
  }
  chosen() = imageFromScreen(screenFromImage(chosen() + by));
  update();
  emit placed(noses_[nose_]);
}

void LinesView::paintLoupe(QPainter& painter) const {
  const ImagePoint at = noses_[nose_].places[handle_];
  const QPointF on = screenFromImage(at);
  const double shownWidth = picture_.width() * scale();
  // In the corner that is farther from the handle.
  const double left = on.x() < 0.5 * shownWidth ? shownWidth - kLoupe_px - 8.0 : 8.0;
  const QRectF frame(left, 8.0, kLoupe_px, kLoupe_px);
  const double span = kLoupe_px / kMagnified;
  painter.save();
  painter.setClipRect(frame);
  painter.fillRect(frame, Qt::black);
  painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
  painter.drawImage(frame, picture_, QRectF(at.x + 0.5 - 0.5 * span, at.y + 0.5 - 0.5 * span, span, span));
  const auto inLoupe = [&](ImagePoint p) { return frame.center() + QPointF(p.x - at.x, p.y - at.y) * kMagnified; };
  painter.setRenderHint(QPainter::Antialiasing);
  QPolygonF line;
  for (const ImagePoint& place : noses_[nose_].places)
    line << inLoupe(place);
  painter.setPen(QPen(Qt::black, 3.0));
  painter.drawPolyline(line);
  painter.setPen(QPen(Qt::white, 1.2));
  painter.drawPolyline(line);
  const QPointF middle = frame.center();
  painter.drawLine(middle - QPointF(14.0, 0.0), middle + QPointF(14.0, 0.0));
  painter.drawLine(middle - QPointF(0.0, 14.0), middle + QPointF(0.0, 14.0));
  painter.restore();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(Qt::black, 3.0));
  painter.drawRect(frame);
  painter.setPen(QPen(Qt::white, 1.0));
  painter.drawRect(frame);
}

void LinesView::paintEvent(QPaintEvent*) {
  if (isEmpty()) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.drawImage(QRectF(0.0, 0.0, picture_.width() * scale(), picture_.height() * scale()), picture_);
  const Inks inks = inksFor(palette());
  for (std::size_t nose = 0; nose < noses_.size(); ++nose) {
    QPolygonF line;
    for (const ImagePoint& place : noses_[nose].places)
      line << screenFromImage(place);
    // A guess is dashed: the picture did not show it.
    const Qt::PenStyle style = guessed_[nose] ? Qt::DashLine : Qt::SolidLine;
    painter.setPen(QPen(Qt::black, 3.5));
    painter.drawPolyline(line);
    painter.setPen(QPen(guessed_[nose] ? inks.suggested : inks.taken, 1.6, style));
    painter.drawPolyline(line);
    for (std::size_t handle = 0; handle < noses_[nose].places.size(); ++handle) {
      const bool lit = nose == nose_ && handle == handle_;
      painter.setPen(QPen(Qt::black, 1.5));
      painter.setBrush(lit ? Qt::white : (guessed_[nose] ? inks.suggested : inks.taken));
      const double radius = lit ? kHandleRadius_px + 2.0 : kHandleRadius_px;
      painter.drawEllipse(line[static_cast<int>(handle)], radius, radius);
    }
  }
  if (dragging_ || hasFocus()) paintLoupe(painter);
}

}  // namespace ferrule
