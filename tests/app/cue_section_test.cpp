// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/cue_section.h"

#include <QLabel>
#include <QtTest>

#include "app/review/shot_panel.h"
#include "core/cue/cue_text.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The cue before the strike, as Review shows it.
class CueSectionTest : public QObject {
  Q_OBJECT
 private slots:
  void theAimBeforeStandsAgainstTheWayAfter();
  void whatWasNotSeenHasNoRow();
  void whatStoodInTheWayIsSaidWithItsCure();
  void thePanelShowsItWhereTheRecordHasIt();
};

namespace {

/// Invented; the record keeps hundred-thousandths of a degree.
CueReading reading() {
  CueReading cue;
  cue.images = 60;
  cue.ballRadius_m = 0.028575;
  cue.aim_rad = Measured{0.5236, 0.001};
  cue.elevation_rad = Measured{0.0873, 0.003};
  cue.tipSide_m = Measured{0.0028575, 0.0005};
  cue.tipHeight_m = Measured{-0.0057, 0.001};
  cue.aimBeforeMinusAfter_rad = Measured{0.00873, 0.0015};
  cue.steadiness_rad = Measured{0.002, 0.0005};
  return cue;
}

QStringList namesOf(const std::vector<ValueLine>& rows) {
  QStringList names;
  for (const ValueLine& row : rows)
    names << row.name;
  return names;
}

}  // namespace

void CueSectionTest::theAimBeforeStandsAgainstTheWayAfter() {
  const auto rows = cueRows(reading(), Measured{0.5149, 0.001}, Numbers());
  QCOMPARE(namesOf(rows), (QStringList{"Cue pointed to", "Ball went to", "Between them", "Elevation", "Tip, side",
                                       "Tip, height", "Sway of the aim"}));
  QCOMPARE(rows[0].shown.value, Numbers().degrees(Measured{0.5236, 0.001}).value);
  QCOMPARE(rows[1].shown.value, Numbers().degrees(Measured{0.5149, 0.001}).value);
  QVERIFY(rows[2].shown.value.startsWith('+'));
  QVERIFY2(rows[4].shown.value.contains("0.10"), qPrintable(rows[4].shown.value));
}

void CueSectionTest::whatWasNotSeenHasNoRow() {
  CueReading shaft;
  shaft.source = CueSource::Shaft;
  shaft.aim_rad = Measured{0.5, 0.01};
  QCOMPARE(namesOf(cueRows(shaft, std::nullopt, Numbers())), QStringList{"Cue pointed to"});
  QVERIFY(cueNotes(shaft, Numbers()).join(' ').contains("height is not seen"));
  QVERIFY(cueRows(CueReading{}, Measured{0.5, 0.01}, Numbers()).empty());
}

void CueSectionTest::whatStoodInTheWayIsSaidWithItsCure() {
  CueReading cue = reading();
  cue.log = LogUse::NoMatch;
  cue.tags = TagsSeen{2.0, 0.5, 0.04};
  const QString notes = cueNotes(cue, Numbers()).join(' ');
  QVERIFY(notes.contains("start both together"));
  QVERIFY(notes.contains(Numbers().millimetres(0.04)));
  cue.log = LogUse::Gap;
  QVERIFY(cueNotes(cue, Numbers()).join(' ').contains("without a break"));
}

void CueSectionTest::thePanelShowsItWhereTheRecordHasIt() {
  auto shot = std::make_shared<StoredShot>();
  shot->reading.number = 1;
  shot->reading.delivery.aim_rad = Measured{0.5149, 0.001};
  ShotPanel panel;
  panel.setShot(shot, MeasuredTable{});
  QVERIFY(panel.findChild<QLabel*>("cueNotes") == nullptr);
  shot->explanation = explanationWithCue("", reading());
  panel.setShot(shot, MeasuredTable{});
  const auto* notes = panel.findChild<QLabel*>("cueNotes");
  QVERIFY(notes != nullptr);
  QVERIFY(notes->text().contains("tags on the cue"));
}

FERRULE_TEST(CueSectionTest)
#include "cue_section_test.moc"
