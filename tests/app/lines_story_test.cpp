// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <QPushButton>
#include <QtTest>
#include <algorithm>
#include <cmath>

#include "app/setup/lines_list.h"
#include "app/setup/lines_view.h"
#include "app/setup/setup_place.h"
#include "core/camera/rig_file.h"
#include "core/camera/rig_from_lines.h"
#include "tests/app/setup_screen.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Set-up without tags: noses, sights and pockets put right by hand, in the Set-up place alone.
class LinesStoryTest : public QObject, private SetupScreen {
  Q_OBJECT
 private slots:
  void init() { begin(); }
  void cleanup() { end(); }
  void aCushionIsPlacedByHandUnderTheLoupe();
  void aSightIsPutRightByHandAndTheFitSaysSo();
  void whatLinesCannotTellIsSaidWhereItIsChosen();

 private:
  void compareWithShippedRig();
};

namespace {

const QString kClip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");

}  // namespace

/// The rig that was made sees balls where the one of the clip does.
void LinesStoryTest::compareWithShippedRig() {
  const Rig shipped = readRigFile((kClip + "rig.json").toStdString()).value();
  const double radius_m = desk().rigTable().balls.radius_m();
  for (const TablePoint place : {TablePoint{0.0, 0.0}, TablePoint{0.9, 0.4}, TablePoint{-0.9, -0.4}}) {
    const ImagePoint pixel = imageFromTable(shipped, {place.x, place.y, radius_m}).value();
    const double off_m = distance(tableFromImage(*desk().rig(), pixel, radius_m).value(), place);
    QVERIFY2(off_m < 0.003, qPrintable(QString::number(1000.0 * off_m)));
  }
}

void LinesStoryTest::aCushionIsPlacedByHandUnderTheLoupe() {
  putInClip();
  place_->showStep(SetupStep::Rig);
  QVERIFY(!find<QPushButton>("adjustLines")->isVisible());
  desk().change("step", [](SetupState& state) { state.withoutTags = true; });
  QVERIFY(find<QPushButton>("adjustLines")->isVisible());
  find<QPushButton>("adjustLines")->click();
  waitForWork();
  auto* lines = find<LinesView>("linesView");
  QVERIFY(lines->isVisible());
  QCOMPARE(lines->noses().size(), std::size_t{6});
  QCOMPARE(lines->guesses(), 0);
  // Dragged away and back by keys: the loupe shows while it has the focus.
  const LineTrace before = lines->noses().front();
  const QPoint from = lines->screenFromImage(before.places[2]).toPoint();
  QTest::mousePress(lines, Qt::LeftButton, {}, from);
  QTest::mouseMove(lines, from + QPoint(12, 0));
  QTest::mouseRelease(lines, Qt::LeftButton, {}, from + QPoint(12, 0));
  QCOMPARE(desk().state().handLines.size(), std::size_t{1});
  QVERIFY(lines->noses().front().places[2].x > before.places[2].x + 5.0);
  QVERIFY2(lines->handleWords().contains("place 3 of 5"), qPrintable(lines->handleWords()));
  const double dragged = lines->noses().front().places[2].x;
  QTest::keyClick(lines, Qt::Key_Left);
  QVERIFY(std::abs(lines->noses().front().places[2].x - (dragged - 0.25)) < 1e-9);
  QTest::keyClick(lines, Qt::Key_PageDown);
  QVERIFY(lines->handleWords().contains("place 4 of 5"));
  actions_->at(ActionId::Undo)->trigger();
  QVERIFY(std::abs(lines->noses().front().places[2].x - dragged) < 1e-9);
  actions_->at(ActionId::Undo)->trigger();
  QVERIFY(desk().state().handLines.empty());
  QVERIFY(lines->noses().front() == before);
  // Placed where it was found, it gives a rig like the one from the found lines.
  desk().change("step", [&](SetupState& state) { state.handLines = lines->noses(); });
  find<QPushButton>("makeRig")->click();
  waitForWork();
  QVERIFY2(desk().rig().has_value(), qPrintable(message()));
  compareWithShippedRig();
  // They are kept, and taken back as one.
  openPlace();
  QTRY_COMPARE(desk().state().handLines.size(), std::size_t{6});
  find<QPushButton>("linesAsFound")->click();
  QVERIFY(desk().state().handLines.empty());
}

