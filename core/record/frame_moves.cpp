// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/frame_moves.h"

#include <nlohmann/json.hpp>

#include "core/camera/move_json.h"
#include "core/record/record_impl.h"

namespace ferrule {

namespace {

struct StoredRig {
  std::int64_t id = 0;
  nlohmann::ordered_json content;
};

/// Nothing for a frame without a rig.
Result<std::optional<StoredRig>> storedRigOf(RecordInside::Impl& inside, FrameId frame) {
  const auto row = inside.connection.row(
      QStringLiteral(
          "SELECT rigs.id, rigs.content FROM frames LEFT JOIN rigs ON rigs.id = frames.rig_id WHERE frames.id = ?"),
      {bound(frame.value)});
  if (!row) return tl::make_unexpected(row.error());
  if (!*row) return inside.notFound("frame", frame.value);
  const auto id = optionalIntegerOf((**row)[0]);
  if (!id) return std::optional<StoredRig>();
  StoredRig rig{*id, nlohmann::ordered_json::parse(textOf((**row)[1]), nullptr, false)};
  if (!rig.content.is_object()) return inside.senseless("rigs.content");
  return std::optional(std::move(rig));
}

}  // namespace

Result<void> keepMoves(Record& record, FrameId frame, std::span<const CameraMove> moves) {
  RecordInside::Impl& inside = RecordInside::of(record);
  Connection& connection = inside.connection;
  return connection.transaction([&]() -> Result<void> {
    auto rig = storedRigOf(inside, frame);
    if (!rig) return tl::make_unexpected(rig.error());
    if (!*rig) return {};
    nlohmann::ordered_json& content = (*rig)->content;
    if (moves.empty() && !content.contains("moves")) return {};
    content.erase("moves");
    for (const CameraMove& move : moves)
      content["moves"].push_back(jsonOf(move));
    const std::string text = content.dump(1) + "\n";
    const std::string hash = sha256Of(text);
    // The rig without moves is that of other films too: this frame gets one of its own.
    if (auto done = connection.run(
            QStringLiteral("INSERT INTO rigs(sha256, lens_id, content, chain, pose_rms_px, tag_rms_mm, verdict) "
                           "SELECT ?, lens_id, ?, chain, pose_rms_px, tag_rms_mm, verdict FROM rigs "
                           "WHERE id = ? AND NOT EXISTS(SELECT 1 FROM rigs WHERE sha256 = ?)"),
            {bound(std::string_view(hash)), bound(std::string_view(text)), bound((*rig)->id),
             bound(std::string_view(hash))});
        !done) {
      return done;
    }
    return connection.run(
        QStringLiteral("UPDATE frames SET rig_id = (SELECT id FROM rigs WHERE sha256 = ?) WHERE id = ?"),
        {bound(std::string_view(hash)), bound(frame.value)});
  });
}

Result<std::vector<CameraMove>> movesOf(Record& record, FrameId frame) {
  const auto rig = storedRigOf(RecordInside::of(record), frame);
  if (!rig) return tl::make_unexpected(rig.error());
  if (!*rig || !(*rig)->content.contains("moves")) return std::vector<CameraMove>();
  return movesFrom(nlohmann::json((*rig)->content.at("moves")), record.path());
}

}  // namespace ferrule
