// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/measure/judge_session.h"
#include "tests/record/sample.h"

/// Recorded shots that were made by simulation, so that what was meant is known.
namespace ferrule::judged {

/// The 1 hangs at the foot-left pocket, the 2 lies far up table on the rail: one good shot, one bad one.
extern const Position kBefore;
inline const PocketedBall kEasy{BallName(1), PocketName::FootLeft};

[[nodiscard]] Strike easyStrike();

/// What a perfect film would show of this strike.
[[nodiscard]] ShotReading played(int number, const Strike& strike, const PocketedBall& meant);

/// A record with one frame that holds these shots, each ruled on its own.
struct Kept {
  sample::Folder folder;
  Record record = sample::openOrDie(folder.file("r.sqlite"));
  SessionId session;
  FrameId frame;
  std::vector<ShotId> shots;

  explicit Kept(const std::vector<ShotReading>& readings, bool ruled = true, const std::string& player = {});
};

[[nodiscard]] JudgeOptions quick();

}  // namespace ferrule::judged
