// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/reading_text.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Thirds need every digit.
ShotReading fullReading() {
  ShotReading reading;
  reading.number = 7;
  reading.strike_s = 10.0 / 3.0;
  reading.rest_s = 29.0 / 3.0;
  reading.before = {{kCueBall, {-1.0 / 3.0, 0.1}}, {BallName(12), {0.2, 1.0 / 7.0}}};
  reading.after = {{kCueBall, {0.5, -0.1}}};
  reading.delivery.aim_rad = Measured{1.0 / 3.0, 1.0 / 7000.0};
  reading.delivery.side = Measured{-0.125, 0.05};
  reading.delivery.whyNoHeight = NotShown::SlideNotSeen;
  reading.events = {{3.5, EventKind::Ball, kCueBall, BallName(12), {}, {}, {0.1, 0.2}, 0.001, Verdict::Ask},
                    {3.9, EventKind::Cushion, BallName(12), {}, CushionName::Foot, {}, {1.2, 0.3}, 0.0, {}},
                    {4.4, EventKind::Pocket, BallName(12), {}, {}, PocketName::HeadLeft, {-1.2, 0.6}, 0.0, {}},
                    {4.6, EventKind::OffTable, kCueBall, {}, {}, {}, {1.3, 0.6}, 0.0, Verdict::Proposed}};
  reading.firstContact = BallName(12);
  reading.pocketed = {{BallName(12), PocketName::HeadLeft}};
  reading.scratch = true;
  reading.target = Target{BallName(12), PocketName::HeadLeft, 0.35, -0.004, MissSide::Over};
  reading.target->called = true;
  reading.target->missAtMouth_m = 1.0 / 300.0;
  reading.outcome = Outcome::Scratch;
  reading.outcomeVerdict = Verdict::Ask;
  reading.missAccount = MissAccount{{-0.02, 0.001}, {1.0 / 3.0, 0.011}, {}, {}, {}, {}, {}, {}};
  reading.flags = {ShotFlag::PickedUp, ShotFlag::UnsurePocket};
  return reading;
}

}  // namespace

class ReadingTextTest : public QObject {
  Q_OBJECT
 private slots:
  void everythingComesBackToTheLastDigit();
  void whatIsNoReadingIsNothing();
};

void ReadingTextTest::everythingComesBackToTheLastDigit() {
  QCOMPARE(readingFromText(readingText(fullReading()), 7), std::optional(fullReading()));
  ShotReading empty;
  empty.number = 2;
  QCOMPARE(readingFromText(readingText(empty), 2), std::optional(empty));
}

void ReadingTextTest::whatIsNoReadingIsNothing() {
  const std::string whole = readingText(fullReading());
  for (const std::string& text : {std::string(), std::string("[]"), std::string("{}"), whole.substr(1)})
    QVERIFY(!readingFromText(text, 1));
  for (const char* word : {"head-left", "scratch\",\"verdict", "picked-up", "off-table"}) {
    std::string wrong = whole;
    QVERIFY(wrong.find(word) != std::string::npos);
    wrong.replace(wrong.find(word), 3, "xxx");
    QVERIFY2(!readingFromText(wrong, 1), word);
  }
}

FERRULE_TEST(ReadingTextTest)
#include "reading_text_test.moc"
