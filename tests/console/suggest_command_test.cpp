// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/suggest_command.h"

#include <QTemporaryDir>
#include <QtTest>
#include <nlohmann/json.hpp>

#include "core/base/text_file.h"
#include "core/record/record.h"
#include "tests/console/call.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class SuggestCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void aSuggestedPlanPlaysAsSuggested();
  void aPlayerWithoutShotsGetsThePrior();
  void badInputEndsWithOneAndWritesNothing_data();
  void badInputEndsWithOneAndWritesNothing();
};

namespace {

using Json = nlohmann::json;

/// An invented position.
const std::string kPosition = R"({
 "table": "9ft",
 "balls": [{"ball": "cue", "x_mm": -500, "y_mm": -200}, {"ball": "1", "x_mm": 400, "y_mm": 300},
           {"ball": "2", "x_mm": -800, "y_mm": 400}, {"ball": "8", "x_mm": 900, "y_mm": -100},
           {"ball": "9", "x_mm": 300, "y_mm": -400}],
 "game": "eight-ball", "group": "solids", "player": {"aim_sd_deg": 0.1, "speed_sd": 0.04, "tip_sd": 0.02}})";

std::string put(const QTemporaryDir& folder, const char* name, const std::string& text) {
  const std::string path = folder.filePath(name).toStdString();
  if (!writeTextFile(path, text)) qFatal("the temporary folder cannot be written");
  return path;
}

}  // namespace

void SuggestCommandTest::aSuggestedPlanPlaysAsSuggested() {
  const QTemporaryDir folder;
  const std::string position = put(folder, "position.json", kPosition);
  const std::string out = folder.filePath("plans.json").toStdString();
  QCOMPARE(
      call({"suggest", position, "--seconds", "60", "-o", out, "--picture", folder.filePath("plan.svg").toStdString()}),
      0);
  QVERIFY(QFile::exists(folder.filePath("plan.svg")));
  const Json plans = Json::parse(*readTextFile(out));
  QCOMPARE(plans.at("format").get<std::string>(), std::string("ferrule-suggested/1"));
  const Json& best = plans.at("plans").at(0);
  QCOMPARE(best.at("rank").get<int>(), 1);
  QVERIFY(best.at("pot_chance").get<double>() > 0.5);
  QVERIFY(!best.at("why").get<std::string>().empty());
  // Fed to simulate, the plan pots its ball in its pocket.
  Json shot = Json::parse(kPosition);
  for (const char* field : {"aim_deg", "speed_m_s", "side", "height", "elevation_deg"})
    shot["strike"][field] = best.at(field);
  const std::string outcome = folder.filePath("outcome.json").toStdString();
  QCOMPARE(call({"simulate", put(folder, "shot.json", shot.dump()), "-o", outcome}), 0);
  bool potted = false;
  const Json played = Json::parse(*readTextFile(outcome));
  for (const Json& ball : played.at("after")) {
    if (ball.at("ball") == best.at("ball")) potted = ball.value("pocket", "") == best.at("pocket").get<std::string>();
  }
  QVERIFY(potted);
}

void SuggestCommandTest::aPlayerWithoutShotsGetsThePrior() {
  const QTemporaryDir folder;
  const std::string path = folder.filePath("club.sqlite").toStdString();
  {
    auto record = Record::open(path);
    QVERIFY(record.has_value());
    Player player;
    player.name = "Invented player";
    QVERIFY(record->addPlayer(player).has_value());
  }
  Json position = Json::parse(kPosition);
  position.erase("player");
  const std::string file = put(folder, "position.json", position.dump());
  const std::string out = folder.filePath("plans.json").toStdString();
  QCOMPARE(call({"suggest", file, "--record", path, "--player", "Invented player", "--level", "beginner", "--seconds",
                 "60", "-o", out}),
           0);
  QCOMPARE(Json::parse(*readTextFile(out)).at("scatter").at("aim_deg").get<double>(), 0.45);
  QCOMPARE(call({"suggest", file, "--record", path, "--player", "Nobody", "-o", out}), 1);
}

void SuggestCommandTest::badInputEndsWithOneAndWritesNothing_data() {
  QTest::addColumn<QString>("piece");
  QTest::addColumn<QString>("other");
  const auto row = [](const char* name, const char* piece, const char* other) {
    QTest::newRow(name) << QString(piece) << QString(other);
  };
  row("unknown game", "eight-ball", "nineteen-ball");
  row("unknown group", "solids", "spots");
  row("no cue ball", "\"cue\"", "\"5\"");
  row("a ball twice", "\"ball\": \"2\"", "\"ball\": \"1\"");
  row("overlap", "\"x_mm\": 900, \"y_mm\": -100", "\"x_mm\": 310, \"y_mm\": -390");
  row("outside", "\"y_mm\": 300", "\"y_mm\": 900");
  row("only the opponent's ball", "\"ball\": \"1\", \"x_mm\": 400, \"y_mm\": 300}, {\"ball\": \"2\"",
      "\"ball\": \"10\"");
}

void SuggestCommandTest::badInputEndsWithOneAndWritesNothing() {
  QFETCH(QString, piece);
  QFETCH(QString, other);
  QString text = QString::fromStdString(kPosition).simplified();
  if (QString(QTest::currentDataTag()) == "only the opponent's ball") {
    // No solid and no eight: nothing may be played.
    text = R"({"table": "9ft", "balls": [{"ball": "cue", "x_mm": 0, "y_mm": 0}, {"ball": "9", "x_mm": 300, "y_mm": 0}],
               "game": "eight-ball", "group": "solids"})";
  } else {
    QVERIFY(text.contains(piece));
    text.replace(text.indexOf(piece), piece.size(), other);
  }
  const QTemporaryDir folder;
  const std::string out = folder.filePath("plans.json").toStdString();
  QCOMPARE(call({"suggest", put(folder, "position.json", text.toStdString()), "-o", out}), 1);
  QVERIFY(!QFile::exists(QString::fromStdString(out)));
}

FERRULE_TEST(SuggestCommandTest)
#include "suggest_command_test.moc"
