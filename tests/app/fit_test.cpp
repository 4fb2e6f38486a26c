// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QSet>
#include <QStyleOptionComboBox>
#include <QtTest>

#include "app/window/card.h"
#include "app/window/languages.h"
#include "app/window/main_window.h"
#include "tests/app/every_place.h"
#include "tests/app/key_letters.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Whether the words of a widget have the room that they need; what fails, with its numbers, otherwise.
QString cut(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
    if (label->text().isEmpty() || qobject_cast<const ElidedLabel*>(label) != nullptr) return {};
    if (label->wordWrap()) {
      const int needed = label->heightForWidth(label->width());
      if (needed > label->height() + 1) return QStringLiteral("%1 px high, needs %2").arg(label->height()).arg(needed);
      return {};
    }
    const int needed = label->sizeHint().width();
    if (needed > label->width() + 1) return QStringLiteral("%1 px wide, needs %2").arg(label->width()).arg(needed);
    return {};
  }
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
    if (button->text().isEmpty()) return {};
    const int needed = button->minimumSizeHint().width();
    if (needed > button->width() + 1) return QStringLiteral("%1 px wide, needs %2").arg(button->width()).arg(needed);
    return {};
  }
  if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
    QStyleOptionComboBox option;
    option.initFrom(combo);
    const int room =
        combo->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, combo).width();
    const int needed = combo->fontMetrics().horizontalAdvance(combo->currentText());
    if (needed > room + 1) return QStringLiteral("%1 px for the choice, needs %2").arg(room).arg(needed);
    return {};
  }
  return {};
}

QString words(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) return label->text();
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) return button->text();
  if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) return combo->currentText();
  return {};
}

/// Whether a widget reaches out of what it stands in, which is no scroll area.
bool reachesOut(const QWidget& widget) {
  const QWidget* parent = widget.parentWidget();
  if (parent == nullptr || widget.isWindow()) return false;
  const auto* area = qobject_cast<const QAbstractScrollArea*>(parent->parentWidget());
  if (area != nullptr && area->viewport() == parent) return false;
  return !parent->rect().adjusted(-1, -1, 1, 1).contains(widget.geometry());
}

}  // namespace

/// Words of every language have room, on large letters too, and each underlined letter means one thing.
class FitTest : public QObject {
  Q_OBJECT
 private slots:
  void wordsHaveRoomOnLettersAQuarterLargerAndLettersOneMeaning_data();
  void wordsHaveRoomOnLettersAQuarterLargerAndLettersOneMeaning();
};

void FitTest::wordsHaveRoomOnLettersAQuarterLargerAndLettersOneMeaning_data() {
  QTest::addColumn<QString>("language");
  for (const Language& language : languages())
    QTest::newRow(language.code) << QString::fromLatin1(language.code);
}

void FitTest::wordsHaveRoomOnLettersAQuarterLargerAndLettersOneMeaning() {
  QFETCH(const QString, language);
  QFont font = QApplication::font();
  font.setPointSizeF(font.pointSizeF() * 1.25);
  QSet<QString> faults;
  int looked = 0;
  visitEveryPlace(language, font, [&](MainWindow& window, const QString& place) {
    // A letter that two entries or fields share does not do what it promises.
    for (const QMenu* menu : window.menuBar()->findChildren<QMenu*>()) {
      for (const QString& twice : lettersTwiceIn(*menu))
        faults << QStringLiteral("menu %1: the letter %2").arg(menu->title(), twice);
    }
    for (const QString& twice : lettersTwiceInBar(*window.menuBar()))
      faults << QStringLiteral("menu bar: the letter %1").arg(twice);
    for (const QString& twice : lettersTwiceBelow(window))
      faults << QStringLiteral("%1: the letter %2").arg(place, twice);
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
      if (!widget->isVisible()) continue;
      const QString text = words(*widget);
      if (text.isEmpty()) continue;
      ++looked;
      const QString fault = cut(*widget);
      const QString name = widget->objectName().isEmpty() ? QString::fromLatin1(widget->metaObject()->className())
                                                          : widget->objectName();
      if (!fault.isEmpty())
        faults << QStringLiteral("%1: %2 \"%3\" is %4").arg(place, name, text.left(60), fault);
      else if (reachesOut(*widget))
        faults << QStringLiteral("%1: %2 \"%3\" reaches out of its place").arg(place, name, text.left(60));
    }
  });
  QVERIFY(looked > 200);
  for (const QString& fault : faults)
    qWarning("%s", qPrintable(fault));
  QCOMPARE(faults.size(), 0);
}

FERRULE_TEST(FitTest)
#include "fit_test.moc"
