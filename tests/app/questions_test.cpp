// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QRegularExpression>
#include <QSettings>
#include <QtTest>
#include <set>

#include "app/progress/chart_view.h"
#include "app/progress/progress_place.h"
#include "app/review/shot_filter.h"
#include "core/measure/player_history.h"
#include "core/progress/position_play.h"
#include "core/record/record.h"
#include "tests/app/squad_file.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

struct GuideRow {
  QString question;
  QString where;
};

/// The table "Ask the record" of the user guide.
std::vector<GuideRow> guide() {
  QFile file(QStringLiteral(FERRULE_SOURCE_DIR "/README.md"));
  if (!file.open(QIODevice::ReadOnly)) return {};
  std::vector<GuideRow> rows;
  bool within = false;
  for (const QString& line : QString::fromUtf8(file.readAll()).split('\n')) {
    if (line.startsWith("## ")) within = line == "## Ask the record";
    if (!within || !line.startsWith("| ") || line.startsWith("| question") || line.startsWith("| ---")) continue;
    const QStringList cells = line.split('|');
    rows.push_back({cells.value(1).trimmed(), cells.value(2).trimmed()});
  }
  return rows;
}

/// What stands between stars.
QStringList namesIn(const QString& text) {
  static const QRegularExpression starred(QStringLiteral("\\*([^*]+)\\*"));
  QStringList names;
  for (auto found = starred.globalMatch(text); found.hasNext();)
    names << found.next().captured(1);
  return names;
}

}  // namespace

/// The twenty questions that a record must answer, each within three actions: go to the place, choose, click.
class QuestionsTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void cleanupTestCase();
  void theGuideAnswersTwenty();
  void whatTheGuideNamesIsThere();
  void everyBarOpensItsShots();
  void theWrongSideIsCountedAndOpened();
  void anOpponentCanBeChosen();
  void aCutAndAPocketCanBeChosen();
  void aDrillIsShownOverItsRuns();

 private:
  template <class T>
  T* find(const char* name) const {
    return place_->findChild<T*>(QString::fromLatin1(name));
  }
  [[nodiscard]] const ProgressColumn& column() const { return place_->answer()->columns.front(); }
  [[nodiscard]] std::optional<std::size_t> placeOf(FigureKind kind) const {
    for (std::size_t f = 0; f < column().figures.size(); ++f) {
      if (column().figures[f].kind == kind) return f;
    }
    return std::nullopt;
  }
  [[nodiscard]] ChartView* viewOf(FigureKind kind) const {
    const auto f = placeOf(kind);
    return f ? place_->findChild<ChartView*>(QStringLiteral("figure0-%1").arg(*f)) : nullptr;
  }
  void choose(const char* box, int index);

  std::unique_ptr<QWidget> window_;
  std::unique_ptr<ProgressPlace> place_;
  std::vector<ShotList> opened_;
};

void QuestionsTest::initTestCase() {
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  window_ = std::make_unique<QWidget>();
  const auto* actions = new ActionSet(window_.get());
  place_ = std::make_unique<ProgressPlace>(*actions, [] { return std::int64_t{1'800'000'000'000}; });
  connect(place_.get(), &Place::shotsWanted, this, [this](const ShotList& list) { opened_.push_back(list); });
  place_->openRecord(matchRecord());
  place_->resize(1280, 800);
  place_->show();
  QTRY_VERIFY(place_->answer() != nullptr);
  // Pella plays safe now and then.
  auto* player = find<QComboBox>("firstPlayer");
  choose("firstPlayer", player->findText(QStringLiteral("Pella Oster (invented)")));
}

void QuestionsTest::cleanupTestCase() {
  place_.reset();
  window_.reset();
}

void QuestionsTest::choose(const char* box, int index) {
  const auto before = place_->answer();
  find<QComboBox>(box)->setCurrentIndex(index);
  QTRY_VERIFY(place_->answer() != before);
}

void QuestionsTest::theGuideAnswersTwenty() {
  const auto rows = guide();
  QCOMPARE(rows.size(), std::size_t{20});
  for (const GuideRow& row : rows)
    QVERIFY2(!row.question.isEmpty() && !row.where.isEmpty(), qPrintable(row.question));
}

void QuestionsTest::whatTheGuideNamesIsThere() {
  std::set<QString> there{"Compare with", "Longest"};
  for (const Figure& figure : column().figures)
    there.insert(figure.title.section(':', 0, 0));
  for (const ShotGroup group : kShotGroups)
    there.insert(shotGroupWords(group));
  for (const QLabel* label : place_->findChildren<QLabel*>())
    there.insert(label->text());
  QCOMPARE(find<QCheckBox>("compare")->text().remove('&'), QString("Compare with"));
  int named = 0;
  for (const GuideRow& row : guide()) {
    if (row.where.startsWith("Players")) continue;
    for (const QString& name : namesIn(row.where)) {
      QVERIFY2(there.contains(name), qPrintable(name));
      ++named;
    }
  }
  QVERIFY(named >= 20);
}

