// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QLabel;
class QPushButton;

namespace ferrule {

/// An empty label of this object name whose plain text wraps.
[[nodiscard]] QLabel* wordsLabel(const char* name);
[[nodiscard]] QPushButton* namedButton(const QString& text, const char* name);

}  // namespace ferrule
