// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/shot_explanation.h"

#include <QtTest>
#include <nlohmann/json.hpp>

#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A shot as the record's own columns hold it.
ShotReading plainShot() {
  ShotReading shot;
  shot.delivery.aim_rad = Measured{0.1, 0.001};
  shot.events = {{1.0, EventKind::Ball, kCueBall, BallName(3), {}, {}, {}},
                 {2.0, EventKind::Cushion, BallName(3), {}, CushionName::Foot, {}, {}}};
  shot.target = Target{BallName(3), PocketName::FootLeft, 0.5, -0.02, MissSide::Over};
  return shot;
}

/// The same with everything that a reading may say of itself; thirds need every digit.
ShotReading fullShot() {
  ShotReading shot = plainShot();
  shot.missAccount = MissAccount{{-0.02, 0.001}, {1.0 / 3.0, 0.011}, {0.03, 0.012}, {-0.04, 0.013},
                                 {0.05, 0.014},  {-0.06, 0.015},     {0.07, 0.016}, {-0.08, 1.0 / 7.0}};
  shot.target->lineErrorUncertainty_rad = 0.001;
  shot.target->missAtMouth_m = -0.018;
  shot.target->contactError_m = 0.0006;
  shot.target->fullness = 0.52;
  shot.target->opening_m = 0.061;
  shot.target->rattled = true;
  shot.target->called = true;
  shot.events[0].timeUncertainty_s = 0.0012;
  shot.events[0].verdict = Verdict::Certain;
  shot.events[1].verdict = Verdict::Ask;
  shot.delivery.whyNoStrike = NotShown::NotFollowed;
  shot.delivery.whyNoSide = NotShown::NoCushionNoCurve;
  shot.delivery.whyNoHeight = NotShown::SlideNotSeen;
  shot.delivery.whyNoElevation = NotShown::NoHopNoCurve;
  shot.flags = {ShotFlag::CutOffAtStart, ShotFlag::UnsurePocket};
  return shot;
}

}  // namespace

class ShotExplanationTest : public QObject {
  Q_OBJECT
 private slots:
  void whatAReadingSaysOfItselfComesBackToTheLastDigit();
  void aReadingThatSaysNothingHasNoText();
  void everyPartOfAnAccountHasItsUncertainty();
  void anotherTargetTakesAllThatWasMeasuredAgainstIt();
  void aTextOfAnotherKindIsRefusedAndChangesNothing();
  void fieldsThatAreNotKnownAreSkipped();
  void whatOthersPutBesideAReadingStaysWhenItIsReadAnew();
};

void ShotExplanationTest::whatAReadingSaysOfItselfComesBackToTheLastDigit() {
  const auto text = explanationText(fullShot());
  QVERIFY(text.has_value());
  ShotReading shot = plainShot();
  QVERIFY(explain(shot, *text));
  QVERIFY(shot == fullShot());
}

void ShotExplanationTest::aReadingThatSaysNothingHasNoText() {
  QVERIFY(!explanationText(plainShot()).has_value());
  QVERIFY(!explanationText(ShotReading{}).has_value());
}

void ShotExplanationTest::everyPartOfAnAccountHasItsUncertainty() {
  const auto json = nlohmann::json::parse(*explanationText(fullShot()))["miss_account"];
  for (const char* part : {"total", "aim", "squirt", "swerve", "collision_throw", "spin_throw", "speed", "remainder"}) {
    QVERIFY2(json[std::string(part) + "_rad"].is_number(), part);
    QVERIFY2(json[std::string(part) + "_u_rad"].is_number(), part);
  }
  QCOMPARE(json.size(), std::size_t{16});
}

void ShotExplanationTest::anotherTargetTakesAllThatWasMeasuredAgainstIt() {
  const auto text = explanationWithoutTarget(*explanationText(fullShot()));
  QVERIFY(text.has_value());
  ShotReading shot = plainShot();
  QVERIFY(explain(shot, *text));
  ShotReading expected = fullShot();
  expected.missAccount.reset();
  expected.target = plainShot().target;
  QVERIFY(shot == expected);
  ShotReading only = plainShot();
  only.missAccount = fullShot().missAccount;
  QVERIFY(!explanationWithoutTarget(*explanationText(only)).has_value());
}

void ShotExplanationTest::aTextOfAnotherKindIsRefusedAndChangesNothing() {
  for (const char* text :
       {"", "[1]", "7", R"({"miss_account": {"aim_rad": 1}})", R"({"flags": ["blurred"]})", R"({"flags": 3.5})",
        R"({"delivery": {"side_why": "because"}})", R"({"events": []})",
        R"({"events": {"t_u_s": ["x", 0], "verdict": [null, null]}})",
        R"({"events": {"t_u_s": [0, 0], "verdict": ["perhaps", null]}})", R"({"target": {"fullness": "half"}})"}) {
    ShotReading shot = plainShot();
    QVERIFY2(!explain(shot, text), text);
    QVERIFY(shot == plainShot());
  }
}

void ShotExplanationTest::fieldsThatAreNotKnownAreSkipped() {
  ShotReading shot = plainShot();
  QVERIFY(explain(shot, R"({"aim": 1.5, "target": {"colour": "red"}, "delivery": {"grip_why": "wet"}})"));
  QVERIFY(shot == plainShot());
}

void ShotExplanationTest::whatOthersPutBesideAReadingStaysWhenItIsReadAnew() {
  const std::string before = R"({"flags": ["picked-up"], "cue": {"images": 7}})";
  ShotReading shot = plainShot();
  shot.flags = {ShotFlag::SplitHit};
  const std::string anew = *explanationAnew(shot, before);
  QVERIFY(anew.find(R"("cue":{"images":7})") != std::string::npos);
  ShotReading back = plainShot();
  QVERIFY(explain(back, anew));
  QCOMPARE(back.flags, shot.flags);
  // What the reading no longer says is not kept.
  shot.flags.clear();
  QVERIFY(explanationAnew(shot, before)->find("flags") == std::string::npos);
  QVERIFY(!explanationAnew(shot, R"({"flags": ["picked-up"]})").has_value());
  QVERIFY(!explanationAnew(shot, std::nullopt).has_value());
}

FERRULE_TEST(ShotExplanationTest)
#include "shot_explanation_test.moc"
