// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/record/large_record.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <functional>

#include "tests/bench/record/played_shots.h"
#include "tests/record/sample.h"

namespace ferrule::bench {

namespace {

constexpr int kFramesPerSession = 10;
constexpr int kShotsPerFrame = 10;

void printTime(const char* what, const std::function<void()>& work) {
  std::vector<double> times_ms;
  for (int i = 0; i < 5; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    times_ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  const double first = times_ms.front();
  std::ranges::sort(times_ms);
  std::printf("  %-44s first %8.2f ms  median %8.2f ms\n", what, first, times_ms[times_ms.size() / 2]);
}

}  // namespace

void fillLargeRecord(const std::string& path, int shots) {
  Record record = sample::openOrDie(path);
  const PlayerId ada = must(record.addPlayer(sample::player("Ada")));
  const FilmId film = must(record.addFilm(sample::film()));
  // Packing the same few shots again and again costs as much as new ones and takes as much room.
  std::vector<std::vector<Track>> tracks;
  for (int i = 0; i < 16; ++i)
    tracks.push_back(playedTracks(i));
  SessionId session;
  FrameId frame;
  for (int i = 0; i < shots; ++i) {
    if (i % (kFramesPerSession * kShotsPerFrame) == 0) {
      session = must(record.addSession(
          {"Session " + std::to_string(i), 1'760'000'000'000 + i * 1000LL, "club table 2", sample::table(), {ada}}));
    }
    if (i % kShotsPerFrame == 0) frame = must(record.addFrame({session, "eight-ball", film, sample::rig()}));
    must(record.appendShot(frame, sample::shot(i % kShotsPerFrame + 1),
                           tracks[static_cast<std::size_t>(i) % tracks.size()], ada));
  }
}

void printLargeRecord(const std::string& path, const std::string& fillFolder, int shots) {
  if (!std::filesystem::exists(path)) {
    const std::string part = fillFolder + "/large.part.sqlite";
    fillLargeRecord(part, shots);
    std::filesystem::copy_file(part, path);
    std::filesystem::remove(part);
  }
  std::printf("a record of %d shots, %.0f MB\n", shots, static_cast<double>(std::filesystem::file_size(path)) / 1e6);
  printTime("opening and listing the sessions", [&] {
    Record record = sample::openOrDie(path);
    must(record.sessions());
  });
  Record record = sample::openOrDie(path);
  const auto sessions = must(record.sessions());
  printTime("listing the sessions", [&] { must(record.sessions()); });
  const SessionId middle = sessions[sessions.size() / 2].id;
  const auto frames = must(record.frames(middle));
  printTime("the frames of a session", [&] { must(record.frames(middle)); });
  printTime("the shots of a frame", [&] { must(record.shots(frames.front().id)); });
  const auto shotsOfFrame = must(record.shots(frames.front().id));
  printTime("one shot with its tracks", [&] { must(record.shot(shotsOfFrame.front().id)); });
  printTime("all shots of a session, frame by frame", [&] {
    for (const FrameSummary& frame : must(record.frames(middle)))
      must(record.shots(frame.id));
  });
}

}  // namespace ferrule::bench
