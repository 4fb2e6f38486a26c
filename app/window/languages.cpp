// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <array>

static void loadTranslationFiles() {
  Q_INIT_RESOURCE(translations);
}

namespace ferrule {

namespace {

constexpr std::array kLanguages{
    Language{"en", "English"}, Language{"de", "Deutsch"},     Language{"fr", "Français"},
    Language{"es", "Español"}, Language{"zh_CN", "简体中文"},
};

/// The words as they stand in the program, whatever was installed before.
class SourceWords : public QTranslator {
 public:
  [[nodiscard]] QString translate(const char*, const char* source, const char*, int) const override {
    return QString::fromUtf8(source);
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

}  // namespace

std::span<const Language> languages() {
  return kLanguages;
}

QString languageFor(const QLocale& locale) {
  // Chinese is written in two ways, and only the simplified one is spoken here.
  if (locale.language() != QLocale::Chinese || locale.script() == QLocale::SimplifiedHanScript) {
    for (const Language& language : kLanguages) {
      const QString code = QString::fromLatin1(language.code);
      if (QLocale(code).language() == locale.language()) return code;
    }
  }
  return QString::fromLatin1(kLanguages.front().code);
}

QLocale localeFor(const QString& code) {
  const QLocale desktop = QLocale::system();
  return code.isEmpty() || languageFor(desktop) == code ? desktop : QLocale(code);
}

SpokenLanguage::SpokenLanguage(const QString& code) {
  loadTranslationFiles();
  words_.push_back(std::make_unique<SourceWords>());
  const auto load = [this](const QString& name, const QString& language, const QString& folder) {
    auto words = std::make_unique<QTranslator>();
    if (words->load(QStringLiteral("%1_%2").arg(name, language), folder)) words_.push_back(std::move(words));
  };
  const QString own = QStringLiteral(":/translations");
  // English first, for its plural forms: what another language lacks falls back to it.
  load(QStringLiteral("ferrule"), QStringLiteral("en"), own);
  load(QStringLiteral("qtbase"), code, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  load(QStringLiteral("ferrule"), code, own);
  for (const auto& words : words_)
    QCoreApplication::installTranslator(words.get());
}

SpokenLanguage::~SpokenLanguage() {
  for (const auto& words : words_)
    QCoreApplication::removeTranslator(words.get());
}

}  // namespace ferrule
