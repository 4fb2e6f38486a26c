// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/assignment.h"

#include <limits>

namespace ferrule {

namespace {

/// For rows <= columns: grows one shortest augmenting path a row. Indices are from 1; 0 stands for none.
std::vector<int> assignWide(const Eigen::MatrixXd& costs) {
  const int rows = static_cast<int>(costs.rows());
  const int columns = static_cast<int>(costs.cols());
  constexpr double kFar = std::numeric_limits<double>::infinity();
  std::vector<double> rowPrice(rows + 1, 0.0);
  std::vector<double> columnPrice(columns + 1, 0.0);
  std::vector<int> rowOf(columns + 1, 0);
  std::vector<int> cameFrom(columns + 1, 0);
  for (int row = 1; row <= rows; ++row) {
    rowOf[0] = row;
    int column = 0;
    std::vector<double> reach(columns + 1, kFar);
    std::vector<bool> done(columns + 1, false);
    do {
      done[column] = true;
      const int current = rowOf[column];
      double step = kFar;
      int next = 0;
      for (int j = 1; j <= columns; ++j) {
        if (done[j]) continue;
        const double reduced = costs(current - 1, j - 1) - rowPrice[current] - columnPrice[j];
        if (reduced < reach[j]) {
          reach[j] = reduced;
          cameFrom[j] = column;
        }
        if (reach[j] < step) {
          step = reach[j];
          next = j;
        }
      }
      for (int j = 0; j <= columns; ++j) {
        if (done[j]) {
          rowPrice[rowOf[j]] += step;
          columnPrice[j] -= step;
        } else {
          reach[j] -= step;
        }
      }
      column = next;
    } while (rowOf[column] != 0);
    while (column != 0) {
      const int previous = cameFrom[column];
      rowOf[column] = rowOf[previous];
      column = previous;
    }
  }
  std::vector<int> result(rows, -1);
  for (int j = 1; j <= columns; ++j) {
    if (rowOf[j] != 0) result[rowOf[j] - 1] = j - 1;
  }
  return result;
}

}  // namespace

std::vector<int> assignCheapest(const Eigen::MatrixXd& costs) {
  if (costs.rows() == 0 || costs.cols() == 0) return std::vector<int>(static_cast<std::size_t>(costs.rows()), -1);
  if (costs.rows() <= costs.cols()) return assignWide(costs);
  const std::vector<int> rowOfColumn = assignWide(costs.transpose());
  std::vector<int> result(static_cast<std::size_t>(costs.rows()), -1);
  for (std::size_t column = 0; column < rowOfColumn.size(); ++column) {
    if (rowOfColumn[column] >= 0) result[static_cast<std::size_t>(rowOfColumn[column])] = static_cast<int>(column);
  }
  return result;
}

}  // namespace ferrule
