// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <vector>

namespace ferrule {

/// Where in the film the review stands. It always stands on an image: times between two images do not exist.
class Playhead : public QObject {
  Q_OBJECT
 public:
  explicit Playhead(QObject* parent = nullptr);

  /// The film times of the images, rising. Keeps standing at the nearest time. Empty: nothing to stand on.
  void setTimes(std::vector<double> times_s);
  [[nodiscard]] const std::vector<double>& times() const { return times_s_; }

  [[nodiscard]] bool isEmpty() const { return times_s_.empty(); }
  [[nodiscard]] int index() const { return index_; }
  [[nodiscard]] double time_s() const;
  /// The usual time between two images here; 0 when unknown.
  [[nodiscard]] double spacing_s() const;
  [[nodiscard]] bool isPlaying() const { return timer_.isActive(); }

  /// The image nearest to a time; the earlier of two equally near.
  [[nodiscard]] int indexNear(double time_s) const;

  /// Goes to the nearest image. Playing goes on from there.
  void seek(double time_s);
  void step(int images);
  void play();
  void pause();
  void toggle();
  /// Moves on by real time, as the clock does while playing: to the last image that has begun. Stops at the end.
  void advance(double elapsed_s);

 signals:
  void moved(double time_s);
  void playingChanged(bool playing);

 private:
  void moveTo(int index);
  void tick();

  std::vector<double> times_s_;
  int index_ = 0;
  double clock_s_ = 0.0;  ///< where playing is, between images too
  QTimer timer_;
  QElapsedTimer elapsed_;
};

}  // namespace ferrule
