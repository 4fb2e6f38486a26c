// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill_file.h"

#include <QTemporaryDir>
#include <QtTest>

#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

namespace {

std::string withStation(const std::string& station) {
  return R"({"format": "ferrule-drills/1", "drills": [{"key": "mine", "stations": [)" + station + "]}]}";
}

Error refusalOf(const std::string& text) {
  const auto drills = parseDrills(text, "mine.json");
  return drills ? Error{ErrorCode::Cancelled, "none", {}, {}} : drills.error();
}

/// Every field with a value that is not its default.
Drill fullDrill() {
  Drill drill = cutDrill();
  drill.title = "Übung mit „Anführung“";
  drill.text = "Two lines\nof text";
  drill.tags = {"cut", "my own"};
  drill.cautions = {DrillCaution::Jump, DrillCaution::Break};
  drill.order = StationOrder::InTurn;
  drill.turnsRound = false;
  DrillStation& station = drill.stations[0];
  station.balls[0].frozen = CushionName::Foot;
  station.loose = LooseBalls{4, 0.2};
  station.rack = DrillRack::NineBall;
  station.cueBallZone = Zone{{{0.25, 0.5}, {0.5, 0.5}}, 0.1};
  station.goals = {{GoalKind::Pot, BallName(1), PocketName::HeadRight, {CushionName::LeftFoot, CushionName::Head}},
                   {GoalKind::AngleLeft, BallName(2), PocketName::SideLeft, {}, Zone{{{1.0, 0.5}}, 0.25}, 0.25, 0.75},
                   {GoalKind::ComesBack, {}, {}, {CushionName::Foot}, {}, 0.0, 0.0, 0.045}};
  station.trials = 7;
  station.isRun = true;
  station.asked.speed_mps = 1.5;
  station.asked.side = -0.25;
  station.asked.height = 0.4;
  return drill;
}

}  // namespace

class DrillFileTest : public QObject {
  Q_OBJECT
 private slots:
  void whatIsWrittenIsReadAgain();
  void theBuiltInOnesComeBackThroughAFile();
  void aFileThatIsNoneIsRefused_data();
  void aFileThatIsNoneIsRefused();
  void aFieldAmissIsNamedWithItsPlace_data();
  void aFieldAmissIsNamedWithItsPlace();
  void notesAreSkipped();
};

void DrillFileTest::whatIsWrittenIsReadAgain() {
  const std::vector<Drill> drills{fullDrill(), cutDrill()};
  const auto again = parseDrills(drillsText(drills), "mine.json");
  QVERIFY(again.has_value());
  QCOMPARE(again->size(), std::size_t{2});
  QVERIFY(std::abs((*again)[0].stations[0].goals[1].least_rad - 0.25) < 1e-15);
  // Degrees and back may change the last digit of an angle.
  auto exact = *again;
  exact[0].stations[0].goals[1].least_rad = 0.25;
  exact[0].stations[0].goals[1].most_rad = 0.75;
  QVERIFY(exact == drills);
}

void DrillFileTest::theBuiltInOnesComeBackThroughAFile() {
  const QTemporaryDir folder;
  const std::string path = folder.filePath("all.json").toStdString();
  QVERIFY(writeDrills(path, builtInDrills()).has_value());
  const auto again = readDrills(path);
  QVERIFY(again.has_value());
  QCOMPARE(again->size(), builtInDrills().size());
  for (std::size_t i = 0; i < again->size(); ++i)
    QCOMPARE(setUpOf((*again)[i].stations[0], nineFoot()), setUpOf(builtInDrills()[i].stations[0], nineFoot()));
  QCOMPARE(readDrills(folder.filePath("none.json").toStdString()).error().code, ErrorCode::FileMissing);
}

void DrillFileTest::aFileThatIsNoneIsRefused_data() {
  QTest::addColumn<QString>("text");
  QTest::addColumn<QString>("detail");
  QTest::newRow("not JSON") << "{\n\"format\": oops"
                            << "line 2";
  QTest::newRow("a list") << "[1, 2]"
                          << "not a JSON object";
  QTest::newRow("a number beyond every double") << R"({"format": 1e999})"
                                                << "a value that cannot be read";
}

