// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QtTest>

#include "app/review/event_list_model.h"
#include "app/review/shot_tree_model.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ModelsTest : public QObject {
  Q_OBJECT
 private slots:
  void theTreeKeepsTheRulesOfItemModelsWhileRowsArrive();
  void aSessionIsAskedForOnceWhenItIsNeeded();
  void aShotRowTellsNumberResultAndSpeedInTheUsersUnit();
  void aShotWithoutSpeedShowsADashAndNeverZero();
  void theEventListKeepsTheRulesAndStartsAtTheStrike();
  void theRowOfATimeIsTheLastThatHasHappened();
};

void ModelsTest::theTreeKeepsTheRulesOfItemModelsWhileRowsArrive() {
  ShotTreeModel model;
  QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::QtTest);
  model.setSessions({sampleSession()});
  model.setContent(sampleContent());
  const QModelIndex session = model.index(0, 0);
  QCOMPARE(model.rowCount(session), 2);
  QCOMPARE(model.rowCount(model.index(0, 0, session)), 3);
  QCOMPARE(model.indexOf(ShotId{2}).row(), 1);
  QCOMPARE(model.indexOf(ShotId{2}).parent(), model.index(0, 0, session));
  model.setContent(sampleContent());  // read again after a change
  QCOMPARE(model.rowCount(session), 2);
  model.setSessions({});
  QCOMPARE(model.rowCount(), 0);
  QVERIFY(!model.indexOf(ShotId{2}).isValid());
}

void ModelsTest::aSessionIsAskedForOnceWhenItIsNeeded() {
  ShotTreeModel model;
  model.setSessions({sampleSession()});
  QSignalSpy wanted(&model, &ShotTreeModel::contentWanted);
  const QModelIndex session = model.index(0, 0);
  QVERIFY(model.hasChildren(session));
  QVERIFY(model.canFetchMore(session));
  model.fetchMore(session);
  model.fetchMore(session);
  QCOMPARE(wanted.size(), 1);
}

void ModelsTest::aShotRowTellsNumberResultAndSpeedInTheUsersUnit() {
  ShotTreeModel model;
  model.setSessions({sampleSession()});
  model.setContent(sampleContent());
  model.setNumbers(Numbers(QLocale(QLocale::German), SpeedUnit::KilometresPerHour));
  const QModelIndex shot = model.indexOf(ShotId{1});
  QCOMPARE(shot.data(ShotTreeModel::NumberRole).toInt(), 1);
  QCOMPARE(shot.data().toString(), QStringLiteral("3 to foot-left"));
  QCOMPARE(shot.siblingAtColumn(ShotTreeModel::Result).data().toString(), QStringLiteral("made"));
  // 2.0 m/s are 7.2 km/h.
  QCOMPARE(shot.siblingAtColumn(ShotTreeModel::Speed).data().toString(), QStringLiteral("7,2\u202Fkm/h"));
}

void ModelsTest::aShotWithoutSpeedShowsADashAndNeverZero() {
  ShotTreeModel model;
  model.setSessions({sampleSession()});
  model.setContent(sampleContent());
  const QModelIndex safety = model.indexOf(ShotId{3});
  QCOMPARE(safety.siblingAtColumn(ShotTreeModel::Speed).data().toString(), QStringLiteral("–"));
}

void ModelsTest::theEventListKeepsTheRulesAndStartsAtTheStrike() {
  EventListModel model;
  QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::QtTest);
  model.setNumbers(Numbers(QLocale::c()));
  model.setShot(sampleShot(1).reading);
  QCOMPARE(model.rowCount(), 4);
  QCOMPARE(model.index(0, EventListModel::Time).data().toString(), QStringLiteral("0.000 s"));
  QCOMPARE(model.index(1, EventListModel::Time).data().toString(), QStringLiteral("0.500 s"));
  QCOMPARE(model.index(1, EventListModel::Words).data().toString(), QStringLiteral("The cue ball meets the 3"));
  QCOMPARE(model.index(2, EventListModel::Words).data().toString(), QStringLiteral("The 3 falls, foot-left"));
  model.clear();
  QCOMPARE(model.rowCount(), 0);
}

void ModelsTest::theRowOfATimeIsTheLastThatHasHappened() {
  EventListModel model;
  model.setShot(sampleShot(1).reading);
  QCOMPARE(model.rowAt(9.9), -1);
  QCOMPARE(model.rowAt(10.0), 0);
  QCOMPARE(model.rowAt(11.0), 1);
  QCOMPARE(model.rowAt(99.0), 3);
}

FERRULE_TEST(ModelsTest)
#include "models_test.moc"
