// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/chart_view.h"
#include "app/window/spoken_role.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <cmath>

namespace ferrule {

namespace {

constexpr int kMargin_px = 12;
constexpr int kWidth_px = 460;
constexpr int kLeast_px = 300;
constexpr int kWords_px = 76;

}  // namespace

ChartStyle screenStyle(const QFont& font, const QPalette& palette) {
  ChartStyle style;
  style.font = withTabularFigures(font);
  // A chart's words are of 8 points where the window's are of 9 or 10.
  style.unit = QFontMetricsF(font).height() / 12.5;
  style.inks = inksFor(palette);
  return style;
}

ChartView::ChartView(QWidget* parent) : QWidget(parent) {
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  speakAs(this, QAccessible::Chart);
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void ChartView::setChart(const QString& title, const std::optional<Chart>& chart, const QString& otherwise) {
  title_ = title;
  chart_ = chart;
  otherwise_ = otherwise;
  setAccessibleName(title);
  setAccessibleDescription(chart ? QString() : otherwise);
  pointed_.reset();
  at_.reset();
  spots_.clear();
  picture_ = {};
  updateGeometry();
  update();
}

int ChartView::heightForWidth(int width) const {
  if (!chart_) return kWords_px;
  return 2 * kMargin_px +
         static_cast<int>(std::ceil(chartHeight(*chart_, width - 2 * kMargin_px, screenStyle(font(), palette()))));
}

QSize ChartView::sizeHint() const {
  return {kWidth_px, heightForWidth(kWidth_px)};
}

QSize ChartView::minimumSizeHint() const {
  return {kLeast_px, kWords_px};
}

const std::vector<ChartSpot>& ChartView::spots() {
  if (picture_.isNull()) draw();
  return spots_;
}

void ChartView::draw() {
  spots_.clear();
  picture_ = QPixmap(size() * devicePixelRatioF());
  picture_.setDevicePixelRatio(devicePixelRatioF());
  picture_.fill(Qt::transparent);
  QPainter painter(&picture_);
  const ChartStyle style = screenStyle(font(), palette());
  const QRectF area = rect().toRectF().adjusted(kMargin_px, kMargin_px, -kMargin_px, -kMargin_px);
  if (chart_) {
    const QRectF exact(area.topLeft(), QSizeF(area.width(), chartHeight(*chart_, area.width(), style)));
    spots_ = drawChart(painter, exact, *chart_, style);
    return;
  }
  painter.setPen(style.inks.text);
  painter.setFont(sizedFont(style, 10.0, true));
  painter.drawText(area, Qt::AlignLeft | Qt::AlignTop, title_);
  painter.setPen(style.inks.quiet);
  painter.setFont(sizedFont(style, 8.0));
  painter.drawText(area.adjusted(0, 22.0 * style.unit, 0, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                   otherwise_);
}

void ChartView::paintEvent(QPaintEvent*) {
  if (picture_.isNull() || picture_.deviceIndependentSize().toSize() != size()) draw();
  QPainter painter(this);
  painter.drawPixmap(0, 0, picture_);
  const Inks inks = inksFor(palette());
  painter.setRenderHint(QPainter::Antialiasing);
  if (pointed_ && at_) {
    painter.setPen(QPen(inks.text, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(spots_[*at_].area.adjusted(-1, -1, 1, 1), 2, 2);
  }
  if (hasFocus()) {
    painter.setPen(QPen(inks.accent, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(rect().toRectF().adjusted(2.5, 2.5, -2.5, -2.5), 5, 5);
  }
}

std::optional<std::size_t> ChartView::spotAt(QPointF place) const {
  std::optional<std::size_t> nearest;
  double away = 0.0;
  for (std::size_t i = 0; i < spots_.size(); ++i) {
    if (!spots_[i].area.contains(place)) continue;
    const double distance = QLineF(spots_[i].area.center(), place).length();
    if (!nearest || distance < away) {
      nearest = i;
      away = distance;
    }
  }
  return nearest;
}

void ChartView::point(std::optional<std::size_t> spot) {
  if (at_ == spot) return;
  at_ = spot;
  pointed_.reset();
  if (at_) pointed_ = spots_[*at_];
  setAccessibleDescription(pointed_ ? pointed_->words : otherwise_);
  emit pointedAt(pointed_ ? pointed_->words : QString());
  update();
}

void ChartView::mouseMoveEvent(QMouseEvent* event) {
  point(spotAt(event->position()));
  setCursor(pointed_ ? Qt::PointingHandCursor : Qt::ArrowCursor);
  if (pointed_) {
    QToolTip::showText(event->globalPosition().toPoint(), pointed_->words, this);
  } else {
    QToolTip::hideText();
  }
}

void ChartView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  setFocus();
  point(spotAt(event->position()));
  if (pointed_) emit opened(*pointed_);
}

void ChartView::leaveEvent(QEvent*) {
  if (!hasFocus()) point(std::nullopt);
}

bool ChartView::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    // The window's own steps take these keys otherwise.
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool mine = key->key() == Qt::Key_Left || key->key() == Qt::Key_Right || key->key() == Qt::Key_Return ||
                      key->key() == Qt::Key_Enter;
    if (mine && key->modifiers() == Qt::NoModifier) event->accept();
  }
  return QWidget::event(event);
}

void ChartView::keyPressEvent(QKeyEvent* event) {
  const int count = static_cast<int>(spots().size());
  const bool on = event->key() == Qt::Key_Right;
  if ((on || event->key() == Qt::Key_Left) && count > 0) {
    const int here = at_ ? static_cast<int>(*at_) : (on ? -1 : count);
    point(static_cast<std::size_t>((here + (on ? 1 : count - 1)) % count));
    return;
  }
  if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && pointed_) {
    emit opened(*pointed_);
    return;
  }
  QWidget::keyPressEvent(event);
}

void ChartView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
  emit focused();
}

void ChartView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    picture_ = {};
    updateGeometry();
  }
  QWidget::changeEvent(event);
}

}  // namespace ferrule
