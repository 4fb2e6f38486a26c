// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QtTest>
#include <nlohmann/json.hpp>

#include "tests/console/refusal.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Boards, lenses, rigs and tables that cannot be used, and calls that cannot be understood.
class BadLensAndTableTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void stillsWithoutTheBoardAreRefused();
  void oneStillIsTooFew();
  void aStillThatIsNoneIsNamed_data();
  void aStillThatIsNoneIsNamed();
  void aTableThatCannotBeUsedIsRefused_data();
  void aTableThatCannotBeUsedIsRefused();
  void aTableWithTwoTagsMakesNoRig();
  void aRigThatCannotBeUsedIsRefused_data();
  void aRigThatCannotBeUsedIsRefused();
  void aLensThatCannotBeUsedIsRefused();
  void anotherCamerasLensIsSaidInOneSentence();
  void anOutputWithoutItsFolderIsRefused();
  void aWrongCallSaysWhatIsMissing_data();
  void aWrongCallSaysWhatIsMissing();

 private:
  QStringList calibrateLens(const QString& board, const QStringList& stills) const;
  QStringList calibrateRig(const QString& lens, const QString& table) const;
  QStringList measure(const QString& rig, const QString& table, const QString& output) const;
  std::unique_ptr<Workplace> workplace_;
};

void BadLensAndTableTest::init() {
  workplace_ = std::make_unique<Workplace>();
}

QStringList BadLensAndTableTest::calibrateLens(const QString& board, const QStringList& stills) const {
  return QStringList{"calibrate", "lens", "--board", board} + stills + QStringList{"-o", "lens.json"};
}

QStringList BadLensAndTableTest::calibrateRig(const QString& lens, const QString& table) const {
  return {"calibrate", "rig",     "--lens", lens, "--table", table, "--film", dataPath("clip/stop-shot.mp4"),
          "-o",        "rig.json"};
}

QStringList BadLensAndTableTest::measure(const QString& rig, const QString& table, const QString& output) const {
  return {"measure", dataPath("clip/stop-shot.mp4"), "--rig", rig, "--table", table, "--record", "r.sqlite", "-o",
          output};
}

void BadLensAndTableTest::stillsWithoutTheBoardAreRefused() {
  const QString board = "charuco:8x6:40:30:DICT_5X5_100";
  FERRULE_VERIFY_REFUSED(
      *workplace_, calibrateLens(board, {dataPath("opencv-boards/left01.jpg"), dataPath("opencv-boards/left02.jpg")}),
      board, "check its counts");
}

void BadLensAndTableTest::oneStillIsTooFew() {
  FERRULE_VERIFY_REFUSED(*workplace_, calibrateLens("chessboard:9x6:25", {dataPath("opencv-boards/left01.jpg")}),
                         "chessboard:9x6:25", "take more");
}

void BadLensAndTableTest::aStillThatIsNoneIsNamed_data() {
  QTest::addColumn<QString>("still");
  QTest::addColumn<QByteArray>("content");
  QTest::addColumn<QString>("whatToDo");
  QTest::newRow("missing") << "missing.jpg" << QByteArray() << "check the path";
  QTest::newRow("empty") << "empty.jpg" << QByteArray("") << "copy or export it again";
  QTest::newRow("text") << "text.jpg" << QByteArray("no picture\n") << "export it again as JPEG or PNG";
}

void BadLensAndTableTest::aStillThatIsNoneIsNamed() {
  QFETCH(QString, still);
  QFETCH(QByteArray, content);
  QFETCH(QString, whatToDo);
  if (!content.isNull()) workplace_->write(still, content);
  FERRULE_VERIFY_REFUSED(*workplace_, calibrateLens("chessboard:9x6:25", {dataPath("opencv-boards/left01.jpg"), still}),
                         still, whatToDo);
}

