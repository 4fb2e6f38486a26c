// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/cue/cue_reading.h"
#include "core/reading/shot_reader.h"
#include "core/table/track.h"

namespace ferrule {

/// How far a source has come.
struct SourceProgress {
  long images = 0;      ///< looked at so far
  double time_s = 0.0;  ///< of the last one
  double share = -1.0;  ///< of the whole; negative when unknown
};

/// The picture that a reading was made from.
struct KeptPicture {
  cv::Mat picture;                 ///< 8-bit BGR
  std::shared_ptr<const Rig> rig;  ///< under which it was read
  double exposure_s = 0.0;         ///< of the camera, as far as it is known by then; 0: not yet
};

/// Where image readings come from: a film, a camera, or a test.
class ReadingSource {
 public:
  virtual ~ReadingSource() = default;
  /// The readings that have become final, in order, possibly none; nothing after the last one.
  [[nodiscard]] virtual std::optional<std::vector<ImageReading>> next() = 0;
  [[nodiscard]] virtual SourceProgress progress() const = 0;
  /// Where the camera was in the table frame, m, when it took what next() returned last; nothing where nobody knows.
  [[nodiscard]] virtual std::optional<TablePoint3> camera() const { return std::nullopt; }
  /// From now on some pictures are kept until their readings have come out.
  virtual void keepPictures() {}
  /// Of an image whose reading next() returned last; nothing for most images, and where nobody keeps any.
  [[nodiscard]] virtual std::optional<KeptPicture> picture(long) const { return std::nullopt; }
  /// What was seen of the cue before a shot; called once a shot, in order. Nothing where nobody looked for it.
  [[nodiscard]] virtual std::optional<CueReading> cueOf(const ReadShot& /*shot*/) { return std::nullopt; }
};

}  // namespace ferrule
