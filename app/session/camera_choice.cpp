// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/camera_choice.h"

#include <QComboBox>
#include <QVBoxLayout>

#include "app/live/camera_list.h"
#include "app/live/camera_source.h"
#include "app/live/paced_film.h"
#include "app/session/path_field.h"
#include "app/window/card.h"

namespace ferrule {

namespace {

/// Data of the row that is no camera.
const QString& standIn() {
  static const QString name = QStringLiteral("film");
  return name;
}

}  // namespace

CameraChoice::CameraChoice(QWidget* parent) : QWidget(parent) {
  cameras_ = new QComboBox;
  cameras_->setObjectName(QStringLiteral("cameras"));
  cameras_->setAccessibleName(tr("Camera"));
  cameras_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  formats_ = new QComboBox;
  formats_->setObjectName(QStringLiteral("cameraFormats"));
  formats_->setAccessibleName(tr("Size and rate of the images"));
  formats_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  film_ = new PathField("standInFilm", tr("Choose a film that stands in for the camera"),
                        tr("Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)"));
  film_->setPlaceholder(tr("A film of this camera, played at its own pace"));
  note_ = new QuietLabel;
  note_->setObjectName(QStringLiteral("cameraNote"));
  note_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(cameras_);
  column->addWidget(formats_);
  column->addWidget(film_);
  column->addWidget(note_);
  setFocusProxy(cameras_);
  connect(cameras_, &QComboBox::currentIndexChanged, this, &CameraChoice::showFormats);
  connect(formats_, &QComboBox::currentIndexChanged, this, [this] {
    const auto format = formats_->currentData().value<QCameraFormat>();
    const bool fits = !size_ || format.isNull() || format.resolution() == QSize(size_->width, size_->height);
    if (isFilm() || !camera()) return;
    note_->setText(fits
                       ? tr("Set the camera to a fixed focus and exposure: a whole number of mains periods against "
                            "flicker, short enough that a fast ball is no streak. What set-up was made with must stay.")
                       : tr("The rig was made at %1 × %2; images of another size cannot be measured with it.")
                             .arg(size_->width)
                             .arg(size_->height));
  });
}

void CameraChoice::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (devices_) return;
  devices_ = std::make_unique<QMediaDevices>();
  connect(devices_.get(), &QMediaDevices::videoInputsChanged, this, &CameraChoice::refresh);
  refresh();
  // The form laid its rows out for what stood here before; asked within the event itself, it would not listen.
  QMetaObject::invokeMethod(
      this,
      [this] {
        layout()->invalidate();
        updateGeometry();
      },
      Qt::QueuedConnection);
}

void CameraChoice::refresh() {
  const QVariant before = cameras_->currentData();
  {
    const QSignalBlocker quiet(cameras_);
    cameras_->clear();
    for (const QCameraDevice& device : QMediaDevices::videoInputs())
      cameras_->addItem(device.description(), device.id());
    cameras_->addItem(tr("A film in place of a camera"), standIn());
    cameras_->setCurrentIndex(std::max(cameras_->findData(before), 0));
  }
  showFormats();
}

bool CameraChoice::isFilm() const {
  return cameras_->currentData() == QVariant(standIn());
}

std::optional<QCameraDevice> CameraChoice::camera() const {
  if (!devices_) return std::nullopt;
  const QByteArray id = cameras_->currentData().toByteArray();
  for (const QCameraDevice& device : QMediaDevices::videoInputs()) {
    if (device.id() == id) return device;
  }
  return std::nullopt;
}

void CameraChoice::showFormats() {
  const auto device = camera();
  film_->setVisible(isFilm());
  formats_->setVisible(device.has_value());
  if (isFilm()) {
    note_->setText(cameras_->count() == 1
                       ? tr("No camera was found: connect one, or let a film stand in to try it.")
                       : tr("Everything happens as with a camera, also when measuring cannot keep up."));
  }
  formats_->clear();
  if (!device) return;
  for (const QCameraFormat& format : formatsOf(*device, size_))
    formats_->addItem(formatWords(format), QVariant::fromValue(format));
}

void CameraChoice::setImageSize(const std::optional<ImageSize>& size) {
  if (size == size_) return;
  size_ = size;
  showFormats();
}

std::unique_ptr<LiveSource> CameraChoice::makeSource() const {
  if (isFilm()) return film_->path().isEmpty() ? nullptr : std::make_unique<PacedFilm>(film_->path());
  const auto device = camera();
  if (!device) return nullptr;
  return std::make_unique<CameraSource>(*device, formats_->currentData().value<QCameraFormat>());
}

}  // namespace ferrule
