// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/joining.h"

#include <QCoreApplication>

namespace ferrule {

namespace {

struct Joining {
  Q_DECLARE_TR_FUNCTIONS(Joining)
};

/// Two parts by a pattern, and so on from the left.
QString folded(const QStringList& parts, const QString& pattern) {
  QString all;
  for (const QString& part : parts)
    all = all.isEmpty() ? part : part.isEmpty() ? all : pattern.arg(all, part);
  return all;
}

}  // namespace

QString listOf(const QStringList& words) {
  return folded(words, Joining::tr("%1, %2", "two of a list"));
}

QString listApart(const QStringList& words) {
  return folded(words, Joining::tr("%1; %2", "two of a list whose parts hold commas"));
}

QString toldOf(const QString& name, const QString& what) {
  return Joining::tr("%1: %2", "a name and what is told of it").arg(name, what);
}

QString sentencesOf(const QStringList& sentences) {
  return folded(sentences, Joining::tr("%1 %2", "two sentences"));
}

QString stopped(const QString& words) {
  return Joining::tr("%1.", "the stop at the end of a sentence").arg(words);
}

}  // namespace ferrule
