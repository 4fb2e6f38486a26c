// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

#include "app/report/chart_words.h"
#include "app/report/report_builder.h"
#include "app/report/report_charts.h"
#include "app/report/report_csv.h"
#include "app/report/report_html.h"
#include "app/report/report_pdf.h"
#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr std::int64_t kNow_ms = 1'763'000'000'000;  // 2025-11-13

ReportSettings english() {
  ReportSettings settings;
  settings.locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
  settings.now_ms = kNow_ms;
  return settings;
}

const PlayerHistory& junior(std::size_t number) {
  static const invented::Squad squad = invented::squad(invented::juniorSquad(), {});
  static std::vector<PlayerHistory> all = [] {
    std::vector<PlayerHistory> histories;
    for (std::size_t i = 0; i < squad.players.size(); ++i)
      histories.push_back(invented::historyOf(squad, i));
    return histories;
  }();
  return all[number];
}

PlayerProgress progressOf(const PlayerHistory& history) {
  return playerProgress(history, {kNow_ms, {1, 199}});
}

QString wordsOf(const ReportPage& page) {
  QString all;
  for (const ReportBlock& block : page.blocks) {
    if (const auto* text = std::get_if<ReportText>(&block)) all += text->words + '\n';
    if (const auto* box = std::get_if<ReportBox>(&block)) all += box->heading + '\n' + box->lines.join('\n') + '\n';
  }
  return all;
}

QString firstWords(const PlayerHistory& history) {
  return wordsOf(buildReport(progressOf(history), english()).pages.front());
}

/// What a program of another maker says of a file.
QString said(const QString& program, const QStringList& words, int* status = nullptr) {
  QProcess process;
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(program, words);
  process.waitForFinished(60'000);
  if (status != nullptr) *status = process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1;
  return QString::fromUtf8(process.readAll());
}

}  // namespace

/// Reports as values, on paper and as HTML.
class ReportTest : public QObject {
  Q_OBJECT
 private slots:
  void thePdfIsSoundByAnotherReader();
  void thePdfSaysWhoMadeItAndEmbedsItsFonts();
  void thePdfTakesTheSheetThatWasAsked();
  void thePdfHoldsTheWordsOfTheReport();
  void thePdfIsTaggedInTheOrderOfReading();
  void figuresSpeakForThemselves();
  void nothingIsLeftOfTheMarks();
  void theHtmlIsOneFile();
  void theFirstPageSaysWhatWasPlanted();
  void noiseIsSaidToBeNoise();
  void theHeaderSaysWhatIsUsable();
  void theHeaderSaysWhatWasConsentedTo();
  void aPeriodWithoutShotsIsASentence();
  void oneShotGivesSentencesAndNoChart();
  void whatWasAllCorrectedIsSaid();
  void aFutureAndABackwardClockAreSaid();
  void otherTablesAreNamed();
  void aNameInAnyScriptIsKept_data();
  void aNameInAnyScriptIsKept();
  void aNameFromRightToLeftIsReadInItsOrder_data();
  void aNameFromRightToLeftIsReadInItsOrder();
  void lettersThatNoFontHasAreNamed();
  void theCoachsNoteIsPrinted();
  void theNumbersLieBesideIt();

 private:
  QString write(const PlayerHistory& history, QPageSize::PageSizeId paper = QPageSize::A4);
  QTemporaryDir folder_;
};

QString ReportTest::write(const PlayerHistory& history, QPageSize::PageSizeId paper) {
  const QString path = folder_.filePath("report.pdf");
  const auto written = writeReportPdf(buildReport(progressOf(history), english()), paper, path.toStdString());
  return written ? path : QString();
}

void ReportTest::thePdfIsSoundByAnotherReader() {
  int status = -1;
  const QString words = said("qpdf", {"--check", write(junior(0))}, &status);
  QVERIFY2(status == 0, qPrintable(words));
  QVERIFY2(!words.contains("WARNING"), qPrintable(words));
}

