// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/places.h"

#include <QCoreApplication>
#include <array>

#include "app/review/review_place.h"

namespace ferrule {

namespace {

constexpr std::array kRows{
    PlaceRow{
        "review", QT_TRANSLATE_NOOP("Places", "Review"),
        QT_TRANSLATE_NOOP("Places", "Look at measured shots, film and plan together"), "review", "Alt+3",
        [](const Openers& openers, const ActionSet& actions) -> Place* { return new ReviewPlace(openers, actions); }},
};

}  // namespace

std::span<const PlaceRow> placeRows() {
  return kRows;
}

}  // namespace ferrule
