// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QComboBox;
class QLabel;
class QPushButton;

namespace ferrule {

/// An empty label of this object name whose plain text wraps.
[[nodiscard]] QLabel* wordsLabel(const char* name);
[[nodiscard]] QPushButton* namedButton(const QString& text, const char* name);

/// Narrow panels hold long names: the box is as wide as its place, the list as its words.
[[nodiscard]] QComboBox* narrowBox();

}  // namespace ferrule
