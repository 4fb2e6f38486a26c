// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QToolButton>
#include <QtTest>

#include "app/projector/projector_screen.h"
#include "app/setup/chain_row.h"
#include "app/setup/error_map_view.h"
#include "app/setup/lens_page.h"
#include "app/setup/rig_in_use.h"
#include "app/setup/setup_place.h"
#include "core/base/text_file.h"
#include "core/camera/rig_file.h"
#include "tests/app/setup_screen.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The Set-up place alone, with the stills and the film that come with the tests.
class SetupStoryTest : public QObject, private SetupScreen {
  Q_OBJECT
 private slots:
  void init() { begin(); }
  void cleanup() { end(); }
  void theStepsAreWalkedByKeysAndKept();
  void unequalDiagonalsAreSaid();
  void stillsGiveALensAndOneGivenTwiceCountsOnce();
  void tagsTableAndFilmGiveARigThatFits();
  void aSecondLensIsRefused();
  void withoutTagsThePlacesAreSaidToBeLessSure();
  void aShotTellsWhatTheMapIsWorth();
  void longWorkCanBeStopped();
  void badFilesAreOneSentence();
  void aStateComesBackAsItWas();
  void aProjectorsPictureNeverJumps();
  void everyEditIsUndoneAndDoneAgain();
  void undoingAnEditBringsBackWhatItMadeVoid();
  void aRigMadeMeanwhileOfOtherThingsIsNotKept();
  void aSetUpIsReadAgainBesideTheWindow();
};

namespace {

const QString kClip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");
const QString kBoards = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/opencv-boards");

}  // namespace

void SetupStoryTest::theStepsAreWalkedByKeysAndKept() {
  auto* name = find<QLineEdit>("tableName");
  name->setFocus();
  QTest::keyClicks(name, "Hall, table 2");
  QTest::keyClick(name, Qt::Key_Return);
  QCOMPARE(words("setupTitle"), QString("Hall, table 2"));
  for (int step = 0; step + 1 < kSetupSteps; ++step) {
    QVERIFY(find<QToolButton>(qPrintable(QStringLiteral("step%1").arg(step)))->isChecked());
    actions_->at(ActionId::StepOn)->trigger();
  }
  QVERIFY(find<QToolButton>("step9")->isChecked());
  actions_->at(ActionId::StepOn)->trigger();
  QVERIFY(find<QToolButton>("step9")->isChecked());
  find<QToolButton>("step3")->click();
  // Left and entered again.
  openPlace();
  QTRY_COMPARE(words("setupTitle"), QString("Hall, table 2"));
  QVERIFY(find<QToolButton>("step3")->isChecked());
}

/// 2540 by 1270 with diagonals of 2842 and 2837 mm: the difference of the squares, 28395, over four times the width is
/// 5.6 mm over the table's length.
void SetupStoryTest::unequalDiagonalsAreSaid() {
  find<QDoubleSpinBox>("diagonalA")->setValue(2842.0);
  find<QDoubleSpinBox>("diagonalB")->setValue(2837.0);
  QVERIFY2(words("squareWords").contains("5.6 mm to the left"), qPrintable(words("squareWords")));
  find<QDoubleSpinBox>("diagonalB")->setValue(2842.0);
  QVERIFY2(words("squareWords").startsWith("Square"), qPrintable(words("squareWords")));
  find<QDoubleSpinBox>("diagonalA")->setValue(2942.0);
  find<QDoubleSpinBox>("diagonalB")->setValue(2942.0);
  QVERIFY2(words("squareWords").contains("measure again"), qPrintable(words("squareWords")));
}