void DrillFileTest::aFileThatIsNoneIsRefused() {
  QFETCH(QString, text);
  QFETCH(QString, detail);
  const Error error = refusalOf(text.toStdString());
  QCOMPARE(error.code, ErrorCode::FileMalformed);
  QCOMPARE(error.subject, std::string("mine.json"));
  QCOMPARE(QString::fromStdString(error.detail), detail);
}

void DrillFileTest::aFieldAmissIsNamedWithItsPlace_data() {
  QTest::addColumn<QString>("text");
  QTest::addColumn<int>("code");
  QTest::addColumn<QString>("field");
  const auto row = [](const char* name, const std::string& text, ErrorCode code, const char* field) {
    QTest::newRow(name) << QString::fromStdString(text) << static_cast<int>(code) << QString::fromLatin1(field);
  };
  const std::string goals = R"("goals": [{"kind": "clear"}])";
  row("no format", R"({"drills": []})", ErrorCode::FieldMissing, "format");
  row("another format", R"({"format": "ferrule-drills/9", "drills": []})", ErrorCode::FieldInvalid, "format");
  row("no drills", R"({"format": "ferrule-drills/1"})", ErrorCode::FieldMissing, "drills");
  row("a drill that is a word", R"({"format": "ferrule-drills/1", "drills": ["lag"]})", ErrorCode::FieldInvalid,
      "drills[0]");
  row("no key", R"({"format": "ferrule-drills/1", "drills": [{"stations": []}]})", ErrorCode::FieldMissing,
      "drills[0].key");
  row("no stations", R"({"format": "ferrule-drills/1", "drills": [{"key": "a"}]})", ErrorCode::FieldMissing,
      "drills[0].stations");
  row("no goals", withStation("{}"), ErrorCode::FieldMissing, "drills[0].stations[0].goals");
  row("an unknown goal", withStation(R"({"goals": [{"kind": "win"}]})"), ErrorCode::FieldInvalid,
      "drills[0].stations[0].goals[0].kind");
  row("an unknown pocket", withStation(R"({"goals": [{"kind": "pot", "pocket": "middle"}]})"), ErrorCode::FieldInvalid,
      "drills[0].stations[0].goals[0].pocket");
  row("a place off the table", withStation(R"({"cue_ball": {"place": [9, 0.5]}, )" + goals + "}"),
      ErrorCode::FieldInvalid, "drills[0].stations[0].cue_ball.place");
  row("a place of one number", withStation(R"({"cue_ball": {"place": [1]}, )" + goals + "}"), ErrorCode::FieldInvalid,
      "drills[0].stations[0].cue_ball.place");
  row("a cue ball as object ball", withStation(R"({"balls": [{"ball": "cue", "place": [1, 0.5]}], )" + goals + "}"),
      ErrorCode::FieldInvalid, "drills[0].stations[0].balls[0].ball");
  row("half a trial", withStation(R"({"trials": 0.5, )" + goals + "}"), ErrorCode::FieldInvalid,
      "drills[0].stations[0].trials");
  row("a zone without corners", withStation(R"({"goals": [{"kind": "rest", "zone": {"corners": []}}]})"),
      ErrorCode::FieldInvalid, "drills[0].stations[0].goals[0].zone.corners");
}

void DrillFileTest::aFieldAmissIsNamedWithItsPlace() {
  QFETCH(QString, text);
  QFETCH(int, code);
  QFETCH(QString, field);
  const Error error = refusalOf(text.toStdString());
  QCOMPARE(static_cast<int>(error.code), code);
  QCOMPARE(error.subject, std::string("mine.json"));
  QCOMPARE(QString::fromStdString(error.detail), field);
}

void DrillFileTest::notesAreSkipped() {
  const auto drills = parseDrills(withStation(R"({"author": 7, "goals": [{"kind": "said", "why": []}]})"), "mine.json");
  QVERIFY(drills.has_value());
  QCOMPARE(drills->front().stations.front().trials, 10);
}

FERRULE_TEST(DrillFileTest)
#include "drill_file_test.moc"
