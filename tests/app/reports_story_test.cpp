// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QPlainTextEdit>
#include <QProcess>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>

#include "app/reports/reports_place.h"
#include "app/reports/sheets_view.h"
#include "app/window/languages.h"
#include "tests/app/squad_file.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The Reports place alone.
class ReportsStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void theSheetsAreThoseThatPrint();
  void theReportSpeaksTheStudentsLanguage();
  void everyLanguageIsTaggedInItsOrder_data();
  void everyLanguageIsTaggedInItsOrder();
  void theNoteIsPrinted();
  void aPeriodWithoutShotsIsSaidOnPaperToo();
  void numbersAndPagesAreWritten();

 private:
  template <class T>
  T* find(const char* name) const {
    return place_->findChild<T*>(QString::fromLatin1(name));
  }
  /// What another program reads in the PDF.
  QString printed();

  std::unique_ptr<QTemporaryDir> folder_;
  std::unique_ptr<QWidget> window_;
  std::unique_ptr<ReportsPlace> place_;
};

void ReportsStoryTest::init() {
  QLocale::setDefault(QLocale::c());
  folder_ = std::make_unique<QTemporaryDir>();
  window_ = std::make_unique<QWidget>();
  const auto* actions = new ActionSet(window_.get());
  place_ = std::make_unique<ReportsPlace>(*actions, [] { return std::int64_t{1'800'000'000'000}; });
  place_->openRecord(squadRecord());
  place_->resize(1280, 800);
  place_->show();
  QTRY_VERIFY(place_->report().has_value());
}

void ReportsStoryTest::cleanup() {
  place_.reset();
  window_.reset();
  folder_.reset();
}

QString ReportsStoryTest::printed() {
  const QString path = folder_->filePath("report.pdf");
  place_->exportReport(path);
  QProcess process;
  process.start("pdftotext", {"-layout", path, "-"});
  process.waitForFinished(60'000);
  return QString::fromUtf8(process.readAllStandardOutput());
}

void ReportsStoryTest::theSheetsAreThoseThatPrint() {
  // pdftotext ends every page with a form feed.
  QCOMPARE(printed().count(QChar(0x0C)), find<SheetsView>("sheets")->sheetCount());
  const QImage a4 = find<QLabel>("sheet1")->pixmap().toImage();
  QVERIFY(std::abs(static_cast<double>(a4.height()) / a4.width() - 297.0 / 210.0) < 0.01);
  find<QComboBox>("reportPaper")->setCurrentIndex(1);
  const QImage letter = find<QLabel>("sheet1")->pixmap().toImage();
  QVERIFY(std::abs(static_cast<double>(letter.height()) / letter.width() - 11.0 / 8.5) < 0.01);
  QCOMPARE(printed().count(QChar(0x0C)), find<SheetsView>("sheets")->sheetCount());
  // Paper is light, whatever the window is.
  QCOMPARE(letter.pixel(2, 2), qRgb(255, 255, 255));
}

void ReportsStoryTest::theReportSpeaksTheStudentsLanguage() {
  QVERIFY(printed().contains("Progress report"));
  find<QComboBox>("reportLanguage")->setCurrentIndex(1);
  const QString german = printed();
  QVERIFY(!german.contains("Progress report"));
  QVERIFY2(german.contains("bung"), qPrintable(german.left(300)));  // Übung
  // The window itself goes on as before.
  QCOMPARE(SheetsView::tr("Preview"), QString("Preview"));
}

void ReportsStoryTest::everyLanguageIsTaggedInItsOrder_data() {
  QTest::addColumn<int>("language");
  QTest::addColumn<QString>("code");
  int number = 0;
  for (const Language& language : languages())
    QTest::newRow(language.code) << number++ << QString::fromLatin1(language.code);
}

void ReportsStoryTest::everyLanguageIsTaggedInItsOrder() {
  QFETCH(int, language);
  QFETCH(QString, code);
  find<QComboBox>("reportLanguage")->setCurrentIndex(language);
  const QString path = folder_->filePath("report.pdf");
  place_->exportReport(path);
  const auto said = [&](const QString& program, const QStringList& words) {
    QProcess process;
    process.start(program, words);
    process.waitForFinished(60'000);
    return std::pair{process.exitCode(), QString::fromUtf8(process.readAllStandardOutput())};
  };
  QCOMPARE(said("qpdf", {"--check", path}).first, 0);
  QVERIFY(said("pdfinfo", {path}).second.contains(QRegularExpression("Tagged: +yes")));
  QVERIFY(said("qpdf", {"--show-object=trailer", path}).first == 0);
  const QString told = said("pdfinfo", {"-struct-text", path}).second;
  const auto plain = [](QString words) { return words.remove(QRegularExpression("[\\s\"\u00a0\u202f]")); };
  const QString all = plain(told);
  qsizetype at = 0;
  int texts = 0;
  for (const ReportPage& page : place_->report()->pages) {
    for (const ReportBlock& block : page.blocks) {
      const auto* text = std::get_if<ReportText>(&block);
      if (text == nullptr) continue;
      // Chinese fonts have one form for letters that Unicode keeps apart only by their number.
      const qsizetype found = all.indexOf(plain(text->words).left(12), at);
      QVERIFY2(found >= at, qPrintable(code + ": " + text->words + "\n" + told));
      at = found;
      ++texts;
    }
  }
  QVERIFY(texts > 15);
}

void ReportsStoryTest::theNoteIsPrinted() {
  QSignalSpy shown(place_.get(), &ReportsPlace::shown);
  QTest::keyClicks(find<QPlainTextEdit>("coachNote"), "Keep the bridge low");
  QVERIFY(shown.wait(kPatience_ms));
  QVERIFY(printed().contains("Keep the bridge low"));
}

void ReportsStoryTest::aPeriodWithoutShotsIsSaidOnPaperToo() {
  find<QDateEdit>("reportTo")->setDate(QDate(2019, 12, 31));
  find<QDateEdit>("reportFrom")->setDate(QDate(2019, 1, 1));
  QSignalSpy shown(place_.get(), &ReportsPlace::shown);
  auto* period = find<QComboBox>("reportPeriod");
  period->setCurrentIndex(period->count() - 1);
  QTRY_COMPARE(find<SheetsView>("sheets")->sheetCount(), 1);
  QVERIFY(!printed().contains(QRegularExpression("0\\s?%")));
}

void ReportsStoryTest::numbersAndPagesAreWritten() {
  for (const char* name : {"report.csv", "report.html"}) {
    place_->exportReport(folder_->filePath(name));
    QFile file(folder_->filePath(name));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QVERIFY(file.readAll().contains(name == std::string_view("report.csv") ? "measure,group" : "<html"));
  }
  place_->exportReport(folder_->filePath("report.doc"));
  QVERIFY(!QFile::exists(folder_->filePath("report.doc")));
  QVERIFY(find<QLabel>("reportsMessage")->text().contains("report.doc"));
  place_->exportReport(folder_->filePath("none/report.pdf"));
  QVERIFY(find<QLabel>("reportsMessage")->text().contains("none/report.pdf"));
}

FERRULE_TEST(ReportsStoryTest)
#include "reports_story_test.moc"
