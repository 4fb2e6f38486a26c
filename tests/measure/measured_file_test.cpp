// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/measured_file.h"

#include <QtTest>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <span>

#include "core/base/text_file.h"
#include "core/geometry/units.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using nlohmann::json;

namespace {

/// The names of an object, in the alphabet's order.
QStringList names(const json& object) {
  QStringList all;
  for (const auto& [name, value] : object.items())
    all << QString::fromStdString(name);
  return all;
}

QStringList sorted(QStringList all) {
  all.sort();
  return all;
}

}  // namespace

class MeasuredFileTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void theFileHasTheDocumentedFieldsAndNoOthers();
  void filmAndRigAreDescribed();
  void tracksHoldEveryImageOfEveryBallOnTheTable();
  void aCarriedBallIsNotOnTheTable();
  void shotsAreInFileUnits();
  void whatWasNotObservedIsNull();
  void aMoveOfTheCameraKeepsBothRigsAndNamesTheShotsMeanwhile();
  void placementsAreListed();
  void aFilmWithoutShotsHasEmptyLists();
  void whatIsNotKeptLeavesNothing();
  void anUnwritableFolderIsNamed();

 private:
  static json written(const std::function<void(MeasuredFile&)>& fill);
  json sample_;
};

json MeasuredFileTest::written(const std::function<void(MeasuredFile&)>& fill) {
  const sample::Folder folder;
  const std::string path = folder.file("measured.json");
  auto file = MeasuredFile::make(path);
  if (!file) return {};
  fill(*file);
  if (!file->keep({"evening.mp4", 3600, 59.983333, {1280, 720}}, sample::rig())) return {};
  return json::parse(readTextFile(path).value());
}

void MeasuredFileTest::initTestCase() {
  sample_ = written([](MeasuredFile& file) {
    for (int image = 0; image < 3; ++image) {
      ImageReading reading{image, image / 60.0, {}};
      reading.balls.push_back({kCueBall, {-0.5 + 0.01 * image, 0.1234567}, 0.0004, image != 1, false});
      if (image == 2) reading.balls.push_back({BallName(12), {0.9, 0.3}, 0.0003, true, false});
      reading.balls.push_back({BallName(15), {0.9, -0.3}, 0.01, true, true});
      file.add(reading);
    }
    file.add(sample::shot(1));
    ShotReading scratch;
    scratch.number = 2;
    scratch.scratch = true;
    scratch.pocketed = {{kCueBall, PocketName::SideLeft}};
    scratch.events = {{3.0, EventKind::OffTable, BallName(4), {}, {}, {}, {2.0, 0.0}}};
    scratch.outcome = Outcome::Scratch;
    file.add(scratch);
    file.add(Placement{kCueBall, 31.5, {-0.6, 0.1}});
  });
  QVERIFY(sample_.is_object());
}

void MeasuredFileTest::theFileHasTheDocumentedFieldsAndNoOthers() {
  QCOMPARE(names(sample_), sorted({"format", "film", "rig", "tracks", "placements", "shots"}));
  QCOMPARE(names(sample_["film"]), sorted({"name", "images", "duration_s", "width", "height"}));
  QCOMPARE(names(sample_["rig"]), sorted({"chain", "pose_rms_px", "tag_rms_mm", "verdict"}));
  QCOMPARE(names(sample_["rig"]["chain"][0]), sorted({"kind", "source"}));
  QCOMPARE(names(sample_["tracks"][0]), sorted({"ball", "t_s", "x_mm", "y_mm", "u_mm", "seen"}));
  QCOMPARE(names(sample_["placements"][0]), sorted({"ball", "t_s", "x_mm", "y_mm"}));
  const json& shot = sample_["shots"][0];
  QCOMPARE(names(shot), sorted({"number", "strike_s", "rest_s", "before", "after", "delivery", "events",
                                "first_contact", "pocketed", "scratch", "target", "outcome", "outcome_verdict"}));
  QCOMPARE(names(shot["before"][0]), sorted({"ball", "x_mm", "y_mm"}));
  QCOMPARE(names(shot["delivery"]), sorted({"aim_deg", "aim_u_deg", "speed_m_s", "speed_u_m_s", "side", "side_u",
                                            "height", "height_u", "elevation_deg", "elevation_u_deg"}));
  QCOMPARE(names(shot["events"][0]), sorted({"t_s", "kind", "ball", "other"}));
  QCOMPARE(names(shot["events"][1]), sorted({"t_s", "kind", "ball", "cushion"}));
  QCOMPARE(names(shot["events"][2]), sorted({"t_s", "kind", "ball", "pocket"}));
  QCOMPARE(names(shot["pocketed"][0]), sorted({"ball", "pocket"}));
  QCOMPARE(names(shot["target"]), sorted({"ball", "pocket", "cut_deg", "line_error_deg", "miss_side"}));
}

