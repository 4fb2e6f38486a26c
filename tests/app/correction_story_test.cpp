// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QComboBox>
#include <QCompleter>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QTreeView>
#include <QtTest>

#include "app/picture/plan_view.h"
#include "app/review/compare_view.h"
#include "app/review/record_source.h"
#include "app/review/review_place.h"
#include "app/review/shot_tree_model.h"
#include "app/session/table_editor.h"
#include "app/window/main_window.h"
#include "core/measure/record_entries.h"
#include "tests/app/fresh_settings.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// The sample's first frame as two players' match, ruled as it was measured.
void writeMatch(const std::string& path) {
  auto record = Record::open(path);
  QVERIFY(record.has_value());
  const SessionContent content = sampleContent();
  NewSession session;
  session.name = content.session.name;
  session.table = content.table;
  for (const char* name : {"Nerea", "Ivo"}) {
    Player player;
    player.name = name;
    session.players.push_back(record->addPlayer(player).value());
  }
  const auto sessionId = record->addSession(session);
  FilmEntry film = *content.frames[0].frame.film;
  film.sha256 = std::string(64, 'a');
  const auto filmId = record->addFilm(film);
  QVERIFY(sessionId.has_value() && filmId.has_value());
  const auto frame = record->addFrame({*sessionId, "nine-ball", *filmId, sampleRig()});
  QVERIFY(frame.has_value());
  FilmReferee referee(worldRules(Game::NineBall), content.table);
  for (int number = 1; number <= 3; ++number) {
    const StoredShot shot = sampleShot(number);
    const FilmRuling ruling = referee.judge({shot.reading, shot.tracks});
    QVERIFY(record->appendShot(*frame, shot.reading, shot.tracks, std::nullopt, entryOf(ruling.ruled)).has_value());
  }
}

}  // namespace

class CorrectionStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void aResultIsCorrectedByOneKeyAndTakenBackByAnother();
  void ballAndPocketAreChosenByKeysAlone();
  void aCorrectionIsTakenBackWhereItIsListed();
  void anOldCorrectionIsTakenBackAndSaidAgain();
  void twoShotsAreJoinedByKeysAndPartedAgain();
  void twoShotsStandSideBySide();
  void whoPlayedAndTheRulingAreChosenFromMenus();
  void namesAreSwappedAndPutBack();
  void theMenuOfAPlaceHoldsEveryCorrection();
  void whatCannotBeSaidIsOneSentence();
  void aRecordThatIsGoneIsOneSentenceAndNoNewFile();
  void thePlanIsSavedAsItIsShown();
  void aBallIsDraggedToWhereItLay();
  void aBallIsMovedByKeysToWhereItCameToRest();
  void theStrikeIsMovedToTheImageThatShowsIt();
  void notesAreWrittenTakenAwayAndPutBack();
  void tagsAreGivenCompletedAndFilteredBy();
  void anotherRecordForgetsTheStepsOfTheFirst();

 private:
  void open(const ReviewSourceOpener& opener, const QString& record);
  template <class T>
  T* find(const char* name) const {
    return window_->findChild<T*>(QString::fromLatin1(name));
  }
  [[nodiscard]] ReviewPlace& review() const { return *window_->findChild<ReviewPlace*>(); }
  [[nodiscard]] ReviewDesk& desk() const { return review().desk(); }
  [[nodiscard]] const ShotReading& reading() const { return desk().shot()->reading; }
  void key(int code, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QTest::keyClick(window_.get(), Qt::Key(code), modifiers);
  }
  /// Opens a menu by its key and chooses from it.
  void choose(int code, const char* action) {
    key(code);
    auto* menu = find<QMenu>("correctionMenu");
    QVERIFY(menu != nullptr && menu->isVisible());
    auto* chosen = menu->findChild<QAction*>(QString::fromLatin1(action));
    QVERIFY2(chosen != nullptr, action);
    chosen->trigger();
    menu->close();
    backToWindow();
  }
  /// A closed menu hands the keys back to the window; without a window manager somebody must say so.
  void backToWindow() {
    QTRY_VERIFY(find<QMenu>("correctionMenu") == nullptr);
    window_->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(window_.get()));
  }

  std::unique_ptr<FreshSettings> folder_;
  std::unique_ptr<MainWindow> window_;
  QString path_;
};

