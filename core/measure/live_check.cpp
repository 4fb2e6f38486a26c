// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/live_check.h"

#include <utility>

namespace ferrule {

namespace {

/// As checkFilm looks: so many pictures, so far apart.
constexpr std::size_t kPictures = 28;
constexpr double kBetweenLooks_s = 0.1;
/// Fewer show too little of what noise is.
constexpr std::size_t kLeastPictures = 8;

}  // namespace

void LiveCheck::offer(const KeptPicture& kept, double time_s) {
  {
    const std::scoped_lock lock(mutex_);
    if (closed_ || whole_) return;
    if (looks_.empty() && next_s_ && time_s < *next_s_) return;
    if (!looks_.empty() && time_s < looks_.back().time_s + kBetweenLooks_s) return;
    if (!looks_.empty() && looks_.back().kept.rig != kept.rig) looks_.clear();
    looks_.push_back({kept, time_s});
    if (looks_.size() < kPictures) return;
    next_s_ = looks_.front().time_s + kBetweenChecks_s;
    whole_ = std::exchange(looks_, {});
  }
  changed_.notify_all();
}

void LiveCheck::askNow() {
  const std::scoped_lock lock(mutex_);
  next_s_.reset();
}

void LiveCheck::close() {
  {
    const std::scoped_lock lock(mutex_);
    closed_ = true;
    if (!whole_ && looks_.size() >= kLeastPictures) whole_ = std::exchange(looks_, {});
  }
  changed_.notify_all();
}

std::optional<LiveCheckReport> LiveCheck::next(const JobControl& job) {
  std::vector<Look> looks;
  {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, job.stop, [this] { return whole_ || closed_; });
    if (job.stop.stop_requested() || !whole_) return std::nullopt;
    looks = *std::exchange(whole_, std::nullopt);
  }
  return checked(looks, job);
}

LiveCheckReport LiveCheck::checked(const std::vector<Look>& looks, const JobControl& job) const {
  LiveCheckReport report{looks.back().time_s, FilmCheck{}};
  auto survey = CheckSurvey::of(measured_, {});
  if (!survey) {
    report.check = tl::make_unexpected(survey.error());
    return report;
  }
  for (const Look& look : looks) {
    if (job.stop.stop_requested()) {
      report.check = failure(ErrorCode::Cancelled);
      return report;
    }
    survey->add(look.kept.picture);
  }
  report.check = checkPictures(*survey, {}, *looks.back().kept.rig, measured_, job);
  return report;
}

}  // namespace ferrule
