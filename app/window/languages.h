// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>
#include <vector>

class QCoreApplication;
class QTranslator;

namespace ferrule {

/// Loads the program's and the toolkit's words in the user's language, where there are any; English otherwise.
void loadTranslations(QCoreApplication& application);

/// While it lives, the program speaks this language ("en", "de"): for a report in the student's language, not the
/// coach's. On the thread of the window only.
class InLanguage {
 public:
  explicit InLanguage(const QString& language);
  ~InLanguage();
  InLanguage(const InLanguage&) = delete;
  InLanguage& operator=(const InLanguage&) = delete;

 private:
  std::vector<std::unique_ptr<QTranslator>> words_;
};

}  // namespace ferrule
