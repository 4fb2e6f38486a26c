// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {
class MainWindow;
}

namespace ferrule::bench {

/// Plays the demo's film, 1280x720 at 60 images/s, at its own pace in place of a camera through the Session place of a
/// shown window, and prints how many images the shown one is behind the newest, how many were dropped, and how long
/// after the balls' rest their shot stood in the list. The film is decoded beside it, which a camera does not cost.
void printLive(MainWindow& window, const char* record);

}  // namespace ferrule::bench
