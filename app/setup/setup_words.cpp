// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/setup_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>

#include "app/words/joining.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct SetupWords {
  Q_DECLARE_TR_FUNCTIONS(SetupWords)
};

QString mm(double length_m, const Numbers& numbers, int decimals) {
  return numbers.fixed(millimetresFromMetres(length_m), decimals);
}

}  // namespace

QString fateWords(const BoardStill& still) {
  switch (still.fate) {
    case StillFate::Used:
      return SetupWords::tr("found");
    case StillFate::NoBoard:
      return SetupWords::tr("not found");
    case StillFate::LayoutOld:
      return SetupWords::tr("old layout: print the board anew");
    case StillFate::Mirrored:
      return SetupWords::tr("mirrored: not used");
    case StillFate::Blurred:
      return SetupWords::tr("blurred: not used");
    case StillFate::Repeated:
      return SetupWords::tr("same as %1: counts once").arg(QFileInfo(QString::fromStdString(still.sameAs)).fileName());
    case StillFate::OtherSize:
      return SetupWords::tr("other size: not used");
    case StillFate::Unreadable:
      return SetupWords::tr("not a picture: not used");
  }
  return {};
}

QString workWords(const QString& step) {
  if (step == QLatin1String("looking for the board")) return SetupWords::tr("Looking for the board");
  if (step == QLatin1String("looking for tags")) return SetupWords::tr("Looking for the tags");
  if (step == QLatin1String("looking for cushions")) return SetupWords::tr("Looking for the cushions");
  if (step == QLatin1String("looking")) return SetupWords::tr("Looking at the film");
  if (step == QLatin1String("comparing")) return SetupWords::tr("Comparing what could be wrong");
  return SetupWords::tr("Working it out");
}

QString lensWords(const LensCalibration& made, const Numbers& numbers) {
  const auto used = std::ranges::count(made.views, true, &ViewReport::used);
  QString words = SetupWords::tr(
                      "The lens foretells the board's corners to %1 px (rms) over %2 of %3 stills, out to %4\u00a0% "
                      "of the way to the picture's corners.")
                      .arg(numbers.fixed(made.lens.rms_px, 2))
                      .arg(used)
                      .arg(made.views.size())
                      .arg(numbers.fixed(100.0 * made.coverage.reach, 0));
  // A table fills most of a picture, its pockets stand near the corners.
  constexpr double kGoodReach = 0.8;
  if (made.coverage.reach < kGoodReach) {
    words = sentencesOf(
        {words, SetupWords::tr("Beyond that the lens is a guess: add stills with the board in the corners.")});
  }
  return words;
}

QString correctionWords(CorrectionKind kind) {
  switch (kind) {
    case CorrectionKind::Rotation:
      return SetupWords::tr("Turn");
    case CorrectionKind::ImageScale:
      return SetupWords::tr("Image size");
    case CorrectionKind::Lens:
      return SetupWords::tr("Lens");
    case CorrectionKind::Pose:
      return SetupWords::tr("Camera's place");
  }
  return {};
}

QString componentWords(ErrorComponent component) {
  switch (component) {
    case ErrorComponent::Pose:
      return SetupWords::tr("Camera's place");
    case ErrorComponent::Lens:
      return SetupWords::tr("Lens");
    case ErrorComponent::TagHeight:
      return SetupWords::tr("Height of the tags");
    case ErrorComponent::Finder:
      return SetupWords::tr("Finding the ball");
    case ErrorComponent::BallHeight:
      return SetupWords::tr("Ball and bed");
    case ErrorComponent::RollingShutter:
      return SetupWords::tr("Rows read in turn");
  }
  return {};
}

QString cureWords(ErrorComponent component) {
  switch (component) {
    case ErrorComponent::Pose:
      return SetupWords::tr("Measure the tags' corners again with a steel rule, and lay them far apart.");
    case ErrorComponent::Lens:
      return SetupWords::tr("Add stills of the board, tilted and out to the picture's corners.");
    case ErrorComponent::TagHeight:
      return SetupWords::tr("Measure the height of the tags above the cloth with a depth gauge.");
    case ErrorComponent::Finder:
      return SetupWords::tr("Use a larger picture, more even light, or a cloth that differs from the balls.");
    case ErrorComponent::BallHeight:
      return SetupWords::tr("Nothing is gained here: balls and bed are as even as they are made.");
    case ErrorComponent::RollingShutter:
      return SetupWords::tr("A camera that reads all rows at once would help moving balls; those at rest need none.");
  }
  return {};
}

QString worthWords(const ShotWorth& worth, const Numbers& numbers) {
  return SetupWords::tr(
             "Cut %1 ± %2; the ball comes %3 mm (rms) off the pocket's middle, where there are %4 mm to either "
             "side. Somebody who plays perfectly on these places pots %5\u00a0%.")
      .arg(numbers.degrees(worth.cut_rad, 1), numbers.degrees(worth.cutU_rad, 2), mm(worth.atPocketU_m, numbers, 1),
           mm(worth.room_m, numbers, 1), numbers.fixed(100.0 * worth.chance, 0));
}

}  // namespace ferrule