void ReportTest::thePdfSaysWhoMadeItAndEmbedsItsFonts() {
  const QString path = write(junior(0));
  const QString information = said("pdfinfo", {path});
  QVERIFY2(information.contains(QRegularExpression("Title: +Progress report: Ilva Morn \\(invented\\)")),
           qPrintable(information));
  QVERIFY2(information.contains(QRegularExpression("Author: +Ferrule")), qPrintable(information));
  QVERIFY2(information.contains(QRegularExpression("Creator: +Ferrule")), qPrintable(information));
  const QStringList fonts = said("pdffonts", {path}).split('\n', Qt::SkipEmptyParts).mid(2);
  QVERIFY(!fonts.isEmpty());
  for (const QString& font : fonts) {
    // name type encoding emb sub uni object
    QVERIFY2(font.contains(QRegularExpression("\\byes\\s+(yes|no)\\s+(yes|no)\\s+\\d+\\s+\\d+")), qPrintable(font));
  }
}

void ReportTest::thePdfTakesTheSheetThatWasAsked() {
  QVERIFY(said("pdfinfo", {write(junior(0))}).contains("(A4)"));
  QVERIFY(said("pdfinfo", {write(junior(0), QPageSize::Letter)}).contains("(letter)"));
}

void ReportTest::thePdfHoldsTheWordsOfTheReport() {
  const QString text = said("pdftotext", {"-layout", write(junior(1)), "-"});
  for (const char* words : {"Tamo Reck (invented)", "In short", "What to work on", "Scatter of the aim", "The game",
                            "Choice and delivery", "How the numbers were made"}) {
    QVERIFY2(text.contains(words), words);
  }
  QVERIFY(!text.contains("nan", Qt::CaseInsensitive) || !text.contains(QRegularExpression("\\bnan\\b")));
  QVERIFY(!text.contains(QRegularExpression("%\\d")));
}

/// pdfinfo of poppler reads the structure as a screen reader does.
void ReportTest::thePdfIsTaggedInTheOrderOfReading() {
  const Report report = buildReport(progressOf(junior(1)), english());
  const QString path = write(junior(1));
  const QString information = said("pdfinfo", {path});
  QVERIFY2(information.contains(QRegularExpression("Tagged: +yes")), qPrintable(information));
  const QString told = said("pdfinfo", {"-struct-text", path});
  QVERIFY2(!told.contains("Error"), qPrintable(told));
  // Words are parted by blanks, at the ends of lines, too, and have letters, not ligatures.
  QVERIFY(!told.contains('\t'));
  QVERIFY(!told.contains(QChar(0xFB01)));
  QVERIFY2(told.contains("the true number very probably lies between"), qPrintable(told));
  // Every word of the report's blocks stands in the tree, in the order of the report.
  const auto plain = [](QString words) { return words.remove(QRegularExpression("[\\s\"\u00a0]")); };
  const QString all = plain(told);
  qsizetype at = 0;
  const auto follows = [&](const QString& words) {
    // A figure's content stands between; the first letters of a block tell it.
    const QString wanted = plain(words).left(24);
    const qsizetype found = all.indexOf(wanted, at);
    if (found < 0) return false;
    at = found + wanted.size();
    return true;
  };
  int blocks = 0;
  for (const ReportPage& page : report.pages) {
    for (const ReportBlock& block : page.blocks) {
      QStringList words;
      if (const auto* text = std::get_if<ReportText>(&block)) words << text->words;
      if (const auto* box = std::get_if<ReportBox>(&block)) words << box->heading << box->lines;
      if (const auto* charts = std::get_if<ReportCharts>(&block)) words << titleOf(charts->charts.front());
      if (const auto* table = std::get_if<ReportTable>(&block)) {
        for (const QStringList& row : table->rows)
          words << row.front();
      }
      for (const QString& one : words) {
        QVERIFY2(follows(one), qPrintable(one + "\n" + told));
        ++blocks;
      }
    }
  }
  QVERIFY(blocks > 40);
  const QString tree = said("pdfinfo", {"-struct", path});
  for (const char* kind : {"Document", "Sect", "H1", "H2", "H3", "P (", "Figure", "Table", "TR", "TH", "TD"})
    QVERIFY2(tree.contains(kind), kind);
  QCOMPARE(tree.count(QRegularExpression("^ +H1", QRegularExpression::MultilineOption)), qsizetype{1});
}