void MeasuredFileTest::filmAndRigAreDescribed() {
  QVERIFY(sample_["format"] == "ferrule-measured/1");
  QVERIFY(
      sample_["film"] ==
      json({{"name", "evening.mp4"}, {"images", 3600}, {"duration_s", 59.983333}, {"width", 1280}, {"height", 720}}));
  QVERIFY(sample_["rig"]["chain"] == json::parse(R"([{"kind": "lens", "source": "lens.json"},
                                                     {"kind": "pose", "source": "rig.json"}])"));
  QVERIFY(sample_["rig"]["pose_rms_px"] == 0.25);
  QVERIFY(sample_["rig"]["tag_rms_mm"] == 0.5);
  QVERIFY(sample_["rig"]["verdict"] == "fits");
}

void MeasuredFileTest::tracksHoldEveryImageOfEveryBallOnTheTable() {
  const json& tracks = sample_["tracks"];
  QCOMPARE(tracks.size(), std::size_t{2});
  QVERIFY(tracks[0]["ball"] == "cue");
  QVERIFY(tracks[0]["t_s"] == json({0.0, 0.016667, 0.033333}));
  QVERIFY(tracks[0]["x_mm"] == json({-500.0, -490.0, -480.0}));
  QVERIFY(tracks[0]["y_mm"] == json({123.457, 123.457, 123.457}));
  QVERIFY(tracks[0]["u_mm"] == json({0.4, 0.4, 0.4}));
  QVERIFY(tracks[0]["seen"] == json({true, false, true}));
  QVERIFY(tracks[1]["ball"] == "12");
  QVERIFY(tracks[1]["t_s"] == json::array({0.033333}));
}

void MeasuredFileTest::aCarriedBallIsNotOnTheTable() {
  for (const json& track : sample_["tracks"])
    QVERIFY(track["ball"] != "15");
}

void MeasuredFileTest::shotsAreInFileUnits() {
  const json& shot = sample_["shots"][0];
  const ShotReading reading = sample::shot(1);
  QVERIFY(shot["number"] == 1);
  QVERIFY(shot["strike_s"] == 10.25);
  QVERIFY(shot["rest_s"] == 14.5);
  QVERIFY(shot["before"][1] == json({{"ball", "3"}, {"x_mm", 250.0}, {"y_mm", -62.5}}));
  QCOMPARE(shot["after"].size(), std::size_t{2});
  const double aim_deg = shot["delivery"]["aim_deg"];
  QVERIFY(std::abs(aim_deg - 0.101 * 180.0 / M_PI) < 1e-5);
  QVERIFY(shot["delivery"]["speed_m_s"] == 2.5);
  QVERIFY(shot["delivery"]["speed_u_m_s"] == 0.02);
  QVERIFY(shot["delivery"]["side"] == -0.125);
  QVERIFY(shot["events"][0] == json({{"t_s", 10.75}, {"kind", "ball"}, {"ball", "cue"}, {"other", "3"}}));
  QVERIFY(shot["events"][1]["cushion"] == "left-foot");
  QVERIFY(shot["events"][2]["pocket"] == "foot-right");
  QVERIFY(shot["first_contact"] == "3");
  QVERIFY(shot["pocketed"] == json::parse(R"([{"ball": "3", "pocket": "foot-right"}])"));
  QVERIFY(shot["scratch"] == false);
  QVERIFY(shot["target"]["miss_side"] == "over");
  QVERIFY(shot["outcome"] == "pot");
}

