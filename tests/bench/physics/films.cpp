// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/physics/films.h"

#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <vector>

#include "core/camera/rig_file.h"
#include "core/geometry/units.h"
#include "core/measure/measure.h"
#include "core/physics/fingerprint.h"
#include "core/table/shot_text.h"
#include "tests/bench/accuracy/clip_rig.h"
#include "tests/bench/accuracy/truth.h"

namespace ferrule::bench {

namespace {

namespace fs = std::filesystem;

struct FilmedShot {
  std::string film;
  ReadShot shot;
};

/// What the balls of one film did, for reading it again.
struct FilmBalls {
  std::string film;
  std::vector<ImageReading> readings;
  TablePoint3 camera;
};

/// The films of one table.
struct TableShots {
  MeasuredTable measured;
  std::string films;
  std::vector<FilmedShot> shots;
  std::vector<FilmBalls> balls;
};

/// What the product makes of one film, with nothing but its table file, its tags and the camera's stills.
Result<std::vector<ReadShot>> measured(const fs::path& clip, RigMaker& rigs, const MeasuredTable& table,
                                       FilmBalls& balls) {
  const std::string film = (clip / (clip.filename().string() + ".mp4")).string();
  const auto truth = readTruth((clip / "truth.json").string());
  if (!truth) return tl::make_unexpected(truth.error());
  const auto rig = rigs.make(film, *truth, table);
  if (!rig) return tl::make_unexpected(rig.error());
  const QTemporaryDir folder;
  const std::string rigFile = folder.filePath("rig.json").toStdString();
  if (const auto written = writeRigFile(rigFile, *rig); !written) return tl::make_unexpected(written.error());
  MeasureOptions options;
  options.film = film;
  options.rig = rigFile;
  options.table = (clip / "table.json").string();
  std::vector<ReadShot> shots;
  MeasureObserver observer;
  observer.shot = [&](const ReadShot& shot) { shots.push_back(shot); };
  observer.image = [&](const ImageReading& reading) { balls.readings.push_back(reading); };
  balls.camera = cameraPosition(*rig);
  const auto report = measureFilm(options, {}, observer);
  if (!report) return tl::make_unexpected(report.error());
  return shots;
}

bool sameTable(const MeasuredTable& a, const MeasuredTable& b) {
  return a.table == b.table && a.balls == b.balls;
}

std::vector<TableShots> shotsOf(const std::string& folder) {
  std::vector<fs::path> clips;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    if (fs::exists(entry.path() / (entry.path().filename().string() + ".mp4"))) clips.push_back(entry.path());
  }
  std::ranges::sort(clips);
  RigMaker rigs(folder, false);
  std::vector<TableShots> tables;
  for (const fs::path& clip : clips) {
    const std::string name = clip.filename().string();
    std::fprintf(stderr, "%s\n", name.c_str());
    const auto table = readMeasuredTable((clip / "table.json").string());
    if (!table) continue;
    FilmBalls balls{name, {}, {}};
    const auto shots = measured(clip, rigs, *table, balls);
    if (!shots) {
      std::printf("%s could not be measured: code %d %s %s\n", name.c_str(), static_cast<int>(shots.error().code),
                  shots.error().subject.c_str(), shots.error().detail.c_str());
      continue;
    }
    auto own = std::ranges::find_if(tables, [&](const TableShots& t) { return sameTable(t.measured, *table); });
    if (own == tables.end()) own = tables.insert(own, TableShots{*table, {}, {}, {}});
    if (!own->films.empty()) own->films.append(", ");
    own->films.append(name);
    for (const ReadShot& shot : *shots)
      own->shots.push_back({name, shot});
    own->balls.push_back(std::move(balls));
  }
  return tables;
}

FingerprintShot fitShotOf(const ReadShot& shot) {
  const ShotReading& r = shot.reading;
  return {r.before, shot.tracks, r.strike_s, r.rest_s, r.delivery, r.events};
}

Strike strikeOf(const Delivery& d, const PhysicsParameters& p) {
  const auto valueOf = [](const std::optional<Measured>& value) { return value ? value->value : 0.0; };
  Strike strike;
  strike.speed_mps = valueOf(d.speed_mps);
  strike.side = valueOf(d.side);
  strike.height = valueOf(d.height);
  strike.elevation_rad = valueOf(d.elevation_rad);
  const double offset = std::hypot(strike.side, strike.height);
  if (offset > miscueLimit(p)) {
    strike.side *= miscueLimit(p) / offset * 0.999;
    strike.height *= miscueLimit(p) / offset * 0.999;
  }
  return strikeDeparting(valueOf(d.aim_rad), strike, p);
}

/// The same films read again by one who knows the table.
void readAgain(TableShots& table, const Fingerprint& fingerprint) {
  table.shots.clear();
  for (const FilmBalls& film : table.balls) {
    ShotReader reader(table.measured, film.camera);
    reader.setTable(fingerprint);
    for (const ImageReading& reading : film.readings)
      reader.feed(reading);
    reader.finish();
    for (ReadShot& shot : reader.takeShots())
      table.shots.push_back({film.film, std::move(shot)});
  }
}

void printFingerprint(const TableShots& table, const Fingerprint& f) {
  std::printf("\n%s: %d shots, %ld samples, rms %.2f mm%s\n", table.films.c_str(), f.shots, f.samples,
              millimetresFromMetres(f.rms_m), f.converged ? "" : ", not settled");
  for (const FittedCoefficient& c : f.coefficients) {
    std::printf("  %-22s %9.5f +- %8.5f  (literature %8.5f +- %7.5f)%s\n", c.name.c_str(), c.value,
                c.standardUncertainty, c.literature, c.literatureUncertainty,
                c.determined ? "" : "  not determined by these shots");
  }
}

/// How one simulated shot ended against the film.
struct Agreement {
  int moved = 0;  ///< balls that moved in the film and rest on the table in both
  double cueBall_mm = NAN;
  double worst_mm = NAN;
  double sum_mm = 0.0;
  bool samePocketed = false;
  bool sameFirstContact = false;
};

Agreement compared(const ShotReading& film, const Simulation& s) {
  Agreement a;
  for (const FinalBall& ball : s.after) {
    const auto before = std::ranges::find(film.before, ball.ball, &BallAt::ball);
    const auto after = std::ranges::find(film.after, ball.ball, &BallAt::ball);
    if (ball.fate != BallFate::OnTable || before == film.before.end() || after == film.after.end()) continue;
    const double off_mm = millimetresFromMetres(distance(ball.position, after->position));
    if (ball.ball.isCueBall()) a.cueBall_mm = off_mm;
    if (distance(before->position, after->position) < 0.005 && off_mm < 5.0) continue;
    ++a.moved;
    a.sum_mm += off_mm;
    a.worst_mm = std::fmax(a.worst_mm, off_mm);
  }
  auto one = film.pocketed;
  auto other = pocketedIn(s);
  for (auto* list : {&one, &other})
    std::ranges::sort(*list, {}, &PocketedBall::ball);
  a.samePocketed = one == other;
  a.sameFirstContact = film.firstContact == firstContactIn(s);
  return a;
}

std::string namesOf(std::vector<PocketedBall> balls) {
  std::ranges::sort(balls, {}, &PocketedBall::ball);
  std::string text;
  for (const PocketedBall& ball : balls)
    text.append(text.empty() ? "" : " ").append(toText(ball.ball));
  return text.empty() ? "-" : text;
}

std::string millimetresText(double value_mm) {
  char text[32];
  std::snprintf(text, sizeof text, "%.0f", value_mm);
  return std::isnan(value_mm) ? "-" : text;
}

std::string measuredText(const std::optional<Measured>& value) {
  char text[32];
  std::snprintf(text, sizeof text, "%+.2f", value ? value->value : 0.0);
  return value ? text : "-";
}

struct Totals {
  int shots = 0;
  int samePocketed = 0;
  int sameFirstContact = 0;
  std::vector<double> cueBall_mm;
};

void printShots(const TableShots& table, const PhysicsParameters& p, Totals& totals) {
  const auto simulator = Simulator::create(table.measured.table, p);
  if (!simulator) return;
  for (const FilmedShot& filmed : table.shots) {
    const ShotReading& r = filmed.shot.reading;
    const auto s = simulator->shoot(r.before, strikeOf(r.delivery, p));
    if (!s) {
      const Error& e = s.error();
      std::printf("%-17s %3d  not simulated: code %d, %s %s\n", filmed.film.c_str(), r.number, static_cast<int>(e.code),
                  e.detail.c_str(), e.numbers.empty() ? "" : numberText(e.numbers.front(), 0.01).c_str());
      continue;
    }
    const Agreement a = compared(r, *s);
    ++totals.shots;
    totals.samePocketed += a.samePocketed ? 1 : 0;
    totals.sameFirstContact += a.sameFirstContact ? 1 : 0;
    if (!std::isnan(a.cueBall_mm)) totals.cueBall_mm.push_back(a.cueBall_mm);
    std::printf("%-17s %3d %6.2f %6s %6s %6d %9s %9s %9s  %-9s %-12s %-12s %s\n", filmed.film.c_str(), r.number,
                r.delivery.speed_mps ? r.delivery.speed_mps->value : NAN, measuredText(r.delivery.side).c_str(),
                measuredText(r.delivery.height).c_str(), a.moved, millimetresText(a.cueBall_mm).c_str(),
                millimetresText(a.moved > 0 ? a.sum_mm / a.moved : NAN).c_str(), millimetresText(a.worst_mm).c_str(),
                a.sameFirstContact ? "same" : "other", namesOf(r.pocketed).c_str(), namesOf(pocketedIn(*s)).c_str(),
                a.samePocketed ? "same" : "OTHER");
  }
}

}  // namespace

