// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/worse_film.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <opencv2/videoio.hpp>
#include <utility>

#include "core/vision/film_source.h"

namespace ferrule::bench {

namespace {

constexpr std::array kWords{std::pair{Worsening::Noise, "noise"},
                            std::pair{Worsening::Dim, "dim"},
                            std::pair{Worsening::Flicker, "flicker"},
                            std::pair{Worsening::Uneven, "uneven"},
                            std::pair{Worsening::Warm, "warm"},
                            std::pair{Worsening::Soft, "soft"},
                            std::pair{Worsening::Sharpened, "sharpened"},
                            std::pair{Worsening::Compressed, "compressed"},
                            std::pair{Worsening::HalfRate, "half-rate"},
                            std::pair{Worsening::HalfSize, "half-size"},
                            std::pair{Worsening::UpsideDown, "upside-down"},
                            std::pair{Worsening::Jitter, "jitter"},
                            std::pair{Worsening::Telephone, "telephone"}};

/// Makes one picture after another worse.
class Spoiler {
 public:
  explicit Spoiler(Worsening worsening) : worsening_(worsening) {}

  /// share: how far into the film, 0 to 1.
  cv::Mat spoil(const cv::Mat& picture, double time_s, double share) {
    using enum Worsening;
    switch (worsening_) {
      case Noise:
        return withNoise(picture, 7.0);
      case Dim:
        return withNoise(scaled(picture, 0.45), 4.0);
      case Flicker:
        return scaled(picture, (1.0 - 0.25 * share) * flicker(time_s, 0.06));
      case Uneven:
        return uneven(picture);
      case Warm:
        return warm(picture);
      case Soft:
        return soft(picture, 1.3);
      case Sharpened:
        return sharpened(picture);
      case Compressed:
        return compressed(picture, 30);
      case HalfRate:
        return picture;
      case HalfSize: {
        cv::Mat half;
        cv::resize(picture, half, {picture.cols / 2, picture.rows / 2}, 0.0, 0.0, cv::INTER_AREA);
        return half;
      }
      case UpsideDown: {
        cv::Mat turned;
        cv::rotate(picture, turned, cv::ROTATE_180);
        return turned;
      }
      case Jitter:
        return trembled(picture, time_s);
      case Telephone:
        return compressed(withNoise(scaled(sharpened(picture), flicker(time_s, 0.03)), 3.0), 55);
    }
    return picture;
  }

