// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_colour.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ferrule {

namespace {

struct HueSaturationValue {
  double hue_deg = 0.0;
  double saturation = 0.0;
  double value = 0.0;
};

/// red, green, blue: 0 to 1.
HueSaturationValue hueSaturationValue(double red, double green, double blue) {
  const double most = std::max({red, green, blue});
  const double least = std::min({red, green, blue});
  const double range = most - least;
  HueSaturationValue result;
  result.value = most;
  if (most <= 0.0 || range <= 0.0) return result;
  result.saturation = range / most;
  double sixth = 0.0;
  if (most == red) {
    sixth = (green - blue) / range;
  } else if (most == green) {
    sixth = 2.0 + (blue - red) / range;
  } else {
    sixth = 4.0 + (red - green) / range;
  }
  result.hue_deg = std::fmod(60.0 * sixth + 360.0, 360.0);
  return result;
}

double hueDistance_deg(double a_deg, double b_deg) {
  return std::abs(std::remainder(a_deg - b_deg, 360.0));
}

// A pixel is white when it is bright and pale, dark when hardly lit, a highlight when it is as bright as the sensor
// goes.
constexpr double kPaleSaturation = 0.32;
constexpr double kWhiteValue = 0.45;
constexpr double kDarkValue = 0.20;
// What is grey and this dark is black paint with some light on it: colours keep their saturation in the dark.
constexpr double kGreyValue = 0.35;
constexpr double kGreySaturation = 0.30;
constexpr double kHighlightValue = 1.08;
constexpr double kMostHighlight = 0.15;  // of the disc

double squaredOver(double difference, double spread) {
  return difference * difference / (spread * spread);
}

/// The mean of a ball's brightest quarter without the very brightest, where a lamp is mirrored.
Eigen::Array3f brightestOf(std::span<Eigen::Array3f> levels) {
  constexpr double kFrom = 0.75;
  constexpr double kTo = 0.95;
  std::ranges::sort(levels, {}, [](const Eigen::Array3f& level) { return level.sum(); });
  const auto first = static_cast<std::size_t>(kFrom * static_cast<double>(levels.size()));
  const auto last = static_cast<std::size_t>(kTo * static_cast<double>(levels.size()));
  Eigen::Array3f sum = Eigen::Array3f::Zero();
  for (std::size_t i = first; i < last; ++i)
    sum += levels[i];
  return last > first ? Eigen::Array3f(sum / static_cast<float>(last - first)) : sum;
}

}  // namespace

void WhiteReference::learn(const BallColours& colours, double support) {
  if (colours.white < 0.5 || support < 0.6) return;
  const float now = colours.brightWhite.maxCoeff();
  const float held = level.maxCoeff();
  const float rate = !seen ? 1.0F : now > 0.9F * held ? 0.02F : 0.0F;
  seen = true;
  level += rate * (colours.brightWhite - level);
}

void WhiteReference::guess(std::span<const BallColours> looks) {
  constexpr float kDominates = 0.85F;  // of the highest of every channel: lamps light no two balls alike
  constexpr float kLeast = 30.0F;      // grey levels
  constexpr float kMostCast = 2.5F;    // between two channels; yellow, the palest of the colours, has 4 and more
  if (seen || looks.size() < 2) return;
  Eigen::Array3f most = Eigen::Array3f::Zero();
  for (const BallColours& look : looks)
    most = most.max(look.brightest);
  if (most.minCoeff() < kLeast) return;
  const BallColours* best = nullptr;
  float bestShare = kDominates;
  for (const BallColours& look : looks) {
    const float share = (look.brightest / most).minCoeff();
    const float cast = look.brightest.maxCoeff() / std::max(look.brightest.minCoeff(), 1.0F);
    if (share < bestShare || cast > kMostCast) continue;
    bestShare = share;
    best = &look;
  }
  if (best) level = best->brightest;
}

