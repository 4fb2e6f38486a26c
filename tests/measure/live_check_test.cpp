// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/live_check.h"

#include <QtTest>
#include <opencv2/imgproc.hpp>

#include "core/camera/rig_file.h"
#include "core/vision/film_source.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The pictures of the small film, offered again and again as a camera would bring them.
class LiveCheckTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void theFirstSecondsAreChecked();
  void theNextCheckComesFiveMinutesLater();
  void aPersonMayAskSooner();
  void aCameraThatWasPushedIsNamed();
  void aMoveBreaksACheckOffAndItBeginsAnew();
  void whatWasGatheredWhenItClosesIsStillChecked();
  void aStopEndsTheWaiting();

 private:
  /// Offers pictures a tenth of a second apart; how many were taken shows in the next check.
  void play(LiveCheck& live, double from_s, double until_s, double shift_px = 0.0) const;

  std::shared_ptr<const Rig> rig_;
  MeasuredTable measured_;
  std::vector<cv::Mat> pictures_;
};

namespace {

const std::string kFolder = FERRULE_SOURCE_DIR "/tests/data/clip/";

}  // namespace

void LiveCheckTest::initTestCase() {
  rig_ = std::make_shared<const Rig>(readRigFile(kFolder + "rig.json").value());
  measured_ = readMeasuredTable(kFolder + "table.json").value();
  auto film = FilmSource::open(kFolder + "stop-shot.mp4");
  QVERIFY(film.has_value());
  FilmImage image;
  while (image.time_s < 3.0 && film->next(image)) {
    if (image.number % 6 == 0) pictures_.push_back(image.picture.clone());
  }
  QVERIFY(pictures_.size() > 7);
}

void LiveCheckTest::play(LiveCheck& live, double from_s, double until_s, double shift_px) const {
  std::size_t next = 0;
  for (double time_s = from_s; time_s < until_s; time_s += 0.1001) {
    cv::Mat picture = pictures_[next++ % pictures_.size()];
    if (shift_px != 0.0) {
      const cv::Mat by = (cv::Mat_<double>(2, 3) << 1, 0, shift_px, 0, 1, 0);
      cv::Mat moved;
      cv::warpAffine(picture, moved, by, picture.size(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
      picture = moved;
    }
    live.offer({picture, rig_}, time_s);
  }
}

void LiveCheckTest::theFirstSecondsAreChecked() {
  LiveCheck live(measured_);
  play(live, 0.0, 4.0);
  const auto report = live.next({});
  QVERIFY(report && report->check);
  QCOMPARE(report->check->check.verdict, RigFault::None);
  QVERIFY(report->check->evidence.tags.size() == 4);
  QVERIFY(report->time_s > 2.5 && report->time_s < 3.5);
}

void LiveCheckTest::theNextCheckComesFiveMinutesLater() {
  LiveCheck live(measured_);
  play(live, 0.0, 4.0);
  QVERIFY(live.next({}).has_value());
  // Nothing is gathered before the time has come.
  play(live, 100.0, 110.0);
  play(live, 303.0, 307.0);
  const auto report = live.next({});
  QVERIFY(report.has_value());
  QVERIFY2(report->time_s > 303.0, qPrintable(QString::number(report->time_s)));
  live.close();
  QVERIFY(!live.next({}));
}

void LiveCheckTest::aPersonMayAskSooner() {
  LiveCheck live(measured_);
  play(live, 0.0, 4.0);
  QVERIFY(live.next({}).has_value());
  live.askNow();
  play(live, 20.0, 24.0);
  const auto report = live.next({});
  QVERIFY(report && report->time_s > 20.0 && report->time_s < 24.0);
}

void LiveCheckTest::aCameraThatWasPushedIsNamed() {
  LiveCheck live(measured_);
  play(live, 0.0, 4.0);
  QCOMPARE(live.next({})->check->check.verdict, RigFault::None);
  play(live, 301.0, 305.0, 6.0);
  const auto report = live.next({});
  QVERIFY(report && report->check);
  QCOMPARE(report->check->check.verdict, RigFault::CameraMoved);
  QVERIFY(report->check->check.costMax_m > 0.004);
}

/// Pictures before a move and after it belong to two rigs.
void LiveCheckTest::aMoveBreaksACheckOffAndItBeginsAnew() {
  LiveCheck live(measured_);
  play(live, 0.0, 2.0);
  rig_ = std::make_shared<const Rig>(*rig_);
  play(live, 2.0, 6.0);
  const auto report = live.next({});
  QVERIFY(report && report->check);
  QVERIFY2(report->time_s > 4.5, qPrintable(QString::number(report->time_s)));
  QCOMPARE(report->check->check.verdict, RigFault::None);
}

void LiveCheckTest::whatWasGatheredWhenItClosesIsStillChecked() {
  LiveCheck live(measured_);
  play(live, 0.0, 1.2);
  live.close();
  const auto report = live.next({});
  QVERIFY(report && report->check);
  QCOMPARE(report->check->check.verdict, RigFault::None);
  QVERIFY(!live.next({}));
  // A handful is not.
  LiveCheck few(measured_);
  play(few, 0.0, 0.4);
  few.close();
  QVERIFY(!few.next({}));
}

void LiveCheckTest::aStopEndsTheWaiting() {
  LiveCheck live(measured_);
  std::stop_source stop;
  stop.request_stop();
  QVERIFY(!live.next({{}, stop.get_token()}));
}

FERRULE_TEST(LiveCheckTest)
#include "live_check_test.moc"