 private:
  static cv::Mat scaled(const cv::Mat& picture, double factor) {
    cv::Mat result;
    picture.convertTo(result, -1, factor);
    return result;
  }
  static double flicker(double time_s, double amount) {
    constexpr double kBeat_hz = 7.3;  // mains flicker seen through the camera's own rate
    return 1.0 + amount * std::sin(2.0 * std::numbers::pi * kBeat_hz * time_s);
  }
  cv::Mat withNoise(const cv::Mat& picture, double deviation) {
    cv::Mat noise(picture.size(), CV_16SC3);
    random_.fill(noise, cv::RNG::NORMAL, cv::Scalar::all(0.0), cv::Scalar::all(deviation));
    cv::Mat result;
    cv::add(picture, noise, result, cv::noArray(), CV_8UC3);
    return result;
  }
  static cv::Mat uneven(const cv::Mat& picture) {
    cv::Mat result = picture.clone();
    const double corner = std::hypot(picture.cols, picture.rows) / 2.0;
    for (int y = 0; y < result.rows; ++y) {
      for (int x = 0; x < result.cols; ++x) {
        const double r = std::hypot(x - picture.cols / 2.0, y - picture.rows / 2.0) / corner;
        cv::Vec3b& pixel = result.at<cv::Vec3b>(y, x);
        for (int c = 0; c < 3; ++c)
          pixel[c] = cv::saturate_cast<uchar>(pixel[c] * (1.1 - 0.5 * r * r));
      }
    }
    return result;
  }
  static cv::Mat warm(const cv::Mat& picture) {
    constexpr std::array kGains{0.75, 0.97, 1.08};  // blue, green, red
    constexpr double kGamma = 0.8;
    cv::Mat table(1, 256, CV_8UC3);
    for (int i = 0; i < 256; ++i) {
      for (int c = 0; c < 3; ++c) {
        const double light = std::pow(i / 255.0, kGamma) * kGains[static_cast<std::size_t>(c)];
        table.at<cv::Vec3b>(0, i)[c] = cv::saturate_cast<uchar>(255.0 * light);
      }
    }
    cv::Mat result;
    cv::LUT(picture, table, result);
    return result;
  }
  static cv::Mat soft(const cv::Mat& picture, double sigma_px) {
    cv::Mat result;
    cv::GaussianBlur(picture, result, {}, sigma_px);
    return result;
  }
  static cv::Mat sharpened(const cv::Mat& picture) {
    cv::Mat result;
    cv::addWeighted(picture, 2.0, soft(picture, 1.5), -1.0, 0.0, result);
    return result;
  }
  static cv::Mat compressed(const cv::Mat& picture, int quality) {
    std::vector<uchar> bytes;
    cv::imencode(".jpg", picture, bytes, {cv::IMWRITE_JPEG_QUALITY, quality});
    return cv::imdecode(bytes, cv::IMREAD_COLOR);
  }
  static cv::Mat trembled(const cv::Mat& picture, double time_s) {
    const double x = 0.35 * std::sin(2.0 * std::numbers::pi * 3.1 * time_s);
    const double y = 0.35 * std::sin(2.0 * std::numbers::pi * 4.7 * time_s + 1.0);
    const cv::Matx23d move(1.0, 0.0, x, 0.0, 1.0, y);
    cv::Mat result;
    cv::warpAffine(picture, result, move, picture.size(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
    return result;
  }

  Worsening worsening_;
  cv::RNG random_{20240607};
};

bool keeps(Worsening worsening, long image) {
  return worsening != Worsening::HalfRate || image % 2 == 0;
}

}  // namespace

std::vector<Worsening> allWorsenings() {
  std::vector<Worsening> all;
  for (const auto& [worsening, word] : kWords)
    all.push_back(worsening);
  return all;
}

std::string_view wordOf(Worsening worsening) {
  for (const auto& [one, word] : kWords)
    if (one == worsening) return word;
  return {};
}

std::optional<Worsening> worseningFromWord(std::string_view word) {
  for (const auto& [one, text] : kWords)
    if (word == text) return one;
  return std::nullopt;
}

Result<void> worsenFilm(const std::string& film, Worsening worsening, const std::string& to) {
  auto source = FilmSource::open(film);
  if (!source) return tl::unexpected(source.error());
  const double rate_hz = source->info().nominalRate_hz * (worsening == Worsening::HalfRate ? 0.5 : 1.0);
  const double length_s = source->info().duration_s;
  Spoiler spoiler(worsening);
  cv::VideoWriter writer;
  FilmImage image;
  while (source->next(image)) {
    if (!keeps(worsening, image.number)) continue;
    const cv::Mat worse = spoiler.spoil(image.picture, image.time_s, length_s > 0.0 ? image.time_s / length_s : 0.0);
    if (!writer.isOpened() && !writer.open(to, cv::VideoWriter::fourcc('F', 'F', 'V', '1'), rate_hz, worse.size()))
      return failure(ErrorCode::FileNotWritable, to);
    writer.write(worse);
  }
  return {};
}

Lens worsenLens(Lens lens, Worsening worsening) {
  if (worsening != Worsening::UpsideDown) return lens;
  lens.centre = {lens.size.width - 1.0 - lens.centre.x, lens.size.height - 1.0 - lens.centre.y};
  // What is odd in x and y changes its sign: the tangential part alone.
  if (lens.model == LensModel::Brown5 || lens.model == LensModel::Brown8) {
    lens.coefficients[2] = -lens.coefficients[2];
    lens.coefficients[3] = -lens.coefficients[3];
  }
  return lens;
}

Truth worsenTruth(Truth truth, Worsening worsening) {
  truth.rig.lens = worsenLens(truth.rig.lens, worsening);
  if (worsening == Worsening::UpsideDown) {
    truth.rig.pose.rotation.topRows<2>() *= -1.0;
    truth.rig.pose.translation_m.head<2>() *= -1.0;
  }
  if (worsening == Worsening::HalfSize) {
    Lens& lens = truth.rig.lens;
    lens.size = {lens.size.width / 2, lens.size.height / 2};
    lens.focalX_px *= 0.5;
    lens.focalY_px *= 0.5;
    lens.centre = {(lens.centre.x + 0.5) / 2.0 - 0.5, (lens.centre.y + 0.5) / 2.0 - 0.5};
  }
  if (worsening != Worsening::HalfRate) return truth;
  std::vector<TrueImage> kept;
  for (std::size_t i = 0; i < truth.images.size(); ++i)
    if (keeps(worsening, static_cast<long>(i))) kept.push_back(std::move(truth.images[i]));
  truth.images = std::move(kept);
  truth.rate_hz *= 0.5;
  return truth;
}

}  // namespace ferrule::bench