void ReportTest::figuresSpeakForThemselves() {
  const Report report = buildReport(progressOf(junior(1)), english());
  const QByteArray pdf = said("qpdf", {"--qdf", "--object-streams=disable", write(junior(1)), "-"}).toUtf8();
  qsizetype figures = 0;
  for (const ReportPage& page : report.pages) {
    for (const ReportBlock& block : page.blocks) {
      if (const auto* charts = std::get_if<ReportCharts>(&block))
        figures += static_cast<qsizetype>(charts->charts.size());
    }
  }
  QVERIFY(figures >= 5);
  QCOMPARE(pdf.count("/S /Figure"), figures);
  QCOMPARE(pdf.count("/Alt "), figures);
  QVERIFY(pdf.contains("/Lang (en-GB)"));
  QVERIFY(pdf.contains("/DisplayDocTitle true"));
  // What a chart says holds its numbers.
  const auto grid =
      makeGridChart(progressOf(junior(1)).inferred.byCueBall, "Made", 1.27, ReportWords(english().locale));
  const QString words = spokenChart(*grid);
  for (const auto& row : std::get<GridChart>(*grid).cells) {
    for (const GridCell& cell : row) {
      if (cell.shade) QVERIFY2(words.contains(cell.words) && words.contains(cell.small), qPrintable(words));
    }
  }
}

void ReportTest::nothingIsLeftOfTheMarks() {
  const QByteArray pdf = said("qpdf", {"--qdf", "--object-streams=disable", write(junior(1)), "-"}).toUtf8();
  QVERIFY(!pdf.contains("-4000000"));
  QCOMPARE(pdf.count(" BDC") + pdf.count(" BMC"), pdf.count("EMC\n"));
}

void ReportTest::theHtmlIsOneFile() {
  const QString html = reportHtml(buildReport(progressOf(junior(0)), english()));
  QVERIFY(html.contains("<html lang=\"en"));
  QVERIFY(html.count("<svg") >= 5);
  QVERIFY(html.contains("Ilva Morn (invented)"));
  for (const char* outside : {" src=", " href=", "url(", "@import"})
    QVERIFY2(!html.contains(outside), outside);
}

void ReportTest::theFirstPageSaysWhatWasPlanted() {
  QVERIFY2(firstWords(junior(0)).contains("speed of the stroke got steadier"), qPrintable(firstWords(junior(0))));
  QVERIFY2(firstWords(junior(1)).contains("when a session grows long"), qPrintable(firstWords(junior(1))));
  QVERIFY2(firstWords(junior(3)).contains("to the left are hit too full"), qPrintable(firstWords(junior(3))));
  QVERIFY(firstWords(junior(3)).contains("Cut fan, left half"));
}

void ReportTest::noiseIsSaidToBeNoise() {
  const QString words = firstWords(junior(2));
  QVERIFY2(words.contains("nothing changed by more than luck"), qPrintable(words));
  QVERIFY2(words.contains("Nothing stands out beyond luck"), qPrintable(words));
}

