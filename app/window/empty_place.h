// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QAction;
class QLabel;
class QPushButton;
class QWidget;

namespace ferrule {

/// What a place shows while it has nothing to show: one sentence and one button in the middle, which triggers an
/// action. words and button come with their text and object names.
[[nodiscard]] QWidget* emptyPlace(QLabel* words, QPushButton* button, QAction* action);

}  // namespace ferrule
