// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <thread>

#include "app/live/live_source.h"

namespace ferrule {

/// How fast a film stands in for a camera.
enum class FilmPace {
  Own,      ///< as it was filmed; what measuring cannot keep up with is dropped, as with a camera
  AsTaken,  ///< as fast as it is measured, every image
};

/// A film that is played as if a camera saw it now: to try a live session without one.
class PacedFilm : public LiveSource {
  Q_OBJECT
 public:
  explicit PacedFilm(const QString& path, FilmPace pace = FilmPace::Own, QObject* parent = nullptr);
  ~PacedFilm() override;

  [[nodiscard]] QString name() const override;
  void start(std::shared_ptr<ImageQueue> images) override;
  void stop() override;

 private:
  void play(const std::stop_token& stop, ImageQueue& images);

  QString path_;
  FilmPace pace_;
  std::jthread thread_;
};

}  // namespace ferrule
