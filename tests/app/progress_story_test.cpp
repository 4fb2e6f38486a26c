// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>

#include "app/progress/chart_export.h"
#include "app/progress/chart_view.h"
#include "app/progress/progress_place.h"
#include "app/report/shot_charts.h"
#include "core/record/record.h"
#include "tests/app/squad_file.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// The Progress place alone.
class ProgressStoryTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void withoutARecordItSaysWhatToDo();
  void figuresOfTheFirstPlayerAppear();
  void aPeriodWithoutShotsIsASentence();
  void cellsOfTheGridHoldTheShotsThatTheyCount();
  void keysTellNumbersAndOpenTheShots();
  void twoPlayersStandSideBySide();
  void aChartIsExported();
  void everyFieldHasANameThatIsReadOut();

 private:
  void open(const QString& record);
  void waitForAnswer();
  template <class T>
  T* find(const char* name) const {
    return place_->findChild<T*>(QString::fromLatin1(name));
  }
  /// The view of a figure of the first column.
  [[nodiscard]] ChartView* viewOf(FigureKind kind) const {
    const auto& figures = place_->answer()->columns.front().figures;
    for (std::size_t f = 0; f < figures.size(); ++f) {
      if (figures[f].kind == kind) return place_->findChild<ChartView*>(QStringLiteral("figure0-%1").arg(f));
    }
    return nullptr;
  }

  std::unique_ptr<QWidget> window_;
  ActionSet* actions_ = nullptr;
  std::unique_ptr<ProgressPlace> place_;
  std::vector<ShotList> wanted_;
};

void ProgressStoryTest::init() {
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  window_ = std::make_unique<QWidget>();
  actions_ = new ActionSet(window_.get());
  place_ = std::make_unique<ProgressPlace>(*actions_, [] { return std::int64_t{1'800'000'000'000}; });
  wanted_.clear();
  connect(place_.get(), &Place::shotsWanted, this, [this](const ShotList& list) { wanted_.push_back(list); });
}

void ProgressStoryTest::cleanup() {
  place_.reset();
  window_.reset();
}

void ProgressStoryTest::open(const QString& record) {
  place_->openRecord(record);
  place_->resize(1280, 800);
  place_->show();
  waitForAnswer();
}

void ProgressStoryTest::waitForAnswer() {
  const auto before = place_->answer();
  QTRY_VERIFY(place_->answer() && place_->answer() != before);
}

void ProgressStoryTest::withoutARecordItSaysWhatToDo() {
  place_->show();
  QVERIFY(find<QWidget>("emptyProgress")->isVisible());
  QVERIFY(find<QLabel>("emptyProgressWords")->text().contains("open a record"));
}

void ProgressStoryTest::figuresOfTheFirstPlayerAppear() {
  open(squadRecord());
  const ProgressColumn& column = place_->answer()->columns.front();
  QCOMPARE(QString::fromStdString(column.wanted.player), find<QComboBox>("firstPlayer")->currentText());
  QCOMPARE(column.progress.history.sessions.size(), std::size_t{8});
  for (const FigureKind kind : {FigureKind::AimTrend, FigureKind::MakesByCueBall, FigureKind::Target,
                                FigureKind::SpeedAsked, FigureKind::MissMap, FigureKind::Rest})
    QVERIFY2(viewOf(kind)->chart().has_value(), qPrintable(QString::number(static_cast<int>(kind))));
  const auto& trend = std::get<SeriesChart>(*viewOf(FigureKind::AimTrend)->chart());
  QVERIFY(trend.trend && trend.trend->band.size() >= 2);
  // Every figure that is no chart says why.
  for (const Figure& figure : column.figures)
    QVERIFY(figure.chart.has_value() != !figure.otherwise.isEmpty());
  QVERIFY(find<QLabel>("basis")->text().contains("320 "));
}

void ProgressStoryTest::aPeriodWithoutShotsIsASentence() {
  open(squadRecord());
  auto* period = find<QComboBox>("firstPeriod");
  find<QDateEdit>("firstTo")->setDate(QDate(2019, 12, 31));
  find<QDateEdit>("firstFrom")->setDate(QDate(2019, 1, 1));
  const auto before = place_->answer();
  period->setCurrentIndex(period->count() - 1);
  QTRY_VERIFY(place_->answer()->columns.front().figures.empty());
  QVERIFY(find<QLabel>("nothing0")->text().contains("no shot"));
  period->setCurrentIndex(0);
  QTRY_VERIFY(!place_->answer()->columns.front().figures.empty());
}

