// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/picture_light.h"

#include <QtTest>

#include "core/vision/film_source.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PictureLightTest : public QObject {
  Q_OBJECT
 private slots:
  void levelsAreThoseOfThePicture();
  void aSoundFilmHasNoFault();
  void theSameFilmIsTooDarkWithoutLight();
  void aBurntOutPictureIsTooBright();
  void lampsReflectionsOnBallsAreNoFault();
  void aLongExposureSmearsFastBalls();
};

namespace {

cv::Mat clipPicture() {
  auto film = FilmSource::open(FERRULE_SOURCE_DIR "/tests/data/clip/stop-shot.mp4");
  FilmImage image;
  if (!film || !film->next(image)) qFatal("the clip cannot be read");
  return image.picture;
}

}  // namespace

void PictureLightTest::levelsAreThoseOfThePicture() {
  cv::Mat picture(200, 100, CV_8UC3, cv::Scalar::all(40));
  picture.rowRange(0, 20).setTo(cv::Scalar::all(255));
  const PictureLight light = lightOf(picture);
  QCOMPARE(light.middle, 40.0);
  QCOMPARE(light.bright, 255.0);
  QVERIFY(std::abs(light.burntShare - 0.1) < 1e-9);
}

void PictureLightTest::aSoundFilmHasNoFault() {
  QCOMPARE(faultOf(lightOf(clipPicture())), LightFault::None);
}

void PictureLightTest::theSameFilmIsTooDarkWithoutLight() {
  QCOMPARE(faultOf(lightOf(clipPicture() * 0.15)), LightFault::TooDark);
}

void PictureLightTest::aBurntOutPictureIsTooBright() {
  cv::Mat bright = clipPicture() * 1.0 + cv::Scalar::all(200);
  QCOMPARE(faultOf(lightOf(bright)), LightFault::TooBright);
}

void PictureLightTest::lampsReflectionsOnBallsAreNoFault() {
  cv::Mat picture = clipPicture();
  for (int ball = 0; ball < 16; ++ball)
    picture(cv::Rect(40 + 70 * ball, 300, 8, 8)).setTo(cv::Scalar::all(255));
  QCOMPARE(faultOf(lightOf(picture)), LightFault::None);
}

/// A ball of 28.6 mm radius at 4 m/s crosses it in 7.1 ms.
void PictureLightTest::aLongExposureSmearsFastBalls() {
  constexpr double kRadius_m = 0.028575;
  QVERIFY(!smearsFastBalls(0.0, kRadius_m));
  QVERIFY(!smearsFastBalls(0.007, kRadius_m));
  QVERIFY(smearsFastBalls(0.0075, kRadius_m));
}

FERRULE_TEST(PictureLightTest)
#include "picture_light_test.moc"
