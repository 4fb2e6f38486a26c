// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

static void loadTranslationFiles() {
  Q_INIT_RESOURCE(translations);
}

namespace ferrule {

void loadTranslations(QCoreApplication& application) {
  loadTranslationFiles();
  // English first, for its plural forms: what another language lacks falls back to it.
  auto* english = new QTranslator(&application);
  if (english->load(QStringLiteral(":/translations/ferrule_en.qm"))) QCoreApplication::installTranslator(english);
  const auto load = [&application](const QString& name, const QString& folder) {
    auto* words = new QTranslator(&application);
    if (words->load(QLocale(), name, QStringLiteral("_"), folder)) QCoreApplication::installTranslator(words);
  };
  load(QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  load(QStringLiteral("ferrule"), QStringLiteral(":/translations"));
}

}  // namespace ferrule
