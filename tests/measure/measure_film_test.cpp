// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <opencv2/imgproc.hpp>
#include <opencv2/videoio.hpp>

#include "core/base/text_file.h"
#include "core/camera/rig_file.h"
#include "core/measure/measure.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What measureFilm does around the readings, with a film of an empty cloth.
class MeasureFilmTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void aFilmIsRecordedWithItsFrame();
  void theSameFilmIsRefusedNamingTheSession();
  void againPutsASessionBesideTheFirst();
  void anotherFilmJoinsTheSessionOfThatName();
  void anotherImageSizeIsRefusedBeforeAnythingIsMade();
  void aFilmIsReadWithTheFingerprintOfItsTable();
  void aMissingFilmIsNamed();
  void aPitchLogWithoutACueIsRefused();
  void aCuesDictionaryThatNobodyKnowsIsRefused();
  void aBrokenPitchLogIsRefusedBeforeAnythingIsMade();

 private:
  std::string film(const std::string& name, int width, int height, int grey);
  std::unique_ptr<sample::Folder> folder_;
  MeasureOptions options_;
};

std::string MeasureFilmTest::film(const std::string& name, int width, int height, int grey) {
  const std::string path = folder_->file(name);
  cv::VideoWriter writer(path, cv::VideoWriter::fourcc('M', 'J', 'P', 'G'), 30.0, {width, height});
  cv::Mat image(height, width, CV_8UC3, cv::Scalar(60, 110, grey));
  for (int i = 0; i < 6; ++i)
    writer.write(image);
  return path;
}

void MeasureFilmTest::init() {
  folder_ = std::make_unique<sample::Folder>();
  options_ = {};
  options_.film = film("evening.avi", 1280, 720, 40);
  options_.rig = folder_->file("rig.json");
  QVERIFY(writeRigFile(options_.rig, sample::rig()).has_value());
  options_.table = folder_->file("table.json");
  QVERIFY(writeTextFile(options_.table, measuredTableText(sample::table())).has_value());
  options_.game = "eight-ball";
  options_.record = folder_->file("r.sqlite");
  options_.session = "Evening";
  options_.players = {"Ada", "Ben"};
  options_.output = folder_->file("measured.json");
}

void MeasureFilmTest::aFilmIsRecordedWithItsFrame() {
  const auto report = measureFilm(options_, {});
  QVERIFY(report.has_value());
  QCOMPARE(report->images, 6L);
  QVERIFY(std::filesystem::exists(options_.output));
  Record record = sample::openOrDie(options_.record);
  const auto sessions = record.sessions();
  QVERIFY(sessions.has_value());
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front().name, std::string("Evening"));
  QCOMPARE(sessions->front().players, (std::vector<std::string>{"Ada", "Ben"}));
  const auto frames = record.frames(sessions->front().id);
  QVERIFY(frames.has_value());
  QCOMPARE(frames->front().game, std::string("eight-ball"));
  QVERIFY(frames->front().complete);
  QVERIFY(frames->front().film.has_value());
  QCOMPARE(frames->front().film->images, 6L);
  QCOMPARE(frames->front().film->sha256, *fileSha256(options_.film));
  QCOMPARE(**record.rigOf(frames->front().id), sample::rig());
}

