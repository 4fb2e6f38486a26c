// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/measured_table.h"

#include <QTemporaryDir>
#include <QtTest>
#include <cmath>
#include <string>

#include "core/base/text_file.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class MeasuredTableTest : public QObject {
  Q_OBJECT
 private slots:
  void everyFieldIsReadInMetres();
  void tagsLieAtTheirHeights();
  void cueTagsAreRead();
  void optionalSizesReplaceTheUsualOnes();
  void coloursMayBeTheOwners();
  void aPresetNeedsNoFile();
  void whatIsWrittenReadsTheSame();
  void aSlipIsNamed_data();
  void aSlipIsNamed();
  void limitsAreGivenInTheFilesUnit();
  void aBrokenFileNamesItsLine();
  void anEmptyFileIsSaidToBeEmpty();
  void aMissingFileIsSaidToBeMissing();
  void aHugeFileIsRefused();
  void deepNestingIsRefusedInPeace();
};

namespace {

/// A 9-foot table with four 80 mm tags, two cue tags and a bridge; the numbers are invented.
const std::string kWhole = R"({
 "units": "mm",
 "table_length_nose_to_nose": 2538,
 "table_width_nose_to_nose": 1271,
 "ball_diameter": 57.1,
 "tag_black_side": 80,
 "tag_dictionary": "DICT_4X4_50",
 "tag_height_above_cloth": 38.5,
 "tags": [
  {"id": 0, "corners": [[-1160, -701], [-1080, -701], [-1080, -781], [-1160, -781]]},
  {"id": 3, "height_above_cloth": 40, "corners": [[1080, 781.5], [1160, 781], [1160, 701], [1080, 701]]}
 ],
 "bridge_height_to_cue_axis": 47.5,
 "cue_tags": {"dictionary": "DICT_4X4_50", "ids": [10, 11], "black_side": 20,
  "centre_distance_from_tip": [330, 455], "cue_radius_at_tags": [8.2, 8.9]}
})";

/// kWhole with one piece replaced.
std::string with(const std::string& piece, const std::string& other) {
  std::string text = kWhole;
  const auto at = text.find(piece);
  return at == std::string::npos ? "test is wrong: no " + piece : text.replace(at, piece.size(), other);
}

bool near(double a, double b) {
  return std::abs(a - b) < 1e-12;
}

}  // namespace

void MeasuredTableTest::everyFieldIsReadInMetres() {
  const auto measured = parseMeasuredTable(kWhole, "table.json");
  QVERIFY(measured.has_value());
  QVERIFY(near(measured->table.length_m, 2.538));
  QVERIFY(near(measured->table.width_m, 1.271));
  QVERIFY(near(measured->balls.diameter_m, 0.0571));
  QVERIFY(near(measured->table.noseHeight_m, 0.635 * 0.0571));
  QVERIFY(near(measured->bridgeHeight_m.value(), 0.0475));
  QVERIFY(measured->balls.colours == poolBalls().colours);
}

void MeasuredTableTest::tagsLieAtTheirHeights() {
  const auto measured = parseMeasuredTable(kWhole, "table.json");
  QCOMPARE(measured->tagDictionary, std::string("DICT_4X4_50"));
  QCOMPARE(measured->tags.size(), std::size_t{2});
  QCOMPARE(measured->tags[0].id, 0);
  QVERIFY((measured->tags[0].corners[0] == TablePoint3{-1.160, -0.701, 0.0385}));
  QVERIFY((measured->tags[1].corners[2] == TablePoint3{1.160, 0.701, 0.040}));
}

void MeasuredTableTest::cueTagsAreRead() {
  const auto measured = parseMeasuredTable(kWhole, "table.json");
  const CueTags tags = measured->cueTags.value();
  QCOMPARE(tags.dictionary, std::string("DICT_4X4_50"));
  QVERIFY((tags.ids == std::vector{10, 11}));
  QVERIFY(near(tags.blackSide_m, 0.020));
  QVERIFY(near(tags.centreFromTip_m.at(0), 0.330) && near(tags.centreFromTip_m.at(1), 0.455));
  QVERIFY(near(tags.cueRadius_m.at(0), 0.0082) && near(tags.cueRadius_m.at(1), 0.0089));
}

void MeasuredTableTest::optionalSizesReplaceTheUsualOnes() {
  const auto measured =
      parseMeasuredTable(with("\"tag_black_side\"",
                              "\"corner_pocket_mouth\": 110, \"side_pocket_mouth\": 125, "
                              "\"nose_height_above_cloth\": 36.5, \"ball_mass_g\": 165, \"tag_black_side\""),
                         "table.json");
  QVERIFY(measured.has_value());
  QVERIFY(near(measured->table.corner.mouth_m, 0.110));
  QVERIFY(near(measured->table.side.mouth_m, 0.125));
  QVERIFY(near(measured->table.noseHeight_m, 0.0365));
  QVERIFY(near(measured->balls.mass_kg, 0.165));
}

