// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/lines_view.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "app/setup/loupe.h"
#include "app/setup/mark_words.h"
#include "app/setup/picture_guess.h"
#include "app/window/inks.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/table/cushion.h"

namespace ferrule {

namespace {

constexpr double kHandleRadius_px = 5.0;
constexpr double kSightRadius_px = 6.0;
constexpr double kPocketRadius_px = 9.0;
constexpr double kChosenLarger_px = 2.0;
constexpr double kGrab_px = 14.0;
/// How many times the loupe enlarges: an edge to a quarter of a pixel; an opening so that all of its rim shows.
constexpr double kEdge = 8.0;
constexpr double kWholeOpening = 2.0;
constexpr double kStep_px = 0.25;  ///< of the picture, by an arrow key
constexpr double kLargeStep_px = 4.0;
constexpr double kEndLeftOut_m = 0.06;

/// So many of the places, spread over them all.
std::vector<ImagePoint> spread(const std::vector<ImagePoint>& places, int count) {
  std::vector<ImagePoint> result;
  for (int i = 0; i < count; ++i) {
    const double at = static_cast<double>(i) * static_cast<double>(places.size() - 1) / (count - 1);
    result.push_back(places[static_cast<std::size_t>(std::lround(at))]);
  }
  return result;
}

/// A diamond for a sight, a ring for a pocket.
void paintShape(QPainter& painter, MarkKind kind, QPointF at, double larger_px) {
  if (kind == MarkKind::Pocket) {
    const double radius = kPocketRadius_px + larger_px;
    painter.drawEllipse(at, radius, radius);
    return;
  }
  const double reach = kSightRadius_px + larger_px;
  painter.drawPolygon(QPolygonF{at + QPointF(reach, 0.0), at + QPointF(0.0, reach), at - QPointF(reach, 0.0),
                                at - QPointF(0.0, reach)});
}

}  // namespace

LinesView::LinesView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("linesView"));
  setAccessibleName(tr("The cushions' noses, the sights and the pockets in the film's picture"));
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
        nose.places.push_back(guessInPicture(cushion.nose.start + at_m * along, table, head, picture.size()));
      }
    }
    guessed_.push_back(found == lines.end());
    noses_.push_back(std::move(nose));
  }
  update();
}

void LinesView::setMarks(std::vector<ShownMark> marks) {
  // What is being dragged stays under the pointer while an answer about it comes in.
  if (dragging_ && !isNose(handle_) && marks.size() == marks_.size()) {
    const std::size_t at = handle_ - noses_.size() * kHandles;
    marks[at].place = marks_[at].place;
  }
  marks_ = std::move(marks);
  handle_ = std::min(handle_, handles() == 0 ? 0 : handles() - 1);
  update();
}

void LinesView::clear() {
  picture_ = QImage();
  noses_.clear();
  guessed_.clear();
  marks_.clear();
  handle_ = 0;
  dragging_ = false;
  update();
}

int LinesView::guesses() const {
  return static_cast<int>(std::ranges::count(guessed_, true));
}

QString LinesView::handleWords() const {
  if (isEmpty()) return {};
  if (isNose(handle_)) {
    return tr("%1, place %2 of %3", "a cushion")
        .arg(atStart(cushionWords(noses_[handle_ / kHandles].cushion)))
        .arg(handle_ % kHandles + 1)
        .arg(kHandles);
  }
  const ShownMark& mark = *chosenMark();
  const QString name = atStart(markWords(mark.mark));
  switch (mark.state) {
    case MarkState::Found:
      return toldOf(name, tr("found", "a sight or pocket"));
    case MarkState::ByHand:
      return toldOf(name, tr("placed by hand", "a sight or pocket"));
    case MarkState::NotThere:
      return toldOf(name, tr("not there", "a sight or pocket"));
    case MarkState::Missing:
      return toldOf(name, tr("not found", "a sight or pocket"));
  }
  return name;
}

std::size_t LinesView::chosenThing() const {
  return isNose(handle_) ? handle_ / kHandles : noses_.size() + handle_ - noses_.size() * kHandles;
}

void LinesView::chooseThing(std::size_t thing) {
  if (isEmpty() || thing >= noses_.size() + marks_.size()) return;
  choose(thing < noses_.size() ? thing * kHandles + kHandles / 2 : noses_.size() * kHandles + thing - noses_.size());
}

const ShownMark* LinesView::chosenMark() const {
  if (isEmpty() || isNose(handle_)) return nullptr;
  return &marks_[handle_ - noses_.size() * kHandles];
}

void LinesView::sayNotThere() {
  const ShownMark* mark = chosenMark();
  if (mark == nullptr || mark->state == MarkState::NotThere) return;
  emit marked({mark->mark, false, mark->place});
}

