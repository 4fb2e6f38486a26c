// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/places.h"

#include <QCoreApplication>
#include <QDateTime>
#include <array>

#include "app/drills/drills_place.h"
#include "app/players/players_place.h"
#include "app/progress/progress_place.h"
#include "app/reports/reports_place.h"
#include "app/review/review_place.h"
#include "app/session/session_place.h"
#include "app/setup/setup_place.h"

namespace ferrule {

namespace {

constexpr std::array kRows{
    PlaceRow{"setup", QT_TRANSLATE_NOOP("Places", "Set-up"),
             QT_TRANSLATE_NOOP("Places", "Set up table, lens and rig, and see how far to trust them"), "setup", "Alt+1",
             [](const Openers& openers, const ActionSet& actions) -> Place* {
               return new SetupPlace(actions, ownSetupFolder(), openers.projector);
             }},
    PlaceRow{"session", QT_TRANSLATE_NOOP("Places", "Session"),
             QT_TRANSLATE_NOOP("Places", "Put in what is played, shot by shot"), "session", "Alt+2",
             [](const Openers& openers, const ActionSet& actions) -> Place* {
               return new SessionPlace(actions, QDateTime::currentMSecsSinceEpoch, openers.projector);
             }},
    PlaceRow{
        "review", QT_TRANSLATE_NOOP("Places", "Review"),
        QT_TRANSLATE_NOOP("Places", "Look at measured shots, film and plan together"), "review", "Alt+3",
        [](const Openers& openers, const ActionSet& actions) -> Place* { return new ReviewPlace(openers, actions); }},
    PlaceRow{"drills", QT_TRANSLATE_NOOP("Places", "Drills"),
             QT_TRANSLATE_NOOP("Places", "Set up a drill, repeat it, and see the scatter shrink"), "drills", "Alt+4",
             [](const Openers& openers, const ActionSet& actions) -> Place* {
               return new DrillsPlace(actions, QDateTime::currentMSecsSinceEpoch, openers.projector);
             }},
    PlaceRow{"progress", QT_TRANSLATE_NOOP("Places", "Progress"),
             QT_TRANSLATE_NOOP("Places", "See how a player's aim, speed and makes hold up"), "progress", "Alt+5",
             [](const Openers&, const ActionSet& actions) -> Place* {
               return new ProgressPlace(actions, QDateTime::currentMSecsSinceEpoch);
             }},
    PlaceRow{"reports", QT_TRANSLATE_NOOP("Places", "Reports"),
             QT_TRANSLATE_NOOP("Places", "Make the progress report that a student takes home"), "reports", "Alt+6",
             [](const Openers&, const ActionSet& actions) -> Place* {
               return new ReportsPlace(actions, QDateTime::currentMSecsSinceEpoch);
             }},
    PlaceRow{"players", QT_TRANSLATE_NOOP("Places", "Players"),
             QT_TRANSLATE_NOOP("Places", "Who plays: groups, consent, notes, and what is kept of each"), "players",
             "Alt+7",
             [](const Openers&, const ActionSet& actions) -> Place* {
               return new PlayersPlace(actions, QDateTime::currentMSecsSinceEpoch);
             }},
};

}  // namespace

std::span<const PlaceRow> placeRows() {
  return kRows;
}

}  // namespace ferrule