void MeasuredTableTest::coloursMayBeTheOwners() {
  const auto measured = parseMeasuredTable(
      with("\"tag_black_side\"", "\"ball_colours\": {\"4\": \"#ff80a0\", \"cue\": \"#f0F0e0\"}, \"tag_black_side\""),
      "table.json");
  QVERIFY(measured.has_value());
  QVERIFY((measured->balls.colours[4] == BallColour{255, 128, 160}));
  QVERIFY((measured->balls.colours[0] == BallColour{240, 240, 224}));
  QVERIFY(measured->balls.colours[12] == poolBalls().colours[12]);
}

void MeasuredTableTest::aPresetNeedsNoFile() {
  const auto measured = measuredTableFrom("8ft");
  QVERIFY(measured.has_value());
  QVERIFY(near(measured->table.length_m, 2.2352));
  QVERIFY(measured->tags.empty());
  QCOMPARE(measuredTableFrom("no-such-size").error().code, ErrorCode::FileMissing);
}

void MeasuredTableTest::whatIsWrittenReadsTheSame() {
  const std::string coloured =
      with("\"tag_black_side\"",
           "\"corner_pocket_shelf\": 41.3, \"ball_colours\": {\"4\": \"#ff80a0\"}, \"tag_black_side\"");
  for (const std::string& text : {kWhole, coloured}) {
    const auto first = parseMeasuredTable(text, "first");
    QVERIFY(first.has_value());
    const auto second = parseMeasuredTable(measuredTableText(*first), "second");
    QVERIFY(second.has_value());
    QVERIFY(*second == *first);
  }
  const auto preset = measuredTableFrom("7ft");
  QVERIFY(parseMeasuredTable(measuredTableText(*preset), "preset").value() == *preset);
}

void MeasuredTableTest::aSlipIsNamed_data() {
  QTest::addColumn<QString>("piece");
  QTest::addColumn<QString>("instead");
  QTest::addColumn<int>("code");
  QTest::addColumn<QString>("detail");
  const int missing = static_cast<int>(ErrorCode::FieldMissing);
  const int invalid = static_cast<int>(ErrorCode::FieldInvalid);
  const auto row = [](const char* name, const char* piece, const char* instead, int code, const char* detail) {
    QTest::newRow(name) << piece << instead << code << detail;
  };
  const char* length = "\"table_length_nose_to_nose\": 2538";
  row("no length", length, "\"x\": 1", missing, "table_length_nose_to_nose");
  row("length in metres", length, "\"table_length_nose_to_nose\": 2.538", invalid, "table_length_nose_to_nose");
  row("length as text", length, "\"table_length_nose_to_nose\": \"2538\"", invalid, "table_length_nose_to_nose");
  row("length as nothing", length, "\"table_length_nose_to_nose\": null", invalid, "table_length_nose_to_nose");
  row("length below nothing", length, "\"table_length_nose_to_nose\": -2538", invalid, "table_length_nose_to_nose");
  row("length as a list", length, "\"table_length_nose_to_nose\": [2538]", invalid, "table_length_nose_to_nose");
  row("a wrong digit in the width", "1271", "1721", invalid, "table_width_nose_to_nose");
  row("inches", "\"mm\"", "\"inch\"", invalid, "units");
  row("units as a number", "\"mm\"", "1", invalid, "units");
  row("no diameter", "\"ball_diameter\": 57.1,", "", missing, "ball_diameter");
  row("a ball of 5.7 mm", "57.1", "5.71", invalid, "ball_diameter");
  row("no tag height", "\"tag_height_above_cloth\": 38.5,", "", missing, "tag_height_above_cloth");
  row("no tag side", "\"tag_black_side\": 80,", "", missing, "tag_black_side");
  row("tags as text", "\"tags\": [", "\"tags\": \"four\", \"others\": [", invalid, "tags");
  row("the same tag twice", "\"id\": 3", "\"id\": 0", invalid, "tags: id 0 twice");
  row("a tag without its id", "\"id\": 3,", "", missing, "tags.id");
  row("half a tag id", "\"id\": 3,", "\"id\": 3.5,", invalid, "tags.id");
  row("a huge tag id", "\"id\": 3,", "\"id\": 99999999999,", invalid, "tags.id");
  row("a tag id below nothing", "\"id\": 3,", "\"id\": -3,", invalid, "tags.id");
  row("three corners", ", [1080, 701]]", "]", invalid, "tags[id 3].corners");
  row("a corner with one number", "[1080, 701]]", "[1080]]", invalid, "tags[id 3].corners");
  row("a corner as text", "[1080, 701]]", "[1080, \"701\"]]", invalid, "tags[id 3].corners");
  row("a corner in metres", "[1080, 701]]", "[1.080, 0.701]]", invalid, "tags[id 3].corners");
  row("a corner outside every hall", "[1080, 701]]", "[1080, 70100]]", invalid, "tags[id 3].corners");
  row("a squeezed tag", "[-1080, -781], [-1160, -781]", "[-1050, -775], [-1130, -775]", invalid, "tags[id 0].corners");
  row("corners the wrong way round", "[[-1160, -701], [-1080, -701], [-1080, -781], [-1160, -781]]",
      "[[-1160, -781], [-1080, -781], [-1080, -701], [-1160, -701]]", invalid,
      "tags[id 0].corners: counter-clockwise as seen from above");
  row("a tag in the air", "\"height_above_cloth\": 40", "\"height_above_cloth\": 400", invalid,
      "tags.height_above_cloth");
  row("a dictionary as a number", "\"tag_dictionary\": \"DICT_4X4_50\"", "\"tag_dictionary\": 4", invalid,
      "tag_dictionary");
  row("a cue tag too few", "[330, 455]", "[330]", invalid, "cue_tags.centre_distance_from_tip");
  row("cue tags without radii", ", \"cue_radius_at_tags\": [8.2, 8.9]", "", missing, "cue_tags.cue_radius_at_tags");
  row("a thick cue", "[8.2, 8.9]", "[82, 89]", invalid, "cue_tags.cue_radius_at_tags");
  row("cue tags without a side", "\"black_side\": 20,", "", missing, "cue_tags.black_side");
  row("a bridge of half a metre", "47.5", "501", invalid, "bridge_height_to_cue_axis");
  row("a colour by name", "\"tag_black_side\"", "\"ball_colours\": {\"4\": \"pink\"}, \"tag_black_side\"", invalid,
      "ball_colours.4");
  row("a colour of no ball", "\"tag_black_side\"", "\"ball_colours\": {\"16\": \"#ffffff\"}, \"tag_black_side\"",
      invalid, "ball_colours.16");
  row("a corner mouth in inches", "\"tag_black_side\"", "\"corner_pocket_mouth\": 4.5, \"tag_black_side\"", invalid,
      "corner_pocket_mouth");
}

