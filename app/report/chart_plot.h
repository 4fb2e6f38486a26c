// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGraphicsScene>
#include <QList>
#include <QPen>
#include <QRectF>
#include <vector>

#include "app/report/chart.h"
#include "app/report/chart_style.h"

class QAbstractSeries;
class QCategoryAxis;
class QChart;
class QPainter;
class QValueAxis;

namespace ferrule {

/// From where to where a value may lie, around a dot at a place along the axis below.
struct ChartWhisker {
  double place = 0.0;
  double middle = 0.0;
  Interval value;
};

/// One chart of Qt Charts in our own look, without its themes, legend, animations and OpenGL. Values are in the units
/// of the axes, sizes in points, places of the picture in device pixels. First the plane, then everything in it, in the
/// order in which it is drawn, then draw.
class ChartPlot {
 public:
  /// area: all that may be drawn on; plot: of it, the plane between the axes.
  ChartPlot(const QRectF& area, const QRectF& plot, const ChartStyle& style);
  ~ChartPlot();
  ChartPlot(const ChartPlot&) = delete;
  ChartPlot& operator=(const ChartPlot&) = delete;
  ChartPlot(ChartPlot&&) = delete;
  ChartPlot& operator=(ChartPlot&&) = delete;

  /// The room that the words of an axis on the left need beside their own width, device pixels.
  [[nodiscard]] static double besideLabels(const ChartStyle& style);

  /// The values at the edges of the plane.
  void setPlane(double left, double right, double bottom, double top);
  /// Words beside the plane; grid: with lines through it.
  void setTicksBelow(const std::vector<ChartTick>& ticks, double points, bool grid);
  void setTicksLeft(const std::vector<ChartTick>& ticks, bool grid);

  void addLine(const QList<QPointF>& way, const QColor& colour, double points, Qt::PenStyle how = Qt::SolidLine);
  void addBand(const QList<QPointF>& upper, const QList<QPointF>& lower, const QColor& fill);
  /// Discs of a diameter.
  void addMarks(const QList<QPointF>& places, double points, const QColor& edge, double edge_points,
                const QColor& fill);
  /// dot_points: across, of the dot that stays free.
  void addWhiskers(const std::vector<ChartWhisker>& whiskers, const QColor& colour, double points, double dot_points);
  /// Lying bars from 0, one for each row from above, next to each other where values have different signs; the plane
  /// reaches from -0.5 to rows - 0.5. share: how much of a row's height one takes.
  struct Bars {
    QList<double> values;
    QColor edge;
    QColor fill;
  };
  void addBars(const std::vector<Bars>& bars, double share, double edge_points);
  /// A line at a place, device pixels; on: what is behind is covered.
  void addWords(const QRectF& box, Qt::Alignment how, const QString& words, double points, const QColor& colour,
                bool on = false);

  /// Where a value lies, device pixels.
  [[nodiscard]] QPointF at(double x, double y) const;
  [[nodiscard]] const QRectF& plot() const { return plot_; }

  void draw(QPainter& painter);

 private:
  [[nodiscard]] double pt(double points) const { return points * scene_.unit; }
  [[nodiscard]] QRectF inScene(const QRectF& box) const;
  void put(QAbstractSeries* series);
  QCategoryAxis* addAxis(const std::vector<ChartTick>& ticks, double from, double to, double points, bool grid,
                         Qt::Alignment side);

  QRectF area_;
  QRectF plot_;
  ChartStyle scene_;  ///< of the scene's own dots
  double scale_;      ///< dots of the scene in a device pixel
  QGraphicsScene canvas_;
  QChart* chart_;
  QValueAxis* across_ = nullptr;
  QValueAxis* up_ = nullptr;
};

}  // namespace ferrule