void LinesView::putHere() {
  const ShownMark* mark = chosenMark();
  if (mark == nullptr || mark->state == MarkState::Found || mark->state == MarkState::ByHand) return;
  emit marked({mark->mark, true, mark->place});
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

ImagePoint& LinesView::placeOf(std::size_t handle) {
  if (isNose(handle)) return noses_[handle / kHandles].places[handle % kHandles];
  return marks_[handle - noses_.size() * kHandles].place;
}

ImagePoint LinesView::placeOf(std::size_t handle) const {
  return isNose(handle) ? noses_[handle / kHandles].places[handle % kHandles]
                        : marks_[handle - noses_.size() * kHandles].place;
}

void LinesView::choose(std::size_t handle) {
  handle_ = handle;
  setAccessibleDescription(handleWords());
  QAccessibleEvent told(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&told);
  update();
  emit handleChosen();
}

void LinesView::tell() {
  if (isNose(handle_)) {
    emit placed(noses_[handle_ / kHandles]);
  } else {
    emit marked({chosenMark()->mark, true, chosenMark()->place});
  }
}

void LinesView::mousePressEvent(QMouseEvent* event) {
  if (isEmpty() || event->button() != Qt::LeftButton) return;
  double nearest = kGrab_px;
  std::size_t chosen = handles();
  for (std::size_t handle = 0; handle < handles(); ++handle) {
    const QPointF apart = screenFromImage(placeOf(handle)) - event->position();
    const double px = std::hypot(apart.x(), apart.y());
    if (px >= nearest) continue;
    nearest = px;
    chosen = handle;
  }
  if (chosen == handles()) return;
  dragging_ = true;
  moved_ = false;
  choose(chosen);
}

void LinesView::mouseMoveEvent(QMouseEvent* event) {
  if (!dragging_) return;
  placeOf(handle_) = imageFromScreen(event->position());
  moved_ = true;
  update();
}

void LinesView::mouseReleaseEvent(QMouseEvent*) {
  if (std::exchange(dragging_, false) && moved_) tell();
  update();
}

bool LinesView::event(QEvent* event) {
  // The window's keys for stepping through a film are the ones that move a handle here.
  if (event->type() == QEvent::ShortcutOverride && !isEmpty()) {
    constexpr std::array kOurs{Qt::Key_Left,     Qt::Key_Right,  Qt::Key_Up,     Qt::Key_Down,
                               Qt::Key_PageDown, Qt::Key_PageUp, Qt::Key_Delete, Qt::Key_Insert};
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool plain = (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
    if (plain && std::ranges::find(kOurs, key->key()) != kOurs.end()) {
      event->accept();
      return true;
    }
  }
  return QWidget::event(event);
}

void LinesView::keyPressEvent(QKeyEvent* event) {
  if (isEmpty()) return QWidget::keyPressEvent(event);
  const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? kLargeStep_px : kStep_px;
  ImageVector by;
  switch (event->key()) {
    case Qt::Key_PageDown:
      return choose((handle_ + 1) % handles());
    case Qt::Key_PageUp:
      return choose((handle_ + handles() - 1) % handles());
    case Qt::Key_Delete:
      return sayNotThere();
    case Qt::Key_Insert:
      return putHere();
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
  placeOf(handle_) = imageFromScreen(screenFromImage(placeOf(handle_) + by));
  update();
  tell();
}

void LinesView::paintNoses(QPainter& painter) const {
  const Inks inks = inksFor(palette());
  for (std::size_t nose = 0; nose < noses_.size(); ++nose) {
    QPolygonF line;
    for (const ImagePoint& place : noses_[nose].places)
      line << screenFromImage(place);
    // A guess is dashed: the picture did not show it.
    const QColor ink = guessed_[nose] ? inks.suggested : inks.taken;
    painter.setPen(QPen(Qt::black, 3.5));
    painter.drawPolyline(line);
    painter.setPen(QPen(ink, 1.6, guessed_[nose] ? Qt::DashLine : Qt::SolidLine));
    painter.drawPolyline(line);
    for (int handle = 0; handle < kHandles; ++handle) {
      const bool lit = handle_ == nose * kHandles + static_cast<std::size_t>(handle);
      painter.setPen(QPen(Qt::black, 1.5));
      painter.setBrush(lit ? QColor(Qt::white) : ink);
      const double radius = lit ? kHandleRadius_px + kChosenLarger_px : kHandleRadius_px;
      painter.drawEllipse(line[handle], radius, radius);
      painter.setBrush(Qt::NoBrush);
    }
  }
}

void LinesView::paintMarks(QPainter& painter) const {
  const Inks inks = inksFor(palette());
  painter.setBrush(Qt::NoBrush);
  for (std::size_t i = 0; i < marks_.size(); ++i) {
    const ShownMark& mark = marks_[i];
    const bool lit = handle_ == noses_.size() * kHandles + i;
    const bool counts = mark.state == MarkState::Found || mark.state == MarkState::ByHand;
    const double larger_px = lit ? kChosenLarger_px : 0.0;
    const QPointF at = screenFromImage(mark.place);
    painter.setPen(QPen(Qt::black, 4.0));
    paintShape(painter, mark.mark.kind, at, larger_px);
    // What does not count is dashed, and crossed out where a person said so.
    painter.setPen(QPen(lit ? QColor(Qt::white) : (counts ? inks.taken : inks.suggested), lit ? 2.2 : 1.8,
                        counts ? Qt::SolidLine : Qt::DotLine));
    paintShape(painter, mark.mark.kind, at, larger_px);
    if (mark.state == MarkState::ByHand) {
      painter.drawPoint(at);
    } else if (mark.state == MarkState::NotThere) {
      painter.setPen(QPen(painter.pen().color(), 1.8));
      painter.drawLine(at - QPointF(7.0, 7.0), at + QPointF(7.0, 7.0));
      painter.drawLine(at - QPointF(7.0, -7.0), at + QPointF(7.0, -7.0));
    }
  }
}

void LinesView::paintEvent(QPaintEvent*) {
  if (isEmpty()) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.drawImage(QRectF(0.0, 0.0, picture_.width() * scale(), picture_.height() * scale()), picture_);
  paintNoses(painter);
  paintMarks(painter);
  if (!dragging_ && !hasFocus()) return;
  const ImagePoint at = placeOf(handle_);
  const std::vector<ImagePoint> line = isNose(handle_) ? noses_[handle_ / kHandles].places : std::vector<ImagePoint>();
  const ShownMark* mark = chosenMark();
  const bool pocket = mark != nullptr && mark->mark.kind == MarkKind::Pocket;
  paintLoupe(painter, loupeBeside(screenFromImage(at), size()), picture_, at, pocket ? kWholeOpening : kEdge, line);
}

}  // namespace ferrule
