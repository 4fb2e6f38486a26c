// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/measured_file.h"

#include <nlohmann/json.hpp>
#include <utility>

#include "core/camera/move_json.h"
#include "core/geometry/units.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

/// One sample as it waits in its ball's spool.
struct SpooledSample {
  double time_s = 0.0;
  double x_m = 0.0;
  double y_m = 0.0;
  double standardUncertainty_m = 0.0;
  bool seen = false;
};

constexpr double kMicrosecond_s = 1e-6;
constexpr double kMicrometre_mm = 1e-3;
/// File names need not be UTF-8; JSON must be.
constexpr auto kReplaceBadUtf8 = nlohmann::ordered_json::error_handler_t::replace;

void addEntry(Spool& spool, const std::string& text) {
  spool.append(text.data(), text.size());
  spool.append("\n", 1);
}

std::string filmText(const MeasuredFilm& film) {
  return nlohmann::ordered_json{{"name", film.name},
                                {"images", film.images},
                                {"duration_s", nlohmann::ordered_json::parse(numberText(film.duration_s, 1e-6))},
                                {"width", film.size.width},
                                {"height", film.size.height}}
      .dump(-1, ' ', false, kReplaceBadUtf8);
}

std::string rigSummaryText(const Rig& rig, const nlohmann::ordered_json& moves) {
  nlohmann::ordered_json chain = nlohmann::ordered_json::array();
  for (const Correction& correction : rig.chain.corrections()) {
    chain.push_back({{"kind", toText(correction.kind)}, {"source", correction.source}});
  }
  nlohmann::ordered_json summary{{"chain", std::move(chain)},
                                 {"pose_rms_px", rig.poseRms_px},
                                 {"tag_rms_mm", millimetresFromMetres(rig.tagRms_m)},
                                 {"verdict", rig.verdict}};
  if (!moves.empty()) summary["moves"] = moves;
  return summary.dump(-1, ' ', false, kReplaceBadUtf8);
}

/// What the shots were read with instead of the literature's values.
std::string fingerprintSummaryText(const KnownFingerprint& table) {
  nlohmann::ordered_json coefficients = nlohmann::ordered_json::object();
  for (const FittedCoefficient& c : table.fingerprint.coefficients) {
    if (c.determined) coefficients[c.name] = c.value;
  }
  return nlohmann::ordered_json{
      {"session", table.session}, {"date", table.fingerprint.date}, {"coefficients", std::move(coefficients)}}
      .dump(-1, ' ', false, kReplaceBadUtf8);
}

}  // namespace

MeasuredFile::MeasuredFile(OutputFile output, Spool shots, Spool placements)
    : output_(std::move(output)), shots_(std::move(shots)), placements_(std::move(placements)) {}

Result<MeasuredFile> MeasuredFile::make(const std::string& path) {
  auto output = OutputFile::make(path);
  if (!output) return tl::make_unexpected(output.error());
  auto shots = Spool::make(path);
  if (!shots) return tl::make_unexpected(shots.error());
  auto placements = Spool::make(path);
  if (!placements) return tl::make_unexpected(placements.error());
  return MeasuredFile(std::move(*output), std::move(*shots), std::move(*placements));
}

void MeasuredFile::add(const ImageReading& reading) {
  for (const BallSample& ball : reading.balls) {
    // A carried ball is not on the table, and its place on the cloth's plane would mean nothing.
    if (ball.inHand) continue;
    std::optional<Spool>& samples = samples_[static_cast<std::size_t>(ball.ball.number())];
    if (!samples) {
      auto made = Spool::make(output_.path());
      if (!made) {
        if (!failed_) failed_ = made.error();
        continue;
      }
      samples.emplace(std::move(*made));
    }
    const SpooledSample sample{reading.time_s, ball.position.x, ball.position.y, ball.standardUncertainty_m, ball.seen};
    samples->append(&sample, sizeof sample);
  }
}

void MeasuredFile::add(const ShotReading& shot, const std::string& ruling, const std::string& cue) {
  shotTimes_.push_back({shot.number, shot.strike_s, shot.rest_s});
  std::string text = shotText(shot);
  if (!ruling.empty()) text.insert(text.rfind('}'), ", \"ruling\": " + ruling);
  if (!cue.empty()) text.insert(text.rfind('}'), ", \"cue\": " + cue);
  addEntry(shots_, text);
}
void MeasuredFile::add(const Placement& placement) {
  addEntry(placements_, placementText(placement));
}

