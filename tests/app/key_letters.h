// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QMenu;
class QMenuBar;
class QWidget;

namespace ferrule {

/// Letters that two entries of one menu share, or two visible buttons and fields below a widget: one line for each.
/// With the Alt key such a letter does not do what its underline promises.
[[nodiscard]] QStringList lettersTwiceIn(const QMenu& menu);
[[nodiscard]] QStringList lettersTwiceInBar(const QMenuBar& bar);
[[nodiscard]] QStringList lettersTwiceBelow(const QWidget& widget);

}  // namespace ferrule