void ReportTest::theHeaderSaysWhatIsUsable() {
  PlayerHistory history = junior(2);
  history.shots.resize(200);
  history.sessions.resize(history.shots.back().session + 1);
  for (std::size_t i = 0; i < history.shots.size(); ++i) {
    history.shots[i].tracked = i >= 20;
    history.shots[i].corrected = i < 10;
  }
  const QString words = firstWords(history);
  QVERIFY2(words.contains("Shots whose stroke was measured: 180 (90\u00a0%). Not seen well enough: 20 (10\u00a0%). "
                          "Corrected by a person: 10 (5\u00a0%)."),
           qPrintable(words));
  QVERIFY(words.indexOf("Shots whose stroke") < words.indexOf("In short"));
  // Nobody said what the player consented to.
  QVERIFY(!words.contains("Consent"));
}

void ReportTest::theHeaderSaysWhatWasConsentedTo() {
  ReportSettings settings = english();
  ReportConsent consent;
  consent.player.minor = true;
  ConsentEntry given;
  given.uid = "a";
  given.scope = ConsentScope::Measuring;
  given.by = "Invented Guardian";
  given.byGuardian = true;
  given.from = kNow_ms - 86'400'000;
  consent.ledger = {given};
  settings.consent = consent;
  const QString words = wordsOf(buildReport(progressOf(junior(0)), settings).pages.front());
  QVERIFY2(words.contains("Measured shots: Given by Invented Guardian (parent or guardian)"), qPrintable(words));
  QVERIFY2(words.contains("No consent is recorded for: Film of a minor; Handing on the report. No film is kept of this "
                          "person. The report goes to nobody but this person and, for a minor, a parent or guardian."),
           qPrintable(words));
  QVERIFY(words.indexOf("What the record knew of consent") < words.indexOf("In short"));
  // A child's own word is none.
  settings.consent->ledger.front().byGuardian = false;
  const QString own = wordsOf(buildReport(progressOf(junior(0)), settings).pages.front());
  QVERIFY2(own.contains("but for a minor a parent or guardian must give it"), qPrintable(own));
}

void ReportTest::aPeriodWithoutShotsIsASentence() {
  PlayerHistory nobody;
  nobody.player = "Nobody (invented)";
  const Report report = buildReport(progressOf(nobody), english());
  QCOMPARE(report.pages.size(), std::size_t{1});
  QVERIFY(wordsOf(report.pages.front()).contains("There is no shot of this player in this period"));
  QVERIFY(!write(nobody).isEmpty());
}

void ReportTest::oneShotGivesSentencesAndNoChart() {
  PlayerHistory one = junior(2);
  one.sessions.resize(1);
  one.shots.resize(1);
  one.runs.clear();
  const Report report = buildReport(progressOf(one), english());
  for (const ReportPage& page : report.pages) {
    for (const ReportBlock& block : page.blocks)
      QVERIFY(!std::holds_alternative<ReportCharts>(block));
  }
  QVERIFY(wordsOf(report.pages[0]).contains("cannot be said yet"));
  QVERIFY(wordsOf(report.pages[1]).contains("not enough yet: 1 of 10 shots"));
}

void ReportTest::whatWasAllCorrectedIsSaid() {
  PlayerHistory corrected = junior(2);
  for (PlayedShot& shot : corrected.shots)
    shot.corrected = true;
  QVERIFY(firstWords(corrected).contains("Every one of these shots was corrected by a person"));
}

void ReportTest::aFutureAndABackwardClockAreSaid() {
  PlayerHistory odd = junior(2);
  odd.sessions.back().started_ms = 4'000'000'000'000;
  odd.shots[3].minutes = 0.1;
  const QString words = firstWords(odd);
  QVERIFY2(words.contains("Dated in the future"), qPrintable(words));
  QVERIFY2(words.contains("A clock went back"), qPrintable(words));
}

void ReportTest::otherTablesAreNamed() {
  PlayerHistory two = junior(2);
  two.tables.push_back({"Tight \"table\" 7", two.tables[0].table, two.tables[0].ballRadius_m});
  two.tables[1].table.corner.mouth_m = 0.105;
  two.sessions[4].table = 1;
  const QString words = firstWords(two);
  QVERIFY2(words.contains("Tight \"table\" 7"), qPrintable(words));
  QVERIFY(words.contains("105 mm"));
}

