// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/camera_picture.h"

#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

namespace ferrule {

namespace {

/// A plane of a mapped image, without a copy. type: of OpenCV.
cv::Mat plane(QVideoFrame& image, int number, int width, int height, int type) {
  return {height, width, type, image.bits(number), static_cast<std::size_t>(image.bytesPerLine(number))};
}

cv::Mat fromMapped(QVideoFrame& image) {
  const int width = image.width();
  const int height = image.height();
  cv::Mat picture;
  switch (image.pixelFormat()) {
    case QVideoFrameFormat::Format_NV12:
      cv::cvtColorTwoPlane(plane(image, 0, width, height, CV_8UC1), plane(image, 1, width / 2, height / 2, CV_8UC2),
                           picture, cv::COLOR_YUV2BGR_NV12);
      return picture;
    case QVideoFrameFormat::Format_NV21:
      cv::cvtColorTwoPlane(plane(image, 0, width, height, CV_8UC1), plane(image, 1, width / 2, height / 2, CV_8UC2),
                           picture, cv::COLOR_YUV2BGR_NV21);
      return picture;
    case QVideoFrameFormat::Format_YUYV:
      cv::cvtColor(plane(image, 0, width, height, CV_8UC2), picture, cv::COLOR_YUV2BGR_YUYV);
      return picture;
    case QVideoFrameFormat::Format_UYVY:
      cv::cvtColor(plane(image, 0, width, height, CV_8UC2), picture, cv::COLOR_YUV2BGR_UYVY);
      return picture;
    case QVideoFrameFormat::Format_BGRA8888:
    case QVideoFrameFormat::Format_BGRX8888:
      cv::cvtColor(plane(image, 0, width, height, CV_8UC4), picture, cv::COLOR_BGRA2BGR);
      return picture;
    case QVideoFrameFormat::Format_RGBA8888:
    case QVideoFrameFormat::Format_RGBX8888:
      cv::cvtColor(plane(image, 0, width, height, CV_8UC4), picture, cv::COLOR_RGBA2BGR);
      return picture;
    case QVideoFrameFormat::Format_Jpeg:
      return cv::imdecode(cv::Mat(1, image.mappedBytes(0), CV_8UC1, image.bits(0)), cv::IMREAD_COLOR);
    default:
      return {};
  }
}

/// For what is rare: the toolkit knows every format, but needs longer.
cv::Mat fromAny(const QVideoFrame& image) {
  const QImage seen = image.toImage().convertToFormat(QImage::Format_BGR888);
  if (seen.isNull()) return {};
  const cv::Mat view(seen.height(), seen.width(), CV_8UC3, const_cast<uchar*>(seen.constBits()),
                     static_cast<std::size_t>(seen.bytesPerLine()));
  return view.clone();
}

}  // namespace

cv::Mat pictureOf(QVideoFrame image) {
  if (!image.isValid()) return {};
  cv::Mat picture;
  if (image.map(QVideoFrame::ReadOnly)) {
    try {
      picture = fromMapped(image);
    } catch (const cv::Exception&) {
      // A picture that is broken in itself: the next one may be sound.
    }
    image.unmap();
  }
  return picture.empty() ? fromAny(image) : picture;
}

}  // namespace ferrule
