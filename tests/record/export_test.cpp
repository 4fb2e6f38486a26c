// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/export_record.h"

#include <QProcess>
#include <QtTest>
#include <clocale>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/base/csv.h"
#include "core/base/text_file.h"
#include "core/record/drill_rows.h"
#include "core/record/export_writers.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using nlohmann::json;

namespace {

/// Fields of the first record of a text, by RFC 4180, section 2; rest becomes what follows it. Written for the test.
std::vector<std::string> takeCsvRecord(std::string& text) {
  std::vector<std::string> fields(1);
  bool quoted = false;
  std::size_t i = 0;
  for (; i < text.size(); ++i) {
    const char letter = text[i];
    if (quoted) {
      if (letter == '"' && i + 1 < text.size() && text[i + 1] == '"') {
        fields.back() += '"';
        ++i;
      } else if (letter == '"') {
        quoted = false;
      } else {
        fields.back() += letter;
      }
    } else if (letter == '"') {
      quoted = true;
    } else if (letter == ',') {
      fields.emplace_back();
    } else if (letter == '\r' && text.substr(i, 2) == "\r\n") {
      i += 2;
      break;
    } else {
      fields.back() += letter;
    }
  }
  text.erase(0, i);
  return fields;
}

const std::string kAwkward = "Ada \"the rail\"; fast, slow\nnext line";

/// A record with two players' shots, a note, a tag and corrections.
void fill(Record& record) {
  const auto game = sample::addGame(record);
  const RulingEntry ruling{Verdict::Ask, {"scratch", "wrong-ball-first"}, R"({"game": "eight-ball"})"};
  const auto one = record.appendShot(game.frame, sample::explainedShot(1), sample::tracks(1), game.ada, ruling).value();
  const auto two = record.appendShot(game.frame, sample::shot(2), sample::tracks(2), game.ben).value();
  (void)record.addNote(one, kAwkward, "Cleo", 1'760'000'000'000).value();
  (void)record.addTag(one, "thin").has_value();
  (void)record.correctShot(two, ShotField::Player, "Ada", "Cleo", 5).value();
  (void)record.correctShot(two, ShotField::Player, "Ben", "Cleo", 6).value();
  (void)record.addPlacement(game.frame, {kCueBall, 31.5, {-0.6, 0.1}}).has_value();
  (void)record.completeFrame(game.frame).has_value();
  (void)record.keepDrill({"mine", R"({"drills": []})"}, 7).has_value();
  for (const PlayerId player : {game.ada, game.ben}) {
    NewDrillRun run{"mine", R"({"drills": []})", "sides", "club", sample::table(), player, std::nullopt, 1000};
    const DrillRunId id = record.addDrillRun(run).value();
    (void)record
        .appendTrial(id, {1,
                          TablePoint{0.25, -0.1},
                          MissSide::Over,
                          0.0125,
                          std::nullopt,
                          {{true, std::nullopt}, {std::nullopt, 0.5}}})
        .has_value();
  }
}

}  // namespace

class ExportTest : public QObject {
  Q_OBJECT
 private slots:
  void fieldsAreQuotedByTheRfc();
  void everyShotIsOneCsvRowUnderNamedUnits();
  void theJsonHoldsEverything();
  void drillsAndTheirRunsAreExported();
  void aPlayerIsExportedAlone();
  void anUnknownPlayerIsNamed();
  void theSameRecordGivesTheSameBytes();
  void aGermanLocaleGivesTheSameBytes();
  void timesAreUtcAcrossTheChangeOfClocks();
};

/// RFC 4180, section 2, rules 5 to 7.
void ExportTest::fieldsAreQuotedByTheRfc() {
  QCOMPARE(csvField("plain"), std::string("plain"));
  QCOMPARE(csvField(""), std::string(""));
  QCOMPARE(csvField("a,b"), std::string("\"a,b\""));
  QCOMPARE(csvField("say \"hi\""), std::string("\"say \"\"hi\"\"\""));
  QCOMPARE(csvField("two\nlines"), std::string("\"two\nlines\""));
  QCOMPARE(csvField("cr\rlf"), std::string("\"cr\rlf\""));
}

