// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ferrule::bench {

/// Measures every film of a folder as the product does, fits a fingerprint to each table's shots, simulates each shot
/// from its measured strike with that fingerprint, and prints how far the places where the balls came to rest and the
/// pocketed balls agree with the film. The truth is read for the camera's name alone.
void printFilms(const std::string& folder);

}  // namespace ferrule::bench
