// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/film/film_service.h"

#include <algorithm>
#include <utility>

namespace ferrule {

namespace {

/// The image nearest to a time.
long nearestImage(const std::vector<double>& times_s, double time_s) {
  const auto after = std::ranges::lower_bound(times_s, time_s);
  const auto index = static_cast<long>(after - times_s.begin());
  if (after == times_s.begin()) return 0;
  if (after == times_s.end()) return index - 1;
  return *after - time_s < time_s - *(after - 1) ? index : index - 1;
}

}  // namespace

/// Lives on the service's thread and owns the film there.
class FilmReader : public QObject {
  Q_OBJECT
 public:
  FilmReader(FilmOpener opener, std::shared_ptr<std::atomic<long>> newest)
      : opener_(std::move(opener)), newest_(std::move(newest)) {}

  void open(const QString& path, long generation, std::stop_token stop) {
    film_.reset();
    if (path.isEmpty() || stop.stop_requested()) return;
    auto film = opener_(path.toStdString(), stop);
    if (stop.stop_requested()) return;
    if (!film) {
      emit failed(film.error(), generation);
      return;
    }
    film_ = std::move(*film);
    emit opened(film_->times(), generation);
  }

  void readNear(double time_s, long request, long generation) {
    if (!film_ || film_->times().empty() || request != newest_->load()) return;
    if (auto picture = film_->picture(nearestImage(film_->times(), time_s))) emit read(*picture, generation);
  }

 signals:
  void opened(const std::vector<double>& times_s, long generation);
  void read(const ferrule::FilmPicture& picture, long generation);
  void failed(const ferrule::Error& error, long generation);

 private:
  FilmOpener opener_;
  std::shared_ptr<std::atomic<long>> newest_;
  std::unique_ptr<FilmPictures> film_;
};

FilmService::FilmService(FilmOpener opener, QObject* parent)
    : QObject(parent), newest_(std::make_shared<std::atomic<long>>(0)) {
  reader_ = new FilmReader(std::move(opener), newest_);
  thread_.setObjectName(QStringLiteral("film reader"));
  reader_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, reader_, &QObject::deleteLater);
  connect(reader_, &FilmReader::opened, this, [this](const std::vector<double>& times_s, long generation) {
    if (generation != generation_) return;
    times_s_ = times_s;
    emit timesChanged();
  });
  connect(reader_, &FilmReader::read, this, [this](const FilmPicture& picture, long generation) {
    if (generation == generation_) emit pictureRead(picture);
  });
  connect(reader_, &FilmReader::failed, this, [this](const Error& error, long generation) {
    if (generation != generation_) return;
    error_ = error;
    emit errorChanged();
  });
  thread_.start();
}

FilmService::~FilmService() {
  stop_.request_stop();
  newest_->fetch_add(1);
  thread_.quit();
  thread_.wait();
}

void FilmService::setFilm(const QString& path) {
  if (path == path_) return;
  path_ = path;
  stop_.request_stop();
  stop_ = std::stop_source();
  ++generation_;
  newest_->fetch_add(1);
  times_s_.clear();
  const bool hadError = error_.has_value();
  error_.reset();
  QMetaObject::invokeMethod(
      reader_,
      [reader = reader_, path, generation = generation_, stop = stop_.get_token()] {
        reader->open(path, generation, stop);
      },
      Qt::QueuedConnection);
  emit timesChanged();
  if (hadError) emit errorChanged();
}

void FilmService::request(double time_s) {
  const long request = newest_->fetch_add(1) + 1;
  QMetaObject::invokeMethod(
      reader_,
      [reader = reader_, time_s, request, generation = generation_] { reader->readNear(time_s, request, generation); },
      Qt::QueuedConnection);
}

}  // namespace ferrule

#include "film_service.moc"