void ExportTest::everyShotIsOneCsvRowUnderNamedUnits() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  fill(record);
  const auto report = exportRecord(record, {folder.file("out"), std::nullopt});
  QVERIFY(report.has_value());
  QCOMPARE(report->shots, 2);
  std::string text = *readTextFile(folder.file("out/shots.csv"));
  const auto header = takeCsvRecord(text);
  const auto first = takeCsvRecord(text);
  const auto second = takeCsvRecord(text);
  QVERIFY(text.empty());
  QCOMPARE(first.size(), header.size());
  QCOMPARE(second.size(), header.size());
  const auto value = [&](const std::vector<std::string>& row, const char* column) {
    const auto found = std::ranges::find(header, column);
    return found == header.end() ? std::string("no such column")
                                 : row[static_cast<std::size_t>(found - header.begin())];
  };
  QCOMPARE(value(first, "session"), std::string("Evening"));
  QCOMPARE(value(first, "player"), std::string("Ada"));
  // 1760000000 s is 2025-10-09 08:53:20 UTC (GNU date -u -d @1760000000); the strike is 10.25 s later.
  QCOMPARE(value(first, "struck_at_utc"), std::string("2025-10-09T08:53:30.250Z"));
  QCOMPARE(value(first, "strike_s"), std::string("10.25"));
  QCOMPARE(value(first, "aim_deg"), std::string("5.78687"));  // 0.101 rad
  QCOMPARE(value(first, "speed_m_s"), std::string("2.5"));
  QCOMPARE(value(first, "side_radii"), std::string("-0.125"));
  QCOMPARE(value(first, "height_radii"), std::string(""));
  QCOMPARE(value(first, "pocketed"), std::string("3:foot-right"));
  QCOMPARE(value(first, "scratch"), std::string("false"));
  QCOMPARE(value(first, "fouls"), std::string("scratch wrong-ball-first"));
  QCOMPARE(value(first, "ruling_sureness"), std::string("ask"));
  QCOMPARE(value(second, "fouls"), std::string(""));
  QCOMPARE(value(second, "ruling_sureness"), std::string(""));
  QCOMPARE(value(first, "notes"), kAwkward);
  QCOMPARE(value(first, "tags"), std::string("thin"));
  QCOMPARE(value(first, "corrected"), std::string("false"));
  QCOMPARE(value(second, "corrected"), std::string("true"));
}

void ExportTest::theJsonHoldsEverything() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  fill(record);
  QVERIFY(exportRecord(record, {folder.file("out"), std::nullopt}).has_value());
  const json all = json::parse(*readTextFile(folder.file("out/record.json")));
  QVERIFY(all["format"] == "ferrule-record/1");
  QCOMPARE(all["players"].size(), std::size_t{2});
  QVERIFY(all["players"][0]["handedness"] == "left");
  const json& session = all["sessions"][0];
  QVERIFY(session["players"] == json({"Ada", "Ben"}));
  QVERIFY(session["table"]["measured"]["table_length_nose_to_nose"] == 2235.0);
  const json& frame = session["frames"][0];
  QVERIFY(frame["complete"] == true);
  QVERIFY(frame["film"]["sha256"] == std::string(64, 'a'));
  QVERIFY(frame["rig"]["verdict"] == "fits");
  QCOMPARE(frame["placements"].size(), std::size_t{1});
  QCOMPARE(frame["shots"].size(), std::size_t{2});
  const json& shot = frame["shots"][0];
  QVERIFY(shot["player"] == "Ada");
  QVERIFY(shot["verdict"] == "proposed");
  QVERIFY(shot["notes"][0]["text"] == kAwkward);
  QVERIFY(shot["tags"] == json::array({"thin"}));
  QVERIFY(shot["ruling"] == json({{"game", "eight-ball"}}));
  QVERIFY(frame["shots"][1]["ruling"].is_null());
  QCOMPARE(shot["miss_account"]["aim_deg"].get<double>(), -0.63025);  // -0.011 rad
  QCOMPARE(shot["miss_account"]["remainder_u_deg"].get<double>(), 0.17189);
  QCOMPARE(shot["target"]["miss_at_mouth_mm"].get<double>(), -3.1);
  QVERIFY(shot["flags"] == json::array({"unsure-pocket"}));
  QCOMPARE(shot["tracks"].size(), std::size_t{2});
  QCOMPARE(shot["tracks"][0]["t_s"].size(), std::size_t{30});
  QVERIFY(shot["tracks"][0]["x_mm"][1] == -480.0);
  const json& corrections = frame["shots"][1]["corrections"];
  QVERIFY(corrections[0]["measured"] == "Ben");
  QVERIFY(corrections[0]["corrected"] == "Ada");
}

