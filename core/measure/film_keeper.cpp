// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/film_keeper.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <opencv2/videoio.hpp>
#include <optional>
#include <utility>
#include <vector>

#include "core/record/owner_file.h"

namespace ferrule {

namespace {

/// So many images tell the camera's rate; they wait until then.
constexpr std::size_t kForRate = 12;
constexpr double kUsualRate_hz = 30.0;
constexpr double kMostRate_hz = 240.0;
/// Looks for free space once in so many images.
constexpr long kBetweenLooks = 60;

/// What cameras send; a measured rate this near to one of them is that one.
constexpr std::array kUsualRates_hz{24.0, 25.0, 30.0, 50.0, 60.0, 90.0, 100.0, 120.0};
constexpr double kRateSlack = 0.02;

/// Of rising times. The median spacing tells where images are missing, the whole length how long one spacing is.
double rateOf(const std::vector<double>& times_s) {
  std::vector<double> spacings_s;
  for (std::size_t i = 1; i < times_s.size(); ++i)
    spacings_s.push_back(times_s[i] - times_s[i - 1]);
  if (spacings_s.empty()) return kUsualRate_hz;
  std::vector<double> sorted = spacings_s;
  const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
  std::ranges::nth_element(sorted, middle);
  double steps = 0.0;
  for (const double spacing_s : spacings_s)
    steps += std::max(1.0, std::round(spacing_s / *middle));
  const double rate_hz = steps / (times_s.back() - times_s.front());
  for (const double usual_hz : kUsualRates_hz) {
    if (std::abs(rate_hz / usual_hz - 1.0) < kRateSlack) return usual_hz;
  }
  return std::clamp(rate_hz, 1.0, kMostRate_hz);
}

/// The film's file as images come: each at its place of a constant rate.
class FilmFileWriter {
 public:
  explicit FilmFileWriter(std::string path) : path_(std::move(path)) {}

  /// False when the file cannot be written.
  bool add(const cv::Mat& picture, double time_s) {
    if (!rate_hz_) {
      first_.push_back(picture);
      times_s_.push_back(time_s);
      return times_s_.size() < kForRate || begin();
    }
    return put(picture, time_s);
  }
  /// How many images the file has.
  long finish() {
    if (!rate_hz_ && !times_s_.empty() && !begin()) return 0;
    writer_.release();
    return next_;
  }

 private:
  bool begin() {
    rate_hz_ = rateOf(times_s_);
    const cv::Size size = first_.front().size();
    try {
      // In a container whose beginning can be played without its end.
      writer_.open(path_, cv::CAP_FFMPEG, cv::VideoWriter::fourcc('m', 'p', '4', 'v'), *rate_hz_, size);
    } catch (const cv::Exception&) {
      return false;
    }
    if (!writer_.isOpened()) return false;
    for (std::size_t i = 0; i < first_.size(); ++i) {
      if (!put(first_[i], times_s_[i])) return false;
    }
    first_.clear();
    return true;
  }

  bool put(const cv::Mat& picture, double time_s) {
    // Where its place is taken by one that came a little late, it has the next one; what would stand later still is
    // too many.
    const long due = std::lround(time_s * *rate_hz_);
    if (due + 1 < next_) return true;
    const long place = std::max(due, next_);
    try {
      while (next_ < place && !last_.empty())
        writer_.write(last_), ++next_;
      writer_.write(picture);
    } catch (const cv::Exception&) {
      return false;
    }
    next_ = place + 1;
    last_ = picture;
    return true;
  }

  std::string path_;
  std::vector<cv::Mat> first_;
  std::vector<double> times_s_;
  std::optional<double> rate_hz_;
  cv::VideoWriter writer_;
  cv::Mat last_;
  long next_ = 0;
};

}  // namespace

Result<std::unique_ptr<FilmKeeper>> FilmKeeper::make(const std::string& path, std::uintmax_t leastFree_bytes) {
  namespace fs = std::filesystem;
  const fs::path folder = fs::path(path).parent_path();
  std::error_code error;
  if (!folder.empty() && fs::create_directories(folder, error)) {
    fs::permissions(folder, fs::perms::owner_all, error);
  }
  if (auto made = makeOwnerFile(path); !made) return tl::make_unexpected(made.error());
  return std::unique_ptr<FilmKeeper>(new FilmKeeper(path, leastFree_bytes));
}

FilmKeeper::FilmKeeper(std::string path, std::uintmax_t leastFree_bytes)
    : path_(std::move(path)), leastFree_bytes_(leastFree_bytes), thread_([this] { write(); }) {}

FilmKeeper::~FilmKeeper() {
  finish();
}

void FilmKeeper::offer(cv::Mat picture, double time_s) {
  {
    const std::scoped_lock lock(mutex_);
    ++counts_.came;
    if (closed_ || counts_.outOfSpace || waiting_.size() >= kMostWaiting) {
      ++counts_.dropped;
      return;
    }
    waiting_.push_back({std::move(picture), time_s});
  }
  came_.notify_one();
}

bool FilmKeeper::hasRoom() const {
  const std::scoped_lock lock(mutex_);
  return closed_ || counts_.outOfSpace || waiting_.size() < kMostWaiting;
}

FilmKeeper::Counts FilmKeeper::counts() const {
  const std::scoped_lock lock(mutex_);
  return counts_;
}

bool FilmKeeper::hasSpace() const {
  std::error_code error;
  const auto space = std::filesystem::space(path_, error);
  return error || space.available >= leastFree_bytes_;
}

void FilmKeeper::write() {
  FilmFileWriter file(path_);
  for (long taken = 0;; ++taken) {
    Image next;
    {
      std::unique_lock lock(mutex_);
      came_.wait(lock, [this] { return closed_ || !waiting_.empty(); });
      if (waiting_.empty()) break;
      next = std::move(waiting_.front());
      waiting_.pop_front();
    }
    const bool kept = (taken % kBetweenLooks != 0 || hasSpace()) && file.add(next.picture, next.time_s);
    if (kept) continue;
    const std::scoped_lock lock(mutex_);
    counts_.outOfSpace = true;
    counts_.dropped += static_cast<long>(waiting_.size()) + 1;
    waiting_.clear();
    break;
  }
  written_ = file.finish();
}

bool FilmKeeper::finish() {
  {
    const std::scoped_lock lock(mutex_);
    closed_ = true;
  }
  came_.notify_one();
  if (thread_.joinable()) {
    thread_.join();
    std::error_code ignored;
    if (written_ == 0) std::filesystem::remove(path_, ignored);
  }
  return written_ > 0;
}

void FilmKeeper::discard() {
  finish();
  std::error_code ignored;
  std::filesystem::remove(path_, ignored);
}

}  // namespace ferrule