void printFilms(const std::string& folder) {
  const std::vector<TableShots> measuredTables = shotsOf(folder);
  for (const CushionModel model : {CushionModel::Impulse, CushionModel::Integrated}) {
    std::printf("\nFilms simulated from their measured strikes, cushions by the %s model. Fingerprints:\n",
                model == CushionModel::Impulse ? "fast" : "integrated");
    std::vector<PhysicsParameters> fitted;
    std::vector<TableShots> tables = measuredTables;
    for (TableShots& table : tables) {
      PhysicsParameters p = parametersFor(table.measured.balls);
      p.cushionModel = model;
      std::vector<FingerprintShot> shots;
      for (const FilmedShot& filmed : table.shots)
        shots.push_back(fitShotOf(filmed.shot));
      const auto f = fitFingerprint(table.measured.table, p, shots);
      if (f) printFingerprint(table, *f);
      // As it goes in the record: once the table is known, its shots are read with it.
      if (f) readAgain(table, *f);
      fitted.push_back(f ? applied(*f, p) : p);
    }
    std::printf("\n%-17s %3s %6s %6s %6s %6s %9s %9s %9s  %-9s %-12s %-12s\n", "film", "no", "m/s", "side", "height",
                "moved", "cue ball", "mean mm", "worst mm", "1st hit", "went down", "simulated");
    Totals totals;
    for (std::size_t i = 0; i < tables.size(); ++i)
      printShots(tables[i], fitted[i], totals);
    std::ranges::sort(totals.cueBall_mm);
    const double median_mm = totals.cueBall_mm.empty() ? NAN : totals.cueBall_mm[totals.cueBall_mm.size() / 2];
    std::printf(
        "%d shots: first contact the same in %d, pocketed balls the same in %d, cue ball's rest off by %s mm "
        "(median)\n",
        totals.shots, totals.sameFirstContact, totals.samePocketed, millimetresText(median_mm).c_str());
  }
}

}  // namespace ferrule::bench
