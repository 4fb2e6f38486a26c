// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/cue_lines.h"

#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

QString withInterval(const Measured& value, double perUnit, int decimals) {
  return QStringLiteral("%1 +- %2")
      .arg(value.value * perUnit, 0, 'f', decimals)
      .arg(2.0 * value.standardUncertainty * perUnit, 0, 'f', decimals);
}

QString valuesOf(const CueReading& reading) {
  const double degrees = degreesFromRadians(1.0);
  QStringList parts;
  parts << QStringLiteral("the cue pointed to %1 deg").arg(withInterval(*reading.aim_rad, degrees, 2));
  if (reading.elevation_rad) {
    parts << QStringLiteral("butt raised by %1 deg").arg(withInterval(*reading.elevation_rad, degrees, 2));
  }
  if (reading.tipSide_m) {
    parts << QStringLiteral("tip %1 mm to the right").arg(withInterval(*reading.tipSide_m, 1000.0, 1));
  }
  if (reading.tipHeight_m) {
    parts << QStringLiteral("%1 mm above the middle").arg(withInterval(*reading.tipHeight_m, 1000.0, 1));
  }
  if (reading.steadiness_rad) {
    parts << QStringLiteral("aim steady to %1 deg").arg(reading.steadiness_rad->value * degrees, 0, 'f', 2);
  }
  if (reading.aimBeforeMinusAfter_rad) {
    parts << QStringLiteral("%1 deg left of the way that the ball went")
                 .arg(withInterval(*reading.aimBeforeMinusAfter_rad, degrees, 2));
  }
  return parts.join(QStringLiteral(", "));
}

QString logNote(const CueReading& reading) {
  switch (reading.log) {
    case LogUse::None:
    case LogUse::Used:
      return {};
    case LogUse::Shifted:
      return QStringLiteral(
                 "the pitch log's clock is %1 s %2 the film's, as the cue's movements show; it was used with "
                 "the film's time. Start both together to be sure.")
          .arg(std::abs(reading.logMinusFilm_s), 0, 'f', 2)
          .arg(reading.logMinusFilm_s > 0.0 ? QStringLiteral("ahead of") : QStringLiteral("behind"));
    case LogUse::Gap:
      return QStringLiteral(
          "the pitch log has a gap before this strike, so that tags and bridge alone told the "
          "elevation; let the sensor write without a break, and charge it before the session.");
    case LogUse::NoMatch:
      return QStringLiteral(
          "the pitch log has another clock than the film, and the cue moved too little to tell which; "
          "the log was left out. Start log and film together, or raise the butt high once before "
          "the first shot.");
  }
  return {};
}

}  // namespace

QStringList cueLines(int shot, const CueReading& reading) {
  QStringList lines;
  const QString about = QStringLiteral("cue of shot %1: ").arg(shot);
  if (reading.aim_rad) lines << about + valuesOf(reading);
  if (const QString note = logNote(reading); !note.isEmpty()) lines << about + note;
  if (reading.tags && reading.tags->sideNeeded_m) {
    lines << about + QStringLiteral(
                         "its tags show %1 px a module, and %2 % of them could be read; this camera needs tags of "
                         "%3 mm, or a place nearer to the table.")
                         .arg(reading.tags->module_px, 0, 'f', 1)
                         .arg(100.0 * reading.tags->readShare, 0, 'f', 0)
                         .arg(millimetresFromMetres(*reading.tags->sideNeeded_m), 0, 'f', 0);
  } else if (!reading.aim_rad) {
    lines << about + QStringLiteral(
                         "its tags were seen in too few images before the strike; turn them up, and keep "
                         "hands and sleeves off them.");
  }
  return lines;
}

}  // namespace ferrule