void QuestionsTest::everyBarOpensItsShots() {
  // Every chart that the questions ask for is drawn from this record; a sentence would be no answer.
  for (const FigureKind kind :
       {FigureKind::MakesByCueBall, FigureKind::MissSides, FigureKind::Pockets, FigureKind::Entries, FigureKind::Rest,
        FigureKind::NextBall, FigureKind::Game, FigureKind::Safeties, FigureKind::Boxes, FigureKind::Conditions,
        FigureKind::Reliability}) {
    ChartView* view = viewOf(kind);
    QVERIFY(view != nullptr);
    QVERIFY2(view->chart().has_value(), qPrintable(column().figures[*placeOf(kind)].otherwise));
    QVERIFY(!view->spots().empty());
    std::size_t behind = 0;
    for (const ChartSpot& spot : view->spots()) {
      QVERIFY(!spot.words.isEmpty());
      behind += shotsBehind(column().progress, kind, spot).size();
    }
    QVERIFY(behind > 0);
  }
  // The counts of a chart are those of the shots behind it.
  const auto& boxes = column().progress.choices.boxes;
  for (const ChartSpot& spot : viewOf(FigureKind::Boxes)->spots())
    QCOMPARE(static_cast<int>(shotsBehind(column().progress, FigureKind::Boxes, spot).size()),
             boxes[spot.key][spot.column]);
  for (const ChartSpot& spot : viewOf(FigureKind::Reliability)->spots())
    QCOMPARE(static_cast<int>(shotsBehind(column().progress, FigureKind::Reliability, spot).size()),
             column().progress.reliability.bands[spot.key].tried);
  const SafetyMeasure& safeties = column().progress.safeties;
  const std::array counts{safeties.potted, safeties.missed, safeties.safeties, safeties.fouled};
  for (const ChartSpot& spot : viewOf(FigureKind::Safeties)->spots()) {
    if (spot.key == 0) continue;
    QCOMPARE(static_cast<int>(shotsBehind(column().progress, FigureKind::Safeties, spot).size()), counts[spot.key - 1]);
  }
}

void QuestionsTest::theWrongSideIsCountedAndOpened() {
  // Question 6: the place is open (1), the bar is clicked (2), its shots are there.
  const PositionPlay& play = column().progress.position;
  QVERIFY(play.wrongSide.has_value());
  ChartView* view = viewOf(FigureKind::NextBall);
  opened_.clear();
  QTest::mouseClick(view, Qt::LeftButton, {}, view->spots().front().area.center().toPoint());
  QCOMPARE(opened_.size(), std::size_t{1});
  QCOMPARE(static_cast<int>(opened_.front().shots.size()),
           static_cast<int>(std::lround(play.wrongSide->value * play.told)));
  auto record = Record::open(matchRecord().toStdString(), {RecordMode::ReadOnly});
  const auto history = playerHistory(*record, column().wanted.player, {});
  for (const ListedShot& listed : opened_.front().shots) {
    const auto shot = std::ranges::find(history->shots, listed.shot.value, &PlayedShot::id);
    QVERIFY(shot != history->shots.end());
    QVERIFY(isOnWrongSide(*shot, history->tableOf(*shot)) == true);
  }
}

void QuestionsTest::anOpponentCanBeChosen() {
  auto* opponent = find<QComboBox>("firstOpponent");
  QCOMPARE(opponent->count(), 2);  // everybody, and the one partner
  choose("firstOpponent", 1);
  for (const PlayedSession& session : column().progress.history.sessions)
    QVERIFY(session.occasion == Occasion::Match);
  QVERIFY(!column().progress.history.sessions.empty());
  choose("firstOpponent", 0);
}

void QuestionsTest::aCutAndAPocketCanBeChosen() {
  choose("firstCut", 3);  // 15 to 30 degrees
  QVERIFY(!column().progress.history.shots.empty());
  for (const PlayedShot& shot : column().progress.history.shots)
    QCOMPARE(cutBand(*shot.cut_rad), std::size_t{2});
  choose("firstPocket", 1);
  for (const PlayedShot& shot : column().progress.history.shots)
    QVERIFY(shot.pocket == kPocketNames.front());
  choose("firstPocket", 0);
  choose("firstCut", 0);
  choose("firstWay", 1);
  for (const PlayedShot& shot : column().progress.history.shots)
    QCOMPARE(distanceBand(*shot.cueToGhost_m, column().progress.history.tableOf(shot).table.width_m), std::size_t{0});
  choose("firstWay", 0);
}

void QuestionsTest::aDrillIsShownOverItsRuns() {
  const auto& chart = std::get<SeriesChart>(*viewOf(FigureKind::Drill)->chart());
  QCOMPARE(chart.marks.size(), std::size_t{8});
  for (std::size_t i = 0; i < chart.marks.size(); ++i) {
    const PlayedRun& run = column().progress.history.runs[i];
    QCOMPARE(chart.marks[i].value, 100.0 * run.met / run.known);
    QVERIFY(chart.marks[i].interval->holds(chart.marks[i].value));
  }
  QVERIFY2(chart.below.contains("run"), qPrintable(chart.below));
}

FERRULE_TEST(QuestionsTest)
#include "questions_test.moc"
