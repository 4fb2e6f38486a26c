// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/key_letters.h"

#include <QAbstractButton>
#include <QGroupBox>
#include <QHash>
#include <QKeySequence>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>

namespace ferrule {

namespace {

/// Texts by their letter.
class Letters {
 public:
  void add(const QString& text) {
    const QKeySequence letter = QKeySequence::mnemonic(text);
    if (!letter.isEmpty()) texts_[letter.toString()] << text;
  }
  [[nodiscard]] QStringList twice() const {
    QStringList lines;
    for (auto at = texts_.begin(); at != texts_.end(); ++at) {
      if (at->size() > 1) lines << QStringLiteral("%1 in %2").arg(at.key(), at->join(QStringLiteral(" / ")));
    }
    return lines;
  }

 private:
  QHash<QString, QStringList> texts_;
};

}  // namespace

QStringList lettersTwiceIn(const QMenu& menu) {
  Letters letters;
  for (const QAction* action : menu.actions())
    letters.add(action->text());
  return letters.twice();
}

QStringList lettersTwiceInBar(const QMenuBar& bar) {
  Letters letters;
  for (const QAction* menu : bar.actions())
    letters.add(menu->text());
  return letters.twice();
}

QStringList lettersTwiceBelow(const QWidget& widget) {
  Letters letters;
  for (const QWidget* part : widget.findChildren<QWidget*>()) {
    if (!part->isVisible()) continue;
    if (const auto* label = qobject_cast<const QLabel*>(part); label != nullptr && label->buddy() != nullptr) {
      letters.add(label->text());
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(part)) {
      // A tool button without words of its own shows none.
      letters.add(button->text());
    }
  }
  return letters.twice();
}

}  // namespace ferrule
