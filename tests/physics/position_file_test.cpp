// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/position_file.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class PositionFileTest : public QObject {
  Q_OBJECT
 private slots:
  void whatIsWrittenIsReadBack();
  void everyFieldIsRead();
  void whatIsLeftOutIsTheLiteratures();
  void aTableMayBeWrittenOut();
  void aSlipIsNamed_data();
  void aSlipIsNamed();
  void limitsComeWithTheValue();
  void aBrokenFileNamesItsLine();
  void deepNestingIsRefusedInPeace();
};

namespace {

/// Every field that the form knows; an invented position.
const std::string kWhole = R"({
 "table": "8ft",
 "balls": [{"ball": "8", "x_mm": 500.5, "y_mm": -200}, {"ball": "cue", "x_mm": -635, "y_mm": 100}],
 "strike": {"aim_deg": 90, "speed_m_s": 2.5, "side": 0.2, "height": -0.1, "elevation_deg": 4},
 "coefficients": {"sliding_friction": 0.21, "rolling_friction": 0.011, "spin_decay_rad_s2": 9,
  "ball_restitution": 0.94, "ball_friction": 0.05, "cushion_restitution": 0.8, "cushion_friction": 0.18,
  "gravity_m_s2": 9.81, "ball_mass_kg": 0.165, "squirt_mass_ratio": 22},
 "game": "eight-ball", "group": "solids", "ball_in_hand": true,
 "player": {"aim_sd_deg": 0.18, "speed_sd": 0.06, "tip_sd": 0.03},
 "note": "skipped"})";

std::string with(const std::string& piece, const std::string& other) {
  std::string text = kWhole;
  const auto at = text.find(piece);
  return at == std::string::npos ? "test is wrong: no " + piece : text.replace(at, piece.size(), other);
}

}  // namespace

void PositionFileTest::everyFieldIsRead() {
  const auto file = parsePositionFile(kWhole, "shot.json");
  QVERIFY2(file.has_value(), file ? "" : file.error().detail.c_str());
  QCOMPARE(file->measured, *measuredTableFrom("8ft"));
  QCOMPARE(file->balls, (Position{{kCueBall, {-0.635, 0.1}}, {BallName(8), {0.5005, -0.2}}}));
  QCOMPARE(*file->strike, (Strike{radiansFromDegrees(90.0), 2.5, 0.2, -0.1, radiansFromDegrees(4.0)}));
  PhysicsParameters p;
  p.slidingFriction = 0.21;
  p.rollingFriction = 0.011;
  p.spinDecay_radps2 = 9.0;
  p.ballRestitution = 0.94;
  p.ballFriction = constantBallFriction(0.05);
  p.cushionRestitution = 0.8;
  p.cushionFriction = 0.18;
  p.ballMass_kg = 0.165;
  p.squirtMassRatio = 22.0;
  QCOMPARE(file->parameters, p);
  QCOMPARE(file->wish, (SuggestionWish{"eight-ball", "solids", true, radiansFromDegrees(0.18), 0.06, 0.03}));
}

void PositionFileTest::whatIsLeftOutIsTheLiteratures() {
  const auto file = parsePositionFile(R"({"table": "9ft", "balls": []})", "shot.json");
  QVERIFY(file.has_value());
  QCOMPARE(file->parameters, PhysicsParameters{});
  QVERIFY(file->balls.empty());
  QVERIFY(!file->strike.has_value());
  QCOMPARE(file->wish, SuggestionWish{});
  const auto struck =
      parsePositionFile(R"({"table": "9ft", "balls": [], "strike": {"aim_deg": 0, "speed_m_s": 1}})", "shot.json");
  QCOMPARE(*struck->strike, (Strike{0.0, 1.0, 0.0, 0.0, 0.0}));
}

void PositionFileTest::aTableMayBeWrittenOut() {
  const auto file = parsePositionFile(with("\"8ft\"", R"({"units": "mm", "table_length_nose_to_nose": 2300,
    "table_width_nose_to_nose": 1150, "ball_diameter": 57.0, "ball_mass_g": 160})"),
                                      "shot.json");
  QVERIFY(file.has_value());
  QCOMPARE(file->measured.table.length_m, 2.3);
  QCOMPARE(file->parameters.ballRadius_m, 0.0285);
  QCOMPARE(file->parameters.ballMass_kg, 0.165);
}

