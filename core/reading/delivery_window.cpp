// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/delivery_window.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace ferrule {

namespace {

constexpr double kEver = std::numeric_limits<double>::infinity();
/// Contacts in a row after which a ball's way says more about the contacts than about the strike.
constexpr int kMostDepth = 1;
constexpr int kMostCushions = 2;
/// What every impact adds to the doubt about where a ball is afterwards, as a factor: no model of one is exact.
constexpr double kImpactLoss = 1.3;
/// Impacts closer than this, in images, are not told apart.
constexpr double kTogether = 1.5;
/// A place within this share of an image of an impact is mixed from two ways when the shutter is open for half of it.
constexpr double kBlur = 0.3;
/// An unexplained jump of this share of the speed is an impact; the hops of an elevated stroke make smaller ones.
constexpr double kLargeJump = 0.25;
/// Balls this close to each other before the shot move each other at once.
constexpr double kFrozenGap_m = 0.002;
/// Of one place against another: lens and pose leave errors that differ over the table.
constexpr double kPlaceDrift_m = 0.00015;
constexpr std::size_t kMostSamples = 60;  ///< of one ball, about
constexpr double kFirst_s = 0.3;

struct Course {
  bool followed = false;
  double from_s = -kEver;
  double until_s = kEver;
  int depth = 0;
  int cushions = 0;
  std::vector<double> impacts_s;
};

class Cutter {
 public:
  explicit Cutter(const WindowSource& source) : source_(source), courses_(source.motions.size()) {}

  DeliveryWindow run() {
    const auto cue = indexOf(kCueBall);
    if (!cue || placeOf(kCueBall) == nullptr) return {};
    courses_[*cue].followed = true;
    courses_[*cue].from_s = source_.strike_s - 0.5 * source_.imageInterval_s;
    for (const ShotEvent& event : source_.events)
      take(event);
    for (std::size_t i = 0; i < courses_.size(); ++i)
      cutAtUnexplainedJump(i);
    return gather();
  }

 private:
  [[nodiscard]] std::optional<std::size_t> indexOf(BallName ball) const {
    const auto found = std::ranges::find(source_.motions, ball, &BallMotion::ball);
    if (found == source_.motions.end()) return std::nullopt;
    return static_cast<std::size_t>(found - source_.motions.begin());
  }

  [[nodiscard]] const RestingPlace* placeOf(BallName ball) const {
    for (const auto& [name, place] : source_.before) {
      if (name == ball) return &place;
    }
    return nullptr;
  }

  /// The index of the ball in the motions, when its way is followed at this time.
  [[nodiscard]] bool runs(std::size_t index, double time_s) const {
    return courses_[index].followed && time_s <= courses_[index].until_s;
  }

  void cut(std::size_t index, double time_s) {
    Course& course = courses_[index];
    course.until_s = std::min(course.until_s, time_s - kBlur * source_.imageInterval_s);
  }

  void take(const ShotEvent& event) {
    const auto first = indexOf(event.ball);
    if (!first) return;
    if (event.kind == EventKind::Ball) {
      const auto second = event.other ? indexOf(*event.other) : std::nullopt;
      if (second) meet(event, *first, *second);
      return;
    }
    if (!runs(*first, event.time_s)) return;
    Course& course = courses_[*first];
    course.impacts_s.push_back(event.time_s);
    ++course.cushions;
    if (event.kind != EventKind::Cushion || course.cushions >= kMostCushions) cut(*first, event.time_s);
  }

  void meet(const ShotEvent& event, std::size_t first, std::size_t second) {
    if (!runs(first, event.time_s) && !runs(second, event.time_s)) return;
    const bool sound = reliable(event, first) && reliable(event, second) && bothSeen(event, first, second);
    const int depth = std::max(courses_[first].depth, courses_[second].depth) + 1;
    for (const std::size_t index : {first, second}) {
      Course& course = courses_[index];
      if (!sound || depth > kMostDepth) {
        cut(index, event.time_s);
        continue;
      }
      if (!course.followed) {
        course.followed = true;
        course.from_s = event.time_s;
      }
      course.depth = depth;
      course.impacts_s.push_back(event.time_s);
    }
  }

  /// A ball that is followed, or lay still in a known place, free of its neighbours, and met nothing else at the time.
  [[nodiscard]] bool reliable(const ShotEvent& event, std::size_t index) const {
    const BallName ball = source_.motions[index].ball;
    const Course& course = courses_[index];
    if (course.followed && event.time_s > course.until_s) return false;
    if (!course.followed) {
      const RestingPlace* place = placeOf(ball);
      if (place == nullptr) return false;
      for (const auto& [name, other] : source_.before) {
        if (name == ball) continue;
        if (distance(place->position, other.position) < 2.0 * source_.radius_m + kFrozenGap_m) return false;
      }
    }
    return std::ranges::none_of(source_.events, [&](const ShotEvent& other) {
      if (&other == &event || (other.ball != ball && other.other != ball)) return false;
      return std::abs(other.time_s - event.time_s) < kTogether * source_.imageInterval_s;
    });
  }

