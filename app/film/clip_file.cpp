// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/film/clip_file.h"

#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <opencv2/videoio.hpp>

namespace ferrule {

namespace {

/// H.264 and MPEG-4 part 2 halve the colours' resolution: sides must be even.
QSize evenSize(const QSize& size) {
  return {size.width() & ~1, size.height() & ~1};
}

struct Codec {
  const char* letters;
  const char* ending;
};
constexpr Codec kCodecs[] = {{"avc1", "mp4"}, {"mp4v", "mp4"}, {"MJPG", "avi"}};

/// Beside the file that is to be, so that it can be renamed into place; the ending tells OpenCV the container.
QString underWay(const QString& path) {
  const QFileInfo info(path);
  return info.dir().filePath(QStringLiteral(".%1.part.%2").arg(info.completeBaseName(), info.suffix().toLower()));
}

bool openWriter(cv::VideoWriter& writer, const QString& path, double rate_hz, const QSize& size) {
  const QString ending = QFileInfo(path).suffix().toLower();
  for (const Codec& codec : kCodecs) {
    if (ending != QLatin1String(codec.ending)) continue;
    const char* c = codec.letters;
    try {
      if (writer.open(path.toStdString(), cv::CAP_FFMPEG, cv::VideoWriter::fourcc(c[0], c[1], c[2], c[3]), rate_hz,
                      cv::Size(size.width(), size.height()))) {
        return true;
      }
    } catch (const cv::Exception&) {
      // A codec that this system lacks; the next one may be there.
    }
  }
  return false;
}

void write(cv::VideoWriter& writer, const QImage& image, const QSize& size) {
  const QImage rgb = image.convertToFormat(QImage::Format_RGB888);
  const cv::Mat view(rgb.height(), rgb.width(), CV_8UC3, const_cast<uchar*>(rgb.constBits()),
                     static_cast<std::size_t>(rgb.bytesPerLine()));
  cv::Mat pixels;
  cv::cvtColor(view(cv::Rect(0, 0, size.width(), size.height())), pixels, cv::COLOR_RGB2BGR);
  writer.write(pixels);
}

/// Removes what was not finished.
class PartFile {
 public:
  explicit PartFile(QString path) : path_(std::move(path)) {}
  ~PartFile() { QFile::remove(path_); }
  [[nodiscard]] const QString& path() const { return path_; }

 private:
  QString path_;
};

}  // namespace

double clipRate_hz(const std::vector<double>& times_s, double from_s, double until_s) {
  std::vector<double> gaps_s;
  for (std::size_t i = 1; i < times_s.size(); ++i) {
    if (times_s[i] >= from_s && times_s[i - 1] <= until_s) gaps_s.push_back(times_s[i] - times_s[i - 1]);
  }
  if (gaps_s.empty()) return 0.0;
  const auto middle = gaps_s.begin() + static_cast<std::ptrdiff_t>(gaps_s.size() / 2);
  std::ranges::nth_element(gaps_s, middle);
  return *middle > 0.0 ? 1.0 / *middle : 0.0;
}

Result<ClipReport> writeClip(const ClipTerms& terms, const JobControl& job) {
  const QString path = QString::fromStdString(terms.path);
  const auto notWritable = [&terms](const char* why) { return failure(ErrorCode::FileNotWritable, terms.path, why); };
  const long images = std::lround(std::floor((terms.until_s - terms.from_s) * std::max(terms.rate_hz, 1.0) + 1e-6)) + 1;
  const PartFile part(underWay(path));
  cv::VideoWriter writer;
  ClipReport report;
  for (long i = 0; i < images; ++i) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    job.reportShare(static_cast<double>(i) / static_cast<double>(images), "clip");
    const auto image = terms.image(terms.from_s + static_cast<double>(i) / terms.rate_hz);
    if (!image) break;
    if (report.images == 0) {
      report.size = evenSize(image->size());
      // Made first, so that nobody else can read it while it grows.
      QFile made(part.path());
      if (!made.open(QIODevice::WriteOnly)) return notWritable("cannot be made");
      made.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
      made.close();
      if (!openWriter(writer, part.path(), terms.rate_hz, report.size)) return notWritable("no codec");
    }
    write(writer, *image, report.size);
    ++report.images;
  }
  if (report.images == 0) return failure(ErrorCode::FilmWithoutPicture, terms.path);
  writer.release();
  if (QFileInfo(part.path()).size() == 0) return notWritable("empty");
  QFile::setPermissions(part.path(), QFileDevice::ReadOwner | QFileDevice::WriteOwner);
  QFile::remove(path);
  if (!QFile::rename(part.path(), path)) return notWritable("cannot be renamed");
  return report;
}

}  // namespace ferrule
