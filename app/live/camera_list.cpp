// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/camera_list.h"

#include <QCoreApplication>
#include <algorithm>
#include <tuple>

namespace ferrule {

namespace {

struct CameraWords {
  Q_DECLARE_TR_FUNCTIONS(CameraWords)
};

/// Packed pictures cost a decoder, others only a change of colours.
bool isPacked(const QCameraFormat& format) {
  return format.pixelFormat() == QVideoFrameFormat::Format_Jpeg;
}

bool sameView(const QCameraFormat& a, const QCameraFormat& b) {
  return a.resolution() == b.resolution() && qRound(a.maxFrameRate()) == qRound(b.maxFrameRate());
}

}  // namespace

QList<QCameraFormat> formatsOf(const QCameraDevice& camera, const std::optional<ImageSize>& size) {
  QList<QCameraFormat> formats = camera.videoFormats();
  const QSize wanted = size ? QSize(size->width, size->height) : QSize();
  const auto order = [&](const QCameraFormat& format) {
    const QSize pixels = format.resolution();
    return std::tuple(pixels != wanted, -pixels.width() * pixels.height(), -qRound(format.maxFrameRate()),
                      isPacked(format));
  };
  std::ranges::stable_sort(formats, {}, order);
  formats.erase(std::unique(formats.begin(), formats.end(), sameView), formats.end());
  return formats;
}

QString formatWords(const QCameraFormat& format) {
  return CameraWords::tr("%1 × %2, %3 images a second")
      .arg(format.resolution().width())
      .arg(format.resolution().height())
      .arg(qRound(format.maxFrameRate()));
}

}  // namespace ferrule
