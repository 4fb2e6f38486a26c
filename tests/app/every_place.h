// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>

class QFont;

namespace ferrule {

class MainWindow;

/// Opens the whole window on a record of an invented squad and shows every place of it, with its pages: steps of
/// the set-up, a session before and while it is played, a shot under review with the filter open, the figures, the
/// report. visit is told the window and the name of what is shown ("setup 3"). Words and numbers are in language, a
/// code of languages(); font: of the whole application.
void visitEveryPlace(const QString& language, const QFont& font,
                     const std::function<void(MainWindow&, const QString&)>& visit);

}  // namespace ferrule
