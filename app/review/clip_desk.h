// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "app/film/clip_file.h"
#include "app/review/clip_images.h"
#include "app/window/background_job.h"
#include "core/record/consent.h"

namespace ferrule {

/// What a clip shows.
enum class ClipKind { FilmWithWays, Film, Plan };

/// A clip that is asked for: one shot, from before its strike until after its rest.
struct ClipWish {
  ClipKind kind = ClipKind::FilmWithWays;
  std::string path;
  std::string record;                ///< in which the consents of who is on the film stand
  std::vector<std::string> players;  ///< who is on the film
  std::string film;                  ///< where it lies now; empty for a plan of a shot without a film
  std::optional<Rig> rig;
  std::shared_ptr<const StoredShot> shot;
  MeasuredTable table;
  Inks inks;
  UtcMilliseconds now = 0;
};

/// Why somebody's film must not be handed on.
struct ClipObstacle {
  std::string name;
  ConsentScope scope = ConsentScope::Sharing;  ///< that is missing
  bool minor = false;

  bool operator==(const ClipObstacle&) const = default;
};

/// Who of these players has not consented to being filmed, or to films being handed on (a minor: a guardian in their
/// place), each once. Names that the record does not know are left out. Errors: those of Record.
[[nodiscard]] Result<std::vector<ClipObstacle>> clipObstacles(Record& record, const std::vector<std::string>& players,
                                                              UtcMilliseconds at);

/// Writes clips in the background, one at a time. A film of people is written only with their consent; the plan shows
/// nobody.
class ClipDesk : public QObject {
  Q_OBJECT
 public:
  explicit ClipDesk(FilmOpener opener, QObject* parent = nullptr);

  /// Nothing happens while another one is written.
  void write(const ClipWish& wish);
  /// Carries something out on the caller's thread if everybody consented to films being handed on; refused() otherwise.
  void whenAllowed(const std::string& record, const std::vector<std::string>& players, UtcMilliseconds now,
                   std::function<void()> then);
  /// What was begun leaves no file.
  void stop() { job_.cancel(); }
  [[nodiscard]] BackgroundJob& job() { return job_; }

 signals:
  void written(const QString& path, qint64 images);
  void refused(const std::vector<ferrule::ClipObstacle>& obstacles);
  void failed(const ferrule::Error& error);

 private:
  FilmOpener opener_;
  BackgroundJob job_;
};

}  // namespace ferrule
