// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTemporaryDir>
#include <string>
#include <vector>

#include "core/record/record.h"

/// Invented shots, players and rigs for the tests of the record.
namespace ferrule::sample {

/// A folder that is removed with its content.
class Folder {
 public:
  [[nodiscard]] std::string file(const std::string& name) const {
    return folder_.filePath(QString::fromStdString(name)).toStdString();
  }

 private:
  QTemporaryDir folder_;
};

/// A shot with every kind of plain value in it; number makes them differ.
[[nodiscard]] ShotReading shot(int number);
/// The same with what a reading says of itself: account of the line's error, sureness of events, reasons, flags.
[[nodiscard]] ShotReading explainedShot(int number);
/// Tracks of the cue ball and the 3 on the record's grid of 0.01 mm and 1 us, samples images long.
[[nodiscard]] std::vector<Track> tracks(int number, int samples = 30);
[[nodiscard]] Rig rig();
[[nodiscard]] MeasuredTable table();
[[nodiscard]] FilmEntry film();
[[nodiscard]] Player player(const std::string& name, Handedness handedness = Handedness::Unknown);

/// A session of one frame with a film, a rig and the players Ada and Ben.
struct Game {
  PlayerId ada;
  PlayerId ben;
  FilmId film;
  SessionId session;
  FrameId frame;
};
Game addGame(Record& record);

/// Opens, or says why not and ends the test program at once (an abort would have the debugger called).
[[nodiscard]] Record openOrDie(const std::string& path, const RecordOptions& options = {});

}  // namespace ferrule::sample