void MeasureFilmTest::theSameFilmIsRefusedNamingTheSession() {
  QVERIFY(measureFilm(options_, {}).has_value());
  // Under another name it is the same film.
  const std::string copy = folder_->file("copy.avi");
  std::filesystem::copy_file(options_.film, copy);
  options_.film = copy;
  options_.session = "Later";
  const auto report = measureFilm(options_, {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::AlreadyRecorded);
  QCOMPARE(report.error().subject, copy);
  QCOMPARE(report.error().detail, std::string("Evening"));
  Record record = sample::openOrDie(options_.record);
  QCOMPARE(record.sessions()->size(), std::size_t{1});
}

void MeasureFilmTest::againPutsASessionBesideTheFirst() {
  QVERIFY(measureFilm(options_, {}).has_value());
  options_.again = true;
  const auto report = measureFilm(options_, {});
  QVERIFY(report.has_value());
  QCOMPARE(report->earlierSessions, std::vector<std::string>{"Evening"});
  Record record = sample::openOrDie(options_.record);
  const auto sessions = record.sessions();
  QCOMPARE(sessions->size(), std::size_t{2});
  for (const SessionSummary& session : *sessions)
    QCOMPARE(session.frames, 1);
  QCOMPARE(record.players()->size(), std::size_t{2});
}

void MeasureFilmTest::anotherFilmJoinsTheSessionOfThatName() {
  QVERIFY(measureFilm(options_, {}).has_value());
  options_.film = film("second.avi", 1280, 720, 50);
  QVERIFY(measureFilm(options_, {}).has_value());
  Record record = sample::openOrDie(options_.record);
  const auto sessions = record.sessions();
  QCOMPARE(sessions->size(), std::size_t{1});
  QCOMPARE(sessions->front().frames, 2);
}

void MeasureFilmTest::anotherImageSizeIsRefusedBeforeAnythingIsMade() {
  options_.film = film("small.avi", 640, 480, 40);
  const auto report = measureFilm(options_, {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::ImageSizeMismatch);
  QCOMPARE(report.error().numbers, (std::vector<double>{640, 480, 1280, 720}));
  QVERIFY(!std::filesystem::exists(options_.record));
  QVERIFY(!std::filesystem::exists(options_.output));
}

void MeasureFilmTest::aFilmIsReadWithTheFingerprintOfItsTable() {
  const auto without = measureFilm(options_, {});
  QVERIFY(without.has_value());
  QVERIFY(!without->table.has_value());
  QVERIFY(!nlohmann::json::parse(*readTextFile(options_.output)).contains("fingerprint"));
  const Fingerprint fingerprint{
      "table",
      "2026-03-01",
      {{"rolling_friction", 0.013, 1e-4, 0.01, 3e-3, true}, {"spin_decay_rad_s2", 10.0, 3.0, 10.0, 3.0, false}},
      5,
      300,
      5e-4,
      true};
  {
    Record record = sample::openOrDie(options_.record);
    QVERIFY(record.keepFingerprint({*without->session, 1, 5, fingerprintText(fingerprint)}).has_value());
  }
  options_.film = film("later.avi", 1280, 720, 60);
  options_.session = "Another evening";
  const auto with = measureFilm(options_, {});
  QVERIFY(with.has_value());
  QVERIFY(with->table == (KnownFingerprint{fingerprint, "Evening"}));
  const auto json = nlohmann::json::parse(*readTextFile(options_.output))["fingerprint"];
  QCOMPARE(json["session"].get<std::string>(), std::string("Evening"));
  QCOMPARE(json["date"].get<std::string>(), std::string("2026-03-01"));
  QVERIFY(json["coefficients"] == nlohmann::json({{"rolling_friction", 0.013}}));  // what was determined
}

void MeasureFilmTest::aMissingFilmIsNamed() {
  options_.film = folder_->file("none.mp4");
  const auto report = measureFilm(options_, {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::FileMissing);
  QCOMPARE(report.error().subject, options_.film);
}

void MeasureFilmTest::aPitchLogWithoutACueIsRefused() {
  options_.pitchLog = folder_->file("pitch.csv");
  const auto report = measureFilm(options_, {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error(), (Error{ErrorCode::FieldMissing, options_.table, "cue_tags", {}}));
}

void MeasureFilmTest::aCuesDictionaryThatNobodyKnowsIsRefused() {
  options_.cue = folder_->file("cue.json");
  QVERIFY(writeTextFile(options_.cue, R"({"cue_tags": {"dictionary": "DICT_3X3", "ids": [1], "black_side": 40,
    "centre_distance_from_tip": [300], "cue_radius_at_tags": [8]}})")
              .has_value());
  const auto report = measureFilm(options_, {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error(), (Error{ErrorCode::FieldInvalid, options_.cue, "cue_tags.dictionary", {}}));
}

void MeasureFilmTest::aBrokenPitchLogIsRefusedBeforeAnythingIsMade() {
  options_.cue = folder_->file("cue.json");
  QVERIFY(writeTextFile(options_.cue, R"({"cue_tags": {"dictionary": "DICT_4X4_50", "ids": [10], "black_side": 40,
    "centre_distance_from_tip": [300], "cue_radius_at_tags": [8]}})")
              .has_value());
  options_.pitchLog = folder_->file("pitch.csv");
  QVERIFY(writeTextFile(options_.pitchLog, "time_s,pitch_deg\n0,5\n0.1,x\n").has_value());
  const auto report = measureFilm(options_, {});
  QVERIFY(!report.has_value());
  QCOMPARE(report.error(), (Error{ErrorCode::FileMalformed, options_.pitchLog, "line 3", {}}));
  QVERIFY(!std::filesystem::exists(options_.record));
  // Whole, it is measured with the rest.
  QVERIFY(writeTextFile(options_.pitchLog, "time_s,pitch_deg\n0,5\n0.1,5\n").has_value());
  QVERIFY(measureFilm(options_, {}).has_value());
}

FERRULE_TEST(MeasureFilmTest)
#include "measure_film_test.moc"
