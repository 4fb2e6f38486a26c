// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/track_blob.h"

#include <QtTest>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class TrackBlobTest : public QObject {
  Q_OBJECT
 private slots:
  void theDocumentedBytesAreReadAsTheirNumbers();
  void aTrackComesBackWithinHalfAStepOfTheGrid();
  void packingWhatWasUnpackedGivesTheSameBytes();
  void anEmptyTrackIsATrack();
  void aRestingBallTakesFewBytes();
  void damagedBytesAreRefused();
};

/// Written by hand after the format in the header, compressed by zlib itself.
void TrackBlobTest::theDocumentedBytesAreReadAsTheirNumbers() {
  // Two samples: t = 1.000000 and 1.016667 s; x = -0.001 and 0.5 m; y = 0 and -0.00001 m; u = 0.0004 m; seen: 2nd only.
  // 1000000 -> zig-zag 2000000 -> 80 89 7a; 16667 - 1000000 = -983333 -> zig-zag 1966665 -> c9 84 78.
  // x: -100 -> 199 -> c7 01; 50100 -> 100200 -> e8 8e 06. y: 0 -> 00; -1 -> 01. u: 40 -> 80 -> 50; 0 -> 00. seen: 02.
  const QByteArray body = QByteArray::fromHex(
      "02"
      "80897a"
      "c98478"
      "c701"
      "e88e06"
      "00"
      "01"
      "5000"
      "02");
  const auto track = unpackTrack(BallName(7), QByteArray(1, '\x01') + qCompress(body));
  QVERIFY(track.has_value());
  QCOMPARE(track->ball, BallName(7));
  QCOMPARE(track->samples.size(), std::size_t{2});
  QCOMPARE(track->samples[0], (TrackSample{1.0, {-0.001, 0.0}, 0.0004, false}));
  QCOMPARE(track->samples[1], (TrackSample{1.016667, {0.5, -0.00001}, 0.0004, true}));
}

void TrackBlobTest::aTrackComesBackWithinHalfAStepOfTheGrid() {
  Random random(7);
  Track track{kCueBall, {}};
  double time_s = 4321.0;
  for (int i = 0; i < 1001; ++i) {
    time_s += 0.01 + 0.02 * random.uniform();
    track.samples.push_back({time_s,
                             {2.6 * random.uniform() - 1.3, 1.3 * random.uniform() - 0.65},
                             0.002 * random.uniform(),
                             random.uniform() < 0.5});
  }
  const auto back = unpackTrack(kCueBall, packTrack(track));
  QVERIFY(back.has_value());
  QCOMPARE(back->samples.size(), track.samples.size());
  for (std::size_t i = 0; i < track.samples.size(); ++i) {
    const TrackSample& was = track.samples[i];
    const TrackSample& is = back->samples[i];
    QVERIFY(std::abs(is.time_s - was.time_s) <= 0.5001e-6);
    QVERIFY(std::abs(is.position.x - was.position.x) <= 0.5001e-5);
    QVERIFY(std::abs(is.position.y - was.position.y) <= 0.5001e-5);
    QVERIFY(std::abs(is.standardUncertainty_m - was.standardUncertainty_m) <= 0.5001e-5);
    QCOMPARE(is.seen, was.seen);
  }
}

void TrackBlobTest::packingWhatWasUnpackedGivesTheSameBytes() {
  Track track{kCueBall, {}};
  for (int i = 0; i < 500; ++i)
    track.samples.push_back({i / 59.94, {0.0123456 * i, -0.3}, 0.00041, true});
  const QByteArray once = packTrack(track);
  const auto back = unpackTrack(kCueBall, once);
  QVERIFY(back.has_value());
  QCOMPARE(packTrack(*back), once);
}

void TrackBlobTest::anEmptyTrackIsATrack() {
  const auto back = unpackTrack(BallName(15), packTrack({BallName(15), {}}));
  QVERIFY(back.has_value());
  QCOMPARE(*back, (Track{BallName(15), {}}));
}

void TrackBlobTest::aRestingBallTakesFewBytes() {
  Track track{BallName(4), {}};
  for (int i = 0; i < 600; ++i)
    track.samples.push_back({std::round(i / 60.0 * 1e6) / 1e6, {0.3, 0.2}, 0.0003, true});
  QVERIFY2(packTrack(track).size() < 100, "ten seconds at rest");
}

void TrackBlobTest::damagedBytesAreRefused() {
  Track track{kCueBall, {}};
  for (int i = 0; i < 50; ++i)
    track.samples.push_back({i / 60.0, {0.01 * i, 0.0}, 0.0004, true});
  const QByteArray sound = packTrack(track);
  QVERIFY(!unpackTrack(kCueBall, {}).has_value());
  QVERIFY(!unpackTrack(kCueBall, sound.left(3)).has_value());
  QVERIFY(!unpackTrack(kCueBall, QByteArray(1, '\x02') + sound.mid(1)).has_value());
  const QByteArray body = qUncompress(sound.mid(1));
  QVERIFY(!unpackTrack(kCueBall, QByteArray(1, '\x01') + qCompress(body.left(body.size() - 1))).has_value());
  QVERIFY(!unpackTrack(kCueBall, QByteArray(1, '\x01') + qCompress(body + 'x')).has_value());
  // A count far beyond the bytes must not be believed.
  const QByteArray boast = QByteArray::fromHex("ffffffffff01");
  QVERIFY(!unpackTrack(kCueBall, QByteArray(1, '\x01') + qCompress(boast)).has_value());
  // A claimed length far beyond any track must not be reserved.
  QVERIFY(!unpackTrack(kCueBall, QByteArray::fromHex("01ffffffff") + sound.mid(5)).has_value());
}

FERRULE_TEST(TrackBlobTest)
#include "track_blob_test.moc"
