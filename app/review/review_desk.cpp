// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/review_desk.h"

#include <algorithm>

#include "app/review/moment.h"

namespace ferrule {

namespace {

/// How long before its strike a shot is already the one that is looked at: the last practice strokes.
constexpr double kLead_s = 1.0;
/// Shots kept in memory around the selected one.
constexpr int kKnownShots = 24;

}  // namespace

ReviewDesk::ReviewDesk(ReviewSourceOpener recordOpener, FilmOpener filmOpener, QObject* parent)
    : QObject(parent), record_(std::move(recordOpener)), film_(std::move(filmOpener)) {
  connect(&record_, &RecordService::opened, this, &ReviewDesk::takeSessions);
  connect(&record_, &RecordService::sessionRead, this, &ReviewDesk::takeContent);
  connect(&record_, &RecordService::shotRead, this, &ReviewDesk::takeShot);
  connect(&record_, &RecordService::failed, this, &ReviewDesk::failed);
  connect(&film_, &FilmService::timesChanged, this, &ReviewDesk::takeFilmTimes);
  connect(&playhead_, &Playhead::moved, this, [this] {
    follow();
    emit moved();
  });
}

void ReviewDesk::openRecord(const QString& path, Wanted wanted) {
  playhead_.pause();
  wanted_ = wanted;
  record_.open(path);
}

void ReviewDesk::readSession(SessionId session) {
  if (const auto summary = summaryOf(session)) record_.readSession(*summary);
}

void ReviewDesk::showSession(SessionId session) {
  showShot(session, {});
}

void ReviewDesk::showShot(SessionId session, ShotId shot) {
  wanted_ = {session, shot};
  if (!content_ || content_->session.id != session) {
    readSession(session);
    return;
  }
  const auto place = shot ? placeOf(shot) : neighbour({0, 0}, 0);
  if (!place || (selected_ && at(*selected_).id == at(*place).id)) return;
  playhead_.pause();
  select(*place, at(*place).strike_s);
}

void ReviewDesk::refresh() {
  if (!content_) return;
  refreshes_ = true;
  known_.clear();
  readSession(content_->session.id);
  if (selected_) record_.readShot(at(*selected_).id);
}

void ReviewDesk::setFilmPlace(const QString& recordedPath, const QString& currentPath) {
  filmPlaces_.insert(recordedPath, currentPath);
  openFilm();
}

void ReviewDesk::stepShots(int shots) {
  if (!selected_) return;
  const auto place = neighbour(*selected_, shots);
  if (!place || (place->frame == selected_->frame && place->shot == selected_->shot)) return;
  playhead_.pause();
  select(*place, at(*place).strike_s);
}

void ReviewDesk::stepEvents(int events) {
  if (!shot_ || !selected_ || playhead_.isEmpty() || events == 0) return;
  std::vector<int> stops;
  for (const double time_s : eventTimes(*shot_))
    stops.push_back(playhead_.indexNear(time_s));
  const int here = playhead_.index();
  if (events > 0) {
    const auto next = std::ranges::upper_bound(stops, here);
    if (next != stops.end()) return playhead_.step(*next - here);
    return stepShots(1);
  }
  const auto next = std::ranges::lower_bound(stops, here);
  if (next != stops.begin()) return playhead_.step(*(next - 1) - here);
  const auto place = neighbour(*selected_, -1);
  if (!place || (place->frame == selected_->frame && place->shot == selected_->shot)) return;
  playhead_.pause();
  select(*place, at(*place).rest_s);
}

void ReviewDesk::seekSession(double session_s) {
  if (!content_) return;
  std::optional<Place> found;
  for (std::size_t f = 0; f < content_->frames.size(); ++f) {
    const auto& shots = content_->frames[f].shots;
    for (std::size_t s = 0; s < shots.size(); ++s) {
      if (!found || axis_.offset_s(f) + shots[s].strike_s - kLead_s <= session_s) found = Place{f, s};
    }
  }
  if (!found) return;
  const double film_s = session_s - axis_.offset_s(found->frame);
  if (selected_ && at(*selected_).id == at(*found).id) {
    playhead_.seek(film_s);
  } else {
    select(*found, film_s);
  }
}

const FrameContent* ReviewDesk::frame() const {
  return content_ && selected_ ? &content_->frames[selected_->frame] : nullptr;
}

double ReviewDesk::sessionTime_s() const {
  return selected_ ? axis_.offset_s(selected_->frame) + playhead_.time_s() : 0.0;
}

QString ReviewDesk::recordedFilm() const {
  return shot_ && shot_->film ? QString::fromStdString(shot_->film->path) : QString();
}

void ReviewDesk::takeSessions(const QString& path, const std::vector<SessionSummary>& sessions) {
  recordPath_ = path;
  sessions_ = sessions;
  content_.reset();
  shot_.reset();
  selected_.reset();
  known_.clear();
  countsFilmImages_ = false;
  film_.setFilm({});
  playhead_.setTimes({});
  emit recordOpened();
  emit contentChanged();
  emit shotChanged();
  if (sessions_.empty()) return;
  if (!summaryOf(wanted_.session)) wanted_ = {sessions_.front().id, {}};
  readSession(wanted_.session);
}

void ReviewDesk::takeContent(std::shared_ptr<const SessionContent> content) {
  emit sessionRead(*content);
  if (content->session.id != wanted_.session) return;
  if (content_ && content_->session.id == content->session.id) {
    if (refreshes_) renew(std::move(content));
    return;
  }
  playhead_.pause();
  content_ = std::move(content);
  axis_ = TimeAxis(*content_);
  selected_.reset();
  shot_.reset();
  known_.clear();
  emit contentChanged();
  auto place = wanted_.shot ? placeOf(wanted_.shot) : std::nullopt;
  if (!place) place = neighbour({0, 0}, 0);
  if (place) {
    select(*place, at(*place).strike_s);
  } else {
    playhead_.setTimes({});
    emit shotChanged();
  }
}

void ReviewDesk::renew(std::shared_ptr<const SessionContent> content) {
  refreshes_ = false;
  const std::optional<Place> was = selected_;
  const ShotId shown = selected_ ? at(*selected_).id : ShotId{};
  content_ = std::move(content);
  axis_ = TimeAxis(*content_);
  selected_ = placeOf(shown);
  emit contentChanged();
  if (was && !selected_) {
    // The shot is a part of another one now: of the one before it.
    const auto near = neighbour(*was, -1);
    if (near) select(*near, at(*near).strike_s);
  }
  emit moved();
}

void ReviewDesk::select(Place place, std::optional<double> film_s) {
  selected_ = place;
  wantedTime_s_ = film_s;
  const ShotId id = at(place).id;
  if (known_.size() > kKnownShots) known_.clear();
  if (known_.contains(id.value)) {
    adopt(known_.value(id.value));
  } else {
    record_.readShot(id);
  }
  for (const int step : {1, -1}) {
    const auto near = neighbour(place, step);
    if (near && !known_.contains(at(*near).id.value)) record_.readShot(at(*near).id);
  }
}

void ReviewDesk::takeShot(std::shared_ptr<const StoredShot> shot) {
  known_.insert(shot->id.value, shot);
  if (!selected_ || at(*selected_).id != shot->id) return;
  if (shot_ && *shot_ == *shot) return;
  adopt(std::move(shot));
}

void ReviewDesk::adopt(std::shared_ptr<const StoredShot> shot) {
  shot_ = std::move(shot);
  openFilm();
  // The film's own times where it has been read; the tracks' until then.
  countsFilmImages_ = !recordedFilm().isEmpty() && !film_.times().empty();
  const double time_s = wantedTime_s_.value_or(playhead_.time_s());
  wantedTime_s_.reset();
  if (!countsFilmImages_) {
    playhead_.setTimes(trackTimes(*shot_));
  } else if (playhead_.times() != film_.times()) {
    playhead_.setTimes(film_.times());
  }
  playhead_.seek(time_s);
  emit shotChanged();
  emit moved();
}

void ReviewDesk::openFilm() {
  const QString recorded = recordedFilm();
  film_.setFilm(filmPlaces_.value(recorded, recorded));
}

void ReviewDesk::takeFilmTimes() {
  if (!shot_ || recordedFilm().isEmpty() || film_.times().empty()) return;
  countsFilmImages_ = true;
  playhead_.setTimes(film_.times());
  emit moved();
}

void ReviewDesk::follow() {
  if (!countsFilmImages_ || !selected_ || wantedTime_s_) return;
  const auto& frames = content_->frames;
  std::optional<Place> found;
  for (std::size_t f = 0; f < frames.size(); ++f) {
    const auto& film = frames[f].frame.film;
    if (!film || !shot_ || !shot_->film || film->id != shot_->film->id) continue;
    for (std::size_t s = 0; s < frames[f].shots.size(); ++s) {
      if (!found || frames[f].shots[s].strike_s - kLead_s <= playhead_.time_s()) found = Place{f, s};
    }
  }
  if (!found || at(*found).id == at(*selected_).id) return;
  select(*found, std::nullopt);
}

std::optional<ReviewDesk::Place> ReviewDesk::placeOf(ShotId shot) const {
  for (std::size_t f = 0; f < content_->frames.size(); ++f) {
    const auto& shots = content_->frames[f].shots;
    for (std::size_t s = 0; s < shots.size(); ++s) {
      if (shots[s].id == shot) return Place{f, s};
    }
  }
  return std::nullopt;
}

std::optional<ReviewDesk::Place> ReviewDesk::neighbour(Place place, int shots) const {
  std::vector<Place> order;
  std::size_t here = 0;
  for (std::size_t f = 0; f < content_->frames.size(); ++f) {
    for (std::size_t s = 0; s < content_->frames[f].shots.size(); ++s) {
      if (f < place.frame || (f == place.frame && s < place.shot)) here = order.size() + 1;
      order.push_back({f, s});
    }
  }
  if (order.empty()) return std::nullopt;
  const long wanted = static_cast<long>(here) + shots;
  return order[static_cast<std::size_t>(std::clamp(wanted, 0L, static_cast<long>(order.size()) - 1))];
}

const ShotSummary& ReviewDesk::at(Place place) const {
  return content_->frames[place.frame].shots[place.shot];
}

std::optional<SessionSummary> ReviewDesk::summaryOf(SessionId session) const {
  const auto found = std::ranges::find(sessions_, session, &SessionSummary::id);
  return found == sessions_.end() ? std::nullopt : std::optional<SessionSummary>(*found);
}

}  // namespace ferrule