void SetupStoryTest::stillsGiveALensAndOneGivenTwiceCountsOnce() {
  place_->showStep(SetupStep::Lens);
  desk().change("step", [](SetupState& state) { state.board = QStringLiteral("chessboard:9x6:25"); });
  QStringList stills = LensPage::picturesIn({kBoards});
  QCOMPARE(stills.size(), 13);
  stills << stills.first();
  desk().addStills(stills);
  waitForWork();
  auto* list = find<QTableWidget>("stills");
  QCOMPARE(list->rowCount(), 14);
  QCOMPARE(list->item(0, 1)->text(), QString("found"));
  QCOMPARE(list->item(13, 1)->text(), QString("same as left01.jpg: counts once"));
  QVERIFY(words("coveredWords").contains("13"));
  find<QPushButton>("calibrateLens")->click();
  waitForWork();
  QVERIFY2(words("lensResult").contains("13 of 13"), qPrintable(words("lensResult")));
  QCOMPARE(find<QTableWidget>("lensParameters")->item(0, 0)->text(), QString("fx"));
  QVERIFY(list->item(0, 3)->text().endsWith("px"));
  QVERIFY(QFile::exists(folder_->filePath("setup/lens.json")));
  // A print that came out at another size; one that cannot be.
  find<QDoubleSpinBox>("rulerAcross")->setValue(98.0);
  find<QDoubleSpinBox>("rulerDown")->setValue(98.0);
  find<QPushButton>("calibrateLens")->click();
  waitForWork();
  QCOMPARE(desk().calibration()->lens.board, std::string("chessboard:9x6:24.5"));
  find<QDoubleSpinBox>("rulerAcross")->setValue(95.0);
  find<QPushButton>("calibrateLens")->click();
  QVERIFY2(message().contains("95") && message().contains("98"), qPrintable(message()));
  // Too few.
  find<QDoubleSpinBox>("rulerAcross")->setValue(98.0);
  desk().removeStills({2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13});
  waitForWork();
  QCOMPARE(list->rowCount(), 2);
  find<QPushButton>("calibrateLens")->click();
  waitForWork();
  QVERIFY2(message().contains("Only 2 stills"), qPrintable(message()));
}

void SetupStoryTest::tagsTableAndFilmGiveARigThatFits() {
  putInClip();
  place_->showStep(SetupStep::Camera);
  QVERIFY(words("filmSize").contains("px"));
  place_->showStep(SetupStep::Tags);
  QVERIFY2(words("tagWords").contains("4"), qPrintable(words("tagWords")));
  place_->showStep(SetupStep::Rig);
  find<QPushButton>("makeRig")->click();
  waitForWork();
  QVERIFY2(message().isEmpty(), qPrintable(message()));
  QCOMPARE(find<QTableWidget>("rigTags")->rowCount(), 4);
  QVERIFY(find<QTableWidget>("rigTags")->item(0, 3)->text().endsWith("mm"));
  // The rig that ships with the clip was made of the same files.
  const Rig shipped = readRigFile((kClip + "rig.json").toStdString()).value();
  const TablePoint3 there = cameraPosition(shipped);
  const TablePoint3 here = cameraPosition(*desk().rig());
  QVERIFY(std::hypot(there.x - here.x, there.y - here.y, there.z - here.z) < 0.001);

  place_->showStep(SetupStep::Check);
  QCOMPARE(find<ChainRow>("chainRow")->boxes(), 1 + static_cast<int>(desk().rig()->chain.corrections().size()));
  find<QPushButton>("runCheck")->click();
  waitForWork();
  QVERIFY2(words("checkVerdict").startsWith("Everything fits"), qPrintable(words("checkVerdict")));
  QVERIFY(find<QListWidget>("checkEvidence")->count() > 5);
  QVERIFY(find<QListWidget>("checkTried")->count() > 3);

  place_->showStep(SetupStep::Done);
  const QString target = folder_->filePath("hall");
  QVERIFY(!rigInUse().has_value());
  desk().save(target);
  for (const char* name : {"table.json", "lens.json", "rig.json"})
    QVERIFY(QFile::exists(target + "/" + name));
  QCOMPARE(rigInUse()->rig, target + "/rig.json");
  const Rig saved = readRigFile((target + "/rig.json").toStdString()).value();
  QCOMPARE(saved.chain.corrections().front().source, (target + "/lens.json").toStdString());
  QVERIFY(saved.pose.translation_m == readRigFile((target + "/rig.json").toStdString())->pose.translation_m);

  // Another day: everything is there, and one call asks a film again.
  openPlace();
  QTRY_VERIFY(desk().rig().has_value());
  waitForWork();
  desk().checkAgain(kClip + "stop-shot.mp4");
  waitForWork();
  QVERIFY(find<QToolButton>("step6")->isChecked());
  QVERIFY(words("checkVerdict").startsWith("Everything fits"));
}

void SetupStoryTest::aSecondLensIsRefused() {
  putInClip();
  desk().makeRig();
  waitForWork();
  QVERIFY(desk().rig().has_value());
  const Rig before = *desk().rig();
  desk().addLensToChain(kClip + "lens.json");
  QVERIFY2(message().contains("twice"), qPrintable(message()));
  QVERIFY(desk().rig() == before);
  // Another lens in its place makes the rig void.
  desk().useLensFile(kClip + "lens.json");
  QVERIFY(!desk().rig().has_value());
}