void LinesStoryTest::aSightIsPutRightByHandAndTheFitSaysSo() {
  putInClip();
  desk().change("step", [](SetupState& state) { state.withoutTags = state.withoutBoard = true; });
  place_->showStep(SetupStep::Rig);
  find<QPushButton>("adjustLines")->click();
  waitForWork();
  auto* view = find<LinesView>("linesView");
  auto* list = find<LinesList>("linesList");
  // 18 sights and 6 pockets: world rules, definitions.
  QCOMPARE(view->marks().size(), std::size_t{24});
  QVERIFY(std::ranges::all_of(view->marks(), [](const ShownMark& mark) { return mark.state == MarkState::Found; }));
  QCOMPARE(list->rowCount(), 6 + 24);
  QTRY_VERIFY(words("linesAgree").contains("18 sight(s) agree to"));
  // By its name in the list, and what the picture's widget then says to a screen reader.
  list->setCurrentCell(6 + 4, 0);
  QCOMPARE(view->chosenThing(), std::size_t{6 + 4});
  const ShownMark before = *view->chosenMark();
  QVERIFY(view->accessibleDescription().contains("Sight 5 of 6 on the right rail, from the head"));
  // Whatever the window's own shortcuts are, these keys are the picture's.
  for (const int key : {Qt::Key_Delete, Qt::Key_Insert, Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_Left, Qt::Key_Up}) {
    QKeyEvent asked(QEvent::ShortcutOverride, key, Qt::NoModifier);
    asked.ignore();
    QCoreApplication::sendEvent(view, &asked);
    QVERIFY(asked.isAccepted());
  }
  QTest::keyClick(view, Qt::Key_Delete);
  QCOMPARE(desk().state().handMarks.size(), std::size_t{1});
  QVERIFY(!desk().state().handMarks.front().isThere);
  QCOMPARE(list->item(6 + 4, 1)->text(), QString("not there"));
  QVERIFY(!find<QPushButton>("markNotThere")->isEnabled());
  QTRY_VERIFY(words("linesAgree").contains("17 sight(s) agree to"));
  find<QPushButton>("putMarkHere")->click();
  QVERIFY(view->chosenMark()->state == MarkState::ByHand);
  QVERIFY(view->chosenMark()->place == before.place);
  // Dragged 12 pixels of the widget along its rail: the fit is made anew, and that sight is the one furthest off.
  const QPoint from = view->screenFromImage(before.place).toPoint();
  QTest::mousePress(view, Qt::LeftButton, {}, from);
  QTest::mouseMove(view, from + QPoint(12, 0));
  QTest::mouseRelease(view, Qt::LeftButton, {}, from + QPoint(12, 0));
  QVERIFY(view->chosenMark()->place.x > before.place.x + 5.0);
  QTRY_VERIFY(words("linesAgree").contains("sight 5 of 6 on the right rail"));
  QVERIFY(list->item(6 + 4, 2)->text().split(' ').front().toDouble() > 8.0);
  actions_->at(ActionId::Undo)->trigger();
  actions_->at(ActionId::Undo)->trigger();
  actions_->at(ActionId::Undo)->trigger();
  QVERIFY(desk().state().handMarks.empty());
  QVERIFY(*view->chosenMark() == before);
  // Every mark is reached by keys: the last one from the first cushion by one step back.
  view->chooseThing(0);
  for (int step = 0; step < 3; ++step)
    QTest::keyClick(view, Qt::Key_PageUp);
  QVERIFY2(view->handleWords().startsWith("The foot-right pocket"), qPrintable(view->handleWords()));
  QTest::keyClick(view, Qt::Key_Right);
  QCOMPARE(desk().state().handMarks.size(), std::size_t{1});
  QVERIFY(desk().state().handMarks.front().mark.kind == MarkKind::Pocket);
  find<QPushButton>("makeRig")->click();
  waitForWork();
  QVERIFY2(desk().rig().has_value(), qPrintable(message()));
  QVERIFY(isFromSights(*desk().rig()));
  compareWithShippedRig();
  openPlace();
  QTRY_COMPARE(desk().state().handMarks.size(), std::size_t{1});
}

void LinesStoryTest::whatLinesCannotTellIsSaidWhereItIsChosen() {
  place_->showStep(SetupStep::Tags);
  QVERIFY(!find<QLabel>("headWords")->isVisible());
  desk().change("step", [](SetupState& state) { state.withoutTags = true; });
  QVERIFY(find<QLabel>("headWords")->isVisible());
  QVERIFY(words("headWords").contains("turned end for end"));
  QVERIFY(words("headWords").contains("twentieth"));
}

FERRULE_TEST(LinesStoryTest)
#include "lines_story_test.moc"
