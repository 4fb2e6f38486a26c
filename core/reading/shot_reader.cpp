// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/shot_reader.h"

#include <utility>

#include "core/reading/read_shot.h"

namespace ferrule {

class ShotReader::Impl {
 public:
  Impl(const MeasuredTable& measured, const std::optional<TablePoint3>& camera)
      : measured_(measured), cutter_(measured) {
    knowledge_.camera = camera;
  }

  void feed(const ImageReading& reading) {
    cutter_.feed(reading);
    readCutShots();
  }

  void setCamera(const std::optional<TablePoint3>& camera) { knowledge_.camera = camera; }

  void setTable(const Fingerprint& fingerprint) { knowledge_.table = fingerprint; }

  void finish() {
    cutter_.finish();
    readCutShots();
  }

  std::vector<ReadShot> takeShots() { return std::exchange(shots_, {}); }
  std::vector<Placement> takePlacements() { return cutter_.takePlacements(); }

 private:
  void readCutShots() {
    for (const CutShot& cut : cutter_.takeShots()) {
      auto reading = readShot(cut, measured_, count_ + 1, knowledge_);
      if (!reading) continue;
      ++count_;
      ReadShot shot{std::move(*reading), {}};
      for (const BallName ball : ballsIn(cut.readings))
        shot.tracks.push_back(trackOf(ball, cut.readings));
      shots_.push_back(std::move(shot));
    }
  }

  MeasuredTable measured_;
  ShotCutter cutter_;
  ReadingKnowledge knowledge_;
  int count_ = 0;
  std::vector<ReadShot> shots_;
};

ShotReader::ShotReader(const MeasuredTable& measured, const std::optional<TablePoint3>& camera)
    : impl_(std::make_unique<Impl>(measured, camera)) {}
ShotReader::~ShotReader() = default;
ShotReader::ShotReader(ShotReader&&) noexcept = default;
ShotReader& ShotReader::operator=(ShotReader&&) noexcept = default;

void ShotReader::setCamera(const std::optional<TablePoint3>& camera) {
  impl_->setCamera(camera);
}
void ShotReader::setTable(const Fingerprint& fingerprint) {
  impl_->setTable(fingerprint);
}
void ShotReader::feed(const ImageReading& reading) {
  impl_->feed(reading);
}
void ShotReader::finish() {
  impl_->finish();
}
std::vector<ReadShot> ShotReader::takeShots() {
  return impl_->takeShots();
}
std::vector<Placement> ShotReader::takePlacements() {
  return impl_->takePlacements();
}

}  // namespace ferrule