void CorrectionStoryTest::init() {
  folder_ = std::make_unique<FreshSettings>();
  path_ = folder_->filePath(QStringLiteral("match.sqlite"));
  writeMatch(path_.toStdString());
  open(openRecordSource, path_);
}

void CorrectionStoryTest::cleanup() {
  window_.reset();
  folder_.reset();
}

void CorrectionStoryTest::open(const ReviewSourceOpener& opener, const QString& record) {
  window_ = std::make_unique<MainWindow>(Openers{opener, sampleFilmOpener(), {}});
  window_->setLocale(QLocale::c());
  window_->start(record);
  window_->resize(1280, 720);
  window_->show();
  static_cast<void>(QTest::qWaitForWindowActive(window_.get()));
  QTRY_VERIFY(desk().shot() != nullptr);
}

void CorrectionStoryTest::aResultIsCorrectedByOneKeyAndTakenBackByAnother() {
  QCOMPARE(reading().outcome, Outcome::Pot);
  QVERIFY(find<QLabel>("correctedMark") == nullptr);
  QTRY_VERIFY(desk().countsFilmImages());
  key(Qt::Key_Right);
  const int image = desk().playhead().index();

  key(Qt::Key_I);
  QTRY_COMPARE(reading().outcome, Outcome::Miss);
  QVERIFY(reading().pocketed.empty());
  QTRY_VERIFY(find<QLabel>("correctedMark") != nullptr);
  QVERIFY(find<QLabel>("correctedMark")->text().contains(QStringLiteral("result")));
  QCOMPARE(find<QLabel>("correctionLine")->text(), QStringLiteral("Result: measured made, corrected to missed"));
  const QModelIndex row = find<QTreeView>("shotTree")->currentIndex();
  QTRY_COMPARE(row.siblingAtColumn(ShotTreeModel::Result).data().toString(), QStringLiteral("missed\u2009*"));
  // The moment and the row stay.
  QCOMPARE(desk().playhead().index(), image);
  QCOMPARE(row.data(ShotTreeModel::NumberRole).toInt(), 1);

  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_COMPARE(reading().outcome, Outcome::Pot);
  QTRY_VERIFY(find<QLabel>("correctedMark") == nullptr);
  QVERIFY(reading() == sampleShot(1).reading);
  key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  QTRY_COMPARE(reading().outcome, Outcome::Miss);
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_COMPARE(reading().outcome, Outcome::Pot);
  // There is nothing more to undo.
  key(Qt::Key_Z, Qt::ControlModifier);
  key(Qt::Key_S);
  QTRY_COMPARE(reading().outcome, Outcome::Safety);
}

void CorrectionStoryTest::ballAndPocketAreChosenByKeysAlone() {
  key(Qt::Key_T);
  auto* menu = find<QMenu>("correctionMenu");
  QVERIFY(menu != nullptr && menu->isVisible());
  QTest::keyClick(menu, Qt::Key_Down);   // from the 3 to the 12
  QTest::keyClick(menu, Qt::Key_Right);  // to its pockets
  auto* pockets = qobject_cast<QMenu*>(QApplication::activePopupWidget());
  QVERIFY(pockets != nullptr && pockets != menu);
  QTest::keyClick(pockets, Qt::Key_Down);
  QTest::keyClick(pockets, Qt::Key_Return);
  backToWindow();
  QTRY_VERIFY(reading().target && reading().target->ball == BallName(12));
  QVERIFY(reading().target->called);
  QVERIFY(reading().target->pocket == static_cast<PocketName>(1));
  // The 12 did not fall.
  QCOMPARE(reading().outcome, Outcome::Miss);
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(reading() == sampleShot(1).reading);
}

