// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDateTime>
#include <array>

#include "core/base/csv.h"
#include "core/geometry/units.h"
#include "core/record/export_writers.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

constexpr std::array kColumns{"session",        "session_started_utc",
                              "table",          "frame",
                              "game",           "shot",
                              "player",         "struck_at_utc",
                              "strike_s",       "rest_s",
                              "aim_deg",        "aim_u_deg",
                              "speed_m_s",      "speed_u_m_s",
                              "side_radii",     "side_u_radii",
                              "height_radii",   "height_u_radii",
                              "elevation_deg",  "elevation_u_deg",
                              "first_contact",  "pocketed",
                              "scratch",        "target_ball",
                              "target_pocket",  "cut_deg",
                              "line_error_deg", "miss_side",
                              "outcome",        "verdict",
                              "corrected",      "film",
                              "tags",           "notes",
                              "fouls",          "ruling_sureness",
                              "session_kind",   "choice_loss",
                              "delivery_loss",  "suggestion_shown"};

constexpr double kDegreeStep = 1e-5;
constexpr double kStep = 1e-6;

class RowBuilder {
 public:
  void add(const std::string& value) {
    if (!row_.empty() || fields_ > 0) row_ += ',';
    row_ += csvField(value);
    ++fields_;
  }
  void add(const std::optional<double>& value, double step) { add(value ? numberText(*value, step) : std::string()); }
  void addDegrees(const std::optional<double>& angle_rad) {
    add(angle_rad ? numberText(degreesFromRadians(*angle_rad), kDegreeStep) : std::string());
  }
  void add(const std::optional<Measured>& measured, double step) {
    add(measured ? std::optional(measured->value) : std::nullopt, step);
    add(measured ? std::optional(measured->standardUncertainty) : std::nullopt, step);
  }
  void addDegrees(const std::optional<Measured>& measured) {
    addDegrees(measured ? std::optional(measured->value) : std::nullopt);
    addDegrees(measured ? std::optional(measured->standardUncertainty) : std::nullopt);
  }
  template <class Word>
  void addWord(const std::optional<Word>& word) {
    add(word ? std::string(toText(*word)) : std::string());
  }
  [[nodiscard]] std::string ended() const { return row_ + "\r\n"; }

 private:
  std::string row_;
  int fields_ = 0;
};

template <class Entries, class Text>
std::string joined(const Entries& entries, const char* between, Text&& text) {
  std::string all;
  for (const auto& entry : entries) {
    if (!all.empty()) all += between;
    all += text(entry);
  }
  return all;
}

std::string yesOrNo(bool truth) {
  return truth ? "true" : "false";
}

}  // namespace

std::string utcText(UtcMilliseconds time) {
  return QDateTime::fromMSecsSinceEpoch(time, Qt::UTC).toString(Qt::ISODateWithMs).toStdString();
}

std::string csvHeader() {
  RowBuilder row;
  for (const char* column : kColumns)
    row.add(std::string(column));
  return row.ended();
}

std::string csvRow(const ExportedFrame& frame, const StoredShot& shot) {
  const ShotReading& reading = shot.reading;
  const std::optional<Target>& target = reading.target;
  RowBuilder row;
  row.add(frame.session.name);
  row.add(utcText(frame.session.started));
  row.add(frame.session.tableName);
  row.add(std::to_string(frame.frame.number));
  row.add(frame.frame.game);
  row.add(std::to_string(reading.number));
  row.add(shot.playerName);
  const bool dated = shot.film && shot.film->firstImage;
  row.add(dated ? utcText(*shot.film->firstImage + std::llround(1000.0 * reading.strike_s)) : std::string());
  row.add(reading.strike_s, kStep);
  row.add(reading.rest_s, kStep);
  row.addDegrees(reading.delivery.aim_rad);
  row.add(reading.delivery.speed_mps, kStep);
  row.add(reading.delivery.side, kStep);
  row.add(reading.delivery.height, kStep);
  row.addDegrees(reading.delivery.elevation_rad);
  row.addWord(reading.firstContact);
  row.add(joined(reading.pocketed, " ",
                 [](const PocketedBall& ball) { return toText(ball.ball).append(":").append(toText(ball.pocket)); }));
  row.add(yesOrNo(reading.scratch));
  row.addWord(target ? std::optional(target->ball) : std::nullopt);
  row.addWord(target ? std::optional(target->pocket) : std::nullopt);
  row.addDegrees(target ? target->cut_rad : std::nullopt);
  row.addDegrees(target ? target->lineError_rad : std::nullopt);
  row.addWord(target ? target->missSide : std::nullopt);
  row.add(std::string(toText(reading.outcome)));
  row.add(std::string(toText(reading.outcomeVerdict)));
  row.add(yesOrNo(!shot.corrections.empty()));
  row.add(shot.film ? shot.film->path : std::string());
  row.add(joined(shot.tags, "; ", [](const std::string& tag) { return tag; }));
  row.add(joined(shot.notes, "\n", [](const Note& note) { return note.text; }));
  row.add(shot.ruling ? joined(shot.ruling->fouls, " ", [](const std::string& foul) { return foul; }) : std::string());
  row.add(shot.ruling ? std::string(toText(shot.ruling->sureness)) : std::string());
  row.add(std::string(toText(frame.session.kind)));
  row.add(shot.suggestion ? shot.suggestion->choiceLoss : std::nullopt, kStep);
  row.add(shot.suggestion ? shot.suggestion->deliveryLoss : std::nullopt, kStep);
  row.add(shot.suggestion ? yesOrNo(shot.suggestion->shown) : std::string());
  return row.ended();
}

}  // namespace ferrule
