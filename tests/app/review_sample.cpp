// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/review_sample.h"

#include <cmath>

namespace ferrule {

namespace {

constexpr double kSpacing_s = 1.0 / 60.0;
constexpr long kFilmImages = 3000;

/// At a constant speed from a to b between two times, at rest before and after, with a margin of half a second.
Track straight(BallName ball, TablePoint a, TablePoint b, double from_s, double to_s, double begin_s, double end_s) {
  Track track{ball, {}};
  for (long image = std::lround(begin_s / kSpacing_s); static_cast<double>(image) * kSpacing_s <= end_s; ++image) {
    const double time_s = static_cast<double>(image) * kSpacing_s;
    const double share = std::clamp((time_s - from_s) / (to_s - from_s), 0.0, 1.0);
    track.samples.push_back({time_s, a + share * (b - a), 0.0006, true});
  }
  return track;
}

FilmEntry sampleFilm() {
  FilmEntry film;
  film.id = FilmId{1};
  film.path = "sample-film";
  film.size = {1280, 720};
  film.images = kFilmImages;
  film.duration_s = kFilmImages * kSpacing_s;
  return film;
}

StoredShot emptyShot(int number, double strike_s, double rest_s) {
  StoredShot shot;
  shot.id = ShotId{number};
  shot.frame = FrameId{number < 4 ? 1 : 2};
  shot.session = SessionId{1};
  shot.playerName = "Nerea";
  shot.film = sampleFilm();
  shot.reading.number = number < 4 ? number : 1;
  shot.reading.strike_s = strike_s;
  shot.reading.rest_s = rest_s;
  shot.reading.outcomeVerdict = Verdict::Certain;
  return shot;
}

/// The cue ball meets the 3, which falls foot-left.
StoredShot pot() {
  StoredShot shot = emptyShot(1, 10.0, 13.0);
  const TablePoint cue{-0.6, -0.2};
  const TablePoint three{0.4, 0.1};
  const TablePoint contact{0.346, 0.083};
  const TablePoint mouth{1.23, 0.595};
  shot.reading.before = {{kCueBall, cue}, {BallName{3}, three}, {BallName{12}, {-0.9, 0.3}}};
  shot.reading.after = {{kCueBall, {0.5, -0.1}}, {BallName{12}, {-0.9, 0.3}}};
  Track cueTrack = straight(kCueBall, cue, contact, 10.0, 10.5, 9.5, 10.5);
  const Track after = straight(kCueBall, contact, {0.5, -0.1}, 10.5, 12.5, 10.5 + kSpacing_s, 13.5);
  cueTrack.samples.insert(cueTrack.samples.end(), after.samples.begin(), after.samples.end());
  shot.tracks = {cueTrack, straight(BallName{3}, three, mouth, 10.5, 12.0, 9.5, 12.0)};
  shot.reading.events = {{10.5, EventKind::Ball, kCueBall, BallName{3}, {}, {}, contact},
                         {12.0, EventKind::Pocket, BallName{3}, {}, {}, PocketName::FootLeft, mouth}};
  shot.reading.firstContact = BallName{3};
  shot.reading.pocketed = {{BallName{3}, PocketName::FootLeft}};
  shot.reading.delivery.aim_rad = Measured{0.29, 0.0008};
  shot.reading.delivery.speed_mps = Measured{2.0, 0.013};
  shot.reading.delivery.side = Measured{0.13, 0.03};
  shot.reading.delivery.height = Measured{-0.15, 0.04};
  shot.reading.target = Target{BallName{3}, PocketName::FootLeft, 0.42, 0.004, std::nullopt};
  shot.reading.outcome = Outcome::Pot;
  return shot;
}

StoredShot miss() {
  StoredShot shot = emptyShot(2, 20.0, 22.0);
  shot.reading.before = {{kCueBall, {0.5, -0.1}}, {BallName{12}, {-0.9, 0.3}}};
  shot.reading.after = {{kCueBall, {-0.8, 0.2}}, {BallName{12}, {-1.1, 0.5}}};
  shot.tracks = {straight(kCueBall, {0.5, -0.1}, {-0.8, 0.2}, 20.0, 21.5, 19.5, 22.5),
                 straight(BallName{12}, {-0.9, 0.3}, {-1.1, 0.5}, 20.8, 21.9, 19.5, 22.5)};
  shot.reading.events = {{20.8, EventKind::Ball, kCueBall, BallName{12}, {}, {}, {-0.85, 0.28}},
                         {21.2, EventKind::Cushion, BallName{12}, {}, CushionName::LeftHead, {}, {-1.0, 0.6}}};
  shot.reading.firstContact = BallName{12};
  shot.reading.delivery.speed_mps = Measured{1.1, 0.01};
  shot.reading.target = Target{BallName{12}, PocketName::HeadLeft, 0.2, -0.02, MissSide::Over};
  shot.reading.outcome = Outcome::Miss;
  return shot;
}

StoredShot safety() {
  StoredShot shot = emptyShot(3, 30.0, 31.0);
  shot.reading.before = {{kCueBall, {-0.8, 0.2}}, {BallName{8}, {-0.5, 0.2}}, {BallName{12}, {-1.1, 0.5}}};
  shot.reading.after = {{kCueBall, {-0.56, 0.2}}, {BallName{8}, {-0.2, 0.2}}, {BallName{12}, {-1.1, 0.5}}};
  shot.tracks = {straight(kCueBall, {-0.8, 0.2}, {-0.56, 0.2}, 30.0, 30.3, 29.5, 31.5),
                 straight(BallName{8}, {-0.5, 0.2}, {-0.2, 0.2}, 30.3, 31.0, 29.5, 31.5)};
  shot.reading.events = {{30.3, EventKind::Ball, kCueBall, BallName{8}, {}, {}, {-0.56, 0.2}}};
  shot.reading.firstContact = BallName{8};
  shot.reading.outcome = Outcome::Safety;
  return shot;
}

StoredShot breakOff() {
  StoredShot shot = emptyShot(4, 40.0, 44.0);
  shot.reading.before = {{kCueBall, {-0.7, 0.0}}, {BallName{1}, {0.635, 0.0}}};
  shot.reading.after = {{kCueBall, {0.2, 0.3}}, {BallName{1}, {0.9, -0.4}}};
  shot.tracks = {straight(kCueBall, {-0.7, 0.0}, {0.2, 0.3}, 40.0, 43.0, 39.5, 44.5)};
  shot.reading.firstContact = BallName{1};
  shot.reading.outcome = Outcome::Break;
  return shot;
}

ShotSummary summaryOf(const StoredShot& shot) {
  ShotSummary summary;
  summary.id = shot.id;
  summary.frame = shot.frame;
  summary.number = shot.reading.number;
  summary.playerName = shot.playerName;
  summary.strike_s = shot.reading.strike_s;
  summary.rest_s = shot.reading.rest_s;
  summary.outcome = shot.reading.outcome;
  summary.verdict = shot.reading.outcomeVerdict;
  summary.firstContact = shot.reading.firstContact;
  summary.target = shot.reading.target;
  summary.pocketed = shot.reading.pocketed;
  summary.delivery = shot.reading.delivery;
  return summary;
}

class SampleSource : public ReviewSource {
 public:
  Result<std::vector<SessionSummary>> sessions() override { return std::vector{sampleSession()}; }
  Result<SessionContent> content(const SessionSummary&) override { return sampleContent(); }
  Result<StoredShot> shot(ShotId shot) override { return sampleShot(static_cast<int>(shot.value)); }
};

class SampleFilm : public FilmPictures {
 public:
  SampleFilm() {
    for (long image = 0; image < kFilmImages; ++image)
      times_s_.push_back(static_cast<double>(image) * kSpacing_s);
  }
  const std::vector<double>& times() const override { return times_s_; }
  std::optional<FilmPicture> picture(long number) override {
    QImage picture(1280, 720, QImage::Format_RGB32);
    picture.fill(QColor(static_cast<int>(number / 256), static_cast<int>(number % 256), 90));
    return FilmPicture{picture, number, times_s_[static_cast<std::size_t>(number)]};
  }

