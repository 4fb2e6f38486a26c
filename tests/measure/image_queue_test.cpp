// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/image_queue.h"

#include <QtTest>
#include <thread>

#include "tests/support/test_registry.h"

using namespace ferrule;

class ImageQueueTest : public QObject {
  Q_OBJECT
 private slots:
  void imagesComeOutInTheirOrderWithTimesFromTheFirst();
  void anImageThatFindsTheQueueFullIsDroppedAndCounted();
  void numbersCountDroppedImagesToo();
  void timesThatDoNotRiseAreDropped();
  void aClosedQueueHandsOutWhatWaits();
  void aStopEndsTheWaiting();
  void whatComesLaterIsWaitedFor();
  void theWitnessSeesEveryImageAndIsWaitedForToo();

 private:
  static cv::Mat picture(int grey) { return {2, 3, CV_8UC3, cv::Scalar::all(grey)}; }
};

void ImageQueueTest::imagesComeOutInTheirOrderWithTimesFromTheFirst() {
  ImageQueue queue;
  QVERIFY(queue.offer(picture(10), 100.0));
  QVERIFY(queue.offer(picture(20), 100.5));
  const auto first = queue.next({});
  QVERIFY(first.has_value());
  QCOMPARE(first->number, 0L);
  QCOMPARE(first->time_s, 0.0);
  QCOMPARE(first->picture.at<cv::Vec3b>(0, 0)[0], uchar{10});
  const auto second = queue.next({});
  QCOMPARE(second->number, 1L);
  QCOMPARE(second->time_s, 0.5);
  QCOMPARE(second->picture.at<cv::Vec3b>(0, 0)[0], uchar{20});
}

void ImageQueueTest::anImageThatFindsTheQueueFullIsDroppedAndCounted() {
  ImageQueue queue(2);
  QVERIFY(queue.hasRoom());
  QVERIFY(queue.offer(picture(1), 1.0));
  QVERIFY(queue.offer(picture(2), 2.0));
  QVERIFY(!queue.hasRoom());
  QVERIFY(!queue.offer(picture(3), 3.0));
  QCOMPARE(queue.counts(), (ImageQueue::Counts{3, 1, 2}));
  // What waited longest is not what was dropped.
  QCOMPARE(queue.next({})->number, 0L);
  QVERIFY(queue.offer(picture(4), 4.0));
  QCOMPARE(queue.counts(), (ImageQueue::Counts{4, 1, 2}));
}

void ImageQueueTest::numbersCountDroppedImagesToo() {
  ImageQueue queue(1);
  QVERIFY(queue.offer(picture(1), 1.0));
  QVERIFY(!queue.offer(picture(2), 2.0));
  queue.countLost(3);
  QCOMPARE(queue.next({})->number, 0L);
  QVERIFY(queue.offer(picture(3), 3.0));
  QCOMPARE(queue.next({})->number, 5L);
  QCOMPARE(queue.counts(), (ImageQueue::Counts{6, 4, 0}));
}

void ImageQueueTest::timesThatDoNotRiseAreDropped() {
  ImageQueue queue;
  QVERIFY(queue.offer(picture(1), 5.0));
  QVERIFY(!queue.offer(picture(2), 5.0));
  QVERIFY(!queue.offer(picture(3), 4.0));
  QVERIFY(queue.offer(picture(4), 5.1));
  QCOMPARE(queue.counts(), (ImageQueue::Counts{4, 2, 2}));
}

void ImageQueueTest::aClosedQueueHandsOutWhatWaits() {
  ImageQueue queue;
  QVERIFY(queue.offer(picture(1), 1.0));
  queue.close();
  QVERIFY(!queue.offer(picture(2), 2.0));
  QVERIFY(!queue.hasRoom());
  QVERIFY(queue.next({}).has_value());
  QVERIFY(!queue.next({}).has_value());
}

void ImageQueueTest::aStopEndsTheWaiting() {
  ImageQueue queue;
  std::stop_source stop;
  std::optional<FilmImage> image;
  {
    const std::jthread waiting([&] { image = queue.next(stop.get_token()); });
    stop.request_stop();
  }
  QVERIFY(!image.has_value());
  // Also what waits is not handed out any more.
  QVERIFY(queue.offer(picture(1), 1.0));
  QVERIFY(!queue.next(stop.get_token()).has_value());
}

void ImageQueueTest::whatComesLaterIsWaitedFor() {
  ImageQueue queue;
  std::vector<long> numbers;
  {
    const std::jthread taker([&] {
      while (const auto image = queue.next({}))
        numbers.push_back(image->number);
    });
    for (int i = 0; i < 5; ++i)
      QVERIFY(queue.offer(picture(i), 1.0 + i));
    queue.close();
  }
  QCOMPARE(numbers, (std::vector<long>{0, 1, 2, 3, 4}));
}

void ImageQueueTest::theWitnessSeesEveryImageAndIsWaitedForToo() {
  ImageQueue queue(1);
  std::vector<double> seen_s;
  bool room = true;
  queue.setWitness({[&](const cv::Mat&, double time_s) { seen_s.push_back(time_s); }, [&] { return room; }});
  QVERIFY(queue.hasRoom());
  room = false;
  QVERIFY(!queue.hasRoom());
  // A camera does not ask.
  QVERIFY(queue.offer(picture(1), 7.0));
  room = true;
  QVERIFY(!queue.hasRoom());
  QVERIFY(!queue.offer(picture(2), 7.5));
  QCOMPARE(seen_s, (std::vector{0.0, 0.5}));
}

FERRULE_TEST(ImageQueueTest)
#include "image_queue_test.moc"
