// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTreeView>
#include <QtTest>

#include "app/picture/plan_view.h"
#include "app/review/record_source.h"
#include "app/review/review_place.h"
#include "app/review/shot_tree_model.h"
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
  void whoPlayedAndTheRulingAreChosenFromMenus();
  void namesAreSwappedAndPutBack();
  void theMenuOfAPlaceHoldsEveryCorrection();
  void whatCannotBeSaidIsOneSentence();
  void aRecordThatIsGoneIsOneSentenceAndNoNewFile();
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
  // The first rests under the second.
  window_->findChildren<QPushButton*>("takeBack").first()->click();
  QTRY_VERIFY(find<QLabel>("message")->text().contains(QStringLiteral("later correction")));
  QCOMPARE(reading().outcome, Outcome::Safety);
  window_->findChildren<QPushButton*>("takeBack").last()->click();
  QTRY_VERIFY(desk().shot()->playerName.empty());
  QTRY_COMPARE(window_->findChildren<QPushButton*>("takeBack").size(), 1);
  // It was a step of undo; the other one is the next.
  key(Qt::Key_Z, Qt::ControlModifier);
  QTRY_COMPARE(reading().outcome, Outcome::Pot);
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
  for (const char* part : {"outcomes", "targets", "firstContacts", "players", "rulings", "names"})
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
