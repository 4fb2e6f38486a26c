// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QSet>
#include <QtTest>

#include "app/window/main_window.h"
#include "tests/app/every_place.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A widget in words, for a failure's message.
QString described(const QWidget& widget) {
  QStringList way;
  for (const QWidget* at = &widget; at != nullptr && way.size() < 4; at = at->parentWidget()) {
    way.prepend(at->objectName().isEmpty() ? QString::fromLatin1(at->metaObject()->className()) : at->objectName());
  }
  return way.join(QLatin1Char('/'));
}

/// What can be reached with the tab key now.
QList<QWidget*> reachable(const QWidget& window) {
  QList<QWidget*> found;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) != 0 &&
        widget->focusProxy() == nullptr)
      found << widget;
  }
  return found;
}

}  // namespace

/// People who see little or use no mouse: names that are read out, and keys that reach everything.
class AccessTest : public QObject {
  Q_OBJECT
 private slots:
  void everythingThatTakesKeysHasANameAndARole();
  void theTabKeyReachesEverythingOnce();
};

void AccessTest::everythingThatTakesKeysHasANameAndARole() {
  QSet<QString> nameless;
  int looked = 0;
  visitEveryPlace(QStringLiteral("en"), QApplication::font(), [&](MainWindow& window, const QString& place) {
    for (QWidget* widget : reachable(window)) {
      QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
      QVERIFY2(face != nullptr, qPrintable(described(*widget)));
      ++looked;
      if (face->text(QAccessible::Name).trimmed().isEmpty())
        nameless << place + QStringLiteral(": ") + described(*widget);
      // What scrolls tells its content's roles.
      const bool scrolls = qobject_cast<QAbstractScrollArea*>(widget) != nullptr;
      if (!scrolls && (face->role() == QAccessible::NoRole || face->role() == QAccessible::Client))
        nameless << place + QStringLiteral(": no role: ") + described(*widget);
    }
  });
  QVERIFY(looked > 100);
  for (const QString& fault : nameless)
    qWarning("%s", qPrintable(fault));
  QCOMPARE(nameless.size(), 0);
}

void AccessTest::theTabKeyReachesEverythingOnce() {
  QSet<QString> missed;
  visitEveryPlace(QStringLiteral("en"), QApplication::font(), [&](MainWindow& window, const QString& place) {
    QList<QWidget*> wanted = reachable(window);
    QVERIFY(!wanted.isEmpty());
    QSet<QWidget*> reached;
    QWidget* at = wanted.front();
    // The chain of focus is a ring; what is hidden or takes no tab is passed over.
    for (QWidget* next = at->nextInFocusChain(); next != at; next = next->nextInFocusChain())
      reached << next;
    reached << at;
    for (QWidget* widget : wanted) {
      if (!reached.contains(widget)) missed << place + QStringLiteral(": ") + described(*widget);
    }
  });
  for (const QString& fault : missed)
    qWarning("%s", qPrintable(fault));
  QCOMPARE(missed.size(), 0);
}

FERRULE_TEST(AccessTest)
#include "access_test.moc"