BallColours coloursOf(const cv::Mat& picture, const Silhouette& outline, const WhiteReference& white) {
  // Rings of points that cover the disc evenly; the outermost part of the limb is left out, where cloth shines through
  // the pixel.
  constexpr int kRings = 7;
  constexpr double kOutermost = 0.93;
  constexpr std::size_t kMostPoints = 3 * kRings * kRings;  // the sum of 6 ring + 3
  BallColours colours;
  int counted = 0;
  int highlights = 0;
  int whites = 0;
  int darks = 0;
  int coloureds = 0;
  double cosines = 0.0;
  double sines = 0.0;
  double saturations = 0.0;
  double values = 0.0;
  Eigen::Array3f whiteSum = Eigen::Array3f::Zero();
  Eigen::Array3f highlightSum = Eigen::Array3f::Zero();
  std::array<Eigen::Array3f, kMostPoints> levels;
  std::size_t points = 0;
  for (int ring = 0; ring < kRings; ++ring) {
    const double rho = kOutermost * (ring + 0.5) / kRings;
    const int around = 6 * ring + 3;
    for (int i = 0; i < around; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / around;
      const ImagePoint at = outline.at(std::cos(angle), std::sin(angle), rho);
      const int x = static_cast<int>(std::lround(at.x));
      const int y = static_cast<int>(std::lround(at.y));
      if (x < 0 || y < 0 || x >= picture.cols || y >= picture.rows) continue;
      const uchar* pixel = picture.ptr<uchar>(y) + 3 * x;
      const Eigen::Array3f level(pixel[0], pixel[1], pixel[2]);
      levels[points++] = level;
      const Eigen::Array3f relative = level / white.level;
      const auto hsv = hueSaturationValue(relative[2], relative[1], relative[0]);
      if (hsv.value > kHighlightValue && hsv.saturation < 0.15) {
        ++highlights;
        highlightSum += level;
        continue;
      }
      ++counted;
      if (hsv.saturation < kPaleSaturation && hsv.value > kWhiteValue) {
        ++whites;
        whiteSum += level;
      } else if (hsv.value < kDarkValue || (hsv.value < kGreyValue && hsv.saturation < kGreySaturation)) {
        ++darks;
      } else {
        ++coloureds;
        const double hue = hsv.hue_deg * std::numbers::pi / 180.0;
        cosines += hsv.saturation * std::cos(hue);
        sines += hsv.saturation * std::sin(hue);
        saturations += hsv.saturation;
        values += hsv.value;
      }
    }
  }
  colours.brightest = brightestOf(std::span(levels).first(points));
  if (highlights > kMostHighlight * static_cast<double>(points)) {
    // No lamp is mirrored so large: it is white paint in more light than was thought.
    counted += highlights;
    whites += highlights;
    whiteSum += highlightSum;
  }
  if (counted == 0) return colours;
  colours.white = static_cast<double>(whites) / counted;
  colours.dark = static_cast<double>(darks) / counted;
  colours.coloured = static_cast<double>(coloureds) / counted;
  if (whites > 0) colours.brightWhite = whiteSum / static_cast<float>(whites);
  if (coloureds > 0) {
    colours.hue_deg = std::fmod(std::atan2(sines, cosines) * 180.0 / std::numbers::pi + 360.0, 360.0);
    colours.saturation = saturations / coloureds;
    colours.value = values / coloureds;
  }
  return colours;
}

NameLikelihood likelihoodOfNames(const BallColours& colours, const BallSet& set) {
  // Spreads: lamps, cameras and makers differ by about this much. Common practice, no source.
  constexpr double kHueSpread_deg = 14.0;
  constexpr double kSaturationSpread = 0.25;
  constexpr double kValueSpread = 0.40;  // of the logarithm
  NameLikelihood result{};
  for (int number = 0; number < BallName::kCount; ++number) {
    const BallName name(number);
    double cost = 0.0;
    if (name.isCueBall()) {
      // A practice cue ball carries a few coloured spots.
      cost = squaredOver(std::max(0.0, 0.80 - colours.white), 0.05);
    } else {
      const BallColour& pattern = set.colours[static_cast<std::size_t>(number)];
      const auto wanted = hueSaturationValue(pattern.red / 255.0, pattern.green / 255.0, pattern.blue / 255.0);
      if (wanted.value < kDarkValue) {
        // Its number's patch is the largest of all, and lamps and cloth shine on it.
        cost = squaredOver(std::max(0.0, 0.55 - colours.dark), 0.15) +
               squaredOver(std::max(0.0, colours.white - 0.30), 0.08);
      } else {
        // A band covers some 60 % of a disc seen from its side; a solid's number patch some 8 %.
        if (name.isStripe()) {
          cost += squaredOver(std::max(0.0, 0.30 - colours.white), 0.05);
          // Seen from its pole a stripe is white to five sixths of its disc at most.
          cost += squaredOver(std::max(0.0, colours.white - 0.76), 0.04);
        } else {
          cost += squaredOver(std::max(0.0, colours.white - 0.14), 0.04);
        }
        if (colours.coloured > 0.0) {
          const double little = std::max(1.0, 0.15 / colours.coloured);
          cost += squaredOver(hueDistance_deg(colours.hue_deg, wanted.hue_deg), kHueSpread_deg * little);
          cost += squaredOver(colours.saturation - wanted.saturation, kSaturationSpread * little);
          cost += squaredOver(std::log(std::max(colours.value, 0.05) / wanted.value), kValueSpread * little);
          cost += squaredOver(std::max(0.0, colours.dark - 0.2), 0.12);
        } else {
          cost += 30.0;
        }
      }
    }
    result[static_cast<std::size_t>(number)] = std::max(-0.5 * cost, kLeastLikelihood);
  }
  return result;
}

}  // namespace ferrule
