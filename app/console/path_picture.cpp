// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/path_picture.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

/// Around the rails, mm.
constexpr double kMargin_mm = 20.0;
constexpr double kWayWidth_mm = 5.0;
constexpr double kLabelRadius_mm = 14.0;
/// A picture element for every two millimetres.
constexpr double kPixelsPerMillimetre = 0.5;

constexpr const char* kRail = "#5b4636";
constexpr const char* kCushion = "#3f7f6a";
constexpr const char* kCloth = "#4f9a82";
constexpr const char* kHole = "#161616";
constexpr const char* kSight = "#e8dfcf";
constexpr const char* kLabel = "#f2f2ea";

/// A place on the picture, mm: y turns downward here and nowhere else.
struct Place {
  double x = 0.0;
  double y = 0.0;
};

Place placeOf(TablePoint p) {
  return {millimetresFromMetres(p.x), -millimetresFromMetres(p.y)};
}

/// The same in every locale.
std::string text(double value) {
  return numberText(value, 0.01);
}

/// One element with its attributes.
class Element {
 public:
  explicit Element(const char* name) : name_(name) { text_.append("<").append(name); }

  Element& with(const char* name, const std::string& value) {
    text_.append(" ").append(name).append("=\"").append(value).append("\"");
    return *this;
  }
  Element& with(const char* name, double value) { return with(name, text(value)); }

  [[nodiscard]] std::string empty() const { return text_ + "/>\n"; }
  [[nodiscard]] std::string holding(const std::string& content) const {
    return text_ + ">" + content + "</" + name_ + ">\n";
  }
  /// Only the beginning, for what holds other elements.
  [[nodiscard]] std::string opened() const { return text_ + ">\n"; }

 private:
  std::string name_;
  std::string text_;
};

std::string pair(Place p) {
  return text(p.x) + " " + text(p.y);
}

std::string colourText(const BallColour& colour) {
  static constexpr char kDigits[] = "0123456789abcdef";
  std::string word = "#";
  for (const int channel : {colour.red, colour.green, colour.blue}) {
    const auto value = static_cast<std::size_t>(std::clamp(channel, 0, 255));
    word += kDigits[value / 16];
    word += kDigits[value % 16];
  }
  return word;
}

/// A rectangle around the middle of the table, from half its size.
std::string middleBox(double halfLength_mm, double halfWidth_mm, const char* colour, double corner_mm) {
  return Element("rect")
      .with("x", -halfLength_mm)
      .with("y", -halfWidth_mm)
      .with("width", 2.0 * halfLength_mm)
      .with("height", 2.0 * halfWidth_mm)
      .with("rx", corner_mm)
      .with("fill", colour)
      .empty();
}

std::string disc(Place centre, double radius_mm, const std::string& fill, const std::string& stroke, double width_mm) {
  return Element("circle")
      .with("cx", centre.x)
      .with("cy", centre.y)
      .with("r", radius_mm)
      .with("fill", fill)
      .with("stroke", stroke)
      .with("stroke-width", width_mm)
      .empty();
}

std::string tableText(const Table& table) {
  const double halfLength_mm = millimetresFromMetres(table.length_m / 2.0);
  const double halfWidth_mm = millimetresFromMetres(table.width_m / 2.0);
  const double rail_mm = millimetresFromMetres(table.railWidth_m);
  const double cushion_mm = millimetresFromMetres(table.cushionWidth_m);
  std::string svg = middleBox(halfLength_mm + rail_mm, halfWidth_mm + rail_mm, kRail, 40.0);
  svg += middleBox(halfLength_mm + cushion_mm, halfWidth_mm + cushion_mm, kCushion, 0.0);
  svg += middleBox(halfLength_mm, halfWidth_mm, kCloth, 0.0);
  for (const Pocket& pocket : pockets(table)) {
    const auto& [right, left] = pocket.facings;
    svg += Element("polygon")
               .with("points", pair(placeOf(right.start)) + " " + pair(placeOf(right.end)) + " " +
                                   pair(placeOf(left.end)) + " " + pair(placeOf(left.start)))
               .with("fill", kCloth)
               .empty();
    svg += disc(placeOf(pocket.hole), millimetresFromMetres(pocket.holeRadius_m), kHole, "none", 0.0);
  }
  for (const TablePoint sight : sights(table))
    svg += disc(placeOf(sight), 7.0, kSight, "none", 0.0);
  return svg;
}