void CorrectionStoryTest::aCorrectionIsTakenBackWhereItIsListed() {
  key(Qt::Key_S);
  QTRY_COMPARE(reading().outcome, Outcome::Safety);
  choose(Qt::Key_Y, "player-Ivo");
  QTRY_COMPARE(desk().shot()->playerName, std::string("Ivo"));
  QTRY_COMPARE(window_->findChildren<QPushButton*>("takeBack").size(), 2);
  // The first is taken back from under the second, which stays.
  window_->findChildren<QPushButton*>("takeBack").first()->click();
  QTRY_COMPARE(reading().outcome, Outcome::Pot);
  QCOMPARE(desk().shot()->playerName, std::string("Ivo"));
  QTRY_COMPARE(window_->findChildren<QPushButton*>("takeBack").size(), 1);
  // It was a step of undo; the other one is the next, though it was said anew in between.
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(desk().shot()->playerName.empty());
  key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  QTRY_COMPARE(desk().shot()->playerName, std::string("Ivo"));
  key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  QTRY_COMPARE(reading().outcome, Outcome::Safety);
}

/// A correction of an earlier evening: it is no step of undo, and can be redone all the same.
void CorrectionStoryTest::anOldCorrectionIsTakenBackAndSaidAgain() {
  key(Qt::Key_S);
  QTRY_COMPARE(reading().outcome, Outcome::Safety);
  open(openRecordSource, path_);
  QCOMPARE(reading().outcome, Outcome::Safety);
  QTRY_VERIFY(find<QPushButton>("takeBack") != nullptr);
  find<QPushButton>("takeBack")->click();
  QTRY_COMPARE(reading().outcome, Outcome::Pot);
  key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  QTRY_COMPARE(reading().outcome, Outcome::Safety);
}

void CorrectionStoryTest::twoShotsAreJoinedByKeysAndPartedAgain() {
  const auto shots = [&] { return desk().content()->frames[0].shots.size(); };
  const ShotId first = desk().shot()->id;
  choose(Qt::Key_J, "join-next");
  QTRY_COMPARE(shots(), std::size_t{2});
  QTRY_VERIFY(find<QLabel>("correctionLine") != nullptr);
  QVERIFY(find<QLabel>("correctionLine")->text().startsWith(QStringLiteral("Measured as two shots")));
  QCOMPARE(desk().shot()->id, first);
  QVERIFY(reading().rest_s > 20.0);
  // The second one is struck at 20 s.
  desk().playhead().seek(20.0);
  choose(Qt::Key_J, "split-here");
  QTRY_COMPARE(shots(), std::size_t{3});
  key(Qt::Key_PageDown);
  QTRY_COMPARE(reading().number, 2);
  QVERIFY(std::abs(reading().strike_s - 20.0) < 0.05);
  key(Qt::Key_Z, Qt::ControlModifier);
  // What is shown is gone; the shot that holds it is shown instead.
  QTRY_COMPARE(shots(), std::size_t{2});
  QTRY_COMPARE(desk().shot()->id, first);
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_COMPARE(shots(), std::size_t{3});
  QTRY_VERIFY(reading() == sampleShot(1).reading);
}

void CorrectionStoryTest::twoShotsStandSideBySide() {
  key(Qt::Key_Q);
  auto* compare = find<CompareView>("compareView");
  QTRY_VERIFY(compare->isVisible());
  QVERIFY(!find<PlanView>("planView")->isVisible());
  key(Qt::Key_PageDown);
  QTRY_VERIFY(compare->other() != nullptr);
  QCOMPARE(compare->held()->reading.number, 1);
  QCOMPARE(compare->other()->reading.number, 2);
  key(Qt::Key_Q);
  QTRY_VERIFY(find<PlanView>("planView")->isVisible());
}

