// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/base/output_file.h"
#include "core/camera/camera_move.h"
#include "core/camera/rig.h"
#include "core/measure/spool.h"
#include "core/measure/table_fingerprint.h"
#include "core/table/shot.h"
#include "core/table/track.h"

namespace ferrule {

/// What measured.json says of its film.
struct MeasuredFilm {
  std::string name;         ///< without folders
  long images = 0;          ///< read, not claimed
  double duration_s = 0.0;  ///< time of the last image
  ImageSize size;

  bool operator==(const MeasuredFilm&) const = default;
};

/// Writes measured.json, "ferrule-measured/1" (DEVELOPERS.md, file formats), from a film of any length in the same
/// memory: what comes in order of time but stands in order of balls waits in temporary files.
class MeasuredFile {
 public:
  /// Errors: FileNotWritable.
  [[nodiscard]] static Result<MeasuredFile> make(const std::string& path);

  /// A failed write shows in keep().
  void add(const ImageReading& reading);
  /// ruling, cue: lines of JSON, which become the shot's fields of these names; empty for none.
  void add(const ShotReading& shot, const std::string& ruling = {}, const std::string& cue = {});
  void add(const Placement& placement);
  /// Joins everything into the file and gives it its name. moves: those of the camera, each with its new rig; the shots
  /// that were played during one are named with it. table: the fingerprint with which the shots were read.
  /// Errors: FileNotWritable.
  [[nodiscard]] Result<void> keep(const MeasuredFilm& film, const Rig& rig, std::span<const CameraMove> moves = {},
                                  const std::optional<KnownFingerprint>& table = {});

 private:
  MeasuredFile(OutputFile output, Spool shots, Spool placements);
  [[nodiscard]] Result<void> writeTrack(BallName ball, Spool& samples);
  [[nodiscard]] Result<void> writeList(Spool& entries);
  [[nodiscard]] std::vector<int> shotsDuring(const CameraMove& move) const;

  OutputFile output_;
  Spool shots_;
  Spool placements_;
  std::array<std::optional<Spool>, BallName::kCount> samples_;
  std::optional<Error> failed_;
  struct ShotTime {
    int number = 0;
    double strike_s = 0.0;
    double rest_s = 0.0;
  };
  std::vector<ShotTime> shotTimes_;
};

}  // namespace ferrule