/// Each motion is a straight line or a parabola, and a parabola is a quadratic curve whose middle point lies half the
/// time along the first velocity.
std::string wayText(const BallPath& path, double end_s, const std::string& colour) {
  std::string svg;
  for (const Motion& m : path.motions) {
    if (!m.moves()) continue;
    const double span_s = std::min(m.end_s, end_s) - m.start_s;
    if (!(span_s > 0.0)) continue;
    const Place from = placeOf(planOf(m.position));
    const Place bend = placeOf(planOf(m.position + (0.5 * span_s) * m.velocity));
    const Place to = placeOf(planOf(m.positionAt(m.start_s + span_s)));
    Element way("path");
    way.with("d", std::string("M").append(pair(from)).append(" Q").append(pair(bend)).append(" ").append(pair(to)))
        .with("fill", "none")
        .with("stroke", colour)
        .with("stroke-width", kWayWidth_mm);
    if (m.kind == MotionKind::Airborne) way.with("stroke-dasharray", "14 10");
    svg += way.empty();
  }
  return svg;
}

std::string labelText(BallName ball, Place place) {
  return disc(place, kLabelRadius_mm, kLabel, "none", 0.0) + Element("text")
                                                                 .with("x", place.x)
                                                                 .with("y", place.y + 7.0)
                                                                 .with("font-size", "20")
                                                                 .with("font-family", "sans-serif")
                                                                 .with("text-anchor", "middle")
                                                                 .with("fill", kHole)
                                                                 .holding(ball.isCueBall() ? "C" : toText(ball));
}

std::string strokeText(Place from, Place to, const std::string& colour) {
  return Element("path")
      .with("d", std::string("M").append(pair(from)).append(" L").append(pair(to)))
      .with("stroke", colour)
      .with("stroke-width", "6")
      .empty();
}

std::string crossText(Place at, double size_mm, const std::string& colour) {
  return strokeText({at.x - size_mm, at.y - size_mm}, {at.x + size_mm, at.y + size_mm}, colour) +
         strokeText({at.x - size_mm, at.y + size_mm}, {at.x + size_mm, at.y - size_mm}, colour);
}

}  // namespace

std::string pathPicture(const MeasuredTable& measured, const Simulation& simulation) {
  const Table& table = measured.table;
  const double across_mm = millimetresFromMetres(table.length_m + 2.0 * table.railWidth_m) + 2.0 * kMargin_mm;
  const double down_mm = millimetresFromMetres(table.width_m + 2.0 * table.railWidth_m) + 2.0 * kMargin_mm;
  const double radius_mm = millimetresFromMetres(measured.balls.radius_m());
  const auto colourOf = [&](BallName ball) {
    return colourText(measured.balls.colours[static_cast<std::size_t>(ball.number())]);
  };
  std::string svg = Element("svg")
                        .with("xmlns", "http://www.w3.org/2000/svg")
                        .with("viewBox", text(-across_mm / 2.0) + " " + text(-down_mm / 2.0) + " " + text(across_mm) +
                                             " " + text(down_mm))
                        .with("width", std::round(kPixelsPerMillimetre * across_mm))
                        .with("height", std::round(kPixelsPerMillimetre * down_mm))
                        .opened();
  svg += middleBox(across_mm / 2.0, down_mm / 2.0, "#f4f1ec", 0.0) + tableText(table);
  for (const BallPath& path : simulation.paths)
    svg += wayText(path, simulation.duration_s, colourOf(path.ball));
  for (const FinalBall& ball : simulation.after) {
    const Place place = placeOf(ball.position);
    if (ball.fate == BallFate::OnTable) {
      svg += disc(place, radius_mm - 2.0, "none", colourOf(ball.ball), 4.0) + labelText(ball.ball, place);
    } else {
      svg += crossText(place, radius_mm / 2.0, colourOf(ball.ball));
    }
  }
  for (const BallPath& path : simulation.paths) {
    const Place place = placeOf(planOf(path.motions.front().position));
    const std::string colour = colourOf(path.ball);
    svg += disc(place, radius_mm - 1.0, path.ball.isStripe() ? kLabel : colour, kHole, 2.0);
    if (path.ball.isStripe()) svg += disc(place, radius_mm - 8.0, "none", colour, 12.0);
    svg += labelText(path.ball, place);
  }
  return svg + "</svg>\n";
}

}  // namespace ferrule
