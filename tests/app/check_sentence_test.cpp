// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/check_sentence.h"

#include <QtTest>

#include "app/window/languages.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What a self-check looked at, in the words of people: the names of files stay in files.
class CheckSentenceTest : public QObject {
  Q_OBJECT
 private slots:
  void cushionsHaveTheirNames();
  void noLanguageSpeaksInTheWordsOfFiles_data();
  void noLanguageSpeaksInTheWordsOfFiles();
};

namespace {

using Kind = CheckFinding::Kind;

const std::vector<CheckFinding> kFindings{
    {Kind::Tag, "3", 0.0004, 0.0015},
    {Kind::NoseStraight, "left-head", 0.0002, 0.001},
    {Kind::NosePlace, "right-foot", -0.0051, 0.003},
    {Kind::Parallel, "head and foot", 0.0011, 0.003},
    {Kind::Parallel, "left-head and right-head", 0.0011, 0.003},
    {Kind::Length, "", 0.0004, 0.004},
    {Kind::BallSize, "", std::nullopt, 0.003},
};

}  // namespace

void CheckSentenceTest::cushionsHaveTheirNames() {
  QCOMPARE(findingLine(kFindings[1]),
           QString("The left-head cushion: nose from a straight line: 0.20 mm (sound up to 1.0 mm)"));
  QVERIFY2(findingLine(kFindings[2]).endsWith("too much"), qPrintable(findingLine(kFindings[2])));
  QVERIFY(findingLine(kFindings[3]).startsWith("The head cushion and the foot cushion: from parallel"));
  QVERIFY(findingLine(kFindings[6]).endsWith("not seen"));
}

void CheckSentenceTest::noLanguageSpeaksInTheWordsOfFiles_data() {
  QTest::addColumn<QString>("language");
  for (const char* language : {"de", "fr", "es", "zh_CN"})
    QTest::newRow(language) << QString::fromLatin1(language);
}

void CheckSentenceTest::noLanguageSpeaksInTheWordsOfFiles() {
  QFETCH(QString, language);
  QStringList english;
  for (const CheckFinding& finding : kFindings)
    english << findingLine(finding);
  const SpokenLanguage spoken(language);
  for (std::size_t i = 0; i < kFindings.size(); ++i) {
    const QString line = findingLine(kFindings[i]);
    QVERIFY2(line != english[static_cast<int>(i)], qPrintable(line));
    for (const char* word : {"head", "foot", "left", "right", " and "})
      QVERIFY2(!line.contains(QLatin1String(word)), qPrintable(line));
  }
}

FERRULE_TEST(CheckSentenceTest)
#include "check_sentence_test.moc"