void CorrectionStoryTest::whoPlayedAndTheRulingAreChosenFromMenus() {
  choose(Qt::Key_Y, "player-Ivo");
  QTRY_COMPARE(desk().shot()->playerName, std::string("Ivo"));
  auto ruled = rulingFromText(desk().shot()->ruling->content);
  QCOMPARE(ruled->ruling.shooter, Seat::Second);
  choose(Qt::Key_U, "foul-double-hit");
  QTRY_VERIFY(!desk().shot()->ruling->fouls.empty());
  ruled = rulingFromText(desk().shot()->ruling->content);
  QCOMPARE(ruled->ruling.fouls.at(0).kind, FoulKind::DoubleHit);
  QCOMPARE(ruled->ruling.next.value, Seat::First);
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(desk().shot()->ruling->fouls.empty());
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(desk().shot()->playerName.empty());
}

void CorrectionStoryTest::namesAreSwappedAndPutBack() {
  const auto before = desk().shot()->tracks;
  choose(Qt::Key_W, "swap-3-12-whole");
  QTRY_VERIFY(desk().shot()->tracks != before);
  QVERIFY(reading().firstContact == BallName(12));
  QVERIFY(ballIn(reading().before, BallName(3))->position == (TablePoint{-0.9, 0.3}));
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(desk().shot()->tracks == before);
  QVERIFY(reading() == sampleShot(1).reading);
}

void CorrectionStoryTest::theMenuOfAPlaceHoldsEveryCorrection() {
  auto* plan = find<PlanView>("planView");
  const QPoint middle = plan->rect().center();
  QContextMenuEvent event(QContextMenuEvent::Mouse, middle, plan->mapToGlobal(middle));
  QApplication::sendEvent(plan, &event);
  auto* menu = find<QMenu>("correctionMenu");
  QVERIFY(menu != nullptr && menu->isVisible());
  for (const char* part :
       {"outcomes", "targets", "firstContacts", "players", "rulings", "names", "parts", "placements"})
    QVERIFY2(menu->findChild<QMenu*>(QString::fromLatin1(part)) != nullptr, part);
  menu->findChild<QAction*>(QStringLiteral("first-contact-12"))->trigger();
  menu->close();
  backToWindow();
  QTRY_VERIFY(reading().firstContact == BallName(12));
}

void CorrectionStoryTest::whatCannotBeSaidIsOneSentence() {
  key(Qt::Key_PageDown);
  QTRY_COMPARE(reading().number, 2);
  key(Qt::Key_PageDown);
  QTRY_COMPARE(reading().number, 3);
  key(Qt::Key_M);
  QTRY_VERIFY(find<QLabel>("message")->isVisible());
  QVERIFY(find<QLabel>("message")->text().contains(QStringLiteral("which ball was meant")));
  QCOMPARE(reading().outcome, Outcome::Safety);
}

void CorrectionStoryTest::aRecordThatIsGoneIsOneSentenceAndNoNewFile() {
  open(sampleOpener(), QStringLiteral("sample"));
  key(Qt::Key_I);
  QTRY_VERIFY(find<QLabel>("message")->isVisible());
  QVERIFY(find<QLabel>("message")->text().contains(QStringLiteral("sample")));
  QVERIFY(!QFileInfo::exists(QStringLiteral("sample")));
  QCOMPARE(reading().outcome, Outcome::Pot);
}

