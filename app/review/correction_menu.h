// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMenu>
#include <functional>
#include <memory>

#include "app/words/numbers.h"
#include "core/measure/said_of_shot.h"

namespace ferrule {

/// What a menu of corrections is about.
struct CorrectionSubject {
  std::shared_ptr<const StoredShot> shot;
  std::vector<std::string> players;   ///< of the session, in playing order
  std::vector<std::string> others;    ///< everyone else whom the record knows
  double time_s = 0.0;                ///< that is looked at, of the film
  std::optional<BallName> ball;       ///< that is pointed at
  QString who;                        ///< who corrects
  std::vector<Placement> placements;  ///< balls that were put down before the shot, after the one before it
  bool hasNext = false;               ///< a shot follows in the frame
  Numbers numbers;
};

/// Called with what was chosen.
using SayOfShot = std::function<void(const ShotSaying&)>;
/// One of the functions below.
using FillMenu = void (*)(QMenu&, const CorrectionSubject&, const SayOfShot&);

/// Menus from which a person chooses what was read wrongly of a shot. Each choice carries an object name, such as
/// "say-pot" or "target-3-foot-left".
void fillOutcomes(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// The shot was a foul, of a kind.
void fillFouls(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// Ball, then pocket; a ball that is pointed at stands first.
void fillTargets(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
void fillFirstContacts(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
void fillPlayers(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// Fouls, turn, the cue ball's place, the frame; empty where no referee watched.
void fillRulings(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// Two balls that are each other, in the whole shot or from the moment on that is looked at.
void fillNames(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// The image that is looked at shows the strike, or everything at rest.
void fillTimes(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// Another shot begins in the image that is looked at, or the next shot is no shot of its own; empty without a film.
void fillParts(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// Balls that were put down before the shot: another ball, nobody did, or one more; empty without a film.
void fillPlacements(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);
/// All of these, each as a menu of its own.
void fillCorrections(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say);

}  // namespace ferrule