  /// Whether the film shows the jump of both balls.
  [[nodiscard]] bool bothSeen(const ShotEvent& event, std::size_t first, std::size_t second) const {
    return std::ranges::any_of(source_.contacts, [&](const Contact& contact) {
      const bool same =
          (contact.first == first && contact.second == second) || (contact.first == second && contact.second == first);
      return same && contact.time_s == event.time_s && contact.firstKnot && contact.secondKnot;
    });
  }

  void cutAtUnexplainedJump(std::size_t index) {
    const Course& course = courses_[index];
    if (!course.followed) return;
    for (const Knot& knot : source_.motions[index].knots) {
      const bool strike = knot.pieceBefore.resting && knot.time_s < source_.strike_s + 2.0 * source_.imageInterval_s;
      if (strike || knot.time_s < std::max(source_.strike_s, course.from_s)) continue;
      if (length(knot.jump()) < kLargeJump * length(knot.before)) continue;
      const double slack_s = kTogether * source_.imageInterval_s + 2.0 * knot.timeUncertainty_s;
      const bool explained = std::ranges::any_of(
          course.impacts_s, [&](double impact_s) { return std::abs(impact_s - knot.time_s) < slack_s; });
      if (explained) continue;
      cut(index, knot.from_s + kBlur * source_.imageInterval_s);
      return;
    }
  }

  DeliveryWindow gather() const {
    DeliveryWindow window;
    const auto addBall = [&](std::size_t index) {
      const BallMotion& motion = source_.motions[index];
      const Course& course = courses_[index];
      RestingPlace place = *placeOf(motion.ball);
      place.standardUncertainty_m = std::hypot(place.standardUncertainty_m, kPlaceDrift_m);
      std::vector<WindowSample> samples = samplesOf(motion, course, window.balls.size());
      for (const double impact_s : course.impacts_s) {
        const bool seenAfter = !samples.empty() && samples.back().point.time_s > impact_s;
        const bool ballContact = std::ranges::any_of(source_.events, [&](const ShotEvent& event) {
          return event.time_s == impact_s && event.kind == EventKind::Ball;
        });
        (ballContact ? window.contact : window.cushion) |= seenAfter;
      }
      window.balls.push_back({motion.ball, place});
      window.samples.insert(window.samples.end(), samples.begin(), samples.end());
    };
    const std::size_t cue = *indexOf(kCueBall);
    addBall(cue);
    for (std::size_t i = 0; i < courses_.size(); ++i) {
      if (i != cue && courses_[i].followed) addBall(i);
    }
    for (const WindowSample& sample : window.samples)
      window.end_s = std::max(window.end_s, sample.point.time_s);
    return window;
  }

  [[nodiscard]] std::vector<WindowSample> samplesOf(const BallMotion& motion, const Course& course,
                                                    std::size_t ball) const {
    std::vector<WindowSample> all;
    for (const MotionPiece& piece : motion.pieces) {
      for (std::size_t i = piece.first; i <= piece.last; ++i) {
        if (std::ranges::find(piece.strays, i) != piece.strays.end()) continue;
        PathPoint point = motion.path[i];
        if (point.time_s < course.from_s || point.time_s > course.until_s) continue;
        const auto near = [&](double impact_s) {
          return std::abs(impact_s - point.time_s) < kBlur * source_.imageInterval_s;
        };
        if (std::ranges::any_of(course.impacts_s, near)) continue;
        const auto passed =
            std::ranges::count_if(course.impacts_s, [&](double impact_s) { return impact_s < point.time_s; });
        point.standardUncertainty_m *= std::pow(kImpactLoss, static_cast<double>(passed));
        all.push_back({ball, point});
      }
    }
    // The first moments tell most about the strike; a long roll says the same thing over and over.
    const std::size_t stride = 1 + all.size() / kMostSamples;
    std::vector<WindowSample> some;
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (i % stride == 0 || all[i].point.time_s < course.from_s + kFirst_s) some.push_back(all[i]);
    }
    return some;
  }

  const WindowSource& source_;
  std::vector<Course> courses_;
};

}  // namespace

DeliveryWindow deliveryWindow(const WindowSource& source) {
  return Cutter(source).run();
}

}  // namespace ferrule
