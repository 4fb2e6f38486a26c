// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QCoreApplication;

namespace ferrule {

/// Loads the program's and the toolkit's words in the user's language, where there are any; English otherwise.
void loadTranslations(QCoreApplication& application);

}  // namespace ferrule