void MeasuredTableTest::aSlipIsNamed() {
  QFETCH(QString, piece);
  QFETCH(QString, instead);
  QFETCH(int, code);
  QFETCH(QString, detail);
  const auto measured = parseMeasuredTable(with(piece.toStdString(), instead.toStdString()), "club/table.json");
  QVERIFY(!measured.has_value());
  QCOMPARE(static_cast<int>(measured.error().code), code);
  QCOMPARE(measured.error().subject, std::string("club/table.json"));
  QCOMPARE(QString::fromStdString(measured.error().detail), detail);
}

void MeasuredTableTest::limitsAreGivenInTheFilesUnit() {
  const auto measured = parseMeasuredTable(with("57.1", "571"), "table.json");
  QVERIFY((measured.error().numbers == std::vector{571.0, 40.0, 70.0}));
}

void MeasuredTableTest::aBrokenFileNamesItsLine() {
  const auto cut = parseMeasuredTable(kWhole.substr(0, kWhole.find("\"ball_diameter\"")), "table.json");
  QCOMPARE(cut.error().code, ErrorCode::FileMalformed);
  QCOMPARE(cut.error().detail, std::string("line 5"));
  for (const char* text : {"NaN", "{\"table_length_nose_to_nose\": NaN}", "[1, 2]", "1", "\"9ft\"", "<xml/>",
                           "\xff\xfe", "{\"table_length_nose_to_nose\": 1e999}", "{\"a\": \"\xff\"}"}) {
    const auto broken = parseMeasuredTable(text, "table.json");
    QVERIFY2(!broken.has_value(), text);
    QVERIFY2(broken.error().code == ErrorCode::FileMalformed, text);
  }
}

void MeasuredTableTest::anEmptyFileIsSaidToBeEmpty() {
  QTemporaryDir folder;
  const std::string path = folder.filePath("table.json").toStdString();
  QVERIFY(writeTextFile(path, "").has_value());
  QCOMPARE(readMeasuredTable(path).error().code, ErrorCode::FileEmpty);
}

void MeasuredTableTest::aMissingFileIsSaidToBeMissing() {
  const auto measured = readMeasuredTable("/nowhere/table.json");
  QCOMPARE(measured.error().code, ErrorCode::FileMissing);
  QCOMPARE(measured.error().subject, std::string("/nowhere/table.json"));
}

/// A film given in the place of table.json must not fill the memory.
void MeasuredTableTest::aHugeFileIsRefused() {
  QTemporaryDir folder;
  const std::string path = folder.filePath("film.mp4").toStdString();
  QVERIFY(writeTextFile(path, std::string(std::size_t{5} << 20, ' ')).has_value());
  QCOMPARE(readMeasuredTable(path).error().code, ErrorCode::FileUnreadable);
}

void MeasuredTableTest::deepNestingIsRefusedInPeace() {
  const auto measured = parseMeasuredTable(std::string(1000000, '['), "table.json");
  QCOMPARE(measured.error().code, ErrorCode::FileMalformed);
  const auto closed = parseMeasuredTable(std::string(100000, '[') + std::string(100000, ']'), "table.json");
  QCOMPARE(closed.error().code, ErrorCode::FileMalformed);
}

FERRULE_TEST(MeasuredTableTest)
#include "measured_table_test.moc"
