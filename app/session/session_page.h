// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLabel;
class QSplitter;
class QWidget;

/// What the pages of a session have in common: by hand, from a film and live.
namespace ferrule {

/// The session's name, cut where it does not fit.
[[nodiscard]] QLabel* sessionTitle(const char* name);
/// The title over what is in the middle.
[[nodiscard]] QWidget* titledMiddle(QLabel* title, QWidget* content);
/// The middle on the left, which takes the room there is, and the panel on the right.
[[nodiscard]] QSplitter* sessionColumns(QWidget* middle, QWidget* panel);

}  // namespace ferrule
