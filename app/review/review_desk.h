// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHash>
#include <QObject>
#include <memory>
#include <optional>
#include <vector>

#include "app/film/film_service.h"
#include "app/review/playhead.h"
#include "app/review/record_service.h"
#include "app/review/time_axis.h"

namespace ferrule {

/// What a review looks at: the open record, the session, the shot and the moment. Joins the record's reader, the film's
/// reader and the playhead; knows no widgets.
class ReviewDesk : public QObject {
  Q_OBJECT
 public:
  /// Which session and shot to show as soon as they are read; 0 for the newest.
  struct Wanted {
    SessionId session;
    ShotId shot;
  };

  ReviewDesk(ReviewSourceOpener recordOpener, FilmOpener filmOpener, QObject* parent = nullptr);

  void openRecord(const QString& path, Wanted wanted = {});
  /// Reads a session for the list without leaving the one that is shown.
  void readSession(SessionId session);
  /// Shows a session from its first shot.
  void showSession(SessionId session);
  void showShot(SessionId session, ShotId shot);
  /// Reads the session and the shot that are shown again: the record holds something else of them. Shot and moment
  /// stay.
  void refresh();
  /// Where a film lies now, when it is not where it was measured.
  void setFilmPlace(const QString& recordedPath, const QString& currentPath);

  void stepShots(int shots);
  void stepEvents(int events);
  /// Goes to a time of the session, and so perhaps to another shot.
  void seekSession(double session_s);

  [[nodiscard]] const QString& recordPath() const { return recordPath_; }
  [[nodiscard]] const std::vector<SessionSummary>& sessions() const { return sessions_; }
  /// Empty until a session has been read.
  [[nodiscard]] std::shared_ptr<const SessionContent> content() const { return content_; }
  [[nodiscard]] const TimeAxis& axis() const { return axis_; }
  /// Empty until a shot has been read.
  [[nodiscard]] std::shared_ptr<const StoredShot> shot() const { return shot_; }
  /// The shot's frame in content(); empty while there is none.
  [[nodiscard]] const FrameContent* frame() const;
  [[nodiscard]] double sessionTime_s() const;
  [[nodiscard]] Playhead& playhead() { return playhead_; }
  [[nodiscard]] FilmService& film() { return film_; }
  /// The film of the shot as the record names it; empty without one.
  [[nodiscard]] QString recordedFilm() const;
  /// Whether the playhead's images are counted in the whole film.
  [[nodiscard]] bool countsFilmImages() const { return countsFilmImages_; }

 signals:
  void recordOpened();
  /// A session's rows arrived for the list.
  void sessionRead(const ferrule::SessionContent& content);
  /// Another session is shown.
  void contentChanged();
  /// Another shot is shown, or the same with other values.
  void shotChanged();
  void moved();
  /// opening: nothing could be opened, what was open stays.
  void failed(const ferrule::Error& error, bool opening);

 private:
  struct Place {
    std::size_t frame = 0;
    std::size_t shot = 0;
  };

  void takeSessions(const QString& path, const std::vector<SessionSummary>& sessions);
  void takeContent(std::shared_ptr<const SessionContent> content);
  /// The session that is shown, read again.
  void renew(std::shared_ptr<const SessionContent> content);
  void takeShot(std::shared_ptr<const StoredShot> shot);
  void takeFilmTimes();
  void select(Place place, std::optional<double> film_s);
  void adopt(std::shared_ptr<const StoredShot> shot);
  void follow();
  void openFilm();
  [[nodiscard]] std::optional<Place> placeOf(ShotId shot) const;
  [[nodiscard]] std::optional<Place> neighbour(Place place, int shots) const;
  [[nodiscard]] const ShotSummary& at(Place place) const;
  [[nodiscard]] std::optional<SessionSummary> summaryOf(SessionId session) const;

  RecordService record_;
  FilmService film_;
  Playhead playhead_;
  QString recordPath_;
  std::vector<SessionSummary> sessions_;
  Wanted wanted_;
  std::shared_ptr<const SessionContent> content_;
  TimeAxis axis_;
  std::shared_ptr<const StoredShot> shot_;
  std::optional<Place> selected_;
  std::optional<double> wantedTime_s_;  ///< of the film; where to stand once the selected shot is read
  QHash<qint64, std::shared_ptr<const StoredShot>> known_;  ///< shots near the selected one
  QHash<QString, QString> filmPlaces_;
  bool countsFilmImages_ = false;
  bool refreshes_ = false;  ///< the session that is shown was asked for again
};

}  // namespace ferrule
