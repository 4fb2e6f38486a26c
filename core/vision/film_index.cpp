// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_index.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/base/contract.h"
#include "core/vision/film_capture.h"
#include "core/vision/film_container.h"
#include "core/vision/image_clock.h"
#include "core/vision/picture_cache.h"

namespace ferrule {

namespace {

constexpr std::size_t kCache_bytes = 192u << 20;  ///< 31 pictures of 1920 x 1080, 69 of 1280 x 720
/// Pictures before the wanted one that are kept in passing, for stepping back: as many, but no more than half the
/// cache.
constexpr long kMostKeptBefore = 24;
/// A shown time is told from its neighbours' by less than this.
constexpr double kSameTime_s = 0.0001;
/// OpenCV 4.6 starts decoding at the last key image that lies at least so many images before the one it is sent to.
constexpr long kReaderRunUp = 17;
/// Otherwise a jump aims so far before the wanted image, and every further one four times as far: the reader gives the
/// last few images of a film no times, so it must land before them to know where it is.
constexpr long kFirstAim = 20;

}  // namespace

class FilmIndex::Impl {
 public:
  Impl(FilmCapture capture, FilmInfo info, std::vector<ContainerImage> images)
      : capture_(std::move(capture)), info_(std::move(info)), images_(std::move(images)), cache_(kCache_bytes) {
    ImageClock clock(info_.nominalRate_hz);
    times_s_.reserve(images_.size());
    const auto picture_bytes =
        static_cast<std::size_t>(info_.size.width) * static_cast<std::size_t>(info_.size.height) * 3;
    keptBefore_ = std::min(kMostKeptBefore, static_cast<long>(kCache_bytes / picture_bytes / 2));
    for (const ContainerImage& image : images_)
      times_s_.push_back(clock.next(1000.0 * image.time_s));
  }

  const FilmInfo& info() const { return info_; }
  const std::vector<double>& times_s() const { return times_s_; }

  bool imageAt(long number, FilmImage& image) {
    FERRULE_REQUIRE(number >= 0 && number < static_cast<long>(times_s_.size()));
    image.number = number;
    image.time_s = times_s_[static_cast<std::size_t>(number)];
    image.picture = cache_.find(number);
    if (!image.picture.empty()) return true;
    if (!approach(number)) return false;
    while (current_ < number) {
      if (!grabNext()) return false;
      if (current_ >= number - keptBefore_ && current_ < number) keepCurrent();
    }
    if (current_ != number) return false;
    cv::Mat picture;
    if (!capture_->retrieve(picture)) return false;
    cache_.keep(number, picture);
    image.picture = picture;
    return true;
  }

 private:
  bool grabNext() {
    if (!capture_->grab()) {
      current_ = kLost;
      return false;
    }
    ++current_;
    return true;
  }

  void keepCurrent() {
    cv::Mat picture;
    if (!cache_.holds(current_) && capture_->retrieve(picture)) cache_.keep(current_, picture);
  }

  /// Brings the capture to an image not after number from which it can be reached by going on.
  bool approach(long number) {
    const long key = keyBefore(number);
    if (current_ < number && key <= current_ + 1) return true;
    if (key == 0) return restart();
    if (number - key >= kReaderRunUp && land(key + kReaderRunUp) && current_ <= number) return true;
    for (long aim = kFirstAim; aim < number; aim *= 4) {
      if (land(number - aim) && current_ <= number) return true;
    }
    return restart();
  }

  long keyBefore(long number) const {
    while (number > 0 && !images_[static_cast<std::size_t>(number)].key)
      --number;
    return number;
  }

  /// Jumps to before an image and finds out from the time where that led. False when the time says nothing.
  bool land(long target) {
    current_ = kLost;
    capture_->seek(1000.0 * (images_[static_cast<std::size_t>(target)].time_s - images_.front().time_s));
    if (!capture_->grab()) return false;
    const auto found = numberOfReaderTime(capture_->claimedTime_ms());
    if (!found) return false;
    current_ = *found;
    return true;
  }

  /// Opens the film anew and decodes from its start.
  bool restart() {
    auto capture = FilmCapture::open(info_.path, info_.rotation_deg);
    if (!capture) return false;
    capture_ = std::move(*capture);
    current_ = kLost;
    return true;
  }

  std::optional<long> numberOfReaderTime(double time_ms) const {
    if (time_ms <= 0.0) return std::nullopt;
    const double time_s = images_.front().time_s + time_ms / 1000.0;
    const auto after = std::lower_bound(images_.begin(), images_.end(), time_s - kSameTime_s,
                                        [](const ContainerImage& image, double value) { return image.time_s < value; });
    if (after == images_.end() || std::abs(after->time_s - time_s) > kSameTime_s) return std::nullopt;
    return after - images_.begin();
  }

  static constexpr long kLost = -1;  ///< before the first image, or nowhere

  std::optional<FilmCapture> capture_;
  FilmInfo info_;
  std::vector<ContainerImage> images_;
  std::vector<double> times_s_;
  PictureCache cache_;
  long keptBefore_ = 0;
  long current_ = kLost;  ///< the image that was grabbed last
};

FilmIndex::FilmIndex(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
FilmIndex::~FilmIndex() = default;
FilmIndex::FilmIndex(FilmIndex&&) noexcept = default;
FilmIndex& FilmIndex::operator=(FilmIndex&&) noexcept = default;

Result<FilmIndex> FilmIndex::open(const std::string& path) {
  const auto container = readFilmContainer(path);
  if (!container) return tl::unexpected(container.error());
  auto images = readContainerImages(path);
  if (!images) return tl::unexpected(images.error());
  auto capture = FilmCapture::open(path, container->turn_deg);
  if (!capture) return tl::unexpected(capture.error());
  if (images->empty()) return failure(ErrorCode::FilmTruncated, path);
  FilmInfo info = filmInfo(path, *container, *capture);
  return FilmIndex(std::make_unique<Impl>(std::move(*capture), std::move(info), std::move(*images)));
}

const FilmInfo& FilmIndex::info() const {
  return impl_->info();
}
long FilmIndex::size() const {
  return static_cast<long>(impl_->times_s().size());
}
const std::vector<double>& FilmIndex::times_s() const {
  return impl_->times_s();
}

long FilmIndex::numberAt(double time_s) const {
  const std::vector<double>& times = impl_->times_s();
  const auto after = std::upper_bound(times.begin(), times.end(), time_s + kSameTime_s);
  return std::max(0L, static_cast<long>(after - times.begin()) - 1);
}

bool FilmIndex::imageAt(long number, FilmImage& image) {
  return impl_->imageAt(number, image);
}

}  // namespace ferrule