void MeasuredFileTest::whatWasNotObservedIsNull() {
  const json& first = sample_["shots"][0];
  for (const char* field : {"height", "height_u", "elevation_deg", "elevation_u_deg"}) {
    QVERIFY(first["delivery"][field].is_null());
  }
  const json& second = sample_["shots"][1];
  QVERIFY(second["first_contact"].is_null());
  QVERIFY(second["target"].is_null());
  QVERIFY(second["scratch"] == true);
  QVERIFY(second["pocketed"] == json::parse(R"([{"ball": "cue", "pocket": "side-left"}])"));
  QVERIFY(second["events"] == json::parse(R"([{"t_s": 3.0, "kind": "off-table", "ball": "4"}])"));
}

void MeasuredFileTest::placementsAreListed() {
  QVERIFY(sample_["placements"] == json::parse(R"([{"ball": "cue", "t_s": 31.5, "x_mm": -600.0, "y_mm": 100.0}])"));
}

void MeasuredFileTest::aFilmWithoutShotsHasEmptyLists() {
  const json empty = written([](MeasuredFile&) {});
  QVERIFY(empty["tracks"] == json::array());
  QVERIFY(empty["placements"] == json::array());
  QVERIFY(empty["shots"] == json::array());
}

void MeasuredFileTest::whatIsNotKeptLeavesNothing() {
  const sample::Folder folder;
  const std::string path = folder.file("measured.json");
  QVERIFY(writeTextFile(path, "older").has_value());
  {
    auto file = MeasuredFile::make(path);
    QVERIFY(file.has_value());
    file->add(ImageReading{0, 0.0, {{kCueBall, {}, 0.001, true, false}}});
    file->add(sample::shot(1));
  }
  QVERIFY(*readTextFile(path) == "older");
  const auto parent = std::filesystem::path(path).parent_path();
  QCOMPARE(std::distance(std::filesystem::directory_iterator(parent), {}), std::ptrdiff_t{1});
}

void MeasuredFileTest::anUnwritableFolderIsNamed() {
  const sample::Folder folder;
  const std::string path = folder.file("none/measured.json");
  const auto file = MeasuredFile::make(path);
  QVERIFY(!file.has_value());
  QCOMPARE(file.error().code, ErrorCode::FileNotWritable);
  QCOMPARE(file.error().subject, path);
}

void MeasuredFileTest::aMoveOfTheCameraKeepsBothRigsAndNamesTheShotsMeanwhile() {
  const sample::Folder folder;
  const std::string path = folder.file("measured.json");
  auto file = MeasuredFile::make(path);
  QVERIFY(file.has_value());
  for (int number = 1; number <= 3; ++number) {
    ShotReading shot;
    shot.number = number;
    shot.strike_s = 10.0 * number;
    shot.rest_s = 10.0 * number + 6.0;
    file->add(shot);
  }
  CameraMove move{1320, 22.0, 21.0, 23.5, 0.0042, sample::rig()};
  move.rig.pose.translation_m.x() += 0.0042;
  QVERIFY(file->keep({"evening.mp4", 3600, 59.983333, {1280, 720}}, sample::rig(), std::span(&move, 1)).has_value());
  const json rig = json::parse(readTextFile(path).value()).at("rig");
  QCOMPARE(rig.at("moves").size(), std::size_t{1});
  const json& told = rig.at("moves").front();
  QCOMPARE(told.at("image").get<long>(), 1320L);
  QCOMPARE(told.at("since_s").get<double>(), 21.0);
  QCOMPARE(told.at("settled_s").get<double>(), 23.5);
  QVERIFY(std::abs(told.at("moved_mm").get<double>() - 4.2) < 1e-9);
  QCOMPARE(told.at("shots").get<std::vector<int>>(), std::vector<int>{2});
  QCOMPARE(told.at("rig").value("format", ""), std::string("ferrule-rig/1"));
}

FERRULE_TEST(MeasuredFileTest)
#include "measured_file_test.moc"
