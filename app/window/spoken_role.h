// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessible>

namespace ferrule {

/// Tells screen readers what kind of thing a widget of our own is, beside its accessible name. Call it when the widget
/// is made.
void speakAs(QWidget* widget, QAccessible::Role role);

}  // namespace ferrule