Result<void> MeasuredFile::writeTrack(BallName ball, Spool& samples) {
  struct Column {
    const char* name;
    std::string (*text)(const SpooledSample&);
  };
  constexpr std::array kColumns{
      Column{"t_s", [](const SpooledSample& s) { return numberText(s.time_s, kMicrosecond_s); }},
      Column{"x_mm", [](const SpooledSample& s) { return numberText(millimetresFromMetres(s.x_m), kMicrometre_mm); }},
      Column{"y_mm", [](const SpooledSample& s) { return numberText(millimetresFromMetres(s.y_m), kMicrometre_mm); }},
      Column{"u_mm",
             [](const SpooledSample& s) {
               return numberText(millimetresFromMetres(s.standardUncertainty_m), kMicrometre_mm);
             }},
      Column{"seen", [](const SpooledSample& s) { return std::string(s.seen ? "true" : "false"); }},
  };
  output_.write("{\"ball\": \"");
  output_.write(toText(ball));
  output_.write("\"");
  for (const Column& column : kColumns) {
    if (auto done = samples.rewind(); !done) return done;
    output_.write(",\n  \"");
    output_.write(column.name);
    output_.write("\": [");
    SpooledSample sample;
    for (bool first = true; samples.read(&sample, sizeof sample) == sizeof sample; first = false) {
      if (!first) output_.write(",");
      output_.write(column.text(sample));
    }
    output_.write("]");
  }
  output_.write("}");
  return {};
}

Result<void> MeasuredFile::writeList(Spool& entries) {
  if (auto done = entries.rewind(); !done) return done;
  output_.write("[");
  std::array<char, 4096> bytes{};
  // A line's end becomes a comma once another line follows.
  bool pending = false;
  while (const std::size_t count = entries.read(bytes.data(), bytes.size())) {
    std::string_view rest(bytes.data(), count);
    while (!rest.empty()) {
      if (pending) output_.write(",\n ");
      pending = false;
      const std::size_t end = rest.find('\n');
      output_.write(rest.substr(0, end));
      if (end == std::string_view::npos) break;
      pending = true;
      rest.remove_prefix(end + 1);
    }
  }
  output_.write("]");
  return {};
}

std::vector<int> MeasuredFile::shotsDuring(const CameraMove& move) const {
  std::vector<int> shots;
  for (const ShotTime& shot : shotTimes_) {
    if (isDuring(move, shot.strike_s, shot.rest_s)) shots.push_back(shot.number);
  }
  return shots;
}

Result<void> MeasuredFile::keep(const MeasuredFilm& film, const Rig& rig, std::span<const CameraMove> moves,
                                const std::optional<KnownFingerprint>& table) {
  if (failed_) return tl::make_unexpected(*failed_);
  output_.write("{\"format\": \"ferrule-measured/1\",\n\"film\": ");
  output_.write(filmText(film));
  output_.write(",\n\"rig\": ");
  nlohmann::ordered_json moveList = nlohmann::ordered_json::array();
  for (const CameraMove& move : moves) {
    nlohmann::ordered_json told = jsonOf(move);
    told["shots"] = shotsDuring(move);
    moveList.push_back(std::move(told));
  }
  output_.write(rigSummaryText(rig, moveList));
  if (table) output_.write(",\n\"fingerprint\": " + fingerprintSummaryText(*table));
  output_.write(",\n\"tracks\": [");
  bool first = true;
  for (int number = 0; number < BallName::kCount; ++number) {
    std::optional<Spool>& samples = samples_[static_cast<std::size_t>(number)];
    if (!samples) continue;
    if (!first) output_.write(",\n ");
    first = false;
    if (auto done = writeTrack(BallName(number), *samples); !done) return done;
  }
  output_.write("],\n\"placements\": ");
  if (auto done = writeList(placements_); !done) return done;
  output_.write(",\n\"shots\": ");
  if (auto done = writeList(shots_); !done) return done;
  output_.write("}\n");
  return output_.keep();
}

}  // namespace ferrule
