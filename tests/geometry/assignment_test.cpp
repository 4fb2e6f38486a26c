// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/assignment.h"

#include <QtTest>
#include <algorithm>
#include <numeric>
#include <set>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class AssignmentTest : public QObject {
  Q_OBJECT
 private slots:
  void costsAsMuchAsTheBestOfAllOrders();
  void rowsWithoutAColumnGoWithout();
  void nothingComesOfNothing();
};

/// Against trying every order of five columns.
void AssignmentTest::costsAsMuchAsTheBestOfAllOrders() {
  Random random(7);
  for (int round = 0; round < 50; ++round) {
    Eigen::MatrixXd costs(4, 5);
    for (int i = 0; i < costs.size(); ++i)
      costs(i) = random.uniform() * 10.0 - 5.0;
    std::vector<int> order(5);
    std::iota(order.begin(), order.end(), 0);
    double best = 1e9;
    do {
      double sum = 0.0;
      for (int row = 0; row < 4; ++row)
        sum += costs(row, order[static_cast<std::size_t>(row)]);
      best = std::min(best, sum);
    } while (std::next_permutation(order.begin(), order.end()));
    const std::vector<int> columns = assignCheapest(costs);
    double sum = 0.0;
    for (int row = 0; row < 4; ++row)
      sum += costs(row, columns[static_cast<std::size_t>(row)]);
    QVERIFY(std::abs(sum - best) < 1e-9);
    QVERIFY(std::set<int>(columns.begin(), columns.end()).size() == 4);
  }
}

void AssignmentTest::rowsWithoutAColumnGoWithout() {
  Eigen::MatrixXd costs(3, 2);
  costs << 1.0, 9.0, 2.0, 9.0, 9.0, 1.0;
  QCOMPARE(assignCheapest(costs), (std::vector<int>{0, -1, 1}));
}

void AssignmentTest::nothingComesOfNothing() {
  QVERIFY(assignCheapest(Eigen::MatrixXd(0, 3)).empty());
  QCOMPARE(assignCheapest(Eigen::MatrixXd(2, 0)), (std::vector<int>{-1, -1}));
}

FERRULE_TEST(AssignmentTest)
#include "assignment_test.moc"
