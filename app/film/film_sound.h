// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

class QAudioOutput;
class QMediaPlayer;

namespace ferrule {

/// The sound of a film, beside pictures that are shown by somebody else: it runs while they are played and falls silent
/// when they are stepped or stopped. The player is made when the first sound is to be heard.
class FilmSound : public QObject {
  Q_OBJECT
 public:
  using QObject::QObject;

  void setMuted(bool muted);
  [[nodiscard]] bool isMuted() const { return muted_; }
  /// From a film time on. path: the film; nothing is heard of one that is not there or has no sound.
  void play(const QString& path, double time_s);
  void stop();
  /// Where the pictures are now. Sound that has run away from them by more than the eye forgives is put right.
  void follow(double time_s);
  /// Whether sound is meant to run now.
  [[nodiscard]] bool isPlaying() const { return playing_; }
  /// Where the sound is, film time; 0 before the first one.
  [[nodiscard]] double time_s() const;

 private:
  QMediaPlayer* player_ = nullptr;
  QAudioOutput* output_ = nullptr;
  QString path_;
  bool muted_ = false;
  bool playing_ = false;
};

}  // namespace ferrule
