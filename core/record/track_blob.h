// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <optional>

#include "core/table/track.h"

namespace ferrule {

/// One track, packed for the record: about a twentieth of its size as numbers.
///
/// Version 1:
///   byte 0       1, the version
///   bytes 1-4    length of the body, big-endian
///   the rest     the body, compressed (zlib, RFC 1950)
/// The body, column after column so that a resting ball's rows compress to nearly nothing:
///   n            samples, varint
///   n times      time in microseconds: the difference of successive differences, zig-zag varint
///   n times      x in 0.01 mm: difference to the sample before, zig-zag varint
///   n times      y likewise
///   n times      standard uncertainty in 0.01 mm: likewise
///   ceil(n/8)    seen, one bit a sample, lowest bit first
/// A varint holds 7 bits a byte, low bits first, the high bit set on every byte but the last; zig-zag maps 0, -1, 1, -2
/// to 0, 1, 2, 3.
///
/// Quantising moves a time by at most 0.5 us and a coordinate by at most 0.005 mm, far below what a film shows.
[[nodiscard]] QByteArray packTrack(const Track& track);

/// Nothing for bytes that are not a whole track of a known version.
[[nodiscard]] std::optional<Track> unpackTrack(BallName ball, const QByteArray& bytes);

}  // namespace ferrule
