// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QTableView>
#include <QTextBrowser>
#include <QtTest>

#include "app/window/about_page.h"
#include "app/window/actions.h"
#include "app/window/help_page.h"
#include "app/window/key_page.h"
#include "app/window/places.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class HelpTest : public QObject {
  Q_OBJECT
 private slots:
  void everyPlaceHasItsSteps();
  void aWordFindsItsKey();
  void noKeyHasTwoMeanings();
  void aboutNamesCautionsAndLicences();
};

void HelpTest::everyPlaceHasItsSteps() {
  for (const PlaceRow& place : placeRows())
    QVERIFY2(helpSteps(place.name).size() >= 3, place.name);
  QVERIFY(helpSteps("nowhere").empty());
}

void HelpTest::aWordFindsItsKey() {
  const KeyPage page;
  const auto* table = page.findChild<QTableView*>(QStringLiteral("keyTable"));
  auto* find = page.findChild<QLineEdit*>(QStringLiteral("findKey"));
  QCOMPARE(table->model()->rowCount(), static_cast<int>(actionRows().size()));
  find->setText(QStringLiteral("TAKE BACK"));
  QCOMPARE(table->model()->rowCount(), 1);
  QCOMPARE(table->model()->index(0, 1).data().toString(), QStringLiteral("Undo"));
  QCOMPARE(table->model()->index(0, 2).data().toString(),
           QKeySequence(QStringLiteral("Ctrl+Z")).toString(QKeySequence::NativeText));
  find->setText(QStringLiteral("no such action"));
  QCOMPARE(table->model()->rowCount(), 0);
}

void HelpTest::noKeyHasTwoMeanings() {
  QSet<QString> keys;
  for (const ActionRow& row : actionRows()) {
    for (const QKeySequence& key :
         QKeySequence::listFromString(QString::fromLatin1(row.keys), QKeySequence::PortableText)) {
      const QString taken = key.toString();
      if (taken.isEmpty()) continue;
      QVERIFY2(!keys.contains(taken), qPrintable(taken));
      keys << taken;
    }
  }
}

void HelpTest::aboutNamesCautionsAndLicences() {
  const AboutPage page;
  const QString text = page.findChild<QTextBrowser*>(QStringLiteral("aboutText"))->toPlainText();
  for (const char* word : {"tether", "licensed electrician", "projector", "Jump shots", "consent",
                           "General Public License", "OpenCV", "Qt Charts"})
    QVERIFY2(text.contains(QString::fromLatin1(word)), word);
}

FERRULE_TEST(HelpTest)
#include "help_test.moc"