void PositionFileTest::aSlipIsNamed_data() {
  QTest::addColumn<QString>("piece");
  QTest::addColumn<QString>("other");
  QTest::addColumn<ErrorCode>("code");
  QTest::addColumn<QString>("detail");
  const auto row = [](const char* name, const char* piece, const char* other, ErrorCode code, const char* detail) {
    QTest::newRow(name) << QString(piece) << QString(other) << code << QString(detail);
  };
  row("no table", "\"table\"", "\"tables\"", ErrorCode::FieldMissing, "table");
  row("no such table", "8ft", "12ft", ErrorCode::FieldInvalid, "table");
  row("a table that is a number", "\"8ft\"", "8", ErrorCode::FieldInvalid, "table");
  row("half a table", "\"8ft\"", "{}", ErrorCode::FieldMissing, "table_length_nose_to_nose");
  row("no balls", "\"balls\"", "\"ball\"", ErrorCode::FieldMissing, "balls");
  row("a ball without a place", "\"x_mm\": -635, ", "", ErrorCode::FieldMissing, "balls[1].x_mm");
  row("a ball without a name", "\"ball\": \"8\"", "\"name\": \"8\"", ErrorCode::FieldMissing, "balls[0].ball");
  row("a sixteenth ball", "\"8\"", "16", ErrorCode::FieldInvalid, "balls[0].ball");
  row("a place in words", "500.5", "\"500\"", ErrorCode::FieldInvalid, "balls[0].x_mm");
  row("a ball twice", "\"cue\"", "8", ErrorCode::FieldInvalid, "balls: 8 twice");
  row("a strike without speed", "\"speed_m_s\": 2.5, ", "", ErrorCode::FieldMissing, "strike.speed_m_s");
  row("a strike in words", "-0.1", "\"low\"", ErrorCode::FieldInvalid, "strike.height");
  row("a misspelt coefficient", "rolling_friction", "rolling_fiction", ErrorCode::FieldInvalid,
      "coefficients.rolling_fiction");
  row("a coefficient in words", "\"ball_friction\": 0.05", "\"ball_friction\": \"low\"", ErrorCode::FieldInvalid,
      "coefficients.ball_friction");
  row("negative friction", "0.011", "-0.011", ErrorCode::FieldInvalid, "rolling_friction");
  row("negative ball friction", "0.05", "-0.05", ErrorCode::FieldInvalid, "ball_friction");
  row("no such group", "solids", "reds", ErrorCode::FieldInvalid, "group");
  row("ball in hand as a word", "true", "\"yes\"", ErrorCode::FieldInvalid, "ball_in_hand");
  row("a negative scatter", "0.18, ", "-0.18, ", ErrorCode::FieldInvalid, "player.aim_sd_deg");
}

void PositionFileTest::aSlipIsNamed() {
  QFETCH(QString, piece);
  QFETCH(QString, other);
  QFETCH(ErrorCode, code);
  QFETCH(QString, detail);
  const auto file = parsePositionFile(with(piece.toStdString(), other.toStdString()), "shot.json");
  QVERIFY(!file.has_value());
  QCOMPARE(file.error().code, code);
  QCOMPARE(QString::fromStdString(file.error().detail), detail);
  QCOMPARE(file.error().subject, std::string("shot.json"));
}

void PositionFileTest::limitsComeWithTheValue() {
  const auto file = parsePositionFile(with("0.06", "1.5"), "shot.json");
  QCOMPARE(file.error().detail, std::string("player.speed_sd"));
  QCOMPARE(file.error().numbers, (std::vector<double>{1.5, 0.0, 1.0}));
}

void PositionFileTest::aBrokenFileNamesItsLine() {
  const auto file = parsePositionFile(with("\"strike\": {", "\"strike\": "), "shot.json");
  QCOMPARE(file.error().code, ErrorCode::FileMalformed);
  QCOMPARE(file.error().detail, std::string("line 4"));
  QCOMPARE(parsePositionFile("[]", "shot.json").error().code, ErrorCode::FileMalformed);
  QCOMPARE(parsePositionFile(with("500.5", "1e999"), "shot.json").error().code, ErrorCode::FileMalformed);
}

void PositionFileTest::deepNestingIsRefusedInPeace() {
  const std::string deep = std::string(100000, '[') + std::string(100000, ']');
  QCOMPARE(parsePositionFile(deep, "shot.json").error().code, ErrorCode::FileMalformed);
  QCOMPARE(parsePositionFile(with("\"8ft\"", deep), "shot.json").error().code, ErrorCode::FieldInvalid);
}

void PositionFileTest::whatIsWrittenIsReadBack() {
  const auto measured = measuredTableFrom("9ft");
  QVERIFY(measured.has_value());
  const Position balls{{kCueBall, {-0.63512, 0.00001}}, {BallName(3), {0.5, -0.25}}};
  const auto read = parsePositionFile(positionFileText(*measured, balls), "written");
  QVERIFY(read.has_value());
  QCOMPARE(read->measured, *measured);
  QCOMPARE(read->balls, balls);
  QVERIFY(!read->strike);
}

FERRULE_TEST(PositionFileTest)
#include "position_file_test.moc"