void ExportTest::drillsAndTheirRunsAreExported() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  fill(record);
  QVERIFY(exportRecord(record, {folder.file("out"), std::nullopt}).has_value());
  const json all = json::parse(*readTextFile(folder.file("out/record.json")));
  QCOMPARE(all["drills"].size(), std::size_t{1});
  QCOMPARE(all["drill_runs"].size(), std::size_t{2});
  const json& run = all["drill_runs"][0];
  QVERIFY(run["player"] == "Ada");
  QVERIFY(run["mirrored"] == "sides");
  QVERIFY(run["started"] == "1970-01-01T00:00:01.000Z");
  QVERIFY(run["ended"].is_null());
  const json& trial = run["trials"][0];
  QVERIFY(trial["station"] == 2);
  QVERIFY(trial["leave"] == json({{"x_mm", 250.0}, {"y_mm", -100.0}}));
  QVERIFY(trial["miss_side"] == "over");
  QVERIFY(trial["set_up_error_mm"] == 12.5);
  QVERIFY(trial["goals"] == json::parse(R"([{"met": true, "figure": null}, {"met": null, "figure": 0.5}])"));
  // One player's own.
  QVERIFY(exportRecord(record, {folder.file("ben"), "Ben"}).has_value());
  const json bens = json::parse(*readTextFile(folder.file("ben/record.json")));
  QCOMPARE(bens["drill_runs"].size(), std::size_t{1});
  QVERIFY(bens["drills"].empty());
}

void ExportTest::aPlayerIsExportedAlone() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  fill(record);
  const auto report = exportRecord(record, {folder.file("out"), "Ben"});
  QVERIFY(report.has_value());
  QCOMPARE(report->shots, 1);
  for (const std::string& file : report->files) {
    const std::string text = *readTextFile(file);
    QVERIFY(text.find("Ben") != std::string::npos);
    QVERIFY2(text.find("Ada") == std::string::npos, file.c_str());
  }
}

void ExportTest::anUnknownPlayerIsNamed() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  const auto report = exportRecord(record, {folder.file("out"), "Zoe"});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::NotFound);
  QCOMPARE(report.error().subject, std::string("Zoe"));
  QVERIFY(!std::filesystem::exists(folder.file("out")));
}

void ExportTest::theSameRecordGivesTheSameBytes() {
  const sample::Folder folder;
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  fill(record);
  QVERIFY(exportRecord(record, {folder.file("one"), std::nullopt}).has_value());
  QVERIFY(exportRecord(record, {folder.file("two"), std::nullopt}).has_value());
  for (const char* name : {"/record.json", "/shots.csv"}) {
    QVERIFY(*readTextFile(folder.file("one") + name) == *readTextFile(folder.file("two") + name));
  }
}

void ExportTest::aGermanLocaleGivesTheSameBytes() {
  const sample::Folder folder;
  QProcess localedef;
  localedef.start("localedef", {"-i", "de_DE", "-f", "UTF-8", QString::fromStdString(folder.file("de_DE.UTF-8"))});
  if (!localedef.waitForFinished(60'000) || localedef.exitCode() != 0)
    QSKIP("localedef and the package locales needed");
  Record record = sample::openOrDie(folder.file("a.sqlite"));
  fill(record);
  QVERIFY(exportRecord(record, {folder.file("plain"), std::nullopt}).has_value());
  qputenv("LOCPATH", QByteArray::fromStdString(std::filesystem::path(folder.file("x")).parent_path().string()));
  const std::string before = std::setlocale(LC_ALL, nullptr);
  QVERIFY(std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr);
  // The check of the check: this locale writes a comma.
  QCOMPARE(std::to_string(1.5).substr(0, 3), std::string("1,5"));
  const auto german = exportRecord(record, {folder.file("german"), std::nullopt});
  std::setlocale(LC_ALL, before.c_str());
  qunsetenv("LOCPATH");
  QVERIFY(german.has_value());
  for (const char* name : {"/record.json", "/shots.csv"}) {
    QVERIFY(*readTextFile(folder.file("plain") + name) == *readTextFile(folder.file("german") + name));
  }
}

/// Central Europe sets its clocks back on 2026-10-25 at 01:00 UTC.
void ExportTest::timesAreUtcAcrossTheChangeOfClocks() {
  qputenv("TZ", "Europe/Berlin");
  tzset();
  QCOMPARE(utcText(1'792'889'940'000), std::string("2026-10-25T00:59:00.000Z"));
  QCOMPARE(utcText(1'792'890'060'000), std::string("2026-10-25T01:01:00.000Z"));
  qunsetenv("TZ");
  tzset();
}

FERRULE_TEST(ExportTest)
#include "export_test.moc"
