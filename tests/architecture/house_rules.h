// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QString>
#include <QStringList>

namespace ferrule {

/// What one folder may include.
struct FolderRule {
  QString folder;       ///< "core/table"; "app" and "tests" stand for everything below them
  QStringList parts;    ///< folders of this project, besides itself; "core" stands for all of core
  QStringList outside;  ///< beginnings of includes from other projects, besides the standard library
};

/// The table of allowed dependencies; DEVELOPERS.md draws it.
[[nodiscard]] QList<FolderRule> folderRules();

/// Everything under root's core/, app/, tests/, packaging/ and .ci/ that breaks a rule of the house, one line each,
/// with file and line. Empty when the house is in order.
[[nodiscard]] QStringList houseFindings(const QDir& root);

/// How many files houseFindings reads, so that a test can tell a clean house from an empty one.
[[nodiscard]] int filesRead(const QDir& root);

}  // namespace ferrule
