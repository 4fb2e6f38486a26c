// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/measured_cue.h"

#include <QtTest>
#include <cmath>

#include "tests/support/test_registry.h"

using namespace ferrule;

class MeasuredCueTest : public QObject {
  Q_OBJECT
 private slots:
  void whatAnOwnerMeasuresIsRead();
  void aTablesFileWillDo();
  void whatIsWrongIsNamed_data();
  void whatIsWrongIsNamed();
  void aTableWithoutACueHasNone();
};

namespace {

const std::string kText = R"({"units": "mm", "bridge_height_to_cue_axis": 46.5,
 "cue_tags": {"dictionary": "DICT_4X4_50", "ids": [7, 8], "black_side": 30, "centre_distance_from_tip": [300, 420],
  "cue_radius_at_tags": [7.9, 8.6], "tag_thickness": 0.4}})";

}  // namespace

void MeasuredCueTest::whatAnOwnerMeasuresIsRead() {
  const auto cue = parseMeasuredCue(kText, "cue.json");
  QVERIFY(cue.has_value());
  QCOMPARE(cue->tags.ids, (std::vector<int>{7, 8}));
  QVERIFY(std::abs(cue->tags.blackSide_m - 0.030) < 1e-12);
  QVERIFY(std::abs(cue->tags.centreFromTip_m[1] - 0.420) < 1e-12);
  QVERIFY(std::abs(cue->tagThickness_m - 0.0004) < 1e-12);
  QVERIFY(std::abs(cue->bridgeHeight_m.value() - 0.0465) < 1e-12);
}

void MeasuredCueTest::aTablesFileWillDo() {
  std::string text = kText;
  text.replace(text.find("\"units\""), 7,
               "\"table_length_nose_to_nose\": 2540, \"table_width_nose_to_nose\": 1270, "
               "\"ball_diameter\": 57.15, \"units\"");
  const auto fromCue = parseMeasuredCue(text, "table.json");
  const auto table = parseMeasuredTable(text, "table.json");
  QVERIFY(fromCue.has_value() && table.has_value());
  const auto fromTable = cueOf(*table);
  QVERIFY(fromTable.has_value());
  QVERIFY(fromTable->tags == fromCue->tags);
  QVERIFY(fromTable->bridgeHeight_m == fromCue->bridgeHeight_m);
}

void MeasuredCueTest::whatIsWrongIsNamed_data() {
  QTest::addColumn<QString>("from");
  QTest::addColumn<QString>("to");
  QTest::addColumn<int>("code");
  QTest::addColumn<QString>("detail");
  const auto row = [](const char* name, const char* from, const char* to, ErrorCode code, const char* detail) {
    QTest::newRow(name) << from << to << static_cast<int>(code) << detail;
  };
  row("no tags", "\"cue_tags\"", "\"tags\"", ErrorCode::FieldMissing, "cue_tags");
  row("one id twice", "[7, 8]", "[7, 7]", ErrorCode::FieldInvalid, "cue_tags.ids");
  row("tags upon each other", "[300, 420]", "[300, 315]", ErrorCode::FieldInvalid, "cue_tags.centre_distance_from_tip");
  row("inches", "\"mm\"", "\"in\"", ErrorCode::FieldInvalid, "units");
  row("a thick print", "0.4", "40", ErrorCode::FieldInvalid, "cue_tags.tag_thickness");
  row("no radii", "cue_radius_at_tags", "radius", ErrorCode::FieldMissing, "cue_tags.cue_radius_at_tags");
  row("a broken file", "}}", "}", ErrorCode::FileMalformed, "line 3");
}

void MeasuredCueTest::whatIsWrongIsNamed() {
  QFETCH(const QString, from);
  QFETCH(const QString, to);
  QFETCH(const int, code);
  QFETCH(const QString, detail);
  const auto cue = parseMeasuredCue(QString::fromStdString(kText).replace(from, to).toStdString(), "cue.json");
  QVERIFY(!cue.has_value());
  QCOMPARE(static_cast<int>(cue.error().code), code);
  QCOMPARE(cue.error().subject, std::string("cue.json"));
  QCOMPARE(QString::fromStdString(cue.error().detail), detail);
}

void MeasuredCueTest::aTableWithoutACueHasNone() {
  QVERIFY(!cueOf(MeasuredTable{}).has_value());
}

FERRULE_TEST(MeasuredCueTest)
#include "measured_cue_test.moc"
