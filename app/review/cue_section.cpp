// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/cue_section.h"

#include <QCoreApplication>
#include <cmath>

#include "core/cue/cue_text.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct CueSection {
  Q_DECLARE_TR_FUNCTIONS(CueSection)
};

}  // namespace

std::optional<CueReading> cueOf(const StoredShot& shot) {
  return shot.explanation ? cueInExplanation(*shot.explanation) : std::nullopt;
}

std::vector<ValueLine> cueRows(const CueReading& reading, const std::optional<Measured>& after,
                               const Numbers& numbers) {
  std::vector<ValueLine> rows;
  const auto angle = [&](const QString& name, const std::optional<Measured>& value, bool sign) {
    if (value) rows.push_back({name, numbers.degrees(*value, sign), {}});
  };
  const auto inRadii = [&](const QString& name, const std::optional<Measured>& value) {
    if (!value || !(reading.ballRadius_m > 0.0)) return;
    const double perRadius = 1.0 / reading.ballRadius_m;
    rows.push_back({name, numbers.radii({value->value * perRadius, value->standardUncertainty * perRadius}), {}});
  };
  if (!reading.aim_rad) return rows;
  angle(CueSection::tr("Cue pointed to"), reading.aim_rad, false);
  angle(CueSection::tr("Ball went to"), after, false);
  // By what stands above it: the shot may have been read anew since.
  std::optional<Measured> between = reading.aimBeforeMinusAfter_rad;
  if (after) {
    between = Measured{wrapAngle(reading.aim_rad->value - after->value),
                       std::hypot(reading.aim_rad->standardUncertainty, after->standardUncertainty)};
  }
  angle(CueSection::tr("Between them"), between, true);
  angle(CueSection::tr("Elevation"), reading.elevation_rad, false);
  inRadii(CueSection::tr("Tip, side"), reading.tipSide_m);
  inRadii(CueSection::tr("Tip, height"), reading.tipHeight_m);
  angle(CueSection::tr("Sway of the aim"), reading.steadiness_rad, false);
  if (reading.tipSpeed_mps) rows.push_back({CueSection::tr("Tip speed"), numbers.speed(*reading.tipSpeed_mps), {}});
  return rows;
}

QStringList cueNotes(const CueReading& reading, const Numbers& numbers) {
  QStringList notes;
  if (reading.aim_rad) {
    notes << (reading.source == CueSource::Tags
                  ? CueSection::tr("Read from the tags on the cue.")
                  : CueSection::tr("Read from the shaft over the cloth; its height is not seen."))
          << CueSection::tr("Between: + the ball went to the right of the cue's line.");
  } else {
    notes << CueSection::tr("The tags on the cue were seen in too few images before the strike.");
  }
  if (reading.log == LogUse::Gap) {
    notes << CueSection::tr("The pitch log has a gap before this strike; let the sensor write without a break.");
  }
  if (reading.log == LogUse::NoMatch) {
    notes << CueSection::tr("The pitch log has another clock than the film and was left out; start both together.");
  }
  if (reading.tags && reading.tags->sideNeeded_m) {
    notes << CueSection::tr("The tags are too small for this camera; it needs %1.")
                 .arg(numbers.millimetres(*reading.tags->sideNeeded_m));
  }
  return notes;
}

}  // namespace ferrule
