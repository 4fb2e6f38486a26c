// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <span>

#include "app/film/film_pictures.h"
#include "app/review/review_source.h"
#include "app/window/place.h"

namespace ferrule {

class ProjectorDesk;

/// What places are made of: how to reach records and films. Given once, by main.
struct Openers {
  ReviewSourceOpener record;
  FilmOpener film;
  QString demoRecord;       ///< path of the demo's record; empty where it was not measured yet
  QString demoFolder = {};  ///< of its film, rig and table; empty where they are not installed
  /// That all places share; null: a place has one of its own.
  ProjectorDesk* projector = nullptr;
};

/// One row of the list of places.
struct PlaceRow {
  const char* name;  ///< object name, for tests and settings
  const char* text;  ///< to be translated in the context "Places"
  const char* help;
  const char* icon;
  const char* keys;
  Place* (*make)(const Openers& openers, const ActionSet& actions);
};

/// The places that are built, in the order of the list.
[[nodiscard]] std::span<const PlaceRow> placeRows();

}  // namespace ferrule
