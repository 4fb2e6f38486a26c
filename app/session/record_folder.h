// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QFileInfo>
#include <string>

namespace ferrule {

/// The window's own record may lie in a folder that nobody made yet.
inline void makeFolderOf(const std::string& record) {
  QDir().mkpath(QFileInfo(QString::fromStdString(record)).absolutePath());
}

}  // namespace ferrule
