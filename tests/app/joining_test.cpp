// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/joining.h"

#include <QtTest>

#include "app/window/languages.h"
#include "app/words/numbers.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Words and numbers put together as each language writes them.
class JoiningTest : public QObject {
  Q_OBJECT
 private slots:
  void everyLanguageHasItsOwnMarks_data();
  void everyLanguageHasItsOwnMarks();
  void percentHasTheBlankOfItsLanguage_data();
  void percentHasTheBlankOfItsLanguage();
  void partsThatHoldMarksStayAsTheyAre();
  void emptyPartsLeaveNoMark();
};

void JoiningTest::everyLanguageHasItsOwnMarks_data() {
  QTest::addColumn<QString>("language");
  QTest::addColumn<QString>("list");
  QTest::addColumn<QString>("apart");
  QTest::addColumn<QString>("told");
  QTest::addColumn<QString>("sentences");
  QTest::newRow("English") << "en"
                           << "a, b, c"
                           << "a; b"
                           << "a: b"
                           << "a. b.";
  QTest::newRow("German") << "de"
                          << "a, b, c"
                          << "a; b"
                          << "a: b"
                          << "a. b.";
  // Source: Lexique des règles typographiques en usage à l'Imprimerie nationale, 2002: a narrow no-break blank before
  // the semicolon, a no-break one before the colon.
  QTest::newRow("French") << "fr"
                          << "a, b, c"
                          << "a" + QString(QChar(0x202F)) + "; b"
                          << "a" + QString(QChar(0x00A0)) + ": b"
                          << "a. b.";
  QTest::newRow("Spanish") << "es"
                           << "a, b, c"
                           << "a; b"
                           << "a: b"
                           << "a. b.";
  // Source: GB/T 15834-2011, the standard of Chinese punctuation: full-width marks, no blanks after them.
  QTest::newRow("Chinese") << "zh_CN" << QString::fromUtf8("a，b，c") << QString::fromUtf8("a；b")
                           << QString::fromUtf8("a：b") << QString::fromUtf8("a。b。");
}

void JoiningTest::everyLanguageHasItsOwnMarks() {
  QFETCH(QString, language);
  const SpokenLanguage spoken(language);
  QTEST(listOf({"a", "b", "c"}), "list");
  QTEST(listApart({"a", "b"}), "apart");
  QTEST(toldOf("a", "b"), "told");
  QTEST(sentencesOf({stopped("a"), stopped("b")}), "sentences");
}

void JoiningTest::percentHasTheBlankOfItsLanguage_data() {
  QTest::addColumn<QString>("language");
  QTest::addColumn<QString>("percent");
  QTest::addColumn<QString>("percents");
  const QString firm(QChar(0x00A0));
  const QString narrow(QChar(0x202F));
  const QString to(QChar(0x2013));
  // Sources: the SI brochure, 9th edition, 5.4.7 (a blank before the sign); Unicode CLDR 42, percentFormat (de, es: a
  // no-break blank, fr: a narrow one, zh: none).
  QTest::newRow("English") << "en"
                           << "62.5" + firm + "%"
                           << "58" + to + "66" + firm + "%";
  QTest::newRow("German") << "de"
                          << "62,5" + firm + "%"
                          << "58" + to + "66" + firm + "%";
  QTest::newRow("French") << "fr"
                          << "62,5" + narrow + "%"
                          << "58" + to + "66" + narrow + "%";
  QTest::newRow("Spanish") << "es"
                           << "62,5" + firm + "%"
                           << "58" + to + "66" + firm + "%";
  QTest::newRow("Chinese") << "zh_CN"
                           << "62.5%"
                           << "58" + to + "66%";
}

void JoiningTest::percentHasTheBlankOfItsLanguage() {
  QFETCH(QString, language);
  const SpokenLanguage spoken(language);
  const Numbers numbers{QLocale(language)};
  QTEST(numbers.percent(0.625, 1), "percent");
  QTEST(numbers.percents(0.58, 0.66), "percents");
}

void JoiningTest::partsThatHoldMarksStayAsTheyAre() {
  QCOMPARE(listOf({"%1", "%2 %3", "%n"}), QString("%1, %2 %3, %n"));
  QCOMPARE(toldOf("%2", "%1"), QString("%2: %1"));
}

void JoiningTest::emptyPartsLeaveNoMark() {
  QCOMPARE(listOf({"", "a", "", "b", ""}), QString("a, b"));
  QCOMPARE(sentencesOf({"a.", ""}), QString("a."));
  QVERIFY(listOf({}).isEmpty());
}

FERRULE_TEST(JoiningTest)
#include "joining_test.moc"
