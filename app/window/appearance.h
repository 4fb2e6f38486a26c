// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ferrule {

enum class Appearance { System, Light, Dark };

/// Gives the application its palette. System keeps the desktop's own colours where it brings any; on a desktop that
/// brings none, the program's own calm ones stand in.
void applyAppearance(Appearance appearance);

[[nodiscard]] QString toSetting(Appearance appearance);
[[nodiscard]] Appearance appearanceFromSetting(const QString& text);

}  // namespace ferrule
