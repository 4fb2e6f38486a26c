// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/time_line.h"

#include <QDateTime>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/review/outcome_mark.h"
#include "app/window/spoken_role.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

constexpr double kSide_px = 16.0;
constexpr double kMark_px = 11.0;
constexpr double kBlock_px = 12.0;
constexpr double kLeastBlock_px = 4.0;
constexpr double kLeastSpan_s = 1.0;
constexpr double kZoomStep = 1.3;
constexpr double kWheelNotch = 120.0;
constexpr double kLabelGap_px = 90.0;

// Rows from the top, px: caption and number, marks above, blocks, marks below, times.
constexpr double kCaption_y = 6.0;
constexpr double kAbove_y = 34.0;
constexpr double kBlocks_y = 52.0;
constexpr double kBelow_y = 70.0;
constexpr double kTimes_y = 82.0;
constexpr int kHeight_px = 104;

}  // namespace

TimeLine::TimeLine(QWidget* parent) : QWidget(parent), inks_(inksFor(palette())) {
  setObjectName(QStringLiteral("timeLine"));
  speakAs(this, QAccessible::Slider);
  setAccessibleName(tr("Time line of the session"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
}

QSize TimeLine::minimumSizeHint() const {
  return {200, kHeight_px};
}

QSize TimeLine::sizeHint() const {
  return {700, kHeight_px};
}

void TimeLine::setContent(std::shared_ptr<const SessionContent> content, const TimeAxis& axis) {
  content_ = std::move(content);
  axis_ = axis;
  show(axis_.begin_s(), axis_.end_s());
}

void TimeLine::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  update();
}

void TimeLine::setNow(ShotId shot, double session_s) {
  selected_ = shot;
  now_s_ = session_s;
  // Keep the playhead in sight while it moves through an enlarged stretch.
  const double span_s = to_s_ - from_s_;
  if (now_s_ < from_s_ || now_s_ > to_s_) {
    show(now_s_ - 0.1 * span_s, now_s_ + 0.9 * span_s);
  } else {
    update();
  }
}

double TimeLine::xOf(double session_s) const {
  return kSide_px + (session_s - from_s_) / (to_s_ - from_s_) * (width() - 2.0 * kSide_px);
}

double TimeLine::timeAt(double x) const {
  return from_s_ + (x - kSide_px) / std::max(1.0, width() - 2.0 * kSide_px) * (to_s_ - from_s_);
}

void TimeLine::show(double from_s, double to_s) {
  const double begin_s = axis_.begin_s();
  const double end_s = std::max(axis_.end_s(), begin_s + kLeastSpan_s);
  const double span_s = std::clamp(to_s - from_s, std::min(kLeastSpan_s, end_s - begin_s), end_s - begin_s);
  from_s_ = std::clamp(from_s, begin_s, end_s - span_s);
  to_s_ = from_s_ + span_s;
  update();
}

void TimeLine::paintEvent(QPaintEvent*) {
  if (!content_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(inks_.line, 1.0));
  painter.drawLine(QPointF(kSide_px, kBlocks_y), QPointF(width() - kSide_px, kBlocks_y));
  painter.setFont(scaled(font(), 0.85));
  painter.setPen(inks_.quiet);
  // At the end where the selected shot's number is not.
  const auto side = numberAt() < width() / 2.0 ? Qt::AlignRight : Qt::AlignLeft;
  painter.drawText(QRectF(kSide_px, kCaption_y, width() - 2.0 * kSide_px, painter.fontMetrics().height()), side,
                   tr("made above, missed below"));
  paintTimes(painter);
  painter.setClipRect(QRectF(kSide_px - 8.0, 0.0, width() - 2.0 * kSide_px + 16.0, height()));
  paintShots(painter);
  painter.setPen(QPen(inks_.accent, 1.6));
  const double x = xOf(now_s_);
  painter.drawLine(QPointF(x, kAbove_y - 10.0), QPointF(x, kTimes_y - 2.0));
}

double TimeLine::numberAt() const {
  for (std::size_t f = 0; f < content_->frames.size(); ++f) {
    for (const ShotSummary& shot : content_->frames[f].shots) {
      if (shot.id == selected_) return xOf(axis_.offset_s(f) + (shot.strike_s + shot.rest_s) / 2.0);
    }
  }
  return xOf(now_s_);
}

void TimeLine::paintShots(QPainter& painter) const {
  for (std::size_t f = 0; f < content_->frames.size(); ++f) {
    const FrameContent& frame = content_->frames[f];
    const double offset_s = axis_.offset_s(f);
    if (f > 0 && !frame.shots.empty()) {
      const double x = xOf(offset_s + frame.shots.front().strike_s) - 6.0;
      painter.setPen(QPen(inks_.fill, 1.0));
      painter.drawLine(QPointF(x, kAbove_y - 8.0), QPointF(x, kBelow_y + 8.0));
    }
    painter.setPen(QPen(inks_.quiet, 1.0));
    for (const Placement& placement : frame.placements) {
      const double x = xOf(offset_s + placement.time_s);
      painter.drawLine(QPointF(x, kBlocks_y - 4.0), QPointF(x, kBlocks_y + 4.0));
    }
    for (const ShotSummary& shot : frame.shots) {
      const double left = xOf(offset_s + shot.strike_s);
      const double right = std::max(left + kLeastBlock_px, xOf(offset_s + shot.rest_s));
      const bool isSelected = shot.id == selected_;
      painter.setPen(Qt::NoPen);
      painter.setBrush(isSelected ? inks_.accent : inks_.fill);
      painter.drawRoundedRect(QRectF(left, kBlocks_y - kBlock_px / 2.0, right - left, kBlock_px), 2.0, 2.0);
      const double middle = (left + right) / 2.0;
      const double y = sideOf(shot.outcome) == MarkSide::Above ? kAbove_y : kBelow_y;
      paintOutcome(painter, shot.outcome, {middle, y}, kMark_px, inks_.accent);
      if (!isSelected) continue;
      painter.setFont(scaled(font(), 0.9, true));
      painter.setPen(inks_.accent);
      const QRectF box(middle - 30.0, kCaption_y - 2.0, 60.0, kAbove_y - kMark_px / 2.0 - kCaption_y);
      painter.drawText(box, Qt::AlignHCenter | Qt::AlignTop, QString::number(shot.number));
    }
  }
}

void TimeLine::paintTimes(QPainter& painter) const {
  constexpr std::array kSteps_s{0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1800.0, 3600.0};
  const double perLabel_s = (to_s_ - from_s_) / std::max(1.0, (width() - 2.0 * kSide_px) / kLabelGap_px);
  double step_s = kSteps_s.back();
  for (const double candidate_s : kSteps_s) {
    if (candidate_s >= perLabel_s) {
      step_s = candidate_s;
      break;
    }
  }
  const int last = static_cast<int>(std::floor(to_s_ / step_s));
  for (int i = static_cast<int>(std::ceil(from_s_ / step_s)); i <= last; ++i) {
    const double x = xOf(i * step_s);
    painter.setPen(QPen(inks_.line, 1.0));
    painter.drawLine(QPointF(x, kBlocks_y), QPointF(x, kTimes_y));
    painter.setPen(inks_.quiet);
    const QString words = step_s < 1.0 ? numbers_.seconds(i * step_s, 1) : timeWords(i * step_s);
    const double half = painter.fontMetrics().horizontalAdvance(words) / 2.0 + 1.0;
    const double middle = std::clamp(x, half + 6.0, std::max(half + 6.0, width() - half - 6.0));
    painter.drawText(QRectF(middle - half, kTimes_y, 2.0 * half, painter.fontMetrics().height()), Qt::AlignCenter,
                     words);
  }
}

QString TimeLine::timeWords(double session_s) const {
  if (!axis_.isClockTime()) return numbers_.clock(session_s);
  const auto at = QDateTime::fromMSecsSinceEpoch(content_->session.started + std::llround(session_s * 1000.0));
  return numbers_.locale().toString(at.toLocalTime().time(),
                                    to_s_ - from_s_ < 600.0 ? QStringLiteral("HH:mm:ss") : QStringLiteral("HH:mm"));
}

const ShotSummary* TimeLine::shotUnder(const QPointF& place) const {
  if (!content_) return nullptr;
  for (std::size_t f = 0; f < content_->frames.size(); ++f) {
    for (const ShotSummary& shot : content_->frames[f].shots) {
      const double left = xOf(axis_.offset_s(f) + shot.strike_s);
      const double right = xOf(axis_.offset_s(f) + shot.rest_s);
      if (place.x() >= left - 3.0 && place.x() <= std::max(right, left + kLeastBlock_px) + 3.0) return &shot;
    }
  }
  return nullptr;
}

void TimeLine::wheelEvent(QWheelEvent* event) {
  const double notches = (event->angleDelta().y() + event->angleDelta().x()) / kWheelNotch;
  const double span_s = to_s_ - from_s_;
  if (event->modifiers() & Qt::ShiftModifier) {
    show(from_s_ - notches * 0.1 * span_s, to_s_ - notches * 0.1 * span_s);
  } else {
    const double factor = std::pow(kZoomStep, -notches);
    const double anchor_s = timeAt(event->position().x());
    const double from_s = anchor_s - (anchor_s - from_s_) * factor;
    show(from_s, from_s + span_s * factor);
  }
  event->accept();
}

void TimeLine::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && content_) emit seekWanted(timeAt(event->position().x()));
}

void TimeLine::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton && content_) emit seekWanted(timeAt(event->position().x()));
}

bool TimeLine::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    if (const ShotSummary* shot = shotUnder(help->pos())) {
      QToolTip::showText(help->globalPos(),
                         QStringLiteral("%1 · %2 · %3")
                             .arg(numbers_.whole(shot->number), shotWords(*shot), outcomeWords(shot->outcome)),
                         this);
    } else {
      QToolTip::hideText();
    }
    return true;
  }
  return QWidget::event(event);
}

void TimeLine::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) inks_ = inksFor(palette());
  QWidget::changeEvent(event);
}

}  // namespace ferrule
