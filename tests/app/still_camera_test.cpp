// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <QPushButton>
#include <QtTest>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "app/live/paced_film.h"
#include "app/setup/setup_place.h"
#include "app/setup/still_camera.h"
#include "core/vision/printed_pattern.h"
#include "tests/app/setup_screen.h"
#include "tests/support/given_source.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Stills of the board taken from a camera that runs. The board and its pictures: OpenCV's own calibration data
/// (samples/data/left01.jpg and on), a chessboard of 9 x 6 inner corners.
class StillCameraTest : public QObject, private SetupScreen {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void aSharpStillIsTakenAndCounts();
  void theSameStillIsRefused();
  void aBlurredStillIsRefused();
  void aMirroredCameraIsNamed();
  void anotherImageSizeIsRefused();
  void nothingIsTakenOfAnEmptyPicture();
  void theCameraIsLetGoWhenTheStepIsLeft();
  void aFilmStandsInForTheCamera();

 private:
  [[nodiscard]] QString words() const { return SetupScreen::words("liveStillWords"); }
  void take() { place_->findChild<QPushButton*>("takeStill")->click(); }
  /// Shows it until it was looked at: its words differ from those before.
  void show(const cv::Mat& picture, const QString& wanted);

  std::shared_ptr<GivenSource> camera_;
};

namespace {

cv::Mat board(int number) {
  const QString path =
      QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/opencv-boards/left%1.jpg").arg(number, 2, 10, QLatin1Char('0'));
  return cv::imread(path.toStdString(), cv::IMREAD_COLOR);
}

/// A print on grey, as a camera whose image is mirrored sees it.
cv::Mat mirroredPrint(const Board& print) {
  constexpr double kPerMetre_px = 3000.0;
  const auto px = [](double length_m) { return static_cast<int>(std::lround(length_m * kPerMetre_px)); };
  cv::Mat picture(720, 1280, CV_8UC3, cv::Scalar::all(255));
  const cv::Point corner(250, 80);
  for (const PrintedRectangle& r : printedBoard(print).value()) {
    const cv::Point from(px(r.x_m), px(r.y_m));
    const cv::Point to(px(r.x_m + r.width_m), px(r.y_m + r.height_m));
    picture(cv::Rect(from + corner, to + corner)).setTo(cv::Scalar::all(20));
  }
  cv::flip(picture, picture, 1);
  return picture;
}

}  // namespace

void StillCameraTest::init() {
  begin();
  desk().change("board", [](SetupState& state) { state.board = QStringLiteral("chessboard:9x6:25"); });
  place_->showStep(SetupStep::Lens);
  // Cameras are looked for when somebody wants one.
  auto* unfold = place_->findChild<QPushButton*>("unfoldCamera");
  QVERIFY(unfold->isVisible() && !place_->findChild<QPushButton*>("watchBoard")->isVisible());
  unfold->click();
  QVERIFY(!unfold->isVisible() && place_->findChild<QPushButton*>("watchBoard")->isVisible());
  camera_ = std::make_shared<GivenSource>();
  place_->findChild<StillCamera*>()->begin(camera_);
  QVERIFY(camera_->isRunning());
}

void StillCameraTest::cleanup() {
  end();
  camera_.reset();
}

void StillCameraTest::show(const cv::Mat& picture, const QString& wanted) {
  QVERIFY(!picture.empty());
  camera_->show(picture);
  QTRY_VERIFY(words().contains(wanted));
}

void StillCameraTest::aSharpStillIsTakenAndCounts() {
  show(board(1), "Sharp");
  QVERIFY2(words().contains("of the picture"), qPrintable(words()));
  take();
  QCOMPARE(desk().stills().size(), std::size_t{1});
  QVERIFY(desk().stills().front().fate == StillFate::Used);
  QVERIFY(desk().stills().front().edge_px > 0.0);
  // It is a file like those that a person brings, pixel for pixel.
  const cv::Mat kept = cv::imread(desk().stills().front().path, cv::IMREAD_COLOR);
  QVERIFY(cv::norm(kept, board(1), cv::NORM_INF) == 0.0);
  show(board(2), "With it the board was in");
  take();
  QCOMPARE(desk().stills().size(), std::size_t{2});
  desk().undo();
  QCOMPARE(desk().stills().size(), std::size_t{1});
}

void StillCameraTest::theSameStillIsRefused() {
  show(board(1), "Sharp");
  take();
  show(board(1), "has it already");
  take();
  QCOMPARE(desk().stills().size(), std::size_t{1});
  QVERIFY2(message().startsWith("Not taken. The board is where still-001.png has it already"), qPrintable(message()));
}

void StillCameraTest::aBlurredStillIsRefused() {
  cv::Mat blurred;
  cv::GaussianBlur(board(1), blurred, {0, 0}, 3.0);
  show(blurred, "Blurred");
  take();
  QVERIFY(desk().stills().empty());
  QVERIFY2(message().contains("Hold it still"), qPrintable(message()));
}

/// A chessboard looks the same in a mirror; a board with markers does not.
void StillCameraTest::aMirroredCameraIsNamed() {
  desk().change("board", [](SetupState& state) { state.board = QStringLiteral("charuco:8x6:30:22:DICT_5X5_100"); });
  place_->findChild<StillCamera*>()->begin(camera_);
  show(mirroredPrint(parseBoard("charuco:8x6:30:22:DICT_5X5_100").value()), "mirrored");
  take();
  QVERIFY(desk().stills().empty());
  QVERIFY2(message().contains("mirrored"), qPrintable(message()));
}

void StillCameraTest::anotherImageSizeIsRefused() {
  show(board(1), "Sharp");
  take();
  cv::Mat larger;
  cv::resize(board(2), larger, {}, 1.5, 1.5, cv::INTER_AREA);
  show(larger, "one image size");
  take();
  QCOMPARE(desk().stills().size(), std::size_t{1});
  QVERIFY2(message().contains("640") && message().contains("960"), qPrintable(message()));
}

void StillCameraTest::nothingIsTakenOfAnEmptyPicture() {
  show(cv::Mat(480, 640, CV_8UC3, cv::Scalar::all(90)), "not seen");
  take();
  QVERIFY(desk().stills().empty());
}

void StillCameraTest::theCameraIsLetGoWhenTheStepIsLeft() {
  place_->showStep(SetupStep::Tags);
  QVERIFY(!camera_->isRunning());
}

void StillCameraTest::aFilmStandsInForTheCamera() {
  const QString film = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/stop-shot.mp4");
  auto* camera = place_->findChild<StillCamera*>();
  camera->begin(std::make_shared<PacedFilm>(film));
  // There is no board in it, and that is said.
  QTRY_VERIFY(words().contains("not seen"));
}

FERRULE_TEST(StillCameraTest)
#include "still_camera_test.moc"
