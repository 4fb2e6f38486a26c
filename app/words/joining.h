// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

/// Words put together with the marks of the language that is spoken: Chinese has other commas, stops and colons, and no
/// blanks after them. Every list and every text that is made of parts goes through here.
namespace ferrule {

/// "a, b, c"
[[nodiscard]] QString listOf(const QStringList& words);
/// "a; b; c", for parts that hold commas.
[[nodiscard]] QString listApart(const QStringList& words);
/// "name: what is told of it"
[[nodiscard]] QString toldOf(const QString& name, const QString& what);
/// Sentences one after the other.
[[nodiscard]] QString sentencesOf(const QStringList& sentences);
/// Words as a sentence: with the stop at its end.
[[nodiscard]] QString stopped(const QString& words);

}  // namespace ferrule
