// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/image_of.h"

namespace ferrule {

QImage imageOf(const cv::Mat& picture) {
  const bool grey = picture.channels() == 1;
  const QImage view(picture.data, picture.cols, picture.rows, static_cast<qsizetype>(picture.step),
                    grey ? QImage::Format_Grayscale8 : QImage::Format_BGR888);
  return view.convertToFormat(QImage::Format_RGB32);
}

}  // namespace ferrule
