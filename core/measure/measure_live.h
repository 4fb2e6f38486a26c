// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/film_keeper.h"
#include "core/measure/image_queue.h"
#include "core/measure/live_inbox.h"
#include "core/measure/measure.h"

namespace ferrule {

/// How the game stands now.
struct LiveStanding {
  GameState state;
  std::array<int, 2> framesWon{};  ///< by seat

  bool operator==(const LiveStanding&) const = default;
};

struct LiveObserver {
  MeasureObserver measured;
  /// The newest image with the balls as far as they are known by then, long before measured.picture tells of it: names
  /// may yet change. Told of most images, and of few while measuring is behind.
  std::function<void(const ImageReading&, const KeptPicture&)> glimpse;
  std::function<void(const LiveStanding&)> standing;  ///< after each shot, when there is a referee
};

/// Where a live session comes from. All must outlive the measuring.
struct LiveInput {
  ImageQueue& images;
  LiveInbox& inbox;
  std::function<UtcMilliseconds()> now;  ///< asked when the first image is there
  /// Keeps what the queue is offered in a film, whoever ties them; nothing: no film is kept. Finished with the session.
  FilmKeeper* film = nullptr;
};

/// Measures what a camera sees, image by image as it comes, with the same code as measureFilm. Ends when the queue is
/// closed and empty, or when a stop is asked for: either way the session ends with its frame complete. Shots are judged
/// afterwards (judgeSession). A suggestion that was seen before a shot's strike is kept with the shot as shown, and
/// what people say of rulings on the way is in force from then on. A film that is kept stands in the record from its
/// first image on, with its hash at the end.
///
/// options.film: a name for the camera; again, output and judge count for nothing. Nothing is made in the record before
/// the first image; a session of this name that is there already is never joined: a live session is one of its own.
/// Errors: those of rig, table and record; ImageSizeMismatch (subject: the camera; detail: the rig file) for a first
/// image of another size than the rig's.
[[nodiscard]] Result<MeasureReport> measureLive(const MeasureOptions& options, const LiveInput& input,
                                                const JobControl& job, const LiveObserver& observer = {});

}  // namespace ferrule
