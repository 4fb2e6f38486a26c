// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/film/film_file.h"

#include "app/picture/image_of.h"
#include "core/vision/film_index.h"

namespace ferrule {

namespace {

class FilmFile : public FilmPictures {
 public:
  explicit FilmFile(FilmIndex index) : index_(std::move(index)) {}

  const std::vector<double>& times() const override { return index_.times_s(); }

  std::optional<FilmPicture> picture(long number) override {
    FilmImage image;
    if (!index_.imageAt(number, image)) return std::nullopt;
    return FilmPicture{imageOf(image.picture), image.number, image.time_s};
  }

 private:
  FilmIndex index_;
};

}  // namespace

Result<std::unique_ptr<FilmPictures>> openFilmFile(const std::string& path, std::stop_token stop) {
  if (stop.stop_requested()) return failure(ErrorCode::Cancelled);
  auto index = FilmIndex::open(path);
  if (!index) return tl::unexpected(index.error());
  return std::make_unique<FilmFile>(std::move(*index));
}

}  // namespace ferrule