void SetupStoryTest::withoutTagsThePlacesAreSaidToBeLessSure() {
  putInClip();
  desk().makeRig();
  waitForWork();
  const double tagged_m = desk().errorMap()->at({0.9, 0.4})->reach95_m();
  desk().change("step", [](SetupState& state) {
    state.withoutTags = true;
    state.withoutBoard = true;
  });
  QVERIFY(!desk().rig().has_value());
  place_->showStep(SetupStep::Rig);
  find<QPushButton>("makeRig")->click();
  waitForWork();
  QVERIFY2(desk().rig().has_value(), qPrintable(message()));
  QVERIFY(desk().errorMap()->at({0.9, 0.4})->reach95_m() > 1.5 * tagged_m);
  QVERIFY2(words("rigGain").contains("Four tags"), qPrintable(words("rigGain")));
}

void SetupStoryTest::aShotTellsWhatTheMapIsWorth() {
  putInClip();
  desk().makeRig();
  waitForWork();
  place_->showStep(SetupStep::Map);
  auto* map = find<ErrorMapView>("errorMap");
  const QString middle = words("budgetPlace");
  map->setFocus();
  QTest::keyClick(map, Qt::Key_Right, Qt::ShiftModifier);
  QCOMPARE(map->place().x, 0.1);
  QVERIFY(words("budgetPlace") != middle);
  QCOMPARE(find<QTableWidget>("budget")->item(0, 0)->text(), QString("Camera's place"));
  find<QDoubleSpinBox>("worthX")->setValue(400.0);
  find<QDoubleSpinBox>("worthCut")->setValue(20.0);
  find<QDoubleSpinBox>("worthAway")->setValue(400.0);
  QVERIFY2(words("worthWords").startsWith("Cut 20.0"), qPrintable(words("worthWords")));
  QVERIFY(words("worthFirst").startsWith("It comes from: "));
  const QString five = words("worthStated");
  find<QDoubleSpinBox>("worthOff")->setValue(1.0);
  QVERIFY(words("worthStated") != five);
  find<QDoubleSpinBox>("worthAway")->setValue(2500.0);
  QVERIFY2(words("worthWords").contains("off the table"), qPrintable(words("worthWords")));
}

void SetupStoryTest::longWorkCanBeStopped() {
  desk().change("step", [](SetupState& state) { state.board = QStringLiteral("chessboard:9x6:25"); });
  QStringList many;
  for (int i = 0; i < 20; ++i)
    many << LensPage::picturesIn({kBoards});
  desk().addStills(many);
  QVERIFY(desk().job().isRunning());
  actions_->at(ActionId::StopWork)->trigger();
  waitForWork();
  QVERIFY2(message().startsWith("Stopped"), qPrintable(message()));
  QVERIFY(desk().stills().empty());
}

void SetupStoryTest::badFilesAreOneSentence() {
  const QString text = folder_->filePath("text.json");
  QVERIFY(writeTextFile(text.toStdString(), "no file of ours").has_value());
  const SetupState before = desk().state();
  desk().openTable(text);
  QVERIFY(message().contains(text));
  desk().useLensFile(text);
  QVERIFY(message().contains(text));
  desk().look(text);
  waitForWork();
  QVERIFY(message().contains(text));
  desk().look(folder_->filePath("none.mp4"));
  waitForWork();
  QVERIFY(message().contains("none.mp4"));
  QVERIFY(desk().state() == before);
  desk().makeRig();
  QVERIFY(message().contains("no film"));
  desk().checkAgain(kClip + "stop-shot.mp4");
  QVERIFY(message().contains("No rig is in use"));
  // Kept state that was damaged.
  QVERIFY(writeTextFile(folder_->filePath("setup/setup.json").toStdString(), "{").has_value() ||
          QDir(folder_->path()).mkpath("setup"));
  QVERIFY(writeTextFile(folder_->filePath("setup/setup.json").toStdString(), "{").has_value());
  openPlace();
  QTRY_VERIFY(message().contains("setup.json"));
}