void CorrectionStoryTest::thePlanIsSavedAsItIsShown() {
  auto* plan = find<PlanView>("planView");
  // Saying where the file is takes a line from the plan.
  const QSize shown = plan->size();
  const QPointF twelve = plan->mapping().screenFromTable({-0.9, 0.3});
  const QPointF cloth = plan->mapping().screenFromTable({-0.9, 0.0});
  const QString png = folder_->filePath(QStringLiteral("shot.png"));
  review().savePicture(png);
  const QImage saved(png);
  QCOMPARE(saved.size(), shown * 2);
  QVERIFY(saved.pixelColor((twelve * 2.0).toPoint()) != saved.pixelColor((cloth * 2.0).toPoint()));
  const QString svg = folder_->filePath(QStringLiteral("shot.svg"));
  review().savePicture(svg);
  QFile file(svg);
  QVERIFY(file.open(QIODevice::ReadOnly));
  const QByteArray text = file.readAll();
  QVERIFY(text.contains("<svg") && !text.contains("<image"));
  review().savePicture(folder_->filePath(QStringLiteral("no/such/folder/shot.png")));
  QVERIFY(find<QLabel>("message")->text().contains(QStringLiteral("cannot be written")));
}

void CorrectionStoryTest::aBallIsDraggedToWhereItLay() {
  key(Qt::Key_D);
  auto* table = find<TableEditor>("placeEditor");
  QTRY_VERIFY(table->isVisible());
  QVERIFY(!find<PlanView>("planView")->isVisible());
  const PlanMapping& mapping = table->mapping();
  const BallName twelve{12};
  const TablePoint lay = ballIn(reading().before, twelve)->position;
  const QPoint from = mapping.screenFromTable(lay).toPoint();
  const QPoint to = from + QPoint(60, 30);
  QTest::mousePress(table, Qt::LeftButton, {}, from);
  QTest::mouseMove(table, from + QPoint(30, 15));
  QTest::mouseMove(table, to);
  QTest::mouseRelease(table, Qt::LeftButton, {}, to);
  QTRY_VERIFY(ballIn(reading().before, twelve)->position != lay);
  const TablePoint wanted = mapping.tableFromScreen(to);
  QVERIFY(distance(ballIn(reading().before, twelve)->position, wanted) < 0.002);
  QTRY_VERIFY(find<QLabel>("correctionLine") != nullptr);
  QVERIFY(find<QLabel>("correctionLine")->text().startsWith(QStringLiteral("The 12 moved by")));
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(ballIn(reading().before, twelve)->position == lay);
  key(Qt::Key_D);
  key(Qt::Key_D);
  QTRY_VERIFY(find<PlanView>("planView")->isVisible());
}

void CorrectionStoryTest::aBallIsMovedByKeysToWhereItCameToRest() {
  key(Qt::Key_D);
  key(Qt::Key_D);
  auto* table = find<TableEditor>("placeEditor");
  QTRY_VERIFY(table->isVisible());
  const TablePoint lay = ballIn(reading().after, kCueBall)->position;
  QTest::keyClick(table, Qt::Key_Tab);  // the first ball: the cue ball
  for (int step = 0; step < 3; ++step)
    QTest::keyClick(table, Qt::Key_Right, Qt::ShiftModifier);
  // Three steps are one correction.
  QTRY_VERIFY(std::abs(distance(ballIn(reading().after, kCueBall)->position, lay) - 0.03) < 1e-5);
  QCOMPARE(reading().before, sampleShot(1).reading.before);
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(reading() == sampleShot(1).reading);
}

void CorrectionStoryTest::theStrikeIsMovedToTheImageThatShowsIt() {
  QTRY_VERIFY(desk().countsFilmImages());
  for (int image = 0; image < 6; ++image)
    key(Qt::Key_Right);
  choose(Qt::Key_E, "rest-here");
  // A tenth of a second after the strike.
  QTRY_VERIFY(std::abs(reading().rest_s - 10.1) < 1e-4);
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(reading() == sampleShot(1).reading);
}

