// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/check/faults.h"

#include <algorithm>
#include <opencv2/calib3d.hpp>
#include <opencv2/imgproc.hpp>

#include "core/camera/pose_fit.h"

namespace ferrule::bench {

namespace {

cv::Mat cameraMatrix(const Lens& lens) {
  return (cv::Mat_<double>(3, 3) << lens.focalX_px, 0, lens.centre.x, 0, lens.focalY_px, lens.centre.y, 0, 0, 1);
}

/// OpenCV's own straightening, so that the fault does not come from the code that is to find it.
cv::Mat straightened(const cv::Mat& picture, const SoundClip& clip, bool allPixels) {
  const auto& c = clip.rig.lens.coefficients;
  const cv::Mat bend = (cv::Mat_<double>(1, 8) << c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7]);
  const cv::Mat camera = cameraMatrix(clip.rig.lens);
  const cv::Mat wanted = allPixels ? cv::getOptimalNewCameraMatrix(camera, bend, picture.size(), 1.0) : camera;
  cv::Mat result;
  cv::undistort(picture, result, camera, bend, wanted);
  return result;
}

cv::Mat warped(const cv::Mat& picture, const cv::Mat& by) {
  cv::Mat result;
  cv::warpAffine(picture, result, by, picture.size(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
  return result;
}

void moveTag(SoundClip& clip, std::size_t tag, double x_m, double y_m) {
  for (TablePoint3& corner : clip.measured.tags.at(tag).corners) {
    corner.x += x_m;
    corner.y += y_m;
  }
}

void raiseTags(SoundClip& clip, double by_m) {
  for (RailTag& tag : clip.measured.tags) {
    for (TablePoint3& corner : tag.corners)
      corner.z += by_m;
  }
}

void movePose(SoundClip& clip, const Eigen::Matrix<double, 6, 1>& step) {
  clip.rig.pose = movedPose(clip.rig.pose, step);
}

Eigen::Matrix<double, 6, 1> step(double rx, double ry, double rz, double x, double y, double z) {
  Eigen::Matrix<double, 6, 1> all;
  all << rx, ry, rz, x, y, z;
  return all;
}

PlantedFault inFilm(std::string name, std::vector<RigFault> expected,
                    std::function<cv::Mat(const cv::Mat&, const SoundClip&)> picture, bool rigMadeAfter) {
  return {std::move(name), std::move(expected), std::move(picture), {}, rigMadeAfter};
}

PlantedFault inFiles(std::string name, std::vector<RigFault> expected, std::function<void(SoundClip&)> files,
                     bool rigMadeAfter) {
  return {std::move(name), std::move(expected), {}, std::move(files), rigMadeAfter};
}

void addSound(std::vector<PlantedFault>& all) {
  all.push_back({"sound", {RigFault::None}, {}, {}, false});
  all.push_back(inFilm(
      "sound, darker and blurred", {RigFault::None},
      [](const cv::Mat& picture, const SoundClip&) {
        cv::Mat result;
        cv::GaussianBlur(picture, result, {0, 0}, 1.0);
        return cv::Mat(0.6 * result);
      },
      false));
  all.push_back(inFilm(
      "sound, a tag covered", {RigFault::None},
      [](const cv::Mat& picture, const SoundClip& clip) {
        cv::Mat result = picture.clone();
        const auto corner = imageFromTable(clip.rig, clip.measured.tags[0].corners[0]);
        if (corner) {
          cv::circle(result, cv::Point(static_cast<int>(corner->x), static_cast<int>(corner->y)), 40,
                     cv::Scalar(60, 60, 60), cv::FILLED);
        }
        return result;
      },
      false));
}

void addLenses(std::vector<PlantedFault>& all) {
  all.push_back(inFiles(
      "lens of the other camera", {RigFault::WrongLens}, [](SoundClip& clip) { clip.rig.lens = clip.otherLens; },
      true));
  all.push_back(inFiles(
      "other lens, rig not made again", {RigFault::WrongLens}, [](SoundClip& clip) { clip.rig.lens = clip.otherLens; },
      false));
  all.push_back(inFiles(
      "lens that bends 30 % less", {RigFault::WrongLens},
      [](SoundClip& clip) {
        for (double& c : clip.rig.lens.coefficients)
          c *= 0.7;
      },
      true));
  all.push_back(inFiles(
      "no lens", {RigFault::NotCorrected},
      [](SoundClip& clip) {
        clip.rig.lens.model = LensModel::None;
        clip.rig.lens.coefficients = {};
      },
      true));
  all.push_back(inFilm(
      "film straightened before", {RigFault::CorrectedTwice},
      [](const cv::Mat& p, const SoundClip& clip) { return straightened(p, clip, false); }, true));
  all.push_back(inFilm(
      "straightened before, all pixels kept", {RigFault::CorrectedTwice},
      [](const cv::Mat& p, const SoundClip& clip) { return straightened(p, clip, true); }, true));
}

void addPictures(std::vector<PlantedFault>& all) {
  all.push_back(inFilm(
      "picture cropped by 8 % and blown up", {RigFault::WrongImageSize},
      [](const cv::Mat& picture, const SoundClip&) {
        const cv::Point2f middle(0.5F * static_cast<float>(picture.cols - 1),
                                 0.5F * static_cast<float>(picture.rows - 1));
        return warped(picture, cv::getRotationMatrix2D(middle, 0.0, 1.0 / 0.92));
      },
      true));
  all.push_back(inFiles(
      "lens of a 1.5 times larger picture", {RigFault::WrongImageSize},
      [](SoundClip& clip) {
        Lens& lens = clip.rig.lens;
        lens.focalX_px *= 1.5;
        lens.focalY_px *= 1.5;
        lens.centre = {1.5 * lens.centre.x + 0.25, 1.5 * lens.centre.y + 0.25};
      },
      true));
  all.push_back(inFilm(
      "picture shifted by 6 px", {RigFault::CameraMoved},
      [](const cv::Mat& picture, const SoundClip&) {
        return warped(picture, (cv::Mat_<double>(2, 3) << 1, 0, 5, 0, 1, 3));
      },
      false));
  all.push_back(inFilm(
      "picture turned by 0.4 degrees", {RigFault::CameraMoved},
      [](const cv::Mat& picture, const SoundClip& clip) {
        const cv::Point2f middle(static_cast<float>(clip.rig.lens.centre.x),
                                 static_cast<float>(clip.rig.lens.centre.y));
        return warped(picture, cv::getRotationMatrix2D(middle, 0.4, 1.0));
      },
      false));
  all.push_back(inFiles(
      "camera bumped, 4 mm on the table", {RigFault::CameraMoved},
      [](SoundClip& clip) { movePose(clip, step(0.0015, -0.001, 0.0008, 0.0, 0.001, 0.0)); }, false));
}

void addTables(std::vector<PlantedFault>& all) {
  for (const bool after : {false, true}) {
    const std::string when = after ? ", rig made with it" : "";
    all.push_back(inFiles(
        "tag height forgotten" + when, {RigFault::TagHeight},
        [](SoundClip& clip) { raiseTags(clip, -clip.measured.tags[0].corners[0].z); }, after));
    all.push_back(inFiles(
        "tags written 10 mm too high" + when, {RigFault::TagHeight}, [](SoundClip& clip) { raiseTags(clip, 0.010); },
        after));
    all.push_back(inFiles(
        "a tag 12 mm off" + when, {RigFault::TagMisplaced}, [](SoundClip& clip) { moveTag(clip, 2, 0.010, -0.006); },
        after));
    all.push_back(inFiles(
        "table 20 mm too long" + when, {RigFault::TableSize},
        [](SoundClip& clip) { clip.measured.table.length_m += 0.020; }, after));
  }
  all.push_back(inFiles(
      "tags swapped", {RigFault::TagsSwapped},
      [](SoundClip& clip) { std::swap(clip.measured.tags[1].corners, clip.measured.tags[2].corners); }, false));
  all.push_back(inFiles(
      "a tag turned", {RigFault::TagTurned},
      [](SoundClip& clip) {
        auto& corners = clip.measured.tags[3].corners;
        std::rotate(corners.begin(), corners.begin() + 1, corners.end());
      },
      false));
  all.push_back(inFiles(
      "another size of table", {RigFault::TableSize},
      [](SoundClip& clip) {
        Table& table = clip.measured.table;
        const bool eight = table.length_m < 2.4;
        table.length_m = eight ? 2.540 : 2.235;
        table.width_m = eight ? 1.270 : 1.118;
      },
      false));
}

}  // namespace

std::vector<PlantedFault> plantedFaults() {
  std::vector<PlantedFault> all;
  addSound(all);
  addLenses(all);
  addPictures(all);
  addTables(all);
  return all;
}

}  // namespace ferrule::bench