void SetupStoryTest::aStateComesBackAsItWas() {
  SetupState state;
  state.step = SetupStep::Tags;
  state.name = QStringLiteral("Saal, „Tisch 2“");
  state.stills = {QStringLiteral("/a.png"), QStringLiteral("/b.png")};
  state.tags[0].corners_mm = {-1117.5, 700.0, -1037.5, 700.0};
  state.tags[1].height_mm = 41.5;
  state.head = PictureSide::Top;
  const SetupState back = setupFromText(setupText(state)).value();
  QCOMPARE(setupText(back), setupText(state));
  QVERIFY(back.name == state.name && back.step == state.step && back.stills == state.stills &&
          back.tags == state.tags && back.head == state.head);
  QVERIFY(!setupFromText("{}"));
  // The other two corners: a square of 80 mm below the first two.
  const RailTag tag = tagFrom(state.tags[0], 80.0, 38.0).value();
  QVERIFY(std::abs(tag.corners[2].x + 1.0375) < 1e-12 && std::abs(tag.corners[2].y - 0.620) < 1e-12);
  QVERIFY(std::abs(tag.corners[3].x + 1.1175) < 1e-12 && std::abs(tag.corners[3].z - 0.038) < 1e-12);
  state.tags[0].corners_mm[2] = -937.5;
  QVERIFY(tableOf(state).error().code == ErrorCode::FieldInvalid);
}

/// White, and black again while it is still growing light: from one moment to the next the light changes by little.
void SetupStoryTest::aProjectorsPictureNeverJumps() {
  ProjectorScreen screen;
  screen.resize(160, 100);
  screen.show();
  QImage white(160, 100, QImage::Format_RGB32);
  white.fill(Qt::white);
  const auto light = [&] { return qGray(screen.grab().toImage().pixel(80, 50)); };
  QCOMPARE(light(), 0);
  screen.setPicture(white);
  QVERIFY2(light() < 40, qPrintable(QString::number(light())));
  QTRY_VERIFY(screen.faded() > 0.3);
  const int before = light();
  QVERIFY(before > 40 && before < 250);
  screen.setPicture({});
  const int after = light();
  QVERIFY2(std::abs(after - before) < 40, qPrintable(QStringLiteral("%1 %2").arg(before).arg(after)));
  QTRY_COMPARE(light(), 0);
  screen.setPicture(white);
  QTRY_COMPARE(light(), 255);
  QTest::keyClick(&screen, Qt::Key_B);
  QTRY_COMPARE(light(), 0);
  QTest::keyClick(&screen, Qt::Key_Escape);
  QVERIFY(!screen.isVisible());
}

/// One edit of every kind, then all of them back and on again: the state is what it was at every step.
void SetupStoryTest::everyEditIsUndoneAndDoneAgain() {
  const auto act = [this](ActionId id) { actions_->at(id)->trigger(); };
  std::vector<SetupState> states{desk().state()};
  const auto edited = [&] {
    QVERIFY2(!(desk().state() == states.back()), qPrintable(desk().undoName()));
    states.push_back(desk().state());
  };
  const auto spin = [&](const char* name, double value) {
    find<QDoubleSpinBox>(name)->setValue(value);
    edited();
  };
  place_->showStep(SetupStep::Table);
  states.back() = desk().state();
  auto* name = find<QLineEdit>("tableName");
  QTest::keyClicks(name, "Hall");
  QTest::keyClick(name, Qt::Key_Return);
  edited();
  spin("tableLength", 2400.0);
  spin("tableWidth", 1200.0);
  spin("diagonalA", 2683.0);
  spin("diagonalB", 2684.0);
  place_->showStep(SetupStep::Balls);
  states.back() = desk().state();
  spin("ballDiameter", 57.0);
  spin("ballMass", 165.0);
  place_->showStep(SetupStep::Camera);
  states.back() = desk().state();
  auto* camera = find<QLineEdit>("cameraName");
  QTest::keyClicks(camera, "wide");
  QTest::keyClick(camera, Qt::Key_Return);
  edited();
  place_->showStep(SetupStep::Lens);
  states.back() = desk().state();
  spin("boardSquare", 31.0);
  spin("rulerAcross", 99.0);
  desk().useLensFile(kClip + "lens.json");
  edited();
  find<QCheckBox>("withoutBoard")->click();
  edited();
  place_->showStep(SetupStep::Tags);
  states.back() = desk().state();
  find<QCheckBox>("withoutTags")->click();
  edited();
  spin("tagSide", 90.0);
  spin("tagHeight", 40.0);
  auto* tags = find<QTableWidget>("tagList");
  tags->item(0, 2)->setText("-1117.5");
  edited();
  tags->item(1, 1)->setText("41");
  edited();
  find<QPushButton>("addTag")->click();
  edited();
  tags->setCurrentCell(4, 0);
  find<QPushButton>("removeTag")->click();
  edited();
  desk().openTable(kClip + "table.json");
  edited();
  const auto same = [&](std::size_t at) {
    SetupState expected = states[at];
    // The page shown is that of the edit, which is no part of what was put in.
    expected.step = desk().state().step;
    return desk().state() == expected;
  };
  for (std::size_t at = states.size() - 1; at-- > 0;) {
    act(ActionId::Undo);
    QVERIFY2(same(at), qPrintable(QStringLiteral("undo to %1; next: %2").arg(at).arg(desk().undoName())));
  }
  QVERIFY(desk().undoName().isEmpty());
  QVERIFY(!find<QToolButton>("undoSetup")->isEnabled());
  QCOMPARE(find<QLineEdit>("tableName")->text(), QString());
  act(ActionId::Undo);
  for (std::size_t at = 1; at < states.size(); ++at) {
    act(ActionId::Redo);
    QVERIFY2(same(at), qPrintable(QStringLiteral("redo to %1; next: %2").arg(at).arg(desk().redoName())));
  }
  QVERIFY(desk().redoName().isEmpty());
  QVERIFY2(find<QToolButton>("undoSetup")->toolTip().contains("the table file"),
           qPrintable(find<QToolButton>("undoSetup")->toolTip()));
  // A new edit leaves nothing to do again.
  act(ActionId::Undo);
  find<QDoubleSpinBox>("tagSide")->setValue(85.0);
  QVERIFY(desk().redoName().isEmpty());
  // What was undone is also what is kept.
  openPlace();
  QTRY_COMPARE(desk().state().tagSide_mm, 85.0);
}

