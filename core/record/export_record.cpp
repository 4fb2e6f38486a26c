// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/export_record.h"

#include <algorithm>
#include <filesystem>
#include <functional>
#include <nlohmann/json.hpp>

#include "core/camera/move_json.h"
#include "core/camera/rig_file.h"
#include "core/record/drill_rows.h"
#include "core/record/export_writers.h"
#include "core/record/frame_moves.h"
#include "core/record/people.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

/// Writes both files side by side, so that one shot at a time is in memory.
class Exporter {
 public:
  Exporter(Record& record, const ExportOptions& options, OutputFile json, OutputFile csv)
      : record_(record), options_(options), json_(std::move(json)), csv_(std::move(csv)) {}

  Result<ExportReport> run() {
    csv_.write(csvHeader());
    json_.write("{\"format\": \"ferrule-record/1\",\n\"players\": [");
    if (auto done = players(); !done) return tl::make_unexpected(done.error());
    json_.write("],\n\"sessions\": [");
    auto all = record_.sessions();
    if (!all) return tl::make_unexpected(all.error());
    std::ranges::reverse(*all);  // oldest first
    for (const SessionSummary& summary : *all) {
      if (auto done = session(summary); !done) return tl::make_unexpected(done.error());
    }
    json_.write("],\n\"drills\": [");
    if (auto done = drills(); !done) return tl::make_unexpected(done.error());
    json_.write("],\n\"drill_runs\": [");
    if (auto done = drillRuns(); !done) return tl::make_unexpected(done.error());
    json_.write("]}\n");
    report_.files = {json_.path(), csv_.path()};
    if (auto kept = json_.keep(); !kept) return tl::make_unexpected(kept.error());
    if (auto kept = csv_.keep(); !kept) return tl::make_unexpected(kept.error());
    return report_;
  }

 private:
  Result<void> players() {
    const auto all = record_.players();
    if (!all) return tl::make_unexpected(all.error());
    bool found = false;
    for (const Player& player : *all) {
      if (options_.player && player.name != *options_.player) continue;
      const auto known = person(record_, player.id);
      if (!known) return tl::make_unexpected(known.error());
      json_.write(found ? ",\n " : "");
      json_.write(playerJson(*known));
      found = true;
    }
    return {};
  }

  /// A drill belongs to nobody: a player's own export holds it with each run.
  Result<void> drills() {
    if (options_.player) return {};
    const auto all = record_.drills();
    if (!all) return tl::make_unexpected(all.error());
    for (std::size_t i = 0; i < all->size(); ++i) {
      json_.write(i > 0 ? ",\n " : "");
      json_.write(keptText((*all)[i].content));
    }
    return {};
  }

  Result<void> drillRuns() {
    const auto all = record_.drillRuns(std::nullopt);
    if (!all) return tl::make_unexpected(all.error());
    bool first = true;
    for (const DrillRunEntry& run : *all) {
      if (options_.player && run.playerName != *options_.player) continue;
      json_.write(first ? "" : ",\n ");
      json_.write(drillRunJson(run));
      first = false;
    }
    return {};
  }

  /// Those of the shots that are to be written.
  Result<std::vector<ShotId>> wantedOf(const Result<std::vector<ShotSummary>>& shots) {
    if (!shots) return tl::make_unexpected(shots.error());
    std::vector<ShotId> wanted;
    for (const ShotSummary& shot : *shots) {
      if (!options_.player || shot.playerName == *options_.player) wanted.push_back(shot.id);
    }
    return wanted;
  }

  /// A list of shots; told: each one that was written.
  Result<void> shotList(const std::vector<ShotId>& shots, const std::function<void(const StoredShot&)>& told) {
    for (std::size_t i = 0; i < shots.size(); ++i) {
      const auto shot = record_.shot(shots[i]);
      if (!shot) return tl::make_unexpected(shot.error());
      json_.write(i > 0 ? ",\n    " : "");
      json_.write(shotJson(*shot, options_.player));
      told(*shot);
    }
    return {};
  }

