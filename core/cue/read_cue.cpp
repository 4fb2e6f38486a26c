// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/read_cue.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "core/camera/pose_fit.h"
#include "core/cue/address_fit.h"
#include "core/cue/cue_pose.h"
#include "core/cue/log_origin.h"
#include "core/cue/stroke.h"
#include "core/cue/tag_need.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Longest time that counts as one address, and longest time that the tags may be out of sight in it.
constexpr double kAddress_s = 4.0;
constexpr double kOutOfSight_s = 1.0;
/// A log's clock is looked for in more of the film: bringing the cue down shows best.
constexpr double kClock_s = 8.0;
/// In the address the tip is no farther from the ball than the longest backswing.
constexpr double kBackswing_m = 0.35;
constexpr std::size_t kFewestImages = 5;
constexpr std::size_t kMostImages = 90;
/// The last of the backswing and the way to the ball: the line that the ball is struck with.
constexpr double kDelivery_s = 0.35;
/// Bridge from the cue ball, and its axis' height where nobody measured it. Common practice, no source.
constexpr double kBridgeDistance_m = 0.20;
constexpr double kBridgeHeight_m = 0.050;
/// Share of the last images in which a sensor must have spoken.
constexpr double kSpoken = 0.5;
constexpr double kSpeaks_s = 1.0;
/// Modules of so many pixels or more show their sides where they are. From memory.
constexpr double kPlainModule_px = 4.0;
/// The tilt of a tag with smaller modules cannot be told without a sensor.
constexpr double kTiltModule_px = 3.0;

struct PosedSighting {
  CueSighting sighting;
  CuePose pose;
};

/// Every sighting of a time by itself.
std::vector<PosedSighting> posed(const Rig& rig, const CueModel& model, std::span<const CueSighting> sightings,
                                 const StruckBall& ball) {
  const std::vector<int> turns = quarterTurnsOf(rig, model, sightings, ball.place);
  std::vector<PosedSighting> all;
  for (const CueSighting& sighting : sightings) {
    const auto start = roughPose(rig, model, sighting, ball.place);
    if (!start) continue;
    SeenCue seen{sighting.time_s, sighting.tags, std::nullopt};
    const AddressProblem alone(rig, model, {std::move(seen)}, Eigen::Vector3d::Zero(), 0.0, turns, {});
    all.push_back({sighting, poseAlone(alone, 0, *start).pose});
  }
  return all;
}

/// From the strike back, as long as the cue stays at the ball and in sight.
std::span<const PosedSighting> addressOf(const Rig& rig, const std::vector<PosedSighting>& all, const CueModel& model,
                                         const StruckBall& ball) {
  const Eigen::Vector3d centre(ball.place.x, ball.place.y, ball.radius_m);
  std::size_t first = all.size();
  double next_s = ball.strike_s;
  while (first > 0) {
    const PosedSighting& image = all[first - 1];
    if (ball.strike_s - image.sighting.time_s > kAddress_s || next_s - image.sighting.time_s > kOutOfSight_s) break;
    // One small tag by itself tells little of the cue's turn: its middle and the ball tell enough here.
    const auto rough = roughPose(rig, model, image.sighting, ball.place);
    if (!rough || (model.tipOf(*rough) - centre).norm() > kBackswing_m) break;
    next_s = image.sighting.time_s;
    --first;
  }
  return std::span(all).subspan(first);
}

/// The last half second whole, and of the time before so much that all together are not too many.
std::vector<const PosedSighting*> chosenOf(std::span<const PosedSighting> address, double strike_s) {
  std::vector<const PosedSighting*> chosen;
  const auto late = std::ranges::count_if(
      address, [&](const PosedSighting& image) { return strike_s - image.sighting.time_s <= kDelivery_s; });
  const std::size_t early = address.size() - static_cast<std::size_t>(late);
  const std::size_t every = 1 + early / kMostImages;
  for (std::size_t i = 0; i < address.size(); ++i) {
    if (i >= early || (early - i) % every == 0) chosen.push_back(&address[i]);
  }
  return chosen;
}

/// Another camera's place within its uncertainty, one of six independent ones.
Rig shiftedRig(const Rig& rig, const Eigen::Matrix<double, 6, 1>& step) {
  Rig shifted = rig;
  shifted.pose = movedPose(rig.pose, step);
  return shifted;
}

