// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/miss_sentence.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct MissSentence {
  Q_DECLARE_TR_FUNCTIONS(MissSentence)
};

/// A part counts from this many standard uncertainties on, and from this angle on.
constexpr double kStandsOut = 2.0;
constexpr double kWorthSaying_deg = 0.1;
constexpr std::size_t kMostParts = 3;

struct Part {
  const char* words = nullptr;  ///< %1: the angle, %2: "thin" or "thick"
  Measured value;
};

/// Which way a turn of the object ball's line is: that of the cut is thin. thin: sign of thin turns.
QString sideWords(double value, double thin) {
  return missWords(value * thin > 0.0 ? MissSide::Over : MissSide::Under);
}

}  // namespace

QString missSentence(const Target& target, const std::optional<MissAccount>& account, const Numbers& numbers) {
  if (!target.lineError_rad) return {};
  const double error_rad = *target.lineError_rad;
  QStringList sentences;
  const QString angle = numbers.degrees(std::abs(error_rad));
  if (target.missSide && target.missAtMouth_m) {
    sentences << MissSentence::tr("Missed %1 by %2 (%3 at the pocket).")
                     .arg(missWords(*target.missSide), angle, numbers.millimetres(std::abs(*target.missAtMouth_m)));
  } else {
    sentences << MissSentence::tr("The line was %1 off the middle of the pocket.").arg(angle);
  }
  if (target.rattled) sentences << MissSentence::tr("It rattled in the jaws.");
  if (!account || !target.missSide) return sentencesOf(sentences);

  const double thin = (*target.missSide == MissSide::Over ? 1.0 : -1.0) * (error_rad < 0.0 ? -1.0 : 1.0);
  std::array parts{
      Part{QT_TRANSLATE_NOOP("MissSentence", "the aim was %1 %2 of the ghost ball"), account->aim_rad},
      Part{QT_TRANSLATE_NOOP("MissSentence", "squirt made it %1 %2"), account->squirt_rad},
      Part{QT_TRANSLATE_NOOP("MissSentence", "swerve made it %1 %2"), account->swerve_rad},
      Part{QT_TRANSLATE_NOOP("MissSentence", "throw of the cut made it %1 %2"), account->collisionThrow_rad},
      Part{QT_TRANSLATE_NOOP("MissSentence", "throw of the side spin made it %1 %2"), account->spinThrow_rad},
      Part{QT_TRANSLATE_NOOP("MissSentence", "the speed made it %1 %2"), account->speed_rad},
      Part{QT_TRANSLATE_NOOP("MissSentence", "%1 %2 stays unexplained"), account->remainder_rad}};
  std::ranges::stable_sort(parts, std::greater{}, [](const Part& part) { return std::abs(part.value.value); });
  QStringList words;
  for (const Part& part : parts) {
    const double size = std::abs(part.value.value);
    if (words.size() >= static_cast<qsizetype>(kMostParts)) break;
    if (degreesFromRadians(size) < kWorthSaying_deg || size < kStandsOut * part.value.standardUncertainty) continue;
    words << MissSentence::tr(part.words).arg(numbers.degrees(size), sideWords(part.value.value, thin));
  }
  if (words.isEmpty()) {
    sentences << MissSentence::tr("The film does not tell what brought it there.");
  } else {
    sentences << stopped(atStart(listApart(words)));
  }
  return sentencesOf(sentences);
}

QString notShownWords(NotShown reason) {
  switch (reason) {
    case NotShown::NotFollowed:
      return MissSentence::tr("the cue ball was not seen for long enough");
    case NotShown::NotFitted:
      return MissSentence::tr("no stroke that can be simulated goes this way");
    case NotShown::NoCushionNoCurve:
      return MissSentence::tr("no cushion, no curve: side spin cannot be seen");
    case NotShown::TooFaint:
      return MissSentence::tr("side spin did too little to be seen");
    case NotShown::SlideNotSeen:
      return MissSentence::tr("the slide was too short to tell the height of the tip");
    case NotShown::NoHopNoCurve:
      return MissSentence::tr("no hop, no curve: the cue's elevation cannot be seen");
  }
  return {};
}

QString flagWords(ShotFlag flag) {
  switch (flag) {
    case ShotFlag::CutOffAtStart:
      return MissSentence::tr("the film begins with balls in motion");
    case ShotFlag::CutOffAtEnd:
      return MissSentence::tr("the film ends before every ball rests");
    case ShotFlag::NextStrikeCame:
      return MissSentence::tr("the next strike came before every ball rested");
    case ShotFlag::PickedUp:
      return MissSentence::tr("a ball was taken up during the shot");
    case ShotFlag::MovedByHand:
      return MissSentence::tr("a ball moved that nothing hit");
    case ShotFlag::IdentityLost:
      return MissSentence::tr("balls may have been taken for each other");
    case ShotFlag::LostFromView:
      return MissSentence::tr("a moving ball was lost from view");
    case ShotFlag::SplitHit:
      return MissSentence::tr("two balls were hit too close together to tell which came first");
    case ShotFlag::UnsurePocket:
      return MissSentence::tr("a ball was lost on its way to a pocket");
  }
  return {};
}

}  // namespace ferrule
