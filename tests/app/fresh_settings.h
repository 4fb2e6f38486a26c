// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QSettings>
#include <QTemporaryDir>

namespace ferrule {

/// Settings of a person who never started the program, in a folder of their own, and the plain locale.
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
  QTemporaryDir folder_;
};

}  // namespace ferrule
