// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/asked_shots.h"

#include <QtTest>

#include "core/base/text_file.h"
#include "core/measure/measured_file.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class AskedShotsTest : public QObject {
  Q_OBJECT
 private slots:
  void aSessionsShotsAreNumberedThroughItsFrames();
  void aMeasuredFileGivesItsStrikesBack();
  void aCommandWithoutItsShotIsNamed();
  void otherFilesAreRefused();
};

void AskedShotsTest::aSessionsShotsAreNumberedThroughItsFrames() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto game = sample::addGame(record);
  const FrameId second = *record.addFrame({game.session, "", std::nullopt, std::nullopt});
  QVERIFY(record.appendShot(second, sample::shot(1), {}).has_value());
  QVERIFY(record.appendShot(game.frame, sample::shot(1), {}).has_value());
  QVERIFY(record.appendShot(game.frame, sample::shot(2), {}).has_value());
  const auto all = deliveriesOf(record, game.session);
  QVERIFY(all.has_value());
  QVERIFY(*all == (std::vector<NumberedDelivery>{
                      {1, sample::shot(1).delivery}, {2, sample::shot(2).delivery}, {3, sample::shot(1).delivery}}));
}

void AskedShotsTest::aMeasuredFileGivesItsStrikesBack() {
  const sample::Folder folder;
  auto file = MeasuredFile::make(folder.file("measured.json"));
  QVERIFY(file.has_value());
  file->add(sample::shot(1), "");
  file->add(sample::shot(4), "");
  QVERIFY(file->keep({"film.mp4", 10, 1.0, {1280, 720}}, sample::rig()).has_value());
  const auto all = readDeliveries(folder.file("measured.json"));
  QVERIFY(all.has_value());
  QCOMPARE(all->size(), std::size_t{2});
  QCOMPARE((*all)[1].shot, 4);
  const Delivery& read = (*all)[1].delivery;
  const Delivery kept = sample::shot(4).delivery;
  QVERIFY(std::abs(read.aim_rad->value - kept.aim_rad->value) < 1e-6);
  QVERIFY(std::abs(read.aim_rad->standardUncertainty - kept.aim_rad->standardUncertainty) < 1e-6);
  QCOMPARE(read.speed_mps->value, 2.5);
  QCOMPARE(read.side->value, -0.125);
  QVERIFY(!read.height && !read.elevation_rad);  // null in the file
}

void AskedShotsTest::aCommandWithoutItsShotIsNamed() {
  AskedLine one;
  one.shot = 1;
  one.asked.speed_mps = 2.0;
  AskedLine seven = one;
  seven.shot = 7;
  const std::vector<NumberedDelivery> delivered{{1, sample::shot(1).delivery}, {2, sample::shot(2).delivery}};
  const AskedMatch match = matchAsked(std::vector{one, seven}, delivered);
  QCOMPARE(match.shots.size(), std::size_t{1});
  QVERIFY(match.shots.front().delivered == sample::shot(1).delivery);
  QCOMPARE(match.missing, std::vector<int>{7});
}

void AskedShotsTest::otherFilesAreRefused() {
  const sample::Folder folder;
  const auto codeOf = [&](const char* content) {
    const std::string path = folder.file("other.json");
    if (!writeTextFile(path, content)) return ErrorCode::Cancelled;
    const auto read = readDeliveries(path);
    return read ? ErrorCode::Cancelled : read.error().code;
  };
  QCOMPARE(codeOf("no JSON"), ErrorCode::FileMalformed);
  QCOMPARE(codeOf("{}"), ErrorCode::FieldMissing);
  QCOMPARE(codeOf("[1, 2]"), ErrorCode::FieldMissing);
  QCOMPARE(codeOf(R"({"shots": [{"number": 1}]})"), ErrorCode::FileMalformed);
  QCOMPARE(codeOf(R"({"shots": [{"number": 1, "delivery": {"side": 0.1}}]})"), ErrorCode::FileMalformed);
  QCOMPARE(codeOf(R"({"shots": [{"number": 1, "delivery": {"side": "left", "side_u": 1}}]})"),
           ErrorCode::FileMalformed);
  QCOMPARE(readDeliveries(folder.file("nowhere.json")).error().code, ErrorCode::FileMissing);
}

FERRULE_TEST(AskedShotsTest)
#include "asked_shots_test.moc"
