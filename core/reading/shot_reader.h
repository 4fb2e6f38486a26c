// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/physics/fingerprint.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"
#include "core/table/track.h"

namespace ferrule {

/// A shot with the ways of the balls around it: from shortly before the strike until shortly after rest.
struct ReadShot {
  ShotReading reading;
  std::vector<Track> tracks;
};

/// Cuts a stream of image readings into shots and reads each one.
///
/// feed() readings in order, take shots and placements as they become final; finish() at the film's end. Holds one shot
/// at a time, so memory does not grow with the film.
class ShotReader {
 public:
  /// camera: where it is in the table frame, when that is known: balls that hop are read better.
  explicit ShotReader(const MeasuredTable& measured, const std::optional<TablePoint3>& camera = {});
  /// From now on the camera is there: it was moved. A shot that is under way is read with the new place.
  void setCamera(const std::optional<TablePoint3>& camera);
  /// What earlier shots told of this table.
  void setTable(const Fingerprint& fingerprint);
  ~ShotReader();
  ShotReader(ShotReader&&) noexcept;
  ShotReader& operator=(ShotReader&&) noexcept;

  void feed(const ImageReading& reading);
  void finish();
  [[nodiscard]] std::vector<ReadShot> takeShots();
  [[nodiscard]] std::vector<Placement> takePlacements();

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
