// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/name_list.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

class NameListTest : public QObject {
  Q_OBJECT
 private slots:
  void commasOfEveryKeyboardPartNames_data();
  void commasOfEveryKeyboardPartNames();
};

void NameListTest::commasOfEveryKeyboardPartNames_data() {
  QTest::addColumn<QString>("list");
  QTest::newRow("comma") << "Ada, Ben";
  QTest::newRow("semicolon, as where a comma is decimal") << "Ada; Ben";
  QTest::newRow("full-width comma") << QString::fromUtf8("Ada，Ben");
  QTest::newRow("Chinese comma between items") << QString::fromUtf8("Ada、Ben");
  QTest::newRow("too many") << " ,Ada ,, Ben,";
}

void NameListTest::commasOfEveryKeyboardPartNames() {
  QFETCH(const QString, list);
  QCOMPARE(namesIn(list), (std::vector<std::string>{"Ada", "Ben"}));
}

FERRULE_TEST(NameListTest)
#include "name_list_test.moc"
