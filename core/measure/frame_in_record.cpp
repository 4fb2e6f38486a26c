// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/frame_in_record.h"

#include <algorithm>

#include "core/measure/record_entries.h"
#include "core/measure/table_fingerprint.h"

namespace ferrule {

namespace {

Result<FrameSummary> frameOf(Record& record, const StoredShot& shot) {
  const auto frames = record.frames(shot.session);
  if (!frames) return tl::make_unexpected(frames.error());
  const auto found = std::ranges::find(*frames, shot.frame, &FrameSummary::id);
  if (found == frames->end()) return failure(ErrorCode::NotFound, "frame", record.path());
  return *found;
}

}  // namespace

Result<WholeFrame> wholeFrame(Record& record, const StoredShot& shot) {
  WholeFrame whole;
  const auto frame = frameOf(record, shot);
  if (!frame) return tl::make_unexpected(frame.error());
  whole.frame = *frame;
  const auto shots = record.shots(shot.frame);
  if (!shots) return tl::make_unexpected(shots.error());
  for (const ShotSummary& summary : *shots) {
    auto stored = record.shot(summary.id);
    if (!stored) return tl::make_unexpected(stored.error());
    ShotSayings sayings = sayingsOf(*stored);
    whole.shots.push_back({std::move(*stored), std::move(sayings)});
  }
  auto placements = record.placements(shot.frame);
  if (!placements) return tl::make_unexpected(placements.error());
  whole.placements = std::move(*placements);
  auto table = record.tableOf(shot.session);
  if (!table) return tl::make_unexpected(table.error());
  whole.table = std::move(*table);
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto session = std::ranges::find(*sessions, shot.session, &SessionSummary::id);
  if (session != sessions->end()) whole.players = session->players;
  const auto rig = record.rigOf(shot.frame);
  if (!rig) return tl::make_unexpected(rig.error());
  if (*rig) whole.knowledge.camera = cameraPosition(**rig);
  auto known = fingerprintFor(record, shot.session);
  if (!known) return tl::make_unexpected(known.error());
  if (*known) whole.knowledge.table = std::move((*known)->fingerprint);
  return whole;
}

void ruleFrom(const WholeFrame& before, const std::vector<FrameShot>& shots, std::size_t from, const ShotId& made,
              std::vector<ShotChange>& changes) {
  const auto game = gameFromText(before.frame.game);
  const bool ruled = std::ranges::any_of(shots, [](const FrameShot& shot) { return shot.shot.ruling.has_value(); });
  if (!game || !ruled) return;
  const bool filmed = before.frame.film.has_value();
  const auto anew = ruleFrame(shots, *game, before.table, before.players, filmed);
  for (std::size_t i = from; i < shots.size(); ++i) {
    const StoredShot& shot = shots[i].shot;
    if (!shot.ruling && shot.id != made) continue;
    const std::string content = entryOf(anew[i].ruled).content;
    if (!shot.ruling || content != shot.ruling->content) changes.push_back({shot.id, ShotField::Ruling, content});
    if (shots[i].sayings.player || before.players.size() != 2) continue;
    std::optional<std::string> name;
    if (anew[i].shooter) name = before.players[indexOf(*anew[i].shooter)];
    if (name.value_or(std::string()) != shot.playerName) changes.push_back({shot.id, ShotField::Player, name});
  }
}

}  // namespace ferrule
