// SPDX-License-Identifier: GPL-3.0-or-later
#include <QRegularExpression>
#include <QtTest>
#include <memory>

#include "tests/console/refusal.h"
#include "tests/support/squad_record.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

const char* const kPlayer = "Ilva Morn (invented)";

}  // namespace

/// Reports by the command line.
class ReportCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void aReportComesWithItsNumbers();
  void htmlIsChosenByTheEnding();
  void germanIsGermanThroughout();
  void aPeriodWithoutShotsIsReportedAsSuch();
  void anUnknownPlayerIsNamed();
  void aMissingRecordIsNamed();
  void aFolderThatIsNotThereIsNamed();
  void wrongCallsAreToldApart_data();
  void wrongCallsAreToldApart();

 private:
  [[nodiscard]] Ended report(const QStringList& more, const QString& player = kPlayer) const {
    return workplace_->run(QStringList{"report", "--record", "squad.sqlite", "--player", player} + more);
  }
  std::unique_ptr<Workplace> workplace_;
};

void ReportCommandTest::initTestCase() {
  workplace_ = std::make_unique<Workplace>();
  std::vector<invented::Habits> two = invented::juniorSquad();
  two.resize(2);
  invented::Plan plan;
  plan.weeks = 3;
  plan.practiceShots = 30;
  plan.matchShots = 10;
  auto record = Record::open(workplace_->path("squad.sqlite").toStdString());
  QVERIFY(record.has_value());
  QVERIFY(invented::putInto(*record, invented::squad(two, plan)).has_value());
}

void ReportCommandTest::aReportComesWithItsNumbers() {
  const Ended ended = report({"-o", "report.pdf", "--paper", "letter", "--note", "Well done."});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QCOMPARE(ended.out.trimmed().split('\n'), (QStringList{"report.pdf", "report.csv"}));
  QVERIFY(workplace_->content("report.pdf").startsWith("%PDF-"));
  QVERIFY(workplace_->content("report.csv").startsWith("measure,group,unit,"));
  QVERIFY2(ended.words.join('\n').contains("6 sessions"), qPrintable(ended.words.join('\n')));
}

void ReportCommandTest::htmlIsChosenByTheEnding() {
  const Ended ended = report({"-o", "report.html", "--language", "en"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  const QString html = QString::fromUtf8(workplace_->content("report.html"));
  QVERIFY(html.contains("In short"));
  QVERIFY2(!html.contains("(s)"), "plural forms");
}

void ReportCommandTest::germanIsGermanThroughout() {
  const Ended ended = report({"-o", "bericht.html", "--language", "de"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  const QString html = QString::fromUtf8(workplace_->content("bericht.html"));
  QVERIFY(html.contains("<html lang=\"de"));
  QVERIFY(html.contains("In Kürze"));
  QVERIFY(html.contains(QRegularExpression("6 Sitzungen")));
  for (const char* english :
       {"In short", "Scatter", "What to work on", "not enough", "95\u00a0% interval", " shot", "(s)"})
    QVERIFY2(!html.contains(english), english);
}

void ReportCommandTest::aPeriodWithoutShotsIsReportedAsSuch() {
  const Ended ended = report({"-o", "none.html", "--language", "en", "--from", "1999-01-01", "--to", "1999-12-31"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QVERIFY(
      QString::fromUtf8(workplace_->content("none.html")).contains("There is no shot of this player in this period"));
  QVERIFY(ended.words.join('\n').contains("no shot of this player"));
}

void ReportCommandTest::anUnknownPlayerIsNamed() {
  FERRULE_VERIFY_REFUSED(*workplace_,
                         (QStringList{"report", "--record", "squad.sqlite", "--player", "Nobody", "-o", "nobody.pdf"}),
                         "Nobody", "check the spelling");
}

void ReportCommandTest::aMissingRecordIsNamed() {
  FERRULE_VERIFY_REFUSED(*workplace_,
                         (QStringList{"report", "--record", "none.sqlite", "--player", kPlayer, "-o", "none.pdf"}),
                         "none.sqlite", "check the path");
}

void ReportCommandTest::aFolderThatIsNotThereIsNamed() {
  FERRULE_VERIFY_REFUSED(
      *workplace_, (QStringList{"report", "--record", "squad.sqlite", "--player", kPlayer, "-o", "nowhere/report.pdf"}),
      "nowhere/report.pdf", "folder");
}

void ReportCommandTest::wrongCallsAreToldApart_data() {
  QTest::addColumn<QStringList>("more");
  QTest::addColumn<QString>("says");
  QTest::newRow("ending") << QStringList{"-o", "report.doc"} << "report.doc ends in neither .pdf nor .html";
  QTest::newRow("day") << QStringList{"-o", "r.pdf", "--from", "31.1.2026"} << "31.1.2026 is no day";
  QTest::newRow("order") << QStringList{"-o", "r.pdf", "--from", "2026-02-01", "--to", "2026-01-01"}
                         << "before it begins on 2026-02-01";
  QTest::newRow("paper") << QStringList{"-o", "r.pdf", "--paper", "a5"} << "a5";
}

void ReportCommandTest::wrongCallsAreToldApart() {
  QFETCH(QStringList, more);
  QFETCH(QString, says);
  const QStringList before = workplace_->files();
  const Ended ended = report(more);
  QCOMPARE(ended.status, 2);
  QVERIFY2(ended.words.join('\n').contains(says), qPrintable(ended.words.join('\n')));
  QCOMPARE(workplace_->files(), before);
}

FERRULE_TEST(ReportCommandTest)
#include "report_command_test.moc"