void BadLensAndTableTest::aTableThatCannotBeUsedIsRefused_data() {
  QTest::addColumn<QByteArray>("from");  // in the sound table's text; null: the whole text
  QTest::addColumn<QByteArray>("to");
  QTest::addColumn<QString>("names");
  QTest::addColumn<QString>("whatToDo");
  QTest::newRow("empty") << QByteArray() << QByteArray("") << "table.json is empty"
                         << "copy or export it again";
  QTest::newRow("text") << QByteArray() << QByteArray("nine feet\n") << "table.json"
                        << "make it again or correct it";
  QTest::newRow("list") << QByteArray() << QByteArray("[1, 2]\n") << "table.json"
                        << "make it again or correct it";
  QTest::newRow("no width") << QByteArray("\"table_width_nose_to_nose\":1118,") << QByteArray("")
                            << "table.json has no value for \"table_width_nose_to_nose\""
                            << "add it";
  QTest::newRow("absurd ball") << QByteArray("\"ball_diameter\":57.15") << QByteArray("\"ball_diameter\":571.5")
                               << "table.json gives 571.5 for \"ball_diameter\""
                               << "measure it again";
  QTest::newRow("metres for millimetres") << QByteArray("nose_to_nose\":2235") << QByteArray("nose_to_nose\":2.235")
                                          << "table.json gives 2.235 for \"table_length_nose_to_nose\""
                                          << "measure it again";
  QTest::newRow("a word for a number") << QByteArray("nose_to_nose\":2235") << QByteArray("nose_to_nose\":\"long\"")
                                       << "table.json has an unusable value for \"table_length_nose_to_nose\""
                                       << "correct it";
  QTest::newRow("a tag's corner missing") << QByteArray("[-1007.0,-625.5],") << QByteArray("") << "table.json"
                                          << "correct it";
}

void BadLensAndTableTest::aTableThatCannotBeUsedIsRefused() {
  QFETCH(QByteArray, from);
  QFETCH(QByteArray, to);
  QFETCH(QString, names);
  QFETCH(QString, whatToDo);
  QFile sound(dataPath("clip/table.json"));
  QVERIFY(sound.open(QIODevice::ReadOnly));
  QByteArray text = sound.readAll();
  if (from.isNull()) {
    text = to;
  } else {
    QVERIFY(text.contains(from));
    text.replace(from, to);
  }
  workplace_->write("table.json", text);
  FERRULE_VERIFY_REFUSED(*workplace_, measure(dataPath("clip/rig.json"), "table.json", "measured.json"), names,
                         whatToDo);
  FERRULE_VERIFY_REFUSED(*workplace_, calibrateRig(dataPath("clip/lens.json"), "table.json"), names, whatToDo);
}

void BadLensAndTableTest::aTableWithTwoTagsMakesNoRig() {
  QFile sound(dataPath("clip/table.json"));
  QVERIFY(sound.open(QIODevice::ReadOnly));
  QByteArray text = sound.readAll();
  // Leaves the tags 0 and 1.
  const auto third = text.indexOf("{\"id\":2");
  QVERIFY(third > 0);
  text = text.left(text.lastIndexOf(',', third)) + "]}\n";
  workplace_->write("two.json", text);
  FERRULE_VERIFY_REFUSED(*workplace_, calibrateRig(dataPath("clip/lens.json"), "two.json"),
                         "two.json lists 2 tags and 3 are needed", "measure the tags into a table file");
}

void BadLensAndTableTest::aRigThatCannotBeUsedIsRefused_data() {
  QTest::addColumn<QByteArray>("content");
  QTest::addColumn<QString>("names");
  QTest::addColumn<QString>("whatToDo");
  QTest::newRow("missing") << QByteArray() << "no file rig.json"
                           << "check the path";
  QTest::newRow("empty") << QByteArray("") << "rig.json is empty"
                         << "copy or export it again";
  QTest::newRow("text") << QByteArray("a rig\n") << "rig.json"
                        << "make it again";
  QTest::newRow("no pose") << QByteArray(R"({"format": "ferrule-rig/1", "lens": {}, "chain": []})")
                           << "rig.json has no value for \"pose\""
                           << "add it";
  QTest::newRow("a lens") << QByteArray(R"({"format": "ferrule-lens/1"})") << "rig.json"
                          << "not a rig file";
}

