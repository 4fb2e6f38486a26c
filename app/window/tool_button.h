// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QAction;
class QToolButton;

namespace ferrule {

/// A flat button for an action of the window, named after it, reached with the tab key. Shows the icon where the action
/// has one, else its words.
[[nodiscard]] QToolButton* toolButton(QAction* action);
/// The same with its edge drawn: one that stands alone must be seen to be a button.
[[nodiscard]] QToolButton* raisedButton(QAction* action);

}  // namespace ferrule