void CorrectionStoryTest::notesAreWrittenTakenAwayAndPutBack() {
  auto* who = find<QLineEdit>("remarkWho");
  who->setText(QStringLiteral("Cleo"));
  emit who->editingFinished();
  key(Qt::Key_N, Qt::ControlModifier);
  auto* line = find<QLineEdit>("newNote");
  QVERIFY(line->hasFocus());
  QTest::keyClicks(line, QStringLiteral("Bridge too short"));
  QTest::keyClick(line, Qt::Key_Return);
  QTRY_COMPARE(desk().shot()->notes.size(), std::size_t{1});
  QCOMPARE(desk().shot()->notes[0].text, std::string("Bridge too short"));
  QCOMPARE(desk().shot()->notes[0].who, std::string("Cleo"));
  QVERIFY(desk().shot()->notes[0].when > 0);
  auto* notes = find<QListWidget>("notes");
  QTRY_COMPARE(notes->count(), 1);
  QVERIFY(notes->item(0)->text().contains(QStringLiteral("Bridge too short \u2014 Cleo")));
  QVERIFY(line->text().isEmpty());
  // Letters in the line are no keys of the window.
  QCOMPARE(reading().outcome, Outcome::Pot);

  notes->setFocus();
  notes->setCurrentRow(0);
  QTest::keyClick(notes, Qt::Key_Delete);
  QTRY_VERIFY(desk().shot()->notes.empty());
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_COMPARE(desk().shot()->notes.size(), std::size_t{1});
  QCOMPARE(desk().shot()->notes[0].who, std::string("Cleo"));
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_VERIFY(desk().shot()->notes.empty());
  key(Qt::Key_Y, Qt::ControlModifier);
  QTRY_COMPARE(desk().shot()->notes.size(), std::size_t{1});
  key(Qt::Key_Y, Qt::ControlModifier);
  QTRY_VERIFY(desk().shot()->notes.empty());
}

void CorrectionStoryTest::tagsAreGivenCompletedAndFilteredBy() {
  choose(Qt::Key_Y, "player-Ivo");
  QTRY_COMPARE(desk().shot()->playerName, std::string("Ivo"));
  key(Qt::Key_G, Qt::ControlModifier);
  auto* line = find<QLineEdit>("newTag");
  QVERIFY(line->hasFocus());
  QTest::keyClicks(line, QStringLiteral("thin cut"));
  QTest::keyClick(line, Qt::Key_Return);
  QTRY_COMPARE(desk().shot()->tags, std::vector<std::string>{"thin cut"});
  QTRY_VERIFY(find<QPushButton>("tag-thin cut") != nullptr);
  // Of the record's tags the one that begins so is offered.
  line->completer()->setCompletionPrefix(QStringLiteral("Th"));
  QTRY_COMPARE(line->completer()->currentCompletion(), QStringLiteral("thin cut"));

  key(Qt::Key_F, Qt::ControlModifier);
  auto* tags = find<QComboBox>("filterTag");
  QTRY_COMPARE(tags->count(), 2);
  tags->setCurrentIndex(1);
  QTRY_COMPARE(find<QListView>("filteredShots")->model()->rowCount(), 1);
  find<QPushButton>("closeFilter")->click();

  find<QPushButton>("tag-thin cut")->click();
  QTRY_VERIFY(desk().shot()->tags.empty());
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_COMPARE(desk().shot()->tags, std::vector<std::string>{"thin cut"});
}

void CorrectionStoryTest::anotherRecordForgetsTheStepsOfTheFirst() {
  key(Qt::Key_I);
  QTRY_COMPARE(reading().outcome, Outcome::Miss);
  QTRY_VERIFY(review().corrections().undoable() != nullptr);
  const QString other = folder_->filePath(QStringLiteral("other.sqlite"));
  writeMatch(other.toStdString());
  review().openRecord(other);
  QTRY_COMPARE(desk().recordPath(), other);
  QVERIFY(review().corrections().undoable() == nullptr);
  QTRY_VERIFY(desk().shot() != nullptr);
  key(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(reading().outcome, Outcome::Pot);
  // The first keeps its correction.
  review().openRecord(path_);
  QTRY_COMPARE(desk().recordPath(), path_);
  QTRY_VERIFY(desk().shot() != nullptr);
  QCOMPARE(reading().outcome, Outcome::Miss);
}

FERRULE_TEST(CorrectionStoryTest)
#include "correction_story_test.moc"
