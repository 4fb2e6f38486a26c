// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <atomic>
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "app/film/film_pictures.h"

namespace ferrule {

class FilmReader;

/// Decodes a film on a thread of its own. Requests that came too late are dropped: only the newest matters.
class FilmService : public QObject {
  Q_OBJECT
 public:
  explicit FilmService(FilmOpener opener, QObject* parent = nullptr);
  ~FilmService() override;

  /// Opens another film; an empty path closes. The film's times follow as a signal.
  void setFilm(const QString& path);
  [[nodiscard]] const QString& path() const { return path_; }
  /// The times of all images, rising; empty until they are known.
  [[nodiscard]] const std::vector<double>& times() const { return times_s_; }
  /// Why the film cannot be shown; nothing while it can.
  [[nodiscard]] const std::optional<Error>& error() const { return error_; }

  /// Asks for the image nearest to a time; answered by pictureRead.
  void request(double time_s);

 signals:
  void timesChanged();
  void pictureRead(const ferrule::FilmPicture& picture);
  void errorChanged();

 private:
  QThread thread_;
  FilmReader* reader_;
  std::shared_ptr<std::atomic<long>> newest_;  ///< the newest request; older ones are dropped
  std::stop_source stop_;
  long generation_ = 0;  ///< counts films, so that a late answer of the last one is dropped
  QString path_;
  std::vector<double> times_s_;
  std::optional<Error> error_;
};

}  // namespace ferrule
