// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <QtTest>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "app/setup/setup_place.h"
#include "app/words/error_sentence.h"
#include "core/camera/rig_file.h"
#include "core/vision/film_source.h"
#include "tests/app/setup_screen.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What a set-up is given and cannot use: one sentence that says what to do, and nothing is lost.
class SetupRefusalsTest : public QObject, private SetupScreen {
  Q_OBJECT
 private slots:
  void init() { begin(); }
  void cleanup() { end(); }
  void aMirroredStillOfTheTable();
  void aStillWithCoveredTags();
  void aStillWithoutATable();
  void aBoardPrintedAtAScaleNoPrinterHas();
  void aBoardThatThePrinterStretched();
  void twoProjectorsGrids();

 private:
  /// A still of the small film's table, changed, as the set-up's film; then the rig is asked for.
  void makeRigFrom(const std::function<void(cv::Mat&)>& change);
};

namespace {

const QString kClip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");

}  // namespace

void SetupRefusalsTest::makeRigFrom(const std::function<void(cv::Mat&)>& change) {
  auto film = FilmSource::open((kClip + "stop-shot.mp4").toStdString());
  QVERIFY(film.has_value());
  FilmImage image;
  QVERIFY(film->next(image));
  cv::Mat picture = image.picture.clone();
  change(picture);
  const QString still = folder_->filePath("table.png");
  QVERIFY(cv::imwrite(still.toStdString(), picture));
  desk().openTable(kClip + "table.json");
  desk().useLensFile(kClip + "lens.json");
  desk().look(still);
  waitForWork();
  const SetupState before = desk().state();
  desk().makeRig();
  waitForWork();
  QVERIFY(!desk().rig().has_value());
  QVERIFY(desk().state() == before);
}

void SetupRefusalsTest::aMirroredStillOfTheTable() {
  makeRigFrom([](cv::Mat& picture) {
    cv::Mat mirrored;
    cv::flip(picture, mirrored, 1);
    picture = mirrored;
  });
  QVERIFY2(message().contains("table.png is mirrored; switch off"), qPrintable(message()));
}

void SetupRefusalsTest::aStillWithCoveredTags() {
  const Rig rig = readRigFile((kClip + "rig.json").toStdString()).value();
  const MeasuredTable measured = readMeasuredTable((kClip + "table.json").toStdString()).value();
  makeRigFrom([&](cv::Mat& picture) {
    for (const RailTag& tag : {measured.tags[0], measured.tags[2]}) {
      const ImagePoint pixel = imageFromTable(rig, tag.corners[0]).value();
      cv::circle(picture, {static_cast<int>(pixel.x), static_cast<int>(pixel.y)}, 30, cv::Scalar(90, 120, 160), -1);
    }
  });
  QVERIFY2(message().contains("table.png") && message().contains('2') && message().contains('3'),
           qPrintable(message()));
}

/// Without tags: nothing to take a rig from is said, too.
void SetupRefusalsTest::aStillWithoutATable() {
  desk().change("step", [](SetupState& state) { state.withoutTags = true; });
  const QString still = folder_->filePath("floor.png");
  QVERIFY(cv::imwrite(still.toStdString(), cv::Mat(720, 1280, CV_8UC3, cv::Scalar::all(70))));
  desk().useLensFile(kClip + "lens.json");
  desk().look(still);
  waitForWork();
  desk().makeRig();
  waitForWork();
  QVERIFY(!desk().rig().has_value());
  QVERIFY2(message().contains("floor.png"), qPrintable(message()));
}

/// 50 mm where 100 should be: another line was measured, or the sheet was made for other paper.
void SetupRefusalsTest::aBoardPrintedAtAScaleNoPrinterHas() {
  desk().change("step", [](SetupState& state) { state.rulerAcross_mm = state.rulerDown_mm = 50.0; });
  desk().calibrateLens();
  QVERIFY2(message().contains("50") && message().contains("measure it again"), qPrintable(message()));
}

void SetupRefusalsTest::aBoardThatThePrinterStretched() {
  desk().change("step", [](SetupState& state) { state.rulerDown_mm = 97.0; });
  desk().calibrateLens();
  QVERIFY2(message().contains("97") && message().contains("without fitting it to the page"), qPrintable(message()));
}

/// How they are found in a picture: tests of the projected grid.
void SetupRefusalsTest::twoProjectorsGrids() {
  const QString words = errorSentence(Error{ErrorCode::TagsInconsistent, "/hall/grid.png", "projected-twice", {107.0}});
  QVERIFY2(words.contains("grid.png") && words.contains("107") && words.contains("second projector"),
           qPrintable(words));
}

FERRULE_TEST(SetupRefusalsTest)
#include "setup_refusals_test.moc"
