// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/measure.h"

namespace ferrule {

/// A frame of a record that waits for its shots.
struct MeasuredFrame {
  Record record;
  SessionId session;
  std::string sessionName;
  FrameId frame;
  FilmEntry film;                         ///< its true length is not known yet
  std::vector<PlayerId> players;          ///< in playing order
  std::optional<KnownFingerprint> table;  ///< with which the shots are to be read
};

/// What a frame is added to a record with.
struct WantedFrame {
  std::string session;     ///< its name
  FilmEntry film;          ///< without path and hash: seen live, and nobody keeps the film
  bool alwaysNew = false;  ///< begin a session even where one of that name on the same table is known
};

/// Adds a frame to the session of that name on the same table, or to a new one that began with the film's first image.
/// Of options: table, game, players, kind.
/// Errors: those of Record; FileMalformed for a fingerprint that cannot be read.
[[nodiscard]] Result<MeasuredFrame> addMeasuredFrame(Record record, const MeasureOptions& options,
                                                     const WantedFrame& wanted, const Rig& rig,
                                                     const MeasuredTable& measured);

/// The sinks that lead into a frame, which must stay where it is. One player: every shot is that player's.
[[nodiscard]] MeasureSinks sinksInto(MeasuredFrame& frame);

/// Its film was measured to the end. Errors: those of Record.
[[nodiscard]] Result<void> completeFrame(MeasuredFrame& frame, const MeasureReport& report);

}  // namespace ferrule
