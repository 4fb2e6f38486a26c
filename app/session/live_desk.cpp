// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/live_desk.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "app/live/people_watch.h"
#include "app/session/film_words.h"
#include "app/session/record_folder.h"
#include "core/measure/film_permission.h"
#include "core/measure/plan_situation.h"
#include "core/measure/record_entries.h"

namespace ferrule {

namespace {

Position positionOf(const SeenImage& image) {
  Position balls;
  for (const BallNow& ball : image.balls)
    balls.push_back({ball.ball, ball.position});
  return balls;
}

/// Beside the record, in a folder of the record's name.
QString filmPath(const MeasureOptions& options, UtcMilliseconds now) {
  const QFileInfo record(QString::fromStdString(options.record));
  const QString time = QDateTime::fromMSecsSinceEpoch(now).toString(QStringLiteral("yyyy-MM-dd HH-mm-ss"));
  return record.dir().filePath(QStringLiteral("%1-films/%2.mkv").arg(record.completeBaseName(), time));
}

std::vector<BallName> namesOf(const Position& balls) {
  std::vector<BallName> names;
  for (const BallAt& at : balls)
    names.push_back(at.ball);
  return names;
}

}  // namespace

LiveDesk::LiveDesk(Clock clock, QObject* parent)
    : QObject(parent), clock_(std::move(clock)), shots_(clock_, [this](const SaidOfRecorded& said) {
        if (state_ == LiveState::Done) {
          answers_.say(QString::fromStdString(options_.record), said);
        } else {
          inbox_->put(said);
        }
      }) {
  connect(&feed_, &MeasuringFeed::opened, this, [this](SessionId session) {
    session_ = session;
    if (state_ == LiveState::Waiting) state_ = LiveState::Running;
    emit changed();
  });
  connect(&feed_, &MeasuringFeed::imageSeen, this, [this](std::shared_ptr<const SeenImage> image) {
    image_ = std::move(image);
    emit imageSeen();
  });
  connect(&feed_, &MeasuringFeed::firstBallsKnown, this, [this](const Position& balls) { firstRest_ = balls; });
  connect(&feed_, &MeasuringFeed::shotMeasured, this, [this](std::shared_ptr<const MeasuredShot> shot) {
    shots_.add(std::move(shot));
    // Asked for anew before each shot: a shown suggestion changes the choice.
    suggestion_.want(false);
    think();
    emit changed();
  });
  connect(&shots_, &MeasuredShots::changed, this, &LiveDesk::changed);
  connect(&feed_, &MeasuringFeed::ruledAgain, &shots_, &MeasuredShots::ruleAgain);
  connect(&answers_, &AnswerService::ruledAgain, &shots_, &MeasuredShots::ruleAgain);
  connect(&answers_, &AnswerService::failed, this, &LiveDesk::failed);
  connect(&feed_, &MeasuringFeed::standingChanged, this, [this](const LiveStanding& standing) {
    standing_ = standing;
    think();
    emit changed();
  });
  connect(&suggestion_, &SuggestionDesk::changed, this, [this] {
    noteShown();
    emit changed();
  });
  connect(&suggestion_, &SuggestionDesk::failed, this, &LiveDesk::failed);
  connect(&judge_, &JudgeService::judged, this, &LiveDesk::judged);
  connect(&judge_, &JudgeService::failed, this, &LiveDesk::failed);
}

LiveDesk::~LiveDesk() {
  if (source_) source_->stop();
  if (images_) images_->close();
  if (checks_) checks_->close();
}

void LiveDesk::start(const MeasureOptions& options, std::shared_ptr<LiveSource> source, bool keepsFilm) {
  if (state_ != LiveState::None && state_ != LiveState::Done) return;
  auto table = measuredTableFrom(options.table);
  if (!table) {
    emit refused(table.error());
    return;
  }
  close();
  options_ = options;
  options_.film = source->name().toStdString();
  table_ = std::move(*table);
  images_ = std::make_shared<ImageQueue>();
  inbox_ = std::make_shared<LiveInbox>();
  film_.reset();
  filmRefusal_.clear();
  source_ = std::move(source);
  connect(source_.get(), &LiveSource::ended, this, &LiveDesk::stop);
  connect(source_.get(), &LiveSource::lost, this, [this](const QString& sentence) {
    stop();
    emit said(sentence);
  });
  state_ = LiveState::Waiting;
  if (!keepsFilm) return begin({});
  // Asked before the camera runs.
  const UtcMilliseconds now = clock_();
  asking_.start<Result<FilmPermission>>(
      [options = options_, now](const JobControl&) { return filmPermission(options.record, options.players, now); },
      [this, now](const Result<FilmPermission>& permission) {
        if (state_ != LiveState::Waiting) return;
        if (!permission) {
          filmRefusal_ = noFilmWords(permission.error());
        } else if (!permission->granted()) {
          filmRefusal_ = noFilmWords(*permission);
        }
        begin(filmRefusal_.isEmpty() ? filmPath(options_, now) : QString());
      });
  emit changed();
}

void LiveDesk::begin(const QString& film) {
  if (!film.isEmpty()) {
    auto keeper = FilmKeeper::make(film.toStdString());
    if (keeper) {
      film_ = std::move(*keeper);
      images_->setWitness({[film = film_](const cv::Mat& picture, double time_s) { film->offer(picture, time_s); },
                           [film = film_] { return film->hasRoom(); }});
    } else {
      filmRefusal_ = noFilmWords(keeper.error());
    }
  }
  LiveObserver observer = feed_.liveObserver(inbox_);
  startChecks(observer.measured);
  watchPeople(observer);
  job_.start<Result<MeasureReport>>(
      [options = options_, images = images_, inbox = inbox_, film = film_, clock = clock_,
       observer](const JobControl& job) {
        makeFolderOf(options.record);
        return measureLive(options, {*images, *inbox, clock, film.get()}, job, observer);
      },
      [this](const Result<MeasureReport>& report) { finish(report); });
  source_->start(images_);
  emit changed();
}

void LiveDesk::startChecks(MeasureObserver& observer) {
  checks_ = std::make_shared<LiveCheck>(table_);
  lastCheck_.reset();
  observer.picture = [checks = checks_](const ImageReading& reading, const KeptPicture& kept) {
    checks->offer(kept, reading.time_s);
  };
  std::erase_if(checking_, [](const auto& job) { return !job->isRunning(); });
  checking_.push_back(std::make_unique<BackgroundJob>());
  checking_.back()->start<bool>(
      [this, checks = checks_](const JobControl& job) {
        while (auto report = checks->next(job)) {
          QMetaObject::invokeMethod(
              this,
              [this, checks, report = std::make_shared<LiveCheckReport>(std::move(*report))] {
                if (checks != checks_) return;
                lastCheck_ = std::move(*report);
                emit checked();
              },
              Qt::QueuedConnection);
        }
        return true;
      },
      [](bool) {});
}

void LiveDesk::watchPeople(LiveObserver& observer) {
  observer.glimpse = [this, people = std::make_shared<PeopleWatch>(table_, watchesPeople_), shown = observer.glimpse](
                         const ImageReading& reading, const KeptPicture& kept) {
    if (const auto leans = people->look(kept, reading.time_s)) {
      QMetaObject::invokeMethod(
          this, [this, leans = *leans] { emit somebodyLeans(leans); }, Qt::QueuedConnection);
    }
    shown(reading, kept);
  };
}

Position LiveDesk::lastRest() const {
  return shots_.all().empty() ? firstRest_ : shots_.all().back()->reading.after;
}

long LiveDesk::imagesBehind() const {
  return image_ ? std::max(0L, counts().came - 1 - image_->picture.number) : 0;
}

Position LiveDesk::ballsNow() const {
  return image_ ? positionOf(*image_) : Position();
}

CheckNames LiveDesk::checkNames() const {
  const auto name = [](const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).fileName().toStdString();
  };
  return {name(options_.film), name(options_.rig), name(options_.table)};
}

