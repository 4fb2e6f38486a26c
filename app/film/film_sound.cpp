// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/film/film_sound.h"

#include <QAudioOutput>
#include <QFileInfo>
#include <QMediaPlayer>
#include <QUrl>
#include <cmath>

namespace ferrule {

namespace {

/// Sound that comes so much late or early is noticed. Source: ITU-R BT.1359-1 gives 45 ms early and 125 ms late as
/// detectable (from memory); players report their position in coarse steps, so the wider of both.
constexpr double kMostApart_s = 0.125;

}  // namespace

void FilmSound::setMuted(bool muted) {
  muted_ = muted;
  if (output_ != nullptr) output_->setMuted(muted);
}

void FilmSound::play(const QString& path, double time_s) {
  if (path.isEmpty() || muted_ || !QFileInfo::exists(path)) return stop();
  if (player_ == nullptr) {
    player_ = new QMediaPlayer(this);
    output_ = new QAudioOutput(this);
    player_->setAudioOutput(output_);
  }
  if (path_ != path) {
    path_ = path;
    player_->setSource(QUrl::fromLocalFile(path));
  }
  playing_ = true;
  player_->setPosition(std::llround(time_s * 1000.0));
  player_->play();
}

void FilmSound::stop() {
  playing_ = false;
  if (player_ != nullptr) player_->pause();
}

void FilmSound::follow(double time_s) {
  if (!playing_ || player_->playbackState() != QMediaPlayer::PlayingState) return;
  if (std::abs(this->time_s() - time_s) > kMostApart_s) player_->setPosition(std::llround(time_s * 1000.0));
}

double FilmSound::time_s() const {
  return player_ != nullptr ? static_cast<double>(player_->position()) / 1000.0 : 0.0;
}

}  // namespace ferrule
