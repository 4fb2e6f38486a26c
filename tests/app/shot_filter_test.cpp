// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTreeView>
#include <QtTest>

#include "app/film/film_file.h"
#include "app/progress/chart_view.h"
#include "app/progress/progress_place.h"
#include "app/review/record_source.h"
#include "app/review/review_place.h"
#include "app/review/shot_filter.h"
#include "app/window/main_window.h"
#include "core/measure/player_history.h"
#include "core/record/record.h"
#include "tests/app/squad_file.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Review's list of the shots that were asked for, in the whole window.
class ShotFilterTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void conditionsListTheShotsThatMeetThem();
  void everyGroupListsItsOwnShots();
  void everyConditionAsksItsQuestion();
  void tablesAndOpponentsAreThoseOfTheRecord();
  void keysGoThroughTheListAlone();
  void aFigureOpensItsShotsInReview();
  void aListIsPlayedToItsEnd();
  void spaceTicksABoxAndDoesNotPlay();

 private:
  template <class T>
  T* find(const char* name) const {
    return window_->findChild<T*>(QString::fromLatin1(name));
  }
  [[nodiscard]] ReviewPlace& review() const { return *window_->findChild<ReviewPlace*>(); }
  [[nodiscard]] ShotFilter& filter() const { return *window_->findChild<ShotFilter*>(); }
  [[nodiscard]] int rows() const { return find<QListView>("filteredShots")->model()->rowCount(); }
  /// While a shot is being read there is none.
  [[nodiscard]] bool isShown(ShotId shot) const {
    const auto shown = review().desk().shot();
    return shown != nullptr && shown->id == shot;
  }
  /// What the record itself says passes.
  [[nodiscard]] static int counted(const std::string& player, const HistoryFilter& conditions,
                                   const QString& record = squadRecord());
  void key(int code, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QTest::keyClick(window_.get(), Qt::Key(code), modifiers);
  }

  std::unique_ptr<QTemporaryDir> settings_;
  std::unique_ptr<MainWindow> window_;
};

void ShotFilterTest::init() {
  settings_ = std::make_unique<QTemporaryDir>();
  QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings_->path());
  QSettings().clear();
  QLocale::setDefault(QLocale::c());
  window_ = std::make_unique<MainWindow>(Openers{openRecordSource, openFilmFile, {}});
  window_->start(squadRecord());
  window_->show();
  QTRY_VERIFY(review().desk().shot() != nullptr);
  key(Qt::Key_F, Qt::ControlModifier);
  QTRY_COMPARE(rows(), 6 * 8 * 40);
}

void ShotFilterTest::cleanup() {
  window_.reset();
  settings_.reset();
}

int ShotFilterTest::counted(const std::string& player, const HistoryFilter& conditions, const QString& path) {
  auto record = Record::open(path.toStdString(), {RecordMode::ReadOnly});
  if (!record) return -1;
  const auto history = playerHistory(*record, player, {});
  return history ? static_cast<int>(filtered(*history, conditions).shots.size()) : -1;
}

void ShotFilterTest::conditionsListTheShotsThatMeetThem() {
  find<QComboBox>("filterPlayer")->setCurrentIndex(1);
  QTRY_COMPARE(rows(), 8 * 40);
  find<QComboBox>("filterGroup")->setCurrentIndex(1);
  find<QDoubleSpinBox>("filterMostCut")->setValue(45.0);
  find<QComboBox>("filterSide")->setCurrentIndex(1);
  find<QDoubleSpinBox>("filterMostSpeed")->setValue(2.5);
  HistoryFilter conditions;
  conditions.group = ShotGroup::Missed;
  conditions.mostCut_rad = 45.0 * 3.14159265358979 / 180.0;
  conditions.missSide = MissSide::Under;
  conditions.mostSpeed_mps = 2.5;
  QVERIFY(filter().filter().missSide == MissSide::Under);
  const int expected = counted(filter().player(), conditions);
  QVERIFY(expected > 0 && expected < 8 * 40);
  QTRY_COMPARE(rows(), expected);
  for (const ListedShot& shot : filter().list().shots)
    QVERIFY(shot.outcome == Outcome::Miss || shot.outcome == Outcome::Scratch || shot.outcome == Outcome::Foul);
}

void ShotFilterTest::everyGroupListsItsOwnShots() {
  auto* group = find<QComboBox>("filterGroup");
  QCOMPARE(group->count(), 1 + static_cast<int>(kShotGroups.size()));
  find<QComboBox>("filterPlayer")->setCurrentIndex(1);
  for (int row = 1; row < group->count(); ++row) {
    group->setCurrentIndex(row);
    HistoryFilter conditions;
    conditions.group = kShotGroups[static_cast<std::size_t>(row - 1)];
    QVERIFY(filter().filter().group == conditions.group);
    QTRY_COMPARE(rows(), counted(filter().player(), conditions));
  }
}