void ReportTest::aNameInAnyScriptIsKept_data() {
  QTest::addColumn<QString>("name");
  QTest::newRow("Greek") << QString::fromUtf8("Ιλβα Μορν");
  QTest::newRow("Cyrillic") << QString::fromUtf8("Тамо Рек");
  QTest::newRow("marks") << QString::fromUtf8("Łåņőřë Þü");
  QTest::newRow("Chinese") << QString::fromUtf8("张小明");
  QTest::newRow("Japanese") << QString::fromUtf8("たなかはな");
  QTest::newRow("markup") << QString::fromUtf8("A <b>& \"C\" %1 %n");
}

void ReportTest::aNameInAnyScriptIsKept() {
  QFETCH(QString, name);
  PlayerHistory history = junior(2);
  history.player = name.toStdString();
  QVERIFY(lettersWithoutFont(name).isEmpty());
  QVERIFY(said("pdftotext", {write(history), "-"}).contains(name));
  QVERIFY(said("pdfinfo", {folder_.filePath("report.pdf")}).contains(name));
  QVERIFY(reportHtml(buildReport(progressOf(history), english())).contains(name.toHtmlEscaped()));
}

void ReportTest::aNameFromRightToLeftIsReadInItsOrder_data() {
  QTest::addColumn<QString>("name");
  QTest::newRow("Hebrew") << QString::fromUtf8("דנה כהן");
  QTest::newRow("Arabic") << QString::fromUtf8("سارة حداد");
}

void ReportTest::aNameFromRightToLeftIsReadInItsOrder() {
  QFETCH(QString, name);
  PlayerHistory history = junior(2);
  history.player = name.toStdString();
  QVERIFY2(lettersWithoutFont(name).isEmpty(), qPrintable(lettersWithoutFont(name)));
  const QString path = write(history);
  int status = -1;
  const QString checked = said("qpdf", {"--check", path}, &status);
  QVERIFY2(status == 0, qPrintable(checked));
  QVERIFY(said("pdfinfo", {path}).contains(name));
  // The letters are shaped and stand in the order of the line; the words for reading are the name as it was typed.
  QVERIFY2(said("pdfinfo", {"-struct-text", path}).contains(name), qPrintable(said("pdfinfo", {"-struct-text", path})));
}

void ReportTest::lettersThatNoFontHasAreNamed() {
  // The last code point of the private planes has no glyph anywhere.
  const char32_t code = 0x10FFFD;
  const QString odd = QString::fromUcs4(&code, 1);
  QCOMPARE(lettersWithoutFont("A" + odd + "b"), odd);
}

void ReportTest::theCoachsNoteIsPrinted() {
  ReportSettings settings = english();
  settings.coachNote = "Well done.\nRest your elbow.";
  const QString words = wordsOf(buildReport(progressOf(junior(2)), settings).pages.front());
  QVERIFY(words.contains("Well done.\nRest your elbow."));
}

void ReportTest::theNumbersLieBesideIt() {
  PlayerHistory unjudged = junior(0);
  for (PlayedShot& shot : unjudged.shots)
    shot.choiceLoss.reset();
  const QString csv = QString::fromStdString(reportCsv(progressOf(unjudged)));
  QVERIFY(csv.startsWith("measure,group,unit,value,least,most,count,sessions,reason\r\n"));
  QVERIFY(csv.contains("\r\nmade,inferred,percent,"));
  QVERIFY(csv.contains("finding: speed trend,change,percent,-"));
  QVERIFY(csv.contains(",stands\r\n"));
  QVERIFY(csv.contains("\r\nchoice loss,,percent,,,,,,not recorded\r\n"));
  QVERIFY(csv.contains("\r\nmade,called,percent,,,,,,shots 0 of 10\r\n"));
}

FERRULE_TEST(ReportTest)
#include "report_test.moc"
