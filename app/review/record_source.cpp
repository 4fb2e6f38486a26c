// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/record_source.h"

#include "core/record/frame_moves.h"
#include "core/record/record.h"

namespace ferrule {

namespace {

class RecordSource : public ReviewSource {
 public:
  explicit RecordSource(Record record) : record_(std::move(record)) {}

  Result<std::vector<SessionSummary>> sessions() override { return record_.sessions(); }

  Result<SessionContent> content(const SessionSummary& session) override {
    SessionContent content;
    content.session = session;
    auto table = record_.tableOf(session.id);
    if (!table) return tl::unexpected(table.error());
    content.table = std::move(*table);
    auto tags = record_.tags();
    if (!tags) return tl::unexpected(tags.error());
    content.tags = std::move(*tags);
    auto frames = record_.frames(session.id);
    if (!frames) return tl::unexpected(frames.error());
    for (FrameSummary& frame : *frames) {
      auto whole = frameContent(std::move(frame));
      if (!whole) return tl::unexpected(whole.error());
      content.frames.push_back(std::move(*whole));
    }
    return content;
  }

  Result<StoredShot> shot(ShotId shot) override { return record_.shot(shot); }

 private:
  Result<FrameContent> frameContent(FrameSummary frame) {
    FrameContent content;
    auto shots = record_.shots(frame.id);
    if (!shots) return tl::unexpected(shots.error());
    auto placements = record_.placements(frame.id);
    if (!placements) return tl::unexpected(placements.error());
    auto rig = record_.rigOf(frame.id);
    if (!rig) return tl::unexpected(rig.error());
    content.frame = std::move(frame);
    content.shots = std::move(*shots);
    content.placements = std::move(*placements);
    content.rig = std::move(*rig);
    auto moves = movesOf(record_, content.frame.id);
    if (!moves) return tl::unexpected(moves.error());
    content.moves = std::move(*moves);
    return content;
  }

  Record record_;
};

}  // namespace

Result<std::unique_ptr<ReviewSource>> openRecordSource(const std::string& path) {
  auto record = Record::open(path, {.mode = RecordMode::ReadOnly});
  if (!record) return tl::unexpected(record.error());
  return std::make_unique<RecordSource>(std::move(*record));
}

}  // namespace ferrule
