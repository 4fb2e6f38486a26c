// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QtTest>
#include <cmath>
#include <csignal>
#include <nlohmann/json.hpp>

#include "tests/console/program.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using nlohmann::json;

/// The main job as a person does it in a shell: the demo film that ships, from its stills' lens to the exported record.
class MainJobTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void theRigComesFromTheFilmAndTheDemosLens();
  void theFilmIsMeasuredIntoARecord();
  void theRecordIsExported();
  void theSameFilmIsRefusedAndChangesNothing();
  void againStandsBesideTheFirst();
  void stoppedHalfWayNothingIsHalfWritten();
  void aLensComesFromPublishedStills();

 private:
  json read(const QString& name) const { return json::parse(workplace_->content(name).toStdString(), nullptr, false); }
  QStringList measure(const QString& record, const QString& output) const;
  static QString demo(const QString& name) { return QStringLiteral(FERRULE_SOURCE_DIR "/resources/demo/") + name; }
  std::unique_ptr<Workplace> workplace_;
};

void MainJobTest::initTestCase() {
  workplace_ = std::make_unique<Workplace>();
}

QStringList MainJobTest::measure(const QString& record, const QString& output) const {
  return {"measure",   demo("cut-with-follow.mp4"),
          "--rig",     "rig.json",
          "--table",   demo("table.json"),
          "--game",    "eight-ball",
          "--record",  record,
          "--session", "Evening",
          "--players", "Ada,Ben",
          "-o",        output};
}

void MainJobTest::theRigComesFromTheFilmAndTheDemosLens() {
  const Ended ended = workplace_->run({"calibrate", "rig", "--lens", demo("lens.json"), "--table", demo("table.json"),
                                       "--film", demo("cut-with-follow.mp4"), "-o", "rig.json"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QVERIFY2(ended.out.contains("verdict: fits"), qPrintable(ended.out));
  QCOMPARE(read("rig.json").value("format", ""), std::string("ferrule-rig/1"));
  QCOMPARE(read("rig.json").at("tags").size(), std::size_t{4});
  QCOMPARE(read("rig.json").at("noses").size(), std::size_t{6});
  QVERIFY(ended.words.isEmpty());
}

/// resources/demo/README.md: one shot, a cut with follow. Its ball and pocket are checked by the accuracy bench.
void MainJobTest::theFilmIsMeasuredIntoARecord() {
  const Ended ended = workplace_->run(measure("r.sqlite", "measured.json"));
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QVERIFY2(ended.progress.contains("measuring 100 %"), qPrintable(ended.progress.join('\n')));
  QVERIFY2(ended.words.contains("recorded as session \"Evening\" in r.sqlite"), qPrintable(ended.words.join('\n')));
  const json measured = read("measured.json");
  QCOMPARE(measured.value("format", ""), std::string("ferrule-measured/1"));
  QCOMPARE(measured.at("film").value("images", 0), 643);
  QCOMPARE(measured.at("shots").size(), std::size_t{1});
  const json& shot = measured.at("shots").front();
  QCOMPARE(shot.value("outcome", ""), std::string("pot"));
  QCOMPARE(shot.at("before").size(), std::size_t{6});
  QVERIFY2(ended.out.contains("pot"), qPrintable(ended.out));
  QVERIFY(QFile(workplace_->path("r.sqlite")).permissions() ==
          (QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ReadUser | QFileDevice::WriteUser));
}

void MainJobTest::theRecordIsExported() {
  const Ended ended = workplace_->run({"export", "--record", "r.sqlite", "-o", "out"});
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QCOMPARE(ended.out, QString("out/record.json\nout/shots.csv\n"));
  const json record = read("out/record.json");
  QVERIFY(!record.is_discarded());
  QCOMPARE(record.at("sessions").size(), std::size_t{1});
  const QList<QByteArray> lines = workplace_->content("out/shots.csv").split('\n');
  QCOMPARE(lines.size(), 3);         // header, one shot, nothing after the last line's end
  QVERIFY(lines[0].endsWith('\r'));  // Source: RFC 4180, section 2
  QCOMPARE(lines[1].count(','), lines[0].count(','));
}

void MainJobTest::theSameFilmIsRefusedAndChangesNothing() {
  QVERIFY(workplace_->run({"export", "--record", "r.sqlite", "-o", "before"}).status == 0);
  const QByteArray measured = workplace_->content("measured.json");
  const Ended ended = workplace_->run(measure("r.sqlite", "measured.json"));
  QCOMPARE(ended.status, 1);
  QCOMPARE(ended.words, QStringList{demo("cut-with-follow.mp4") + " is already in the record as session \"Evening\"; "
                                                                  "add --again to measure it once more beside it."});
  QVERIFY(ended.out.isEmpty());
  QVERIFY(workplace_->run({"export", "--record", "r.sqlite", "-o", "after"}).status == 0);
  QCOMPARE(workplace_->content("after/record.json"), workplace_->content("before/record.json"));
  QCOMPARE(workplace_->content("measured.json"), measured);
}

void MainJobTest::againStandsBesideTheFirst() {
  const Ended ended = workplace_->run(measure("r.sqlite", "again.json") << "--again");
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QVERIFY2(ended.words.join('\n').contains("was already in the record as session \"Evening\""),
           qPrintable(ended.words.join('\n')));
  // The same film gives the same digits.
  QCOMPARE(workplace_->content("again.json"), workplace_->content("measured.json"));
  QVERIFY(workplace_->run({"export", "--record", "r.sqlite", "-o", "both"}).status == 0);
  QCOMPARE(read("both/record.json").at("sessions").size(), std::size_t{2});
}

void MainJobTest::stoppedHalfWayNothingIsHalfWritten() {
  const Ended ended = workplace_->runAndSignal(measure("stopped.sqlite", "stopped.json"), SIGINT);
  QCOMPARE(ended.status, 1);
  QVERIFY2(ended.words.join('\n').contains("Stopped before the end"), qPrintable(ended.words.join('\n')));
  QVERIFY(!QFile::exists(workplace_->path("stopped.json")));
  const Ended exported = workplace_->run({"export", "--record", "stopped.sqlite", "-o", "stopped"});
  QVERIFY2(exported.status == 0, qPrintable(exported.words.join('\n')));
  for (const QString& file : workplace_->files())
    QVERIFY2(!file.contains("part") && !file.contains("tmp"), qPrintable(file));
}

/// Source: OpenCV's own board images; tests/data/opencv-boards/README.md. The published mean error of its own result
/// (left_intrinsics.yml) is 0.3926 px with a wider corner window.
void MainJobTest::aLensComesFromPublishedStills() {
  QStringList words{"calibrate", "lens", "--board", "chessboard:9x6:25"};
  const QDir boards(dataPath("opencv-boards"));
  for (const QString& still : boards.entryList({"*.jpg"}, QDir::Files, QDir::Name))
    words << boards.filePath(still);
  const Ended ended = workplace_->run(words << "--coverage"
                                            << "coverage.png"
                                            << "-o"
                                            << "lens.json");
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  const json lens = read("lens.json");
  QCOMPARE(lens.value("format", ""), std::string("ferrule-lens/1"));
  QVERIFY(lens.value("rms_px", 9.0) < 0.3926);
  QVERIFY(workplace_->content("coverage.png").startsWith("\x89PNG"));
}

FERRULE_TEST(MainJobTest)
#include "main_job_test.moc"
