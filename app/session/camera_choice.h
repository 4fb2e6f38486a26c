// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMediaDevices>
#include <QWidget>
#include <memory>

#include "app/live/live_source.h"
#include "core/camera/lens.h"

class QComboBox;
class QLabel;

namespace ferrule {

class PathField;

/// Which camera a live session sees through, and how it sends its images; or a film that stands in for one. Cameras are
/// looked for when it is first shown: asking for them costs time and may start a device.
class CameraChoice : public QWidget {
  Q_OBJECT
 public:
  explicit CameraChoice(QWidget* parent = nullptr);

  /// Of the rig's lens: the camera must send images of it. Nothing while no rig is chosen.
  void setImageSize(const std::optional<ImageSize>& size);
  /// What was chosen, ready to be started; null where nothing is.
  [[nodiscard]] std::unique_ptr<LiveSource> makeSource() const;

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void showFormats();
  [[nodiscard]] bool isFilm() const;
  [[nodiscard]] std::optional<QCameraDevice> camera() const;

  std::unique_ptr<QMediaDevices> devices_;  ///< null until it was shown
  std::optional<ImageSize> size_;
  QComboBox* cameras_;
  QComboBox* formats_;
  PathField* film_;
  QLabel* note_;
};

}  // namespace ferrule