void BadLensAndTableTest::aRigThatCannotBeUsedIsRefused() {
  QFETCH(QByteArray, content);
  QFETCH(QString, names);
  QFETCH(QString, whatToDo);
  if (!content.isNull()) workplace_->write("rig.json", content);
  FERRULE_VERIFY_REFUSED(*workplace_, measure("rig.json", dataPath("clip/table.json"), "measured.json"), names,
                         whatToDo);
}

void BadLensAndTableTest::aLensThatCannotBeUsedIsRefused() {
  FERRULE_VERIFY_REFUSED(*workplace_, calibrateRig("none.json", dataPath("clip/table.json")), "no file none.json",
                         "check the path");
  workplace_->write("lens.json", R"({"format": "ferrule-lens/1", "image_size": [1280, 720]})");
  FERRULE_VERIFY_REFUSED(*workplace_, calibrateRig("lens.json", dataPath("clip/table.json")), "lens.json has no value",
                         "add it");
}

/// The film's own lens bends by k1 = -0.28 (lens.json); this one bends far less.
void BadLensAndTableTest::anotherCamerasLensIsSaidInOneSentence() {
  QFile sound(dataPath("clip/lens.json"));
  QVERIFY(sound.open(QIODevice::ReadOnly));
  nlohmann::json lens = nlohmann::json::parse(sound.readAll().toStdString());
  lens["coefficients"]["k1"] = -0.18;
  lens["coefficients"]["k2"] = 0.04;
  workplace_->write("other.json", QByteArray::fromStdString(lens.dump()));
  const Ended ended = workplace_->run(calibrateRig("other.json", dataPath("clip/table.json")));
  QCOMPARE(ended.status, 0);
  QVERIFY2(ended.out.contains("verdict: noses bent"), qPrintable(ended.out));
  QCOMPARE(ended.words.size(), 1);
  QVERIFY2(ended.words.first().startsWith("other.json leaves the straight noses of"), qPrintable(ended.words.first()));
  QVERIFY2(ended.words.first().endsWith("calibrate a lens for this film."), qPrintable(ended.words.first()));
}

void BadLensAndTableTest::anOutputWithoutItsFolderIsRefused() {
  FERRULE_VERIFY_REFUSED(*workplace_,
                         measure(dataPath("clip/rig.json"), dataPath("clip/table.json"), "nowhere/measured.json"),
                         "nowhere/measured.json cannot be written", "choose another folder");
}

void BadLensAndTableTest::aWrongCallSaysWhatIsMissing_data() {
  QTest::addColumn<QStringList>("words");
  QTest::addColumn<QString>("says");
  QTest::newRow("no such command") << QStringList{"polish"} << "polish";
  QTest::newRow("no film") << QStringList{"measure"} << "FILM is required";
  QTest::newRow("no rig") << QStringList{"measure", "film.mp4"} << "--rig is required";
  QTest::newRow("unknown game") << QStringList{"measure", "film.mp4", "--rig", "r", "--table", "9ft", "--game", "chess"}
                                << "chess";
  QTest::newRow("unknown option") << QStringList{"export", "--record", "r", "-o", "d", "--loud"} << "--loud";
  QTest::newRow("session without record")
      << QStringList{"measure", "film.mp4", "--rig", "r", "--table", "9ft", "--session", "S"} << "--record";
  QTest::newRow("calibrate what") << QStringList{"calibrate"} << "subcommand";
}

void BadLensAndTableTest::aWrongCallSaysWhatIsMissing() {
  QFETCH(QStringList, words);
  QFETCH(QString, says);
  const Ended ended = workplace_->run(words);
  QCOMPARE(ended.status, 2);
  QVERIFY(ended.out.isEmpty());
  QVERIFY2(ended.words.join('\n').contains(says), qPrintable(ended.words.join('\n')));
  QCOMPARE(workplace_->files(), QStringList());
}

FERRULE_TEST(BadLensAndTableTest)
#include "bad_lens_and_table_test.moc"
