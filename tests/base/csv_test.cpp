// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

using Fields = std::vector<std::string>;

class CsvTest : public QObject {
  Q_OBJECT
 private slots:
  void fieldsWithCommasQuotesAndLinesComeBackWhole();
  void theExamplesOfTheStandardAreRead();
  void aSpreadsheetsSemicolonsBringDecimalCommas();
  void linesAreCountedThroughQuotes();
  void numbersAreWholeAndFinite();
  void aTextThatIsNoCsvHasRowsAllTheSame();
};

void CsvTest::fieldsWithCommasQuotesAndLinesComeBackWhole() {
  const Fields fields{"plain", "a, b", "say \"so\"", "two\nlines", "", " spaced "};
  std::string text;
  for (const std::string& field : fields)
    text += (text.empty() ? "" : ",") + csvField(field);
  QCOMPARE(parseCsv(text + "\r\n").rows, std::vector<CsvRow>({{1, fields}}));
}

void CsvTest::theExamplesOfTheStandardAreRead() {
  // Source: RFC 4180, section 2, rules 1 to 7.
  QCOMPARE(parseCsv("aaa,bbb,ccc\r\nzzz,yyy,xxx").rows,
           std::vector<CsvRow>({{1, {"aaa", "bbb", "ccc"}}, {2, {"zzz", "yyy", "xxx"}}}));
  QCOMPARE(parseCsv("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx").rows,
           std::vector<CsvRow>({{1, {"aaa", "b\r\nbb", "ccc"}}, {3, {"zzz", "yyy", "xxx"}}}));
  QCOMPARE(parseCsv("\"aaa\",\"b\"\"bb\",\"ccc\"").rows, std::vector<CsvRow>({{1, {"aaa", "b\"bb", "ccc"}}}));
}

void CsvTest::aSpreadsheetsSemicolonsBringDecimalCommas() {
  const CsvText german = parseCsv("\xEF\xBB\xBFshot;speed\r\n1;2,75\r\n");
  QVERIFY(german.decimalComma);
  QCOMPARE(german.rows[0].fields, Fields({"shot", "speed"}));
  QCOMPARE(german.number(german.rows[1].fields[1]), std::optional(2.75));
  const CsvText plain = parseCsv("shot,speed\n1,2.75\n");
  QVERIFY(!plain.decimalComma);
  QCOMPARE(plain.number(plain.rows[1].fields[1]), std::optional(2.75));
  QVERIFY(!plain.number("2,75"));
}

void CsvTest::linesAreCountedThroughQuotes() {
  const CsvText csv = parseCsv("a\n\n\"x\ny\"\nlast\n");
  QCOMPARE(csv.rows.size(), std::size_t{3});
  QCOMPARE(csv.rows[1].line, 3);
  QCOMPARE(csv.rows[2].line, 5);
}

void CsvTest::numbersAreWholeAndFinite() {
  const CsvText csv = parseCsv("a,b");
  QCOMPARE(csv.number(" -1.5e-3 "), std::optional(-0.0015));
  for (const char* wrong : {"", " ", "1 m", "0x10", "nan", "inf", "1e999", "1.5.2"})
    QVERIFY2(!csv.number(wrong), wrong);
}

void CsvTest::aTextThatIsNoCsvHasRowsAllTheSame() {
  QVERIFY(parseCsv("").rows.empty());
  QVERIFY(parseCsv("\n\r\n \n").rows.empty());
  QCOMPARE(parseCsv("\"never closed, to the end\n").rows, std::vector<CsvRow>({{1, {"never closed, to the end\n"}}}));
  QCOMPARE(parseCsv("a\"b,c").rows, std::vector<CsvRow>({{1, {"a\"b", "c"}}}));
}

FERRULE_TEST(CsvTest)
#include "csv_test.moc"
