// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <nlohmann/json.hpp>

#include "tests/console/program.h"
#include "tests/console/refusal.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using nlohmann::json;

/// "Does this rig belong to this film?", as an owner asks it in a shell.
class CheckCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void aSoundRigEndsWithNoughtAndDrawsItsMap();
  void aForgottenTagHeightEndsWithOneAndItsCure();
  void aShotSaysWhatToImproveFirst();
  void aRigComesFromTheCushionsAlone();
  void aFilmOfAnotherSizeIsNamedAtOnce();
  void aFilmWithoutATableIsRefused();
  void aShotThatCannotBeUnderstoodIsAWrongCall();

 private:
  static QStringList check(const QString& table, const QStringList& more = {}) {
    return QStringList{"check", "--rig",  dataPath("clip/rig.json"),     "--table",
                       table,   "--film", dataPath("clip/stop-shot.mp4")} +
           more;
  }
  std::unique_ptr<Workplace> workplace_;
};

void CheckCommandTest::init() {
  workplace_ = std::make_unique<Workplace>();
}

void CheckCommandTest::aSoundRigEndsWithNoughtAndDrawsItsMap() {
  const Ended ended = workplace_->run(check(dataPath("clip/table.json"), {"-o", "check.json", "--map", "map.png"}));
  QVERIFY2(ended.status == 0, qPrintable(ended.out + ended.words.join('\n')));
  QVERIFY2(ended.out.contains("verdict: fits"), qPrintable(ended.out));
  QVERIFY2(ended.out.contains("Tag 0: from its place"), qPrintable(ended.out));
  QVERIFY(!ended.out.contains("too much"));
  QVERIFY(workplace_->content("map.png").startsWith("\x89PNG"));
  const json file = json::parse(workplace_->content("check.json").toStdString(), nullptr, false);
  QCOMPARE(file.value("format", ""), std::string("ferrule-check/1"));
  QCOMPARE(file.value("verdict", ""), std::string("fits"));
}

void CheckCommandTest::aForgottenTagHeightEndsWithOneAndItsCure() {
  QFile file(dataPath("clip/table.json"));
  QVERIFY(file.open(QIODevice::ReadOnly));
  QByteArray table = file.readAll();
  QVERIFY(table.contains("\"tag_height_above_cloth\":38.4"));
  workplace_->write("table.json", table.replace("\"tag_height_above_cloth\":38.4", "\"tag_height_above_cloth\":0"));
  const Ended ended = workplace_->run(check("table.json"));
  QCOMPARE(ended.status, 1);
  QVERIFY2(ended.out.contains("verdict: tag height wrong"), qPrintable(ended.out));
  QVERIFY2(ended.out.contains("38 mm higher than table.json says"), qPrintable(ended.out));
  QVERIFY2(ended.out.contains("too much"), qPrintable(ended.out));
}

void CheckCommandTest::aShotSaysWhatToImproveFirst() {
  const Ended ended = workplace_->run(check(dataPath("clip/table.json"), {"--shot", "0,-300,600,200,foot-left"}));
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QVERIFY2(ended.out.contains("shot: cut 6.6 deg"), qPrintable(ended.out));
  QVERIFY2(ended.out.contains("improve first: finder"), qPrintable(ended.out));
}

void CheckCommandTest::aRigComesFromTheCushionsAlone() {
  const Ended made = workplace_->run(
      {"calibrate", "rig", "--no-tags", "--table", "8ft", "--film", dataPath("clip/stop-shot.mp4"), "-o", "rig.json"});
  QVERIFY2(made.status == 0, qPrintable(made.words.join('\n')));
  QVERIFY2(made.out.contains("a ball lies within"), qPrintable(made.out));
  const Ended checked = workplace_->run(
      {"check", "--rig", "rig.json", "--table", dataPath("clip/table.json"), "--film", dataPath("clip/stop-shot.mp4")});
  QVERIFY2(checked.out.contains("verdict: "), qPrintable(checked.out));
}

void CheckCommandTest::aFilmOfAnotherSizeIsNamedAtOnce() {
  workplace_->writeEmptyCloth("small.avi", 640, 360, 5);
  const Ended ended = workplace_->run(
      {"check", "--rig", dataPath("clip/rig.json"), "--table", dataPath("clip/table.json"), "--film", "small.avi"});
  QCOMPARE(ended.status, 1);
  QVERIFY2(ended.out.contains("verdict: wrong image size"), qPrintable(ended.out));
  QVERIFY2(ended.out.contains("0.500 times"), qPrintable(ended.out));
}

void CheckCommandTest::aFilmWithoutATableIsRefused() {
  workplace_->writeEmptyCloth("cloth.avi", 1280, 720, 40);
  FERRULE_VERIFY_REFUSED(*workplace_,
                         (QStringList{"check", "--rig", dataPath("clip/rig.json"), "--table",
                                      dataPath("clip/table.json"), "--film", "cloth.avi"}),
                         "cloth.avi", "uncover or light them");
}

void CheckCommandTest::aShotThatCannotBeUnderstoodIsAWrongCall() {
  QCOMPARE(workplace_->run(check(dataPath("clip/table.json"), {"--shot", "0,0,1,1,middle"})).status, 2);
}

FERRULE_TEST(CheckCommandTest)
#include "check_command_test.moc"
