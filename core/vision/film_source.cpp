// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_source.h"

#include <algorithm>
#include <cmath>
#include <opencv2/core.hpp>
#include <opencv2/videoio.hpp>
#include <utility>

#include "core/vision/film_capture.h"
#include "core/vision/film_container.h"
#include "core/vision/image_clock.h"

namespace ferrule {

namespace {

/// How far the claimed count may miss the images that are really there before a film counts as cut short.
constexpr long kCountSlack = 3;
constexpr double kCountSlackShare = 0.01;

}  // namespace

class FilmSource::Impl {
 public:
  Impl(FilmCapture capture, FilmInfo info, bool countIsFirm)
      : capture_(std::move(capture)), info_(std::move(info)), clock_(info_.nominalRate_hz), countIsFirm_(countIsFirm) {}

  const FilmInfo& info() const { return info_; }

  bool next(FilmImage& image) {
    if (ended_ || !capture_.grab() || !capture_.retrieve(image.picture) || image.picture.cols != info_.size.width ||
        image.picture.rows != info_.size.height) {
      ended_ = true;
      return false;
    }
    image.number = count_++;
    image.time_s = clock_.next(capture_.claimedTime_ms());
    return true;
  }

  bool endedEarly() const {
    const double missing = static_cast<double>(info_.images - count_);
    return ended_ && countIsFirm_ &&
           missing > std::max<double>(kCountSlack, kCountSlackShare * static_cast<double>(info_.images));
  }

 private:
  FilmCapture capture_;
  FilmInfo info_;
  ImageClock clock_;
  bool countIsFirm_;
  long count_ = 0;
  bool ended_ = false;
};

FilmSource::FilmSource(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
FilmSource::~FilmSource() = default;
FilmSource::FilmSource(FilmSource&&) noexcept = default;
FilmSource& FilmSource::operator=(FilmSource&&) noexcept = default;

Result<FilmSource> FilmSource::open(const std::string& path) {
  const auto container = readFilmContainer(path);
  if (!container) return tl::unexpected(container.error());
  auto capture = FilmCapture::open(path, container->turn_deg);
  if (!capture) return tl::unexpected(capture.error());
  FilmInfo info = filmInfo(path, *container, *capture);
  return FilmSource(std::make_unique<Impl>(std::move(*capture), std::move(info), container->imagesAreFirm));
}

const FilmInfo& FilmSource::info() const {
  return impl_->info();
}
bool FilmSource::next(FilmImage& image) {
  return impl_->next(image);
}
bool FilmSource::endedEarly() const {
  return impl_->endedEarly();
}

}  // namespace ferrule
