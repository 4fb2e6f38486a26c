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

namespace {

/// The words as they stand in the program, whatever was installed before.
class SourceWords : public QTranslator {
 public:
  [[nodiscard]] QString translate(const char*, const char* source, const char*, int) const override {
    return QString::fromUtf8(source);
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

}  // namespace

InLanguage::InLanguage(const QString& language) {
  loadTranslationFiles();
  words_.push_back(std::make_unique<SourceWords>());
  // English for its plural forms, then the language itself.
  for (const QString& name : {QStringLiteral("en"), language}) {
    auto words = std::make_unique<QTranslator>();
    if (words->load(QStringLiteral(":/translations/ferrule_%1.qm").arg(name))) words_.push_back(std::move(words));
  }
  for (const auto& words : words_)
    QCoreApplication::installTranslator(words.get());
}

InLanguage::~InLanguage() {
  for (const auto& words : words_)
    QCoreApplication::removeTranslator(words.get());
}

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
