// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>
#include <memory>
#include <span>
#include <vector>

namespace ferrule {

/// A language that the program speaks.
struct Language {
  const char* code;     ///< of its file of words and of the settings: "de", "zh_CN"
  const char* ownName;  ///< as its speakers write it; UTF-8, never translated
};

/// The chosen language in the settings: its code; empty or absent for the desktop's.
inline constexpr QLatin1String kLanguageSetting("window/language");

/// In the order of the menu, the source's own language first.
[[nodiscard]] std::span<const Language> languages();
/// The code of the language in which a locale's user is best served: the source's own where there is no better one.
[[nodiscard]] QString languageFor(const QLocale& locale);
/// The form of numbers and dates for a language: the desktop's own where it speaks the same language (so that a Swiss
/// user keeps Swiss numbers), else the language's usual one. An empty code: the desktop's.
[[nodiscard]] QLocale localeFor(const QString& code);

/// The program's and the toolkit's words in one language, as long as it lives. On the thread of the window only; what
/// was spoken before is heard again when it is gone.
class SpokenLanguage {
 public:
  explicit SpokenLanguage(const QString& code);
  ~SpokenLanguage();
  SpokenLanguage(const SpokenLanguage&) = delete;
  SpokenLanguage& operator=(const SpokenLanguage&) = delete;

 private:
  std::vector<std::unique_ptr<QTranslator>> words_;
};

}  // namespace ferrule
