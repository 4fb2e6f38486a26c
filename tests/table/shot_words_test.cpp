// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/table/shot.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ShotWordsTest : public QObject {
  Q_OBJECT
 private slots:
  void everyWordOfAFileIsReadBack();
  void anUnknownWordIsNothing();
};

void ShotWordsTest::everyWordOfAFileIsReadBack() {
  for (const char* text : {"ball", "cushion", "pocket", "off-table"}) {
    QCOMPARE(std::string(toText(eventKindFromText(text).value())), std::string(text));
  }
  for (const char* text : {"pot", "miss", "safety", "scratch", "foul", "break"}) {
    QCOMPARE(std::string(toText(outcomeFromText(text).value())), std::string(text));
  }
  for (const char* text : {"over", "under"}) {
    QCOMPARE(std::string(toText(missSideFromText(text).value())), std::string(text));
  }
  for (const char* text : {"certain", "proposed", "ask"}) {
    QCOMPARE(std::string(toText(verdictFromText(text).value())), std::string(text));
  }
}

void ShotWordsTest::anUnknownWordIsNothing() {
  QVERIFY(!eventKindFromText("Ball"));
  QVERIFY(!outcomeFromText(""));
  QVERIFY(!missSideFromText("left"));
  QVERIFY(!verdictFromText("maybe"));
}

FERRULE_TEST(ShotWordsTest)
#include "shot_words_test.moc"