/// Every condition of the list asks the same as the record does with it.
void ShotFilterTest::everyConditionAsksItsQuestion() {
  find<QComboBox>("filterPlayer")->setCurrentIndex(1);
  const int all = counted(filter().player(), {});
  const auto listed = [&](const HistoryFilter& conditions) {
    QVERIFY(filter().filter() == conditions);
    const int wanted = counted(filter().player(), conditions);
    QVERIFY2(wanted < all, "a condition that keeps nothing away asks nothing");
    QTRY_COMPARE(rows(), wanted);
  };
  HistoryFilter side;
  side.cutSide = CutSide::Right;
  find<QComboBox>("filterCutSide")->setCurrentIndex(2);
  listed(side);
  find<QComboBox>("filterCutSide")->setCurrentIndex(0);

  HistoryFilter late;
  late.leastMinutes = 40.0;
  find<QSpinBox>("filterMinutes")->setValue(40);
  listed(late);
  find<QSpinBox>("filterMinutes")->setValue(0);

  HistoryFilter lessons;
  lessons.occasion = Occasion::Lesson;
  find<QComboBox>("filterOccasion")->setCurrentIndex(3);
  listed(lessons);
  find<QComboBox>("filterOccasion")->setCurrentIndex(0);

  auto* until = find<QDateEdit>("filterTo");
  find<QCheckBox>("filterUntil")->setChecked(true);
  until->setDate(QDate(2000, 1, 1));
  HistoryFilter before;
  before.until_ms = QDate(2000, 1, 2).startOfDay().toMSecsSinceEpoch();
  listed(before);
  find<QCheckBox>("filterUntil")->setChecked(false);
}

void ShotFilterTest::tablesAndOpponentsAreThoseOfTheRecord() {
  review().desk().openRecord(matchRecord());
  QTRY_VERIFY(review().desk().recordPath() == matchRecord() && !review().desk().sessions().empty());
  const std::vector<SessionSummary> sessions = review().desk().sessions();
  const auto match = std::ranges::find_if(sessions, [](const auto& session) { return session.players.size() == 2; });
  QVERIFY(match != sessions.end());
  key(Qt::Key_F, Qt::ControlModifier);
  auto* player = find<QComboBox>("filterPlayer");
  QTRY_VERIFY(player->findData(QString::fromStdString(match->players[0])) > 0);
  player->setCurrentIndex(player->findData(QString::fromStdString(match->players[0])));
  auto* opponent = find<QComboBox>("filterOpponent");
  opponent->setCurrentIndex(opponent->findData(QString::fromStdString(match->players[1])));
  HistoryFilter against;
  against.opponent = match->players[1];
  QVERIFY(filter().filter() == against);
  const int all = counted(filter().player(), {}, matchRecord());
  const int between = counted(filter().player(), against, matchRecord());
  QVERIFY(between > 0 && between < all);
  QTRY_COMPARE(rows(), between);
  opponent->setCurrentIndex(0);
  auto* table = find<QComboBox>("filterTable");
  table->setCurrentIndex(table->findData(QString::fromStdString(match->tableName)));
  HistoryFilter there;
  there.table = match->tableName;
  QVERIFY(filter().filter() == there);
  QTRY_COMPARE(rows(), counted(filter().player(), there, matchRecord()));
  // What is chosen stays when the same record is read again.
  filter().setSessions(sessions);
  QVERIFY(filter().filter() == there);
}

void ShotFilterTest::keysGoThroughTheListAlone() {
  find<QComboBox>("filterPlayer")->setCurrentIndex(2);
  QTRY_COMPARE(rows(), 8 * 40);
  const auto shown = [&](std::size_t row) { return isShown(filter().list().shots[row].shot); };
  QTRY_VERIFY(shown(0));
  key(Qt::Key_PageDown);
  QTRY_VERIFY(shown(1));
  key(Qt::Key_PageUp);
  key(Qt::Key_PageUp);
  QTRY_VERIFY(shown(0));
  QCOMPARE(review().desk().shot()->playerName, filter().player());
  find<QPushButton>("closeFilter")->click();
  QVERIFY(find<QTreeView>("shotTree")->isVisible());
}

void ShotFilterTest::aFigureOpensItsShotsInReview() {
  key(Qt::Key_5, Qt::AltModifier);
  auto& progress = *window_->findChild<ProgressPlace*>();
  QTRY_VERIFY(progress.answer() != nullptr);
  auto* view = progress.findChild<ChartView*>(QStringLiteral("figure0-0"));  // the aim, session by session
  QTest::keyClick(view, Qt::Key_Right);
  QTest::keyClick(view, Qt::Key_Return);
  QVERIFY(review().isVisible());
  QVERIFY(rows() > 0 && rows() <= 40);
  QTRY_VERIFY(isShown(filter().list().shots.front().shot));
}

void ShotFilterTest::aListIsPlayedToItsEnd() {
  ShotList list = filter().list();
  list.shots.resize(2);
  review().showShots(list);
  QTRY_VERIFY(isShown(list.shots[0].shot));
  key(Qt::Key_Space, Qt::ControlModifier);
  QTRY_COMPARE(filter().current(), 1);
  QTRY_VERIFY(isShown(list.shots[1].shot));
}

void ShotFilterTest::spaceTicksABoxAndDoesNotPlay() {
  auto* since = find<QCheckBox>("filterSince");
  QTest::keyClick(since, Qt::Key_Space);
  QVERIFY(since->isChecked());
  QVERIFY(!review().desk().playhead().isPlaying());
  auto* player = find<QComboBox>("filterPlayer");
  player->setCurrentIndex(1);
  QTest::keyClick(player, Qt::Key_PageDown);
  QVERIFY(player->currentIndex() > 1);
}

FERRULE_TEST(ShotFilterTest)
#include "shot_filter_test.moc"