  Result<void> session(SessionSummary summary) {
    const auto frames = record_.frames(summary.id);
    if (!frames) return tl::make_unexpected(frames.error());
    std::vector<std::vector<ShotId>> shots;
    std::size_t total = 0;
    for (const FrameSummary& frame : *frames) {
      auto wanted = wantedOf(record_.shots(frame.id));
      if (!wanted) return tl::make_unexpected(wanted.error());
      total += wanted->size();
      shots.push_back(std::move(*wanted));
    }
    if (options_.player) {
      if (total == 0) return {};
      summary.players = {*options_.player};
    }
    const auto table = record_.tableOf(summary.id);
    if (!table) return tl::make_unexpected(table.error());
    const auto uid = record_.uidOf(summary.id);
    if (!uid) return tl::make_unexpected(uid.error());
    json_.write(report_.sessions > 0 ? ",\n" : "");
    json_.write("{\"uid\": ");
    json_.write(quotedJson(*uid));
    json_.write(",\n \"name\": ");
    json_.write(quotedJson(summary.name));
    json_.write(",\n \"started\": ");
    json_.write(quotedJson(utcText(summary.started)));
    json_.write(",\n \"kind\": ");
    json_.write(quotedJson(std::string(toText(summary.kind))));
    const auto fingerprint = record_.fingerprintOf(summary.id);
    if (!fingerprint) return tl::make_unexpected(fingerprint.error());
    json_.write(",\n \"fingerprint\": ");
    json_.write(*fingerprint ? keptText((*fingerprint)->content) : "null");
    json_.write(",\n \"table\": ");
    json_.write(tableJson(summary.tableName, *table));
    json_.write(",\n \"players\": [");
    for (std::size_t i = 0; i < summary.players.size(); ++i) {
      json_.write(i > 0 ? ", " : "");
      json_.write(quotedJson(summary.players[i]));
    }
    json_.write("],\n \"frames\": [");
    bool first = true;
    for (std::size_t i = 0; i < frames->size(); ++i) {
      if (options_.player && shots[i].empty()) continue;
      json_.write(first ? "" : ",\n  ");
      first = false;
      if (auto done = frame({summary, (*frames)[i]}, shots[i]); !done) return done;
    }
    json_.write("]}");
    ++report_.sessions;
    return {};
  }

  Result<void> frame(const ExportedFrame& exported, const std::vector<ShotId>& shots) {
    const FrameSummary& summary = exported.frame;
    const auto rig = record_.rigOf(summary.id);
    if (!rig) return tl::make_unexpected(rig.error());
    const auto placements = record_.placements(summary.id);
    if (!placements) return tl::make_unexpected(placements.error());
    json_.write("{\"number\": ");
    json_.write(std::to_string(summary.number));
    json_.write(", \"game\": ");
    json_.write(quotedJson(summary.game));
    json_.write(summary.complete ? ", \"complete\": true" : ", \"complete\": false");
    json_.write(",\n   \"film\": ");
    json_.write(summary.film ? filmJson(*summary.film) : "null");
    json_.write(",\n   \"rig\": ");
    json_.write(*rig ? rigText(**rig) : "null");
    const auto moves = movesOf(record_, summary.id);
    if (!moves) return tl::make_unexpected(moves.error());
    json_.write(",\n   \"moves\": [");
    for (std::size_t i = 0; i < moves->size(); ++i) {
      json_.write(i > 0 ? ", " : "");
      json_.write(jsonOf((*moves)[i]).dump());
    }
    json_.write("]");
    json_.write(",\n   \"placements\": [");
    for (std::size_t i = 0; i < placements->size(); ++i) {
      json_.write(i > 0 ? ", " : "");
      json_.write(placementText((*placements)[i]));
    }
    json_.write("],\n   \"shots\": [");
    auto done = shotList(shots, [&](const StoredShot& shot) {
      csv_.write(csvRow(exported, shot));
      ++report_.shots;
    });
    if (!done) return done;
    // What a correction names by the number after its time.
    json_.write("],\n   \"put_aside\": [");
    const auto aside = wantedOf(record_.shotsPutAside(summary.id));
    if (!aside) return tl::make_unexpected(aside.error());
    if (done = shotList(*aside, [](const StoredShot&) {}); !done) return done;
    json_.write("]}");
    return {};
  }

  Record& record_;
  const ExportOptions& options_;
  OutputFile json_;
  OutputFile csv_;
  ExportReport report_;
};

}  // namespace

Result<ExportReport> exportRecord(Record& record, const ExportOptions& options) {
  // Before a folder is made.
  if (options.player) {
    const auto known = record.playerNamed(*options.player);
    if (!known) return tl::make_unexpected(known.error());
    if (!*known) return failure(ErrorCode::NotFound, *options.player, record.path());
  }
  std::error_code error;
  std::filesystem::create_directories(options.folder, error);
  if (error) return failure(ErrorCode::FileNotWritable, options.folder, error.message());
  const std::filesystem::path folder(options.folder);
  auto json = OutputFile::make((folder / "record.json").string());
  if (!json) return tl::make_unexpected(json.error());
  auto csv = OutputFile::make((folder / "shots.csv").string());
  if (!csv) return tl::make_unexpected(csv.error());
  return Exporter(record, options, std::move(*json), std::move(*csv)).run();
}

}  // namespace ferrule
