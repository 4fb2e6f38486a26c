// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_plot.h"

#include <QAreaSeries>
#include <QBarCategoryAxis>
#include <QBarSet>
#include <QCategoryAxis>
#include <QChart>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QGraphicsPathItem>
#include <QGraphicsRectItem>
#include <QGraphicsSimpleTextItem>
#include <QHorizontalStackedBarSeries>
#include <QLegend>
#include <QLineSeries>
#include <QPainter>
#include <QPainterPath>
#include <QScatterSeries>
#include <QValueAxis>
#include <algorithm>

#include "core/base/contract.h"

namespace ferrule {

namespace {

constexpr double kGridLine_pt = 0.5;
/// What Qt Charts keeps between the words of an axis and the plane, dots, and a little more; with less room it cuts
/// them.
constexpr double kBesideLabels_dots = 14.0;
/// Of the layers that Qt Charts draws in, none lies so high.
constexpr double kWordsLayer = 1000.0;

/// Axes keep one label of each wording and read it as HTML, in which blanks at the end do not show.
QString asLabel(QString words, QStringList& taken) {
  words = words.toHtmlEscaped();
  while (taken.contains(words))
    words += QLatin1Char(' ');
  taken << words;
  return words;
}

}  // namespace

double ChartPlot::besideLabels(const ChartStyle& style) {
  return style.grain > 0.0 ? kBesideLabels_dots * style.unit / style.grain : kBesideLabels_dots;
}

ChartPlot::ChartPlot(const QRectF& area, const QRectF& plot, const ChartStyle& style)
    : area_(area),
      plot_(plot),
      scene_(style),
      scale_(style.grain > 0.0 ? style.grain / style.unit : 1.0),
      chart_(new QChart) {
  if (style.grain > 0.0) scene_.unit = style.grain;
  canvas_.setItemIndexMethod(QGraphicsScene::NoIndex);
  canvas_.addItem(chart_);
  chart_->setBackgroundVisible(false);
  chart_->setPlotAreaBackgroundVisible(false);
  chart_->legend()->hide();
  chart_->setMargins({});
  chart_->layout()->setContentsMargins(0.0, 0.0, 0.0, 0.0);
  chart_->setAnimationOptions(QChart::NoAnimation);
  chart_->setGeometry(inScene(area_));
}

ChartPlot::~ChartPlot() = default;

QRectF ChartPlot::inScene(const QRectF& box) const {
  return {(box.topLeft() - area_.topLeft()) * scale_, box.size() * scale_};
}

void ChartPlot::setPlane(double left, double right, double bottom, double top) {
  FERRULE_REQUIRE(across_ == nullptr);
  across_ = new QValueAxis;
  up_ = new QValueAxis;
  across_->setRange(left, right);
  up_->setRange(bottom, top);
  // What is read are the words of the ticks; these only hold the series.
  for (QValueAxis* axis : {across_, up_})
    axis->setVisible(false);
  chart_->addAxis(across_, Qt::AlignBottom);
  chart_->addAxis(up_, Qt::AlignLeft);
}

QCategoryAxis* ChartPlot::addAxis(const std::vector<ChartTick>& ticks, double from, double to, double points, bool grid,
                                  Qt::Alignment side) {
  auto* axis = new QCategoryAxis;
  axis->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
  axis->setStartValue(from);
  QStringList taken;
  for (const ChartTick& tick : ticks)
    axis->append(asLabel(tick.words, taken), tick.value);
  axis->setRange(from, to);
  axis->setLabelsFont(sizedFont(scene_, points));
  axis->setLabelsBrush(scene_.inks.quiet);
  axis->setLineVisible(false);
  axis->setGridLineVisible(grid);
  axis->setGridLinePen(QPen(scene_.inks.line, pt(kGridLine_pt)));
  chart_->addAxis(axis, side);
  return axis;
}

void ChartPlot::setTicksBelow(const std::vector<ChartTick>& ticks, double points, bool grid) {
  if (!ticks.empty()) addAxis(ticks, across_->min(), across_->max(), points, grid, Qt::AlignBottom);
}

void ChartPlot::setTicksLeft(const std::vector<ChartTick>& ticks, bool grid) {
  if (!ticks.empty()) addAxis(ticks, up_->min(), up_->max(), kChartText_pt, grid, Qt::AlignLeft);
}

void ChartPlot::put(QAbstractSeries* series) {
  chart_->addSeries(series);
  series->attachAxis(across_);
  series->attachAxis(up_);
}

void ChartPlot::addLine(const QList<QPointF>& way, const QColor& colour, double points, Qt::PenStyle how) {
  auto* line = new QLineSeries;
  line->setPen(QPen(colour, pt(points), how, Qt::FlatCap, Qt::MiterJoin));
  line->replace(way);
  put(line);
}

void ChartPlot::addBand(const QList<QPointF>& upper, const QList<QPointF>& lower, const QColor& fill) {
  auto* above = new QLineSeries;
  auto* below = new QLineSeries;
  above->replace(upper);
  below->replace(lower);
  auto* band = new QAreaSeries(above, below);
  above->setParent(band);
  below->setParent(band);
  band->setPen(Qt::NoPen);
  band->setBrush(fill);
  put(band);
}

void ChartPlot::addMarks(const QList<QPointF>& places, double points, const QColor& edge, double edge_points,
                         const QColor& fill) {
  if (places.isEmpty()) return;
  // Looks before points: every change afterwards goes through all of them again.
  auto* marks = new QScatterSeries;
  marks->setMarkerSize(pt(points));
  marks->setPen(QPen(edge, pt(edge_points)));
  marks->setBrush(fill);
  marks->replace(places);
  put(marks);
}

void ChartPlot::addWhiskers(const std::vector<ChartWhisker>& whiskers, const QColor& colour, double points,
                            double dot_points) {
  // Qt Charts has no whiskers: its candles stand at whole milliseconds alone and give paths that no PDF may hold.
  QPainterPath path;
  const auto place = [&](double x, double y) { return (at(x, y) - area_.topLeft()) * scale_; };
  const auto line = [&](QPointF from, QPointF to) {
    path.moveTo(from);
    path.lineTo(to);
  };
  const QPointF dot(0.0, pt(dot_points) / 2.0);
  for (const ChartWhisker& one : whiskers) {
    const QPointF middle = place(one.place, one.middle);
    const QPointF top = place(one.place, one.value.most);
    const QPointF bottom = place(one.place, one.value.least);
    if (top.y() < (middle - dot).y()) line(middle - dot, top);
    if (bottom.y() > (middle + dot).y()) line(middle + dot, bottom);
  }
  canvas_.addPath(path, QPen(colour, pt(points), Qt::SolidLine, Qt::FlatCap));
}

void ChartPlot::addBars(const std::vector<Bars>& bars, double share, double edge_points) {
  FERRULE_REQUIRE(!bars.empty() && !bars.front().values.isEmpty());
  // Its labels would be cut to dots in rows of the height that lists have; their names are words of our own.
  auto* rows = new QBarCategoryAxis;
  for (qsizetype i = 0; i < bars.front().values.size(); ++i)
    rows->append(QString::number(i));
  rows->setVisible(false);
  chart_->addAxis(rows, Qt::AlignLeft);
  auto* series = new QHorizontalStackedBarSeries;
  for (const Bars& one : bars) {
    auto* set = new QBarSet(QString());
    set->setPen(QPen(one.edge, pt(edge_points)));
    set->setBrush(one.fill);
    // Qt Charts counts rows from below.
    for (qsizetype i = one.values.size(); i > 0; --i)
      *set << one.values[i - 1];
    series->append(set);
  }
  series->setBarWidth(share);
  chart_->addSeries(series);
  series->attachAxis(across_);
  series->attachAxis(rows);
}

void ChartPlot::addWords(const QRectF& box, Qt::Alignment how, const QString& words, double points,
                         const QColor& colour, bool on) {
  if (words.isEmpty()) return;
  const QFont font = sizedFont(scene_, points);
  const QFontMetricsF metrics(font);
  const QRectF place = inScene(box);
  const QSizeF size(metrics.horizontalAdvance(words), metrics.height());
  QPointF corner(place.left(), place.center().y() - size.height() / 2.0);
  if (how & Qt::AlignRight) corner.setX(place.right() - size.width());
  if (how & Qt::AlignHCenter) corner.setX(place.center().x() - size.width() / 2.0);
  if (on) {
    QGraphicsRectItem* cover = canvas_.addRect(QRectF(corner, size), Qt::NoPen, scene_.inks.panel);
    cover->setZValue(kWordsLayer - 1.0);
  }
  QGraphicsSimpleTextItem* item = canvas_.addSimpleText(words, font);
  item->setBrush(colour);
  item->setPos(corner);
  item->setZValue(kWordsLayer);
}

QPointF ChartPlot::at(double x, double y) const {
  const auto along = [](double value, const QValueAxis* axis) {
    return (value - axis->min()) / (axis->max() - axis->min());
  };
  return {plot_.left() + along(x, across_) * plot_.width(), plot_.bottom() - along(y, up_) * plot_.height()};
}

void ChartPlot::draw(QPainter& painter) {
  chart_->setPlotArea(inScene(plot_));
  chart_->layout()->activate();
  // Lines at the edge reach half their width beyond it.
  const double beyond = pt(1.0);
  const QRectF source = inScene(area_).adjusted(-beyond, -beyond, beyond, beyond);
  const double outside = beyond / scale_;
  canvas_.render(&painter, area_.adjusted(-outside, -outside, outside, outside), source, Qt::IgnoreAspectRatio);
}

}  // namespace ferrule
