// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/cue_text.h"

#include <QtTest>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/table/shot_explanation.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class CueTextTest : public QObject {
  Q_OBJECT
 private slots:
  void aReadingComesBack();
  void namesCarryTheirUnits();
  void whatWasNotSeenIsNull();
  void itStandsBesideTheRestOfAnExplanation();
  void anotherTextIsNone();
};

namespace {

CueReading reading() {
  CueReading cue;
  cue.images = 61;
  cue.aim_rad = Measured{3.0, 0.001};
  cue.elevation_rad = Measured{0.1, 0.002};
  cue.tipSide_m = Measured{-0.0025, 0.0005};
  cue.tipHeight_m = Measured{0.003, 0.001};
  cue.ballRadius_m = 0.025;
  cue.steadiness_rad = Measured{0.002, 0.0003};
  cue.log = LogUse::Shifted;
  cue.logMinusFilm_s = 12.5;
  cue.sensorBias_rad = Measured{0.015, 0.001};
  cue.tags = TagsSeen{4.2, 0.9, std::nullopt};
  cue.course = {{4.0, {3.001, 0.001}, Measured{0.1, 0.01}}, {4.5, {3.002, 0.001}, std::nullopt}};
  return cue;
}

bool near(const std::optional<Measured>& a, const std::optional<Measured>& b) {
  if (!a || !b) return !a && !b;
  return std::abs(a->value - b->value) < 1e-6 && std::abs(a->standardUncertainty - b->standardUncertainty) < 1e-6;
}

}  // namespace

void CueTextTest::aReadingComesBack() {
  const CueReading cue = reading();
  const auto back = cueFromText(cueText(cue));
  QVERIFY(back.has_value());
  QVERIFY(near(back->aim_rad, cue.aim_rad) && near(back->elevation_rad, cue.elevation_rad));
  QVERIFY(near(back->tipSide_m, cue.tipSide_m) && near(back->tipHeight_m, cue.tipHeight_m));
  QVERIFY(near(back->steadiness_rad, cue.steadiness_rad) && near(back->sensorBias_rad, cue.sensorBias_rad));
  QVERIFY(!back->tipSpeed_mps.has_value());
  QCOMPARE(back->log, LogUse::Shifted);
  QCOMPARE(back->logMinusFilm_s, 12.5);
  QVERIFY(back->tags == cue.tags);
  QCOMPARE(back->course.size(), std::size_t{2});
  QVERIFY(near(back->course[0].elevation_rad, cue.course[0].elevation_rad));
  QVERIFY(!back->course[1].elevation_rad.has_value());
  // What was read once stays as it is.
  QCOMPARE(cueText(*back), cueText(cue));
}

void CueTextTest::namesCarryTheirUnits() {
  const auto json = nlohmann::json::parse(cueText(reading()));
  QVERIFY(std::abs(json["aim_deg"].get<double>() - 171.88734) < 1e-4);
  QVERIFY(std::abs(json["tip_side_mm"].get<double>() + 2.5) < 1e-9);
  QVERIFY(std::abs(json["tip_side"].get<double>() + 0.1) < 1e-9);
  QVERIFY(std::abs(json["tip_height_u_mm"].get<double>() - 1.0) < 1e-9);
  QCOMPARE(json["pitch_log"].get<std::string>(), std::string("shifted"));
}

void CueTextTest::whatWasNotSeenIsNull() {
  const auto json = nlohmann::json::parse(cueText(CueReading{}));
  QVERIFY(json["aim_deg"].is_null() && json["aim_u_deg"].is_null() && json["tip_height"].is_null());
  QVERIFY(!json.contains("pitch_log_minus_film_s"));
}

void CueTextTest::itStandsBesideTheRestOfAnExplanation() {
  ShotReading shot;
  shot.flags = {ShotFlag::PickedUp};
  const std::string text = explanationWithCue(*explanationText(shot), reading());
  QVERIFY(cueInExplanation(text).has_value());
  ShotReading back;
  QVERIFY(explain(back, text));
  QCOMPARE(back.flags, shot.flags);
  QVERIFY(cueInExplanation(explanationWithCue("", reading())).has_value());
  // Another target meant: the cue was where it was.
  QVERIFY(cueInExplanation(*explanationWithoutTarget(text)).has_value());
}

void CueTextTest::anotherTextIsNone() {
  QVERIFY(!cueFromText("").has_value());
  QVERIFY(!cueFromText("[1]").has_value());
  QVERIFY(!cueFromText(R"({"source": 3})").has_value());
  QVERIFY(!cueInExplanation(R"({"flags": []})").has_value());
}

FERRULE_TEST(CueTextTest)
#include "cue_text_test.moc"
