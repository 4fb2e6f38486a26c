// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/simulation_text.h"

#include "core/geometry/units.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

std::string seconds(double time_s) {
  return numberText(time_s, 1e-6);
}

std::string millimetres(double length_m) {
  return numberText(millimetresFromMetres(length_m), 1e-3);
}

/// , "name": "word"; words of the trade hold no character that JSON would escape.
std::string wordField(const char* name, std::string_view word) {
  return std::string(", \"").append(name).append("\": \"").append(word).append("\"");
}

std::string eventText(const ShotEvent& event) {
  std::string text = "{\"t_s\": " + seconds(event.time_s) + wordField("kind", toText(event.kind)) +
                     wordField("ball", toText(event.ball));
  if (event.other) text += wordField("other", toText(*event.other));
  if (event.cushion) text += wordField("cushion", toText(*event.cushion));
  if (event.pocket) text += wordField("pocket", toText(*event.pocket));
  return text + "}";
}

std::string ballText(const FinalBall& ball) {
  const std::string name = "{\"ball\": \"" + toText(ball.ball) + "\"";
  if (ball.pocket) return name + wordField("pocket", toText(*ball.pocket)) + "}";
  if (ball.fate == BallFate::OffTable) return name + ", \"off_table\": true}";
  return name + ", \"x_mm\": " + millimetres(ball.position.x) + ", \"y_mm\": " + millimetres(ball.position.y) + "}";
}

/// One element a line.
template <class Values, class ToText>
std::string listText(const Values& values, ToText&& toText) {
  std::string text = "[";
  for (const auto& value : values) {
    text += text.size() > 1 ? ",\n  " : "\n  ";
    text += toText(value);
  }
  return text + "]";
}

}  // namespace

std::string simulationText(const Simulation& simulation) {
  return "{\"format\": \"ferrule-simulated/1\",\n \"duration_s\": " + seconds(simulation.duration_s) +
         ",\n \"events\": " + listText(simulation.events, eventText) +
         ",\n \"after\": " + listText(simulation.after, ballText) + "}\n";
}

}  // namespace ferrule