void LiveDesk::checkNow() {
  if (checks_) checks_->askNow();
}

std::optional<FilmKeeper::Counts> LiveDesk::filmCounts() const {
  return film_ ? std::optional(film_->counts()) : std::nullopt;
}

void LiveDesk::stop() {
  if (state_ != LiveState::Waiting && state_ != LiveState::Running) return;
  state_ = LiveState::Ending;
  suggestion_.want(false);
  think();
  source_->stop();
  images_->close();
  // It was still asked whether a film may be kept: nothing was begun.
  if (!job_.isRunning()) finish(MeasureReport{});
  emit changed();
}

void LiveDesk::close() {
  if (state_ != LiveState::Done) return;
  state_ = LiveState::None;
  session_.reset();
  shots_.clear();
  image_.reset();
  firstRest_.clear();
  standing_.reset();
  images_.reset();
  checks_.reset();
  lastCheck_.reset();
  film_.reset();
  filmRefusal_.clear();
  emit changed();
}

void LiveDesk::finish(const Result<MeasureReport>& report) {
  source_->stop();
  if (checks_) checks_->close();
  // Nobody looks any more who could say that a person stepped back.
  emit somebodyLeans(false);
  // What was said too late for the measuring thread.
  for (const SaidOfRecorded& said : inbox_->takeSaid())
    answers_.say(QString::fromStdString(options_.record), said);
  suggestion_.want(false);
  think();
  state_ = session_ ? LiveState::Done : LiveState::None;
  emit changed();
  if (!report) {
    emit session_ ? failed(report.error()) : refused(report.error());
    return;
  }
  if (!session_) return;
  emit sessionEnded(*session_);
  judge_.judge(QString::fromStdString(options_.record), *session_);
}