 private:
  std::vector<double> times_s_;
};

}  // namespace

SessionSummary sampleSession() {
  SessionSummary session;
  session.id = SessionId{1};
  session.name = "Invented lesson";
  session.started = 1'794'247'320'000;  // 2026-11-09 18:02 UTC
  session.tableName = "Hall B, table 2";
  session.players = {"Nerea", "Ivo"};
  session.frames = 2;
  session.shots = 4;
  return session;
}

SessionContent sampleContent() {
  SessionContent content;
  content.session = sampleSession();
  content.table = *measuredTableFrom("9ft");
  FrameContent first;
  first.frame = {FrameId{1}, SessionId{1}, 1, "eight-ball", sampleFilm(), 3, true};
  first.rig = sampleRig();
  for (int number = 1; number <= 3; ++number)
    first.shots.push_back(summaryOf(sampleShot(number)));
  first.placements = {{BallName{8}, 26.0, {-0.5, 0.2}}};
  FrameContent second;
  second.frame = {FrameId{2}, SessionId{1}, 2, "nine-ball", sampleFilm(), 1, true};
  second.rig = sampleRig();
  second.shots.push_back(summaryOf(sampleShot(4)));
  content.frames = {first, second};
  return content;
}

StoredShot sampleShot(int number) {
  switch (number) {
    case 1:
      return pot();
    case 2:
      return miss();
    case 3:
      return safety();
    default:
      return breakOff();
  }
}

Rig sampleRig() {
  Rig rig;
  rig.lens.size = {1280, 720};
  rig.lens.model = LensModel::None;
  rig.lens.focalX_px = 1000.0;
  rig.lens.focalY_px = 1000.0;
  rig.lens.centre = {639.5, 359.5};
  // The camera looks down: its y and z run against the table's.
  rig.pose.rotation = Eigen::Vector3d(1.0, -1.0, -1.0).asDiagonal();
  rig.pose.translation_m = {0.0, 0.0, 2.5 + poolBalls().radius_m()};
  return rig;
}

ReviewSourceOpener sampleOpener() {
  return [](const std::string& path) -> Result<std::unique_ptr<ReviewSource>> {
    if (path != "sample") return failure(ErrorCode::RecordNotADatabase, path);
    return std::make_unique<SampleSource>();
  };
}

FilmOpener sampleFilmOpener() {
  return [](const std::string& path, std::stop_token) -> Result<std::unique_ptr<FilmPictures>> {
    if (path != "sample-film") return failure(ErrorCode::FileMissing, path);
    return std::make_unique<SampleFilm>();
  };
}

long spelledNumber(const QImage& picture) {
  const QColor colour = picture.pixelColor(0, 0);
  return colour.red() * 256L + colour.green();
}

}  // namespace ferrule
