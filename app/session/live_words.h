// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/session/live_desk.h"
#include "app/words/numbers.h"
#include "app/words/ruling_words.h"

/// What a live session says.
namespace ferrule {

/// Whose turn it is, or what is waited for.
[[nodiscard]] QString liveTurnWords(const LiveDesk& desk, const SeatNames& names);
/// "Frames: Ada 2, Ben 1"; empty where points count, which the turn tells.
[[nodiscard]] QString scoreWords(const LiveStanding& standing, const SeatNames& names);
/// "1,204 images, none dropped": how many came, were dropped, and how far the picture is behind the newest.
[[nodiscard]] QString countWords(const ImageQueue::Counts& counts, long behind, const Numbers& numbers);

/// How the rig's last self-check came out, with what it costs and the cure. Empty before the first.
[[nodiscard]] QString liveCheckWords(const LiveDesk& desk, const Numbers& numbers);
/// Whether it found something wrong.
[[nodiscard]] bool isMisfit(const LiveCheckReport& report);
/// What of the light or the camera's exposure makes measuring worse, and what to do; empty where nothing does.
[[nodiscard]] QString lightWords(const SeenImage& image, double ballRadius_m, const Numbers& numbers);

}  // namespace ferrule