void SetupStoryTest::undoingAnEditBringsBackWhatItMadeVoid() {
  putInClip();
  desk().makeRig();
  waitForWork();
  const Rig made = *desk().rig();
  place_->showStep(SetupStep::Tags);
  find<QTableWidget>("tagList")->item(0, 2)->setText("-1100");
  QVERIFY(!desk().rig().has_value());
  actions_->at(ActionId::Undo)->trigger();
  QVERIFY(desk().rig() == made);
  QVERIFY(desk().errorMap() != nullptr);
  actions_->at(ActionId::Redo)->trigger();
  QVERIFY(!desk().rig().has_value());
  // A whole new set-up begun by mistake, too; and what the folder holds is what shows.
  actions_->at(ActionId::Undo)->trigger();
  desk().startAgain();
  QVERIFY(desk().state().film.isEmpty());
  actions_->at(ActionId::Undo)->trigger();
  QVERIFY(desk().rig() == made);
  openPlace();
  QTRY_VERIFY(desk().rig().has_value());
  // To the digits of the file.
  QVERIFY((desk().rig()->pose.translation_m - made.pose.translation_m).norm() < 1e-9);
}

void SetupStoryTest::aRigMadeMeanwhileOfOtherThingsIsNotKept() {
  putInClip();
  desk().makeRig();
  desk().change("step", [](SetupState& state) { state.measured.table.length_m += 0.010; });
  actions_->at(ActionId::Undo)->trigger();
  QVERIFY2(message().contains("Work goes on"), qPrintable(message()));
  waitForWork();
  QVERIFY(!desk().rig().has_value());
  QVERIFY2(message().contains("changed meanwhile"), qPrintable(message()));
}

/// The error map is worked out over the whole table: the window must not wait for it.
void SetupStoryTest::aSetUpIsReadAgainBesideTheWindow() {
  putInClip();
  desk().makeRig();
  waitForWork();
  openPlace();
  QVERIFY(desk().job().isRunning());
  QVERIFY(desk().errorMap() == nullptr);
  QTRY_VERIFY(desk().errorMap() != nullptr);
  waitForWork();
  QVERIFY(desk().filmLook().has_value());
  // Whoever edits before it was read keeps the edit.
  openPlace();
  desk().change("step", [](SetupState& state) { state.tagHeight_mm = 33.0; });
  waitForWork();
  QCOMPARE(desk().state().tagHeight_mm, 33.0);
  QVERIFY(!desk().rig().has_value());
}

FERRULE_TEST(SetupStoryTest)
#include "setup_story_test.moc"