void ProgressStoryTest::cellsOfTheGridHoldTheShotsThatTheyCount() {
  open(squadRecord());
  const ProgressColumn& column = place_->answer()->columns.front();
  for (const FigureKind kind : {FigureKind::MakesByCueBall, FigureKind::MakesByObjectBall}) {
    const MakeGrid& grid = kind == FigureKind::MakesByCueBall ? column.progress.mainMakes().byCueBall
                                                              : column.progress.mainMakes().byObjectBall;
    int counted = 0;
    for (const ChartSpot& spot : viewOf(kind)->spots()) {
      const MakeCell& cell = grid.cells[spot.key][spot.column];
      const auto behind = shotsBehind(column.progress, kind, spot);
      QCOMPARE(static_cast<int>(behind.size()), cell.tried);
      int made = 0;
      for (const std::size_t place : behind)
        made += column.progress.history.shots[place].made ? 1 : 0;
      QCOMPARE(made, cell.made);
      counted += cell.tried;
    }
    QCOMPARE(counted, grid.tried);
  }
  for (const ChartSpot& spot : viewOf(FigureKind::MissSides)->spots()) {
    const MissSides& misses = column.progress.misses;
    const MissCell& cell = spot.key == 0   ? misses.leftCuts
                           : spot.key == 1 ? misses.rightCuts
                                           : misses.speeds[spot.key - 2];
    QCOMPARE(static_cast<int>(shotsBehind(column.progress, FigureKind::MissSides, spot).size()),
             spot.column == 0 ? cell.thick : cell.thin);
  }
  for (const ChartSpot& spot : viewOf(FigureKind::AimTrend)->spots()) {
    int shots = 0;
    for (const SessionEstimate& session : column.progress.aim.all.series) {
      if (session.session == spot.key) shots = session.estimate.shots;
    }
    QCOMPARE(static_cast<int>(shotsBehind(column.progress, FigureKind::AimTrend, spot).size()), shots);
  }
}

void ProgressStoryTest::keysTellNumbersAndOpenTheShots() {
  open(squadRecord());
  ChartView* view = viewOf(FigureKind::MakesByCueBall);
  view->setFocus();
  const std::vector<ChartSpot> spots = view->spots();
  const auto busiest = std::ranges::max_element(spots, {}, [&](const ChartSpot& spot) {
    return shotsBehind(place_->answer()->columns.front().progress, FigureKind::MakesByCueBall, spot).size();
  });
  for (auto at = spots.begin(); at <= busiest; ++at)
    QTest::keyClick(view, Qt::Key_Right);
  QVERIFY(view->pointed().has_value());
  QCOMPARE(view->accessibleDescription(), busiest->words);
  QCOMPARE(find<QLabel>("pointed")->text(), busiest->words);
  QTest::keyClick(view, Qt::Key_Return);
  QCOMPARE(wanted_.size(), std::size_t{1});
  QCOMPARE(wanted_.front().record, squadRecord());
  QVERIFY(!wanted_.front().shots.empty());
  // The shots are those of the record.
  auto record = Record::open(squadRecord().toStdString(), {RecordMode::ReadOnly});
  QVERIFY(record.has_value());
  const ListedShot& first = wanted_.front().shots.front();
  const auto stored = record->shot(first.shot);
  QVERIFY(stored.has_value());
  QVERIFY(stored->session == first.session);
}

void ProgressStoryTest::twoPlayersStandSideBySide() {
  open(squadRecord());
  find<QComboBox>("secondPlayer")->setCurrentIndex(1);
  find<QCheckBox>("compare")->setChecked(true);
  QTRY_VERIFY(place_->answer()->columns.size() == 2);
  QCOMPARE(find<QLabel>("columnTitle1")->text(), find<QComboBox>("secondPlayer")->currentText());
  QVERIFY(find<ChartView>("figure1-0")->chart().has_value());
  QVERIFY(find<ChartView>("figure0-0")->x() >= 0);
  QVERIFY(find<ChartView>("figure0-0")->parentWidget()->x() < find<ChartView>("figure1-0")->parentWidget()->x());
}

void ProgressStoryTest::aChartIsExported() {
  open(squadRecord());
  const QTemporaryDir folder;
  viewOf(FigureKind::Pockets)->setFocus();
  QTRY_VERIFY(viewOf(FigureKind::Pockets)->hasFocus() || !place_->isActiveWindow());
  QTest::keyClick(viewOf(FigureKind::Pockets), Qt::Key_Right);
  for (const char* name : {"chart.svg", "chart.png", "chart.csv"})
    place_->exportChart(folder.filePath(QString::fromLatin1(name)));
  QVERIFY(QImage(folder.filePath("chart.png")).width() > 1500);
  QFile svg(folder.filePath("chart.svg"));
  QVERIFY(svg.open(QIODevice::ReadOnly));
  QVERIFY(svg.readAll().contains("Made by pocket"));
  QFile csv(folder.filePath("chart.csv"));
  QVERIFY(csv.open(QIODevice::ReadOnly));
  QCOMPARE(csv.readLine(), QByteArray("label,value,least,most,words\r\n"));
  QCOMPARE(csv.readAll().count("\r\n"), qsizetype{6});
  place_->exportChart(folder.filePath("none/chart.png"));
  QVERIFY(find<QLabel>("progressMessage")->text().contains("none/chart.png"));
}

void ProgressStoryTest::everyFieldHasANameThatIsReadOut() {
  open(squadRecord());
  for (const QWidget* widget : place_->findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisibleTo(place_.get())) continue;
    if (qobject_cast<const QAbstractButton*>(widget)) continue;            // named by its text
    if (qobject_cast<const QComboBox*>(widget->parentWidget())) continue;  // its list
    if (qobject_cast<const QAbstractSpinBox*>(widget->parentWidget())) continue;
    QVERIFY2(!widget->accessibleName().isEmpty(), qPrintable(widget->objectName() + widget->metaObject()->className()));
  }
}

FERRULE_TEST(ProgressStoryTest)
#include "progress_story_test.moc"