struct Lines {
  Measured aim_rad;
  Measured elevation_rad;
  Measured side_m;
  Measured height_m;
};

double sideOf(const CuePose& pose, const Eigen::Vector3d& centre) {
  return -(pose.middle_m - centre).dot(axesOf(pose).left);
}
double heightOf(const CuePose& pose, const Eigen::Vector3d& centre) {
  return (pose.middle_m - centre).dot(axesOf(pose).up);
}

Lines linesOf(const AddressFit& fit, std::span<const double> weights, const Eigen::Vector3d& centre, double near_rad) {
  Lines lines;
  // Headings are averaged as turns from one of them: they may lie on both sides of half a turn.
  lines.aim_rad = fit.sum(weights, [&](const CuePose& pose) { return wrapAngle(pose.heading_rad - near_rad); });
  lines.aim_rad.value = wrapAngle(lines.aim_rad.value + near_rad);
  lines.elevation_rad = fit.sum(weights, [](const CuePose& pose) { return pose.elevation_rad; });
  lines.side_m = fit.sum(weights, [&](const CuePose& pose) { return sideOf(pose, centre); });
  lines.height_m = fit.sum(weights, [&](const CuePose& pose) { return heightOf(pose, centre); });
  return lines;
}

}  // namespace

std::optional<CueReading> readCue(const Rig& rig, const MeasuredCue& cue, std::span<const CueSighting> sightings,
                                  const PitchLog* log, const StruckBall& ball) {
  const auto from = std::ranges::lower_bound(sightings, ball.strike_s - kClock_s, {}, &CueSighting::time_s);
  const auto until = std::ranges::upper_bound(sightings, ball.strike_s, {}, &CueSighting::time_s);
  const CueModel model(cue);
  const std::vector<PosedSighting> all = posed(rig, model, std::span(from, until), ball);
  const auto address = addressOf(rig, all, model, ball);

  CueReading reading;
  reading.ballRadius_m = ball.radius_m;
  std::vector<CueSighting> seenTags;
  for (const PosedSighting& image : address)
    seenTags.push_back(image.sighting);
  const long images = address.empty() ? 0 : address.back().sighting.image - address.front().sighting.image + 1;
  const double expected_px = expectedTagSide_px(rig, cue, ball.place);
  reading.tags = tagsSeen(cue, seenTags, images, expected_px);
  if (address.size() < kFewestImages) {
    // Tags that are large enough and not there are no fault of the camera.
    if (address.empty() && !reading.tags->sideNeeded_m) return std::nullopt;
    return reading;
  }

  // The sensor's time.
  LogOrigin origin;
  if (log != nullptr) {
    std::vector<SeenElevation> elevations;
    for (const PosedSighting& image : all)
      elevations.push_back({image.sighting.time_s, image.pose.elevation_rad});
    origin = originOf(*log, elevations);
  }
  std::vector<SeenCue> seen;
  std::vector<CuePose> starts;
  int spoken = 0;
  int asked = 0;
  for (const PosedSighting* image : chosenOf(address, ball.strike_s)) {
    SeenCue one{image->sighting.time_s, image->sighting.tags, std::nullopt};
    if (log != nullptr && origin.clock != LogClock::Unknown) {
      one.pitch_rad = pitchAt(*log, one.time_s + origin.logMinusFilm_s);
    }
    if (ball.strike_s - one.time_s <= kSpeaks_s) {
      ++asked;
      if (one.pitch_rad) ++spoken;
    }
    seen.push_back(std::move(one));
    starts.push_back(image->pose);
  }
  if (log != nullptr) {
    const bool enough = spoken > 0 && spoken >= kSpoken * asked;
    reading.log = origin.clock == LogClock::Shifted ? LogUse::Shifted : LogUse::Used;
    if (!enough) reading.log = LogUse::Gap;
    if (origin.clock == LogClock::Unknown) reading.log = LogUse::NoMatch;
    reading.logMinusFilm_s = origin.logMinusFilm_s;
  }

  const double near_rad = starts.back().heading_rad;
  const Eigen::Vector3d centre(ball.place.x, ball.place.y, ball.radius_m);
  const Eigen::Vector3d bridge(ball.place.x - kBridgeDistance_m * std::cos(near_rad),
                               ball.place.y - kBridgeDistance_m * std::sin(near_rad),
                               cue.bridgeHeight_m.value_or(kBridgeHeight_m));
  const std::vector<int> turns = quarterTurnsOf(rig, model, seenTags, ball.place);
  // The smaller the modules, the more each side takes of its neighbours' brightness.
  AddressPriors priors;
  const double small = std::max(1.0, kPlainModule_px / reading.tags->module_px);
  priors.growth_px *= small * small;
  const auto fitWith = [&](const Rig& used) {
    return AddressFit(AddressProblem(used, model, seen, bridge, near_rad, turns, priors), starts);
  };
  const AddressFit fit = fitWith(rig);
  if (!fit.converged()) return reading;

  // The delivery's images; without any, the last ones that there are.
  std::vector<double> weights(seen.size(), 0.0);
  std::size_t used = 0;
  for (std::size_t i = seen.size(); i > 0; --i) {
    if (used >= kFewestImages && ball.strike_s - seen[i - 1].time_s > kDelivery_s) break;
    weights[i - 1] = 1.0;
    ++used;
  }
  for (double& weight : weights)
    weight /= static_cast<double>(used);
  Lines lines = linesOf(fit, weights, centre, near_rad);

  // The camera's own place is as uncertain as the rig says.
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix<double, 6, 6>> spread(rig.poseCovariance);
  std::vector<Lines> shifted;
  for (int i = 0; i < 6; ++i) {
    const double size = std::sqrt(std::max(0.0, spread.eigenvalues()[i]));
    if (size == 0.0) continue;
    const AddressFit other = fitWith(shiftedRig(rig, size * spread.eigenvectors().col(i)));
    if (other.converged()) shifted.push_back(linesOf(other, weights, centre, near_rad));
  }
  const auto widen = [&](Measured Lines::*part, double more) {
    Measured& value = lines.*part;
    double variance = value.standardUncertainty * value.standardUncertainty + more * more;
    for (const Lines& other : shifted) {
      const double off = wrapAngle((other.*part).value - value.value);
      variance += off * off;
    }
    value.standardUncertainty = std::sqrt(variance);
  };
  // The line at the tip's contact is one of those of the delivery, not their mean.
  widen(&Lines::aim_rad, aimSpread(fit, weights));
  widen(&Lines::elevation_rad, 0.0);
  widen(&Lines::side_m, ball.place_u_m);
  widen(&Lines::height_m, 0.0);

  reading.images = static_cast<int>(seen.size());
  reading.aim_rad = lines.aim_rad;
  reading.elevation_rad = lines.elevation_rad;
  reading.tipSide_m = lines.side_m;
  reading.tipHeight_m = lines.height_m;
  reading.steadiness_rad = steadiness(fit, ball.strike_s);
  reading.tipSpeed_mps = tipSpeed(fit, model, ball.strike_s);
  if (ball.aim_rad) {
    reading.aimBeforeMinusAfter_rad =
        Measured{wrapAngle(lines.aim_rad.value - ball.aim_rad->value),
                 std::hypot(lines.aim_rad.standardUncertainty, ball.aim_rad->standardUncertainty)};
  }
  if (reading.log == LogUse::Used || reading.log == LogUse::Shifted) reading.sensorBias_rad = fit.sensorBias_rad();
  for (std::size_t i = 0; i < seen.size(); ++i) {
    CueAt at;
    at.time_s = seen[i].time_s;
    at.aim_rad = fit.at(i, [](const CuePose& pose) { return pose.heading_rad; });
    at.aim_rad.value = wrapAngle(at.aim_rad.value);
    at.elevation_rad = fit.at(i, [](const CuePose& pose) { return pose.elevation_rad; });
    reading.course.push_back(at);
  }
  if (!reading.sensorBias_rad && reading.tags->module_px < kTiltModule_px) {
    reading.elevation_rad.reset();
    reading.tipHeight_m.reset();
    for (CueAt& at : reading.course)
      at.elevation_rad.reset();
  }
  return reading;
}

}  // namespace ferrule