std::string LiveDesk::shooter() const {
  if (!standing_ || standing_->state.unsettled)
    return options_.players.size() == 1 ? options_.players[0] : std::string();
  const std::size_t seat = indexOf(standing_->state.atTable);
  if (options_.players.size() == 1) return options_.players[0];
  return seat < options_.players.size() ? options_.players[seat] : std::string();
}

void LiveDesk::showSuggestion(bool shown, std::optional<PlayerLevel> level) {
  suggestion_.want(shown && state_ == LiveState::Running, level);
  think();
  emit changed();
}

std::optional<GameState> LiveDesk::stateNow(const Position& balls) const {
  if (standing_) return standing_->state;
  const auto game = gameFromText(options_.game);
  if (!game) return std::nullopt;
  const RuleSet rules = worldRules(*game);
  const SurfaceLines lines = surfaceLines(table_.table, table_.balls);
  if (isRacked(*game, balls, table_.table, table_.balls)) return newFrame(rules, Seat::First, lines);
  return joinedFrame(rules, namesOf(balls), Seat::First, lines);
}

void LiveDesk::think() {
  if (!suggestion_.isWanted() || !image_) {
    suggestion_.think(std::nullopt);
    return;
  }
  const Position balls = positionOf(*image_);
  const auto state = stateNow(balls);
  if (!state || state->phase == Phase::Over) {
    suggestion_.think(std::nullopt);
    return;
  }
  askedAt_s_ = image_->picture.time_s;
  ForWhom whom;
  whom.record = options_.record;
  whom.player = shooter();
  suggestion_.think(
      SuggestionQuestion{table_, parametersFor(table_.balls), situationFrom(*state, balls, table_.table), whom});
}

void LiveDesk::noteShown() {
  if (!inbox_ || suggestion_.found() == nullptr) return;
  inbox_->put(SuggestionShown{askedAt_s_, {plannerName(), true, {}, {}, suggestion_.text()}});
}

}  // namespace ferrule
