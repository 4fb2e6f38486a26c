// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QSettings>

#include "tests/support/own_home.h"

namespace ferrule {

/// A home and settings of a person who never started the program, and the plain locale.
class FreshSettings {
 public:
  FreshSettings() {
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("ferrule-test"));
    QCoreApplication::setApplicationName(QStringLiteral("ferrule-test"));
    QLocale::setDefault(QLocale::c());
  }

  [[nodiscard]] QString path() const { return folder_.path(); }
  [[nodiscard]] QString filePath(const QString& name) const { return folder_.filePath(name); }

 private:
  OwnHome folder_;
};

}  // namespace ferrule
